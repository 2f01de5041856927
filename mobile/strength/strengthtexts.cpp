// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/strength/strengthtexts.h"

#include "core/measure/rounding.h"
#include "core/work/records/seasonbook.h"
#include "mobile/text/giving.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

using namespace steelyard;
using sentences::Said;

namespace strengthtexts {

namespace {

QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("strengthtexts", text, about, count); }

QString ratio(const ScaledStrength& scaled)
{
    // F by M to the exponent in the shown unit: only the first power of it is the same in every unit
    const double factor = std::pow(say::shown(kilograms(1)), 1 - scaled.exponent);
    return say::withGive(roundTogether(scaled.ratio * factor, coverageFactor95(knownExactly) * scaled.uRatio * factor, 2));
}

QString signedLoad(const StrengthTest& test)
{
    const QString load = say::inMassUnit(say::entered(test.load.quantity() < Mass{} ? Entered<Mass>(-1 * test.load.quantity()) : test.load));
    if (!test.conditions.bodyMass)
        return load;
    const QString body = say::inMassUnit(say::entered(*test.conditions.bodyMass));
    if (test.load.quantity() == Mass{})
        return tr("her %1 alone").arg(body);
    return (test.load.quantity() < Mass{} ? tr("her %1, %2 of it taken off") : tr("her %1 and %2")).arg(body, load);
}

QString atPlace(TargetPlace place, const QString& percent)
{
    switch (place) {
    case TargetPlace::Bottom: return tr("%1 at the bottom").arg(percent);
    case TargetPlace::Zone: return tr("%1 in the sticking zone").arg(percent);
    case TargetPlace::Top: return tr("%1 at the top").arg(percent);
    case TargetPlace::Mean: break;
    }
    return tr("%1 on the mean").arg(percent);
}

}

QString range(const OneRepMax& max)
{
    const auto ends = [](const QString& low, const QString& high) { return tr("%1 to %2").arg(low, say::inMassUnit(high)); };
    // what was lifted is said as it is; an estimate as far as its give-or-take says, and outwards, so that it is never narrower
    if (max.isTested)
        return ends(say::plain(say::shown(max.lowest.value), 2), say::plain(say::shown(max.highest.value), 2));
    const Rounded rounded = roundTogether(say::shown(max.middle.value), say::shown(max.middle.giveOrTake()), 1);
    constexpr double hair = 1e-6;
    const double p = std::pow(10.0, rounded.decimals);
    return ends(say::fixed(std::floor(say::shown(max.lowest.value) * p + hair) / p, rounded.decimals),
                say::fixed(std::ceil(say::shown(max.highest.value) * p - hair) / p, rounded.decimals));
}

QString middle(const OneRepMax& max)
{
    return say::pull(weight(max.middle.value), weight(max.middle.giveOrTake())).withUnit();
}

QString when(const DayMaximum& maximum, std::chrono::sys_days today)
{
    return (maximum.max.isTested ? tr("tested %1") : tr("estimated %1")).arg(keepingtexts::day(maximum.day, today));
}

QString set(const StrengthTest& test)
{
    const QString load = signedLoad(test);
    if (test.maximum)
        return test.leastJump ? tr("tried out: %1, the next jump of %2 was too much").arg(load, say::inMassUnit(say::entered(*test.leastJump))) : tr("tried out: %1, the next jump was too much").arg(load);
    QString said = tr("%1 × %2").arg(load).arg(test.reps);
    if (test.missed)
        return tr("%1, then one missed").arg(said);
    if (!test.repsInReserve)
        return tr("%1, reserve not said").arg(said);
    return *test.repsInReserve == 0 ? tr("%1, none in reserve").arg(said) : tr("%1, %2 in reserve").arg(said).arg(*test.repsInReserve);
}

QString hung(Method method)
{
    switch (method) {
    case Method::Chains: return tr("chains");
    case Method::BandsBelow: return tr("bands from below");
    case Method::BandsAbove: return tr("bands from above");
    case Method::BenchAid: return tr("a bench aid");
    case Method::Machine: return tr("a machine");
    default: break;
    }
    return tr("something else");
}

QString conditions(const TestConditions& conditions, const SeasonBook& book, std::chrono::sys_days today)
{
    if (conditions.isPlainIron())
        return tr("plain iron");
    QStringList parts;
    for (const Method method : conditions.hung)
        parts << hung(method);
    if (!conditions.setup.isNone()) {
        const SavedSetup* setup = book.setup(conditions.setup);
        parts << (setup ? tr("as kept on %1: %2").arg(keepingtexts::day(setup->day, today), say::inMassUnit(say::entered(setup->setup.bar.wanted))) : tr("a set-up that was taken out"));
    }
    return parts.join(QStringLiteral(", "));
}

QString why(const DayMaximum& maximum)
{
    const QString from = set(maximum.test);
    const auto said = [&] {
        switch (maximum.why) {
        case WhyBest::OnlyOne: return tr("from %1").arg(from);
        case WhyBest::Tested: return tr("from %1: a maximum tried out goes before any set").arg(from);
        case WhyBest::HeaviestTested: return tr("from %1: the heaviest that was tried out").arg(from);
        case WhyBest::HighestLowest: break;
        }
        return tr("from %1: of the day's sets it shows most even at its lowest").arg(from);
    };
    return maximum.setsShowMore ? tr("%1. A set of the day shows more than the test: what was tried out was no maximum.").arg(said()) : said();
}

Said refusal(const Error& error, const StrengthTest& test)
{
    if (error.what == "missed reps")
        return {tr("A rep was missed"), tr("The formulas are made for sets that ended before it: a set with all reps done, or a maximum tried out, would settle it.")};
    if (error.what == "reps in reserve")
        return {tr("More than 5 in reserve"), tr("So far from failure nobody can say how many more would go: a harder set would settle it.")};
    if (error.what == "reps" && test.reps < 1)
        return {tr("No rep was done"), tr("A lighter load, lifted at least once, would settle it.")};
    if (error.what == "reps")
        return {tr("More than 10 reps with those in reserve"), tr("Past 10 the formulas part company: a heavier set would settle it.")};
    if (error.what == "jump")
        return {tr("The jump is not smaller than the load"), tr("Say the smallest step between two loads that were tried.")};
    return {tr("That load is none"), tr("What is lifted, the body among it, has to be above nothing.")};
}

QString scaled(const LiftStanding& standing)
{
    QStringList parts;
    if (standing.byMass)
        parts << tr("F/M %1").arg(ratio(*standing.byMass));
    if (standing.byShape)
        parts << tr("F/M^0.67 %1").arg(ratio(*standing.byShape));
    return parts.join(QStringLiteral(" · "));
}

QString percent(const PercentReached& reached)
{
    return tr("%1 %").arg(say::withGive(roundTogether(reached.percent, coverageFactor95(knownExactly) * reached.uPercent, 0)));
}

QString percentOnMean(const WeighedUp& weighed, const std::optional<DayMaximum>& maximum)
{
    if (!maximum)
        return tr("not tested");
    for (const PercentAt& one : percentsOf(weighed, maximum))
        if (one.place == TargetPlace::Mean)
            return percent(one.reached);
    return tr("not known");
}

QString percents(const WeighedUp& weighed, const std::optional<DayMaximum>& maximum, std::chrono::sys_days today)
{
    if (const auto none = whyNoPercent(maximum)) {
        switch (*none) {
        case NoPercent::NotTested: return tr("Nothing has tested it yet. A set of up to 10 reps gives a range; a maximum tried out a narrower one.");
        case NoPercent::OtherConditions: return tr("It was tested only with something hung: percent needs a test with plain iron.");
        case NoPercent::BodyInIt: break;
        }
        return tr("Her maximum has her body in it, and this load has not.");
    }
    const auto all = percentsOf(weighed, maximum);
    if (all.empty())
        return tr("Known once the pull is.");
    QStringList parts;
    for (const PercentAt& one : all)
        parts << atPlace(one.place, percent(one.reached));
    return tr("%1 of %2 (%3), %4").arg(parts.join(QStringLiteral(", ")), middle(maximum->max), range(maximum->max), when(*maximum, today));
}

}
