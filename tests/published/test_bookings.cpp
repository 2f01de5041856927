// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/booking/counts.h"
#include "core/booking/sessionload.h"
#include "core/booking/volume.h"
#include "core/resistance/chain.h"
#include "tests/published/rows.h"

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

Estimate<Mass> kg(double mass) { return exactly(kilograms(mass)); }

LiftedSet setOf(int reps, double load, Limbs legs = Limbs::Both)
{
    LiftedSet set;
    set.reps = reps;
    set.load = PathLoad::constant(kg(load));
    set.legs = legs;
    return set;
}

PhaseVolume volumeOf(const std::vector<LiftedSet>& sets) { return bookedVolume(sets)->all; }

std::vector<std::optional<Score>> daysOf(const Row& row)
{
    std::vector<std::optional<Score>> days;
    for (const QString& day : row.inputs.split(','))
        days.emplace_back(Score{day.toDouble()});
    return days;
}

}

class TestPublishedBookings : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedBookings()
    {
        m_account.computes({"RP01"}, [](const Row& r) { return Numbers{sessionLoad(given(r, "RPE"), Minutes{given(r, "x")})->score}; });
        // load, mean and SD, as monotony has them
        m_account.computes({"RP03"}, [](const Row& r) {
            const auto days = daysOf(r);
            const WeekLoad week = *weekLoad(days);
            const double mean = week.load->score / static_cast<double>(week.reportedCount);
            return Numbers{week.load->score, mean, mean / week.monotony->score};
        });
        m_account.computes({"RP05"}, [](const Row&) { return Numbers{volumeOf(std::vector(3, setOf(8, 65))).up.mean.number()}; });
        m_account.computes({"RP06"}, [](const Row&) { return Numbers{volumeOf({setOf(10, 55), setOf(8, 65), setOf(6, 75)}).up.mean.number()}; });
        m_account.computes({"LO01"}, [](const Row&) { return Numbers{volumeOf(std::vector(3, setOf(5, 100))).up.mean.number()}; });
        m_account.computes({"LO02"}, [](const Row&) {
            LiftedSet set = setOf(5, 100);
            set.bodyInLoad = BodyInLoad::Whole;
            set.body = kg(80);
            return Numbers{volumeOf(std::vector(3, set)).upWithBody->mean.number()};
        });
        m_account.computes({"LO03"}, [](const Row&) {
            std::vector<LiftedSet> sets(3, setOf(5, 40, Limbs::Left));
            sets.insert(sets.end(), 3, setOf(5, 40, Limbs::Right));
            const BookedVolume volume = *bookedVolume(sets);
            return Numbers{(volume.left.up.mean.number() + volume.right.up.mean.number()) / 2, volume.all.up.mean.number()};
        });
        // a chain of 40 kg/m over a metre, its exact mean
        m_account.computes({"LO06"}, [](const Row&) {
            const HungChain chain = *HungChain::of({{kilogramsPerMetre(40), {}}, ownSource, metres(3), std::nullopt}, {});
            LiftedSet set;
            set.reps = 1;
            set.load = {kg(100 + chain.meanMass(metres(0.5), metres(1.5)).si()), kg(100 + chain.massAt(metres(0.5)).si()), kg(100 + chain.massAt(metres(1.5)).si())};
            return Numbers{volumeOf({set}).up.mean.number()};
        });
        m_account.computes({"LO08"}, [](const Row&) {
            const std::vector carries{*carryDone({CarryKind::Farmers, {kg(40), kg(40), {}}, {{exactly(metres(30)), {}, 0}}, 0})};
            return Numbers{carriedIn(carries).all.number()};
        });

        m_account.standsAside({"RP02"}, "words of the scale");
        m_account.standsAside({"RP07", "RP08"}, "intensity and density are not booked");
        m_account.standsAside({"RP09"}, "the row does not give its days");
        m_account.standsAside({"LO04", "LO07"}, "loads of studies, for context");
    }

private:
    Account m_account{"data/legcheck.csv", {"7 sRPE", "9 load"}};
};

QTEST_APPLESS_MAIN(TestPublishedBookings)
#include "test_bookings.moc"
