// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/asking/askingtexts.h"

#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>
#include <set>

using namespace steelyard;

namespace askingtexts {

namespace {

QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("askingtexts", text, about, count); }

QString whyNot(NotChosen why)
{
    switch (why) {
    case NotChosen::NotToBeUsed: return tr("lent, or out of use");
    case NotChosen::NotMeasured: return tr("not measured yet");
    case NotChosen::NoPair: return tr("only one: both sides hang alike");
    case NotChosen::NoAnchor: return tr("no place to anchor it: measure the rack's");
    case NotChosen::NotFarEnough: break;
    }
    return tr("not measured as far as it would be stretched");
}

/// To a tenth of a kilogram, without its sign.
QString size(Force pull)
{
    const double kg = std::abs(asMass(pull).si());
    return say::massWithUnit(kilograms(std::round(kg * 10) / 10));
}

constexpr Mass nothingToSpeakOf = kilograms(0.05);

QString percent(double share, int decimals = 0) { return say::fixed(100 * share, decimals); }

/// "3 ± 2"
QString percent(double share, double giveOrTake)
{
    return tr("%1 ± %2").arg(percent(share), percent(giveOrTake));
}

QString part(const KitQuestion& asked, const HangReason::Part& part, std::size_t count, const Names& names)
{
    const QString name = names.of(asked.ways[part.wayIndex].item);
    constexpr double flat = 0.5;
    if (asMass(part.atBottom).si() < -flat)
        return tr("%1: takes off %2 at the bottom and %3 at the top.").arg(name, size(part.atBottom), size(part.atTop));
    if (asMass(part.rise()).si() >= flat)
        return (count == 1 ? tr("%1: gives the rise, %2 from bottom to top.") : tr("%1: %2 of the rise.")).arg(name, size(part.rise()));
    return tr("%1: %2 all the way.").arg(name, size(part.atTop));
}

QString other(const KitQuestion& asked, const HangReason::Other& other, const Names& names)
{
    const QString name = names.of(asked.ways[other.wayIndex].item);
    const Force miss = other.miss(asked.question);
    if (other.answer.isWithin)
        return (other.insteadOfIndex ? tr("%1 instead would do as well, a little less near.") : tr("With %1 besides it would do as well, a little less near.")).arg(name);
    const QString where = atPlace(asked.question.targets[other.targetIndex].place);
    if (miss < Force{})
        return (other.insteadOfIndex ? tr("%1 instead would be %2 too little %3.") : tr("With %1 it would be %2 too little %3.")).arg(name, size(miss), where);
    return (other.insteadOfIndex ? tr("%1 instead would overshoot by %2 %3.") : tr("With %1 it would overshoot by %2 %3.")).arg(name, size(miss), where);
}

}

QString Names::of(const RecordId& id) const
{
    const auto at = std::find_if(m_kit.begin(), m_kit.end(), [&id](const KitItem& item) { return item.id == id; });
    return at == m_kit.end() ? QString() : QString::fromStdString(at->name);
}

QString place(TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return tr("At the bottom");
    case TargetPlace::Zone: return tr("In the sticking zone");
    case TargetPlace::Top: return tr("At the top");
    case TargetPlace::Mean: break;
    }
    return tr("Mean of the path");
}

QString atPlace(TargetPlace place)
{
    switch (place) {
    case TargetPlace::Bottom: return tr("at the bottom");
    case TargetPlace::Zone: return tr("in the sticking zone");
    case TargetPlace::Top: return tr("at the top");
    case TargetPlace::Mean: break;
    }
    return tr("on the mean");
}

QString comesFirst(const Error& error)
{
    if (error.what == "strength" || error.what == "heights")
        return tr("Isometric pulls along more of her path come first");
    for (const char* mark : {"bottom", "top", "sticking zone", "rack", "blocks"})
        if (error.what == mark)
            return tr("Her bar marks come first");
    if (error.what == "plates")
        return tr("The plates come first");
    return tr("It cannot be asked yet");
}

QString leftOut(const KitQuestion& asked, const Names& names)
{
    QStringList list;
    for (const LeftOut& out : asked.leftOut)
        list << tr("%1: %2").arg(names.of(out.item), whyNot(out.why));
    return list.isEmpty() ? QString() : tr("Not among the choices: %1.").arg(list.join(QStringLiteral("; ")));
}

QString off(const KitQuestion& asked, const HangAnswer& answer)
{
    QStringList off;
    const auto& targets = asked.question.targets;
    for (std::size_t t = 0; t < targets.size(); ++t) {
        const Force miss = answer.readings[t].value - targets[t].wanted;
        const Mass by = asMass(miss);
        const QString where = place(targets[t].place);
        if (by < nothingToSpeakOf && by > -nothingToSpeakOf)
            off << tr("%1: just that").arg(where);
        else
            off << (miss < Force{} ? tr("%1: %2 less") : tr("%1: %2 more")).arg(where, size(miss));
    }
    if (answer.level)
        off << tr("her share varies by %1 %").arg(percent(answer.level->variationRatio, answer.level->giveOrTakeRatio));
    return off.join(QStringLiteral(" · "));
}

QString stopped(Force bound)
{
    if (asMass(bound) < nothingToSpeakOf)
        return tr("Stopped: something better may exist.");
    return tr("Not proved: something better may exist, but nothing comes nearer than %1.").arg(size(bound));
}

QStringList hangs(const SetupRecord& meant, const Names& names)
{
    QStringList list;
    for (const HungRecord& hung : meant.hung)
        list << tr("%1: %2").arg(names.of(hung.item), setuptexts::howItHangs(hung));
    return list;
}

QStringList changes(const SetupRecord& now, const SetupRecord& meant, const KitQuestion& asked, const HangAnswer& answer, const Names& names)
{
    QStringList list;
    const auto& loads = asked.question.loads;
    if (asked.question.loadNowIndex)
        list << setuptexts::plateChange(now.bar, changeBetween(loads[*asked.question.loadNowIndex].load, loads[answer.loadIndex].load));
    const auto thing = [](const std::vector<HungRecord>& hung, const RecordId& item) {
        return std::find_if(hung.begin(), hung.end(), [&item](const HungRecord& one) { return one.item == item; });
    };
    for (const HungRecord& hung : now.hung)
        if (thing(meant.hung, hung.item) == meant.hung.end())
            list << tr("take off: %1").arg(names.of(hung.item));
    for (const HungRecord& hung : meant.hung) {
        const auto before = thing(now.hung, hung.item);
        if (before == now.hung.end())
            list << tr("hang: %1").arg(names.of(hung.item));
        else if (*before != hung)
            list << tr("hang another way: %1").arg(names.of(hung.item));
    }
    return list;
}

QString why(const KitQuestion& asked, const HangReason& reason, const Names& names)
{
    QStringList said;
    for (const HangReason::Part& one : reason.parts)
        said << part(asked, one, reason.parts.size(), names);
    if (reason.parts.empty())
        said << tr("Iron alone comes nearest.");
    if (reason.other)
        said << other(asked, *reason.other, names);
    return said.join(QLatin1Char(' '));
}

QString pulls(const std::vector<IsometricPull>& pulls)
{
    if (pulls.empty())
        return tr("none yet");
    std::set<double> heights;
    for (const IsometricPull& pull : pulls)
        heights.insert(std::round(pull.height.si() * 200));
    const QString all = tr("%Ln pulls", nullptr, static_cast<int>(pulls.size())), places = tr("%Ln heights", nullptr, static_cast<int>(heights.size()));
    return tr("%1 at %2").arg(all, places);
}

LevelShown level(const Setup& setup, const StrengthCurve& strength)
{
    constexpr std::size_t heights = 41;
    const auto samples = levelPicture(setup, strength, heights);
    const auto reading = levelOf(setup, strength), plain = levelOfPlainIron(setup, strength);
    LevelShown shown;
    if (samples.empty())
        return shown;
    for (const LevelSample& one : samples) {
        const double y = say::shown(one.height);
        // a pull of so many samples is drawn, not read: its give-or-take is that of a number known exactly
        const double cover = coverageFactor95(knownExactly);
        shown.pull << QPointF(say::shownPull(one.pull), y);
        shown.strength << QPointF(say::shownPull(one.strength), y);
        shown.strengthLow << QPointF(say::shownPull(one.strength - cover * one.uStrength), y);
        shown.strengthHigh << QPointF(say::shownPull(one.strength + cover * one.uStrength), y);
        shown.share << QPointF(100 * one.ratio, y);
        shown.shareLow << QPointF(100 * (one.ratio - cover * one.uRatio), y);
        shown.shareHigh << QPointF(100 * (one.ratio + cover * one.uRatio), y);
        shown.plain << QPointF(100 * one.plainRatio, y);
    }
    shown.pullUnit = say::massUnit();
    shown.heightUnit = say::lengthUnit();
    shown.sentence = tr("She pulls %1 % of what she can hold, from %2 to %3. That share varies by %4 %; with plain iron by %5 %.")
                         .arg(percent(reading->ratio), say::length(reading->from), say::lengthWithUnit(reading->to),
                              percent(reading->variationRatio, reading->giveOrTakeRatio), percent(plain->variationRatio, plain->giveOrTakeRatio));
    return shown;
}

}
