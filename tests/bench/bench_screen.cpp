// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/setupview.h"
#include "tests/bench/screen.h"
#include "tests/bench/verdicts.h"
#include "tests/tour/seasonfile.h"

#include <QImage>

#include <benchmark/benchmark.h>

#include <chrono>

namespace {

using Clock = std::chrono::steady_clock;

const QString fullSetup = QStringLiteral("4-tall-lifter-chains-and-bands");
const double frameMs = 16; // one frame at 60 a second

double msSince(Clock::time_point start)
{
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// From the tap's one call to the frame with the new curve in it, and its two parts: weighing up and texts, then drawing.
void newCurveOnScreen(benchmark::State& state)
{
    Screen screen(fullSetup);
    const QSize size(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
    const std::string figure = "new curve on screen, " + std::to_string(size.width()) + " x " + std::to_string(size.height());
    if (!screen.ready()) {
        verdicts::missing(figure);
        return state.SkipWithError("no window, or no set-up on the desk");
    }
    screen.window()->resize(size);
    for (int i = 0; i < 16; ++i) { // a round before the clock starts, so that every text has been laid out once
        screen.step(i);
        screen.drawn();
    }
    const QImage before = screen.window()->grabWindow();
    screen.step(0);
    const QImage after = screen.window()->grabWindow();
    screen.step(15);
    if (before.size() != size || before == after || !screen.drawn()) {
        verdicts::missing(figure);
        return state.SkipWithError("a step does not change the page");
    }

    std::vector<double> whole, told, drawing;
    int turn = 0;
    for (auto _ : state) {
        const auto start = Clock::now();
        screen.step(turn++);
        told.push_back(msSince(start));
        const bool drawn = screen.drawn();
        whole.push_back(msSince(start));
        drawing.push_back(whole.back() - told.back());
        state.SetIterationTime(whole.back() / 1000);
        if (!drawn) {
            verdicts::missing(figure);
            return state.SkipWithError("no frame after a step");
        }
    }
    state.counters["whole_ms"] = verdicts::median(whole);
    state.counters["told_ms"] = verdicts::median(told);
    state.counters["drawn_ms"] = verdicts::median(drawing);
    verdicts::hold(figure, verdicts::median(whole), frameMs, "ms");
}
BENCHMARK(newCurveOnScreen)->Args({360, 720})->Args({1280, 800})->UseManualTime()->Iterations(96)->Unit(benchmark::kMillisecond);

/// The part without a page: the desk weighs up, the view makes its texts and points.
void newCurveAsTexts(benchmark::State& state)
{
    const auto season = seasonfile::all();
    DeskService service;
    for (const SeasonSetup& one : season) {
        if (one.name == fullSetup)
            service.desk().replaceAll(one.marks, one.kit, one.setup);
    }
    SetupView view;
    if (state.range(0))
        view.setDesk(&service);
    int turn = 0;
    for (auto _ : state)
        service.desk().stepLoad(turn++ % 16 < 8);
}
BENCHMARK(newCurveAsTexts)->ArgName("view")->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond);

}
