// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/implements/kettlebell.h"
#include "tests/core/near.h"
#include "tests/core/refused.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;

namespace {

Estimate<Mass> kg(double mass, double u = 0, std::uint64_t source = 0) { return within(kilograms(mass), kilograms(u), SourceId{source}); }

Result<SwingsDone> swings(const std::vector<int>& reps, double mass = 16) { return swingsDone(kg(mass, 0.1), reps); }

}

class TestKettlebell : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void fitIsTriedForEachGrip()
    {
        Bell bell{kg(24), false, metres(0.033), metres(0.115)};
        QCOMPARE(bell.fit(BellGrip::OneHand), HandFit::NotTried);
        bell.twoHands = HandFit::DoesNotFit;
        bell.oneHand = HandFit::Fits;
        QCOMPARE(bell.fit(BellGrip::TwoHands), HandFit::DoesNotFit);
        QCOMPARE(bell.fit(BellGrip::OneHand), HandFit::Fits);
    }

    void whatIsLoadedIsAddedUp()
    {
        const std::vector<Estimate<Mass>> plates{kg(2.5, 0.03, 7), kg(5, 0.06, 7)};
        const auto mass = *loadedMass(kg(6, 0.12), plates);
        QCOMPARE(mass.value, kilograms(13.5));
        VERIFY_NEAR_SHARE(mass.u().si(), std::hypot(0.12, 0.09), 1e-14);
        QCOMPARE(whatOf(loadedMass(kg(-1), plates)), std::string("shell"));
        QCOMPARE(whatOf(loadedMass(kg(1), std::vector{kg(-1)})), std::string("plates"));
        QCOMPARE(whatOf(loadedMass(kg(0), {})), std::string("mass"));
    }

    void dropOffIsFromTheBestToTheLast()
    {
        const SwingsDone done = *swings({18, 20, 19, 15});
        QCOMPARE(done.reps, 72);
        VERIFY_NEAR_SHARE(done.volume.value.si(), 72 * 16.0, 1e-15);
        VERIFY_NEAR_SHARE(done.volume.u().si(), 7.2, 1e-14);
        QCOMPARE(*done.dropOffPercent, 25.0);
        QCOMPARE(*swings({20, 20})->dropOffPercent, 0.0);
        QCOMPARE(*swings({10, 20})->dropOffPercent, 0.0);
        QVERIFY(!swings({20})->dropOffPercent && !swings({0, 0})->dropOffPercent);
    }

    void dropOffIsAShare()
    {
        QVERIFY(rc::check("from 0 to 100 %, whatever was swung", [] {
            auto reps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 60));
            reps.push_back(1);
            reps.push_back(*rc::gen::inRange(0, 60));
            const auto drop = swings(reps)->dropOffPercent;
            RC_ASSERT(drop && *drop >= 0 && *drop <= 100);
        }));
    }

    void refusals()
    {
        QCOMPARE(swings({}).error(), (Error{Refusal::TooFewPoints, "reps"}));
        QCOMPARE(swings({10, -1}).error(), (Error{Refusal::OutOfRange, "reps"}));
        QCOMPARE(swings({10, 100'001}).error(), (Error{Refusal::OutOfRange, "reps"}));
        QCOMPARE(whatOf(swings({10}, 0)), std::string("mass"));
    }
};

QTEST_APPLESS_MAIN(TestKettlebell)
#include "test_kettlebell.moc"
