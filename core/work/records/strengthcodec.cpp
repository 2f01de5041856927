// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/codec.h"

#include <limits>
#include <type_traits>

namespace steelyard {

namespace {

constexpr Numbered<Fitness, 3> fitnesses{{{{Fitness::All, 1}, {Fitness::Some, 2}, {Fitness::None, 3}}}};

/// One of those whose values are the numbers themselves, from 1 to the last that is known here.
template <typename Value>
std::optional<Value> upTo(Value last, journal::ByteView item)
{
    const auto number = journal::numberIn(item);
    const bool known = number && *number >= 1 && *number <= static_cast<std::int64_t>(last);
    return known ? std::optional(static_cast<Value>(*number)) : std::nullopt;
}

std::optional<Method> methodIn(journal::ByteView item)
{
    return upTo(lastMethod, item);
}

std::optional<LiftGroup> groupIn(journal::ByteView item)
{
    return upTo(lastLiftGroup, item);
}

template <typename Value>
Content itemOf(const Value& value)
{
    if constexpr (std::is_enum_v<Value>)
        return journal::numberItem(static_cast<std::int64_t>(value));
    else
        return contentOf(value);
}

/// Nothing for an empty list.
template <typename Value>
void putEach(RecordWriter& writer, std::uint32_t keyNumber, const std::set<Value>& values)
{
    std::vector<Content> items;
    items.reserve(values.size());
    for (const Value& value : values)
        items.push_back(itemOf(value));
    if (!items.empty())
        writer.list(keyNumber, items);
}

template <typename Value>
std::set<Value> each(RecordReader& reader, std::uint32_t keyNumber, std::optional<Value> (*read)(journal::ByteView))
{
    const std::vector<Value> values = reader.list<Value>(keyNumber, read);
    return {values.begin(), values.end()};
}

void putText(RecordWriter& writer, std::uint32_t keyNumber, const std::string& text)
{
    if (!text.empty())
        writer.text(keyNumber, text);
}

std::string textIf(RecordReader& reader, std::uint32_t keyNumber)
{
    return reader.has(keyNumber) ? reader.neededText(keyNumber) : std::string();
}

/// A number that counts something.
int countIn(RecordReader& reader, std::uint32_t keyNumber)
{
    const std::int64_t number = reader.neededNumber(keyNumber);
    const bool fits = number >= 0 && number <= std::numeric_limits<int>::max();
    return reader.needed(fits ? std::optional(static_cast<int>(number)) : std::nullopt);
}

}

Content contentOf(const StrengthTest& test, const WrittenIn& in)
{
    RecordWriter writer(in);
    writer.part(1, contentOf(test.lift)).mass(2, test.load).number(3, test.reps);
    if (test.repsInReserve)
        writer.number(4, *test.repsInReserve);
    writer.flag(5, test.missed).flag(6, test.maximum).mass(7, test.leastJump);
    putEach(writer, 8, test.conditions.hung);
    if (!test.conditions.setup.isNone())
        writer.id(9, test.conditions.setup);
    writer.mass(10, test.conditions.bodyMass);
    putText(writer, 11, test.note);
    return writer.content();
}

std::optional<StrengthTest> strengthTestIn(journal::ByteView content)
{
    RecordReader reader(content);
    StrengthTest test;
    test.lift = reader.neededItem<LiftId>(1, liftIdIn);
    test.load = reader.neededMass(2);
    test.reps = countIn(reader, 3);
    if (reader.has(4))
        test.repsInReserve = countIn(reader, 4);
    test.missed = reader.flag(5);
    test.maximum = reader.flag(6);
    test.leastJump = reader.mass(7);
    test.conditions.hung = each<Method>(reader, 8, methodIn);
    if (reader.has(9))
        test.conditions.setup = reader.neededId(9);
    test.conditions.bodyMass = reader.mass(10);
    test.note = textIf(reader, 11);
    return ifRead(reader, std::move(test));
}

Content contentOf(const Clearance& clearance)
{
    return RecordWriter({}).part(1, contentOf(clearance.lift)).part(2, itemOf(clearance.method)).text(3, clearance.who).day(4, clearance.until)
        .flag(5, clearance.approvesMinor).content();
}

std::optional<Clearance> clearanceIn(journal::ByteView content)
{
    RecordReader reader(content);
    Clearance clearance;
    clearance.lift = reader.neededItem<LiftId>(1, liftIdIn);
    clearance.method = reader.neededItem<Method>(2, methodIn);
    clearance.who = reader.neededText(3);
    clearance.until = reader.day(4);
    clearance.approvesMinor = reader.flag(5);
    // a condition that is not known here is not met
    reader.endsAt(5);
    return ifRead(reader, std::move(clearance));
}

Content contentOf(const DayStatus& status)
{
    RecordWriter writer({});
    writer.number(1, fitnesses.numberOf(status.fitness)).text(2, status.who).day(3, status.until);
    putEach(writer, 4, status.notMethods);
    putEach(writer, 5, status.notGroups);
    putEach(writer, 6, status.notLifts);
    putText(writer, 7, status.text);
    return writer.content();
}

std::optional<DayStatus> dayStatusIn(journal::ByteView content)
{
    RecordReader reader(content);
    DayStatus status;
    status.fitness = reader.among(1, fitnesses);
    status.who = reader.neededText(2);
    status.until = reader.day(3);
    status.notMethods = each<Method>(reader, 4, methodIn);
    status.notGroups = each<LiftGroup>(reader, 5, groupIn);
    status.notLifts = each<LiftId>(reader, 6, liftIdIn);
    status.text = textIf(reader, 7);
    // what else it forbids is not known here
    reader.endsAt(7);
    return ifRead(reader, std::move(status));
}

Content contentOf(const SaidSo& saidSo)
{
    return RecordWriter({}).text(1, saidSo.who).day(2, saidSo.day).content();
}

std::optional<SaidSo> saidSoIn(journal::ByteView content)
{
    RecordReader reader(content);
    SaidSo saidSo{reader.neededText(1), reader.neededDay(2)};
    return ifRead(reader, std::move(saidSo));
}

}
