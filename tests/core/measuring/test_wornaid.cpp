// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/origin.h"
#include "core/work/weighup.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;

namespace {

constexpr double g = 9.80665;

const std::vector<KitItem> kit = {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Aid", samples::aid(), false), samples::item(3, "Other aid", samples::aid(), true),
                                  samples::item(4, "Empty aid", AidMeasurement{}, false)};
/// Down to the chest at 40 cm, up to 75.
const BarMarks bench = samples::marks(0.40, 0.75);

WeighedUp worn(std::vector<HungRecord> hung, const BarMarks& marks = bench, std::vector<CautionCode> lookedOver = {})
{
    return weighUp(samples::setup(100, std::move(hung)), kit, marks, lookedOver);
}

HungRecord aid(std::uint64_t number = 2, std::optional<double> chest = std::nullopt, HungOn on = HungOn::BothSides)
{
    AidPlacing placing;
    if (chest)
        placing.chest = metres(*chest);
    return samples::hung(number, placing, on);
}

}

/// A bench aid in a set-up: worn once in the middle, counted from the chest, known no further than it was read.
class WornAidTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void helpsMostAtTheChest();
    void bothSidesAlikeHoweverItIsSaid();
    void chestElsewhere();
    void belowTheLowestReadingIsUnknown();
    void actsOnce();
    void whatCannotBeIsNamed();
    void readyOnceLookedOver();
    void itsPartOfANumber();
    void marksStillMissing();
};

void WornAidTest::helpsMostAtTheChest()
{
    const auto answer = worn({aid()});
    QVERIFY(answer.curve && answer.curve->ready);
    // by hand: 100 kg less 62.5 at the chest; 35 cm above it is slack
    VERIFY_NEAR_SHARE(answer.curve->bottom->value.si(), 37.5 * g, 1e-12);
    VERIFY_NEAR_SHARE(answer.curve->top->value.si(), 100 * g, 1e-12);
    const auto& samples = answer.curve->samples;
    VERIFY_NEAR(samples.front().help.si(), -62.5 * g, 1e-9);
    VERIFY_NEAR(samples.back().help.si(), 0, 1e-12);
    VERIFY_NEAR(answer.curve->movingBottom.si(), 100, 1e-12);
    QVERIFY(answer.curve->bottom->u > answer.curve->top->u);
}

void WornAidTest::bothSidesAlikeHoweverItIsSaid()
{
    const auto both = worn({aid()}), left = worn({aid(2, std::nullopt, HungOn::LeftOnly)});
    QCOMPARE(both.curve->bottom->value, left.curve->bottom->value);
    QCOMPARE(both.curve->bottom->u, left.curve->bottom->u);
    for (const auto* answer : {&both, &left})
        QVERIFY(std::none_of(answer->curve->warnings.begin(), answer->curve->warnings.end(), [](const SetupWarning& w) { return w.code == SetupWarningCode::SidesUneven; }));
}

void WornAidTest::chestElsewhere()
{
    // stopped 5 cm over the chest: 41 kg of help there
    const auto high = worn({aid(2, 0.35)});
    VERIFY_NEAR_SHARE(high.curve->bottom->value.si(), (100 - 41) * g, 1e-12);
}

void WornAidTest::belowTheLowestReadingIsUnknown()
{
    const auto low = worn({aid(2, 0.45)});
    QVERIFY(low.readiness == Readiness::PullUnknown);
    QVERIFY(!low.curve->bottom && low.curve->top);
    const auto& warnings = low.curve->warnings;
    const auto end = std::find_if(warnings.begin(), warnings.end(), [](const SetupWarning& w) { return w.code == SetupWarningCode::BeyondMeasured; });
    QVERIFY(end != warnings.end() && end->side == Side::Both);
    VERIFY_NEAR(end->height->si(), 0.45, 1e-12);
}

void WornAidTest::actsOnce()
{
    QCOMPARE(*worn({aid(), aid()}).error, (Error{Refusal::TooMany, "Aid"}));
    // two of a kind are two aids: each is worn by itself, and needs a measurement of its own
    QCOMPARE(*worn({aid(3), aid(3)}).error, (Error{Refusal::TooMany, "Other aid"}));
    const auto two = worn({aid(), aid(3)});
    QVERIFY(!two.error);
    VERIFY_NEAR_SHARE(two.curve->bottom->value.si(), -25 * g, 1e-12);
}

void WornAidTest::whatCannotBeIsNamed()
{
    QCOMPARE(*worn({aid(4)}).error, (Error{Refusal::TooFewPoints, "Empty aid: heights"}));
    QCOMPARE(*worn({samples::hung(2, samples::chainOn(0.3))}).error, (Error{Refusal::OutOfRange, "Aid"}));
    QCOMPARE(*worn({samples::hung(1, AidPlacing{})}).error, (Error{Refusal::OutOfRange, "Chain"}));
}

void WornAidTest::readyOnceLookedOver()
{
    QVERIFY(worn({aid()}).readiness == Readiness::LookOver);
    QVERIFY(worn({aid()}, bench, {CautionCode::BenchAid}).readiness == Readiness::Ready);
    QVERIFY(worn({aid()}, bench, {CautionCode::BandsAbove}).readiness == Readiness::LookOver);
}

void WornAidTest::itsPartOfANumber()
{
    const auto record = samples::setup(100, {aid()});
    const auto origin = originOf(weighUp(record, kit, bench, {}), record, kit, WhichPull::Bottom);
    QVERIFY(origin.has_value());
    const auto line = std::find_if(origin->lines.begin(), origin->lines.end(), [](const OriginLine& l) { return l.by == KnownBy::Rested; });
    QVERIFY(line != origin->lines.end());
    QCOMPARE(line->item, samples::numbered(2));
    VERIFY_NEAR_SHARE(line->pull.si(), -62.5 * g, 1e-12);
    // SciPy: 48.1153 N at the chest, see measured_things.csv
    VERIFY_NEAR_SHARE(line->u.si(), 48.11532307081529, 1e-11);
}

void WornAidTest::marksStillMissing()
{
    const auto answer = worn({aid()}, BarMarks{});
    QVERIFY(answer.readiness == Readiness::MarksMissing);
    // and what is wrong with it is said all the same
    QVERIFY(worn({aid(4)}, BarMarks{}).readiness == Readiness::Refused);
}

QTEST_APPLESS_MAIN(WornAidTest)
#include "test_wornaid.moc"
