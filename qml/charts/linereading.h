// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QtQml/qqmlregistration.h>

/// Reads off lines of a few hundred points (x pull, y height), of which QML alone would take a frame's time.
class LineReading : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    /// The points whose coordinates are both finite.
    Q_INVOKABLE [[nodiscard]] QList<QPointF> finite(const QList<QPointF> &points) const;
    /// Least and greatest x; nothing of no points.
    Q_INVOKABLE [[nodiscard]] QList<qreal> pulls(const QList<QPointF> &points) const;
    /// Least and greatest y; nothing of no points.
    Q_INVOKABLE [[nodiscard]] QList<qreal> heights(const QList<QPointF> &points) const;
    /// x of a line at a height, along its own points, the first stretch that holds it; NaN where none does.
    Q_INVOKABLE [[nodiscard]] qreal at(const QList<QPointF> &line, qreal height) const;
    /// Whether two lines lie further than `least` apart at some point, each held against the other's at the same place in the list.
    Q_INVOKABLE [[nodiscard]] bool parted(const QList<QPointF> &low, const QList<QPointF> &high, qreal least) const;
    /// The same heights on the axis.
    Q_INVOKABLE [[nodiscard]] QList<QPointF> onAxis(const QList<QPointF> &points) const;
};
