// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/machine.h"
#include "tests/published/rows.h"

#include <numbers>
#include <set>

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

constexpr double pi = std::numbers::pi;

/// r(θ) = 0.10 + 0.05 sin θ, measured closely enough that the curve between the points does not matter.
CamProfile sineCam()
{
    std::vector<CamProfile::Point> points;
    constexpr int steps = 2000;
    for (int i = 0; i <= steps; ++i) {
        const double angle = pi * i / steps;
        points.push_back({Angle{angle}, metres(0.10 + 0.05 * std::sin(angle))});
    }
    return *CamProfile::of(points);
}

}

class TestPublishedUnitsAndCams : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedUnitsAndCams()
    {
        m_account.computes({"UNIT-01"}, [](const Row&) { return Numbers{inKilograms(pounds(1))}; });
        m_account.computes({"UNIT-02"}, [](const Row&) { return Numbers{inKilograms(pounds(45))}; });
        m_account.computes({"UNIT-03"}, [](const Row&) { return Numbers{inPounds(kilograms(100))}; });
        m_account.computes({"UNIT-04"}, [](const Row&) { return Numbers{standardGravity.si()}; });
        m_account.computes({"UNIT-05"}, [](const Row&) { return Numbers{weight(pound).si()}; });
        m_account.computes({"UNIT-06"}, [](const Row&) { return Numbers{weight(kilograms(1)).si()}; });
        m_account.computes({"CAM-01"}, [](const Row& r) {
            const Mass stack = kilograms(given(r, "stack"));
            return Numbers{sineCam().torque(stack, Angle{0})->newtonMetres, sineCam().torque(stack, Angle{pi / 2})->newtonMetres};
        });
        m_account.computes({"CAM-02"}, [](const Row&) { return Numbers{sineCam().meanTorque(kilograms(50), Angle{0}, Angle{pi})->newtonMetres}; });
        m_account.computes({"CAM-03"}, [](const Row&) { return Numbers{sineCam().work(kilograms(50), Angle{0}, Angle{pi})->si(), sineCam().rise(Angle{0}, Angle{pi})->si()}; });

        m_account.standsAside({"CAM-05", "CAM-06"}, "no number");
        m_account.standsAside({"PLATE-01", "PLATE-02", "PLATE-03", "PLATE-06"}, "what there is to hang, for the kit to say");
        m_account.standsAside({"PLATE-04", "PLATE-05"}, "tolerances, for the kit to say");
        m_account.standsAside({"STICK-01", "STICK-02", "STICK-03"}, "about athletes: a sticking zone is her own or absent");
        m_account.standsAside({"STICK-04"}, "a comparison of strength, no set-up");
    }

private Q_SLOTS:
    void everyTopicHasATest()
    {
        const std::set<QString> tested{"AEL", "BAND", "BELL", "CAM", "CARRY", "CHAIN", "CHAINGEO", "CHAINLOAD", "DENS", "IMPL", "NIST", "PLATE", "RUBBER", "SLED", "SPRING", "STICK", "TYRE", "UNIT", "VARRES", "WOOD"};
        std::set<QString> there;
        for (const Row& row : rowsOf("data/resistance.csv"))
            there.insert(row.topic);
        QVERIFY(there == tested);
    }

private:
    Account m_account{"data/resistance.csv", {"UNIT", "PLATE", "CAM", "STICK"}};
};

QTEST_APPLESS_MAIN(TestPublishedUnitsAndCams)
#include "test_unitsandcams.moc"
