// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/aidkit.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <cmath>
#include <limits>
#endif

using namespace steelyard;

namespace {

AidMeasurement aid(std::initializer_list<std::pair<double, double>> massesAndCentimetres)
{
    AidMeasurement m;
    for (const auto& [kg, cm] : massesAndCentimetres)
        m.readings.push_back({kilograms(kg), metres(cm / 100), false});
    return m;
}

const auto good = [] { return aid({{62.5, 0}, {41, 5}, {22.5, 11}, {8.5, 19}, {0, 31}}); };

}

/// An elastic bench aid from its readings: what it helps, what is refused, which reading is odd and where to read next.
class AidKitTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void throughItsReadings();
    void slackAboveAReadingWithNothingOnIt();
    void orderDoesNotMatter();
    void refusals_data();
    void refusals();
    void halfEnteredAndLeftOutDoNotCount();
    void oddReading_data();
    void oddReading();
    void whereToReadNext();
};

void AidKitTest::throughItsReadings()
{
    const auto help = aidFrom(good(), SourceId{4});
    QVERIFY(help.ok());
    QCOMPARE(help->measurement(), SourceId{4});
    VERIFY_NEAR_SHARE(help->at(metres(0))->si(), 62.5 * 9.80665, 1e-12);
    VERIFY_NEAR_SHARE(help->at(metres(0.11))->si(), 22.5 * 9.80665, 1e-12);
    QVERIFY(!help->at(metres(-0.001)));
    // by hand: 2 % either way on the plates is 2/√3 %; the tape's centimetre makes nothing where the curve lies flat
    VERIFY_NEAR_SHARE(help->doubt().massShare, 0.011547005383792515, 1e-14);
    QCOMPARE(help->doubt().place, metres(0.01));
    QCOMPARE(help->doubt().scale, Force{});
    QCOMPARE(help->uncertaintyAt(metres(0.5)), Force{});
}

void AidKitTest::slackAboveAReadingWithNothingOnIt()
{
    const auto slack = aidFrom(good());
    QCOMPARE(slack->at(metres(1.5)), Force{});
    QCOMPARE(slack->slopeAt(metres(1.5)), Stiffness{});
    // it goes slack with a corner: below it still gives way
    // by hand, the three-point slope of Fritsch & Butland at the end: ((2·12 + 8)·(−8.5/12) + 12·(14/8))/20 kg a cm
    VERIFY_NEAR_SHARE(slack->slopeAt(metres(0.31))->si(), -100.0 * 9.80665 / 12, 1e-9);
    // nothing above, so the mean from there on is nothing; half way down it is half of what it was
    QCOMPARE(slack->mean(metres(0.31), metres(1.0)), Force{});
    VERIFY_NEAR(slack->mean(metres(0.19), metres(0.43))->si(), slack->mean(metres(0.19), metres(0.31))->si() / 2, 1e-9);
    QVERIFY(!slack->at(metres(2.32)));
    // nobody said where it goes slack: above the highest reading nothing is known
    const auto open = aidFrom(aid({{62.5, 0}, {41, 5}, {22.5, 11}}));
    QVERIFY(open->at(metres(0.11)) && !open->at(metres(0.111)));
}

void AidKitTest::orderDoesNotMatter()
{
    const auto mixed = aidFrom(aid({{8.5, 19}, {62.5, 0}, {0, 31}, {22.5, 11}, {41, 5}}));
    for (const double cm : {0.0, 3.0, 8.0, 15.0, 25.0, 40.0})
        QCOMPARE(mixed->at(metres(cm / 100)), aidFrom(good())->at(metres(cm / 100)));
}

void AidKitTest::refusals_data()
{
    QTest::addColumn<AidMeasurement>("measurement");
    QTest::addColumn<int>("code");
    QTest::addColumn<QString>("what");
    const double nan = std::nan(""), infinite = std::numeric_limits<double>::infinity();
    const auto row = [](const char* name, const AidMeasurement& m, Refusal code, const char* what) {
        QTest::newRow(name) << m << static_cast<int>(code) << QString(what);
    };
    row("nothing read", {}, Refusal::TooFewPoints, "heights");
    row("one height", aid({{40, 5}}), Refusal::TooFewPoints, "heights");
    row("two at one height", aid({{40, 5}, {0, 30}, {41, 5}}), Refusal::PointsNotApart, "reading 3");
    row("mass below nothing", aid({{40, 5}, {-1, 30}}), Refusal::OutOfRange, "reading 2");
    row("mass no number", aid({{nan, 5}, {0, 30}}), Refusal::OutOfRange, "reading 1");
    row("height below the chest", aid({{40, -5}, {0, 30}}), Refusal::OutOfRange, "reading 1");
    row("height without end", aid({{40, 5}, {0, infinite}}), Refusal::OutOfRange, "reading 2");
    row("more on it higher up", aid({{40, 5}, {20, 10}, {30, 15}, {0, 30}}), Refusal::NotFalling, "reading 3");
    row("two readings the wrong way round", aid({{20, 5}, {40, 10}}), Refusal::NotFalling, "reading 2");
}

void AidKitTest::refusals()
{
    QFETCH(AidMeasurement, measurement);
    QFETCH(int, code);
    QFETCH(QString, what);
    const auto help = aidFrom(measurement);
    QVERIFY(!help);
    QCOMPARE(static_cast<int>(help.error().code), code);
    QCOMPARE(QString::fromStdString(help.error().what), what);
}

void AidKitTest::halfEnteredAndLeftOutDoNotCount()
{
    AidMeasurement m = good();
    m.readings.push_back({kilograms(30), std::nullopt, false});
    m.readings.push_back({std::nullopt, metres(0.02), false});
    m.readings.push_back({kilograms(80), metres(0.15), true});
    QCOMPARE(aidReadingsThatCount(m), (std::vector<std::size_t>{0, 1, 2, 3, 4}));
    QVERIFY(aidFrom(m).ok());
    m.readings.back().leftOut = false;
    QCOMPARE(aidFrom(m).error(), (Error{Refusal::NotFalling, "reading 8"}));
}

void AidKitTest::oddReading_data()
{
    QTest::addColumn<AidMeasurement>("measurement");
    QTest::addColumn<int>("index");
    QTest::newRow("none") << good() << -1;
    QTest::newRow("too few to say") << aid({{20, 5}, {40, 10}}) << -1;
    QTest::newRow("in the middle") << aid({{62.5, 0}, {41, 5}, {52.5, 11}, {8.5, 19}, {0, 31}}) << 2;
    QTest::newRow("at the chest") << aid({{6.25, 0}, {41, 5}, {22.5, 11}, {8.5, 19}, {0, 31}}) << 0;
    QTest::newRow("at the top") << aid({{62.5, 0}, {41, 5}, {22.5, 11}, {85, 19}}) << 3;
    // 41 and 43 change places: leaving out either would do, the one at 43 lies further off the others' curve
    QTest::newRow("either of two") << aid({{62.5, 0}, {41, 5}, {43, 9}, {8.5, 19}, {0, 31}}) << 2;
    QTest::newRow("two at fault") << aid({{62.5, 0}, {10, 3}, {41, 5}, {5, 8}, {22.5, 11}, {0, 31}}) << -1;
}

void AidKitTest::oddReading()
{
    QFETCH(AidMeasurement, measurement);
    QFETCH(int, index);
    const auto odd = oddAidReadingIndex(measurement);
    QCOMPARE(odd ? static_cast<int>(*odd) : -1, index);
}

void AidKitTest::whereToReadNext()
{
    const auto reason = [](const AidMeasurement& m) { return nextAidReading(m)->reason; };
    QVERIFY(reason({}) == AidReason::Slack);
    QVERIFY(reason(aid({{40, 5}})) == AidReason::Slack);
    QVERIFY(reason(aid({{0, 30}})) == AidReason::Chest);
    // both ends are there: the middle, then the wider half
    const auto middle = nextAidReading(aid({{0, 30}, {60, 0}}));
    QVERIFY(middle->reason == AidReason::Gap);
    VERIFY_NEAR(middle->aboveChest.si(), 0.15, 1e-12);
    VERIFY_NEAR(nextAidReading(aid({{0, 30}, {60, 0}, {22, 10}}))->aboveChest.si(), 0.20, 1e-12);
    // four on a straight line are enough
    QVERIFY(!nextAidReading(aid({{0, 30}, {60, 0}, {40, 10}, {20, 20}})));
    // and four on a bent one are not, where it bends most
    const auto bent = nextAidReading(aid({{0, 30}, {60, 0}, {10, 10}, {2, 20}}));
    QVERIFY(bent && bent->reason == AidReason::Gap);
    VERIFY_NEAR(bent->aboveChest.si(), 0.05, 1e-12);
    // eight, or one that is odd, and no more is asked for
    QVERIFY(!nextAidReading(aid({{60, 0}, {10, 10}, {9, 11}, {8, 12}, {7, 13}, {6, 14}, {5, 15}, {0, 30}})));
    QVERIFY(!nextAidReading(aid({{60, 0}, {10, 10}, {30, 20}, {0, 30}})));
}

QTEST_APPLESS_MAIN(AidKitTest)
#include "test_aidkit.moc"
