// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/tooltexts.h"

#include "core/measure/rounding.h"
#include "core/measure/uncertainty.h"
#include "mobile/text/giving.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace tooltexts {

using namespace steelyard;

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("tooltexts", text, about, count); }

Mass sizeOf(Mass mass) { return kilograms(std::abs(mass.si())); }

Rounded rounded(Mass mass, Mass u)
{
    return roundTogether(say::shown(mass), say::shown(coverageFactor95(knownExactly) * u), 2);
}

QString percent(double share)
{
    return tr("%1 %").arg(say::plain(100 * std::abs(share), 1));
}

/// "6, 30 and 214 cm".
QString heights(const std::vector<Entered<Height>>& all)
{
    QStringList list;
    for (const Entered<Height>& height : all)
        list << say::entered(height);
    const QString last = list.takeLast();
    return say::inLengthUnit(list.isEmpty() ? last : tr("%1 and %2").arg(list.join(QStringLiteral(", ")), last));
}

QString orRefusal(const Error& error) { return sentences::refusal(error); }

QString scaleSaid(const ScaleMeasurement& scale)
{
    Mass most;
    int count = 0;
    for (const ScaleReading& reading : scale.readings)
        if (reading.known && reading.read) {
            most = std::max<Mass>(most, *reading.known);
            ++count;
        }
    return tr("%n known masses, to %1", nullptr, count).arg(say::massWithUnit(most));
}

QString ironSaid(const IronMeasurement& iron)
{
    if (iron.ends)
        return comesTo(iron);
    if (!iron.read || !iron.marked)
        return tr("not weighed");
    const QString read = say::inMassUnit(say::entered(*iron.read)), mark = say::inMassUnit(say::entered(*iron.marked));
    return iron.count == 1 ? tr("%1, marked %2").arg(read, mark) : tr("%1 for %2 marked %3").arg(read).arg(iron.count).arg(mark);
}

}

QString giveNumber(Mass mass, Mass u)
{
    return say::withGive(rounded(mass, u));
}

QString give(Mass mass, Mass u)
{
    return say::inMassUnit(giveNumber(mass, u));
}

QString stepHint()
{
    return tr("the least it shows: %1, or %2").arg(say::plain(0.1, 1), say::plain(0.05, 2));
}

QString stepAsked()
{
    return tr("The smallest change the scale shows: %1, or %2.").arg(say::plain(0.1, 1), say::plain(0.05, 2));
}

QString scale(const ScaleCheck& check)
{
    const QString upTo = say::massWithUnit(check.knownUpTo);
    if (check.good)
        return tr("Good: within %1 up to %2").arg(say::massWithUnit(check.accuracy), upTo);
    return (check.worst > Mass{} ? tr("Not good: %1 too much at %2") : tr("Not good: %1 too little at %2"))
        .arg(say::massWithUnit(sizeOf(check.worst)), say::massWithUnit(check.worstAt));
}

QString howToRead(const ScaleCheck& check)
{
    QStringList all;
    if (check.zero != Mass{})
        all << (check.zero > Mass{} ? tr("It shows %1 with nothing on it: set it to zero, or take that off what it reads.")
                                    : tr("It shows %1 under nothing with nothing on it: set it to zero, or add that to what it reads."))
                   .arg(say::massWithUnit(sizeOf(check.zero)));
    all << tr("What is weighed on it counts as up to %1 out.").arg(say::massWithUnit(check.accuracy));
    return all.join(QLatin1Char(' '));
}

QString beyond(const ScaleCheck& check, Mass read)
{
    // a tenth more says nothing new of a scale
    if (read <= 1.1 * check.knownUpTo)
        return {};
    return tr("That is more than the scale was checked with: it is known up to %1.").arg(say::massWithUnit(check.knownUpTo));
}

QString iron(const IronMeasurement& measured, const IronCheck& check)
{
    return (measured.count > 1 ? tr("Each weighs %1") : tr("It weighs %1")).arg(give(check.each, check.u));
}

QString offMark(const IronCheck& check, bool scaleChecked)
{
    if (check.offMark == Mass{})
        return tr("Just what is marked on it.");
    const QString by = say::massWithUnit(sizeOf(check.offMark)), share = percent(check.offShare);
    if (!check.clear)
        return (scaleChecked ? tr("Too close to call: %1 off the mark is within what the scale can be wrong.")
                             : tr("Too close to call: %1 off the mark is within the scale's step; the scale itself is not checked."))
            .arg(by);
    const QString off = (check.offMark > Mass{} ? tr("%1 more than its mark, by %2") : tr("%1 less than its mark, by %2")).arg(by, share);
    return (scaleChecked ? tr("%1: more than the scale can be wrong.") : tr("%1: more than the scale's step explains; the scale itself is not checked.")).arg(off);
}

QString lead(const KeptLead& lead)
{
    return tr("%1, weighs %2").arg(say::inLengthUnit(say::entered(lead.length)), say::inMassUnit(say::entered(lead.mass)));
}

QString rack(const RackHeights& rack)
{
    QStringList parts;
    if (rack.holeCount == 1)
        parts << tr("1 hole at %1").arg(say::lengthWithUnit(*rack.lowest));
    else if (rack.holeCount > 1)
        parts << tr("%n holes, %1 to %2", nullptr, rack.holeCount).arg(say::length(*rack.lowest), say::lengthWithUnit(*rack.highest));
    if (!rack.anchors.empty())
        parts << tr("bands at %1").arg(heights(rack.anchors));
    return parts.join(QStringLiteral(" · "));
}

QString comesTo(const Measured& measured)
{
    if (const auto* m = std::get_if<ScaleMeasurement>(&measured)) {
        const auto check = checked(*m);
        return check ? scale(*check) : orRefusal(check.error());
    }
    if (const auto* m = std::get_if<IronMeasurement>(&measured)) {
        const auto check = checked(*m);
        if (!check)
            return orRefusal(check.error());
        const QString mass = give(check->each, check->u);
        if (!m->marked)
            return mass;
        return m->count > 1 ? tr("%1 each, marked %2").arg(mass, say::inMassUnit(say::entered(*m->marked))) : tr("%1, marked %2").arg(mass, say::inMassUnit(say::entered(*m->marked)));
    }
    if (const auto* m = std::get_if<LeadMeasurement>(&measured)) {
        const auto strap = checked(*m);
        return strap ? lead(*strap) : orRefusal(strap.error());
    }
    if (isImplement(kindOf(measured)))
        return implementtexts::comesTo(measured);
    if (const auto* m = std::get_if<RackMeasurement>(&measured)) {
        const auto heights = checked(*m);
        return heights ? rack(*heights) : orRefusal(heights.error());
    }
    return {};
}

QString said(const Measured& measured)
{
    if (const auto* scale = std::get_if<ScaleMeasurement>(&measured))
        return scaleSaid(*scale);
    if (const auto* iron = std::get_if<IronMeasurement>(&measured))
        return ironSaid(*iron);
    return comesTo(measured);
}

}
