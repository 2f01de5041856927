// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/dayeditor.h"

#include <QCborArray>
#include <QCborValue>

using namespace std::chrono;

namespace {

constexpr int version = 1;

}

TypedDay TypedDay::of(sys_days date)
{
    const year_month_day parts(date);
    return {static_cast<int>(static_cast<unsigned>(parts.day())), static_cast<int>(static_cast<unsigned>(parts.month())), static_cast<int>(parts.year())};
}

std::optional<sys_days> TypedDay::date() const
{
    const year_month_day parts(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)), std::chrono::day(static_cast<unsigned>(day)));
    return parts.ok() ? std::optional(sys_days(parts)) : std::nullopt;
}

QByteArray TypedDay::bytes() const
{
    return QCborArray{version, day, month, year}.toCborValue().toCbor();
}

std::optional<TypedDay> TypedDay::in(const QByteArray& bytes)
{
    const QCborArray list = QCborValue::fromCbor(bytes).toArray();
    if (list.size() != 4 || list.at(0).toInteger() != version)
        return std::nullopt;
    return TypedDay{static_cast<int>(list.at(1).toInteger()), static_cast<int>(list.at(2).toInteger()), static_cast<int>(list.at(3).toInteger())};
}

DayEditor::DayEditor(Read read, Write write, QObject* parent) : FieldEditor(parent), m_read(std::move(read)), m_write(std::move(write)) {}

std::vector<FieldSpec> DayEditor::specs() const
{
    const auto typed = m_read();
    if (!typed)
        return {};
    return {{QStringLiteral("day"), tr("Day of the month"), unitless(typed->day), {2, 0, 1, 31}, false, {}},
            {QStringLiteral("month"), tr("Month"), unitless(typed->month), {2, 0, 1, 12}, false, {}},
            {QStringLiteral("year"), tr("Year"), unitless(typed->year), {4, 0, 1970, 2200}, false, {}}};
}

KeepOutcome DayEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    auto typed = m_read();
    if (!typed)
        return {tr("There is no such number."), {}};
    const int number = static_cast<int>(keyed.ratio);
    if (key == QLatin1String("day"))
        typed->day = number;
    else if (key == QLatin1String("month"))
        typed->month = number;
    else if (key == QLatin1String("year"))
        typed->year = number;
    else
        return {tr("There is no such number."), {}};
    m_write(*typed);
    refresh();
    return {};
}

QString DayEditor::trouble(const TypedDay& day, sys_days today)
{
    const auto date = day.date();
    if (!date)
        return tr("There is no such day: look at day and month.");
    return *date > today ? tr("That day lies ahead.") : QString();
}
