// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/chaineditor.h"

#include "core/measure/rounding.h"
#include "core/work/measuredkit.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

using namespace steelyard;

namespace {

std::optional<double> times(const std::optional<Length>& length, double perMetre)
{
    return length ? std::optional(inMetres(*length) * perMetre) : std::nullopt;
}

std::optional<double> inKg(const std::optional<Mass>& mass)
{
    return mass ? std::optional(inKilograms(*mass)) : std::nullopt;
}

}

ChainMeasurement ChainEditor::measurement() const
{
    const KitItem now = item();
    const auto* chain = std::get_if<ChainMeasurement>(&now.measurement);
    return chain ? *chain : ChainMeasurement{};
}

std::vector<FieldSpec> ChainEditor::specs() const
{
    if (!ready())
        return {};
    const ChainMeasurement m = measurement();
    const QString mm = tr("mm"), kg = tr("kg");
    std::vector<FieldSpec> all{{QStringLiteral("length"), tr("Length"), tr("cm"), {4, 1, 10, 2000}, times(m.length, 100), false, tr("first link to last, pulled straight"), true}};
    if (m.by == ChainMeasuring::Weighed) {
        all.push_back({QStringLiteral("mass"), tr("Mass"), kg, {3, 3, 0.1, 200}, inKg(m.mass), false, tr("all of it, on the scale"), true});
        all.push_back({QStringLiteral("scaleStep"), tr("Step of the scale"), kg, {1, 3, 0.001, 5}, inKg(m.scaleStep), false, tr("the least it shows: 0.1, or 0.05"), true});
    } else {
        all.push_back({QStringLiteral("wire"), tr("Wire"), mm, {2, 1, 2, 60}, times(m.wire, 1000), false, tr("its real thickness, not the trade size"), true});
        all.push_back({QStringLiteral("pitch"), tr("Pitch"), mm, {3, 1, 5, 300}, times(m.pitch, 1000), false, tr("inside length of one link"), true});
        all.push_back({QStringLiteral("innerWidth"), tr("Inner width"), mm, {3, 1, 2, 150}, times(m.innerWidth, 1000), false, tr("inside width of one link"), true});
    }
    return all;
}

KeepOutcome ChainEditor::keepNumber(const QString& key, double shown)
{
    KitItem now = item();
    ChainMeasurement m = measurement();
    if (key == QLatin1String("length"))
        m.length = metres(shown / 100);
    else if (key == QLatin1String("mass"))
        m.mass = kilograms(shown);
    else if (key == QLatin1String("scaleStep"))
        m.scaleStep = kilograms(shown);
    else if (key == QLatin1String("wire"))
        m.wire = metres(shown / 1000);
    else if (key == QLatin1String("pitch"))
        m.pitch = metres(shown / 1000);
    else if (key == QLatin1String("innerWidth"))
        m.innerWidth = metres(shown / 1000);
    else
        return {tr("There is no such entry."), {}};
    now.measurement = m;
    setItem(now);
    return {};
}

bool ChainEditor::canKeep() const
{
    return ready() && chainFrom(measurement()).ok();
}

QString ChainEditor::answer() const
{
    const auto chain = chainFrom(measurement());
    if (!chain)
        return tr("Mass per metre: not known yet");
    const double u = chain->perLength.u.si();
    const auto said = roundTogether(chain->perLength.value.si(), coverageFactor95(knownExactly) * u, 2);
    return tr("%1 kg a metre, give or take %2").arg(say::fixed(said.value, said.decimals), say::fixed(said.give, said.decimals));
}

QString ChainEditor::trouble() const
{
    const auto chain = chainFrom(measurement());
    return chain ? QString() : sentences::refusal(chain.error());
}

QString ChainEditor::linkText() const
{
    const auto chain = chainFrom(measurement());
    const auto hung = chain ? HungChain::of(*chain, {}) : Result<HungChain>(chain.error());
    const auto step = hung ? hung->linkStep() : std::nullopt;
    return step ? tr("It comes off the floor a link at a time: %1 kg.").arg(say::plain(inKilograms(*step), 2)) : QString();
}

bool ChainEditor::isGauged() const
{
    return measurement().by == ChainMeasuring::Gauged;
}

void ChainEditor::setGauged(bool gauged)
{
    KitItem now = item();
    ChainMeasurement m = measurement();
    m.by = gauged ? ChainMeasuring::Gauged : ChainMeasuring::Weighed;
    now.measurement = m;
    setItem(now);
}

QString ChainEditor::ownName(const KitItem& item) const
{
    const auto* m = std::get_if<ChainMeasurement>(&item.measurement);
    if (m && m->by == ChainMeasuring::Gauged && m->wire && m->length)
        return tr("Chain, %1 mm, %2 cm").arg(say::plain(inMetres(*m->wire) * 1000, 1), say::centimetres(*m->length));
    if (m && m->length)
        return tr("Chain, %1 cm").arg(say::centimetres(*m->length));
    return tr("Chain");
}
