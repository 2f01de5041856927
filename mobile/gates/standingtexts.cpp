// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/standingtexts.h"

#include "mobile/gates/gatetexts.h"
#include "mobile/text/keepingtexts.h"

#include <QCoreApplication>

using namespace steelyard;

namespace standingtexts {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("standingtexts", text);
}

QString name(const std::string& who)
{
    return who.empty() ? tr("somebody") : QString::fromStdString(who);
}

/// "from 30 Oct until 14 Nov".
QString days(std::chrono::sys_days from, const std::optional<std::chrono::sys_days>& until, std::chrono::sys_days today)
{
    return until ? tr("from %1 until %2").arg(keepingtexts::day(from, today), keepingtexts::day(*until, today)) : tr("from %1 on").arg(keepingtexts::day(from, today));
}

QString notDone(const std::set<LiftGroup>& groups, const std::set<Method>& methods, const std::set<LiftId>& lifts, const SeasonBook& book)
{
    QStringList list;
    for (const LiftGroup group : groups)
        list << gatetexts::group(group);
    for (const Method method : methods)
        list << gatetexts::method(method);
    for (const LiftId& lift : lifts)
        list << keepingtexts::lift(lift, book);
    return list.isEmpty() ? QString() : tr("not: %1").arg(list.join(QStringLiteral(", ")));
}

QString joined(QString first, const QString& second)
{
    return first.isEmpty() ? second : second.isEmpty() ? first : tr("%1 · %2").arg(first, second);
}

}

QString today(const DayStanding& standing, std::chrono::sys_days today)
{
    if (standing.unread)
        return tr("not known: a newer app set it");
    const QString much = gatetexts::fitness(standing.fitness);
    return standing.until ? tr("%1, until %2").arg(much, keepingtexts::day(*standing.until, today)) : much;
}

QString what(const DayStanding& standing, const SeasonBook& book)
{
    QStringList texts;
    for (const std::string& text : standing.texts)
        texts << QString::fromStdString(text);
    return joined(notDone(standing.notGroups, standing.notMethods, standing.notLifts, book), texts.join(QStringLiteral(" · ")));
}

QString status(const DayStatus& status, const SeasonBook& book)
{
    if (status.unread)
        return tr("set by a newer app");
    const QString said = joined(notDone(status.notGroups, status.notMethods, status.notLifts, book), QString::fromStdString(status.text));
    return said.isEmpty() ? gatetexts::fitness(status.fitness) : tr("%1, %2").arg(gatetexts::fitness(status.fitness), said);
}

QString setBy(const DayStatus& status, std::chrono::sys_days today)
{
    const QString set = tr("%1, %2").arg(name(status.who), days(status.day, status.until, today));
    return status.lifted ? tr("%1; lifted: %2").arg(set, saidSo(*status.lifted, today)) : set;
}

QString stateOf(const DayStatus& status, std::chrono::sys_days today)
{
    if (holdsOn(status, today))
        return tr("holds");
    if (status.lifted)
        return tr("lifted");
    return today < status.day ? tr("to come") : tr("over");
}

QString clearedFor(const Clearance& clearance, const SeasonBook& book)
{
    return tr("%1: %2").arg(keepingtexts::lift(clearance.lift, book), gatetexts::method(clearance.method));
}

QString givenBy(const Clearance& clearance, std::chrono::sys_days today)
{
    QString given = tr("%1, %2").arg(name(clearance.who), days(clearance.day, clearance.until, today));
    if (clearance.approvesMinor)
        given = tr("%1; knowing that she may be under age").arg(given);
    return clearance.takenBack ? tr("%1; taken back: %2").arg(given, saidSo(*clearance.takenBack, today)) : given;
}

QString stateOf(const Clearance& clearance, ClearanceState state, std::chrono::sys_days today)
{
    switch (state) {
    case ClearanceState::Valid: return tr("holds");
    case ClearanceState::NotYet: return tr("from %1 on").arg(keepingtexts::day(clearance.day, today));
    case ClearanceState::Expired: return tr("over");
    case ClearanceState::TakenBack: break;
    }
    return tr("taken back");
}

QString saidSo(const SaidSo& by, std::chrono::sys_days today)
{
    return tr("%1, %2").arg(name(by.who), keepingtexts::day(by.day, today));
}

QString waits(const std::optional<Unfit>& unfit)
{
    if (!unfit)
        return {};
    return unfit == Unfit::BirthYearFirst ? tr("The birth year comes first: without it nobody knows whether a guardian has to agree.")
                                          : tr("A parent or guardian has to agree first: until then only name, squad and loads are kept.");
}

}
