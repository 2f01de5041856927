// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/rackeditor.h"

#include "core/work/measuring/rackholes.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

#include <cmath>

using namespace steelyard;

RackMeasurement RackEditor::measurement() const
{
    const KitItem now = item();
    const auto* rack = std::get_if<RackMeasurement>(&now.measurement);
    return rack ? *rack : RackMeasurement{};
}

std::vector<FieldSpec> RackEditor::specs() const
{
    if (!ready())
        return {};
    const RackMeasurement m = measurement();
    std::vector<FieldSpec> all;
    if (choice() == 0) {
        all.push_back({QStringLiteral("lowest"), tr("Lowest hole"), inLength(m.firstHole), {3, 1, 1, 250}, false, tr("floor to the middle of a bar that lies there"), true});
        all.push_back({QStringLiteral("spacing"), tr("Hole to hole"), inLength(m.spacing), {2, 2, 1, 60}, false, tr("middle to middle"), true});
        all.push_back({QStringLiteral("count"), tr("Holes"), unitless(m.holeCount > 0 ? std::optional<double>(m.holeCount) : std::nullopt), {2, 0, 1, mostHoleCount}, false, tr("from the lowest to the highest that is used"), true});
        all.back().unit = tr("holes");
    }
    for (std::size_t i = 0; i < m.anchors.size(); ++i)
        all.push_back({keyAt("anchor", i), tr("Bands, place %1").arg(i + 1), inLength(m.anchors[i]), {3, 1, 0, 350}, false, tr("floor to where a band holds")});
    if (m.anchors.size() < mostAnchors)
        all.push_back({keyAt("anchor", m.anchors.size()), tr("Bands, place %1").arg(m.anchors.size() + 1), inLength(std::nullopt), {3, 1, 0, 350}, false,
                       tr("floor to where a band holds; may be left out"), choice() == 1 && m.anchors.empty()});
    return all;
}

KeepOutcome RackEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    RackMeasurement m = measurement();
    const auto anchor = placeIn(key, "anchor");
    if (key == QLatin1String("lowest"))
        m.firstHole = keyed.length();
    else if (key == QLatin1String("spacing"))
        m.spacing = keyed.length();
    else if (key == QLatin1String("count"))
        m.holeCount = static_cast<int>(std::lround(keyed.ratio));
    else if (anchor && *anchor < m.anchors.size())
        m.anchors[*anchor] = keyed.length();
    else if (anchor && *anchor == m.anchors.size() && *anchor < mostAnchors)
        m.anchors.push_back(keyed.length());
    else
        return {tr("There is no such entry."), {}};
    setMeasured(m);
    return {};
}

bool RackEditor::clearNumber(const QString& key)
{
    RackMeasurement m = measurement();
    const auto at = placeIn(key, "anchor");
    if (!at || *at >= m.anchors.size())
        return false;
    m.anchors.erase(m.anchors.begin() + static_cast<std::ptrdiff_t>(*at));
    setMeasured(m);
    return true;
}

ToolWords RackEditor::words() const
{
    ToolWords words;
    words.title = tr("Measure a rack");
    words.intro = tr("With its holes known, a bar mark is a hole's number, and bands find their anchor. Measure at the rack as it stands, with the bar in it.");
    words.choiceLabel = tr("It has");
    words.choices = QStringList{tr("holes for the bar"), tr("places for bands only")};
    words.choiceFacts = QStringList{tr("lowest, distance, how many"), tr("hooks, pegs, a beam")};
    if (ready() && measurement().anchors.size() < mostAnchors)
        words.more = tr("Add a place for bands");
    words.drawing = QStringLiteral("rack");
    return words;
}

int RackEditor::choice() const
{
    if (!ready())
        return 0;
    const RackMeasurement m = measurement();
    const bool holes = m.holeCount > 0 || m.firstHole || m.spacing;
    return holes ? 0 : m_anchorsOnly || !m.anchors.empty() ? 1 : 0;
}

void RackEditor::setChoice(int choice)
{
    m_anchorsOnly = choice == 1;
    RackMeasurement m = measurement();
    if (m_anchorsOnly) {
        m.firstHole.reset();
        m.spacing.reset();
        m.holeCount = 0;
    }
    setMeasured(m);
    refresh();
}

QString RackEditor::question(const QString& key) const
{
    if (key == QLatin1String("lowest"))
        return tr("How high is the lowest hole?");
    if (key == QLatin1String("spacing"))
        return tr("How far from hole to hole?");
    return key == QLatin1String("count") ? tr("How many holes?") : tr("How high can a band be anchored?");
}

QString RackEditor::how(const QString& key) const
{
    if (key == QLatin1String("lowest"))
        return tr("Floor to the middle of a bar that lies in its hook there, read at the sleeve.");
    if (key == QLatin1String("spacing"))
        return tr("Middle to middle. Over ten of them, divided by ten, it is surer.");
    if (key == QLatin1String("count"))
        return tr("From the lowest, which is number 1, to the highest that is used.");
    return tr("Floor to where the band will hold. It has to hold more than the band pulls.");
}

QString RackEditor::answer() const
{
    const auto rack = checked(measurement());
    return rack ? tooltexts::rack(*rack) : tr("Its heights: not known yet");
}

QString RackEditor::verdict() const
{
    const auto rack = checked(measurement());
    return rack && rack->lowest ? tr("A mark read at a hole counts as good to a centimetre, as by tape (our choice).") : QString();
}

QString RackEditor::gain() const
{
    const auto rack = checked(measurement());
    return rack && rack->anchors.empty() ? tr("Places where bands can be anchored may be added.") : QString();
}

QString RackEditor::addEntry()
{
    const std::size_t count = measurement().anchors.size();
    return count < mostAnchors ? keyAt("anchor", count) : QString();
}

QString RackEditor::ownName(const KitItem& item) const
{
    const auto* m = std::get_if<RackMeasurement>(&item.measurement);
    return m && m->holeCount > 0 ? tr("Rack, %n holes", nullptr, m->holeCount) : tr("Rack");
}

std::optional<Error> RackEditor::refusalOf(const Measured& measured) const
{
    const auto* rack = std::get_if<RackMeasurement>(&measured);
    const auto heights = checked(rack ? *rack : RackMeasurement{});
    return heights ? std::nullopt : std::optional(heights.error());
}
