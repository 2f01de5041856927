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
    void nothingWrongIsKeptWithItsDay();
    void eachKindIsAskedItsOwn();
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
    editor.setProperty("found", 1);
    editor.setProperty("note", "  near the hook ");
    QVERIFY(!editor.isFit());
    editor.keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(editor.isOutOfUse());
    QVERIFY2(editor.state().contains("2 Nov: cut, near the hook"), qPrintable(editor.state()));
    QVERIFY(editor.isFit());
    editor.keep();
    QVERIFY(!editor.isOutOfUse());
    QVERIFY(editor.state().contains("2 Nov"));
}

void InspectionTest::nothingWithoutAReason()
{
    StandInHouse house;
    layOut(house.book, house.desk.desk(), {}, {samples::item(1, "Band", samples::band())}, {});
    InspectionEditor editor;
    editor.setBook(&house.book);
    editor.keep();
    editor.setItemId(QString::fromStdString(house.book.book().kit().front()->item.id.hex()));
    editor.keep();
    editor.setProperty("found", 99);
    editor.keep();
    QVERIFY(!editor.isOutOfUse());
    QVERIFY(house.book.keeping().deeds().empty());
}

void InspectionTest::nothingWrongIsKeptWithItsDay()
{
    StandInHouse house;
    layOut(house.book, house.desk.desk(), {}, {samples::item(1, "Band", samples::band())}, {});
    InspectionEditor editor;
    editor.setBook(&house.book);
    editor.setItemId(QString::fromStdString(house.book.book().kit().front()->item.id.hex()));
    QCOMPARE(editor.findings().constFirst(), QStringLiteral("nothing wrong"));
    editor.setProperty("found", 0);
    QVERIFY(editor.isFit());
    editor.keep();
    const KitItem& kept = house.book.book().kit().front()->item;
    QVERIFY(kept.inspection && !kept.inspection->fault && kept.inspection->day == house.book.today());
    QVERIFY(!editor.isOutOfUse());
    QCOMPARE(editor.state(), QStringLiteral("looked over 2 Nov: nothing wrong"));
    QCOMPARE(house.book.keeping().deeds().size(), std::size_t{1});
}

void InspectionTest::eachKindIsAskedItsOwn()
{
    QSet<QString> looks;
    for (int kind = 0; kind <= static_cast<int>(lastItemKind); ++kind) {
        StandInHouse house;
        KitItem thing = samples::item(1, "Thing", notYetMeasured(static_cast<ItemKind>(kind)));
        layOut(house.book, house.desk.desk(), {}, {thing}, {});
        InspectionEditor editor;
        editor.setBook(&house.book);
        editor.setItemId(QString::fromStdString(house.book.book().kit().front()->item.id.hex()));
        const QString look = editor.lookAt();
        QVERIFY(!looks.contains(look));
        looks.insert(look);
        // whose word it is stands with it
        QVERIFY2(look.contains("(common practice, no source)") || look.contains("EN 818-6"), qPrintable(look));
        const QStringList findings = editor.findings();
        QVERIFY(findings.contains("something else"));
        QCOMPARE(QSet<QString>(findings.cbegin(), findings.cend()).size(), findings.size());
        QCOMPARE(findings.contains("cut"), kind == static_cast<int>(ItemKind::Band) || kind == static_cast<int>(ItemKind::Aid) || kind == static_cast<int>(ItemKind::Lead));
        QCOMPARE(findings.contains("worn link"), kind == static_cast<int>(ItemKind::Chain));
    }
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
    QCOMPARE(formcheck::shown(*view.things(), 1, "free").toString(), QStringLiteral("out of use"));
    QVERIFY(!formcheck::shown(*view.things(), 1, "usable").toBool());
}

QTEST_GUILESS_MAIN(InspectionTest)
#include "test_inspection.moc"
