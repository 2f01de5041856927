// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/verdicts.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <limits>

namespace {

struct Held {
    std::string figure;
    double value;
    double most;
    std::string unit;
};

std::vector<Held>& all()
{
    static std::vector<Held> held;
    return held;
}

}

namespace verdicts {

double median(std::vector<double> values)
{
    if (values.empty())
        return std::numeric_limits<double>::quiet_NaN();
    std::sort(values.begin(), values.end());
    const std::size_t middle = values.size() / 2;
    return values.size() % 2 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

double timeOf(const std::function<void()>& answer)
{
    std::vector<double> took;
    for (int i = 0; i < 3; ++i) {
        const auto start = std::chrono::steady_clock::now();
        answer();
        took.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    return *std::min_element(took.begin(), took.end());
}

void hold(const std::string& figure, double value, double most, const std::string& unit)
{
    all().push_back({figure, value, most, unit});
}

void missing(const std::string& figure)
{
    const double nothing = std::numeric_limits<double>::quiet_NaN();
    all().push_back({figure, nothing, nothing, ""});
}

bool print()
{
    bool kept = true;
    std::printf("\n%-52s %10s %10s\n", "figure", "median", "at most");
    for (const Held& held : all()) {
        const bool within = held.value <= held.most;
        kept = kept && within;
        std::printf("%-52s %10.2f %10.2f %-4s %s\n", held.figure.c_str(), held.value, held.most, held.unit.c_str(),
                    within ? "kept" : "BROKEN");
    }
    return kept;
}

}
