// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/leadeditor.h"

#include "core/work/measuring/keptkit.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

using namespace steelyard;

LeadMeasurement LeadEditor::measurement() const
{
    const KitItem now = item();
    const auto* lead = std::get_if<LeadMeasurement>(&now.measurement);
    return lead ? *lead : LeadMeasurement{};
}

std::vector<FieldSpec> LeadEditor::specs() const
{
    if (!ready())
        return {};
    const LeadMeasurement m = measurement();
    return {{QStringLiteral("length"), tr("Length"), inLength(m.length), {3, 1, 1, 250}, false, tr("the bar's middle to the first link"), true},
            {QStringLiteral("mass"), tr("Mass"), inMass(m.mass), {2, 3, 0, 20}, false, tr("with its hooks; 0 when it is next to nothing"), true}};
}

KeepOutcome LeadEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    LeadMeasurement m = measurement();
    if (key == QLatin1String("length"))
        m.length = keyed.length();
    else if (key == QLatin1String("mass"))
        m.mass = keyed.mass();
    else
        return {tr("There is no such entry."), {}};
    setMeasured(m);
    return {};
}

ToolWords LeadEditor::words() const
{
    ToolWords words;
    words.title = tr("Measure a lead strap");
    words.intro = tr("What a chain hangs by decides where its first link leaves the floor. Look it over: a cut, a frayed stitch or a hook that does not close, and it is "
                     "not measured but thrown away.");
    words.drawing = QStringLiteral("lead");
    return words;
}

QString LeadEditor::question(const QString& key) const
{
    return key == QLatin1String("length") ? tr("How long is it?") : tr("What does it weigh?");
}

QString LeadEditor::how(const QString& key) const
{
    return key == QLatin1String("length") ? tr("Pulled straight as it will hang: from the bar's middle to where the first link sits.")
                                          : tr("With its hooks. 0 when it is next to nothing.");
}

QString LeadEditor::answer() const
{
    const auto lead = checked(measurement());
    return lead ? tooltexts::lead(*lead) : tr("Length and mass: not known yet");
}

QString LeadEditor::ownName(const KitItem& item) const
{
    const auto* m = std::get_if<LeadMeasurement>(&item.measurement);
    return m && m->length ? tr("Lead, %1").arg(say::lengthWithUnit(*m->length)) : tr("Lead");
}

std::optional<Error> LeadEditor::refusalOf(const Measured& measured) const
{
    const auto* lead = std::get_if<LeadMeasurement>(&measured);
    const auto strap = checked(lead ? *lead : LeadMeasurement{});
    return strap ? std::nullopt : std::optional(strap.error());
}
