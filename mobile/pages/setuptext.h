// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointF>
#include <QString>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

/** What a set-up comes to, in words. */
struct SetupAnswer {
    Q_GADGET
    QML_VALUE_TYPE(setupAnswer)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString means MEMBER means)
    Q_PROPERTY(QString more MEMBER more)
    Q_PROPERTY(QStringList percents MEMBER percents)
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(QString reason MEMBER reason)
    Q_PROPERTY(QString gate MEMBER gate)
    Q_PROPERTY(QString unit MEMBER unit)
    Q_PROPERTY(QString bandName MEMBER bandName)
    Q_PROPERTY(bool known MEMBER known)
    Q_PROPERTY(bool ready MEMBER ready)
    Q_PROPERTY(bool stop MEMBER stop)

public:
    bool operator==(const SetupAnswer&) const = default;

    QString title;   ///< the answer itself
    QString means;   ///< mean of the path beside mean of the ends
    QString more;    ///< zone's range, rack, work
    QStringList percents; ///< of her maximum, on the mean: "71 ± 3 %"; and of what, at each place, or why there is none
    QString state;   ///< READY, NOT READY, DO NOT LIFT
    QString reason;  ///< what settles it
    QString gate;    ///< that nothing of hers stands against it, or that nobody was looked at; empty where something does
    QString unit;    ///< of every pull
    QString bandName; ///< of what stands between the chains and the total in the picture
    bool known = false, ready = false, stop = false;
};

/** The pull over the bar's path as points to draw: pull in the shown unit to the right, height in m up. */
struct PullPicture {
    Q_GADGET
    QML_VALUE_TYPE(pullPicture)
    Q_PROPERTY(QList<QPointF> zero MEMBER zero)
    Q_PROPERTY(QList<QPointF> iron MEMBER iron)
    Q_PROPERTY(QList<QPointF> chain MEMBER chain)
    Q_PROPERTY(QList<QPointF> band MEMBER band)
    Q_PROPERTY(QList<QPointF> total MEMBER total)
    Q_PROPERTY(QList<QPointF> low1 MEMBER low1)
    Q_PROPERTY(QList<QPointF> high1 MEMBER high1)
    Q_PROPERTY(QList<QPointF> low2 MEMBER low2)
    Q_PROPERTY(QList<QPointF> high2 MEMBER high2)
    Q_PROPERTY(double heightTo MEMBER heightTo)
    Q_PROPERTY(double pullTo MEMBER pullTo)
    Q_PROPERTY(double unknownFrom MEMBER unknownFrom)

public:
    QList<QPointF> zero, iron, chain, band, total, low1, high1, low2, high2;
    double heightTo = 1, pullTo = 50;
    double unknownFrom = qQNaN();
};

/** What the plates here can make around the load that hangs. */
struct BeamText {
    Q_GADGET
    QML_VALUE_TYPE(beamText)
    Q_PROPERTY(QVariantList loads MEMBER loads)
    Q_PROPERTY(QVariantList labels MEMBER labels)
    Q_PROPERTY(double value MEMBER value)
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString valueText MEMBER valueText)
    Q_PROPERTY(QString down MEMBER down)
    Q_PROPERTY(QString up MEMBER up)
    Q_PROPERTY(bool canDown MEMBER canDown)
    Q_PROPERTY(bool canUp MEMBER canUp)
    Q_PROPERTY(QString eachSide MEMBER eachSide)
    Q_PROPERTY(QString enteredAs MEMBER enteredAs)

public:
    QVariantList loads, labels;
    double value = 0;
    QString number, valueText, down, up, eachSide;
    QString enteredAs; ///< "entered as 225 lb", where it was in another unit
    bool canDown = false, canUp = false;
};
