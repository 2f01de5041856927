// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/scaleeditor.h"

#include "core/work/measuring/scalecheck.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

using namespace steelyard;

namespace {

std::optional<Entered<Mass>> withoutSign(const std::optional<Entered<Mass>>& mass)
{
    return mass && mass->si() < 0 ? std::optional(opposite(*mass)) : mass;
}

}

ScaleMeasurement ScaleEditor::measurement() const
{
    const KitItem now = item();
    const auto* scale = std::get_if<ScaleMeasurement>(&now.measurement);
    return scale ? *scale : ScaleMeasurement{};
}

std::vector<FieldSpec> ScaleEditor::specs() const
{
    if (!ready())
        return {};
    const ScaleMeasurement m = measurement();
    std::vector<FieldSpec> all{
        {QStringLiteral("empty"), choice() == 1 ? tr("Shows empty, under 0") : tr("Shows empty"), inMass(withoutSign(m.empty)), {2, 3, 0, 20}, false, tr("with nothing on it"), true},
        {QStringLiteral("step"), tr("Step of the scale"), inMass(m.step), {1, 3, 0.001, 5}, false, tooltexts::stepHint(), true}};
    for (std::size_t i = 0; i < m.readings.size(); ++i) {
        const ScaleReading& reading = m.readings[i];
        all.push_back({keyAt("known", i), tr("Known mass %1").arg(i + 1), inMass(reading.known), {3, 3, 0.1, 300}, false, tr("what hangs on it"), true});
        all.push_back({keyAt("read", i), tr("It reads, %1").arg(i + 1), inMass(reading.read), {3, 3, 0, 400}, false, tr("once it hangs still"), true});
    }
    return all;
}

KeepOutcome ScaleEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    ScaleMeasurement m = measurement();
    const auto known = placeIn(key, "known"), read = placeIn(key, "read");
    if (key == QLatin1String("empty"))
        m.empty = choice() == 1 ? opposite(keyed.mass()) : keyed.mass();
    else if (key == QLatin1String("step"))
        m.step = keyed.mass();
    else if (known && *known < m.readings.size())
        m.readings[*known].known = keyed.mass();
    else if (read && *read < m.readings.size())
        m.readings[*read].read = keyed.mass();
    else
        return {tr("There is no such entry."), {}};
    setMeasured(m);
    return {};
}

bool ScaleEditor::canClear(const QString& key) const
{
    return placeIn(key, "known") || placeIn(key, "read");
}

bool ScaleEditor::clearNumber(const QString& key)
{
    ScaleMeasurement m = measurement();
    const auto known = placeIn(key, "known"), at = known ? known : placeIn(key, "read");
    if (!at || *at >= m.readings.size())
        return false;
    // a mass without its reading says nothing, so both go
    m.readings.erase(m.readings.begin() + static_cast<std::ptrdiff_t>(*at));
    setMeasured(m);
    return true;
}

ToolWords ScaleEditor::words() const
{
    ToolWords words;
    words.title = tr("Check a scale");
    words.intro = tr("Whatever is weighed is out by as much as the scale is. Hang something of known mass on it: a plate made to a competition standard, or water, "
                     "of which a litre weighs %1. Never more than the scale and its hook are made for; feet clear of what hangs.")
                      .arg(say::massWithUnit(kilograms(1)));
    words.choiceLabel = tr("Empty, it shows");
    words.choices = QStringList{tr("0 or more"), tr("under 0")};
    words.choiceAt = QStringLiteral("empty");
    if (ready() && measurement().readings.size() < mostReadings)
        words.more = tr("One more known mass");
    words.drawing = QStringLiteral("scale");
    return words;
}

int ScaleEditor::choice() const
{
    const auto empty = ready() ? measurement().empty : std::nullopt;
    return empty && empty->si() != 0 ? (empty->si() < 0 ? 1 : 0) : m_below ? 1 : 0;
}

void ScaleEditor::setChoice(int choice)
{
    m_below = choice == 1;
    ScaleMeasurement m = measurement();
    if (m.empty && m.empty->si() != 0 && (m.empty->si() < 0) != m_below) {
        m.empty = opposite(*m.empty);
        setMeasured(m);
    }
    refresh();
}

QString ScaleEditor::question(const QString& key) const
{
    if (key == QLatin1String("empty"))
        return tr("What does it show empty?");
    if (key == QLatin1String("step"))
        return tr("How fine does it read?");
    return placeIn(key, "known") ? tr("What hangs on it?") : tr("What does it read?");
}

QString ScaleEditor::how(const QString& key) const
{
    if (key == QLatin1String("empty"))
        return tr("Hanging free, with nothing on it but the hook.");
    if (key == QLatin1String("step"))
        return tooltexts::stepAsked();
    if (placeIn(key, "known"))
        return tr("Its true mass, with the strap. Best about as heavy as what will be weighed.");
    return tr("Once it hangs still, just as it shows.");
}

QString ScaleEditor::answer() const
{
    const auto check = checked(measurement());
    return check ? tooltexts::scale(*check) : tr("How good it is: not known yet");
}

QString ScaleEditor::verdict() const
{
    const auto check = checked(measurement());
    return check ? tooltexts::howToRead(*check) : QString();
}

bool ScaleEditor::isDoubtful() const
{
    const auto check = checked(measurement());
    return check && !check->good;
}

QString ScaleEditor::gain() const
{
    const auto check = checked(measurement());
    if (!check)
        return {};
    if (!check->good)
        return tr("It is more than a step out, and more than half a per cent: have it set right, or use another.");
    return measurement().readings.size() < 2 ? tr("A second mass, near the heaviest you weigh, would make it surer.") : QString();
}

QString ScaleEditor::addEntry()
{
    ScaleMeasurement m = measurement();
    if (m.readings.size() >= mostReadings)
        return {};
    m.readings.emplace_back();
    setMeasured(m);
    return keyAt("known", m.readings.size() - 1);
}

QString ScaleEditor::ownName(const KitItem& item) const
{
    const auto* m = std::get_if<ScaleMeasurement>(&item.measurement);
    return m && m->step ? tr("Scale, steps of %1").arg(say::massWithUnit(*m->step)) : tr("Scale");
}

std::optional<Error> ScaleEditor::refusalOf(const Measured& measured) const
{
    const auto* scale = std::get_if<ScaleMeasurement>(&measured);
    const auto check = checked(scale ? *scale : ScaleMeasurement{});
    return check ? std::nullopt : std::optional(check.error());
}
