// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QObject>
#include <QPointF>
#include <QString>
#include <QtQml/qqmlregistration.h>

/** How level the pull is with her strength, as points to draw: pull or share to the right, height up; in the shown units. */
struct LevelShown {
    Q_GADGET
    QML_VALUE_TYPE(levelShown)
    Q_PROPERTY(QString pulls MEMBER pulls)
    Q_PROPERTY(QString sentence MEMBER sentence)
    Q_PROPERTY(QList<QPointF> pull MEMBER pull)
    Q_PROPERTY(QList<QPointF> strength MEMBER strength)
    Q_PROPERTY(QList<QPointF> strengthLow MEMBER strengthLow)
    Q_PROPERTY(QList<QPointF> strengthHigh MEMBER strengthHigh)
    Q_PROPERTY(QList<QPointF> share MEMBER share)
    Q_PROPERTY(QList<QPointF> shareLow MEMBER shareLow)
    Q_PROPERTY(QList<QPointF> shareHigh MEMBER shareHigh)
    Q_PROPERTY(QList<QPointF> plain MEMBER plain)
    Q_PROPERTY(QString pullUnit MEMBER pullUnit)
    Q_PROPERTY(QString heightUnit MEMBER heightUnit)

public:
    [[nodiscard]] bool isThere() const { return !pull.isEmpty(); }
    bool operator==(const LevelShown&) const = default;

    QString pulls;    ///< what is there of her isometric pulls: "4 pulls at 3 heights"
    QString sentence; ///< the picture in words
    QList<QPointF> pull, strength, strengthLow, strengthHigh, share, shareLow, shareHigh, plain;
    QString pullUnit, heightUnit;
};
