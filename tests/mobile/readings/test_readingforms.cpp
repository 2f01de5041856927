// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/editors/hangeditor.h"
#include "mobile/pages/kitview.h"
#include "mobile/pages/setupview.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/readings/aideditor.h"
#include "mobile/readings/machineeditor.h"
#include "mobile/text/sentences.h"

#include "tests/core/work/samples.h"
#include "tests/mobile/formcheck.h"

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

/// A bench aid and a cam machine on their forms, in the list of the kit, and the aid in a set-up.
class ReadingFormsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void keysComeBackAndCanBeKeyed();
    void unknownKeysAreRefused();
    void aidSaysWhatItHelps();
    void aidSaysWhatIsWrong();
    void aidIsOneAndNamesItself();
    void aidPictureIsItsCurve();
    void machineByRadius();
    void machineByPull();
    void machinePictureIsItsCurve();
    void machineIsMeasuredTheOtherWay();
    void kitListSaysWhatTheyComeTo();
    void aidWornInASetUp();
    void whatEachMeasuringWas();

private:
    void read(ReadingsEditor& form, std::initializer_list<std::pair<double, double>> readings);
    void readAid() { read(*m_aid, {{62.5, 0}, {41, 5}, {22.5, 11}, {8.5, 19}, {0, 31}}); }

    DeskService* m_desk = nullptr;
    AidEditor* m_aid = nullptr;
    MachineEditor* m_machine = nullptr;
};

void ReadingFormsTest::init()
{
    m_desk = new DeskService(this);
    m_aid = new AidEditor(m_desk);
    m_machine = new MachineEditor(m_desk);
    m_aid->setDeskService(m_desk);
    m_machine->setDeskService(m_desk);
}

void ReadingFormsTest::cleanup()
{
    delete m_desk;
}

void ReadingFormsTest::read(ReadingsEditor& form, std::initializer_list<std::pair<double, double>> readings)
{
    for (const auto& [first, second] : readings) {
        const QString key = form.addReading();
        QVERIFY(form.keepNumber(key, first).kept());
        QVERIFY(form.keepNumber(form.keyOf(false, form.count() - 1), second).kept());
    }
}

void ReadingFormsTest::keysComeBackAndCanBeKeyed()
{
    readAid();
    QCOMPARE(m_aid->count(), 5);
    QVERIFY(std::abs(*m_aid->spec(QStringLiteral("height:2"))->shown - 11) < 1e-9);
    QCOMPARE(formcheck::limitsOfEveryKey(*m_aid), QStringList());
    for (const bool byPull : {false, true}) {
        m_machine->throwDraft();
        m_machine->setByPull(byPull);
        m_machine->addReading();
        QCOMPARE(formcheck::limitsOfEveryKey(*m_machine), QStringList());
    }
    m_machine->setByPull(false);
    QVERIFY(m_machine->keepNumber(QStringLiteral("angle:0"), 47.5).kept());
    QCOMPARE(m_machine->spec(QStringLiteral("angle:0"))->text, QStringLiteral("47.5"));
    QCOMPARE(m_machine->spec(QStringLiteral("angle:0"))->unit, QStringLiteral("°"));
}

void ReadingFormsTest::unknownKeysAreRefused()
{
    m_aid->addReading();
    m_machine->addReading();
    for (const char* key : {"mass", "mass:1", "mass:-1", "mass:x", "length:0", "", ":0"})
        QVERIFY2(!m_aid->keepNumber(QLatin1String(key), 5).kept(), key);
    for (const char* key : {"angle", "angle:1", "travel:0", "pull:0", "mass:0"})
        QVERIFY2(!m_machine->keepNumber(QLatin1String(key), 5).kept(), key);
    QVERIFY(!m_aid->spec(QStringLiteral("mass:0"))->shown);
    m_aid->setLeftOut(5, true);
    m_aid->removeReading(-1);
    QCOMPARE(m_aid->count(), 1);
}

void ReadingFormsTest::aidSaysWhatItHelps()
{
    QVERIFY(!m_aid->canKeep());
    QVERIFY(m_aid->answer().contains("not known"));
    readAid();
    QVERIFY(m_aid->canKeep());
    // 48.1 N as SciPy has it, times 1.96: 9.6 kg, said to one figure, and about, being more than a tenth
    QCOMPARE(m_aid->answer(), QStringLiteral("Helps 63 ± 10 kg at the chest"));
    QCOMPARE(m_aid->trouble(), QString());
    m_aid->removeReading(0);
    QCOMPARE(m_aid->answer(), QStringLiteral("Helps 41 ± 7 kg at 5 cm above the chest"));
}

void ReadingFormsTest::aidSaysWhatIsWrong()
{
    QVERIFY(m_aid->trouble().contains("two heights"));
    readAid();
    QVERIFY(m_aid->keepNumber(QStringLiteral("mass:2"), 52.5).kept());
    QVERIFY(!m_aid->canKeep());
    QVERIFY2(m_aid->trouble().contains("reading 3"), qPrintable(m_aid->trouble()));
    QVERIFY2(m_aid->oddText().contains("Reading 3"), qPrintable(m_aid->oddText()));
    QCOMPARE(formcheck::shown(*m_aid->readings(), 2, "odd"), QVariant(true));
    m_aid->setLeftOut(2, true);
    QVERIFY(m_aid->canKeep());
    QCOMPARE(formcheck::shown(*m_aid->readings(), 2, "note"), QVariant(QStringLiteral("left out")));
    // read again it counts again
    QVERIFY(m_aid->keepNumber(QStringLiteral("mass:2"), 22.5).kept());
    QCOMPARE(formcheck::shown(*m_aid->readings(), 2, "note"), QVariant(QString()));
    QVERIFY(m_aid->keepNumber(QStringLiteral("height:2"), 5).kept());
    QVERIFY2(m_aid->trouble().contains("same place") && m_aid->trouble().contains("reading 3"), qPrintable(m_aid->trouble()));
}

void ReadingFormsTest::aidIsOneAndNamesItself()
{
    QVERIFY(!m_aid->isPair() && !m_machine->isPair());
    QCOMPARE(m_aid->name(), QStringLiteral("Bench aid"));
    QCOMPARE(m_machine->name(), QStringLiteral("Cam machine"));
    readAid();
    QVERIFY(!m_aid->keep().isEmpty());
    QCOMPARE(m_desk->desk().kit().back().name, std::string("Bench aid"));
    QVERIFY(!m_desk->desk().kit().back().pair);
    QVERIFY(!m_aid->isDrafted());
}

void ReadingFormsTest::aidPictureIsItsCurve()
{
    QVERIFY(!m_aid->picture().isThere() && m_aid->picture().fit.isEmpty());
    readAid();
    const FitPicture p = m_aid->picture();
    QCOMPARE(p.points.size(), 5);
    QVERIFY(std::abs(p.fit.first().x() - 62.5) < 1e-9 && std::abs(p.fit.first().y()) < 1e-9);
    QVERIFY(std::abs(p.fit.last().x()) < 1e-9 && std::abs(p.fit.last().y() - 31) < 1e-9);
    QVERIFY(std::abs(p.high.first().x() - p.fit.first().x() - 1.959964 * 48.11532307081529 / 9.80665) < 1e-6);
    QVERIFY(p.pullTo > p.high.first().x() && p.lengthTo > 31);
    QCOMPARE(p.pullUnit, QStringLiteral("kg"));
}

void ReadingFormsTest::machineByRadius()
{
    QVERIFY(m_machine->answer().contains("not known"));
    read(*m_machine, {{0, 8.1}, {20, 9.6}, {45, 11.8}, {70, 12.1}, {100, 10.4}, {120, 8.8}});
    QVERIFY(!m_machine->canKeep());
    QVERIFY2(m_machine->trouble().contains("stack"), qPrintable(m_machine->trouble()));
    QVERIFY(m_machine->keepNumber(QStringLiteral("stack"), 40).kept());
    QVERIFY(m_machine->canKeep());
    // by hand: 40 kg on 12.1 cm is 47.5 N·m, 1.96 times the root of 0.548² (stack) and 0.785² (2 mm)
    QCOMPARE(m_machine->answer(), QStringLiteral("Up to 47.5 ± 1.9 N·m at 70°, stack 40 kg"));
    // SciPy: mean 41.92, u 0.928; work 87.8, u 2.10; rise 22.4 cm
    QVERIFY2(m_machine->more().startsWith("Mean 41.9 ± 1.8 N·m over the way, work 88 ± 4 J, the stack rises 22.4 cm."), qPrintable(m_machine->more()));
    QCOMPARE(formcheck::shown(*m_machine->readings(), 0, "note"), QVariant(QStringLiteral("31.8 ± 1.8 N·m")));
    // for another stack it is in proportion
    QVERIFY(m_machine->keepNumber(QStringLiteral("stack"), 20).kept());
    QVERIFY2(m_machine->answer().startsWith("Up to 23.7"), qPrintable(m_machine->answer()));
}

void ReadingFormsTest::machineByPull()
{
    m_machine->setByPull(true);
    QVERIFY(m_machine->keepNumber(QStringLiteral("stack"), 40).kept());
    read(*m_machine, {{0, 31.5}, {10, 36}, {20, 38.5}, {35, 37}, {50, 30.5}});
    QVERIFY2(m_machine->trouble().contains("step of the scale"), qPrintable(m_machine->trouble()));
    QVERIFY(m_machine->keepNumber(QStringLiteral("scaleStep"), 0.5).kept());
    QVERIFY(m_machine->canKeep());
    QVERIFY2(m_machine->answer().startsWith("Pulls up to 38.5 ± "), qPrintable(m_machine->answer()));
    // SciPy: mean 352.7 N, u 1.98 N: 36.0 ± 0.4 kg; work 176.4, u 4.36
    QVERIFY2(m_machine->more().startsWith("Mean 36.0 ± 0.4 kg over the way, work 176 ± 9 J."), qPrintable(m_machine->more()));
    QCOMPARE(formcheck::shown(*m_machine->readings(), 2, "mass"), QVariant(QStringLiteral("20 cm")));
}

void ReadingFormsTest::machinePictureIsItsCurve()
{
    QVERIFY(!m_machine->picture().isThere());
    read(*m_machine, {{0, 8.1}, {60, 12.3}, {120, 8.8}});
    QVERIFY(!m_machine->picture().isThere());
    QVERIFY(m_machine->keepNumber(QStringLiteral("stack"), 40).kept());
    const FitPicture p = m_machine->picture();
    QCOMPARE(p.points.size(), 3);
    QCOMPARE(p.pullUnit, QStringLiteral("N·m"));
    QVERIFY(std::abs(p.fit.first().x() - 40 * 9.80665 * 0.081) < 1e-9 && std::abs(p.fit.last().y() - 120) < 1e-9);
    QVERIFY(p.low.first().x() < p.fit.first().x() && p.high.first().x() > p.fit.first().x());
}

void ReadingFormsTest::machineIsMeasuredTheOtherWay()
{
    read(*m_machine, {{0, 8.1}, {60, 12.3}});
    QCOMPARE(m_machine->parts().first, QStringLiteral("angle"));
    m_machine->setByPull(true);
    QCOMPARE(m_machine->parts().second, QStringLiteral("pull"));
    QVERIFY(!m_machine->spec(QStringLiteral("travel:0"))->shown);
    // the other way's numbers are not lost by a look
    m_machine->setByPull(false);
    QVERIFY(std::abs(*m_machine->spec(QStringLiteral("radius:1"))->shown - 12.3) < 1e-9);
}

void ReadingFormsTest::kitListSaysWhatTheyComeTo()
{
    MachineMeasurement machine;
    machine.stack = kilograms(40);
    for (const auto& [radians, radius] : {std::pair{0.0, 0.1}, {1.0, 0.12}}) {
        MachineReading& r = machine.readings.emplace_back();
        r.angle = Angle{radians};
        r.radius = metres(radius);
    }
    Desk& desk = m_desk->desk();
    desk.keepItem(samples::item(RecordId{}, "Aid", samples::aid(), false));
    desk.keepItem(samples::item(RecordId{}, "Curl", machine, false));
    desk.keepItem(samples::item(RecordId{}, "New aid", AidMeasurement{{{kilograms(20), metres(0.1)}}}, false));
    desk.keepItem(samples::item(RecordId{}, "Copied aid", AidMeasurement{}, false));
    KitView view;
    view.setDesk(m_desk);
    const auto* things = view.things();
    const auto row = [things](const char* name) {
        int at = 0;
        while (at < things->rowCount() && formcheck::shown(*things, at, "what").toString() != QLatin1String(name))
            ++at;
        return at;
    };
    QCOMPARE(formcheck::shown(*things, row("Aid"), "how").toString(), QStringLiteral("helps 63 ± 10 kg at the chest"));
    QCOMPARE(formcheck::shown(*things, row("Aid"), "usable"), QVariant(true));
    QCOMPARE(formcheck::shown(*things, row("Aid"), "free").toString(), QStringLiteral("free"));
    QCOMPARE(formcheck::shown(*things, row("Curl"), "how").toString(), QStringLiteral("up to 47.1 ± 1.9 N·m at 57.3°, stack 40 kg"));
    // it stands by itself: tapping it measures it again
    QCOMPARE(formcheck::shown(*things, row("Curl"), "usable"), QVariant(false));
    QVERIFY(formcheck::shown(*things, row("New aid"), "how").toString().contains("two heights"));
    QCOMPARE(formcheck::shown(*things, row("Copied aid"), "how").toString(), QStringLiteral("not measured yet"));
    HangEditor hang;
    hang.setDeskService(m_desk);
    QCOMPARE(hang.hang(formcheck::shown(*things, row("Curl"), "itemId").toString()), -1);
}

void ReadingFormsTest::aidWornInASetUp()
{
    Desk& desk = m_desk->desk();
    desk.setMarks(samples::marks(0.65, 1.0));
    desk.setBar(samples::bar(100));
    const RecordId id = desk.keepItem(samples::item(RecordId{}, "Aid", samples::aid(), false));
    HangEditor hang;
    hang.setDeskService(m_desk);
    QCOMPARE(hang.hang(QString::fromStdString(id.hex())), 0);
    QCOMPARE(hang.kind(), QStringLiteral("aid"));
    QCOMPARE(hang.specs().size(), std::size_t(1));
    SetupView view;
    view.setDesk(m_desk);
    QVERIFY2(view.answer().title.contains("at the bottom") && view.answer().title.contains("100"), qPrintable(view.answer().title));
    QCOMPARE(view.answer().bandName, QStringLiteral("aid"));
    QCOMPARE(formcheck::shown(*view.hanging(), 0, "how").toString(), QStringLiteral("worn, the chest at her bottom mark"));
    QCOMPARE(formcheck::shown(*view.hanging(), 0, "leftPiece").toString(), QString());
    QCOMPARE(view.answer().state, QStringLiteral("NOT READY"));
    // she is told what she holds without it, and it stays until it was looked over
    const QStringList points = formcheck::shown(*view.cautions(), 0, "points").toStringList();
    QVERIFY2(points.first().contains("tears") && points.first().contains("100 kg"), qPrintable(points.first()));
    view.lookOver(formcheck::shown(*view.cautions(), 0, "code").toInt());
    QCOMPARE(view.answer().state, QStringLiteral("READY"));
    // the chest 5 cm over the bottom mark: below it nothing was read, and it is said
    QVERIFY(hang.keepNumber(QStringLiteral("chest"), 70).kept());
    QVERIFY(!hang.keepNumber(QStringLiteral("anchor"), 70).kept());
    QCOMPARE(view.answer().state, QStringLiteral("NOT READY"));
    QCOMPARE(formcheck::shown(*view.notices(), 0, "head").toString(), QStringLiteral("Bench aid not measured past 70 cm"));
    QCOMPARE(formcheck::shown(*view.hanging(), 0, "how").toString(), QStringLiteral("worn, the chest at 70 cm"));
    QVERIFY(hang.canClear(QStringLiteral("chest")) && hang.clearNumber(QStringLiteral("chest")));
    QCOMPARE(formcheck::shown(*view.hanging(), 0, "how").toString(), QStringLiteral("worn, the chest at her bottom mark"));
    QVERIFY(view.elevation().isEmpty());
}

void ReadingFormsTest::whatEachMeasuringWas()
{
    QCOMPARE(saidtexts::measured(samples::aid()), QStringLiteral("5 heights"));
    MachineMeasurement machine;
    machine.readings.emplace_back().angle = Angle{1};
    machine.readings.back().radius = metres(0.1);
    QCOMPARE(saidtexts::measured(machine), QStringLiteral("1 angle, by its radius"));
    machine.by = MachineMeasuring::Pull;
    QCOMPARE(saidtexts::measured(machine), QStringLiteral("0 places, by its pull"));
}

QTEST_GUILESS_MAIN(ReadingFormsTest)
#include "test_readingforms.moc"
