// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/asking/hangasker.h"
#include "tests/bench/screen.h"
#include "tests/bench/verdicts.h"
#include "tests/tour/hand.h"

#include <benchmark/benchmark.h>

#include <QCoreApplication>

#include <chrono>

namespace {

using Clock = std::chrono::steady_clock;

HangAsker* askerOf(const Hand& hand)
{
    return hand.page() ? hand.page()->property("asker").value<HangAsker*>() : nullptr;
}

/// Until what was looked for is found and drawn; false when it takes too long.
bool answered(Screen& screen, const HangAsker& asker)
{
    const auto start = Clock::now();
    while (asker.state() == HangAsker::Looking) {
        if (Clock::now() - start > std::chrono::seconds(20))
            return false;
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
    }
    return asker.state() == HangAsker::Proved && screen.drawn();
}

/// From the tap on a target's stepper to the frame with the proved answer in it, with the kit of the sample season's weight room.
void answerAfterAStep(benchmark::State& state)
{
    const std::string figure = "answer after a stepper tap";
    Screen screen({});
    const auto refuse = [&](const QString& why) {
        verdicts::missing(figure);
        state.SkipWithError(qPrintable(why));
    };
    if (!screen.ready() || !screen.keepClub())
        return refuse(QStringLiteral("no window, or no sample season"));
    screen.window()->resize(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
    Hand hand(*screen.window(), screen.engine());
    for (const char* deed : {"place 0", "row 0", "press setups", "press setup:*", "press whatToHang", "press ask:bottom", "key 60", "press mainAction", "press ask:top", "key 80", "press mainAction"})
        if (const QString trouble = hand.perform(QLatin1String(deed)); !trouble.isEmpty())
            return refuse(trouble);
    HangAsker* asker = askerOf(hand);
    if (!asker || !answered(screen, *asker))
        return refuse(QStringLiteral("no answer"));
    std::vector<double> spent;
    bool up = true;
    for (auto _ : state) {
        const auto start = Clock::now();
        asker->step(QStringLiteral("top"), up);
        if (!answered(screen, *asker))
            return refuse(QStringLiteral("no answer after a step"));
        spent.push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
        state.SetIterationTime(spent.back() / 1000);
        up = !up;
    }
    verdicts::hold(figure + ", " + std::to_string(state.range(0)) + " x " + std::to_string(state.range(1)), verdicts::median(spent), 100, "ms");
    verdicts::hold(figure + ", the slowest", *std::max_element(spent.begin(), spent.end()), 200, "ms");
}
BENCHMARK(answerAfterAStep)->Args({360, 720})->Args({1280, 800})->UseManualTime()->Iterations(20)->Unit(benchmark::kMillisecond);

}
