// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/pages/kitview.h"

#include "core/work/measuredkit.h"
#include "mobile/text/say.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// The kit as a list to hang from.
class KitViewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void emptyKit();
    void oneRowAThing();
    void notYetUsableSaysWhy();
    void draftsAreSaid();
    void followsTheDesk();
};

void KitViewTest::emptyKit()
{
    DeskService service;
    KitView view;
    QVERIFY(view.isEmpty());
    view.setDesk(&service);
    QVERIFY(view.isEmpty());
}

void KitViewTest::oneRowAThing()
{
    DeskService service;
    service.desk().replaceAll({}, {samples::item(4, "Long chain", samples::weighed()), samples::item(7, "Wide band", samples::band(), false)}, samples::setup(20));
    KitView view;
    view.setDesk(&service);
    QVERIFY(!view.isEmpty());
    const auto said = [&](int row, const char* role) { return formcheck::shown(*view.things(), row, role); };
    QCOMPARE(view.things()->rowCount(), 2);
    QCOMPARE(said(0, "itemId").toString(), QString::fromStdString(samples::numbered(4).hex()));
    QCOMPARE(said(0, "what").toString(), QStringLiteral("Long chain"));
    // with its give-or-take, as on the thing's own page
    const auto chain = chainFrom(samples::weighed());
    QCOMPARE(said(0, "how").toString(), QStringLiteral("%1, 150 cm").arg(say::perLength(chain->perLength.value, coverageFactor95(knownExactly) * chain->perLength.u)));
    QVERIFY(said(0, "kind").toString() == QStringLiteral("chain") && said(0, "usable").toBool());
    QCOMPARE(said(0, "free").toString(), QStringLiteral("both free"));
    QCOMPARE(said(1, "itemId").toString(), QString::fromStdString(samples::numbered(7).hex()));
    const auto fit = bandFitFrom(samples::band());
    QCOMPARE(said(1, "how").toString(), QStringLiteral("pulls %1 at 195 cm").arg(say::pull(fit->pull(metres(1.95)), bandGiveOrTake(*fit, metres(1.95))).withUnit()));
    QVERIFY(said(1, "how").toString().contains(QStringLiteral(" ± ")));
    QVERIFY(said(1, "kind").toString() == QStringLiteral("band") && said(1, "usable").toBool());
    QCOMPARE(said(1, "free").toString(), QStringLiteral("free"));
}

void KitViewTest::notYetUsableSaysWhy()
{
    ChainMeasurement chain = samples::weighed();
    chain.mass.reset();
    DeskService service;
    service.desk().replaceAll({}, {samples::item(1, "Chain", chain), samples::item(2, "Band", BandMeasurement{})}, samples::setup(20));
    KitView view;
    view.setDesk(&service);
    QVERIFY(!formcheck::shown(*view.things(), 0, "usable").toBool());
    QCOMPARE(formcheck::shown(*view.things(), 0, "how").toString(), QStringLiteral("Still to enter: mass."));
    QVERIFY(!formcheck::shown(*view.things(), 1, "usable").toBool());
    QCOMPARE(formcheck::shown(*view.things(), 1, "how").toString(), QStringLiteral("not measured yet"));
}

void KitViewTest::draftsAreSaid()
{
    DeskService service;
    service.desk().replaceAll({}, {samples::item(1, "Chain", samples::weighed())}, samples::setup(20));
    KitView view;
    view.setDesk(&service);
    service.desk().setDraft(samples::item(1, "Chain", samples::gauged()));
    view.refresh();
    QVERIFY2(formcheck::shown(*view.things(), 0, "how").toString().endsWith(QStringLiteral("\nchanges not kept")),
             qPrintable(formcheck::shown(*view.things(), 0, "how").toString()));
    service.desk().throwDraft(samples::numbered(1), ItemKind::Chain);
    view.refresh();
    QVERIFY(formcheck::shown(*view.things(), 0, "how").toString().endsWith(QStringLiteral(", 150 cm")));
}

void KitViewTest::followsTheDesk()
{
    DeskService service;
    KitView view;
    view.setDesk(&service);
    const RecordId id = service.desk().keepItem(samples::item(0, "Chain", samples::weighed()));
    QCOMPARE(view.things()->rowCount(), 1);
    service.desk().removeItem(id);
    QVERIFY(view.isEmpty());
    DeskService other;
    view.setDesk(&other);
    (void)service.desk().keepItem(samples::item(0, "Chain", samples::weighed()));
    QVERIFY(view.isEmpty());
}

QTEST_GUILESS_MAIN(KitViewTest)
#include "test_kitview.moc"
