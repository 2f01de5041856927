// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/pathchoices.h"

#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace steelyard::choices {

namespace {

void hang(Setup& setup, const WayToHang& way)
{
    setup.left.insert(setup.left.end(), way.left.begin(), way.left.end());
    setup.right.insert(setup.right.end(), way.right.begin(), way.right.end());
}

Setup aloneOn(const LiftPath& path, const WayToHang& way)
{
    Setup alone;
    alone.path = path;
    alone.path.uMark = {};
    hang(alone, way);
    return alone;
}

bool isKnown(const PullSum& sum, const LiftPath& path) { return sum.knowsAll(path.bottom, path.top) && (!path.rack || sum.knows(*path.rack)); }

/// What one way adds by itself; nothing where it is not known all the way.
std::optional<Numbers> numbersOf(const HangQuestion& question, const WayToHang& way, const LiftPath& path)
{
    const Setup alone = aloneOn(path, way);
    const PullSum sum(alone);
    if (!isKnown(sum, path))
        return std::nullopt;
    Numbers out;
    constexpr Length aside = metres(2e-9);
    for (std::size_t t = 0; t < question.targets.size(); ++t) {
        const TargetPlace place = question.targets[t].place;
        const PlaceStretch over = *stretchOf(path, place);
        const Reading reading = readingOf(sum, path, place);
        AtTarget& at = out[t];
        at.pull = reading.value.si();
        at.u2 = reading.u.si() * reading.u.si();
        if (isMean(place)) {
            at.one = (reading.value - sum.total(over.from)).si();
            at.other = (sum.total(over.to) - reading.value).si();
        } else {
            at.one = sum.slope(over.from - aside).si();
            at.other = sum.slope(over.from + aside).si();
        }
    }
    return out;
}

std::optional<LevelGrid::Along> alongOf(const LevelGrid& grid, const WayToHang& way, const LiftPath& path)
{
    const Setup alone = aloneOn(path, way);
    const PullSum sum(alone);
    if (!isKnown(sum, path))
        return std::nullopt;
    LevelGrid::Along along{};
    for (std::size_t i = 0; i < LevelGrid::heightsCount; ++i)
        along[i] = sum.total(grid.height(i));
    return along;
}

WayToHang wornOf(const HangQuestion& question) { return {0, 0, question.wornLeft, question.wornRight, 0, true}; }

/// What is still to come adds at each target no more than the things that add most there.
void reach(OnPath& on, std::size_t targetsCount, std::size_t more)
{
    const std::size_t n = on.things.size();
    on.least.assign(n + 1, std::vector<std::array<double, placesCount>>(more + 1));
    on.most = on.least;
    for (std::size_t t = 0; t < targetsCount; ++t) {
        std::vector<double> lows, highs;
        for (std::size_t from = n; from-- > 0;) {
            double low = 0, high = 0;
            for (const Added& added : on.things[from]) {
                low = std::min(low, added.numbers[t].pull);
                high = std::max(high, added.numbers[t].pull);
            }
            lows.insert(std::upper_bound(lows.begin(), lows.end(), low), low);
            highs.insert(std::upper_bound(highs.begin(), highs.end(), high, std::greater<>()), high);
            for (std::size_t m = 1; m <= more; ++m) {
                const auto taken = static_cast<std::ptrdiff_t>(std::min(m, lows.size()));
                on.least[from][m][t] = std::accumulate(lows.begin(), lows.begin() + taken, 0.0);
                on.most[from][m][t] = std::accumulate(highs.begin(), highs.begin() + taken, 0.0);
            }
        }
    }
}

}

Setup setupOf(const HangQuestion& question, std::size_t loadIndex, const std::vector<std::size_t>& ways)
{
    Setup setup = steelyard::setupOf(question.loads[loadIndex], question.collars, question.limits);
    setup.left = question.wornLeft;
    setup.right = question.wornRight;
    for (const std::size_t way : ways)
        hang(setup, question.ways[way]);
    return setup;
}

std::optional<HangAnswer> answerOf(const HangQuestion& question, const Setup& setup, std::size_t loadIndex, const std::vector<std::size_t>& ways)
{
    const PullSum sum(setup);
    HangAnswer answer;
    answer.loadIndex = loadIndex;
    answer.wayIndex = ways;
    answer.isWithin = true;
    double square = 0;
    for (const HangTarget& target : question.targets) {
        const Reading reading = readingOf(sum, setup.path, target.place);
        const double miss = (reading.value - target.wanted).si();
        square += miss * miss + reading.u.si() * reading.u.si();
        answer.isWithin = answer.isWithin && std::abs(miss) <= target.tolerance.si();
        answer.readings.push_back(reading);
    }
    if (question.strength) {
        answer.level = levelOf(setup, *question.strength);
        if (!answer.level)
            return std::nullopt;
        const double miss = meanWanted(question) * std::hypot(answer.level->variationRatio, answer.level->uRatio);
        square += miss * miss;
    }
    answer.cost = newtons(std::sqrt(square));
    return answer;
}

bool isForbidden(const Setup& setup)
{
    const auto warnings = setupWarnings(setup, PullSum(setup));
    return std::any_of(warnings.begin(), warnings.end(), [](const SetupWarning& w) {
        return w.code == SetupWarningCode::OverCap || w.code == SetupWarningCode::OverRackRating || w.code == SetupWarningCode::OverSafetyRating || w.code == SetupWarningCode::SleeveFull;
    });
}

double meanWanted(const HangQuestion& question)
{
    double sum = 0;
    for (const HangTarget& target : question.targets)
        sum += std::abs(target.wanted.si());
    return sum / static_cast<double>(question.targets.size());
}

LevelCost::LevelCost(const LiftPath& path, const StrengthCurve& strength, double wanted, const LevelGrid::Along& worn, std::vector<std::optional<LevelGrid::Along>> along)
    : m_count(along.size() + 1), m_gridsCount(strength.points().size() + 1), m_wanted(wanted)
{
    along.emplace_back(worn);
    const LevelStretch stretch = *levelStretch(path, strength);
    std::vector<LevelGrid> grids{LevelGrid(stretch, strength)};
    for (std::size_t i = 0; i < strength.points().size(); ++i)
        grids.emplace_back(stretch, strength.withMore(i, strength.points()[i].u));
    m_hung.resize(m_gridsCount * m_count);
    m_both.resize(m_gridsCount * m_count);
    m_products.resize(m_gridsCount * m_count * m_count);
    m_moments.emplace_back(m_gridsCount);
    for (std::size_t g = 0; g < m_gridsCount; ++g) {
        std::array<double, LevelGrid::heightsCount> share{}, weighed{};
        Moments& moments = m_moments.front()[g];
        for (std::size_t i = 0; i < LevelGrid::heightsCount; ++i) {
            share[i] = 1 / grids[g].strength(i).si();
            weighed[i] = LevelGrid::shareAt(i) * share[i] * share[i];
            moments.iron += LevelGrid::shareAt(i) * share[i];
            moments.iron2 += weighed[i];
        }
        // Σ of the heights, of what each counts times the pulls there
        const auto sum = [&weighed](const auto& of) {
            double total = 0;
            for (std::size_t i = 0; i < LevelGrid::heightsCount; ++i)
                total += weighed[i] * of(i);
            return total;
        };
        for (std::size_t a = 0; a < m_count; ++a) {
            if (!along[a])
                continue;
            m_hung[g * m_count + a] = grids[g].ratio(*along[a]);
            m_both[g * m_count + a] = sum([&](std::size_t i) { return (*along[a])[i].si(); });
            for (std::size_t b = 0; b <= a; ++b)
                if (along[b])
                    m_products[(g * m_count + a) * m_count + b] = m_products[(g * m_count + b) * m_count + a] = sum([&](std::size_t i) { return (*along[a])[i].si() * (*along[b])[i].si(); });
        }
    }
    // what is worn hangs always, and is not counted among what is hung
    hang(m_count - 1);
}

void LevelCost::hang(std::size_t way)
{
    m_moments.push_back(m_moments.back());
    for (std::size_t g = 0; g < m_gridsCount; ++g) {
        Moments& moments = m_moments.back()[g];
        moments.hung += m_hung[g * m_count + way];
        moments.both += m_both[g * m_count + way];
        moments.hung2 += product(g, way, way);
        for (const std::size_t other : m_hanging)
            moments.hung2 += 2 * product(g, way, other);
    }
    m_hanging.push_back(way);
}

void LevelCost::takeOff()
{
    m_moments.pop_back();
    m_hanging.pop_back();
}

double LevelCost::Moments::variation2(double load) const
{
    const double mean = load * iron + hung;
    return mean > 0 ? std::max(0.0, (load * load * iron2 + 2 * load * both + hung2) / (mean * mean) - 1) : never;
}

double LevelCost::leastSquare(double from, double to) const
{
    // the variation falls up to the one load that suits best and rises after it, so that the nearest to it is the least
    const Moments& here = m_moments.back().front();
    const double across = here.iron2 * here.hung - here.iron * here.both;
    double least = std::min(here.variation2(from), here.variation2(to));
    if (across != 0) {
        const double best = (here.iron * here.hung2 - here.both * here.hung) / across;
        if (best > from && best < to)
            least = std::min(least, here.variation2(best));
    }
    return m_wanted * m_wanted * least;
}

double LevelCost::square(double load) const
{
    const auto& moments = m_moments.back();
    const double here2 = moments.front().variation2(load);
    if (here2 == never)
        return never;
    const double here = std::sqrt(here2);
    double sum = here2;
    for (std::size_t g = 1; g < m_gridsCount; ++g) {
        const double there2 = moments[g].variation2(load);
        const double moved = there2 == never ? 0 : std::sqrt(there2) - here;
        sum += moved * moved;
    }
    return m_wanted * m_wanted * sum;
}

LevelCost levelCostOf(const HangQuestion& question, const LiftPath& path)
{
    const LevelGrid grid(*levelStretch(path, *question.strength), *question.strength);
    std::vector<std::optional<LevelGrid::Along>> along;
    for (const WayToHang& way : question.ways)
        along.push_back(alongOf(grid, way, path));
    const auto worn = alongOf(grid, wornOf(question), path);
    return LevelCost(path, *question.strength, meanWanted(question), worn.value_or(LevelGrid::Along{}), std::move(along));
}

std::vector<OnPath> pathsOf(const HangQuestion& question)
{
    std::vector<OnPath> paths;
    for (std::size_t i = 0; i < question.loads.size(); ++i) {
        const IronLoad& iron = question.loads[i];
        if (question.limits.sleeve && iron.load.thickness() > *question.limits.sleeve)
            continue;
        auto on = std::find_if(paths.begin(), paths.end(), [&](const OnPath& known) { return known.path.bottom == iron.path.bottom; });
        if (on == paths.end()) {
            on = paths.insert(paths.end(), OnPath());
            on->path = iron.path;
            on->worn = numbersOf(question, wornOf(question), iron.path);
        }
        const double u = weight(iron.uIron).si();
        on->loads.push_back(i);
        on->iron.push_back(weight(iron.load.total).si());
        on->uIron2.push_back(u * u);
        on->leastUIron2 = std::min(on->leastUIron2, u * u);
    }
    for (OnPath& on : paths) {
        std::vector<std::size_t> place;
        for (std::size_t w = 0; w < question.ways.size(); ++w) {
            const auto numbers = numbersOf(question, question.ways[w], on.path);
            if (!numbers)
                continue;
            const std::size_t thing = question.ways[w].thingIndex;
            const auto at = static_cast<std::size_t>(std::find(place.begin(), place.end(), thing) - place.begin());
            if (at == place.size()) {
                place.push_back(thing);
                on.things.emplace_back();
            }
            on.things[at].push_back({w, *numbers});
        }
        reach(on, question.targets.size(), question.mostThingsCount);
    }
    return paths;
}

double marks2(const LiftPath& path, TargetPlace place, const AtTarget& at)
{
    const double u = path.uMark.si();
    if (!isMean(place))
        return std::max(at.one * at.one, at.other * at.other) * u * u;
    const PlaceStretch over = *stretchOf(path, place);
    const double share = u / (over.to - over.from).si();
    return (at.one * at.one + at.other * at.other) * share * share;
}

}
