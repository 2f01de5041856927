// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/keptkit.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <limits>
#endif

using namespace steelyard;

namespace {

std::vector<KitItem> venue()
{
    const ScaleMeasurement scale{kilograms(0), kilograms(0.1), {{kilograms(20), kilograms(20.2)}}};
    return {samples::item(1, "chains", samples::weighed()),
            samples::item(2, "scale", scale, false),
            samples::item(3, "scale nobody checked", ScaleMeasurement{{}, kilograms(0.1), {}}, false),
            samples::item(4, "bar", IronMeasurement{IronSort::Bar, kilograms(20), kilograms(20.3), kilograms(0.1), kilograms(0.2), 1}, false),
            samples::item(5, "twenties", IronMeasurement{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), {}, 2}, false),
            samples::item(6, "short straps", LeadMeasurement{metres(0.62), kilograms(0.35)}),
            samples::item(7, "cord", LeadMeasurement{metres(0.3), {}}),
            samples::item(8, "rack", RackMeasurement{metres(0.415), metres(0.05), 28, {}}, false)};
}

template <typename List>
std::vector<std::uint64_t> places(const List& list)
{
    std::vector<std::uint64_t> numbers;
    for (const auto& kept : list)
        for (std::uint64_t n = 1; n < 10; ++n)
            if (kept.item == samples::numbered(n))
                numbers.push_back(n);
    return numbers;
}

using Places = std::vector<std::uint64_t>;

}

/// What of a venue's kit helps to measure and to hang.
class KeptKitTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachKindByItself();
    void whatIsOutOfUseIsLeftOut();
    void leadWithoutAMassWeighsNothing();
    void leadRefusalsNameTheEntry();
};

void KeptKitTest::eachKindByItself()
{
    const auto kit = venue();
    QCOMPARE(places(scalesIn(kit)), Places({2}));
    VERIFY_NEAR(scalesIn(kit)[0].check.accuracy.si(), 0.2, 1e-12);
    QCOMPARE(places(ironIn(kit, IronSort::Bar)), Places({4}));
    QCOMPARE(places(ironIn(kit, IronSort::Plates)), Places({5}));
    QCOMPARE(places(leadsIn(kit)), Places({6, 7}));
    QCOMPARE(places(racksIn(kit)), Places({8}));
    QCOMPARE(racksIn(kit)[0].check.holeCount, 28);
}

void KeptKitTest::whatIsOutOfUseIsLeftOut()
{
    auto kit = venue();
    for (KitItem& item : kit)
        item.inspection = Inspection{KitFault::Other, "", {}};
    QVERIFY(scalesIn(kit).empty() && racksIn(kit).empty() && leadsIn(kit).empty() && ironIn(kit, IronSort::Bar).empty());
    // nor is what somebody else has
    kit = venue();
    for (KitItem& item : kit)
        item.lent = OnLoan{"the rowers"};
    QVERIFY(scalesIn(kit).empty() && racksIn(kit).empty() && leadsIn(kit).empty() && ironIn(kit, IronSort::Bar).empty());
}

void KeptKitTest::leadWithoutAMassWeighsNothing()
{
    QCOMPARE(leadsIn(venue())[1].mass.si(), 0.0);
}

void KeptKitTest::leadRefusalsNameTheEntry()
{
    QCOMPARE(checked(LeadMeasurement{{}, kilograms(1)}).error(), (Error{Refusal::NotThere, "length"}));
    QCOMPARE(checked(LeadMeasurement{Length{}, kilograms(1)}).error(), (Error{Refusal::OutOfRange, "length"}));
    QCOMPARE(checked(LeadMeasurement{metres(std::numeric_limits<double>::quiet_NaN()), {}}).error(), (Error{Refusal::OutOfRange, "length"}));
    QCOMPARE(checked(LeadMeasurement{metres(0.5), kilograms(-1)}).error(), (Error{Refusal::OutOfRange, "mass"}));
}

QTEST_APPLESS_MAIN(KeptKitTest)

#include "test_keptkit.moc"
