// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/editors/chaineditor.h"

#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "mobile/putright/measurementsview.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What the form of a kept thing does with the book: where it belongs, what was measured on it, and how that is put right.
class ItemBookTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void noVenueToMoveTo();
    void movedToAVenue();
    void aMoveHalfMadeWaits();
    void aNewOneBelongsWhereItIsMeasured();
    void lookedBackAt();
    void aMeasurementPutRight();
    void whatChangesByIt();
    void aMeasurementHalfPutRightWaits();
    void aMeasurementTakenOut();

private:
    [[nodiscard]] const KitItem& chain() const { return m_house->book.book().kit().front()->item; }
    RecordId venue(const char* name)
    {
        RecordId id;
        keepVenue(m_house->book.keeping(), {{}, name, {}}, [&id](const Told& told) { id = told.id; });
        return id;
    }
    void layKit()
    {
        m_house->desk.desk().setKit({chain()});
    }

    void measureAgain();
    void openTheFirst();

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<ChainEditor> m_form;
};

void ItemBookTest::init()
{
    m_form.reset();
    m_house = std::make_unique<StandInHouse>();
    layOut(m_house->book, m_house->desk.desk(), {}, {samples::item(4, "Long chain", samples::weighed())}, samples::setup(20));
    m_form = std::make_unique<ChainEditor>();
    m_form->setDeskService(&m_house->desk);
    m_form->setBook(&m_house->book);
    m_form->setItemId(QString::fromStdString(chain().id.hex()));
}

void ItemBookTest::noVenueToMoveTo()
{
    QVERIFY(m_form->record().venues.isEmpty());
    QCOMPARE(m_form->record().venue, 0);
}

void ItemBookTest::movedToAVenue()
{
    QSignalSpy changed(m_form.get(), &FieldEditor::changed);
    const RecordId hall = venue("Hall"), pitch = venue("Pitch");
    QVERIFY(changed.count() > 0);
    QCOMPARE(m_form->record().venues, (QStringList{QStringLiteral("no venue"), QStringLiteral("Hall"), QStringLiteral("Pitch")}));
    m_form->moveTo(2);
    QVERIFY(m_form->isDrafted() && m_form->canKeep());
    QSignalSpy kept(m_form.get(), &ItemEditor::kept);
    const std::size_t entries = m_house->keeper.entries.size();
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(chain().venue == pitch);
    // moved, not measured anew
    QCOMPARE(m_house->keeper.entries.size(), entries + 1);
    QCOMPARE(m_house->book.book().kit().front()->measurements.size(), std::size_t(1));
    layKit();
    QCOMPARE(m_form->record().venue, 2);
    m_form->moveTo(1);
    m_form->keep();
    QVERIFY(chain().venue == hall);
    layKit();
    m_form->moveTo(0);
    m_form->keep();
    QVERIFY(chain().venue.isNone());
    m_house->book.undo();
    QVERIFY(chain().venue == hall);
}

void ItemBookTest::aMoveHalfMadeWaits()
{
    venue("Hall");
    m_form->moveTo(1);
    QVERIFY(chain().venue.isNone());
    m_form->throwDraft();
    QCOMPARE(m_form->record().venue, 0);
    // a place that there is not
    m_form->moveTo(7);
    QVERIFY(!m_form->isDrafted());
}

void ItemBookTest::aNewOneBelongsWhereItIsMeasured()
{
    const RecordId hall = venue("Hall");
    m_form->setItemId({});
    QVERIFY(m_form->record().venues.isEmpty());
    m_form->setProperty("venueId", QString::fromStdString(hall.hex()));
    for (const auto& [key, value] : {std::pair{"length", 150.0}, {"mass", 8.5}, {"scaleStep", 0.1}})
        QVERIFY(m_form->keepNumber(QLatin1String(key), value).kept());
    m_form->keep();
    QCOMPARE(m_house->book.book().kitAt(hall).size(), std::size_t(1));
}

void ItemBookTest::measureAgain()
{
    KitItem item = chain();
    auto& measured = std::get<ChainMeasurement>(item.measurement);
    measured.mass = kilograms(9.1);
    keepKitItem(m_house->book.keeping(), item, [](const Told&) {});
    m_house->book.keeping().forget();
}

/// The earlier of the two is looked at.
void ItemBookTest::openTheFirst()
{
    m_form->setMeasurementId(QString::fromStdString(m_house->book.book().kit().front()->measurements.back().id.hex()));
}

void ItemBookTest::lookedBackAt()
{
    QCOMPARE(m_form->record().measured, QStringLiteral("today"));
    measureAgain();
    QCOMPARE(m_form->record().measured, QStringLiteral("2, the last today"));
    MeasurementsView list;
    list.setBook(&m_house->book);
    list.setItemId(m_form->itemId());
    QCOMPARE(list.kind(), QStringLiteral("chain"));
    QCOMPARE(list.name(), QStringLiteral("Long chain"));
    const auto& rows = dynamic_cast<RowList<DatedRow>*>(list.measurements())->rows();
    QCOMPARE(rows.size(), std::size_t(2));
    QCOMPARE(rows[0].label, QStringLiteral("2 Nov, today"));
    QCOMPARE(rows[0].value, QStringLiteral("9.1 kg and 150 cm, weighed"));
    QCOMPARE(rows[0].hint, QStringLiteral("this one counts"));
    QVERIFY(rows[1].hint.isEmpty());
    list.setItemId({});
    QCOMPARE(list.measurements()->rowCount(), 0);
}

void ItemBookTest::aMeasurementPutRight()
{
    measureAgain();
    openTheFirst();
    QVERIFY(m_form->record().measured.isEmpty() && m_form->record().venues.isEmpty());
    QVERIFY2(!m_form->canKeep(), "nothing is changed yet");
    QCOMPARE(m_form->spec(QStringLiteral("mass"))->shown, std::optional(8.55));
    QVERIFY(m_form->keepNumber(QStringLiteral("mass"), 8.75).kept());
    QVERIFY(m_form->canKeep());
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("month"), 10).kept());
    QSignalSpy kept(m_form.get(), &ItemEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(!m_form->isDrafted());
    const KitRecord& record = *m_house->book.book().kit().front();
    QCOMPARE(record.measurements.size(), std::size_t(2));
    QVERIFY(std::get<ChainMeasurement>(record.measurements.back().measured).mass == kilograms(8.75));
    QVERIFY(record.measurements.back().day == keeping::day(2026, 10, 2));
    QCOMPARE(m_form->record().said, QStringLiteral("8.55 kg and 150 cm, weighed on 2 Nov at first; put right on 4 Oct 2024"));
    // the name stays, and what hangs is the last one's
    QCOMPARE(QString::fromStdString(record.item.name), QStringLiteral("Long chain"));
    QVERIFY(std::get<ChainMeasurement>(record.item.measurement).mass == kilograms(9.1));
    m_house->book.undo();
    QVERIFY(m_form->record().said.isEmpty());
}

void ItemBookTest::whatChangesByIt()
{
    people::fill(m_house->book, 1);
    const RecordId ana = m_house->book.book().athletes().front()->id;
    keepSetup(m_house->book.keeping(), {{}, ana, LiftId{1}, samples::setup(60, {{chain().id, HungOn::BothSides, samples::chainOn(0.8)}}), {}}, [](const Told&) {});
    openTheFirst();
    QVERIFY(m_form->record().changes.isEmpty());
    QVERIFY(m_form->keepNumber(QStringLiteral("mass"), 8.75).kept());
    QCOMPARE(m_form->record().changes, QStringLiteral("Kept set-ups that pull otherwise by it: Ana M., back squat."));
    m_form->throwDraft();
    measureAgain();
    QVERIFY(m_form->keepNumber(QStringLiteral("mass"), 8.75).kept());
    QCOMPARE(m_form->record().changes, QStringLiteral("No kept set-up pulls otherwise by it."));
}

void ItemBookTest::aMeasurementHalfPutRightWaits()
{
    openTheFirst();
    const QString measurement = m_form->measurementId();
    QVERIFY(m_form->keepNumber(QStringLiteral("mass"), 8.75).kept());
    m_form->setMeasurementId({});
    QVERIFY2(!m_form->isDrafted(), "never on the thing itself");
    m_form->setMeasurementId(measurement);
    QVERIFY(m_form->isDrafted());
    m_form->throwDraft();
    QVERIFY(!m_form->isDrafted());
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("day"), 1).kept());
    QVERIFY(m_form->isDrafted() && m_form->canKeep());
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("day"), 3).kept());
    QVERIFY(!m_form->record().trouble.isEmpty() && !m_form->canKeep());
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("month"), 2).kept());
    QVERIFY(m_form->day()->keepNumber(QStringLiteral("day"), 30).kept());
    QVERIFY(!m_form->record().trouble.isEmpty() && !m_form->canKeep());
    m_form->throwDraft();
    QVERIFY(!m_form->isDrafted() && m_form->record().trouble.isEmpty());
}

void ItemBookTest::aMeasurementTakenOut()
{
    openTheFirst();
    QSignalSpy kept(m_form.get(), &ItemEditor::kept);
    m_form->remove();
    QCOMPARE(kept.count(), 0);
    QVERIFY2(!m_house->book.head().isEmpty(), "the only one");
    m_house->book.hush();
    measureAgain();
    m_form->remove();
    QCOMPARE(kept.count(), 1);
    QCOMPARE(m_house->book.book().kit().front()->measurements.size(), std::size_t(1));
    m_house->book.undo();
    QCOMPARE(m_house->book.book().kit().front()->measurements.size(), std::size_t(2));
}

QTEST_GUILESS_MAIN(ItemBookTest)
#include "test_itembook.moc"
