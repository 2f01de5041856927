// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/markseditor.h"

#include "mobile/text/marktexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <algorithm>
#include <cmath>

using namespace steelyard;

namespace {

/// Where a key's mark stands in the record, and the hole that it was read at.
struct MarkPlace {
    std::optional<Entered<Length>>* height = nullptr;
    std::optional<HoleRead>* hole = nullptr; ///< none for what is no height of the bar
};

MarkPlace placeOf(BarMarks& marks, const QString& key)
{
    if (key == QLatin1String("bottom"))
        return {&marks.bottom, &marks.holes.bottom};
    if (key == QLatin1String("blocks"))
        return {&marks.blocks, nullptr};
    if (key == QLatin1String("zoneFrom"))
        return {&marks.zoneFrom, &marks.holes.zoneFrom};
    if (key == QLatin1String("zoneTo"))
        return {&marks.zoneTo, &marks.holes.zoneTo};
    if (key == QLatin1String("top"))
        return {&marks.top, &marks.holes.top};
    if (key == QLatin1String("rack"))
        return {&marks.rack, &marks.holes.rack};
    return {};
}

}

std::vector<FieldSpec> MarksEditor::specs() const
{
    if (!ready())
        return {};
    const BarMarks& m = desk().marks();
    const bool floor = m.start == LiftStart::Floor;
    std::vector<FieldSpec> all;
    if (floor)
        all.push_back({QStringLiteral("blocks"), tr("Blocks under the plates"), inLength(m.blocks), {3, 1, 0, 150}, false, tr("none, or their height")});
    else
        all.push_back(markSpec(QStringLiteral("bottom"), tr("Bottom"), tr("floor to the bar's middle, at the sleeve"), true));
    all.push_back(markSpec(QStringLiteral("zoneFrom"), tr("Sticking zone from"), tr("her own, or leave it out")));
    all.push_back(markSpec(QStringLiteral("zoneTo"), tr("Sticking zone to"), {}));
    all.push_back(markSpec(QStringLiteral("top"), tr("Top"), tr("standing tall, or arms straight"), true));
    if (!floor)
        all.push_back(markSpec(QStringLiteral("rack"), tr("Rack"), tr("where she takes the bar; may be left out")));
    return all;
}

FieldSpec MarksEditor::markSpec(const QString& key, const QString& label, const QString& hint, bool needed) const
{
    BarMarks marks = desk().marks();
    const MarkPlace place = placeOf(marks, key);
    const auto rack = rackRead();
    if (!rack) {
        const QString how = *place.hole && *place.height ? marktexts::readAt(**place.hole, **place.height, desk().kit()) : QString();
        return {key, label, inLength(*place.height), {3, 1, 1, 300}, false, how.isEmpty() ? hint : how, needed};
    }
    const bool here = *place.hole && (*place.hole)->rack == rack->item;
    const QString sum = here && *place.height ? marktexts::sum(originOf(**place.hole, **place.height, desk().kit())) : QString();
    const QString height = *place.height ? say::inLengthUnit(say::entered(**place.height)) : QString();
    const QString about = height.isEmpty() ? hint : !here ? tr("by tape, no hole") : sum.isEmpty() ? height : sum;
    FieldSpec spec(key, tr("%1, hole").arg(label), unitless(here ? std::optional<double>((*place.hole)->hole) : std::nullopt),
                   {2, 0, 1, static_cast<double>(rack->check.holeCount)}, false, about, needed && !*place.height);
    if (!here)
        spec.text = height;
    return spec;
}

KeepOutcome MarksEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    BarMarks marks = desk().marks();
    const MarkPlace place = placeOf(marks, key);
    if (!place.height)
        return {tr("There is no such mark."), {}};
    const auto rack = place.hole ? rackRead() : std::nullopt;
    if (rack) {
        const int hole = static_cast<int>(std::lround(keyed.ratio));
        const auto height = heightOfHole(rack->measured, hole);
        if (!height)
            return {tr("%1 has %n holes, and the lowest is 1.", nullptr, rack->check.holeCount).arg(QString::fromStdString(rack->name)), {}};
        *place.height = *height;
        *place.hole = HoleRead{rack->item, hole};
    } else {
        *place.height = keyed.length();
        if (place.hole)
            place.hole->reset();
    }
    desk().setMarks(marks);
    return {};
}

bool MarksEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    BarMarks marks = desk().marks();
    const MarkPlace place = placeOf(marks, key);
    place.height->reset();
    if (place.hole)
        place.hole->reset();
    desk().setMarks(marks);
    return true;
}

bool MarksEditor::canClear(const QString& key) const
{
    BarMarks any;
    return placeOf(any, key).height && key != QLatin1String("bottom") && key != QLatin1String("top");
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

std::vector<KeptRack> MarksEditor::racksHere() const
{
    std::vector<KeptRack> racks;
    if (ready())
        racks = racksIn(desk().kit());
    std::erase_if(racks, [](const KeptRack& rack) { return rack.check.holeCount == 0; });
    return racks;
}

std::optional<KeptRack> MarksEditor::rackRead() const
{
    const int place = rack();
    return place > 0 ? std::optional(racksHere()[static_cast<std::size_t>(place) - 1]) : std::nullopt;
}

QStringList MarksEditor::racks() const
{
    QStringList list;
    for (const KeptRack& rack : racksHere())
        list << tr("hole of %1").arg(QString::fromStdString(rack.name));
    if (!list.isEmpty())
        list.prepend(tr("tape"));
    return list;
}

int MarksEditor::rack() const
{
    const auto all = racksHere();
    const auto at = std::find_if(all.begin(), all.end(), [this](const KeptRack& rack) { return rack.item == m_rack; });
    return at == all.end() ? 0 : static_cast<int>(at - all.begin()) + 1;
}

void MarksEditor::setRack(int place)
{
    const auto all = racksHere();
    m_rack = place > 0 && static_cast<std::size_t>(place) <= all.size() ? all[static_cast<std::size_t>(place) - 1].item : RecordId{};
    refresh();
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
