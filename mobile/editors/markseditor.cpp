// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/markseditor.h"

#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

using namespace steelyard;

namespace {

/// Where a key's mark stands in the record.
std::optional<Entered<Length>>* markOf(BarMarks& marks, const QString& key)
{
    if (key == QLatin1String("bottom"))
        return &marks.bottom;
    if (key == QLatin1String("blocks"))
        return &marks.blocks;
    if (key == QLatin1String("zoneFrom"))
        return &marks.zoneFrom;
    if (key == QLatin1String("zoneTo"))
        return &marks.zoneTo;
    if (key == QLatin1String("top"))
        return &marks.top;
    if (key == QLatin1String("rack"))
        return &marks.rack;
    return nullptr;
}

}

std::vector<FieldSpec> MarksEditor::specs() const
{
    if (!ready())
        return {};
    const BarMarks& m = desk().marks();
    const EntryLimits height{3, 1, 1, 300};
    const bool floor = m.start == LiftStart::Floor;
    std::vector<FieldSpec> all;
    if (floor)
        all.push_back({QStringLiteral("blocks"), tr("Blocks under the plates"), inLength(m.blocks), {3, 1, 0, 150}, false, tr("none, or their height")});
    else
        all.push_back({QStringLiteral("bottom"), tr("Bottom"), inLength(m.bottom), height, false, tr("floor to the bar's middle, at the sleeve"), true});
    all.push_back({QStringLiteral("zoneFrom"), tr("Sticking zone from"), inLength(m.zoneFrom), height, false, tr("her own, or leave it out")});
    all.push_back({QStringLiteral("zoneTo"), tr("Sticking zone to"), inLength(m.zoneTo), height, false, {}});
    all.push_back({QStringLiteral("top"), tr("Top"), inLength(m.top), height, false, tr("standing tall, or arms straight"), true});
    if (!floor)
        all.push_back({QStringLiteral("rack"), tr("Rack"), inLength(m.rack), height, false, tr("where she takes the bar; may be left out")});
    return all;
}

KeepOutcome MarksEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    BarMarks marks = desk().marks();
    std::optional<Entered<Length>>* mark = markOf(marks, key);
    if (!mark)
        return {tr("There is no such mark."), {}};
    *mark = keyed.length();
    desk().setMarks(marks);
    return {};
}

bool MarksEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    BarMarks marks = desk().marks();
    markOf(marks, key)->reset();
    desk().setMarks(marks);
    return true;
}

bool MarksEditor::canClear(const QString& key) const
{
    BarMarks any;
    return markOf(any, key) && key != QLatin1String("bottom") && key != QLatin1String("top");
}

bool MarksEditor::fromFloor() const
{
    return ready() && desk().marks().start == LiftStart::Floor;
}

void MarksEditor::setFromFloor(bool fromFloor)
{
    BarMarks marks = desk().marks();
    marks.start = fromFloor ? LiftStart::Floor : LiftStart::OwnBottom;
    desk().setMarks(marks);
}

QString MarksEditor::trouble() const
{
    if (!ready())
        return {};
    const WeighedUp& answer = desk().answer();
    if (!answer.error || !answer.load)
        return {};
    const bool ofMarks = answer.readiness == Readiness::MarksMissing || answer.error->code == Refusal::HeightsOutOfOrder;
    return ofMarks ? sentences::refusal(*answer.error) : QString();
}

double MarksEditor::unitLength() const
{
    return inMetres(say::units().length == LengthUnit::Inch ? inch : metres(0.01));
}

QVariantList MarksEditor::marks() const
{
    QVariantList list;
    if (!ready())
        return list;
    const BarMarks& m = desk().marks();
    const auto& path = desk().answer().path;
    const auto add = [&list](const QString& name, const std::optional<Entered<Height>>& height) {
        if (height)
            list.append(QVariantMap{{QStringLiteral("name"), name}, {QStringLiteral("height"), inMetres(*height)}, {QStringLiteral("text"), say::inLengthUnit(say::entered(*height))}});
    };
    add(tr("bottom"), fromFloor() ? (path ? std::optional(Entered<Height>(path->bottom)) : std::nullopt) : m.bottom);
    add(tr("zone from"), m.zoneFrom);
    add(tr("zone to"), m.zoneTo);
    if (!fromFloor())
        add(tr("rack"), m.rack);
    add(tr("top"), m.top);
    return list;
}
