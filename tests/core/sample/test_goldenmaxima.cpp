// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/sample/keepseason.h"
#include "core/work/strength/standing.h"
#include "tests/core/sample/goldencells.h"
#include "tests/core/sample/marrowhill.h"
#include "tests/core/work/memorykeeper.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#endif

using namespace steelyard;

/// How strong the people of the sample season are, and a second opinion that worked it out from the files: to 1e-8 of each number.
class GoldenMaximaTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void agreeWithASecondOpinion_data();
    void agreeWithASecondOpinion();
    void nobodyElseIsThere();

private:
    keeping::Device m_device;
    std::size_t m_rowCount = 0;
};

void GoldenMaximaTest::initTestCase()
{
    m_device.today = marrowhill::today;
    const auto trouble = sample::keepSeason(m_device.keeping, marrowhill::season(), {[this](std::chrono::sys_days day) { m_device.today = day; }, [] {}});
    QVERIFY2(!trouble, trouble ? trouble->what.c_str() : "");
    m_device.today = marrowhill::today;
}

void GoldenMaximaTest::agreeWithASecondOpinion_data()
{
    QTest::addColumn<QStringList>("cells");
    const auto lines = goldenCells(QStringLiteral(GOLDEN_FILE));
    QVERIFY(!lines.empty());
    m_rowCount = 0;
    for (const QStringList& cells : lines) {
        QTest::newRow(qPrintable(cells.mid(0, 2).join(QLatin1Char(' ')))) << cells;
        ++m_rowCount;
    }
}

void GoldenMaximaTest::agreeWithASecondOpinion()
{
    QFETCH(QStringList, cells);
    QCOMPARE(cells.size(), 10);
    const auto people = m_device.book.athletes();
    const auto who = std::find_if(people.begin(), people.end(), [&](const Athlete* one) { return one->name == cells[0].toStdString(); });
    const auto lifts = shippedLifts();
    const auto lift = std::find_if(lifts.begin(), lifts.end(), [&](const Lift& one) { return one.term == cells[1].toStdString(); });
    QVERIFY(who != people.end() && lift != lifts.end());
    const LiftStanding standing = standingOn(m_device.book, (*who)->id, lift->id, marrowhill::today);
    QCOMPARE(standing.maximum.has_value(), !cells[2].isEmpty());
    if (!standing.maximum)
        return;
    QCOMPARE((marrowhill::today - standing.maximum->day).count(), cells[2].toLong());
    const OneRepMax& max = standing.maximum->max;
    const auto near = [&](double value, int cell) { return !cells[cell].isEmpty() && std::abs(value - cells[cell].toDouble()) <= 1e-8 * std::abs(value); };
    QVERIFY(near(inKilograms(max.lowest.value), 3) && near(inKilograms(max.middle.value), 4) && near(inKilograms(max.highest.value), 5) && near(inKilograms(max.middle.u), 6));
    QCOMPARE(standing.byMass.has_value(), !cells[7].isEmpty());
    if (standing.byMass)
        QVERIFY(near(standing.byMass->ratio, 7) && near(standing.byMass->uRatio, 8) && near(standing.byShape->ratio, 9));
}

void GoldenMaximaTest::nobodyElseIsThere()
{
    std::size_t count = 0;
    for (const Athlete* one : m_device.book.athletes())
        count += standingOn(m_device.book, one->id, marrowhill::today).size();
    QCOMPARE(count, m_rowCount);
    QVERIFY(count > 0);
}

QTEST_APPLESS_MAIN(GoldenMaximaTest)
#include "test_goldenmaxima.moc"
