// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

/** What comes of a set-up whose way down is heavier, in words: what leads the page. */
struct ReleaseShown {
    Q_GADGET
    QML_VALUE_TYPE(releaseShown)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString off MEMBER off)
    Q_PROPERTY(QString bar MEMBER bar)
    Q_PROPERTY(QString letGo MEMBER letGo)
    Q_PROPERTY(QString length MEMBER length)
    Q_PROPERTY(QString free MEMBER free)
    Q_PROPERTY(QString oneSide MEMBER oneSide)
    Q_PROPERTY(QString state MEMBER state)
    Q_PROPERTY(QString hangs MEMBER hangs)
    Q_PROPERTY(QString inShort MEMBER inShort)
    Q_PROPERTY(bool ready MEMBER ready)
    Q_PROPERTY(bool forbidden MEMBER forbidden)

public:
    bool operator==(const ReleaseShown&) const = default;

    QString title;  ///< "72.5 kg up · 116 ± 1 kg down"
    QString off;    ///< how far off that is, and in per cent of what
    QString bar, letGo; ///< what to hang on each side, and on each hook
    QString length, free; ///< of hooks: how long, and where the bar is free of them
    QString oneSide; ///< what one side that stays on is heavier by, and what to do
    QString state;  ///< "Ready", or what comes first
    QString hangs;  ///< what the main key hangs; empty where there is nothing to hang
    QString inShort; ///< "release hooks: 72.5 kg up, 116 ± 1 kg down", for a row on the set-up page
    bool ready = false;
    bool forbidden = false;
};

/** Bar and hook at the top, where the hook's foot stands, and where the bar is free: heights of the bar's centre, in metres. */
struct ReleaseDrawn {
    Q_GADGET
    QML_VALUE_TYPE(releaseDrawn)
    Q_PROPERTY(bool there MEMBER there)
    Q_PROPERTY(double top MEMBER top)
    Q_PROPERTY(double touch MEMBER touch)
    Q_PROPERTY(double free MEMBER free)
    Q_PROPERTY(double lowest MEMBER lowest)
    Q_PROPERTY(double length MEMBER length)
    Q_PROPERTY(double radius MEMBER radius)
    Q_PROPERTY(QString topText MEMBER topText)
    Q_PROPERTY(QString touchText MEMBER touchText)
    Q_PROPERTY(QString freeText MEMBER freeText)
    Q_PROPERTY(QString sentence MEMBER sentence)

public:
    bool operator==(const ReleaseDrawn&) const = default;

    bool there = false;
    double top = 0, touch = 0, free = 0, lowest = 0, length = 0, radius = 0;
    QString topText, touchText, freeText, sentence;
};
