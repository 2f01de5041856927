// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/setup.h"
#include "tests/core/near.h"
#include "tests/core/resistance/anysetup.h"

#include <algorithm>
#include <rapidcheck.h>

using namespace steelyard;
using tests::anySetup;
using tests::between;
using tests::hungChain;

namespace {

std::vector<const Reading*> readings(const PullCurve& curve)
{
    std::vector<const Reading*> all;
    for (const auto* r : {&curve.rack, &curve.bottom, &curve.zone, &curve.top, &curve.mean})
        if (*r)
            all.push_back(&**r);
    return all;
}

/// Least and greatest over the path, looked up closely.
std::pair<double, double> range(const Setup& setup, int steps = 2000)
{
    double least = 1e300, greatest = -1e300;
    for (int i = 0; i <= steps; ++i) {
        const Height h = setup.path.bottom + static_cast<double>(i) / steps * (setup.path.top - setup.path.bottom);
        Force sum = weight(setup.bar + setup.collars + setup.plates);
        for (const auto* side : {&setup.left, &setup.right})
            for (const auto& item : *side)
                sum += hung::pull(item, h);
        least = std::min(least, sum.si());
        greatest = std::max(greatest, sum.si());
    }
    return {least, greatest};
}

}

class TestSetupProperties : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void moreIronIsNeverLessPull()
    {
        QVERIFY(rc::check("and pulls exactly its weight more, with the same give-or-take from what hangs", [] {
            Setup setup = anySetup();
            const auto before = *pullCurve(setup, 40);
            const double more = between(1, 50'000);
            setup.plates += kilograms(more);
            const auto after = *pullCurve(setup, 40);
            const auto a = readings(before), b = readings(after);
            RC_ASSERT(a.size() == b.size());
            for (std::size_t i = 0; i < a.size(); ++i) {
                RC_ASSERT(b[i]->value > a[i]->value);
                RC_ASSERT(tests::near((b[i]->value - a[i]->value).si(), weight(kilograms(more)).si(), 1e-9));
                RC_ASSERT(tests::near(b[i]->u.si(), a[i]->u.si(), 1e-9));
            }
            for (std::size_t i = 0; i < before.samples.size(); ++i)
                RC_ASSERT(after.samples[i].total >= before.samples[i].total);
        }));
    }

    void meanLiesBetweenLeastAndGreatest()
    {
        QVERIFY(rc::check("over the path and over the zone", [] {
            const Setup setup = anySetup();
            const auto curve = *pullCurve(setup, 0);
            if (curve.zone) {
                RC_ASSERT(curve.zone->value.si() >= curve.zoneLeast->value.si() - 1e-9);
                RC_ASSERT(curve.zone->value.si() <= curve.zoneGreatest->value.si() + 1e-9);
            }
            RC_PRE(curve.mean.has_value());
            const auto [least, greatest] = range(setup);
            RC_ASSERT(curve.mean->value.si() >= least - 1e-3 * (greatest - least) - 1e-9);
            RC_ASSERT(curve.mean->value.si() <= greatest + 1e-3 * (greatest - least) + 1e-9);
            if (curve.zone)
                RC_ASSERT(curve.zoneLeast->value.si() >= least - 0.01 * (greatest - least) - 1e-9);
        }));
    }

    void meanOfAConstantLoadIsTheLoad()
    {
        QVERIFY(rc::check("to the last bit, with no error but the iron's", [] {
            Setup setup = anySetup();
            setup.left.clear();
            setup.right.clear();
            const auto curve = *pullCurve(setup, 0);
            const Force load = weight(setup.bar + setup.collars + setup.plates);
            for (const Reading* r : readings(curve)) {
                RC_ASSERT(r->value == load);
                RC_ASSERT(tests::near(r->u.si(), weight(setup.uIron).si(), 1e-12));
            }
            RC_ASSERT(curve.ready && curve.mean->value == load);
            RC_ASSERT(tests::nearShare(curve.work->si(), (load * (setup.path.top - setup.path.bottom)).si(), 1e-15));
        }));
    }

    void uncertaintyIsNeverNegative()
    {
        QVERIFY(rc::check("and grows with what is not known", [] {
            Setup setup = anySetup();
            const auto curve = *pullCurve(setup, 60);
            for (const Reading* r : readings(curve)) {
                RC_ASSERT(r->u.si() >= 0);
                RC_ASSERT(r->giveOrTake.si() >= 1.95 * r->u.si());
                RC_ASSERT(r->degreesOfFreedom >= 1);
            }
            for (const CurveSample& s : curve.samples)
                RC_ASSERT((s.u.si() >= 0 && s.giveOrTake.si() >= 1.95 * s.u.si()));
            setup.path.uMark += metres(0.01);
            setup.uIron += kilograms(0.5);
            const auto worse = *pullCurve(setup, 0);
            const auto a = readings(curve), b = readings(worse);
            for (std::size_t i = 0; i < a.size(); ++i)
                RC_ASSERT(b[i]->u > a[i]->u);
        }));
    }

    void samplesAreAtMost200AndHoldTheCorners()
    {
        QVERIFY(rc::check("in order, from bottom to top, parts adding up", [] {
            const Setup setup = anySetup();
            const auto wanted = *rc::gen::element<std::size_t>(0, 1, 2, 50, 200, 5000);
            const auto curve = *pullCurve(setup, wanted);
            const auto& samples = curve.samples;
            RC_ASSERT(samples.size() == (wanted < 2 ? 0 : std::min<std::size_t>(wanted, 200)));
            if (samples.empty())
                return;
            RC_ASSERT((samples.front().height == setup.path.bottom && samples.back().height == setup.path.top));
            RC_ASSERT(std::is_sorted(samples.begin(), samples.end(), [](const auto& a, const auto& b) { return a.height < b.height; }));
            for (const CurveSample& s : samples)
                RC_ASSERT(tests::near((s.iron + s.chain + s.band + s.help).si(), s.total.si(), 1e-9));
            RC_PRE(wanted >= 50);
            std::vector<Height> kinks;
            for (const auto* side : {&setup.left, &setup.right})
                for (const auto& item : *side)
                    hung::appendKinks(item, kinks);
            for (const Height k : kinks)
                if (k > setup.path.bottom && k < setup.path.top)
                    RC_ASSERT(std::any_of(samples.begin(), samples.end(), [&](const auto& s) { return std::abs((s.height - k).si()) <= 1e-9; }));
        }));
    }

    void readingsAgreeWithTheCurve()
    {
        QVERIFY(rc::check("bottom and top are the first and the last sample; the mean is that of a finer curve", [] {
            const Setup setup = anySetup();
            const auto curve = *pullCurve(setup);
            RC_PRE(curve.mean.has_value());
            RC_ASSERT(tests::near(curve.bottom->value.si(), curve.samples.front().total.si(), 1e-9));
            RC_ASSERT(tests::near(curve.top->value.si(), curve.samples.back().total.si(), 1e-9));
            RC_ASSERT(tests::near(curve.top->u.si(), curve.samples.back().u.si(), 1e-9));
            RC_ASSERT(tests::near(curve.top->giveOrTake.si(), curve.samples.back().giveOrTake.si(), 1.1e-5 * curve.top->u.si()));
            double area = 0, size = 1;
            for (std::size_t i = 1; i < curve.samples.size(); ++i) {
                const CurveSample &low = curve.samples[i - 1], &high = curve.samples[i];
                area += (high.height - low.height).si() * (high.total + low.total).si() / 2;
                size += (high.height - low.height).si() * ((high.iron + high.chain).si() + std::abs(high.band.si()) + std::abs(high.help.si()));
            }
            RC_ASSERT(tests::near(curve.work->si(), area, 5e-4 * size));
        }));
    }

    void swappingLeftAndRightKeepsTheTotals()
    {
        QVERIFY(rc::check("pulls, errors and heights of warnings; sides change places", [] {
            Setup setup = anySetup(), mirror = setup;
            std::swap(mirror.left, mirror.right);
            const auto a = *pullCurve(setup, 20), b = *pullCurve(mirror, 20);
            const auto one = readings(a), other = readings(b);
            RC_ASSERT(one.size() == other.size());
            for (std::size_t i = 0; i < one.size(); ++i) {
                RC_ASSERT(tests::near(one[i]->value.si(), other[i]->value.si(), 1e-9));
                RC_ASSERT(tests::near(one[i]->u.si(), other[i]->u.si(), 1e-9));
            }
            RC_ASSERT(a.ready == b.ready);
            RC_ASSERT(a.warnings.size() == b.warnings.size());
            for (const SetupWarning& w : a.warnings) {
                const Side side = w.side == Side::Left ? Side::Right : w.side == Side::Right ? Side::Left : Side::Both;
                RC_ASSERT(std::any_of(b.warnings.begin(), b.warnings.end(), [&](const SetupWarning& v) {
                    return v.code == w.code && v.side == side && v.height.has_value() == w.height.has_value() && (!w.height || std::abs((*v.height - *w.height).si()) < 1e-7);
                }));
            }
        }));
    }

    /// A chain of twice the length hung doubled is two straight chains, in the whole set-up as on its own: the same pulls
    /// and, weighed together, the same errors.
    void aDoubledChainIsTwoStraightOnes()
    {
        QVERIFY(rc::check("at every mark and in the mean", [] {
            Setup setup = anySetup(), folded = setup;
            const double length = between(100, 1500), lead = between(0, 1000), perMetre = between(500, 12000), u = between(0, 200);
            const HungChain one = hungChain(ChainHanging::Straight, length, lead, perMetre, u, 77);
            setup.left.push_back(one);
            setup.left.push_back(one);
            folded.left.push_back(hungChain(ChainHanging::Doubled, 2 * length, lead, perMetre, u, 77));
            const auto a = *pullCurve(setup, 0), b = *pullCurve(folded, 0);
            const auto two = readings(a), doubled = readings(b);
            RC_ASSERT(two.size() == doubled.size());
            for (std::size_t i = 0; i < two.size(); ++i) {
                RC_ASSERT(tests::near(two[i]->value.si(), doubled[i]->value.si(), 1e-9));
                RC_ASSERT(tests::near(two[i]->u.si(), doubled[i]->u.si(), 1e-9));
            }
        }));
    }

    void readyMeansAllIsKnown()
    {
        QVERIFY(rc::check("ready exactly when no warning says that a measurement ends, and then every reading is there", [] {
            const Setup setup = anySetup();
            const auto curve = *pullCurve(setup);
            const bool ends = std::any_of(curve.warnings.begin(), curve.warnings.end(), [](const auto& w) { return w.code == SetupWarningCode::BeyondMeasured; });
            if (curve.ready)
                RC_ASSERT((curve.bottom && curve.top && curve.mean && curve.work && curve.twoPointMean && curve.rack.has_value() == setup.path.rack.has_value()));
            // a rack mark may stand apart from the path, with an unknown stretch between the two
            if (!setup.path.rack || !ends)
                RC_ASSERT(curve.ready == !ends);
            for (const CurveSample& s : curve.samples)
                RC_ASSERT((s.known || !curve.ready));
        }));
    }
};

QTEST_APPLESS_MAIN(TestSetupProperties)
#include "test_setupproperties.moc"
