// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/pullparts.h"
#include "tests/core/near.h"
#include "tests/core/resistance/anysetup.h"

#include <rapidcheck.h>

using namespace steelyard;
using tests::anySetup;

namespace {

/// Both sides of a reading: its parts add up to the value, in quadrature to u.
void rcAddsUp(const Result<PullParts>& parts, const Reading& reading)
{
    RC_ASSERT(parts.ok());
    RC_ASSERT(tests::near(parts->total().si(), reading.value.si(), 1e-9 * (1 + std::abs(reading.value.si()))));
    RC_ASSERT(tests::near(parts->u().si(), reading.u.si(), 1e-9 * (1 + reading.u.si())));
    for (const PullPart& part : parts->parts)
        RC_ASSERT(part.u.si() >= 0);
}

}

/// A reading taken apart says the same as the reading.
class TestPullParts : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void partsAddUpToTheReading()
    {
        QVERIFY(rc::check("at every mark and over every mean", [] {
            const Setup setup = anySetup();
            const auto curve = *pullCurve(setup, 0);
            if (curve.bottom)
                rcAddsUp(pullPartsAt(setup, setup.path.bottom), *curve.bottom);
            if (curve.top)
                rcAddsUp(pullPartsAt(setup, setup.path.top), *curve.top);
            if (curve.rack)
                rcAddsUp(pullPartsAt(setup, *setup.path.rack), *curve.rack);
            if (curve.zone)
                rcAddsUp(pullPartsOfMean(setup, *setup.path.zoneFrom, *setup.path.zoneTo), *curve.zone);
            if (curve.mean)
                rcAddsUp(pullPartsOfMean(setup, setup.path.bottom, setup.path.top), *curve.mean);
        }));
    }

    void oneMeasurementIsOnePart()
    {
        Setup setup;
        setup.bar = kilograms(20);
        setup.path = {metres(0.8), metres(1.2), {}, {}, {}, metres(0.01)};
        const auto chain = tests::hungChain(ChainHanging::Straight, 1.8, 0.2, 5.8, 0.1, 7);
        setup.left = {chain};
        setup.right = {chain};
        const auto parts = pullPartsAt(setup, setup.path.bottom);
        QVERIFY(parts.ok());
        QCOMPARE(parts->parts.size(), std::size_t{1});
        QCOMPARE(parts->parts[0].pull.si(), 2 * hung::pull(HungItem(chain), setup.path.bottom).si());
        QCOMPARE(parts->iron.si(), weight(kilograms(20)).si());
        // two chains of 5.8 kg a metre taken up by a mark that is a centimetre off
        VERIFY_NEAR(parts->uMarks.si(), 2 * 5.8 * 9.80665 * 0.01, 1e-9);
    }

    void refusals()
    {
        Setup setup;
        setup.bar = kilograms(20);
        setup.path = {metres(0.8), metres(1.2), {}, {}, {}, metres(0.01)};
        QVERIFY(!pullPartsAt(setup, metres(-0.1)));
        QVERIFY(!pullPartsOfMean(setup, metres(1), metres(1)));
        QVERIFY(!pullPartsOfMean(setup, metres(1.2), metres(0.8)));
        setup.bar = kilograms(-1);
        QCOMPARE(pullPartsAt(setup, metres(1)).error(), (Error{Refusal::OutOfRange, "bar"}));
    }
};

QTEST_APPLESS_MAIN(TestPullParts)
#include "test_pullparts.moc"
