// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/guided/guide.h"

#include "core/work/keeping/keepathlete.h"
#include "mobile/door/vaultmaker.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QKeyEvent>

#include <array>

#include <unistd.h>

using namespace steelyard;

namespace {

/// Straight to the pipe, so that no buffer keeps it.
void say(std::string_view text)
{
    while (!text.empty()) {
        const ssize_t count = ::write(STDOUT_FILENO, text.data(), text.size());
        if (count <= 0)
            return;
        text.remove_prefix(static_cast<std::size_t>(count));
    }
}

void sayDone(const QString& trouble)
{
    say(trouble.isEmpty() ? "did\n" : ("not done: " + trouble.toUtf8() + '\n').toStdString());
}

}

Guide::Guide(QQuickWindow& window, QQmlEngine& engine, Household& household, BadLeave& leave)
    : m_window(window), m_hand(window, engine), m_household(household), m_leave(leave), m_notifier(STDIN_FILENO, QSocketNotifier::Read)
{
    QObject::connect(&m_window, &QQuickWindow::frameSwapped, &m_notifier, [this] { tellPage(); });
    QObject::connect(&m_notifier, &QSocketNotifier::activated, &m_notifier, [this] { listen(); });
}

void Guide::tellPage()
{
    const QString page = m_hand.pageType();
    if (page == m_page)
        return;
    m_page = page;
    say(("shows " + page.toUtf8() + '\n').toStdString());
}

void Guide::listen()
{
    std::array<char, 4096> room{};
    const ssize_t count = ::read(STDIN_FILENO, room.data(), room.size());
    if (count <= 0) {
        QCoreApplication::quit();
        return;
    }
    m_heard.append(room.data(), count);
    // a deed waits for frames, and nothing else may be begun meanwhile
    m_notifier.setEnabled(false);
    for (qsizetype end = m_heard.indexOf('\n'); end >= 0; end = m_heard.indexOf('\n')) {
        const QByteArray deed = m_heard.left(end);
        m_heard.remove(0, end + 1);
        perform(deed);
    }
    m_notifier.setEnabled(true);
}

void Guide::perform(const QByteArray& deed)
{
    const QByteArrayList words = deed.split(' ');
    if (words.size() == 4 && words[0] == "keep")
        return keep(words);
    if (deed == "tell code")
        return tellCode();
    if (words.size() == 2 && words[0] == "tell")
        return tellText(QString::fromUtf8(words[1]));
    if (words.size() == 2 && (words[0] == "await" || words[0] == "gone"))
        return sayDone(awaitItem(QString::fromUtf8(words[1]), words[0] == "await"));
    if (words.size() == 2 && words[0] == "tryPress")
        return sayDone(m_hand.textOf(QString::fromUtf8(words[1])) ? m_hand.perform(QString::fromUtf8("press " + words[1])) : QString());
    if (words.size() == 3 && words[0] == "write")
        return sayDone(write(QString::fromUtf8(words[1]), QString::fromUtf8(words[2])));
    if (words.size() == 3 && words[0] == "plant") {
        m_leave.plan(words[1], words[2]);
        return sayDone({});
    }
    sayDone(m_hand.perform(QString::fromUtf8(deed)));
}

void Guide::keep(const QByteArrayList& words)
{
    Athlete athlete;
    athlete.name = words[1].toStdString();
    athlete.squad = words[2].toStdString();
    athlete.notes = words[3].toStdString();
    athlete.birthYear = std::chrono::year(1990); // of age, so that notes may be kept
    keepAthlete(m_household.book().keeping(), athlete, [](const Told& told) {
        sayDone(told.kept() ? QString() : QStringLiteral("the athlete was not kept"));
    });
}

QString Guide::write(const QString& field, const QString& text)
{
    auto* item = m_hand.page() ? m_hand.page()->findChild<QQuickItem*>(field) : nullptr;
    auto* typed = item ? item->property("field").value<QQuickItem*>() : nullptr;
    if (!typed)
        return QStringLiteral("there is no field %1 on %2").arg(field, m_hand.pageType());
    typed->forceActiveFocus();
    for (const QChar letter : text) {
        QKeyEvent press(QEvent::KeyPress, 0, Qt::NoModifier, QString(letter));
        QCoreApplication::sendEvent(typed, &press);
    }
    m_hand.settle(1);
    return {};
}

void Guide::tellText(const QString& name)
{
    const auto text = m_hand.textOf(name);
    if (!text)
        return sayDone(QStringLiteral("there is no %1 on %2").arg(name, m_hand.pageType()));
    say("text " + text->simplified().toUtf8().toStdString() + '\n');
}

QString Guide::awaitItem(const QString& name, bool there)
{
    constexpr int patienceMs = 30'000;
    for (QDeadlineTimer patience(patienceMs); m_hand.textOf(name).has_value() != there; m_hand.settle(1))
        if (patience.hasExpired())
            return QStringLiteral("%1 %2 on %3").arg(name, there ? QStringLiteral("does not come") : QStringLiteral("does not go"), m_hand.pageType());
    // what has just come lies where its neighbours lie until it is laid out
    m_hand.settle(1);
    return {};
}

void Guide::tellCode()
{
    auto* maker = m_hand.page() ? m_hand.page()->property("maker").value<VaultMaker*>() : nullptr;
    if (!maker)
        return sayDone(QStringLiteral("no recovery code is shown"));
    say("code ");
    say(maker->code()->view());
    say("\n");
}
