// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/typing.h"

#include "core/work/barchanges.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/measuredkit.h"
#include "core/work/records/codec.h"
#include "core/work/waiting/deskdraft.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <rapidcheck.h>

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

namespace {

constexpr VaultSettings metric{}, imperial{MassUnit::Pound, LengthUnit::Inch};

BarMarks inchMarks()
{
    BarMarks marks;
    marks.bottom = lengthTyped("30.25", Unit::Inch);
    marks.top = lengthTyped("50", Unit::Inch);
    marks.rack = lengthTyped("121.50", Unit::Centimetre);
    return marks;
}

HungRecord onLead(const Entered<Length>& lead)
{
    ChainPlacing placing;
    placing.lead = lead;
    return {samples::numbered(1), HungOn::BothSides, placing};
}

BarRecord poundBar()
{
    BarRecord bar;
    bar.stock.clear();
    bar = withBar(bar, *massTyped("45", Unit::Pound));
    bar.wanted = bar.bar;
    for (const char* mark : {"45", "45", "25", "10", "5", "2.5"})
        bar = withPairMore(bar, *massTyped(mark, Unit::Pound));
    return bar;
}

}

/// Numbers are kept as they were typed, whatever is shown in.
class TypingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void exactUnits_data();
    void exactUnits();
    void noNumberOrOtherDimension();
    void theOtherWay();
    void writtenAsTyped();
    void switchingUnitsLeavesEveryByte();
    void typedStaysThroughADraft();
    void changedQuantityIsNotTyped();
    void howTypedIsNoDifference();
    void plateKeepsItsMark();
    void limitsOfPoundsAndInches_data();
    void limitsOfPoundsAndInches();
    void limitsLetNothingIn();
    void loadsByTheirFigure_data();
    void loadsByTheirFigure();
    void everyPoundLoadIsMeant();
};

// NIST Special Publication 811 (2008), appendix B.8: pound (avoirdupois) 4.535 923 7 E-01 kg and inch 2.54 E-02 m, both exact
void TypingTest::exactUnits_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<int>("unit");
    QTest::addColumn<double>("si");
    QTest::newRow("a pound, to the milligram") << "1" << int(Unit::Pound) << 0.453592;
    QTest::newRow("a hundred pounds") << "100" << int(Unit::Pound) << 45.359237;
    QTest::newRow("225 lb, to the milligram") << "225" << int(Unit::Pound) << 102.058283;
    QTest::newRow("a plate of 2.5 lb") << "2.5" << int(Unit::Pound) << 1.133981;
    QTest::newRow("an inch") << "1" << int(Unit::Inch) << 0.0254;
    QTest::newRow("an eighth") << "30.125" << int(Unit::Inch) << 0.765175;
    QTest::newRow("kilograms") << "82.5" << int(Unit::Kilogram) << 82.5;
    QTest::newRow("centimetres") << "127" << int(Unit::Centimetre) << 1.27;
    QTest::newRow("millimetres") << "12.7" << int(Unit::Millimetre) << 0.0127;
}

void TypingTest::exactUnits()
{
    QFETCH(QString, typed);
    QFETCH(int, unit);
    QFETCH(double, si);
    const auto in = static_cast<Unit>(unit);
    const bool isMass = in == Unit::Pound || in == Unit::Kilogram;
    const auto mass = massTyped(typed.toStdString(), in);
    const auto length = lengthTyped(typed.toStdString(), in);
    QCOMPARE(mass.has_value(), isMass);
    QCOMPARE(length.has_value(), !isMass);
    QCOMPARE(isMass ? mass->si() : length->si(), si);
    const auto& kept = isMass ? mass->typed() : length->typed();
    QVERIFY((kept == AsTyped{typed.toStdString(), in}));
    const double back = isMass ? ratioIn(*mass, in) : ratioIn(*length, in);
    QVERIFY2(std::abs(back - typed.toDouble()) < 2e-6, qPrintable(QString::number(back, 'g', 17)));
}

void TypingTest::noNumberOrOtherDimension()
{
    for (const char* text : {"", "12x", "1.2.3", "1 000", "."})
        QVERIFY(!massTyped(text, Unit::Pound));
    QVERIFY(!massTyped("12", Unit::Inch) && !lengthTyped("12", Unit::Pound));
    QVERIFY(std::isnan(ratioIn(kilograms(1), Unit::Inch)) && std::isnan(ratioIn(metres(1), Unit::Kilogram)));
}

void TypingTest::theOtherWay()
{
    const auto behind = opposite(*lengthTyped("6.5", Unit::Inch));
    QVERIFY((behind.si() == -0.1651 && behind.typed() == AsTyped{"-6.5", Unit::Inch}));
    QVERIFY((opposite(behind).typed() == AsTyped{"6.5", Unit::Inch}));
    const auto under = opposite(*massTyped("0.2", Unit::Kilogram));
    QVERIFY((under.si() == -0.2 && under.typed() == AsTyped{"-0.2", Unit::Kilogram}));
    QVERIFY(!opposite(Entered<Length>(metres(1))).typed() && !opposite(*lengthTyped("0", Unit::Inch)).typed());
}

void TypingTest::writtenAsTyped()
{
    const auto read = marksIn(*contentOf(inchMarks(), metric));
    QVERIFY((read->bottom->typed() == AsTyped{"30.25", Unit::Inch}));
    QVERIFY((read->rack->typed() == AsTyped{"121.50", Unit::Centimetre}));
    QCOMPARE(read->bottom->si(), 0.76835);
    QVERIFY(contentOf(*read, imperial) == contentOf(inchMarks(), metric));
}

void TypingTest::switchingUnitsLeavesEveryByte()
{
    keeping::Device device;
    keepSettings(device.keeping, imperial, device.told());
    Athlete athlete;
    athlete.name = "Ana M.";
    athlete.marks[LiftId{1}] = inchMarks();
    keepAthlete(device.keeping, athlete, device.told());
    const RecordId ana = device.last.id;
    SavedSetup saved{{}, ana, LiftId{1}, {poundBar(), {}}, {}};
    saved.setup.bar.wanted = *massTyped("225", Unit::Pound);
    keepSetup(device.keeping, saved, device.told());
    const RecordId setup = device.last.id;
    const auto content = [&] {
        return std::pair(device.book.said(athletePlace(ana), field::athleteMarksNumber, partOf(LiftId{1}))->body.content,
                         device.book.said(setupPlace(setup, ana), field::setupLoadNumber)->body.content);
    };
    const auto before = content();
    for (const VaultSettings& units : {metric, imperial, metric}) {
        keepSettings(device.keeping, units, device.told());
        // what lies on the desk is kept again, as it came from the book
        const std::size_t entries = device.keeper.entries.size();
        keepAthlete(device.keeping, *device.book.athlete(ana), device.told());
        keepSetup(device.keeping, *device.book.setup(setup), device.told());
        QCOMPARE(device.keeper.entries.size(), entries);
        QVERIFY(content() == before);
        QVERIFY((device.book.setup(setup)->setup.bar.wanted.typed() == AsTyped{"225", Unit::Pound}));
    }
    // another mark is typed in centimetres, and the others stay as they were typed
    Athlete next = *device.book.athlete(ana);
    next.marks[LiftId{1}].top = lengthTyped("128", Unit::Centimetre);
    keepAthlete(device.keeping, next, device.told());
    const BarMarks& marks = device.book.athlete(ana)->marks.at(LiftId{1});
    QVERIFY((marks.bottom->typed() == AsTyped{"30.25", Unit::Inch} && marks.top->typed() == AsTyped{"128", Unit::Centimetre}));
    QVERIFY(marks.bottom == inchMarks().bottom);
}

void TypingTest::typedStaysThroughADraft()
{
    const DeskDraft desk{inchMarks(), {poundBar(), {onLead(*lengthTyped("18.0", Unit::Inch))}}};
    const auto again = deskDraftIn(*encodeDraft(desk));
    QVERIFY(again == desk);
    QVERIFY((again->marks.top->typed() == AsTyped{"50", Unit::Inch}));
    QVERIFY((std::get<ChainPlacing>(again->setup.hung[0].placing).lead.typed() == AsTyped{"18.0", Unit::Inch}));
}

void TypingTest::changedQuantityIsNotTyped()
{
    // digits that say something else than the quantity are not written
    BarMarks marks = inchMarks();
    marks.top = Entered<Length>(metres(1.28), AsTyped{"50", Unit::Inch});
    QVERIFY((marksIn(*contentOf(marks, metric))->top->typed() == AsTyped{"128", Unit::Centimetre}));
    marks.top = metres(1.28);
    QVERIFY(!marks.top->typed());
}

void TypingTest::howTypedIsNoDifference()
{
    BarMarks other = inchMarks();
    other.top = lengthTyped("127", Unit::Centimetre);
    QVERIFY(other == inchMarks() && keptAlike(other, inchMarks()));
    SetupRecord pounds{poundBar(), {onLead(*lengthTyped("10", Unit::Inch))}}, kilos = pounds;
    std::get<ChainPlacing>(kilos.hung[0].placing).lead = *lengthTyped("25.4", Unit::Centimetre);
    QVERIFY(keptAlike(pounds, kilos));
    // what was looked over hangs as it hung
    QVERIFY(hungMark(pounds) == hungMark(kilos));
    QVERIFY(contentOf(pounds, metric) != contentOf(kilos, metric));
}

void TypingTest::plateKeepsItsMark()
{
    const SetupRecord load{poundBar(), {}};
    const auto read = loadIn(*contentOf(load, metric));
    QVERIFY(*read == load);
    QVERIFY((read->bar.stock.front().mark == AsTyped{"45", Unit::Pound}));
    QCOMPARE(read->bar.stock.front().count, 4);
    QVERIFY((read->bar.stock.back().mark == AsTyped{"2.5", Unit::Pound}));
    for (const PlatesHere& plates : usualStock())
        QVERIFY(massTyped(plates.mark->decimal.text(), plates.mark->unit) == Entered<Mass>(plates.type.mass));
}

void TypingTest::limitsOfPoundsAndInches_data()
{
    QTest::addColumn<int>("kind");
    QTest::addColumn<double>("least");
    QTest::addColumn<double>("most");
    QTest::addColumn<int>("digits");
    QTest::addColumn<int>("decimals");
    QTest::newRow("mass") << int(NumberKind::InMass) << 2.21 << 1322.77 << 4 << 2;
    QTest::newRow("length") << int(NumberKind::InLength) << 0.394 << 236.220 << 3 << 3;
    QTest::newRow("wire") << int(NumberKind::InWire) << 0.0394 << 23.6220 << 2 << 4;
    QTest::newRow("without a unit") << int(NumberKind::Unitless) << 1.0 << 600.0 << 3 << 2;
}

void TypingTest::limitsOfPoundsAndInches()
{
    QFETCH(int, kind);
    QFETCH(double, least);
    QFETCH(double, most);
    QFETCH(int, digits);
    QFETCH(int, decimals);
    const EntryLimits given{3, 2, 1, 600};
    const EntryLimits limits = limitsIn(given, static_cast<NumberKind>(kind), imperial);
    QCOMPARE(limits.leastRatio, least);
    QCOMPARE(limits.mostRatio, most);
    QCOMPARE(limits.digitCount, digits);
    QCOMPARE(limits.decimalCount, decimals);
    const EntryLimits same = limitsIn(given, static_cast<NumberKind>(kind), metric);
    QVERIFY(same.leastRatio == 1 && same.mostRatio == 600 && same.digitCount == 3 && same.decimalCount == 2);
}

void TypingTest::limitsLetNothingIn()
{
    const bool ok = rc::check("ends in pounds and inches lie within those given, by less than a step", [] {
        const double least = *rc::gen::inRange(0, 500) / 10.0, most = least + *rc::gen::inRange(10, 10000) / 10.0;
        const auto kind = *rc::gen::element(NumberKind::InMass, NumberKind::InLength, NumberKind::InWire);
        const EntryLimits in = limitsIn({4, *rc::gen::inRange(1, 4), least, most}, kind, imperial);
        const double unit = kind == NumberKind::InMass ? 0.45359237 : kind == NumberKind::InLength ? 2.54 : 25.4, step = std::pow(10.0, -in.decimalCount) * unit;
        RC_ASSERT(in.leastRatio * unit > least - 1e-7 && in.leastRatio * unit < least + step + 1e-7);
        RC_ASSERT(in.mostRatio * unit < most + 1e-7 && in.mostRatio * unit > most - step - 1e-7);
        RC_ASSERT(in.mostRatio < std::pow(10.0, in.digitCount));
    });
    QVERIFY(ok);
}

void TypingTest::loadsByTheirFigure_data()
{
    QTest::addColumn<bool>("poundPlates");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<bool>("inPounds");
    QTest::addColumn<double>("meant"); // kg; below 0 where no plates make it
    QTest::newRow("pounds on pound plates") << true << "135" << true << 135 * 0.45359237;
    QTest::newRow("with idle decimals") << true << "135.0" << true << 135 * 0.45359237;
    QTest::newRow("between pound loads") << true << "136" << true << -1.0;
    QTest::newRow("hardly beside a pound load") << true << "135.01" << true << -1.0;
    QTest::newRow("a pound load by its kilograms") << true << "61.2" << false << 135 * 0.45359237;
    QTest::newRow("with two decimals") << true << "61.23" << false << 135 * 0.45359237;
    QTest::newRow("with another second one") << true << "61.24" << false << -1.0;
    QTest::newRow("whole kilograms are not enough") << true << "61" << false << -1.0;
    QTest::newRow("kilograms on their own plates") << false << "60" << false << 60.0;
    QTest::newRow("between kilogram loads") << false << "61" << false << -1.0;
    QTest::newRow("hardly beside a kilogram load") << false << "60.01" << false << -1.0;
    QTest::newRow("a kilogram load by its pounds") << false << "132.3" << true << 60.0;
    QTest::newRow("with two") << false << "132.28" << true << 60.0;
    QTest::newRow("not by another") << false << "132.2" << true << -1.0;
}

void TypingTest::loadsByTheirFigure()
{
    QFETCH(bool, poundPlates);
    QFETCH(QString, typed);
    QFETCH(bool, inPounds);
    QFETCH(double, meant);
    const auto loads = loadsOf(poundPlates ? poundBar() : samples::bar(20));
    const PlateLoad* load = loadMeant(*loads, *massTyped(typed.toStdString(), inPounds ? Unit::Pound : Unit::Kilogram));
    QCOMPARE(load != nullptr, meant > 0);
    if (load)
        QVERIFY2(std::abs(load->total.si() - meant) < 1e-5, qPrintable(QString::number(load->total.si(), 'g', 12)));
}

void TypingTest::everyPoundLoadIsMeant()
{
    // each plate is kept to the milligram, so a sum of them is off by a few
    const auto loads = loadsOf(poundBar());
    QVERIFY(loads->all().size() > 20);
    for (const PlateLoad& load : loads->all()) {
        const double shown = ratioIn(load.total, Unit::Pound);
        QVERIFY(isShort(shown) && std::fmod(std::round(shown), 5.0) == 0);
        QCOMPARE(loadMeant(*loads, *massTyped(std::to_string(std::lround(shown)), Unit::Pound)), &load);
    }
}

QTEST_APPLESS_MAIN(TypingTest)
#include "test_typing.moc"
