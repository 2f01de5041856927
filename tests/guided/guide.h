// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/household.h"
#include "tests/guided/badleave.h"
#include "tests/tour/hand.h"

#include <QSocketNotifier>

/** Does in the app what comes line by line on the standard input, and answers on the standard output:
    "shows PAGE" once a page has been drawn, "did" or "not done: WHY" behind each deed. */
class Guide {
public:
    Guide(QQuickWindow& window, QQmlEngine& engine, Household& household, BadLeave& leave);

private:
    void listen();
    void perform(const QByteArray& deed);
    void keep(const QByteArrayList& words);
    [[nodiscard]] QString write(const QString& field, const QString& text);
    void tellCode();
    void tellText(const QString& name);
    [[nodiscard]] QString awaitItem(const QString& name, bool there);
    void tellPage();

    QQuickWindow& m_window;
    Hand m_hand;
    Household& m_household;
    BadLeave& m_leave;
    QSocketNotifier m_notifier;
    QByteArray m_heard;
    QString m_page;
};
