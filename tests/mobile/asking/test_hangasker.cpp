// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/asking/askingtexts.h"
#include "mobile/asking/hangasker.h"

#include "tests/core/work/samples.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What is wanted is asked of the kit, answers come by themselves, and one of them becomes the set-up.
class HangAskerTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void nothingIsAskedAtFirst();
    void theBestAnswerComes();
    void takenItIsTheSetUp();
    void stepsAskAnew();
    void leftOutItIsAskedNoMore();
    void whatMayHang();
    void whatCannotBeSaysSo();
    void withoutMarksItSaysWhatIsMissing();
    void goneWhileItLooks();
    void saysWhy();
    void inPerCentOfAMaximum();
    void levelWithHerStrength();
    void withoutHerPullsItSaysWhatIsMissing();
    void withoutPlatesItSaysSo();
    void notProvedItSaysHowNearAnythingComes();

private:
    void want(const char* key, const char* digits);
    [[nodiscard]] QString cell(int row, const char* role) const;
    [[nodiscard]] bool settle();

    std::unique_ptr<DeskService> m_desk;
    std::unique_ptr<HangAsker> m_asker;
};

void HangAskerTest::init()
{
    m_asker.reset();
    m_desk = std::make_unique<DeskService>();
    m_desk->desk().replaceAll(samples::marks(0.8, 1.3), {samples::item(1, "Long chains", samples::weighed()), samples::item(2, "Heavy chains", samples::gauged())}, samples::setup(60));
    m_asker = std::make_unique<HangAsker>();
    m_asker->setDeskService(m_desk.get());
}

void HangAskerTest::want(const char* key, const char* digits)
{
    NumberEntry entry(m_asker->spec(QLatin1String(key))->limits);
    for (const char* at = digits; *at; ++at)
        QVERIFY(!entry.press(*at));
    QVERIFY(m_asker->keepNumber(QLatin1String(key), KeyedFigure(entry)).kept());
}

QString HangAskerTest::cell(int row, const char* role) const
{
    const auto* model = m_asker->answers();
    const int number = model->roleNames().key(role, -1);
    const QVariant value = model->data(model->index(row, 0), number);
    return value.metaType().id() == QMetaType::QStringList ? value.toStringList().join(QLatin1Char('|')) : value.toString();
}

bool HangAskerTest::settle()
{
    return QTest::qWaitFor([this] { return m_asker->state() != HangAsker::Looking; }, 20000);
}

void HangAskerTest::nothingIsAskedAtFirst()
{
    QCOMPARE(m_asker->state(), HangAsker::Idle);
    QCOMPARE(m_asker->answers()->rowCount(), 0);
    // no sticking zone was entered, so none can be asked for
    QCOMPARE(m_asker->targets()->rowCount(), 3);
}

void HangAskerTest::theBestAnswerComes()
{
    want("bottom", "60");
    want("top", "72.5");
    QCOMPARE(m_asker->state(), HangAsker::Looking);
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Proved);
    QCOMPARE(m_asker->answers()->rowCount(), 2);
    QCOMPARE(cell(0, "within"), QStringLiteral("true"));
    QVERIFY(cell(0, "title").contains(QStringLiteral("at the bottom")));
    QVERIFY2(cell(0, "off").startsWith(QStringLiteral("At the bottom: ")), qPrintable(cell(0, "off")));
    QVERIFY(cell(0, "hangs").contains(QStringLiteral("chains")));
    QVERIFY(cell(0, "changes").contains(QStringLiteral("hang: ")));
    QVERIFY(m_asker->head().contains(QStringLiteral("nearer")));
}

void HangAskerTest::takenItIsTheSetUp()
{
    want("bottom", "60");
    want("top", "72.5");
    QVERIFY(settle());
    const QString title = cell(0, "title"), load = cell(0, "load");
    m_asker->take(7);
    QVERIFY(m_desk->desk().setup().hung.empty());
    m_asker->take(0);
    QVERIFY(!m_desk->desk().setup().hung.empty());
    QVERIFY(settle());
    // now it hangs, it is the best still, and nothing changes any more
    QCOMPARE(cell(0, "title"), title);
    QCOMPARE(cell(0, "load"), load);
    QCOMPARE(cell(0, "changes"), QStringLiteral("it hangs already"));
}

void HangAskerTest::stepsAskAnew()
{
    want("top", "80");
    QVERIFY(settle());
    const QString before = cell(0, "title");
    m_asker->step(QStringLiteral("top"), true);
    QCOMPARE(m_asker->state(), HangAsker::Looking);
    QVERIFY(settle());
    QVERIFY(cell(0, "title") != before);
    m_asker->step(QStringLiteral("top"), false);
    QVERIFY(settle());
    QCOMPARE(cell(0, "title"), before);
    // nothing is asked for by a step
    m_asker->step(QStringLiteral("bottom"), true);
    QVERIFY(!m_asker->canClear(QStringLiteral("bottom")));
}

void HangAskerTest::leftOutItIsAskedNoMore()
{
    want("top", "80");
    QVERIFY(settle());
    QVERIFY(m_asker->clearNumber(QStringLiteral("top")));
    QCOMPARE(m_asker->state(), HangAsker::Idle);
    QCOMPARE(m_asker->answers()->rowCount(), 0);
    QVERIFY(!m_asker->clearNumber(QStringLiteral("top")));
    QVERIFY(!m_asker->keepNumber(QStringLiteral("zone"), 80).kept());
}

void HangAskerTest::whatMayHang()
{
    want("bottom", "60");
    want("top", "72.5");
    QVERIFY(settle());
    m_asker->setChains(false);
    QVERIFY(settle());
    QCOMPARE(cell(0, "hangs"), QString());
    m_asker->setBands(false);
    QVERIFY(!m_asker->bands() && !m_asker->chains());
}

void HangAskerTest::whatCannotBeSaysSo()
{
    want("bottom", "40");
    want("top", "160");
    QVERIFY(settle());
    QCOMPARE(cell(0, "within"), QStringLiteral("false"));
    QVERIFY2(m_asker->head().startsWith(QStringLiteral("Not with the kit")), qPrintable(m_asker->head()));
    QCOMPARE(m_asker->answers()->rowCount(), 2);
}

void HangAskerTest::withoutMarksItSaysWhatIsMissing()
{
    want("top", "80");
    QVERIFY(settle());
    m_desk->desk().setMarks(BarMarks{});
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Refused);
    QCOMPARE(m_asker->head(), QStringLiteral("Her bar marks come first"));
    QVERIFY(!m_asker->body().isEmpty());
    QCOMPARE(m_asker->answers()->rowCount(), 0);
}

/// An answer that nobody waits for any more reaches nobody.
void HangAskerTest::goneWhileItLooks()
{
    want("bottom", "60");
    want("top", "72.5");
    m_asker.reset();
    QTest::qWait(200);
    QVERIFY(!m_asker);
}

/// What hangs gives the rise, and what else could hang would miss by so much.
void HangAskerTest::saysWhy()
{
    want("bottom", "60");
    want("top", "66");
    QVERIFY(settle());
    const QString why = cell(0, "why");
    QVERIFY2(why.contains(QStringLiteral("rise")), qPrintable(why));
    QVERIFY2(why.contains(QStringLiteral("chains instead would")) || why.contains(QStringLiteral("With ")), qPrintable(why));
    QVERIFY2(why.count(QLatin1Char('.')) >= 2, qPrintable(why));
    // only of the best is it said
    QVERIFY(cell(1, "why").isEmpty());
    m_asker->setChains(false);
    QVERIFY(settle());
    QCOMPARE(cell(0, "why"), QStringLiteral("Iron alone comes nearest."));
}

void HangAskerTest::inPerCentOfAMaximum()
{
    want("top", "80");
    QVERIFY(settle());
    m_asker->setInPercent(true);
    QCOMPARE(m_asker->state(), HangAsker::Idle);
    want("top", "90");
    QCOMPARE(m_asker->state(), HangAsker::Refused);
    QCOMPARE(m_asker->head(), QStringLiteral("The 1RM comes first"));
    want("maximum", "100");
    QCOMPARE(m_asker->oneRepMax(), QStringLiteral("100 kg"));
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Proved);
    QVERIFY2(cell(0, "title").contains(QStringLiteral("90")), qPrintable(cell(0, "title")));
    m_asker->step(QStringLiteral("top"), true);
    QCOMPARE(m_desk->desk().wanted().percents.at(TargetPlace::Top), 92.5);
    QVERIFY(settle());
    // what was said in kg waited
    m_asker->setInPercent(false);
    QVERIFY(settle());
    QCOMPARE(m_desk->desk().wanted().at(TargetPlace::Top)->si(), 80.0);
    QVERIFY2(cell(0, "title").contains(QStringLiteral("80")), qPrintable(cell(0, "title")));
    m_asker->setInPercent(true);
    QVERIFY(m_asker->canClear(QStringLiteral("maximum")) && m_asker->clearNumber(QStringLiteral("maximum")));
    QCOMPARE(m_asker->state(), HangAsker::Refused);
    // never below a step, nor past twice the maximum
    for (int i = 0; i < 100; ++i)
        m_asker->step(QStringLiteral("top"), false);
    QCOMPARE(m_desk->desk().wanted().percents.at(TargetPlace::Top), 2.5);
}

void HangAskerTest::levelWithHerStrength()
{
    m_desk->desk().setPulls({{{}, {}, LiftId{1}, metres(0.75), kilograms(100), {}}, {{}, {}, LiftId{1}, metres(1.05), kilograms(107), {}}, {{}, {}, LiftId{1}, metres(1.35), kilograms(114), {}}});
    want("mean", "80");
    QVERIFY(settle());
    QVERIFY(!m_asker->picture().isThere());
    const QString before = cell(0, "hangs");
    m_asker->setLevel(true);
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Proved);
    QVERIFY2(cell(0, "off").contains(QStringLiteral("her share varies by")), qPrintable(cell(0, "off")));
    QVERIFY(cell(0, "hangs") != before);
    const LevelShown picture = m_asker->picture();
    QVERIFY(picture.isThere());
    QCOMPARE(picture.pull.size(), picture.plain.size());
    QCOMPARE(picture.pulls, QStringLiteral("3 pulls at 3 heights"));
    QVERIFY2(picture.sentence.contains(QStringLiteral("with plain iron by")), qPrintable(picture.sentence));
    // her share varies less than plain iron's would
    const auto spread = [](const QList<QPointF>& line) {
        const auto ends = std::minmax_element(line.begin(), line.end(), [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); });
        return ends.second->x() - ends.first->x();
    };
    QVERIFY(spread(picture.share) < spread(picture.plain) / 2);
    for (int i = 0; i < picture.share.size(); ++i)
        QVERIFY(picture.shareLow[i].x() < picture.share[i].x() && picture.share[i].x() < picture.shareHigh[i].x());
    m_asker->setLevel(false);
    QVERIFY(settle());
    QVERIFY(!m_asker->picture().isThere());
}

void HangAskerTest::withoutHerPullsItSaysWhatIsMissing()
{
    want("mean", "80");
    m_asker->setLevel(true);
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Refused);
    QVERIFY2(m_asker->head().startsWith(QStringLiteral("Isometric pulls")), qPrintable(m_asker->head()));
    QVERIFY(m_asker->body().contains(QStringLiteral("three heights")));
    QCOMPARE(m_asker->picture().pulls, QStringLiteral("none yet"));
    QCOMPARE(m_asker->answers()->rowCount(), 0);
    // known, but on a third of her path only
    m_desk->desk().setPulls({{{}, {}, LiftId{1}, metres(1.1), kilograms(100), {}}, {{}, {}, LiftId{1}, metres(1.2), kilograms(120), {}}, {{}, {}, LiftId{1}, metres(1.35), kilograms(150), {}}});
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Refused);
}

/// Whatever is missing is named: not always the marks.
void HangAskerTest::withoutPlatesItSaysSo()
{
    BarRecord bar = m_desk->desk().setup().bar;
    bar.bar = kilograms(-1);
    m_desk->desk().setBar(bar);
    want("top", "80");
    QVERIFY(settle());
    QCOMPARE(m_asker->state(), HangAsker::Refused);
    QVERIFY2(!m_asker->head().contains(QStringLiteral("bar marks")), qPrintable(m_asker->head()));
}

void HangAskerTest::notProvedItSaysHowNearAnythingComes()
{
    QCOMPARE(askingtexts::stopped({}), QStringLiteral("Stopped: something better may exist."));
    const QString bounded = askingtexts::stopped(weight(kilograms(1.26)));
    QVERIFY2(bounded.contains(QStringLiteral("1.3 kg")), qPrintable(bounded));
}

QTEST_GUILESS_MAIN(HangAskerTest)
#include "test_hangasker.moc"
