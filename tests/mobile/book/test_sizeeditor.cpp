// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/putright/sizeeditor.h"
#include "core/work/keeping/keepvenue.h"
#include "mobile/editors/numberpad.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/putright/sizesview.h"

#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;
using keeping::day;

/// Body mass and height by day: looked back at, put right, taken out, with what was said at first still to be read.
class SizeEditorTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void listedTheLastFirst();
    void nothingToPutRightAtFirst();
    void valuePutRight();
    void dayPutRight();
    void aDayThatCannotBe();
    void nothingLeft();
    void waitsAsADraft();
    void notKept();
    void inPounds();
    void takenOut();
    void ages_data();
    void ages();

private:
    [[nodiscard]] const Athlete& ana() const { return *m_house->book.book().athletes().front(); }
    void key(FieldEditor* form, const char* which, double shown) { QVERIFY(form->keepNumber(QLatin1String(which), shown).kept()); }

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<SizesView> m_list;
    std::unique_ptr<SizeEditor> m_form;
};

void SizeEditorTest::init()
{
    m_form.reset();
    m_list.reset();
    m_house = std::make_unique<StandInHouse>();
    people::fill(m_house->book, 1);
    const auto keep = [this](std::chrono::sys_days when, double kg, std::optional<Length> height) {
        keepBodySize(m_house->book.keeping(), ana().id, {{}, when, kilograms(kg), height}, [](const Told&) {});
    };
    keep(day(2026, 9, 1), 71.5, metres(1.78));
    keep(day(2026, 10, 30), 72.4, std::nullopt);
    m_house->book.keeping().forget();
    m_list = std::make_unique<SizesView>();
    m_list->setBook(&m_house->book);
    m_list->setAthleteId(QString::fromStdString(ana().id.hex()));
    m_form = std::make_unique<SizeEditor>();
    m_form->setDeskService(&m_house->desk);
    m_form->setBook(&m_house->book);
    m_form->setAthleteId(m_list->athleteId());
    m_form->setSizeId(QString::fromStdString(ana().sizes.back().id.hex()));
}

void SizeEditorTest::listedTheLastFirst()
{
    const auto* rows = dynamic_cast<RowList<DatedRow>*>(m_list->sizes());
    QCOMPARE(rows->rowCount(), 2);
    QCOMPARE(rows->rows()[0].label, QStringLiteral("30 Oct"));
    QCOMPARE(rows->rows()[0].value, QStringLiteral("72.4 kg"));
    QVERIFY(rows->rows()[0].hint.isEmpty());
    QCOMPARE(rows->rows()[1].value, QStringLiteral("71.5 kg · 178 cm"));
    QCOMPARE(m_list->name(), QStringLiteral("Ana M."));
    m_list->setAthleteId({});
    QVERIFY(m_list->isEmpty());
}

void SizeEditorTest::nothingToPutRightAtFirst()
{
    QVERIFY(!m_form->canKeep() && !m_form->isDrafted() && m_form->said().isEmpty());
    QCOMPARE(m_form->stands(), QStringLiteral("72.4 kg, 30 Oct"));
    QCOMPARE(m_form->day()->spec(QStringLiteral("month"))->shown, std::optional(10.0));
    key(m_form.get(), "mass", 74.2);
    key(m_form.get(), "mass", 72.4);
    QVERIFY2(!m_form->isDrafted(), "typed back to what it was");
    QVERIFY(!m_form->keepNumber(QStringLiteral("shoe"), 42).kept());
    m_form->setSizeId({});
    QVERIFY(m_form->specs().empty() && m_form->day()->specs().empty() && !m_form->canKeep());
}

void SizeEditorTest::valuePutRight()
{
    key(m_form.get(), "mass", 74.2);
    key(m_form.get(), "height", 178);
    QVERIFY(m_form->canKeep());
    QSignalSpy kept(m_form.get(), &SizeEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 1);
    QVERIFY(!m_form->isDrafted());
    QVERIFY(ana().sizes.back().mass == kilograms(74.2) && ana().sizes.back().height == metres(1.78));
    QCOMPARE(ana().sizes.size(), std::size_t(2));
    // the keeper's own clock stands at 2024-10-04
    QCOMPARE(m_form->said(), QStringLiteral("72.4 kg at first; put right on 4 Oct 2024"));
    // as a page does that comes back
    m_list->refresh();
    QCOMPARE(dynamic_cast<RowList<DatedRow>*>(m_list->sizes())->rows()[0].hint, m_form->said());
    m_house->book.undo();
    QVERIFY(ana().sizes.back().mass == kilograms(72.4) && !ana().sizes.back().height);
    QVERIFY(m_form->said().isEmpty());
}

void SizeEditorTest::dayPutRight()
{
    key(m_form->day(), "day", 31);
    key(m_form->day(), "month", 8);
    QVERIFY(m_form->canKeep());
    m_form->keep();
    QVERIFY(ana().sizes.front().day == day(2026, 8, 31));
    QCOMPARE(m_form->said(), QStringLiteral("72.4 kg on 30 Oct at first; put right on 4 Oct 2024"));
    QVERIFY(!m_form->day()->keepNumber(QStringLiteral("hour"), 3).kept());
}

void SizeEditorTest::aDayThatCannotBe()
{
    key(m_form->day(), "month", 2);
    QVERIFY(!m_form->trouble().isEmpty() && !m_form->canKeep());
    key(m_form->day(), "month", 12);
    QCOMPARE(m_form->trouble(), QStringLiteral("That day lies ahead."));
    m_form->keep();
    QVERIFY(ana().sizes.back().day == day(2026, 10, 30));
    key(m_form->day(), "year", 2025);
    QVERIFY(m_form->trouble().isEmpty() && m_form->canKeep());
}

void SizeEditorTest::nothingLeft()
{
    QVERIFY(m_form->canClear(QStringLiteral("mass")) && !m_form->canClear(QStringLiteral("day")));
    QVERIFY(m_form->clearNumber(QStringLiteral("mass")));
    QVERIFY(!m_form->trouble().isEmpty() && !m_form->canKeep());
    key(m_form.get(), "height", 178);
    QVERIFY(m_form->canKeep());
    m_form->keep();
    QVERIFY(!ana().sizes.back().mass && ana().sizes.back().height);
}

void SizeEditorTest::waitsAsADraft()
{
    key(m_form.get(), "mass", 74.2);
    key(m_form->day(), "day", 29);
    m_list->refresh();
    QCOMPARE(dynamic_cast<RowList<DatedRow>*>(m_list->sizes())->rows()[0].hint, QStringLiteral("changes not kept"));
    SizeEditor other;
    other.setDeskService(&m_house->desk);
    other.setBook(&m_house->book);
    other.setAthleteId(m_form->athleteId());
    other.setSizeId(QString::fromStdString(ana().sizes.front().id.hex()));
    QVERIFY2(!other.isDrafted(), "never on another one");
    other.setSizeId(m_form->sizeId());
    QVERIFY(other.isDrafted());
    QCOMPARE(other.spec(QStringLiteral("mass"))->text, QStringLiteral("74.2"));
    QCOMPARE(other.day()->spec(QStringLiteral("day"))->shown, std::optional(29.0));
    other.throwDraft();
    QVERIFY(!m_form->isDrafted());
}

void SizeEditorTest::notKept()
{
    key(m_form.get(), "mass", 74.2);
    m_house->keeper.refusal = vault::Refusal{vault::Code::WriteFailedTryAgain};
    QSignalSpy kept(m_form.get(), &SizeEditor::kept);
    m_form->keep();
    QCOMPARE(kept.count(), 0);
    QVERIFY(!m_house->book.head().isEmpty() && m_form->isDrafted());
    QVERIFY(ana().sizes.back().mass == kilograms(72.4));
}

void SizeEditorTest::inPounds()
{
    keepSettings(m_house->book.keeping(), {MassUnit::Pound, LengthUnit::Inch}, [](const Told&) {});
    const auto* rows = dynamic_cast<RowList<DatedRow>*>(m_list->sizes());
    // 72.4 kg over 0.45359237
    QVERIFY(rows->rows()[0].value.startsWith(QLatin1String("159.6 lb")));
    NumberPad pad;
    pad.setEditor(m_form.get());
    pad.setKey(QStringLiteral("mass"));
    for (const char* digit : {"1", "6", "0", ".", "5"})
        pad.press(QLatin1String(digit));
    QVERIFY(pad.keep());
    m_form->keep();
    QCOMPARE(rows->rows()[0].value, QStringLiteral("160.5 lb"));
    QVERIFY(ana().sizes.back().mass->typed() && ana().sizes.back().mass->typed()->decimal.text() == "160.5");
    keepSettings(m_house->book.keeping(), {}, [](const Told&) {});
    QVERIFY(rows->rows()[0].value.endsWith(QLatin1String(" kg")));
}

void SizeEditorTest::takenOut()
{
    key(m_form.get(), "mass", 74.2);
    QSignalSpy kept(m_form.get(), &SizeEditor::kept);
    m_form->takeOut();
    QCOMPARE(kept.count(), 1);
    QCOMPARE(ana().sizes.size(), std::size_t(1));
    QCOMPARE(m_list->sizes()->rowCount(), 1);
    m_form->takeOut();
    QCOMPARE(kept.count(), 1);
    m_house->book.undo();
    QVERIFY(ana().sizes.back().mass == kilograms(72.4));
}

void SizeEditorTest::ages_data()
{
    QTest::addColumn<int>("days");
    QTest::addColumn<QString>("said");
    const auto row = [](int days, const char* said) { QTest::addRow("%d", days) << days << QString::fromLatin1(said); };
    row(-1, "still to come");
    row(0, "today");
    row(1, "yesterday");
    row(2, "2 days old");
    row(20, "20 days old");
    row(21, "3 weeks old");
    row(89, "12 weeks old");
    row(92, "3 months old");
    row(729, "23 months old");
    row(730, "2 years old");
}

void SizeEditorTest::ages()
{
    QFETCH(int, days);
    QFETCH(QString, said);
    QCOMPARE(saidtexts::age(day(2026, 11, 2) - std::chrono::days(days), day(2026, 11, 2)), said);
}

QTEST_GUILESS_MAIN(SizeEditorTest)
#include "test_sizeeditor.moc"
