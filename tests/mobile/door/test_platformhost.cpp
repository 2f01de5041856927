// SPDX-License-Identifier: GPL-3.0-or-later
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

/// A restart is the same process with the same arguments, and nothing of its former self.
class PlatformHostTest : public QObject {
    Q_OBJECT

public:
    explicit PlatformHostTest(QString program) : m_program(std::move(program)) {}

private Q_SLOTS:
    void sameProcessSameArguments();

private:
    QString m_program;
};

void PlatformHostTest::sameProcessSameArguments()
{
    const QTemporaryDir folder;
    QProcess program;
    program.start(m_program, {folder.filePath(QStringLiteral("mark")), QStringLiteral("one two"), QString(), QStringLiteral("--leave-it"), QStringLiteral("ü")});
    QVERIFY(program.waitForFinished());
    QCOMPARE(program.exitStatus(), QProcess::NormalExit);
    QCOMPARE(program.exitCode(), 0);
    const QStringList lines = QString::fromUtf8(program.readAllStandardOutput()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    QCOMPARE(lines.size(), 2);
    QVERIFY(lines[0].startsWith(QStringLiteral("first ")) && lines[1].startsWith(QStringLiteral("second ")));
    // but for what it was told to leave out
    QCOMPARE(lines[0].mid(6).remove(QStringLiteral(" [--leave-it]")), lines[1].mid(7));
    QVERIFY(lines[0].contains(QStringLiteral("--leave-it")));
    QVERIFY(lines[1].endsWith(QStringLiteral(" [one two] [] [ü]")));
}

int main(int argc, char* argv[])
{
    QCoreApplication app(argc, argv);
    PlatformHostTest test(QString::fromLocal8Bit(argv[1]));
    // the program's name is ours, the rest is the framework's
    argv[1] = argv[0];
    return QTest::qExec(&test, argc - 1, argv + 1);
}
#include "test_platformhost.moc"
