// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/probe/line.h"

#include <QProcess>
#include <cmath>
#include <limits>
#include <sstream>

using namespace steelyard::probe;

namespace {

const QByteArray torque = R"({"fn": "cam_torque", "in": {"stack_kg": 50, "radius_m": 0.1}})";
const QByteArray torqueAnswer = R"({"out": {"torque_nm": 49.033250000000002}})";

QByteArray streamed(const QByteArray& text)
{
    std::istringstream in(text.toStdString());
    std::ostringstream out;
    answerAll(in, out);
    return QByteArray::fromStdString(out.str());
}

}

class TestStream : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void lineEnds_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<int>("answers");
        QTest::newRow("nothing") << QByteArray() << 0;
        QTest::newRow("empty lines") << QByteArray("\n\n\r\n  \t\n") << 0;
        QTest::newRow("one line") << torque + "\n" << 1;
        QTest::newRow("the last line without its end") << torque + "\n" + torque << 2;
        QTest::newRow("carriage returns") << torque + "\r\n\r\n" + torque + "\r\n" << 2;
        QTest::newRow("empty lines between") << "\n" + torque + "\n\n\n" + torque + "\n\n" << 2;
        QTest::newRow("blanks around") << "  \t" + torque + "  \n" << 1;
    }
    void lineEnds()
    {
        QFETCH(QByteArray, text);
        QFETCH(int, answers);
        QCOMPARE(streamed(text), (torqueAnswer + "\n").repeated(answers));
    }

    void afterABadLineTheNextIsAnswered()
    {
        const QByteArray given = streamed("{\n" + torque + "\nnull\n" + torque + "\n");
        const auto lines = given.split('\n');
        QCOMPARE(lines.size(), 5);
        QVERIFY(lines[0].startsWith("{\"error\"") && lines[2].startsWith("{\"error\""));
        QCOMPARE(lines[1], torqueAnswer);
        QCOMPARE(lines[3], torqueAnswer);
    }

    void zeroBytesDoNotEndALine()
    {
        const QByteArray zero(1, '\0');
        QCOMPARE(streamed(torque + zero + "more\n" + torque + "\n"), "{\"error\": \"not JSON: a zero byte\"}\n" + torqueAnswer + "\n");
        QCOMPARE(streamed(zero + "\n"), QByteArray("{\"error\": \"not JSON: a zero byte\"}\n"));
    }

    void tooLongALineIsRefusedOnce()
    {
        const QByteArray tooLong = "{\"fn\": \"" + QByteArray(static_cast<int>(longestLine), 'x') + "\"}\n";
        QCOMPARE(streamed(tooLong + torque), "{\"error\": \"a line has more than 8000000 bytes\"}\n" + torqueAnswer + "\n");
    }

    void manyEntriesAreRefused()
    {
        QByteArray list("0");
        list += QByteArray(",0").repeated(100'000);
        const QByteArray line = "{\"fn\": \"fit_polynomial\", \"in\": {\"x\": [" + list + "], \"y\": [1], \"degree\": 1, \"through_origin\": false}}";
        QCOMPARE(streamed(line), QByteArray("{\"error\": \"fit_polynomial: x has more than 100000 entries\"}\n"));
    }

    void deepNestingIsRefusedWithoutFallingInto()
    {
        for (const char* open : {"[", "{\"a\":"})
            QCOMPARE(streamed(QByteArray(open).repeated(500'000)), QByteArray("{\"error\": \"nested too deeply\"}\n"));
    }

    void foreignBytesComeBackReadable()
    {
        QVERIFY(streamed("{\"fn\": \"\xff\xfe\", \"in\": {}}").startsWith("{\"error\": \"not JSON"));
        const QByteArray name = "{\"fn\": \"" + QByteArray("\xc3\xa4").repeated(200) + "\\n\\u0000\", \"in\": {}}";
        const QByteArray given = streamed(name);
        QCOMPARE(given.count('\n'), 1);
        QVERIFY(nlohmann::json::accept(given.toStdString()));
    }

    void numbersHaveSeventeenDigits_data()
    {
        QTest::addColumn<double>("number");
        QTest::addColumn<QString>("text");
        QTest::newRow("a tenth") << 0.1 << "0.10000000000000001";
        QTest::newRow("whole") << 5.0 << "5";
        QTest::newRow("a third") << 1.0 / 3 << "0.33333333333333331";
        QTest::newRow("large") << 1e20 << "1e+20";
        QTest::newRow("nought without a sign") << -0.0 << "0";
        QTest::newRow("smallest") << std::numeric_limits<double>::denorm_min() << "4.9406564584124654e-324";
    }
    void numbersHaveSeventeenDigits()
    {
        QFETCH(double, number);
        QFETCH(QString, text);
        QCOMPARE(QString::fromStdString(written(number)), text);
        QCOMPARE(text.toDouble(), number);
    }

    void whatJsonCannotSayIsRefused()
    {
        for (const double number : {std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
            bool refused = false;
            try {
                refused = written({{"a", {1.0, number}}}).empty();
            } catch (const Refused& r) {
                refused = r.why.find("out of range") == 0;
            }
            QVERIFY(refused);
        }
    }

    /// The program itself, fed through its pipes.
    void theProgramAnswersAndEndsWell()
    {
        QProcess probe;
        probe.start(QStringLiteral(PROBE_PROGRAM), {});
        QVERIFY(probe.waitForStarted());
        probe.write(torque + "\r\n\n{}\n" + torque);
        probe.closeWriteChannel();
        QVERIFY(probe.waitForFinished());
        QCOMPARE(probe.exitCode(), 0);
        QCOMPARE(probe.readAllStandardOutput(), torqueAnswer + "\n{\"error\": \"fn is missing\"}\n" + torqueAnswer + "\n");
        QCOMPARE(probe.readAllStandardError(), QByteArray());
    }
};

QTEST_GUILESS_MAIN(TestStream)
#include "test_stream.moc"
