// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/strength/rampview.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QtTest>
#endif

using namespace steelyard;

/// The warm-up ramp as its page says it.
class RampViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void upToWhatHangs();
    void sharesAndPlacesAreRemembered();
    void whatCannotBeLighter();
    void refused();

private:
    void lay(double kg, bool chained) { m_desk->desk().replaceAll(samples::marks(0.9, 1.5), {samples::item(1, "Chains", samples::weighed())}, samples::setup(kg, chained ? std::vector{samples::hung(1, ChainPlacing{})} : std::vector<HungRecord>{})); }
    [[nodiscard]] QString cell(int at, const char* role) const { return formcheck::shown(*m_view->steps(), at, role).toString(); }

    std::unique_ptr<DeskService> m_desk;
    std::unique_ptr<RampView> m_view;
};

void RampViewTest::init()
{
    m_view.reset();
    m_desk = std::make_unique<DeskService>(samples::counted());
    m_view = std::make_unique<RampView>();
    m_view->setDesk(m_desk.get());
    lay(100, false);
}

void RampViewTest::upToWhatHangs()
{
    QCOMPARE(m_view->steps()->rowCount(), 5);
    QCOMPARE(cell(0, "share"), QStringLiteral("40 %"));
    QCOMPARE(cell(0, "load"), QStringLiteral("40 kg"));
    QCOMPARE(cell(0, "change"), QStringLiteral("put on 10, each side"));
    QCOMPARE(cell(1, "load"), QStringLiteral("55 kg"));
    QVERIFY(cell(1, "pull").contains(QStringLiteral("55")) && cell(4, "load") == QStringLiteral("100 kg"));
    QVERIFY(formcheck::shown(*m_view->steps(), 4, "working").toBool() && m_view->refusal().isEmpty() && !m_view->isHung());
    QVERIFY2(m_view->least().contains(QStringLiteral("20 kg")), qPrintable(m_view->least()));
    QVERIFY(m_view->head().contains(QStringLiteral("100")));
}

void RampViewTest::sharesAndPlacesAreRemembered()
{
    m_view->step(0, true);
    QCOMPARE(cell(0, "share"), QStringLiteral("45 %"));
    QCOMPARE(cell(0, "load"), QStringLiteral("45 kg"));
    QCOMPARE(m_view->places().size(), 3); // no sticking zone
    m_view->setPlace(2);
    RampView again;
    again.setDesk(m_desk.get());
    QCOMPARE(again.place(), 2);
    QVERIFY(again.head().contains(QStringLiteral("at the top")));
    again.setPlace(9);
    QCOMPARE(again.place(), 2);
}

void RampViewTest::whatCannotBeLighter()
{
    lay(25, true);
    m_view->setPlace(2);
    QVERIFY(m_view->isHung());
    QVERIFY2(cell(0, "note").contains(QStringLiteral("as light as it gets")), qPrintable(cell(0, "note")));
    QCOMPARE(cell(1, "change"), QStringLiteral("it hangs already"));
}

void RampViewTest::refused()
{
    m_desk->desk().replaceAll({}, {}, samples::setup(60));
    QVERIFY(!m_view->refusal().isEmpty() && m_view->steps()->rowCount() == 0 && m_view->head().isEmpty());
}

QTEST_GUILESS_MAIN(RampViewTest)
#include "test_rampview.moc"
