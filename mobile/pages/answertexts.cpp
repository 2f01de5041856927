// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/setuptexts.h"

#include "core/measure/rounding.h"
#include "core/resistance/pullsum.h"
#include "mobile/gates/gatetexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <utility>

namespace setuptexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("setuptexts", text); }

QString titleOf(const PullCurve& curve, const LiftPath& path)
{
    if (!curve.bottom && !curve.top)
        return tr("Not known: measure further");
    // the unit stands once, at the first number
    bool first = true, unitSaid = false;
    const auto said = [&](const std::optional<Reading>& r) {
        const bool leads = std::exchange(first, false);
        if (!r)
            return leads ? tr("Not known") : tr("not known");
        const QString pull = say::pull(*r).sentence();
        return std::exchange(unitSaid, true) ? pull : say::inMassUnit(pull);
    };
    const QString bottom = said(curve.bottom);
    if (curve.zone || path.zoneFrom) {
        const QString zone = said(curve.zone);
        return tr("%1 at the bottom, %2 in the sticking zone, %3 at the top").arg(bottom, zone, said(curve.top));
    }
    return tr("%1 at the bottom, %2 at the top").arg(bottom, said(curve.top));
}

QString workOf(Energy work, Energy giveOrTake)
{
    // a joule is the least that is shown
    if (giveOrTake < joules(0.5))
        return tr("%1 J").arg(say::plain(work.si(), 0));
    const Rounded said = roundTogether(work.si(), giveOrTake.si(), 0);
    return tr("%1 ± %2 J").arg(say::fixed(said.value, said.decimals), say::fixed(said.give, said.decimals));
}

QString moreOf(const PullCurve& curve, const PullSum& sum, const LiftPath& path)
{
    QStringList parts;
    if (curve.zoneLeast) {
        const say::Pull least = say::pull(*curve.zoneLeast), greatest = say::pull(*curve.zoneGreatest);
        if (least.value != greatest.value)
            parts << tr("sticking zone %1 to %2").arg(least.sentence(), greatest.withUnit());
    }
    if (curve.rack)
        parts << tr("off the rack %1").arg(say::pull(*curve.rack).withUnit());
    if (curve.work)
        parts << tr("work %1 a rep").arg(workOf(*curve.work, sum.workGiveOrTake(path.bottom, path.top)));
    return parts.join(QStringLiteral(" · "));
}

/// What stands between the chains and the total: bands, what she wears, or both.
QString bandNameOf(const Setup& setup)
{
    const auto anyIs = [&setup](PullKind kind) {
        const auto is = [kind](const HungItem& item) { return hung::kind(item) == kind; };
        return std::any_of(setup.left.begin(), setup.left.end(), is) || std::any_of(setup.right.begin(), setup.right.end(), is);
    };
    if (!anyIs(PullKind::Help))
        return tr("band");
    return anyIs(PullKind::Band) ? tr("band and aid") : tr("aid");
}

/// What forbids the lift stands where it is decided, also when the notice itself is scrolled away.
QString firstStop(const std::vector<NoticeRow>& rows)
{
    for (const NoticeRow& row : rows)
        if (row.stop)
            return row.head;
    return tr("See what forbids it.");
}

QString wantedBy(ReleaseWants wants)
{
    switch (wants) {
    case ReleaseWants::ItsBar: return tr("Heavier on the way down: its bar is another.");
    case ReleaseWants::Somebody: return tr("Heavier on the way down: for nobody yet.");
    case ReleaseWants::Nothing:
    case ReleaseWants::Measuring: break;
    }
    return tr("Heavier on the way down: not all is known.");
}

void setState(SetupAnswer& answer, const WeighedUp& weighed, Readiness readiness, const std::vector<NoticeRow>& rows, ReleaseWants wants)
{
    answer.ready = readiness == Readiness::Ready;
    answer.stop = readiness == Readiness::NotToBeUsed;
    switch (readiness) {
    case Readiness::Ready:
        answer.state = tr("READY");
        answer.reason = weighed.cautions.empty() ? tr("Nothing hangs but iron.") : tr("Looked over as it hangs.");
        return;
    case Readiness::NotToBeUsed:
        answer.state = tr("DO NOT LIFT");
        answer.reason = firstStop(rows);
        return;
    case Readiness::ReleaseOpen:
        answer.reason = wantedBy(wants);
        break;
    case Readiness::LookOver:
        answer.reason = tr("Look it over first.");
        break;
    case Readiness::PullUnknown:
        answer.reason = tr("Past what was measured.");
        break;
    case Readiness::MarksMissing:
    case Readiness::Refused:
        answer.reason = weighed.error ? sentences::refusal(*weighed.error) : QString();
        break;
    }
    answer.state = tr("NOT READY");
}

}

SetupAnswer answer(const WeighedUp& weighed)
{
    SetupAnswer out;
    out.unit = say::massUnit();
    setState(out, weighed, weighed.readiness, notices(weighed), ReleaseWants::Nothing);
    if (!weighed.curve) {
        // in a floor lift it may be the plates that are missing
        const bool marksFirst = weighed.readiness == Readiness::MarksMissing && weighed.error && weighed.error->what != "plates";
        out.title = marksFirst ? tr("Her bar marks come first") : tr("Not known yet");
        return out;
    }
    const PullCurve& curve = *weighed.curve;
    const PullSum sum(*weighed.setup);
    out.known = true;
    out.bandName = bandNameOf(*weighed.setup);
    out.title = titleOf(curve, *weighed.path);
    if (curve.mean && curve.twoPointMean)
        out.means = tr("mean of the path %1, mean of the ends %2")
                        .arg(say::pull(*curve.mean).withUnit(), say::pull(*curve.twoPointMean, sum.endsGiveOrTake(weighed.path->bottom, weighed.path->top)).withUnit());
    out.more = moreOf(curve, sum, *weighed.path);
    return out;
}

SetupAnswer answer(const Desk& desk)
{
    SetupAnswer out = answer(desk.answer());
    setState(out, desk.answer(), desk.readiness(), notices(desk), desk.releaseWants());
    out.gate = gatetexts::quiet(desk.lifter(), desk.gate());
    return out;
}

PullPicture picture(const WeighedUp& weighed)
{
    PullPicture p;
    if (!weighed.curve || !weighed.path)
        return p;
    double most = 0;
    for (const CurveSample& s : weighed.curve->samples) {
        const double h = inMetres(s.height);
        if (!s.known) {
            if (std::isnan(p.unknownFrom))
                p.unknownFrom = h;
            continue;
        }
        const auto shown = say::shownPull;
        const double iron = shown(s.iron), chain = iron + shown(s.chain), total = shown(s.total), u = shown(s.u), give = shown(s.giveOrTake);
        p.zero.append({0, h});
        p.iron.append({iron, h});
        p.chain.append({chain, h});
        p.band.append({total, h});
        p.total.append({total, h});
        p.low1.append({total - u, h});
        p.high1.append({total + u, h});
        p.low2.append({total - give, h});
        p.high2.append({total + give, h});
        most = std::max({most, total + give, iron, chain});
    }
    p.heightTo = inMetres(weighed.path->top) * 1.06;
    p.pullTo = std::max(say::shown(kilograms(10)), most * 1.06);
    return p;
}

QVariantList marks(const WeighedUp& weighed)
{
    QVariantList list;
    if (!weighed.curve || !weighed.path)
        return list;
    const LiftPath& path = *weighed.path;
    // the unit stands once, with the highest
    const auto add = [&](const char* key, const QString& name, Height at, const std::optional<Reading>& reading) {
        QVariantMap mark{{QStringLiteral("key"), QLatin1String(key)}, {QStringLiteral("name"), name}, {QStringLiteral("height"), inMetres(at)},
                         {QStringLiteral("heightText"), list.isEmpty() ? say::lengthWithUnit(at) : say::length(at)},
                         {QStringLiteral("pull"), reading ? say::shownPull(reading->value) : qQNaN()},
                         {QStringLiteral("text"), reading ? say::pull(*reading).tight() : tr("not known")}};
        if (path.zoneFrom && QLatin1String(key) == QLatin1String("zone")) {
            mark.insert(QStringLiteral("zoneFrom"), inMetres(*path.zoneFrom));
            mark.insert(QStringLiteral("zoneTo"), inMetres(*path.zoneTo));
        }
        list.append(mark);
    };
    add("top", tr("top"), path.top, weighed.curve->top);
    if (path.zoneFrom)
        add("zone", tr("sticking"), *path.zoneFrom + (*path.zoneTo - *path.zoneFrom) / 2, weighed.curve->zone);
    add("bottom", tr("bottom"), path.bottom, weighed.curve->bottom);
    return list;
}

namespace {

/// Days are said as seen from the day that the set-up is held to.
std::chrono::sys_days todayOf(const Desk& desk)
{
    return desk.lifter() ? desk.lifter()->day : desk.heldTo().day.value_or(std::chrono::sys_days{});
}

NoticeRow oldBand(const OldBand& band)
{
    const QString on = keepingtexts::day(band.measuredOn, std::chrono::sys_days{});
    return {tr("Measured long ago: %1").arg(QString::fromStdString(band.item)),
            tr("On %1, longer ago than your limit: what is uncertain of its pull counts half as much again. Measure it anew.").arg(on), false};
}

}

std::vector<NoticeRow> notices(const Desk& desk)
{
    std::vector<NoticeRow> rows = gatetexts::stops(desk.gate(), todayOf(desk));
    for (NoticeRow& row : notices(desk.answer()))
        rows.push_back(std::move(row));
    return rows;
}

std::vector<CautionRow> cautions(const Desk& desk)
{
    std::vector<CautionRow> rows = cautions(desk.answer());
    for (CautionRow& row : gatetexts::cautions(desk.gate(), todayOf(desk)))
        rows.push_back(std::move(row));
    return rows;
}

std::vector<NoticeRow> notices(const WeighedUp& weighed)
{
    std::vector<NoticeRow> rows;
    for (const std::string& name : weighed.outOfUse)
        rows.push_back({tr("Out of use: %1").arg(QString::fromStdString(name)), tr("Take another, or look it over and say that it is fit."), true});
    for (const std::string& name : weighed.lentOut)
        rows.push_back({tr("Lent: %1").arg(QString::fromStdString(name)), tr("Take another, or say in Kit that it is back."), true});
    if (!weighed.curve)
        return rows;
    for (const WeakAnchor& anchor : weighed.weakAnchors) {
        const auto said = sentences::weakAnchor(anchor);
        rows.push_back({said.head, said.body, true});
    }
    for (const SetupWarning& w : weighed.curve->warnings) {
        const auto said = sentences::warning(w, *weighed.setup);
        rows.push_back({said.head, said.body, sentences::forbids(w.code)});
    }
    for (const OldBand& band : weighed.oldBands)
        rows.push_back(oldBand(band));
    std::stable_sort(rows.begin(), rows.end(), [](const NoticeRow& a, const NoticeRow& b) { return a.stop && !b.stop; });
    return rows;
}

std::vector<CautionRow> cautions(const WeighedUp& weighed)
{
    std::vector<CautionRow> rows;
    for (const Caution& c : weighed.cautions) {
        const auto said = sentences::caution(c);
        rows.push_back({static_cast<int>(c.code), said.head, said.points, c.lookedOver});
    }
    return rows;
}

QString readingAt(const WeighedUp& weighed, Height height)
{
    constexpr double hair = 1e-9;
    const auto& path = weighed.path;
    if (!weighed.setup || !path || !(height.si() >= path->bottom.si() - hair && height.si() <= path->top.si() + hair))
        return {};
    const PullSum sum(*weighed.setup);
    const QString at = say::lengthWithUnit(height);
    if (!sum.knows(height))
        return tr("%1: not known").arg(at);
    return tr("%1: %2").arg(at, say::pull(sum.at(height)).withUnit());
}

}
