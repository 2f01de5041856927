// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QtQml/qqmlregistration.h>

/// Fills a series of a chart in one go; QML itself could only append point by point, which costs a hundred times as much.
class SeriesFill : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    /// Replaces all points by those whose y lies between `from` and `to`; the line is cut exactly there.
    /// A point with a coordinate that is not finite is left out.
    Q_INVOKABLE void replace(QObject *series, const QList<QPointF> &points, qreal from, qreal to) const;
    /// The same points with x no greater than that of `other` at the same place in the list.
    Q_INVOKABLE [[nodiscard]] QList<QPointF> lesser(const QList<QPointF> &points, const QList<QPointF> &other) const;
};
