// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/strength/testform.h"

#include "core/work/records/codec.h"

using namespace steelyard;

namespace testform {

namespace {

// keys of what is half entered, as records write their quantities; 1 says the version
enum DraftKey : std::uint32_t { DraftVersion = 1, DraftLoad, DraftBody, DraftJump, DraftReps, DraftReserve, DraftMissed, DraftMaximum, DraftHelped, DraftHung, DraftSetup, DraftToday, DraftDay, DraftMonth, DraftYear };
constexpr int version = 1;

std::optional<Method> methodIn(journal::ByteView item)
{
    const auto number = journal::numberIn(item);
    const auto method = static_cast<Method>(number.value_or(0));
    return number && canHangInTest(method) ? std::optional(method) : std::nullopt;
}

std::optional<int> numberIf(RecordReader& reader, std::uint32_t key)
{
    return reader.has(key) ? std::optional(static_cast<int>(reader.neededNumber(key))) : std::nullopt;
}

}

QString draftKey(const RecordId& athlete, const LiftId& lift, const RecordId& test)
{
    return QStringLiteral("test:%1:%2:%3").arg(QString::fromStdString(athlete.hex()), QString::fromStdString(partOf(lift)), test.isNone() ? QString() : QString::fromStdString(test.hex()));
}

TestForm of(const StrengthTest& test)
{
    TestForm form;
    form.helped = test.load.quantity() < Mass{};
    form.load = form.helped ? Entered<Mass>(-1 * test.load.quantity()) : test.load;
    form.body = test.conditions.bodyMass;
    form.jump = test.leastJump;
    form.reps = test.reps;
    form.reserve = test.repsInReserve;
    form.missed = test.missed;
    form.maximum = test.maximum;
    form.hung = test.conditions.hung;
    form.setup = test.conditions.setup;
    form.day = TypedDay::of(test.day);
    form.isToday = false;
    return form;
}

StrengthTest test(const TestForm& form, std::chrono::sys_days today)
{
    StrengthTest made;
    if (form.load)
        made.load = form.helped ? Entered<Mass>(-1 * form.load->quantity()) : *form.load;
    made.maximum = form.maximum;
    made.reps = form.maximum ? 1 : form.reps.value_or(0);
    made.missed = form.missed && !form.maximum;
    made.repsInReserve = form.maximum || form.missed ? std::nullopt : form.reserve;
    made.leastJump = form.maximum ? form.jump : std::nullopt;
    made.conditions = {form.hung, form.setup, form.body};
    made.day = form.isToday ? today : form.day.date().value_or(today);
    return made;
}

QByteArray bytesOf(const TestForm& form, const VaultSettings& units)
{
    RecordWriter writer(units);
    writer.number(DraftVersion, version).mass(DraftLoad, form.load).mass(DraftBody, form.body).mass(DraftJump, form.jump);
    if (form.reps)
        writer.number(DraftReps, *form.reps);
    if (form.reserve)
        writer.number(DraftReserve, *form.reserve);
    writer.flag(DraftMissed, form.missed).flag(DraftMaximum, form.maximum).flag(DraftHelped, form.helped);
    std::vector<Content> hung;
    for (const Method method : form.hung)
        hung.push_back(journal::numberItem(static_cast<std::int64_t>(method)));
    if (!hung.empty())
        writer.list(DraftHung, hung);
    if (!form.setup.isNone())
        writer.id(DraftSetup, form.setup);
    writer.flag(DraftToday, form.isToday).number(DraftDay, form.day.day).number(DraftMonth, form.day.month).number(DraftYear, form.day.year);
    const Content content = writer.content();
    return content ? QByteArray(reinterpret_cast<const char*>(content->data()), static_cast<qsizetype>(content->size())) : QByteArray();
}

std::optional<TestForm> in(const QByteArray& bytes)
{
    RecordReader reader(std::as_bytes(std::span(bytes.constData(), static_cast<std::size_t>(bytes.size()))));
    if (!reader.is() || reader.neededNumber(DraftVersion) != version)
        return std::nullopt;
    TestForm form;
    form.load = reader.mass(DraftLoad);
    form.body = reader.mass(DraftBody);
    form.jump = reader.mass(DraftJump);
    form.reps = numberIf(reader, DraftReps);
    form.reserve = numberIf(reader, DraftReserve);
    form.missed = reader.flag(DraftMissed);
    form.maximum = reader.flag(DraftMaximum);
    form.helped = reader.flag(DraftHelped);
    const auto hung = reader.list<Method>(DraftHung, methodIn);
    form.hung = {hung.begin(), hung.end()};
    if (reader.has(DraftSetup))
        form.setup = reader.neededId(DraftSetup);
    form.isToday = reader.flag(DraftToday);
    form.day = {static_cast<int>(reader.neededNumber(DraftDay)), static_cast<int>(reader.neededNumber(DraftMonth)), static_cast<int>(reader.neededNumber(DraftYear))};
    return reader.fits() ? std::optional(form) : std::nullopt;
}

}
