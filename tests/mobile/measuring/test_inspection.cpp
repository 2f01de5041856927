// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/measuring/inspectioneditor.h"
#include "mobile/pages/kitview.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What a look over does to a thing, and what the list of the kit says of age and use.
class InspectionTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void outOfUseAndBack();
    void nothingWithoutAReason();
    void theListSaysSo();
};

void InspectionTest::outOfUseAndBack()
{
    StandInHouse house;
    layOut(house.book, house.desk.desk(), {}, {samples::item(1, "Band", samples::band())}, {});
    InspectionEditor editor;
    editor.setBook(&house.book);
    editor.setItemId(QString::fromStdString(house.book.book().kit().front()->item.id.hex()));
    QCOMPARE(editor.name(), QStringLiteral("Band"));
    QVERIFY(!editor.isOutOfUse() && editor.state().isEmpty());
    QSignalSpy kept(&editor, &InspectionEditor::kept);
    editor.setProperty("fault", 1);
    editor.setProperty("note", "  near the hook ");
    editor.keep(false);
    QCOMPARE(kept.count(), 1);
    QVERIFY(editor.isOutOfUse());
    QVERIFY2(editor.state().contains("2 Nov: cut, near the hook"), qPrintable(editor.state()));
    editor.keep(true);
    QVERIFY(!editor.isOutOfUse());
    QVERIFY(editor.state().contains("2 Nov"));
}

void InspectionTest::nothingWithoutAReason()
{
    StandInHouse house;
    layOut(house.book, house.desk.desk(), {}, {samples::item(1, "Band", samples::band())}, {});
    InspectionEditor editor;
    editor.setBook(&house.book);
    editor.keep(false);
    editor.setItemId(QString::fromStdString(house.book.book().kit().front()->item.id.hex()));
    editor.keep(false);
    QVERIFY(!editor.isOutOfUse());
    QVERIFY(house.book.keeping().deeds().empty());
}

void InspectionTest::theListSaysSo()
{
    StandInHouse house;
    KitItem cut = samples::item(1, "A band", samples::band());
    layOut(house.book, house.desk.desk(), {}, {cut, samples::item(2, "B band", samples::band())}, {});
    KitView view;
    view.setDesk(&house.desk);
    view.setBook(&house.book);
    // a band is good for 120 days
    QVERIFY2(formcheck::shown(*view.things(), 0, "how").toString().endsWith("measured 2 Nov, due in 17 weeks"),
             qPrintable(formcheck::shown(*view.things(), 0, "how").toString()));
    cut = house.desk.desk().kit().front();
    cut.inspection = Inspection{KitFault::Cut, {}, house.book.today()};
    std::vector<KitItem> kit = house.desk.desk().kit();
    kit.front() = cut;
    house.desk.desk().setKit(kit);
    // what is out of use stands last, and cannot be hung
    QCOMPARE(formcheck::shown(*view.things(), 1, "what").toString(), QStringLiteral("A band"));
    QVERIFY(formcheck::shown(*view.things(), 1, "outOfUse").toBool());
    QVERIFY(!formcheck::shown(*view.things(), 1, "usable").toBool());
}

QTEST_GUILESS_MAIN(InspectionTest)
#include "test_inspection.moc"
