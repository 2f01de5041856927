// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/ironeditor.h"

#include "core/work/measuring/scalecheck.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

#include <cmath>

using namespace steelyard;

IronMeasurement IronEditor::measurement() const
{
    const KitItem now = item();
    const auto* iron = std::get_if<IronMeasurement>(&now.measurement);
    return iron ? *iron : IronMeasurement{};
}

std::vector<FieldSpec> IronEditor::specs() const
{
    if (!ready())
        return {};
    const IronMeasurement m = measurement();
    if (m.ends)
        return {{QStringLiteral("first"), tr("One end"), inMass(m.ends->first), {2, 3, 0.1, 60}, false, tr("just off the ground"), true},
                {QStringLiteral("second"), tr("The other end"), inMass(m.ends->second), {2, 3, 0.1, 60}, false, tr("just off the ground"), true},
                {QStringLiteral("step"), tr("Step of the scale"), inMass(m.step), {1, 3, 0.001, 5}, false, tooltexts::stepHint(), true},
                {QStringLiteral("marked"), tr("Marked"), inMass(m.marked), {2, 3, 0.1, 60}, false, tr("where it has a mark at all")}};
    const bool plates = m.sort == IronSort::Plates;
    std::vector<FieldSpec> all{{QStringLiteral("marked"), tr("Marked"), inMass(m.marked), {2, 3, 0.1, 60}, false, plates ? tr("on each of them") : tr("on the bar, or what it counts as"), true}};
    if (plates) {
        all.push_back({QStringLiteral("count"), tr("On the scale together"), unitless(m.count), {2, 0, 1, 20}, false, tr("how many of them"), true});
        all.back().unit = tr("plates");
    }
    all.push_back({QStringLiteral("read"), tr("The scale reads"), inMass(m.read), {3, 3, 0.1, 400}, false, plates ? tr("for all of them") : tr("for the whole bar"), true});
    all.push_back({QStringLiteral("step"), tr("Step of the scale"), inMass(m.step), {1, 3, 0.001, 5}, false, tooltexts::stepHint(), true});
    return all;
}

KeepOutcome IronEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    IronMeasurement m = measurement();
    if (key == QLatin1String("marked")) {
        m.marked = keyed.mass();
    } else if (key == QLatin1String("count")) {
        m.count = static_cast<int>(std::lround(keyed.ratio));
    } else if (key == QLatin1String("read")) {
        // the whole bar on a scale says more than its ends
        m.read = keyed.mass();
        m.ends.reset();
    } else if (m.ends && (key == QLatin1String("first") || key == QLatin1String("second"))) {
        (key == QLatin1String("first") ? m.ends->first : m.ends->second) = keyed.mass();
    } else if (key == QLatin1String("step")) {
        // another scale, of which nobody has said how good it is
        m.step = keyed.mass();
        m.accuracy.reset();
    } else {
        return {tr("There is no such entry."), {}};
    }
    setMeasured(m);
    return {};
}

ToolWords IronEditor::words() const
{
    ToolWords words;
    words.title = tr("Weigh a bar or plates");
    words.intro = tr("What is marked is what it was meant to weigh. Hang it level and clear of the floor, from a hook that holds more than it weighs, and "
                     "never more than the scale is made for; feet clear.");
    words.choiceLabel = tr("It is");
    words.choices = QStringList{tr("a bar"), tr("plates of one kind"), tr("a bar, by its ends")};
    words.choiceFacts = QStringList{tr("whole, on one scale"), tr("several at once are surer"), tr("one end, then the other, where no scale holds it")};
    words.drawing = choice() == 1 ? QStringLiteral("plates") : QStringLiteral("bar");
    return words;
}

int IronEditor::choice() const
{
    if (!ready())
        return 0;
    const IronMeasurement m = measurement();
    return m.ends ? 2 : m.sort == IronSort::Plates ? 1 : 0;
}

void IronEditor::setChoice(int choice)
{
    IronMeasurement m = measurement();
    m.sort = choice == 1 ? IronSort::Plates : IronSort::Bar;
    if (m.sort == IronSort::Bar)
        m.count = 1;
    // what was read of the whole goes before its ends
    if (choice != 2)
        m.ends.reset();
    else if (!m.ends)
        m.ends.emplace();
    if (m.ends)
        m.read.reset();
    setMeasured(m);
}

QString IronEditor::question(const QString& key) const
{
    if (key == QLatin1String("marked"))
        return tr("What is marked on it?");
    if (key == QLatin1String("count"))
        return tr("How many at once?");
    if (key == QLatin1String("first"))
        return tr("What does one end weigh?");
    if (key == QLatin1String("second"))
        return tr("And the other end?");
    return key == QLatin1String("read") ? tr("What does the scale read?") : tr("How fine does it read?");
}

QString IronEditor::how(const QString& key) const
{
    if (key == QLatin1String("marked"))
        return choice() == 1 ? tr("The figure on each plate.") : tr("The figure on its end; without one, what it counts as.");
    if (key == QLatin1String("count"))
        return tr("Plates with the same mark, on the scale together. What is taken into a bar's stock is as many as were weighed.");
    if (key == QLatin1String("first") || key == QLatin1String("second"))
        return tr("Lift it a hand's breadth at the very end, the rope upright, the other end on the ground. The two add up, however its mass lies.");
    if (key == QLatin1String("read"))
        return tr("With nothing but them on it, less the strap; once it hangs still.");
    return tooltexts::stepAsked();
}

QString IronEditor::answer() const
{
    const IronMeasurement m = measurement();
    const auto check = checked(m);
    return check ? tooltexts::iron(m, *check) : tr("What it weighs: not known yet");
}

QString IronEditor::verdict() const
{
    const auto check = checked(measurement());
    return check && measurement().marked ? tooltexts::offMark(*check, measurement().accuracy.has_value()) : QString();
}

QString IronEditor::gain() const
{
    const IronMeasurement m = measurement();
    if (!checked(m))
        return {};
    if (!m.accuracy)
        return tr("Nobody has checked this scale here: against a known mass it would be surer how far it is out.");
    return m.sort == IronSort::Plates && m.count == 1 ? tr("Several at once on the scale would be surer.") : QString();
}

std::optional<WeighedOn> IronEditor::weighedOn() const
{
    const IronMeasurement m = measurement();
    return WeighedOn{m.step, m.accuracy, m.read};
}

void IronEditor::weighOn(const WeighedOn& scale)
{
    IronMeasurement m = measurement();
    m.step = scale.step;
    m.accuracy = scale.accuracy;
    setMeasured(m);
}

QString IronEditor::ownName(const KitItem& item) const
{
    const auto* m = std::get_if<IronMeasurement>(&item.measurement);
    if (!m || !m->marked)
        return m && m->sort == IronSort::Plates ? tr("Plates, weighed") : tr("Bar, weighed");
    const QString mark = say::inMassUnit(say::entered(*m->marked));
    return m->sort == IronSort::Plates ? tr("%n plates of %1", nullptr, m->count).arg(mark) : tr("Bar of %1").arg(mark);
}

std::optional<Error> IronEditor::refusalOf(const Measured& measured) const
{
    const auto* iron = std::get_if<IronMeasurement>(&measured);
    const auto check = checked(iron ? *iron : IronMeasurement{});
    return check ? std::nullopt : std::optional(check.error());
}
