// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/legcheck/forcefile.h"
#include "core/legcheck/numbertable.h"
#include "tests/core/near.h"

#include <rapidcheck.h>
#include <string>

using namespace steelyard;

namespace {

/// A second at 100 a second; `line` makes each.
template <typename Line>
std::string file(const std::string& head, Line&& line, int count = 100)
{
    std::string text = head;
    for (int i = 0; i < count; ++i) {
        text += line(i);
        text += '\n';
    }
    return text;
}

std::string decimals(double number, char point = '.', int places = 3)
{
    std::string text = QString::number(number, 'f', places).toStdString();
    if (const auto at = text.find('.'); at != std::string::npos)
        text[at] = point;
    return text;
}

std::string timeAndForce(const std::string& head, char separator, char point)
{
    return file(head, [=](int i) { return decimals(i * 0.01, point) + separator + decimals(700 + i, point, 1); });
}

std::string leftAndRight(const std::string& head)
{
    return file(head, [](int i) { return decimals(i * 0.01) + ";" + decimals(300 + i) + ";" + decimals(400); });
}

Error refusalOf(const std::string& text, const ForceFileHints& hints = {})
{
    const auto read = readForceFile(text, hints);
    return read ? Error{Refusal::OutOfRange, "not refused"} : read.error();
}

const ForceFileHints saidSo{hertz(100), ForceUnit::Newton};

}

class TestForceFile : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void onePlate_data()
    {
        QTest::addColumn<QString>("text");
        const auto row = [](const char* name, const std::string& text) { QTest::newRow(name) << QString::fromStdString(text); };
        row("semicolons", timeAndForce("Time [s];Force [N]\n", ';', '.'));
        row("semicolons and decimal commas", timeAndForce("Zeit [s];Kraft [N]\n", ';', ','));
        row("tabs", timeAndForce("Time[s]\tGRF[N]\n", '\t', '.'));
        row("tabs and decimal commas", timeAndForce("Tiempo (s)\tFuerza (N)\n", '\t', ','));
        row("commas", timeAndForce("t_s,F_N\n", ',', '.'));
        row("spaces", timeAndForce("t_s F_N\n", ' ', '.'));
        row("quotes and a byte order mark", timeAndForce("\xEF\xBB\xBF\"Time [s]\";\"Fz [N]\"\n", ';', '.'));
        row("lines about the day above", timeAndForce("Test;CMJ\nDate;2026-03-02\n\nTime [s];Fz [N]\n", ';', '.'));
        row("blank lines at the end", timeAndForce("Time [s];Fz [N]\n", ';', '.') + "\n \r\n\n");
        row("milliseconds and kilonewtons", file("Time [ms];Fz [kN]\n", [](int i) { return decimals(i * 10) + ";" + decimals((700 + i) / 1000.0, '.', 6); }));
        row("horizontal forces beside it", file("Time [s];Fx [N];Fy [N];Fz [N]\n", [](int i) { return decimals(i * 0.01) + ";3;-4;" + decimals(700 + i); }));
        row("a separator at each end", file("Time [s];Fz [N];\n", [](int i) { return decimals(i * 0.01) + ";" + decimals(700 + i) + ";"; }));
        row("units in a line of their own", timeAndForce("Time;Fz\ns;N\n", ';', '.'));
        row("units in brackets in a line of their own", timeAndForce("Time\tFz\n[s]\t[N]\n", '\t', '.'));
        row("speeds of either side beside it", file("Time [s];Speed left [m/s];Fz [N]\n", [](int i) { return decimals(i * 0.01) + ";0.2;" + decimals(700 + i); }));
        row("a heart and a filter above", timeAndForce("Heart rate [Hz];2\nLow-pass filter [Hz];50\nTime [s];Fz [N]\n", ';', '.'));
        row("a count above and a rate", file("Samples;4500\nSampling rate [Hz];100\nFz [N]\n", [](int i) { return decimals(700 + i); }));
        row("a rate above and no times", file("Sampling rate [Hz];100\nFz [N]\n", [](int i) { return decimals(700 + i); }));
    }
    void onePlate()
    {
        QFETCH(QString, text);
        for (const QString& end : {QStringLiteral("\n"), QStringLiteral("\r\n"), QStringLiteral("\r")}) {
            const auto read = readForceFile(QString(text).replace('\n', end).toStdString());
            QVERIFY2(read.ok(), read ? "" : read.error().what.c_str());
            VERIFY_NEAR_SHARE(read->rate.si(), 100, 1e-9);
            QCOMPARE(read->plates.size(), 1u);
            QCOMPARE(read->plates[0].size(), 100u);
            for (int i = 0; i < 100; ++i)
                VERIFY_NEAR(read->plates[0][static_cast<std::size_t>(i)].si(), 700 + i, 1e-9);
            QVERIFY(!read->areSidesKnown);
        }
    }

    void whatTheFileDoesNotSay()
    {
        const std::string bare = file("", [](int i) { return std::to_string(700 + i); }), decimal = file("", [](int i) { return decimals(700 + i, ',', 1); });
        QCOMPARE(refusalOf(bare), (Error{Refusal::UnknownUnit, "unit of force"}));
        QCOMPARE(refusalOf(bare, {std::nullopt, ForceUnit::Newton}), (Error{Refusal::NotThere, "rate"}));
        QCOMPARE(readForceFile(bare, saidSo)->plates[0][5], newtons(705));
        QCOMPARE(readForceFile(bare, {hertz(100), ForceUnit::Kilonewton}).error(), (Error{Refusal::OutOfRange, "sample 1"}));
        // one and a half, or two whole numbers: nobody knows
        QCOMPARE(refusalOf(decimal, saidSo), (Error{Refusal::OutOfRange, "separator"}));
        QVERIFY(readForceFile("Kraft\n" + decimal, saidSo));
        QVERIFY(readForceFile("a jump of the day\n" + bare, saidSo));
        QCOMPARE(refusalOf(timeAndForce("", ';', '.')), (Error{Refusal::UnknownUnit, "unit of force"}));
        const auto read = readForceFile(timeAndForce("", ';', '.'), {std::nullopt, ForceUnit::Newton});
        QVERIFY(read.ok());
        VERIFY_NEAR_SHARE(read->rate.si(), 100, 1e-9);
        QCOMPARE(refusalOf(timeAndForce("Time [s];Force\n", ';', '.')), (Error{Refusal::UnknownUnit, "unit of Force"}));
        QVERIFY(readForceFile(timeAndForce("Time [s];Force\n", ';', '.'), {std::nullopt, ForceUnit::Newton}));
    }

    void unitsThatAreNone()
    {
        // what the file says is not overruled by what is said of it
        for (const char* unit : {"V", "lbf", "kg", "%BW"})
            QCOMPARE(refusalOf(timeAndForce(std::string("Time [s];Force [") + unit + "]\n", ';', '.'), saidSo), (Error{Refusal::UnknownUnit, std::string("unit of Force [") + unit + "]"}));
        QCOMPARE(refusalOf(leftAndRight("Time [s];Left [lbf];Right [lbf]\n"), saidSo), (Error{Refusal::UnknownUnit, "unit of Left [lbf]"}));
        QCOMPARE(refusalOf(timeAndForce("Time [min];Force [N]\n", ';', '.')), (Error{Refusal::UnknownUnit, "unit of Time [min]"}));
    }

    void twoPlates()
    {
        const auto read = readForceFile(leftAndRight("Time [s];Left [N];Right [N]\n")), turned = readForceFile(leftAndRight("Time [s];Right [N];Left [N]\n"));
        QVERIFY(read.ok() && turned.ok() && read->areSidesKnown && turned->areSidesKnown);
        QCOMPARE(read->plates[0][7], newtons(307));
        QCOMPARE(turned->plates[1][7], newtons(307));
        QCOMPARE(read->together().force[7], newtons(707));
        QCOMPARE(turned->plate(0).force[7], newtons(400));
        const auto unnamed = readForceFile(leftAndRight("Time [s];Fz 1 [N];Fz 2 [N]\n"));
        QVERIFY(unnamed.ok() && !unnamed->areSidesKnown);
        QCOMPARE(unnamed->plates.size(), 2u);
        const auto withSum = readForceFile(file("Time [s];Left [N];Right [N];Total [N]\n", [](int i) { return decimals(i * 0.01) + ";300;400;700"; }));
        QVERIFY(withSum.ok());
        QCOMPARE(withSum->plates.size(), 2u);
        QCOMPARE(readForceFile(timeAndForce("Time [s];Total force [N]\n", ';', '.'))->plates.size(), 1u);
        QCOMPARE(refusalOf(file("Fz1 [N];Fz2 [N];Fz3 [N]\n", [](int) { return "1;2;3"; }), saidSo), (Error{Refusal::TooMany, "columns"}));
    }

    void times()
    {
        // 450 a second to the millisecond: rounded, and even
        const auto rounded = readForceFile(file("Time [s];Fz [N]\n", [](int i) { return decimals(i / 450.0) + ";700"; }, 451));
        QVERIFY(rounded.ok());
        VERIFY_NEAR_SHARE(rounded->rate.si(), 450, 1e-3);
        const auto gap = file("Time [s];Fz [N]\n", [](int i) { return decimals(i * 0.01 + (i >= 50 ? 0.05 : 0)) + ";700"; });
        QCOMPARE(refusalOf(gap).code, Refusal::OutOfRange);
        QVERIFY(refusalOf(gap).what.starts_with("line "));
        QCOMPARE(refusalOf(file("Time [s];Fz [N]\n", [](int i) { return decimals((i % 10) * 0.01) + ";700"; })).code, Refusal::OutOfRange);
        QCOMPARE(refusalOf(file("Time [s];Fz [N]\n", [](int) { return "1;700"; })), (Error{Refusal::OutOfRange, "time"}));
        QCOMPARE(refusalOf(timeAndForce("Sampling rate [Hz];200\nTime [s];Fz [N]\n", ';', '.')), (Error{Refusal::NotComparable, "rate"}));
        QCOMPARE(refusalOf(file("Sampling rate;200\nSample rate [Hz];100\nFz [N]\n", [](int) { return "700"; })), (Error{Refusal::NotComparable, "rate"}));
        QCOMPARE(refusalOf(file("Fz [N]\n", [](int) { return "700"; }), {hertz(1), {}}), (Error{Refusal::OutOfRange, "rate"}));
    }

    void spoiltFiles()
    {
        const std::string good = timeAndForce("Time [s];Fz [N]\n", ';', '.');
        QCOMPARE(refusalOf(""), (Error{Refusal::TooFewPoints, "lines"}));
        QCOMPARE(refusalOf("\n\n \n"), (Error{Refusal::TooFewPoints, "lines"}));
        QCOMPARE(refusalOf("Time [s];Fz [N]\n"), (Error{Refusal::TooFewPoints, "lines"}));
        QCOMPARE(refusalOf(std::string("a\0b", 3)), (Error{Refusal::OutOfRange, "text"}));
        const auto withLine = [&](const std::string& line) { return good + line + "\n1.01;801\n"; };
        for (const char* line : {"1.00", "1.00;", "1.00;nan", "1.00;inf", "1.00;7x", "1.00;7;8", "1.00;1e999", "end", "1.00;7,5.5"})
            QCOMPARE(refusalOf(withLine(line)), (Error{Refusal::NotFinite, "line 102"}));
        QCOMPARE(refusalOf(good + "\n1.01;801\n"), (Error{Refusal::NotFinite, "line 102"}));
        QCOMPARE(refusalOf(withLine("1.00;2e5")), (Error{Refusal::OutOfRange, "sample 101"}));
        QCOMPARE(refusalOf("Time [s];Fx [N]\n0;1\n0.01;2\n0.02;3\n"), (Error{Refusal::NotThere, "force"}));
        QCOMPARE(refusalOf("Time [s];Fz [N]\n0;1\n0.01;2\n0.02;3\n"), (Error{Refusal::TooFewPoints, "force"}));
        std::string wide = "0";
        for (int i = 0; i < 70; ++i)
            wide += ";1";
        QCOMPARE(refusalOf(wide + "\n" + wide + "\n"), (Error{Refusal::TooMany, "columns"}));
    }

    /// Whatever stands in a file, it is read or refused, and a refusal names something.
    void anyBytes()
    {
        QVERIFY(rc::check("good files with bytes changed, taken out or put in", [] {
            std::string text = *rc::gen::element(timeAndForce("Time [s];Fz [N]\n", ';', ','), timeAndForce("t_s,F_N\n", ',', '.'), leftAndRight("Time [s];Left [N];Right [kN]\n"));
            for (int i = *rc::gen::inRange(0, 8); i > 0 && !text.empty(); --i) {
                const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
                const char c = *rc::gen::element(',', ';', '.', '\t', ' ', '\n', '"', '-', 'e', '9', '[', '\xFF', '\0');
                switch (*rc::gen::inRange(0, 3)) {
                case 0: text[at] = c; break;
                case 1: text.insert(at, 1, c); break;
                default: text.erase(at, *rc::gen::inRange<std::size_t>(1, 40)); break;
                }
            }
            const auto read = readForceFile(text, *rc::gen::element(ForceFileHints{}, saidSo));
            if (!read) {
                RC_ASSERT(!read.error().what.empty());
                return;
            }
            RC_ASSERT(((read->plates.size() == 1 || read->plates.size() == 2) && read->rate > Frequency{}));
            for (const auto& plate : read->plates)
                RC_ASSERT(plate.size() == read->plates[0].size());
        }));
    }

    void tableKeepsWhatStoodAbove()
    {
        const NumberTable table = *readNumberTable("Somebody;Test\nA;B\n1,5;2\n-2;3e2\n+4;0\n");
        QCOMPARE(table.firstLineNumber, 3u);
        QCOMPARE(table.above.size(), 2u);
        QCOMPARE(table.headings(), (std::vector<std::string>{"A", "B"}));
        QCOMPARE(table.rowsCount(), 3u);
        QCOMPARE(table.columnScores[0], (std::vector<double>{1.5, -2, 4}));
        QCOMPARE(table.columnScores[1], (std::vector<double>{2, 300, 0}));
        QVERIFY(readNumberTable("only one\n1 2\n3 4\n")->headings() == (std::vector<std::string>{"only", "one"}));
        QVERIFY(readNumberTable("a title\n1;2\n")->headings().empty());
    }
};

QTEST_APPLESS_MAIN(TestForceFile)
#include "test_forcefile.moc"
