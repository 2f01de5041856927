// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/eccentric/releasetexts.h"

#include "core/measure/rounding.h"
#include "core/strength/publishedloads.h"
#include "mobile/text/giving.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>

using namespace steelyard;

namespace releasetexts {

namespace {

QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("releasetexts", text, about, count); }

constexpr double nothingToSpeakOf = 0.05;

QString plates(const BarRecord& bar, const std::vector<PlateType>& list)
{
    QStringList marks;
    for (const PlateType& plate : list)
        marks << say::plateMark(bar, plate);
    return marks.join(QStringLiteral(" · "));
}

/// A number and its give-or-take, which no line breaks apart.
QString unbroken(QString said) { return said.replace(QStringLiteral(" ± "), QStringLiteral("\u00a0±\u00a0")); }

QString reading(const Reading& reading) { return unbroken(say::pull(reading).withUnit()); }

QString percent(const PercentReached& reached)
{
    return say::withGive(roundTogether(reached.percent, coverageFactor95(knownExactly) * reached.uPercent, 0));
}

/// Of a hundred; whole, and never all or none where it is not.
QString ofHundred(double ratio)
{
    const int count = static_cast<int>(std::round(100 * ratio));
    if (count >= 100 && ratio < 1)
        return tr("more than 99 of 100 reps");
    if (count <= 0 && ratio > 0)
        return tr("fewer than 1 of 100 reps");
    return tr("%1 of 100 reps").arg(say::fixed(count, 0));
}

QString miss(const Mass& by)
{
    const QString size = say::massWithUnit(kilograms(std::round(std::abs(by.si()) * 100) / 100));
    return by < Mass{} ? tr("%1 less than asked").arg(size) : tr("%1 more than asked").arg(size);
}

QString off(const ReleaseLoad& load)
{
    QStringList said;
    const bool upOff = std::abs(load.upMiss.si()) >= nothingToSpeakOf;
    const bool downOff = load.downMiss && std::abs(load.downMiss->si()) >= nothingToSpeakOf;
    if (upOff)
        said << tr("Up: %1.").arg(miss(load.upMiss));
    if (downOff)
        said << tr("Down: %1.").arg(miss(*load.downMiss));
    if (load.upOfMaximum && load.downOfMaximum)
        said << tr("%1 % of her 1RM up, %2 % down.").arg(percent(*load.upOfMaximum), percent(*load.downOfMaximum));
    if (load.downOfUp)
        said << tr("The way down is %1 % of the way up.").arg(percent(*load.downOfUp));
    return said.join(QLatin1Char(' '));
}

QString letGo(const SetupRecord& setup, const ReleaseLoad& load)
{
    const BarRecord& bar = setup.bar;
    switch (setup.release->way) {
    case ReleaseWay::Hooks:
        return load.onEach.empty() ? tr("Each hook: empty, %1").arg(give(*load.each))
                                   : tr("Each hook: %1, with its frame %2").arg(plates(bar, load.onEach), give(*load.each));
    case ReleaseWay::PartnerLiftsOff:
        return tr("Outside them, lifted off at the bottom: %1, each side %2").arg(plates(bar, load.onEach), give(*load.each));
    case ReleaseWay::PartnerAdds:
        return load.down ? tr("A partner pushes down with %1 and lets go at the bottom").arg(say::massWithUnit(load.down->value - load.up.value))
                         : tr("A partner pushes down and lets go at the bottom: how hard is not known until it is read on a scale");
    case ReleaseWay::BandsLetGo: return tr("The bands that hang below are let go at the bottom, both together");
    case ReleaseWay::DumbbellsDropped: break;
    }
    const QString each = tr("A dumbbell of %1 in each hand, dropped at the bottom").arg(give(*load.each));
    return load.ideal ? tr("%1; what was asked takes %2 each").arg(each, say::massWithUnit(kilograms(std::round(load.ideal->si() * 10) / 10))) : each;
}

QString reps(const ReleasePlan& plan, const std::vector<int>& overloaded)
{
    QStringList numbers;
    for (const int rep : overloaded)
        numbers << say::fixed(rep, 0);
    const QString which = tr("%1 of %2").arg(numbers.join(QStringLiteral(", ")), say::fixed(plan.set.reps, 0));
    switch (plan.set.putBack) {
    case PutBack::Never: return tr("Rep %1: nothing is put back within the set, so the first alone is overloaded (common practice).").arg(which);
    case PutBack::EachRep: return tr("Reps %1: spotters put it back at the top of each, both sides together.").arg(which);
    case PutBack::EachCluster: break;
    }
    const QString rest = plan.set.clusterRest ? say::fixed(static_cast<double>(plan.set.clusterRest->count()), 0) : QString();
    return plan.set.putBackBy == PutBackBy::Athlete ? tr("Reps %1: she puts it back herself, the bar in the rack, in rests of %2 s.").arg(which, rest)
                                                    : tr("Reps %1: spotters put it back in rests of %2 s.").arg(which, rest);
}

QString pulls(const DownAndUp& pulls)
{
    QStringList said;
    if (pulls.downTop && pulls.downEnds) {
        const QString mean = pulls.downMean ? reading(*pulls.downMean) : tr("not known");
        said << tr("Down: %1 at the top, %2 just above %3, mean %4.").arg(reading(*pulls.downTop), reading(*pulls.downEnds), give(pulls.ends), mean);
    } else {
        said << tr("Down: not known.");
    }
    if (pulls.up.bottom && pulls.up.top)
        said << tr("Up: %1 at the bottom, %2 at the top.").arg(reading(*pulls.up.bottom), reading(*pulls.up.top));
    return said.join(QLatin1Char(' '));
}

QString oneSide(const OneSideOn& on)
{
    QStringList said{tr("That side is %1 heavier: do not press, ride to the safeties.").arg(give(on.heavierBy))};
    if (on.nearHand && on.farHand)
        said << (on.farHand->value < Mass{} ? tr("The near hand would hold %1, and the far hand would have to pull down.").arg(give(*on.nearHand))
                                            : tr("The near hand would hold %1, the far hand %2.").arg(give(*on.nearHand), give(*on.farHand)));
    return said.join(QLatin1Char(' '));
}

QString deep(const ReleaseHeights& heights)
{
    QStringList said{tr("Of her own depth, %1 come so deep that both hooks are free.").arg(ofHundred(heights.releasedRatio))};
    if (heights.tiltedRatio)
        said << tr("With one end 1° lower, %1; in the others one side stays on.").arg(ofHundred(*heights.tiltedRatio));
    const QString margin = say::lengthWithUnit(heights.margin);
    said << (heights.marginIsOwn ? tr("The margin is yours, %1.").arg(margin) : tr("The margin is twice her own spread, %1.").arg(margin));
    return said.join(QLatin1Char(' '));
}

QString safeties(const ReleaseSafeties& safeties)
{
    const QString from = say::length(safeties.at.lowest.value), to = say::lengthWithUnit(safeties.at.highest.value);
    QStringList said{tr("So that the bar's centre rests from %1 to %2, tried with an empty bar.").arg(from, to)};
    if (safeties.touchedRatio)
        said << tr("At the upper end %1 touch them.").arg(ofHundred(*safeties.touchedRatio));
    return said.join(QLatin1Char(' '));
}

QString span(const PercentSpan& span)
{
    const QString least = say::plain(span.leastPercent, 0);
    return span.leastPercent == span.mostPercent ? least : tr("%1 to %2").arg(least, say::plain(span.mostPercent, 0));
}

QString published(const PublishedEccentric& load)
{
    const QString down = load.eccentricBase == PercentBase::ConcentricLoad ? tr("%1 % of the way up").arg(span(load.eccentric))
                                                                           : tr("%1 % of the 1RM down").arg(span(load.eccentric));
    const QString both = load.concentric ? tr("%1, %2 % up").arg(down, span(*load.concentric)) : down;
    return tr("%1 (%2)").arg(both, QString::fromUtf8(load.source.data(), static_cast<qsizetype>(load.source.size())));
}

}

QString give(const Uncertain<Mass>& mass)
{
    return mass.u > Mass{} ? unbroken(say::pull(weight(mass.value), weight(mass.giveOrTake())).withUnit()) : say::massWithUnit(mass.value);
}

QString give(const Uncertain<Length>& length)
{
    if (length.u <= Length{})
        return say::lengthWithUnit(length.value);
    return unbroken(say::inLengthUnit(say::withGive(roundTogether(say::shown(length.value), say::shown(length.giveOrTake()), 1))));
}

QStringList ways() { return {tr("release hooks"), tr("partner lifts plates off"), tr("partner pushes"), tr("bands let go"), tr("dumbbells dropped")}; }

QString asked(const ReleasePlan& plan)
{
    const QString way = ways().at(static_cast<int>(plan.way));
    const ReleaseAsked& asked = plan.asked;
    if (!asked.inPercent)
        return asked.down ? tr("%1: %2 down").arg(way, say::inMassUnit(say::entered(*asked.down))) : way;
    const QString up = say::plain(asked.upPercent, 1), down = say::plain(asked.downPercent, 1);
    return asked.downOfWayUp ? tr("%1: %2 % up, %3 % of that down").arg(way, up, down) : tr("%1: %2 % up, %3 % down").arg(way, up, down);
}

QString refusal(const Error& error)
{
    struct Known {
        const char* what;
        const char* said;
    };
    static constexpr Known known[] = {
        {"maximum", QT_TRANSLATE_NOOP("releasetexts", "Her 1RM in this lift is not known: test it, or ask for loads.")},
        {"concentric load", QT_TRANSLATE_NOOP("releasetexts", "The load on the way up is none that can be hung: ask for another.")},
        {"eccentric load", QT_TRANSLATE_NOOP("releasetexts", "The way down has to be heavier than the way up: ask for more.")},
        {"base", QT_TRANSLATE_NOOP("releasetexts", "The percentages are none that can be asked for: ask for others.")},
        {"hook frame", QT_TRANSLATE_NOOP("releasetexts", "Weigh one hook: its frame is part of the load.")},
        {"hook rating", QT_TRANSLATE_NOOP("releasetexts", "The empty hooks are more than they may carry: read the rating again.")},
        {"plates", QT_TRANSLATE_NOOP("releasetexts", "Not with these plates: a lighter bar leaves more for the hooks.")},
        {"sleeve", QT_TRANSLATE_NOOP("releasetexts", "The sleeve does not hold all of it: ask for less, or use hooks.")},
        {"dumbbell", QT_TRANSLATE_NOOP("releasetexts", "Say what one dumbbell weighs.")},
        {"depth", QT_TRANSLATE_NOOP("releasetexts", "Her depth: watch three reps at least and read the lowest bar in each, or use a box.")},
        {"reps", QT_TRANSLATE_NOOP("releasetexts", "Three reps at least: two say little of how they differ.")},
        {"sleeve radius", QT_TRANSLATE_NOOP("releasetexts", "Measure from the bar's centre to the top of the sleeve.")},
        {"lip drop", QT_TRANSLATE_NOOP("releasetexts", "Try with an empty bar how far it goes on down until the lip is clear.")},
        {"margin", QT_TRANSLATE_NOOP("releasetexts", "On a box she has no spread of her own: say how far above it the hooks should be free.")},
        {"hook length", QT_TRANSLATE_NOOP("releasetexts", "No setting of the hooks is long enough: shorter ones never let go.")},
        {"hook spacing", QT_TRANSLATE_NOOP("releasetexts", "Measure from hook to hook: what one side would be heavier by stands on it.")},
        {"grip", QT_TRANSLATE_NOOP("releasetexts", "Measure from hand to hand again.")},
        {"touch", QT_TRANSLATE_NOOP("releasetexts", "The hooks' feet have to stand between her top and her bottom: measure again.")},
        {"bottom", QT_TRANSLATE_NOOP("releasetexts", "Her bar marks come first.")},
        {"top", QT_TRANSLATE_NOOP("releasetexts", "Her bar marks come first.")},
        {"bands", QT_TRANSLATE_NOOP("releasetexts", "Hang the bands that are to be let go, anchored below.")},
        {"chest", QT_TRANSLATE_NOOP("releasetexts", "Measure her arched chest, lying as she will lie.")},
        {"throat", QT_TRANSLATE_NOOP("releasetexts", "Measure her throat, lying as she will lie: the bar has to rest above it and below the chest.")},
    };
    for (const Known& one : known)
        if (error.what == one.what)
            return tr(one.said);
    return tr("Something of it cannot be right: measure and enter it again.");
}

namespace {

QString inShort(const ReleasePlan& plan, const ReleaseAnswer& answer)
{
    const QString way = ways().at(static_cast<int>(plan.way));
    return answer.load && answer.load->down ? tr("%1: %2 up, %3 down").arg(way, give(answer.load->up), give(*answer.load->down)) : way;
}

}

ReleaseShown shown(const SetupRecord& setup, const ReleaseAnswer& answer)
{
    ReleaseShown out;
    out.inShort = inShort(*setup.release, answer);
    if (!answer.load) {
        out.title = answer.noLoad ? refusal(*answer.noLoad) : QString();
        return out;
    }
    const ReleaseLoad& load = *answer.load;
    const std::optional<Reading> downTop = answer.pulls ? answer.pulls->downTop : std::nullopt;
    const QString down = load.down ? give(*load.down) : downTop ? reading(*downTop) : tr("not known");
    out.title = tr("%1 up · %2 down").arg(give(load.up), down);
    out.off = off(load);
    out.bar = load.bar.eachSide.empty() ? tr("Bar: bare") : tr("Bar, each side: %1").arg(plates(setup.bar, load.bar.eachSide));
    out.letGo = letGo(setup, load);
    out.hangs = say::massWithUnit(load.bar.total);
    if (answer.oneSide)
        out.oneSide = tr("If one side stays on, that side is %1 heavier: do not press, ride to the safeties.").arg(give(answer.oneSide->heavierBy));
    if (answer.heights) {
        const ReleaseHeights& heights = *answer.heights;
        out.length = heights.setting ? tr("Hook, seat to foot: set to %1 (%2 or longer)").arg(say::lengthWithUnit(*heights.setting), say::lengthWithUnit(heights.length.value))
                                     : tr("Hook, seat to foot: %1 or longer").arg(give(heights.length));
        out.free = tr("Foot stands at %1, free at %2").arg(give(heights.at.touch), give(heights.at.free));
    }
    return out;
}

std::vector<NoticeRow> facts(const ReleasePlan& plan, const ReleaseAnswer& answer)
{
    std::vector<NoticeRow> rows;
    const auto add = [&rows](const QString& head, const auto& value, const std::optional<Error>& error, const auto& say) {
        if (value)
            rows.push_back({head, say(*value), false});
        else if (error)
            rows.push_back({head, refusal(*error), false});
    };
    add(tr("If one side stays on"), answer.oneSide, answer.noOneSide, oneSide);
    add(tr("Safeties"), answer.safeties, answer.noSafeties, safeties);
    add(tr("Whether they let go"), answer.heights, answer.noHeights, deep);
    rows.push_back({tr("Overloaded"), answer.setFault ? tr("The set cannot be done as it is put down: look at reps, clusters and who puts back.") : reps(plan, answer.overloadedReps), false});
    if (answer.load)
        add(tr("What she holds"), answer.pulls, answer.noPulls, pulls);
    QStringList context;
    for (const PublishedEccentric& load : publishedEccentrics())
        context << published(load);
    rows.push_back({tr("Published loads, as context and no advice"), context.join(QLatin1Char('\n')), false});
    return rows;
}

ReleaseDrawn drawn(const BarMarks& marks, const ReleaseAnswer& answer)
{
    ReleaseDrawn out;
    if (!answer.heights || !marks.top || marks.top->quantity() <= answer.heights->at.touch.value)
        return out;
    const ReleaseHeights& heights = *answer.heights;
    out.there = true;
    out.top = marks.top->si();
    out.touch = heights.at.touch.value.si();
    out.free = heights.at.free.value.si();
    out.lowest = heights.depth.lowest.si();
    out.length = heights.setting.value_or(heights.length.value).si();
    out.radius = out.length - out.touch;
    out.topText = tr("top %1").arg(say::lengthWithUnit(*marks.top));
    out.touchText = tr("foot stands %1").arg(give(heights.at.touch));
    out.freeText = tr("free %1").arg(give(heights.at.free));
    out.sentence = tr("Bar and hook from the side, to scale: at the top the hook hangs, at %1 its foot stands, at %2 the bar is free of it.").arg(give(heights.at.touch), give(heights.at.free));
    return out;
}

}
