// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/markseditor.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// A lifter's bar marks as a form.
class MarksEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyKeyComesBack();
    void limitsCanBeKeyed();
    void unknownKeys();
    void onlyOptionalMarksAreLeftOut();
    void rowsSayWhatIsMissing();
    void fromTheFloorThePlatesDecide();
    void troubleIsOfTheMarksOnly();
    void marksForTheRuler();
    void nextMissingMark();
    void followsTheDesk();
};

void MarksEditorTest::everyKeyComesBack()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    QCOMPARE(formcheck::keepEveryKey(form), QStringList());
    QCOMPARE(form.specs().size(), std::size_t(5));
    form.setFromFloor(true);
    QCOMPARE(formcheck::keepEveryKey(form), QStringList());
    QCOMPARE(form.specs().size(), std::size_t(4));
    QVERIFY(form.keepNumber(QStringLiteral("bottom"), 88.5).kept());
    QCOMPARE(service.desk().marks().bottom->si(), 0.885);
}

void MarksEditorTest::limitsCanBeKeyed()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    QCOMPARE(formcheck::limitsOfEveryKey(form), QStringList());
    form.setFromFloor(true);
    QCOMPARE(formcheck::limitsOfEveryKey(form), QStringList());
}

void MarksEditorTest::unknownKeys()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    const BarMarks before = service.desk().marks();
    for (const QString& key : {QStringLiteral("middle"), QString(), QStringLiteral("Bottom")}) {
        QVERIFY(!form.keepNumber(key, 50).kept());
        QVERIFY(!form.clearNumber(key));
        QVERIFY(!form.canClear(key));
        QVERIFY(!form.spec(key));
    }
    QVERIFY(service.desk().marks() == before);
}

void MarksEditorTest::onlyOptionalMarksAreLeftOut()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    (void)formcheck::keepEveryKey(form);
    for (const QString& key : {QStringLiteral("bottom"), QStringLiteral("top")}) {
        QVERIFY(!form.canClear(key));
        QVERIFY(!form.clearNumber(key));
        QVERIFY(form.spec(key)->shown.has_value());
    }
    for (const QString& key : {QStringLiteral("zoneFrom"), QStringLiteral("zoneTo"), QStringLiteral("rack")}) {
        QVERIFY(form.canClear(key));
        QVERIFY(form.clearNumber(key));
        QVERIFY(!form.spec(key)->shown.has_value());
    }
    form.setFromFloor(true);
    QVERIFY(form.keepNumber(QStringLiteral("blocks"), 10).kept());
    QVERIFY(form.clearNumber(QStringLiteral("blocks")));
    QVERIFY(!service.desk().marks().blocks);
}

void MarksEditorTest::rowsSayWhatIsMissing()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    const int row = formcheck::rowOf(form, QStringLiteral("bottom"));
    QCOMPARE(formcheck::shown(*form.fields(), row, "entered").toBool(), false);
    QCOMPARE(formcheck::shown(*form.fields(), row, "value").toString(), QStringLiteral("not entered"));
    QVERIFY(formcheck::shown(*form.fields(), row, "unit").toString().isEmpty());
    form.keepNumber(QStringLiteral("bottom"), 88.5);
    QCOMPARE(formcheck::shown(*form.fields(), row, "entered").toBool(), true);
    QCOMPARE(formcheck::shown(*form.fields(), row, "value").toString(), QStringLiteral("88.5"));
    QCOMPARE(formcheck::shown(*form.fields(), row, "unit").toString(), QStringLiteral("cm"));
}

void MarksEditorTest::fromTheFloorThePlatesDecide()
{
    DeskService service;
    service.desk().setBar(samples::bar(70));
    MarksEditor form;
    form.setDeskService(&service);
    form.setFromFloor(true);
    QVERIFY(form.fromFloor());
    QVERIFY(!form.spec(QStringLiteral("bottom")) && !form.spec(QStringLiteral("rack")));
    form.keepNumber(QStringLiteral("top"), 80);
    QCOMPARE(form.marks().first().toMap().value(QStringLiteral("text")).toString(), QStringLiteral("22.5 cm"));
    form.keepNumber(QStringLiteral("blocks"), 10);
    QCOMPARE(form.marks().first().toMap().value(QStringLiteral("text")).toString(), QStringLiteral("32.5 cm"));
    form.setFromFloor(false);
    QVERIFY(form.spec(QStringLiteral("bottom")) && form.spec(QStringLiteral("rack")));
}

void MarksEditorTest::troubleIsOfTheMarksOnly()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    QCOMPARE(form.trouble(), QStringLiteral("Still to enter: bottom."));
    form.keepNumber(QStringLiteral("bottom"), 120);
    QCOMPARE(form.trouble(), QStringLiteral("Still to enter: top."));
    form.keepNumber(QStringLiteral("top"), 90);
    QVERIFY2(form.trouble().startsWith(QStringLiteral("Out of order: top.")), qPrintable(form.trouble()));
    form.keepNumber(QStringLiteral("top"), 150);
    QVERIFY(form.trouble().isEmpty());
    form.keepNumber(QStringLiteral("zoneFrom"), 130);
    QVERIFY2(form.trouble().startsWith(QStringLiteral("Out of order: sticking zone.")), qPrintable(form.trouble()));
    form.keepNumber(QStringLiteral("zoneTo"), 135);
    QVERIFY(form.trouble().isEmpty());
    // something else is wrong: that is no trouble of the marks
    service.desk().hang(samples::hung(99, ChainPlacing{}));
    QVERIFY(form.trouble().isEmpty());
}

void MarksEditorTest::marksForTheRuler()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    QVERIFY(form.marks().isEmpty());
    for (const auto& [key, cm] : {std::pair("bottom", 88.0), {"zoneFrom", 100.0}, {"zoneTo", 112.5}, {"top", 150.0}, {"rack", 142.0}})
        form.keepNumber(QString::fromLatin1(key), cm);
    QStringList said;
    for (const QVariant& mark : form.marks())
        said << mark.toMap().value(QStringLiteral("name")).toString() + QLatin1Char(' ') + mark.toMap().value(QStringLiteral("text")).toString();
    QCOMPARE(said, QStringList({QStringLiteral("bottom 88 cm"), QStringLiteral("zone from 100 cm"), QStringLiteral("zone to 112.5 cm"),
                                QStringLiteral("rack 142 cm"), QStringLiteral("top 150 cm")}));
    QCOMPARE(form.marks().first().toMap().value(QStringLiteral("height")).toDouble(), 0.88);
}

void MarksEditorTest::nextMissingMark()
{
    DeskService service;
    MarksEditor form;
    form.setDeskService(&service);
    QCOMPARE(form.nextMissing(QStringLiteral("bottom")), QStringLiteral("top"));
    form.keepNumber(QStringLiteral("top"), 150);
    QCOMPARE(form.nextMissing(QStringLiteral("bottom")), QString());
}

void MarksEditorTest::followsTheDesk()
{
    DeskService service, other;
    MarksEditor form;
    form.setDeskService(&service);
    QSignalSpy told(&form, &FieldEditor::changed);
    service.desk().setMarks(samples::marks(0.9, 1.5));
    QCOMPARE(told.count(), 1);
    QCOMPARE(form.spec(QStringLiteral("bottom"))->shown.value_or(0), 90.0);
    form.setDeskService(&other);
    QVERIFY(!form.spec(QStringLiteral("bottom"))->shown);
    told.clear();
    service.desk().setMarks(samples::marks(0.8, 1.5));
    QCOMPARE(told.count(), 0);
    QVERIFY(MarksEditor().specs().empty());
}

QTEST_GUILESS_MAIN(MarksEditorTest)
#include "test_markseditor.moc"
