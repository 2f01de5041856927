// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/due.h"

#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using namespace std::chrono_literals;
using std::chrono::days;
using std::chrono::sys_days;

namespace {

constexpr sys_days march1 = 2026y / 3 / 1;

Athlete bornIn(int year, std::initializer_list<std::pair<sys_days, double>> heights = {})
{
    Athlete athlete;
    athlete.birthYear = std::chrono::year(year);
    for (const auto& [day, height] : heights)
        athlete.sizes.push_back({{}, day, std::nullopt, metres(height)});
    return athlete;
}

}

/// When a measurement has had its time, and when bar marks have.
class DueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bandsEachTermChainsEachYear();
    void soonBeforeDue();
    void measuredTomorrowHasNoAge();
    void grownByTwiceTheMark();
    void shrinkingCountsToo();
    void nobodyMeasuredTheYoung();
    void adultsAreLeftAlone();
};

void DueTest::bandsEachTermChainsEachYear()
{
    QCOMPARE(goodFor(samples::band()).count(), 120);
    QCOMPARE(goodFor(samples::weighed()).count(), 365);
    QVERIFY((dueOn({{}, {}, march1, samples::band()}, march1).next == march1 + days{120}));
}

void DueTest::soonBeforeDue()
{
    const MeasurementRecord last{{}, {}, march1, samples::band()};
    QCOMPARE(dueOn(last, march1 + days{105}).state, DueState::Fresh);
    QCOMPARE(dueOn(last, march1 + days{106}).state, DueState::Soon);
    QCOMPARE(dueOn(last, march1 + days{119}).state, DueState::Soon);
    QCOMPARE(dueOn(last, march1 + days{120}).state, DueState::Due);
    QCOMPARE(dueOn(last, march1 + days{120}).age.count(), 120);
}

void DueTest::measuredTomorrowHasNoAge()
{
    const Due due = dueOn({{}, {}, march1, samples::weighed()}, march1 - days{3});
    QCOMPARE(due.age.count(), 0);
    QCOMPARE(due.state, DueState::Fresh);
}

void DueTest::grownByTwiceTheMark()
{
    const auto grown = [](double to) { return bornIn(2009, {{march1 - days{5}, 1.70}, {march1 + days{60}, to}}); };
    QCOMPARE(remeasureMarks(grown(1.72), march1, march1 + days{61}), Remeasure::Grown);
    QCOMPARE(remeasureMarks(grown(1.719), march1, march1 + days{61}), Remeasure::No);
    // what is measured later is not known yet
    QCOMPARE(remeasureMarks(grown(1.75), march1, march1 + days{59}), Remeasure::No);
}

void DueTest::shrinkingCountsToo()
{
    const Athlete putRight = bornIn(1980, {{march1 - days{5}, 1.80}, {march1 + days{9}, 1.76}});
    QCOMPARE(remeasureMarks(putRight, march1, march1 + days{10}), Remeasure::Grown);
}

void DueTest::nobodyMeasuredTheYoung()
{
    // born 2009: of age in 2027, grown in 2029
    QCOMPARE(remeasureMarks(bornIn(2009), march1, march1 + days{181}), Remeasure::No);
    QCOMPARE(remeasureMarks(bornIn(2009), march1, march1 + days{182}), Remeasure::MayHave);
    const Athlete checked = bornIn(2009, {{march1 - days{5}, 1.70}, {march1 + days{100}, 1.71}});
    QCOMPARE(remeasureMarks(checked, march1, march1 + days{200}), Remeasure::No);
    QCOMPARE(remeasureMarks(checked, march1, march1 + days{282}), Remeasure::MayHave);
    // a height of today says nothing about one that was never taken
    QCOMPARE(remeasureMarks(bornIn(2009, {{march1 + days{190}, 1.7}}), march1, march1 + days{200}), Remeasure::MayHave);
}

void DueTest::adultsAreLeftAlone()
{
    QCOMPARE(remeasureMarks(bornIn(2005), march1, march1 + days{400}), Remeasure::No);
    QCOMPARE(remeasureMarks(bornIn(2006), march1, march1 + days{200}), Remeasure::MayHave);
    Athlete unknown;
    QCOMPARE(remeasureMarks(unknown, march1, march1 + days{400}), Remeasure::No);
}

QTEST_APPLESS_MAIN(DueTest)
#include "test_due.moc"
