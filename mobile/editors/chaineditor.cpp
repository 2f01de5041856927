// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/chaineditor.h"

#include "core/work/measuredkit.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"
#include "mobile/text/tooltexts.h"

using namespace steelyard;

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
    std::vector<FieldSpec> all{{QStringLiteral("length"), tr("Length"), inLength(m.length), {4, 1, 10, 2000}, false, tr("first link to last, pulled straight"), true}};
    if (m.by == ChainMeasuring::Weighed) {
        all.push_back({QStringLiteral("mass"), tr("Mass"), inMass(m.mass), {3, 3, 0.1, 200}, false, tr("all of it, on the scale"), true});
        all.push_back({QStringLiteral("scaleStep"), tr("Step of the scale"), inMass(m.scaleStep), {1, 3, 0.001, 5}, false, tooltexts::stepHint(), true});
    } else {
        all.push_back({QStringLiteral("wire"), tr("Wire"), inWire(m.wire), {2, 1, 2, 60}, false, tr("its real thickness, not the trade size"), true});
        all.push_back({QStringLiteral("pitch"), tr("Pitch"), inWire(m.pitch), {3, 1, 5, 300}, false, tr("inside length of one link"), true});
        all.push_back({QStringLiteral("innerWidth"), tr("Inner width"), inWire(m.innerWidth), {3, 1, 2, 150}, false, tr("inside width of one link"), true});
    }
    return all;
}

KeepOutcome ChainEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    KitItem now = item();
    ChainMeasurement m = measurement();
    if (key == QLatin1String("length")) {
        m.length = keyed.length();
    } else if (key == QLatin1String("mass")) {
        m.mass = keyed.mass();
    } else if (key == QLatin1String("scaleStep")) {
        // another scale, of which nobody has said how good it is
        m.scaleStep = keyed.mass();
        m.scaleAccuracy.reset();
    } else if (key == QLatin1String("wire")) {
        m.wire = keyed.wire();
    } else if (key == QLatin1String("pitch")) {
        m.pitch = keyed.wire();
    } else if (key == QLatin1String("innerWidth")) {
        m.innerWidth = keyed.wire();
    } else {
        return {tr("There is no such entry."), {}};
    }
    now.measurement = m;
    setItem(now);
    return {};
}

bool ChainEditor::isMeasured() const
{
    return ready() && chainFrom(measurement()).ok();
}

QString ChainEditor::answer() const
{
    const auto chain = chainFrom(measurement());
    if (!chain)
        return tr("Mass per metre: not known yet");
    return say::perLength(chain->perLength.value, coverageFactor95(knownExactly) * chain->perLength.u);
}

QString ChainEditor::trouble() const
{
    const auto chain = chainFrom(measurement());
    return chain ? QString() : sentences::refusal(chain.error());
}

std::optional<WeighedOn> ChainEditor::weighedOn() const
{
    const ChainMeasurement m = measurement();
    return m.by == ChainMeasuring::Weighed ? std::optional(WeighedOn{m.scaleStep, m.scaleAccuracy, m.mass}) : std::nullopt;
}

void ChainEditor::weighOn(const WeighedOn& scale)
{
    KitItem now = item();
    ChainMeasurement m = measurement();
    m.scaleStep = scale.step;
    m.scaleAccuracy = scale.accuracy;
    now.measurement = m;
    setItem(now);
}

QString ChainEditor::linkText() const
{
    const auto chain = chainFrom(measurement());
    const auto hung = chain ? HungChain::of(*chain, {}) : Result<HungChain>(chain.error());
    const auto step = hung ? hung->linkStep() : std::nullopt;
    return step ? tr("It comes off the floor a link at a time: %1.").arg(say::massWithUnit(*step)) : QString();
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
        return tr("Chain, %1, %2").arg(say::wireWithUnit(*m->wire), say::lengthWithUnit(*m->length));
    if (m && m->length)
        return tr("Chain, %1").arg(say::lengthWithUnit(*m->length));
    return tr("Chain");
}
