// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/agreement.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

namespace steelyard {

namespace {

constexpr std::size_t mostCategories = 50, mostRows = 10'000;
/// Below it 1 − pₑ is rounding.
constexpr double nothingLeftShare = 1e-12;

std::optional<Error> tableFault(const CountTable& table, std::size_t width)
{
    for (std::size_t i = 0; i < table.size(); ++i) {
        const std::string what = "table row " + std::to_string(i + 1);
        if (table[i].size() != width)
            return Error{Refusal::OutOfRange, what};
        for (const double entry : table[i])
            if (!std::isfinite(entry) || entry < 0 || entry > 1e9)
                return Error{std::isfinite(entry) ? Refusal::OutOfRange : Refusal::NotFinite, what};
    }
    return std::nullopt;
}

double sumOfRow(const std::vector<double>& row) { return std::accumulate(row.begin(), row.end(), 0.0); }

/// At least so many heads or so many tails of n tosses.
double tossProbability(std::size_t same, std::size_t n)
{
    if (2 * same <= n)
        return 1;
    double sum = 0, term = std::pow(0.5, static_cast<double>(n));
    // from n of n downwards: C(n, k − 1) = C(n, k)·k/(n − k + 1)
    for (std::size_t k = n; k >= same; --k) {
        sum += term;
        term *= static_cast<double>(k) / static_cast<double>(n - k + 1);
    }
    return std::min(1.0, 2 * sum);
}

}

SameSide sameSideOf(std::span<const std::optional<Leg>> betterByDay)
{
    const auto on = [&](Leg leg) { return static_cast<std::size_t>(std::count(betterByDay.begin(), betterByDay.end(), std::optional(leg))); };
    const std::size_t left = on(Leg::Left), right = on(Leg::Right);
    SameSide same;
    same.sameCount = std::max(left, right);
    same.daysCount = betterByDay.size();
    if (left != right)
        same.leg = left > right ? Leg::Left : Leg::Right;
    same.chanceProbability = tossProbability(same.sameCount, left + right);
    return same;
}

Result<std::optional<Kappa>> kappaOf(const CountTable& countTable)
{
    const std::size_t size = countTable.size();
    if (size < 2 || size > mostCategories)
        return Error{size < 2 ? Refusal::TooFewPoints : Refusal::TooMany, "table"};
    if (const auto wrong = tableFault(countTable, size))
        return *wrong;
    double all = 0;
    for (const auto& row : countTable)
        all += sumOfRow(row);
    if (!(all > 0))
        return Error{Refusal::TooFewPoints, "table"};
    std::vector<double> rows(size), columns(size);
    double agreed = 0, chance = 0;
    for (std::size_t i = 0; i < size; ++i) {
        rows[i] = sumOfRow(countTable[i]) / all;
        for (std::size_t j = 0; j < size; ++j)
            columns[j] += countTable[i][j] / all;
        agreed += countTable[i][i] / all;
    }
    for (std::size_t i = 0; i < size; ++i)
        chance += rows[i] * columns[i];
    if (1 - chance < nothingLeftShare)
        return std::optional<Kappa>{};
    Kappa kappa{(agreed - chance) / (1 - chance)};
    // shares of 1 do not say how many were counted
    if (all > 1 + nothingLeftShare) {
        const double k = kappa.coefficient, apart = 1 - k;
        double sum = 0;
        for (std::size_t i = 0; i < size; ++i)
            for (std::size_t j = 0; j < size; ++j) {
                const double part = i == j ? 1 - (rows[i] + columns[i]) * apart : (columns[i] + rows[j]) * apart;
                sum += countTable[i][j] / all * part * part;
            }
        const double middle = k - chance * apart;
        kappa.uCoefficient = std::sqrt(std::max(0.0, sum - middle * middle) / all) / (1 - chance);
    }
    return std::optional(kappa);
}

Result<std::optional<double>> fleissKappaCoefficient(const CountTable& countTable)
{
    if (countTable.size() < 2 || countTable.front().size() < 2)
        return Error{Refusal::TooFewPoints, "table"};
    if (countTable.size() > mostRows || countTable.front().size() > mostCategories)
        return Error{Refusal::TooMany, "table"};
    if (const auto wrong = tableFault(countTable, countTable.front().size()))
        return *wrong;
    const double days = sumOfRow(countTable.front()), n = static_cast<double>(countTable.size());
    if (days < 2)
        return Error{Refusal::TooFewPoints, "table"};
    std::vector<double> shares(countTable.front().size());
    double agreed = 0, chance = 0;
    for (std::size_t i = 0; i < countTable.size(); ++i) {
        if (sumOfRow(countTable[i]) != days)
            return Error{Refusal::OutOfRange, "table row " + std::to_string(i + 1)};
        double squares = 0;
        for (std::size_t j = 0; j < shares.size(); ++j) {
            shares[j] += countTable[i][j] / (n * days);
            squares += countTable[i][j] * countTable[i][j];
        }
        agreed += (squares - days) / (days * (days - 1) * n);
    }
    for (const double share : shares)
        chance += share * share;
    if (1 - chance < nothingLeftShare)
        return std::optional<double>{};
    return std::optional((agreed - chance) / (1 - chance));
}

}
