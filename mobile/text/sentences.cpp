// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/sentences.h"

#include "mobile/text/say.h"

#include <QCoreApplication>
#include <QHash>

#include <algorithm>
#include <cmath>

namespace sentences {

using namespace steelyard;
using Code = SetupWarningCode;

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("sentences", text, about, count); }

/// What a caution is about is never said too low: up to the next whole one of the shown unit.
QString atMost(Mass mass)
{
    constexpr Mass gram = kilograms(1e-3);
    return say::inMassUnit(say::plain(std::ceil(say::shown(mass - gram)), 0));
}

QString sided(Side side, const char* left, const char* right, const char* both)
{
    return tr(side == Side::Left ? left : side == Side::Right ? right : both);
}

/// Whether a band of that side is taut just below the height and slack just above.
bool slackAbove(const SetupWarning& w, const Setup& setup)
{
    const auto& items = w.side == Side::Right ? setup.right : setup.left;
    for (const HungItem& item : items)
        if (const auto* band = std::get_if<HungBand>(&item)) {
            const Length rest = band->band().fit.rest();
            if (w.height && band->bandLength(*w.height + metres(0.001)) < rest && band->bandLength(*w.height - metres(0.001)) > rest)
                return true;
        }
    return false;
}

/// Whether it is an aid whose readings end there.
bool endsAid(const SetupWarning& w, const Setup& setup)
{
    return std::any_of(setup.left.begin(), setup.left.end(), [&w](const HungItem& item) {
        const auto* help = std::get_if<HungHelp>(&item);
        return help && w.height && (*w.height == help->origin + help->pull.first() || *w.height == help->origin + help->pull.last());
    });
}

Said slack(const SetupWarning& w, const Setup& setup)
{
    const QString at = say::lengthWithUnit(w.height.value_or(Height{}));
    if (slackAbove(w, setup))
        return {sided(w.side, QT_TRANSLATE_NOOP("sentences", "Left band slack above %1"), QT_TRANSLATE_NOOP("sentences", "Right band slack above %1"), QT_TRANSLATE_NOOP("sentences", "Bands slack above %1")).arg(at),
                tr("Up there they help no more. Anchor them higher to help longer.")};
    return {sided(w.side, QT_TRANSLATE_NOOP("sentences", "Left band slack up to %1"), QT_TRANSLATE_NOOP("sentences", "Right band slack up to %1"), QT_TRANSLATE_NOOP("sentences", "Bands slack up to %1")).arg(at),
            tr("Below that they add nothing and may slip off. Anchor them lower, or double them.")};
}

}

Said warning(const SetupWarning& w, const Setup& setup)
{
    const QString at = say::lengthWithUnit(w.height.value_or(Height{}));
    switch (w.code) {
    case Code::FirstLinkUp:
        return {sided(w.side, QT_TRANSLATE_NOOP("sentences", "Left chain: first link up at %1"), QT_TRANSLATE_NOOP("sentences", "Right chain: first link up at %1"), QT_TRANSLATE_NOOP("sentences", "Chains: first link up at %1")).arg(at),
                tr("Below that the chain adds nothing. A shorter lead starts it sooner.")};
    case Code::LastLinkOff:
        return {sided(w.side, QT_TRANSLATE_NOOP("sentences", "Left chain: last link off at %1"), QT_TRANSLATE_NOOP("sentences", "Right chain: last link off at %1"), QT_TRANSLATE_NOOP("sentences", "Chains: last link off at %1")).arg(at),
                tr("Above that it swings and adds no more. A longer lead keeps a link down.")};
    case Code::BandSlack:
        return slack(w, setup);
    case Code::BeyondMeasured:
        if (endsAid(w, setup))
            return {tr("Bench aid not measured past %1").arg(at),
                    tr("Its help beyond is unknown. Read it there too, or say where the chest is.")};
        return {sided(w.side, QT_TRANSLATE_NOOP("sentences", "Left side: not measured past %1"), QT_TRANSLATE_NOOP("sentences", "Right side: not measured past %1"), QT_TRANSLATE_NOOP("sentences", "Not measured past %1")).arg(at),
                tr("The pull beyond is unknown. Hang more on the band and read its length, or hang it slacker.")};
    case Code::SidesUneven:
        return {(w.side == Side::Left ? tr("Left pulls more, from %1 up")
                                      : tr("Right pulls more, from %1 up")).arg(at),
                tr("By over 2 % of the whole. Hang both sides alike.")};
    case Code::NotRising:
        return {tr("It gets lighter from %1 up").arg(at),
                tr("Look whether it hangs as you meant.")};
    case Code::PulledForward:
        return {tr("Bands pull the bar forward, from %1 up").arg(at),
                tr("By over 3 % of the whole. Anchor them under the bar.")};
    case Code::PulledBack:
        return {tr("Bands pull the bar back, from %1 up").arg(at),
                tr("By over 3 % of the whole. Anchor them under the bar.")};
    case Code::OverCap:
        return {tr("Over the cap from %1 up").arg(at),
                tr("Do not lift this. Take plates off.")};
    case Code::OverRackRating:
        return {tr("More than the rack may carry"),
                tr("Do not lift this. Take plates off.")};
    case Code::OverSafetyRating:
        return {tr("More than the safeties may carry, from %1 up").arg(at),
                tr("Do not lift this. Take plates off.")};
    case Code::SleeveFull:
        break;
    }
    return {tr("More plates than the sleeve holds"),
            tr("Do not lift this. Use fewer, heavier plates.")};
}

Said weakAnchor(const WeakAnchor& anchor)
{
    return {tr("The anchor of %1 may lift").arg(QString::fromStdString(anchor.item)),
            tr("Do not lift this. Up to %1 pull it up, %2 hold it: it takes %3 times the pull. Hold it down with more.")
                .arg(atMost(anchor.pull), say::massWithUnit(anchor.heldBy), say::plain(anchor.holdFactor, 2))};
}

bool forbids(Code code)
{
    return code == Code::BeyondMeasured || code == Code::OverCap || code == Code::OverRackRating || code == Code::OverSafetyRating || code == Code::SleeveFull;
}

QString entryName(const std::string& name)
{
    static const QHash<QString, const char*> names = {
        {QStringLiteral("bottom"), QT_TRANSLATE_NOOP("sentences", "bottom")},
        {QStringLiteral("top"), QT_TRANSLATE_NOOP("sentences", "top")},
        {QStringLiteral("sticking zone"), QT_TRANSLATE_NOOP("sentences", "sticking zone")},
        {QStringLiteral("rack mark"), QT_TRANSLATE_NOOP("sentences", "rack mark")},
        {QStringLiteral("bar"), QT_TRANSLATE_NOOP("sentences", "bar")},
        {QStringLiteral("collars"), QT_TRANSLATE_NOOP("sentences", "collars")},
        {QStringLiteral("plates"), QT_TRANSLATE_NOOP("sentences", "plates")},
        {QStringLiteral("plate"), QT_TRANSLATE_NOOP("sentences", "plate")},
        {QStringLiteral("count of plates"), QT_TRANSLATE_NOOP("sentences", "number of plates")},
        {QStringLiteral("sleeve"), QT_TRANSLATE_NOOP("sentences", "room on the sleeve")},
        {QStringLiteral("points"), QT_TRANSLATE_NOOP("sentences", "hangings")},
        {QStringLiteral("length"), QT_TRANSLATE_NOOP("sentences", "length")},
        {QStringLiteral("mass"), QT_TRANSLATE_NOOP("sentences", "mass")},
        {QStringLiteral("scale step"), QT_TRANSLATE_NOOP("sentences", "step of the scale")},
        {QStringLiteral("wire"), QT_TRANSLATE_NOOP("sentences", "wire")},
        {QStringLiteral("pitch"), QT_TRANSLATE_NOOP("sentences", "pitch")},
        {QStringLiteral("inner width"), QT_TRANSLATE_NOOP("sentences", "inner width")},
        {QStringLiteral("rest length"), QT_TRANSLATE_NOOP("sentences", "length at rest")},
        {QStringLiteral("anchor height"), QT_TRANSLATE_NOOP("sentences", "height of the anchor")},
        {QStringLiteral("lead"), QT_TRANSLATE_NOOP("sentences", "lead")},
        {QStringLiteral("lead mass"), QT_TRANSLATE_NOOP("sentences", "mass of the lead")},
        {QStringLiteral("bunch"), QT_TRANSLATE_NOOP("sentences", "height of the bunch")},
        {QStringLiteral("mass per metre"), QT_TRANSLATE_NOOP("sentences", "mass per metre")},
        {QStringLiteral("empty"), QT_TRANSLATE_NOOP("sentences", "what it shows empty")},
        {QStringLiteral("mark"), QT_TRANSLATE_NOOP("sentences", "what is marked on it")},
        {QStringLiteral("count"), QT_TRANSLATE_NOOP("sentences", "how many at once")},
        {QStringLiteral("scale accuracy"), QT_TRANSLATE_NOOP("sentences", "accuracy of the scale")},
        {QStringLiteral("accuracy"), QT_TRANSLATE_NOOP("sentences", "accuracy of the scale")},
        {QStringLiteral("lowest hole"), QT_TRANSLATE_NOOP("sentences", "height of the lowest hole")},
        {QStringLiteral("hole to hole"), QT_TRANSLATE_NOOP("sentences", "from hole to hole")},
        {QStringLiteral("count of holes"), QT_TRANSLATE_NOOP("sentences", "number of holes")},
        {QStringLiteral("offset"), QT_TRANSLATE_NOOP("sentences", "distance of the anchor")},
        {QStringLiteral("stack"), QT_TRANSLATE_NOOP("sentences", "what is pinned on the stack")},
        {QStringLiteral("wrap"), QT_TRANSLATE_NOOP("sentences", "thickness of the handle")},
    };
    const QString key = QString::fromStdString(name);
    const auto at = key.lastIndexOf(QStringLiteral(": "));
    const QString last = at < 0 ? key : key.mid(at + 2), owner = at < 0 ? QString() : key.left(at);
    QString said = names.contains(last) ? tr(names.value(last)) : last;
    if (last.startsWith(QStringLiteral("point ")))
        said = tr("hanging %1").arg(say::fixed(last.mid(6).toInt(), 0));
    if (last.startsWith(QStringLiteral("reading ")))
        said = tr("reading %1").arg(say::fixed(last.mid(8).toInt(), 0));
    if (last == QLatin1String("item"))
        said = tr("something that is not in the kit");
    return owner.isEmpty() ? said : tr("%1, %2").arg(owner, said);
}

QString refusal(const Error& error)
{
    const QString what = entryName(error.what);
    switch (error.code) {
    case Refusal::NotThere: return tr("Still to enter: %1.").arg(what);
    case Refusal::TooFewPoints:
        if (error.what.ends_with("heights"))
            return tr("Read it at least at two heights, with another mass on it each time.");
        if (error.what.ends_with("angles") || error.what.ends_with("travels"))
            return tr("Read it at least at two places along its way.");
        if (error.what.ends_with("tries"))
            return tr("One try tells nothing of its own scatter. Take at least two tries in each condition.");
        if (error.what.ends_with("weighing"))
            return tr("Too short a stand to weigh her on. Record again, with a second of standing still first, or allow a short weighing.");
        if (error.what.ends_with("force"))
            return tr("The record is too short. Record again, from standing still to after the try.");
        if (error.what.ends_with("lines"))
            return tr("There are no numbers in this file. Choose a text file with the force in a column.");
        return tr("Hang at least two different masses and read the length of each.");
    case Refusal::PointsNotApart:
        if (error.what.find("reading ") != std::string::npos)
            return tr("Read at the same place as another: %1. Read one of them again.").arg(what);
        return tr("The readings are too alike. Hang a different mass.");
    case Refusal::BelowRest: return tr("Not longer than at rest: %1. Read it again, or the length at rest.").arg(what);
    case Refusal::NoRisingFit: return tr("More mass, yet no longer: read the lengths again.");
    case Refusal::HeightsOutOfOrder: return tr("Out of order: %1. Bottom, sticking zone and top go up.").arg(what);
    case Refusal::AnchorOnWrongSide: return tr("Anchored above means over her top mark, below means under her bottom mark: %1. Enter it again, or turn it round.").arg(what);
    case Refusal::TooMany: return tr("More hangs than is here: %1. Measure another, or hang it on one side.").arg(what);
    case Refusal::NotFalling: return tr("Higher up an aid helps less, and here it would help more: %1. Read it again, or leave it out.").arg(what);
    case Refusal::NotStill: return tr("She did not stay still while she was weighed. Take the try again, with a second of stillness first.");
    case Refusal::NoFlight: return tr("There is no flight in this record. Record it again, from standing still to landing.");
    case Refusal::NoPull: return tr("There is no pull in this record. Record it again, with a second of stillness before the pull.");
    case Refusal::DipBeforePull: return tr("The force fell before it rose, so the try does not count. Pull again, without dropping first.");
    case Refusal::RearFootSupported: return tr("With the rear foot supported nobody knows what each leg lifts. Compare tests with the foot free.");
    case Refusal::NotComparable: return tr("Measured in different ways, so it cannot be compared: %1. Take all three in one way.").arg(what);
    case Refusal::UnknownUnit: return tr("The unit is not said: %1. Say it in the head of the file, N or kN.").arg(what);
    case Refusal::NotFinite: return tr("Not a number: %1. Enter it again.").arg(what);
    case Refusal::OutOfRange: break;
    }
    return tr("This cannot be right: %1. Enter it again.").arg(what);
}

QString refusal(EntryRefusal refusal, const EntryLimits& limits, const QString& unit)
{
    switch (refusal) {
    case EntryRefusal::SecondPoint: return tr("There is a point already.");
    case EntryRefusal::TooManyDigits:
        return tr("No more than %Ln figures before the point.", nullptr, limits.digitCount);
    case EntryRefusal::TooManyDecimals:
        return limits.decimalCount == 0 ? tr("Whole numbers only.")
                                        : tr("No more than %Ln figures after the point.", nullptr, limits.decimalCount);
    case EntryRefusal::NotAKey: return tr("Not part of a number.");
    case EntryRefusal::NothingKeyed: return tr("Key a number first.");
    case EntryRefusal::BelowLeast: return tr("Less than %1 %2: read it again.").arg(say::plain(limits.leastRatio, std::max(2, limits.decimalCount)), unit);
    case EntryRefusal::AboveMost: break;
    }
    return tr("More than %1 %2: read it again.").arg(say::plain(limits.mostRatio, std::max(2, limits.decimalCount)), unit);
}

CautionText caution(const Caution& c)
{
    switch (c.code) {
    case CautionCode::Chains:
        return {tr("Chains: before it is ready"),
                {tr("The plain lift is stable."), tr("Last link still down at the top."),
                 tr("Feet clear of chain on the walk-out."), tr("Even on both sides, collars on.")}};
    case CautionCode::BandsBelow: {
        const QString anchor = c.mass ? tr("Each pulls up to %1 up on its anchor: it must hold well over that.").arg(atMost(*c.mass))
                                      : tr("How hard each pulls up on its anchor is not known: measure it further.");
        return {tr("Bands from below: before it is ready"),
                {anchor,
                 tr("No cuts or thin places. Faces out of the band's line."),
                 tr("Release the bands before changing plates.")}};
    }
    case CautionCode::BenchAid: {
        const QString full = c.mass ? tr("If it slips or tears she holds %1 at the bottom: safeties in, spotters ready for all of it.").arg(atMost(*c.mass))
                                    : tr("What she holds at the bottom if it slips or tears is not known: safeties in, spotters ready for all of it.");
        return {tr("Bench aid: before it is ready"),
                {full,
                 tr("No cuts, thin places or loose seams; it sits even on both arms."),
                 tr("Measured as she wears it: on another body it helps otherwise.")}};
    }
    case CautionCode::Release:
        return {tr("Heavier on the way down: before it is ready"),
                {tr("Rehearsed with empty hooks, or with what is let go left off, until both sides let go together each time."),
                 tr("A spotter at each end. Safeties in, tried with an empty bar."),
                 tr("If one side stays on: do not press, ride to the safeties."),
                 tr("The plain lift is stable, and somebody qualified has cleared her by name. Your local rules come first.")}};
    case CautionCode::BandsAbove:
        break;
    }
    const QString slip = c.mass ? tr("If a band slips she holds %1 at the bottom: safeties in.").arg(atMost(*c.mass))
                                : tr("What she holds at the bottom if a band slips is not known: safeties in.");
    return {tr("Bands from above: before it is ready"),
            {slip,
             tr("No cuts or thin places. Faces out of the band's line."),
             tr("Never strip plates with the bands on.")}};
}

}
