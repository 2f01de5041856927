// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/editors/chaineditor.h"

#include "core/work/keeping/keepvenue.h"
#include "tests/core/work/samples.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What the form of a kept thing does with the book: where it belongs, and how it comes there.
class ItemBookTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void noVenueToMoveTo();
    void movedToAVenue();
    void aMoveHalfMadeWaits();
    void aNewOneBelongsWhereItIsMeasured();

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
    QVERIFY(m_form->venues().isEmpty());
    QCOMPARE(m_form->venue(), 0);
}

void ItemBookTest::movedToAVenue()
{
    QSignalSpy changed(m_form.get(), &FieldEditor::changed);
    const RecordId hall = venue("Hall"), pitch = venue("Pitch");
    QVERIFY(changed.count() > 0);
    QCOMPARE(m_form->venues(), (QStringList{QStringLiteral("no venue"), QStringLiteral("Hall"), QStringLiteral("Pitch")}));
    m_form->setVenue(2);
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
    QCOMPARE(m_form->venue(), 2);
    m_form->setVenue(1);
    m_form->keep();
    QVERIFY(chain().venue == hall);
    layKit();
    m_form->setVenue(0);
    m_form->keep();
    QVERIFY(chain().venue.isNone());
    m_house->book.undo();
    QVERIFY(chain().venue == hall);
}

void ItemBookTest::aMoveHalfMadeWaits()
{
    venue("Hall");
    m_form->setVenue(1);
    QVERIFY(chain().venue.isNone());
    m_form->throwDraft();
    QCOMPARE(m_form->venue(), 0);
    // a place that there is not
    m_form->setVenue(7);
    QVERIFY(!m_form->isDrafted());
}

void ItemBookTest::aNewOneBelongsWhereItIsMeasured()
{
    const RecordId hall = venue("Hall");
    m_form->setItemId({});
    QVERIFY(m_form->venues().isEmpty());
    m_form->setProperty("venueId", QString::fromStdString(hall.hex()));
    for (const auto& [key, value] : {std::pair{"length", 150.0}, {"mass", 8.5}, {"scaleStep", 0.1}})
        QVERIFY(m_form->keepNumber(QLatin1String(key), value).kept());
    m_form->keep();
    QCOMPARE(m_house->book.book().kitAt(hall).size(), std::size_t(1));
}

QTEST_GUILESS_MAIN(ItemBookTest)
#include "test_itembook.moc"
