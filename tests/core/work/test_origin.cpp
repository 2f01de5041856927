// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/origin.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>

#include <numeric>
#endif

using namespace steelyard;

namespace {

struct Case {
    SetupRecord record;
    std::vector<KitItem> kit;
    BarMarks marks;

    [[nodiscard]] std::optional<Origin> origin(WhichPull which) const
    {
        return originOf(weighUp(record, kit, marks, {}, 0), record, kit, which);
    }
};

/// Chains and bands on both sides, unweighed plates, a sticking zone.
Case chainsAndBands()
{
    Case c;
    c.kit = {samples::item(1, "left at home", samples::weighed()), samples::item(2, "chains", samples::gauged()), samples::item(3, "bands", samples::band())};
    c.record = samples::setup(60, {samples::hung(2, samples::chainOn(0.3)), samples::hung(3, samples::bandAt(0.05))});
    c.record.bar.trust = PlateTrust::Unweighed;
    c.marks = samples::marks(1.2, 1.7);
    c.marks.zoneFrom = metres(1.3);
    c.marks.zoneTo = metres(1.45);
    return c;
}

}

/// Where a set-up's number comes from.
class OriginTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void linesAddUp_data();
    void linesAddUp();
    void linesNameWhatTheyAre();
    void oneBandIsNoTwin();
    void weighedIronSaysSo();
    void nothingWithoutANumber();
};

void OriginTest::linesAddUp_data()
{
    QTest::addColumn<WhichPull>("which");
    QTest::newRow("bottom") << WhichPull::Bottom;
    QTest::newRow("zone") << WhichPull::Zone;
    QTest::newRow("top") << WhichPull::Top;
    QTest::newRow("mean") << WhichPull::Mean;
}

void OriginTest::linesAddUp()
{
    QFETCH(const WhichPull, which);
    const auto origin = chainsAndBands().origin(which);
    QVERIFY(origin.has_value());
    const auto& lines = origin->lines;
    const double pull = std::accumulate(lines.begin(), lines.end(), 0.0, [](double sum, const OriginLine& l) { return sum + l.pull.si(); });
    const double squares = std::accumulate(lines.begin(), lines.end(), 0.0, [](double sum, const OriginLine& l) { return sum + l.u.si() * l.u.si(); });
    const double shares = std::accumulate(lines.begin(), lines.end(), 0.0, [](double sum, const OriginLine& l) { return sum + l.share; });
    VERIFY_NEAR_SHARE(pull, origin->reading.value.si(), 1e-12);
    VERIFY_NEAR_SHARE(std::sqrt(squares), origin->reading.u.si(), 1e-9);
    VERIFY_NEAR(shares, 1, 1e-9);
}

void OriginTest::linesNameWhatTheyAre()
{
    const auto origin = chainsAndBands().origin(WhichPull::Top);
    QVERIFY(origin.has_value());
    const auto& lines = origin->lines;
    QCOMPARE(lines.size(), std::size_t{4});
    QCOMPARE(lines[0].by, KnownBy::Unweighed);
    QVERIFY(lines[0].item.isNone());
    QCOMPARE(lines[1].by, KnownBy::Gauged);
    QVERIFY(lines[1].item == samples::numbered(2));
    QCOMPARE(lines[2].by, KnownBy::HungTwin);
    QVERIFY(lines[2].item == samples::numbered(3));
    QCOMPARE(lines[3].by, KnownBy::Taped);
    QCOMPARE(lines[3].pull.si(), 0.0);
    QVERIFY(lines[3].u.si() > 0);
    QCOMPARE(origin->from.si(), 1.7);
    QCOMPARE(origin->to.si(), 1.7);
}

void OriginTest::oneBandIsNoTwin()
{
    Case c = chainsAndBands();
    c.record.hung[1].on = HungOn::LeftOnly;
    c.record.bar.trust = PlateTrust::AsMarked;
    const auto origin = c.origin(WhichPull::Bottom);
    QVERIFY(origin.has_value());
    QCOMPARE(origin->lines[2].by, KnownBy::Hung);
    QCOMPARE(origin->lines[0].by, KnownBy::Marked);
    QCOMPARE(origin->lines[0].u.si(), 0.0);
}

void OriginTest::weighedIronSaysSo()
{
    Case c = chainsAndBands();
    c.record.bar.barWeighed = IronWeighed{samples::numbered(8), kilograms(0.04)};
    QCOMPARE(c.origin(WhichPull::Bottom)->lines[0].by, KnownBy::IronPartWeighed);
    c.record.bar.trust = PlateTrust::AsMarked;
    const OriginLine iron = c.origin(WhichPull::Bottom)->lines[0];
    QCOMPARE(iron.by, KnownBy::IronWeighed);
    VERIFY_NEAR(iron.u.si(), weight(kilograms(0.04)).si(), 1e-9);
}

void OriginTest::nothingWithoutANumber()
{
    Case c = chainsAndBands();
    QVERIFY(!c.origin(WhichPull::Rack));
    c.marks.zoneFrom.reset();
    c.marks.zoneTo.reset();
    QVERIFY(!c.origin(WhichPull::Zone));
    // the band goes past what was measured
    c.marks.top = metres(2.3);
    QVERIFY(!c.origin(WhichPull::Top));
    QVERIFY(c.origin(WhichPull::Bottom).has_value());
    c.marks.bottom.reset();
    QVERIFY(!c.origin(WhichPull::Bottom));
}

QTEST_APPLESS_MAIN(OriginTest)
#include "test_origin.moc"
