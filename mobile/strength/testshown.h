// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

/** What would follow from a test of strength as it is typed. */
struct TestShown {
    Q_GADGET
    QML_VALUE_TYPE(testShown)
    Q_PROPERTY(QString who MEMBER who)
    Q_PROPERTY(QString head MEMBER head)
    Q_PROPERTY(QString body MEMBER body)
    Q_PROPERTY(QString trouble MEMBER trouble)
    Q_PROPERTY(QString fact MEMBER fact)
    Q_PROPERTY(bool minor MEMBER minor)

public:
    QString who;     ///< "Ana M., back squat"
    QString head;    ///< the range that would follow, or why none does
    QString body;    ///< how it came, or what would settle it
    QString trouble; ///< why it cannot be kept as it is typed
    QString fact;    ///< the set in words, for the key that keeps it
    bool minor = false; ///< of age is not known or not reached
};

/** What is typed of it beside its numbers. */
struct TestTyped {
    Q_GADGET
    QML_VALUE_TYPE(testTyped)
    Q_PROPERTY(QString reps MEMBER reps)
    Q_PROPERTY(int reserve MEMBER reserve)
    Q_PROPERTY(bool missed MEMBER missed)
    Q_PROPERTY(bool maximum MEMBER maximum)
    Q_PROPERTY(bool lifted MEMBER lifted)
    Q_PROPERTY(bool helped MEMBER helped)
    Q_PROPERTY(bool today MEMBER today)
    Q_PROPERTY(QStringList things MEMBER things)
    Q_PROPERTY(QList<bool> hung MEMBER hung)
    Q_PROPERTY(QStringList setups MEMBER setups)
    Q_PROPERTY(int setup MEMBER setup)

public:
    QString reps;        ///< "5"; "not counted"
    int reserve = 0;     ///< 0 not said, then one more than is in reserve
    bool missed = false, maximum = false;
    bool lifted = false; ///< the body is lifted too
    bool helped = false, today = true;
    QStringList things;  ///< what may hang
    QList<bool> hung;    ///< which of them does
    QStringList setups;  ///< "none", then those kept for the lift
    int setup = 0;
};
