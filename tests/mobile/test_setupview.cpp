// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/pages/setuptexts.h"
#include "mobile/pages/setupview.h"

#include "core/measure/rounding.h"
#include "core/resistance/pullsum.h"
#include "mobile/text/say.h"
#include "tests/core/near.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QSignalSpy>
#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;

namespace {

BarMarks tall()
{
    BarMarks m = samples::marks(0.94, 1.60);
    m.zoneFrom = metres(1.10);
    m.zoneTo = metres(1.28);
    m.rack = metres(1.52);
    return m;
}

std::vector<KitItem> kit()
{
    return {samples::item(1, "Chain", samples::weighed()), samples::item(2, "Band", samples::band())};
}

/// Chain whose last link comes off inside the path, and a band from the floor.
SetupRecord chainAndBand()
{
    SetupRecord record = samples::setup(100, {samples::hung(1, samples::chainOn(0.8, ChainHangingWay::Doubled)), samples::hung(2, samples::bandAt(0))});
    record.bar.trust = PlateTrust::Unweighed;
    return record;
}

double numberIn(const QVariant& map, const char* key) { return map.toMap().value(QLatin1String(key)).toDouble(); }
QString textIn(const QVariant& map, const char* key) { return map.toMap().value(QLatin1String(key)).toString(); }

}

/// What the set-up page shows is what the engine says.
class SetupViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void emptyStart();
    void titleSaysTheMarksWithTheirGiveOrTake();
    void titleOfAnUnknownStretch();
    void titleWithoutAZone();
    void zonesRangeOnlyWhereThereIsOne();
    void floorLiftWithoutPlates();
    void everyState();
    void marksAreTheEngines();
    void unknownMarkHasNoPull();
    void beamIsWhatThePlatesMake();
    void beamStepsAsTheKitDoes();
    void beamOfALongStockKeepsTheLoadInSight();
    void platesFromTheInside();
    void elevationToScale();
    void hangingRows();
    void stopsComeFirst();
    void cautionsAreLookedOver();
    void readingAtAnyHeight();
    void pictureFollowsTheCurve();
    void pictureBreaksOffWhereNothingIsKnown();
    void followsTheDesk();

private:
    void show(const BarMarks& marks, const SetupRecord& record) { m_service->desk().replaceAll(marks, kit(), record); }
    [[nodiscard]] const WeighedUp& weighed() const { return m_service->desk().answer(); }

    DeskService* m_service = nullptr;
    SetupView* m_view = nullptr;
};

void SetupViewTest::init()
{
    m_service = new DeskService(this);
    m_view = new SetupView(this);
    m_view->setDesk(m_service);
}

void SetupViewTest::cleanup()
{
    delete m_view;
    delete m_service;
}

void SetupViewTest::emptyStart()
{
    const SetupAnswer answer = m_view->answer();
    QCOMPARE(answer.title, QStringLiteral("Her bar marks come first"));
    QCOMPARE(answer.state, QStringLiteral("NOT READY"));
    QCOMPARE(answer.reason, QStringLiteral("Still to enter: bottom."));
    QVERIFY(!answer.known && !answer.ready && !answer.stop);
    QCOMPARE(m_view->beam().valueText, QStringLiteral("20 kg"));
    QCOMPARE(m_view->beam().eachSide, QStringLiteral("bare bar"));
    QVERIFY(m_view->marks().isEmpty() && m_view->elevation().isEmpty() && m_view->picture().total.isEmpty());
    QCOMPARE(m_view->hanging()->rowCount() + m_view->notices()->rowCount() + m_view->cautions()->rowCount(), 0);
    QVERIFY(m_view->readingAt(1.0).isEmpty());
}

void SetupViewTest::titleSaysTheMarksWithTheirGiveOrTake()
{
    show(tall(), chainAndBand());
    const auto said = [](const std::optional<Reading>& r) { return say::pull(*r).sentence(); };
    const PullCurve& curve = *weighed().curve;
    const SetupAnswer answer = m_view->answer();
    QCOMPARE(answer.title, QStringLiteral("%1 kg at the bottom, %2 in the sticking zone, %3 at the top").arg(said(curve.bottom), said(curve.zone), said(curve.top)));
    QCOMPARE(answer.title.count(QChar(0x00b1)), 3);
    QVERIFY2(answer.means.contains(said(curve.mean)), qPrintable(answer.means));
    QVERIFY2(answer.means.endsWith(say::pull(*curve.twoPointMean, PullSum(*weighed().setup).endsGiveOrTake(weighed().path->bottom, weighed().path->top)).withUnit()), qPrintable(answer.means));
    QCOMPARE(answer.means.count(QChar(0x00b1)), 2);
    QVERIFY2(answer.more.contains(QStringLiteral("off the rack ") + said(curve.rack)), qPrintable(answer.more));
    const Rounded work = roundTogether(curve.work->si(), PullSum(*weighed().setup).workGiveOrTake(weighed().path->bottom, weighed().path->top).si(), 0);
    QVERIFY2(answer.more.contains(QStringLiteral("work %1 ± %2 J a rep").arg(say::fixed(work.value, work.decimals), say::fixed(work.give, work.decimals))), qPrintable(answer.more));
    QVERIFY(answer.known);
}

void SetupViewTest::titleOfAnUnknownStretch()
{
    BandPlacing doubled = samples::bandAt(0);
    doubled.doubled = true;
    show(samples::marks(0.80, 1.40), samples::setup(100, {samples::hung(2, doubled)}));
    const QString bottom = say::pull(*weighed().curve->bottom).sentence();
    QCOMPARE(m_view->answer().title, bottom + QStringLiteral(" kg at the bottom, not known at the top"));
    QCOMPARE(m_view->answer().reason, QStringLiteral("Past what was measured."));

    // from above the bottom is the far end
    show(tall(), samples::setup(100, {samples::hung(2, samples::bandAt(3.2, true))}));
    const QString top = say::pull(*weighed().curve->top).sentence();
    QCOMPARE(m_view->answer().title, QStringLiteral("Not known at the bottom, not known in the sticking zone, %1 kg at the top").arg(top));

    show(samples::marks(1.30, 1.60), samples::setup(100, {samples::hung(2, doubled)}));
    QCOMPARE(m_view->answer().title, QStringLiteral("Not known: measure further"));
}

void SetupViewTest::titleWithoutAZone()
{
    show(samples::marks(0.8, 1.4), samples::setup(102.5));
    QCOMPARE(m_view->answer().title, QStringLiteral("102.5 kg at the bottom, 102.5 at the top"));
    QCOMPARE(m_view->marks().size(), 2);
}

void SetupViewTest::zonesRangeOnlyWhereThereIsOne()
{
    show(tall(), samples::setup(102.5));
    QVERIFY2(!m_view->answer().more.contains(QStringLiteral("sticking zone")), qPrintable(m_view->answer().more));
    show(tall(), chainAndBand());
    QVERIFY2(m_view->answer().more.startsWith(QStringLiteral("sticking zone %1 to %2").arg(say::pull(*weighed().curve->zoneLeast).sentence(),
                                                                                          say::pull(*weighed().curve->zoneGreatest).withUnit())),
             qPrintable(m_view->answer().more));
    QVERIFY2(m_view->answer().more.section(QStringLiteral(" · "), 0, 0).count(QStringLiteral("±")) == 2, qPrintable(m_view->answer().more));
}

void SetupViewTest::floorLiftWithoutPlates()
{
    BarMarks marks;
    marks.start = LiftStart::Floor;
    marks.top = metres(0.8);
    show(marks, samples::setup(20));
    QCOMPARE(m_view->answer().title, QStringLiteral("Not known yet"));
    QCOMPARE(m_view->answer().reason, QStringLiteral("Still to enter: plates."));
}

void SetupViewTest::everyState()
{
    WeighedUp up;
    QSet<QString> said;
    for (int i = 0; i <= static_cast<int>(Readiness::Ready); ++i) {
        up.readiness = static_cast<Readiness>(i);
        up.error.reset();
        if (up.readiness == Readiness::MarksMissing || up.readiness == Readiness::Refused)
            up.error = Error{Refusal::NotThere, i == 0 ? "bottom" : "wire"};
        const SetupAnswer answer = setuptexts::answer(up);
        QCOMPARE(answer.ready, up.readiness == Readiness::Ready);
        QCOMPARE(answer.stop, up.readiness == Readiness::NotToBeUsed);
        QCOMPARE(answer.state, answer.ready ? QStringLiteral("READY") : answer.stop ? QStringLiteral("DO NOT LIFT") : QStringLiteral("NOT READY"));
        QVERIFY(!answer.reason.isEmpty());
        said.insert(answer.reason);
    }
    QCOMPARE(said.size(), static_cast<int>(Readiness::Ready) + 1);
}

void SetupViewTest::marksAreTheEngines()
{
    show(tall(), chainAndBand());
    const QVariantList marks = m_view->marks();
    const PullCurve& curve = *weighed().curve;
    QCOMPARE(marks.size(), 3);
    const std::optional<Reading> readings[] = {curve.top, curve.zone, curve.bottom};
    const double heights[] = {1.60, 1.19, 0.94};
    const char* keys[] = {"top", "zone", "bottom"};
    for (int i = 0; i < 3; ++i) {
        QCOMPARE(textIn(marks[i], "key"), QLatin1String(keys[i]));
        VERIFY_NEAR(numberIn(marks[i], "height"), heights[i], 1e-12);
        VERIFY_NEAR_SHARE(numberIn(marks[i], "pull"), asMass(readings[i]->value).si(), 1e-12);
        QCOMPARE(textIn(marks[i], "text"), say::pull(*readings[i]).tight());
    }
    // the unit stands once, with the highest
    QCOMPARE(textIn(marks[0], "heightText"), QStringLiteral("160 cm"));
    QCOMPARE(textIn(marks[1], "heightText"), QStringLiteral("119"));
    QCOMPARE(numberIn(marks[1], "zoneFrom"), 1.10);
    QCOMPARE(numberIn(marks[1], "zoneTo"), 1.28);
}

void SetupViewTest::unknownMarkHasNoPull()
{
    BandPlacing doubled = samples::bandAt(0);
    doubled.doubled = true;
    show(samples::marks(0.80, 1.40), samples::setup(100, {samples::hung(2, doubled)}));
    QVERIFY(std::isnan(numberIn(m_view->marks().first(), "pull")));
    QCOMPARE(textIn(m_view->marks().first(), "text"), QStringLiteral("not known"));
}

void SetupViewTest::beamIsWhatThePlatesMake()
{
    SetupRecord record = samples::setup(40);
    record.bar.stock = {{usualStock()[3].type, 2}, {usualStock()[4].type, 2}};
    show(tall(), record);
    const BeamText beam = m_view->beam();
    QCOMPARE(beam.loads, QVariantList({20.0, 30.0, 40.0, 50.0}));
    QCOMPARE(beam.labels, QVariantList({QStringLiteral("20"), QStringLiteral("30"), QStringLiteral("40"), QStringLiteral("50")}));
    QCOMPARE(beam.value, 40.0);
    QCOMPARE(beam.number, QStringLiteral("40"));
    QCOMPARE(beam.valueText, QStringLiteral("40 kg"));
    QCOMPARE(beam.eachSide, QStringLiteral("10"));
    QCOMPARE(beam.up, QStringLiteral("+10"));
    QCOMPARE(beam.down, QString(QChar(0x2212)) + QStringLiteral("10"));
}

void SetupViewTest::beamStepsAsTheKitDoes()
{
    show(tall(), samples::setup(102.5));
    QCOMPARE(m_view->beam().eachSide, QString::fromUtf8("25 · 15 · 1.25"));
    m_view->stepLoad(true);
    QCOMPARE(m_view->beam().number, QStringLiteral("105"));
    m_view->stepLoad(false);
    m_view->stepLoad(false);
    QCOMPARE(m_view->beam().number, QStringLiteral("100"));
    show(tall(), samples::setup(20));
    QVERIFY(!m_view->beam().canDown && m_view->beam().canUp);
    show(tall(), samples::setup(197.5));
    QVERIFY(m_view->beam().canDown && !m_view->beam().canUp);
    SetupRecord bare = samples::setup(20);
    bare.bar.stock.clear();
    show(tall(), bare);
    QVERIFY(!m_view->beam().canDown && !m_view->beam().canUp);
    QCOMPARE(m_view->beam().loads, QVariantList({20.0}));
}

void SetupViewTest::beamOfALongStockKeepsTheLoadInSight()
{
    SetupRecord record = samples::setup(20);
    record.bar.stock.push_back({{kilograms(0.25), metres(0.09), metres(0.008)}, 8});
    for (const double wanted : {20.0, 100.0, 199.5}) {
        record.bar.wanted = kilograms(wanted);
        show(tall(), record);
        const BeamText beam = m_view->beam();
        QVERIFY(beam.loads.size() >= 41 && beam.loads.size() <= 81);
        QVERIFY(beam.loads.contains(beam.value));
        QVERIFY(std::is_sorted(beam.loads.begin(), beam.loads.end(), [](const QVariant& a, const QVariant& b) { return a.toDouble() < b.toDouble(); }));
    }
}

void SetupViewTest::platesFromTheInside()
{
    show(tall(), samples::setup(102.5));
    QStringList labels;
    for (const QVariant& plate : m_view->plates())
        labels << textIn(plate, "label");
    QCOMPARE(labels, QStringList({QStringLiteral("25"), QStringLiteral("15"), QStringLiteral("1.25")}));
    QCOMPARE(numberIn(m_view->plates().first(), "diameterMm"), 450.0);
    QCOMPARE(numberIn(m_view->plates().first(), "thicknessMm"), 45.0);
    // the strip goes on to what hangs
    show(tall(), chainAndBand());
    QCOMPARE(m_view->strip().size(), m_view->plates().size() + 2);
    QCOMPARE(textIn(m_view->strip().at(m_view->plates().size()), "hang"), QStringLiteral("chain"));
    QCOMPARE(textIn(m_view->strip().last(), "hang"), QStringLiteral("band"));
}

void SetupViewTest::elevationToScale()
{
    BandPlacing above = samples::bandAt(2.4, true);
    ChainPlacing bunched = samples::chainOn(0.5, ChainHangingWay::Bunched);
    bunched.bunch = metres(0.25);
    show(tall(), samples::setup(100, {samples::hung(1, bunched), samples::hung(2, above)}));
    const QVariantList list = m_view->elevation();
    QCOMPARE(list.size(), 2);
    QCOMPARE(textIn(list[0], "kind"), QStringLiteral("chain"));
    QCOMPARE(textIn(list[0], "hang"), QStringLiteral("bunched"));
    QCOMPARE(numberIn(list[0], "lead"), 0.5);
    QCOMPARE(numberIn(list[0], "length"), 1.5);
    QCOMPARE(numberIn(list[0], "bunch"), 0.25);
    // short-link chain of 5.7 kg a metre has a wire of some 16 mm (DIN 766: 16 mm, 5.8 kg/m; from memory)
    VERIFY_NEAR(numberIn(list[0], "wire"), 0.016, 0.001);
    QVERIFY(numberIn(list[0], "pitch") > 2 * numberIn(list[0], "wire"));
    QCOMPARE(textIn(list[1], "kind"), QStringLiteral("band"));
    QCOMPARE(textIn(list[1], "hang"), QStringLiteral("single"));
    QCOMPARE(numberIn(list[1], "length"), 1.0);
    QCOMPARE(numberIn(list[1], "anchorHeight"), 2.4);
    QVERIFY(list[1].toMap().value(QStringLiteral("above")).toBool());
    // a thing on the right alone is shown as well
    show(tall(), samples::setup(100, {samples::hung(2, above, HungOn::RightOnly)}));
    QCOMPARE(m_view->elevation().size(), 1);
}

void SetupViewTest::hangingRows()
{
    BandPlacing band = samples::bandAt(0.10);
    band.doubled = true;
    band.offset = metres(-0.2);
    show(tall(), samples::setup(100, {samples::hung(1, samples::chainOn(0.45, ChainHangingWay::Doubled)), samples::hung(2, band),
                                      samples::hung(1, samples::chainOn(0), HungOn::RightOnly)}));
    const auto said = [&](int row, const char* role) { return formcheck::shown(*m_view->hanging(), row, role).toString(); };
    QCOMPARE(m_view->hanging()->rowCount(), 3);
    QCOMPARE(said(0, "what"), QStringLiteral("Chain"));
    QCOMPARE(said(0, "how"), QStringLiteral("doubled, on a lead of 45 cm"));
    QCOMPARE(said(0, "leftPiece"), QStringLiteral("one"));
    QCOMPARE(said(0, "rightPiece"), QStringLiteral("one"));
    QCOMPARE(said(1, "how"), QStringLiteral("doubled, anchored at 10 cm, 20 cm behind"));
    QCOMPARE(said(1, "rightPiece"), QStringLiteral("its twin"));
    QCOMPARE(said(2, "how"), QStringLiteral("straight, no lead"));
    QCOMPARE(said(2, "leftPiece"), QString(QChar(0x2013)));
}

void SetupViewTest::stopsComeFirst()
{
    // unknown past its measurement, and a chain that says something harmless
    BandPlacing doubled = samples::bandAt(0);
    doubled.doubled = true;
    show(samples::marks(0.77, 1.27), samples::setup(100, {samples::hung(1, samples::chainOn(0.8)), samples::hung(2, doubled)}));
    const auto* list = m_view->notices();
    QVERIFY(list->rowCount() >= 2);
    bool stillStops = true;
    int stops = 0;
    for (int row = 0; row < list->rowCount(); ++row) {
        const bool stop = formcheck::shown(*list, row, "stop").toBool();
        QVERIFY(stillStops || !stop);
        stillStops = stop;
        stops += stop ? 1 : 0;
    }
    QVERIFY(stops > 0 && stops < list->rowCount());

    // an anchor held by less than it takes
    BandPlacing held = samples::bandAt(0);
    held.heldBy = kilograms(5);
    show(samples::marks(0.9, 1.5), samples::setup(100, {samples::hung(2, held)}));
    QVERIFY(m_view->answer().stop);
    QCOMPARE(m_view->answer().reason, QStringLiteral("The anchor of Band may lift"));
    QVERIFY(formcheck::shown(*list, 0, "stop").toBool());
    QCOMPARE(formcheck::shown(*list, 0, "head").toString(), QStringLiteral("The anchor of Band may lift"));
}

void SetupViewTest::cautionsAreLookedOver()
{
    show(tall(), chainAndBand());
    const auto* list = m_view->cautions();
    QCOMPARE(list->rowCount(), 2);
    QCOMPARE(m_view->answer().reason, QStringLiteral("Look it over first."));
    m_view->lookOver(-1);
    m_view->lookOver(3);
    for (int row = 0; row < 2; ++row) {
        QVERIFY(!formcheck::shown(*list, row, "looked").toBool());
        QVERIFY(!m_view->answer().ready);
        m_view->lookOver(formcheck::shown(*list, row, "code").toInt());
        QVERIFY(formcheck::shown(*list, row, "looked").toBool());
    }
    QVERIFY(m_view->answer().ready);
    QCOMPARE(m_view->answer().state, QStringLiteral("READY"));
}

void SetupViewTest::readingAtAnyHeight()
{
    show(tall(), chainAndBand());
    const PullSum sum(*weighed().setup);
    for (const double h : {0.94, 1.0, 1.235, 1.55, 1.60})
        QCOMPARE(m_view->readingAt(h), QStringLiteral("%1 cm: %2 kg").arg(say::length(metres(h)), say::pull(sum.at(metres(h))).sentence()));
    // the bar does not come there
    QVERIFY(m_view->readingAt(0.5).isEmpty());
    QVERIFY(m_view->readingAt(1.8).isEmpty());
    BandPlacing doubled = samples::bandAt(0);
    doubled.doubled = true;
    show(samples::marks(0.80, 1.40), samples::setup(100, {samples::hung(2, doubled)}));
    QCOMPARE(m_view->readingAt(1.3), QStringLiteral("130 cm: not known"));
    QVERIFY(m_view->readingAt(0.9).endsWith(QStringLiteral(" kg")));
}

void SetupViewTest::pictureFollowsTheCurve()
{
    show(tall(), chainAndBand());
    const PullPicture p = m_view->picture();
    const auto& samples = weighed().curve->samples;
    QCOMPARE(p.total.size(), static_cast<qsizetype>(samples.size()));
    for (qsizetype i = 0; i < p.total.size(); ++i) {
        const CurveSample& s = samples[static_cast<std::size_t>(i)];
        QCOMPARE(p.total[i].y(), s.height.si());
        VERIFY_NEAR_SHARE(p.total[i].x(), asMass(s.total).si(), 1e-12);
        VERIFY_NEAR_SHARE(p.iron[i].x(), 100.0, 1e-12);
        VERIFY_NEAR_SHARE(p.chain[i].x(), asMass(s.iron + s.chain).si(), 1e-12);
        VERIFY_NEAR_SHARE(p.high1[i].x() - p.total[i].x(), asMass(s.u).si(), 1e-9);
        VERIFY_NEAR_SHARE(p.total[i].x() - p.low2[i].x(), asMass(s.giveOrTake).si(), 1e-9);
        QVERIFY(p.high2[i].x() <= p.pullTo);
    }
    QVERIFY(p.heightTo > 1.60);
    QVERIFY(std::isnan(p.unknownFrom));
}

void SetupViewTest::pictureBreaksOffWhereNothingIsKnown()
{
    BandPlacing doubled = samples::bandAt(0);
    doubled.doubled = true;
    show(samples::marks(0.80, 1.40), samples::setup(100, {samples::hung(2, doubled)}));
    const PullPicture p = m_view->picture();
    // 1.05 · 1.95 m of band, doubled over the floor
    QVERIFY(!p.total.isEmpty());
    QVERIFY(p.total.last().y() <= 1.05 * 1.95 / 2 + 1e-9);
    QVERIFY(p.unknownFrom >= p.total.last().y());
    VERIFY_NEAR(p.unknownFrom, 1.05 * 1.95 / 2, 0.005);
}

void SetupViewTest::followsTheDesk()
{
    QSignalSpy told(m_view, &SetupView::changed);
    show(tall(), chainAndBand());
    QCOMPARE(told.count(), 1);
    DeskService other;
    m_view->setDesk(&other);
    QCOMPARE(told.count(), 2);
    QVERIFY(m_view->marks().isEmpty());
    show(tall(), samples::setup(60));
    QCOMPARE(told.count(), 2);
    m_view->setDesk(m_service);
    QCOMPARE(m_view->beam().number, QStringLiteral("60"));
}

QTEST_GUILESS_MAIN(SetupViewTest)
#include "test_setupview.moc"
