// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/markseditor.h"

#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

using namespace steelyard;

namespace {

std::optional<double> inCm(const std::optional<Length>& length)
{
    return length ? std::optional(inMetres(*length) * 100) : std::nullopt;
}

/// Where a key's mark stands in the record.
std::optional<Length>* markOf(BarMarks& marks, const QString& key)
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
    const QString cm = tr("cm");
    const EntryLimits height{3, 1, 1, 300};
    const bool floor = m.start == LiftStart::Floor;
    std::vector<FieldSpec> all;
    if (floor)
        all.push_back({QStringLiteral("blocks"), tr("Blocks under the plates"), cm, {3, 1, 0, 150}, inCm(m.blocks), false, tr("none, or their height")});
    else
        all.push_back({QStringLiteral("bottom"), tr("Bottom"), cm, height, inCm(m.bottom), false, tr("floor to the bar's middle, at the sleeve"), true});
    all.push_back({QStringLiteral("zoneFrom"), tr("Sticking zone from"), cm, height, inCm(m.zoneFrom), false, tr("her own, or leave it out")});
    all.push_back({QStringLiteral("zoneTo"), tr("Sticking zone to"), cm, height, inCm(m.zoneTo), false, {}});
    all.push_back({QStringLiteral("top"), tr("Top"), cm, height, inCm(m.top), false, tr("standing tall, or arms straight"), true});
    if (!floor)
        all.push_back({QStringLiteral("rack"), tr("Rack"), cm, height, inCm(m.rack), false, tr("where she takes the bar; may be left out")});
    return all;
}

KeepOutcome MarksEditor::keepNumber(const QString& key, double shown)
{
    BarMarks marks = desk().marks();
    std::optional<Length>* mark = markOf(marks, key);
    if (!mark)
        return {tr("There is no such mark."), {}};
    *mark = metres(shown / 100);
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

QVariantList MarksEditor::marks() const
{
    QVariantList list;
    if (!ready())
        return list;
    const BarMarks& m = desk().marks();
    const auto& path = desk().answer().path;
    const auto add = [&list](const QString& name, const std::optional<Height>& height) {
        if (height)
            list.append(QVariantMap{{QStringLiteral("name"), name}, {QStringLiteral("height"), inMetres(*height)}, {QStringLiteral("text"), tr("%1 cm").arg(say::centimetres(*height))}});
    };
    add(tr("bottom"), fromFloor() ? (path ? std::optional(path->bottom) : std::nullopt) : m.bottom);
    add(tr("zone from"), m.zoneFrom);
    add(tr("zone to"), m.zoneTo);
    if (!fromFloor())
        add(tr("rack"), m.rack);
    add(tr("top"), m.top);
    return list;
}
