// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/screen.h"
#include "tests/bench/verdicts.h"
#include "tests/tour/hand.h"

#include <benchmark/benchmark.h>

#include <chrono>

namespace {

using Clock = std::chrono::steady_clock;

/// A tap, or what else turns a page, and the page that it leads to.
struct Turn {
    const char* deed;
    const char* page;
};

/// Through the sample season from page to page, as a coach goes.
constexpr std::array turns{
    Turn{"place 0", "SquadPage"},        Turn{"row 3", "AthletePage"},        Turn{"press sizes", "SizesPage"},     Turn{"press back", "AthletePage"},
    Turn{"press lifts", "LiftsPage"},    Turn{"press lift:1", "MarksPage"},   Turn{"press back", "LiftsPage"},      Turn{"press back", "AthletePage"},
    Turn{"press setups", "SetupsPage"},  Turn{"press setup:*", "SetupPage"},  Turn{"press origin", "OriginPage"},    Turn{"press back", "SetupPage"},
    Turn{"press barHere", "BarPage"},    Turn{"press back", "SetupPage"},     Turn{"press hangMore", "ThingsPage"}, Turn{"press back", "SetupPage"},
    Turn{"place 0", "SquadPage"},        Turn{"press deeds", "DeedsPage"},    Turn{"press back", "SquadPage"},      Turn{"press preferences", "PreferencesPage"},
    Turn{"press back", "SquadPage"},
};

/// From the tap to the frame with the page in it, each page of the way; the slowest counts.
void everyPageOnTheSample(benchmark::State& state)
{
    const std::string figure = "slowest page on the sample";
    Screen screen({});
    if (!screen.ready() || !screen.keepClub()) {
        verdicts::missing(figure);
        return state.SkipWithError("no window, or no sample season");
    }
    screen.window()->resize(static_cast<int>(state.range(0)), static_cast<int>(state.range(1)));
    Hand hand(*screen.window(), screen.engine());
    std::array<std::vector<double>, turns.size()> spent;
    for (auto _ : state) {
        const auto round = Clock::now();
        for (std::size_t i = 0; i < turns.size(); ++i) {
            const auto start = Clock::now();
            const QString trouble = hand.perform(QLatin1String(turns[i].deed));
            for (int frame = 0; frame < 20 && trouble.isEmpty() && hand.pageType() != QLatin1String(turns[i].page); ++frame)
                hand.settle(1);
            if (hand.pageType() != QLatin1String(turns[i].page)) {
                verdicts::missing(figure);
                return state.SkipWithError(qPrintable(trouble + QStringLiteral(": on %1 instead of %2").arg(hand.pageType(), QLatin1String(turns[i].page))));
            }
            spent[i].push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
        }
        state.SetIterationTime(std::chrono::duration<double>(Clock::now() - round).count());
    }
    double slowest = 0;
    for (std::size_t i = 0; i < turns.size(); ++i) {
        const double median = verdicts::median(spent[i]);
        if (median > slowest) {
            slowest = median;
            state.SetLabel(turns[i].page);
        }
    }
    verdicts::hold(figure + ", " + std::to_string(state.range(0)) + " x " + std::to_string(state.range(1)), slowest, 300, "ms");
}
BENCHMARK(everyPageOnTheSample)->Args({360, 720})->Args({1280, 800})->UseManualTime()->Iterations(5)->Unit(benchmark::kMillisecond);

}
