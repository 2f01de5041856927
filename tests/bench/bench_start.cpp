// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/verdicts.h"

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QProcessEnvironment>
#include <QRegularExpression>

#include <benchmark/benchmark.h>

#include <chrono>
#include <optional>

namespace {

const char* const appStart = "process start to first page";
const char* const appOverEmpty = "the same over an empty window's";

QString program(const char* name)
{
    return QCoreApplication::applicationDirPath() + QLatin1Char('/') + QLatin1String(name);
}

/// A display of its own to show windows on, as a coach has one: without any, starting skips half of what a window costs.
class Display {
public:
    Display()
    {
        // left alone it starts anew whenever its last window goes, and whoever comes next waits for that as well
        m_server.start(QStringLiteral("Xvfb"), {QStringLiteral("-displayfd"), QStringLiteral("1"), QStringLiteral("-screen"),
                                                QStringLiteral("0"), QStringLiteral("1400x1000x24"), QStringLiteral("-nolisten"),
                                                QStringLiteral("tcp"), QStringLiteral("-noreset")});
        while (m_server.state() != QProcess::NotRunning && !m_server.canReadLine() && m_server.waitForReadyRead(10000)) { }
        m_name = QLatin1Char(':') + QString::fromLatin1(m_server.readLine()).trimmed();
    }
    ~Display()
    {
        m_server.kill();
        m_server.waitForFinished();
    }
    Display(const Display&) = delete;
    Display& operator=(const Display&) = delete;

    [[nodiscard]] bool there() const { return m_name.size() > 1; }
    [[nodiscard]] QProcessEnvironment surroundings() const
    {
        auto all = QProcessEnvironment::systemEnvironment();
        all.insert(QStringLiteral("QT_QPA_PLATFORM"), QStringLiteral("xcb"));
        all.insert(QStringLiteral("DISPLAY"), m_name);
        return all;
    }

private:
    QProcess m_server;
    QString m_name;
};

/// Starts a program that prints a line at its first frame and ends; milliseconds from the call to that line.
std::optional<double> toFirstFrame(const Display& display, const char* name, const QStringList& arguments)
{
    QProcess process;
    process.setProcessEnvironment(display.surroundings());
    const auto start = std::chrono::steady_clock::now();
    process.start(program(name), arguments);
    while (!process.canReadLine()) {
        if (!process.waitForReadyRead(10000))
            return std::nullopt;
    }
    const auto end = std::chrono::steady_clock::now();
    const bool said = process.readLine() == "first frame\n";
    if (!process.waitForFinished(10000) || process.exitCode() != 0 || !said)
        return std::nullopt;
    return std::chrono::duration<double, std::milli>(end - start).count();
}

/// Fresh processes in turn, so that whatever slows the machine slows both.
void startToFirstPage(benchmark::State& state)
{
    std::vector<double> app, empty;
    const Display display;
    if (!display.there()) {
        verdicts::missing(appStart);
        return state.SkipWithError("no Xvfb to show a window on");
    }
    for (auto _ : state) {
        const auto bare = toFirstFrame(display, "steelyard_emptywindow", {});
        const auto full = toFirstFrame(display, "steelyard", {QStringLiteral("--first-frame")});
        if (!bare || !full) {
            verdicts::missing(appStart);
            return state.SkipWithError("no first frame");
        }
        empty.push_back(*bare);
        app.push_back(*full);
        state.SetIterationTime(*full / 1000);
    }
    const double appMs = verdicts::median(app), emptyMs = verdicts::median(empty);
    state.counters["app_ms"] = appMs;
    state.counters["empty_ms"] = emptyMs;
    verdicts::hold(appStart, appMs, 500, "ms");
    verdicts::hold(appOverEmpty, appMs / emptyMs, 1.5, "");
}
BENCHMARK(startToFirstPage)->UseManualTime()->Iterations(21)->Unit(benchmark::kMillisecond);

/// Resident memory of a process in megabytes of 10^6 bytes, as the kernel counts it.
std::optional<double> residentMb(qint64 pid)
{
    QFile status(QStringLiteral("/proc/%1/status").arg(pid));
    if (!status.open(QIODevice::ReadOnly))
        return std::nullopt;
    static const QRegularExpression line(QStringLiteral("VmRSS:\\s+(\\d+) kB"));
    const auto found = line.match(QString::fromLatin1(status.readAll()));
    return found.hasMatch() ? std::optional(found.captured(1).toDouble() * 1024 / 1e6) : std::nullopt;
}

/// What a running program holds once three looks a quarter of a second apart see the same; it is ended afterwards.
std::optional<double> steadyMb(QProcess& process)
{
    std::optional<double> last;
    for (int same = 0, looks = 0; same < 3 && looks < 60; ++looks) {
        process.waitForFinished(250);
        const auto now = residentMb(process.processId());
        same = now && last && *now == *last ? same + 1 : 0;
        last = now;
    }
    process.kill();
    process.waitForFinished();
    return last;
}

void residentMemory(benchmark::State& state)
{
    const bool stepped = state.range(0) > 0;
    const char* const figure = stepped ? "resident memory after 200 loads" : "resident memory after the first page";
    std::vector<double> held;
    for (auto _ : state) {
        QProcess process;
        process.start(program(stepped ? "steelyard_steppedapp" : "steelyard"), {});
        while (stepped && !process.canReadLine() && process.waitForReadyRead(120000)) { }
        const auto mb = stepped && process.readLine() != "stepped\n" ? std::nullopt : steadyMb(process);
        if (!mb) {
            verdicts::missing(figure);
            return state.SkipWithError("the program did not run");
        }
        held.push_back(*mb);
        state.SetIterationTime(0);
    }
    state.counters["MB"] = verdicts::median(held);
    verdicts::hold(figure, verdicts::median(held), 130, "MB");
}
BENCHMARK(residentMemory)->ArgName("loads")->Arg(0)->Arg(200)->UseManualTime()->Iterations(3);

}
