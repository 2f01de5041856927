// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/strength/onerepmax.h"
#include "core/strength/publishedloads.h"
#include "tests/published/rows.h"

#include <algorithm>

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

double of100(OneRmFormula formula, int reps) { return oneRepMaxBy(formula, kilograms(100), reps)->si(); }

/// At 1, 5, 8 and 10 repetitions, as the rows ask.
Account::Compute at1And5And8And10(OneRmFormula formula)
{
    return [formula](const Row& r) {
        Numbers out;
        for (const int reps : {1, 5, 8, 10})
            out += oneRepMaxBy(formula, kilograms(given(r, "w")), reps)->si();
        return out;
    };
}

}

class TestPublishedStrength : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedStrength()
    {
        m_account.computes({"RM03"}, at1And5And8And10(OneRmFormula::Brzycki));
        m_account.computes({"RM05"}, at1And5And8And10(OneRmFormula::Lombardi));
        m_account.standsAside({"RM01", "RM04", "RM07"}, "one repetition returns the load, not the formula's number; the others stand in the table of formulas");
        m_account.standsAside({"RM02"}, "the engine takes 36/(37 − r), which differs in the fourth digit");
        m_account.standsAside({"RM09"}, "written to fewer digits than its tolerance; that the two are one at ten is tested beside the formulas");
        m_account.standsAside({"RM10", "RM11"}, "fitted to one group and lift: not in the engine");
        m_account.standsAside({"RM12", "RM13"}, "a chart: held against the range of the formulas");
        m_account.standsAside({"RM14", "RM15", "RM16", "RM17"}, "about lifters and how well they judge");
        m_account.standsAside({"ST01", "ST03", "ST04", "ST05", "ST06"}, "about groups: the engine ships no norms");
    }

private Q_SLOTS:
    /// The table has every formula to six places from one repetition to fifteen; the engine answers within each one's reach.
    void formulas_data()
    {
        QTest::addColumn<QString>("column");
        QTest::addColumn<int>("formula");
        const auto row = [](const char* column, OneRmFormula formula) { QTest::newRow(column) << column << static_cast<int>(formula); };
        row("Epley", OneRmFormula::Epley);
        row("Brzycki36", OneRmFormula::Brzycki);
        row("Lander", OneRmFormula::Lander);
        row("Lombardi", OneRmFormula::Lombardi);
        row("Mayhew", OneRmFormula::Mayhew);
        row("OConner", OneRmFormula::OConner);
        row("Wathan", OneRmFormula::Wathan);
    }
    void formulas()
    {
        QFETCH(QString, column);
        QFETCH(int, formula);
        const auto table = columnsOf("data/onerm_formula_outputs.csv");
        const auto& expected = table[column];
        QCOMPARE(expected.size(), 15u);
        for (int reps = 1; reps <= 15; ++reps) {
            const auto max = oneRepMaxBy(static_cast<OneRmFormula>(formula), kilograms(100), reps);
            QCOMPARE(max.ok(), reps <= mostReps(static_cast<OneRmFormula>(formula)));
            if (max)
                QVERIFY2(std::abs(max->si() - (reps == 1 ? 100 : expected[static_cast<std::size_t>(reps - 1)])) <= 5e-7, qPrintable(QStringLiteral("%1 at %2: %3 [formulas as quoted; derived]").arg(column).arg(reps).arg(max->si(), 0, 'g', 12)));
        }
    }

    /// NSCA training load chart, Essentials of Strength Training and Conditioning, read in secondary copies: what it gives for a number of
    /// repetitions lies between the least and the most of the formulas.
    void chartLiesInTheRange()
    {
        auto chart = columnsOf("data/nsca_percent_1rm_chart.csv");
        int compared = 0;
        for (std::size_t i = 0; i < chart["max_reps"].size(); ++i) {
            const int reps = static_cast<int>(chart["max_reps"][i]);
            const double max = 100 / chart["percent_1RM"][i] * 100;
            if (reps > 10)
                continue;
            std::vector<double> formulas;
            for (const OneRmFormula f : allOneRmFormulas)
                formulas.push_back(of100(f, reps));
            QVERIFY2(max >= *std::min_element(formulas.begin(), formulas.end()) - 1e-9 && max <= *std::max_element(formulas.begin(), formulas.end()) + 1e-9, qPrintable(QString::number(reps)));
            ++compared;
        }
        QCOMPARE(compared, 10);
    }

    /// The loads that the app shows as context, number for number as the rows have them.
    void publishedLoads_data()
    {
        QTest::addColumn<int>("index");
        QTest::addColumn<QString>("text");
        QTest::addColumn<QVector<double>>("numbers");
        const auto eccentric = rowsOf("data/resistance.csv"), loads = rowsOf("data/legcheck.csv");
        const auto rowOf = [](const QVector<Row>& rows, const char* id) { return *std::find_if(rows.begin(), rows.end(), [&](const Row& r) { return r.id == QString(id); }); };
        QTest::newRow("Doan 2002") << 0 << rowOf(eccentric, "AEL-01").expected << QVector{105.0, 100.0};
        QTest::newRow("Ojasto & Häkkinen 2009") << 1 << rowOf(eccentric, "AEL-03").inputs << QVector{11.0, 70.0, 80.0, 90.0, 100.0, 70.0, 4.0, 10.0, 2.0};
        QTest::newRow("Walker 2016") << 2 << rowOf(eccentric, "AEL-06").inputs << QVector{40.0, 3.0, 6.0, 3.0, 10.0, 10.0};
        QTest::newRow("Taber 2021") << 3 << rowOf(eccentric, "AEL-05").inputs << QVector{10.0, 1.0, 124.3, 100.0, 110.0, 30.0, 80.0, 10.0};
        QTest::newRow("Merrigan & Jones 2021, 65") << 4 << rowOf(loads, "LO04").inputs.section(';', 0, 0) << QVector{65.0, 3.0, 5.0, 120.0, 65.0};
        QTest::newRow("Merrigan & Jones 2021, 80") << 5 << rowOf(loads, "LO04").inputs.section(';', 1, 1) << QVector{80.0, 3.0, 3.0, 120.0, 80.0, 1.0};
    }
    void publishedLoads()
    {
        QFETCH(int, index);
        QFETCH(QString, text);
        QFETCH(QVector<double>, numbers);
        QCOMPARE(allNumbersIn(text), numbers);
        const PublishedEccentric& load = publishedEccentrics()[static_cast<std::size_t>(index)];
        const auto has = [&](double number) { return numbers.contains(number); };
        const double ofConcentric = load.eccentricBase == PercentBase::ConcentricLoad ? 100 : 0;
        QVERIFY(has(load.eccentric.leastPercent - ofConcentric) && has(load.eccentric.mostPercent - ofConcentric));
        QVERIFY(!load.concentric || (has(load.concentric->leastPercent) && has(load.concentric->mostPercent)));
        const auto scheme = allNumbersIn(QString::fromUtf8(load.scheme.data(), static_cast<int>(load.scheme.size())));
        QVERIFY(std::all_of(scheme.begin(), scheme.end(), has));
    }

private:
    Account m_account{"data/legcheck.csv", {"7 1RM", "8 strength level"}};
};

QTEST_APPLESS_MAIN(TestPublishedStrength)
#include "test_strength.moc"
