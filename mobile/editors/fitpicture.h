// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointF>
#include <QString>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

/** What was measured and the curve through it as points to draw: pull to the right; length, height or angle up; in the shown units. */
struct FitPicture {
    Q_GADGET
    QML_VALUE_TYPE(fitPicture)
    Q_PROPERTY(QVariantList points MEMBER points)
    Q_PROPERTY(QList<QPointF> fit MEMBER fit)
    Q_PROPERTY(QList<QPointF> low MEMBER low)
    Q_PROPERTY(QList<QPointF> high MEMBER high)
    Q_PROPERTY(double pullTo MEMBER pullTo)
    Q_PROPERTY(double lengthFrom MEMBER lengthFrom)
    Q_PROPERTY(double lengthTo MEMBER lengthTo)
    Q_PROPERTY(double measuredTo MEMBER measuredTo)
    Q_PROPERTY(QString measuredText MEMBER measuredText)
    Q_PROPERTY(QString pullUnit MEMBER pullUnit)
    Q_PROPERTY(QString lengthUnit MEMBER lengthUnit)
    Q_PROPERTY(bool there READ isThere)

public:
    [[nodiscard]] bool isThere() const { return !points.isEmpty(); }

    QVariantList points; ///< {x, y, odd, label}
    QList<QPointF> fit, low, high;
    double pullTo = 10, lengthFrom = 0, lengthTo = 100, measuredTo = 0;
    QString measuredText; ///< "measured up to 92 cm", along the line at `measuredTo`
    QString pullUnit, lengthUnit;
};
