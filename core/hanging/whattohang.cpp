// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/whattohang.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>

namespace steelyard {

namespace {

constexpr std::size_t placesCount = 4;
/// Of costs: two of the engine's roundings apart are alike.
constexpr double alike = 1e-9;
constexpr double never = std::numeric_limits<double>::infinity();

/// Numbers of one target: a pull, its squared uncertainty, and the two slopes that bar marks make uncertain.
struct AtTarget {
    double pull = 0, u2 = 0, one = 0, other = 0;
    AtTarget& operator+=(const AtTarget& b)
    {
        pull += b.pull;
        u2 += b.u2;
        one += b.one;
        other += b.other;
        return *this;
    }
};
using Numbers = std::array<AtTarget, placesCount>;

Setup setupOf(const HangQuestion& question, const IronLoad& iron)
{
    Setup setup = setupOf(iron, question.collars, question.limits);
    setup.left = question.wornLeft;
    setup.right = question.wornRight;
    return setup;
}

void hang(Setup& setup, const WayToHang& way)
{
    setup.left.insert(setup.left.end(), way.left.begin(), way.left.end());
    setup.right.insert(setup.right.end(), way.right.begin(), way.right.end());
}

/// What one way adds at each target by itself; nothing where it is not known all the way.
std::optional<Numbers> numbersOf(const WayToHang& way, const LiftPath& path, const std::vector<HangTarget>& targets)
{
    Setup alone;
    alone.path = path;
    alone.path.uMark = {};
    hang(alone, way);
    const PullSum sum(alone);
    if (!sum.knowsAll(path.bottom, path.top) || (path.rack && !sum.knows(*path.rack)))
        return std::nullopt;
    Numbers out;
    constexpr Length aside = metres(2e-9);
    for (std::size_t t = 0; t < targets.size(); ++t) {
        const TargetPlace place = targets[t].place;
        const PlaceStretch over = *stretchOf(path, place);
        const Reading reading = readingOf(sum, path, place);
        out[t].pull = reading.value.si();
        out[t].u2 = reading.u.si() * reading.u.si();
        if (isMean(place)) {
            out[t].one = (reading.value - sum.total(over.from)).si();
            out[t].other = (sum.total(over.to) - reading.value).si();
        } else {
            out[t].one = sum.slope(over.from - aside).si();
            out[t].other = sum.slope(over.from + aside).si();
        }
    }
    return out;
}

/// Loads that give one path, and what each way adds on it.
struct OnPath {
    LiftPath path;
    std::optional<Numbers> worn; ///< what stays adds so much; not known, nothing can be answered here
    std::vector<std::size_t> loads;
    std::vector<double> iron, uIron2;            ///< of those loads, lightest first
    double leastUIron2 = 0;
    std::vector<std::vector<std::pair<std::size_t, Numbers>>> things; ///< ways of each thing that are known
    /// Of the things from one on, with so many more of them: the least and the most that they can add at each target.
    std::vector<std::vector<std::array<double, placesCount>>> least, most;
};

class Search {
public:
    Search(const HangQuestion& question, const HangListener& listener) : m_question(question), m_listener(listener), m_count(question.targets.size()) {}

    HangAnswers run()
    {
        HangAnswers out;
        if (m_count == 0 || m_count > placesCount || m_question.loads.empty() || !everyPlaceIsThere())
            return out;
        gather();
        for (const OnPath& on : m_paths) {
            if (!on.worn)
                continue;
            m_on = &on;
            m_chosen.clear();
            branch(0, *on.worn, 0);
        }
        out.best = m_best;
        out.next = m_next;
        out.isProved = !m_stopped && m_open == never;
        out.bound = newtons(std::min(m_open, m_best ? m_best->cost.si() : 0.0));
        if (m_stopped)
            out.bound = Force{};
        out.looksCount = m_looks;
        return out;
    }

private:
    [[nodiscard]] bool everyPlaceIsThere() const
    {
        return std::all_of(m_question.targets.begin(), m_question.targets.end(), [&](const HangTarget& target) {
            return std::all_of(m_question.loads.begin(), m_question.loads.end(), [&](const IronLoad& iron) { return stretchOf(iron.path, target.place).has_value(); });
        });
    }

    void gather()
    {
        for (std::size_t i = 0; i < m_question.loads.size(); ++i) {
            const IronLoad& iron = m_question.loads[i];
            if (m_question.limits.sleeve && iron.load.thickness() > *m_question.limits.sleeve)
                continue;
            auto at = std::find_if(m_paths.begin(), m_paths.end(), [&](const OnPath& on) { return on.path.bottom == iron.path.bottom; });
            if (at == m_paths.end())
                at = m_paths.insert(m_paths.end(), OnPath{iron.path, numbersOf({0, 0, m_question.wornLeft, m_question.wornRight, 0, true}, iron.path, m_question.targets), {}, {}, {}, never, {}, {}, {}});
            const double u = weight(iron.uIron).si();
            at->loads.push_back(i);
            at->iron.push_back(weight(iron.load.total).si());
            at->uIron2.push_back(u * u);
            at->leastUIron2 = std::min(at->leastUIron2, u * u);
        }
        for (OnPath& on : m_paths) {
            std::vector<std::size_t> place;
            for (std::size_t w = 0; w < m_question.ways.size(); ++w) {
                const auto numbers = numbersOf(m_question.ways[w], on.path, m_question.targets);
                if (!numbers)
                    continue;
                const std::size_t thing = m_question.ways[w].thingIndex;
                const auto at = static_cast<std::size_t>(std::find(place.begin(), place.end(), thing) - place.begin());
                if (at == place.size()) {
                    place.push_back(thing);
                    on.things.emplace_back();
                }
                on.things[at].emplace_back(w, *numbers);
            }
            reach(on);
        }
    }

    /// What is still to come adds at each target no more than the things that add most there.
    void reach(OnPath& on) const
    {
        const std::size_t n = on.things.size(), more = m_question.mostThingsCount;
        on.least.assign(n + 1, std::vector<std::array<double, placesCount>>(more + 1));
        on.most = on.least;
        for (std::size_t t = 0; t < m_count; ++t) {
            std::vector<double> lows, highs;
            for (std::size_t from = n; from-- > 0;) {
                double low = 0, high = 0;
                for (const auto& [way, numbers] : on.things[from]) {
                    low = std::min(low, numbers[t].pull);
                    high = std::max(high, numbers[t].pull);
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

    /// Σ over the targets of the squared distance that a load leaves, at least, when each target may still move between two ends.
    [[nodiscard]] double leastMisses(const Numbers& now, const std::array<double, placesCount>& least, const std::array<double, placesCount>& most) const
    {
        // the load wanted by each target is anywhere from one end to the other; with one load for all, the sum is convex
        std::array<double, placesCount> from{}, to{};
        std::array<double, 2 * placesCount + 2> stops{};
        std::size_t count = 0;
        const double lightest = m_on->iron.front(), heaviest = m_on->iron.back();
        for (std::size_t t = 0; t < m_count; ++t) {
            const double wanted = m_question.targets[t].wanted.si() - now[t].pull;
            from[t] = wanted - most[t];
            to[t] = wanted - least[t];
            stops[count++] = std::clamp(from[t], lightest, heaviest);
            stops[count++] = std::clamp(to[t], lightest, heaviest);
        }
        const auto misses = [&](double load) {
            double sum = 0;
            for (std::size_t t = 0; t < m_count; ++t) {
                const double miss = load < from[t] ? from[t] - load : load > to[t] ? load - to[t] : 0;
                sum += miss * miss;
            }
            return sum;
        };
        std::sort(stops.begin(), stops.begin() + static_cast<std::ptrdiff_t>(count));
        double best = never;
        for (std::size_t i = 0; i < count; ++i) {
            best = std::min(best, misses(stops[i]));
            if (i + 1 == count)
                break;
            // between two stops the same targets are missed: the best load is the mean of the ends that they miss
            const double middle = (stops[i] + stops[i + 1]) / 2;
            double sum = 0;
            int missed = 0;
            for (std::size_t t = 0; t < m_count; ++t)
                if (middle < from[t] || middle > to[t]) {
                    sum += middle < from[t] ? from[t] : to[t];
                    ++missed;
                }
            if (missed > 0)
                best = std::min(best, misses(std::clamp(sum / missed, stops[i], stops[i + 1])));
        }
        return best;
    }

    [[nodiscard]] double marks2(const AtTarget& at, std::size_t t) const
    {
        const LiftPath& path = m_on->path;
        const TargetPlace place = m_question.targets[t].place;
        const double u = path.uMark.si();
        if (!isMean(place))
            return std::max(at.one * at.one, at.other * at.other) * u * u;
        const PlaceStretch over = *stretchOf(path, place);
        const double share = u / (over.to - over.from).si();
        return (at.one * at.one + at.other * at.other) * share * share;
    }

    void branch(std::size_t from, const Numbers& now, std::uint64_t taken)
    {
        if (m_stopped)
            return;
        double u2 = static_cast<double>(m_count) * m_on->leastUIron2;
        for (std::size_t t = 0; t < m_count; ++t)
            u2 += now[t].u2;
        const std::size_t more = m_question.mostThingsCount - m_chosen.size();
        const double least = std::sqrt(u2 + leastMisses(now, m_on->least[from][more], m_on->most[from][more]));
        if (least > worst() + alike)
            return;
        if (m_looks >= m_question.mostLooksCount) {
            m_open = std::min(m_open, least);
            return;
        }
        constexpr std::size_t nowAndThen = 256;
        if (++m_looks % nowAndThen == 0 && m_listener.goesOn && !m_listener.goesOn()) {
            m_stopped = true;
            return;
        }
        load(now);
        if (more == 0)
            return;
        for (std::size_t thing = from; thing < m_on->things.size(); ++thing)
            for (const auto& [way, numbers] : m_on->things[thing]) {
                if (m_question.ways[way].takenPieces & taken)
                    continue;
                Numbers next = now;
                for (std::size_t t = 0; t < m_count; ++t)
                    next[t] += numbers[t];
                m_chosen.push_back(way);
                branch(thing + 1, next, taken | m_question.ways[way].takenPieces);
                m_chosen.pop_back();
            }
    }

    /// With just these things: the loads that may do, the best first on either side.
    void load(const Numbers& now)
    {
        double wanted = 0, base = 0;
        for (std::size_t t = 0; t < m_count; ++t) {
            wanted += (m_question.targets[t].wanted.si() - now[t].pull) / static_cast<double>(m_count);
            base += now[t].u2 + marks2(now[t], t);
        }
        const auto cost2 = [&](std::size_t i) {
            double sum = base + static_cast<double>(m_count) * m_on->uIron2[i];
            for (std::size_t t = 0; t < m_count; ++t) {
                const double miss = m_on->iron[i] + now[t].pull - m_question.targets[t].wanted.si();
                sum += miss * miss;
            }
            return sum;
        };
        const auto floor2 = [&](std::size_t i) { return cost2(i) - static_cast<double>(m_count) * (m_on->uIron2[i] - m_on->leastUIron2); };
        const auto& iron = m_on->iron;
        const auto start = static_cast<std::size_t>(std::lower_bound(iron.begin(), iron.end(), wanted) - iron.begin());
        const auto within = [&](double square) { return std::sqrt(square) <= worst() + alike; };
        // away from the load that suits best it only gets worse
        for (std::size_t i = start; i < iron.size() && within(floor2(i)); ++i)
            if (within(cost2(i)))
                weigh(i);
        for (std::size_t i = start; i-- > 0 && within(floor2(i));)
            if (within(cost2(i)))
                weigh(i);
    }

    /// By the engine itself.
    void weigh(std::size_t i)
    {
        const std::size_t index = m_on->loads[i];
        const IronLoad& iron = m_question.loads[index];
        Setup setup = setupOf(m_question, iron);
        for (const std::size_t way : m_chosen)
            hang(setup, m_question.ways[way]);
        const PullSum sum(setup);
        HangAnswer answer;
        answer.loadIndex = index;
        answer.wayIndex = m_chosen;
        answer.isWithin = true;
        double square = 0;
        for (const HangTarget& target : m_question.targets) {
            const Reading reading = readingOf(sum, setup.path, target.place);
            const double miss = (reading.value - target.wanted).si();
            square += miss * miss + reading.u.si() * reading.u.si();
            answer.isWithin = answer.isWithin && std::abs(miss) <= target.tolerance.si();
            answer.readings.push_back(reading);
        }
        answer.cost = newtons(std::sqrt(square));
        count(answer);
        if (m_next && !better(answer, *m_next))
            return;
        const auto warnings = setupWarnings(setup, sum);
        const bool forbidden = std::any_of(warnings.begin(), warnings.end(), [](const SetupWarning& w) {
            return w.code == SetupWarningCode::OverCap || w.code == SetupWarningCode::OverRackRating || w.code == SetupWarningCode::OverSafetyRating || w.code == SetupWarningCode::SleeveFull;
        });
        if (!forbidden)
            take(std::move(answer));
    }

    void count(HangAnswer& answer) const
    {
        const PlateLoad& load = m_question.loads[answer.loadIndex].load;
        answer.pieceCount = 2 * static_cast<int>(load.eachSide.size());
        if (m_question.loadNowIndex) {
            const PlateChange change = changeBetween(m_question.loads[*m_question.loadNowIndex].load, load);
            answer.changeCount = 2 * static_cast<int>(change.takeOff.size() + change.putOn.size());
        }
        for (const std::size_t way : answer.wayIndex) {
            answer.pieceCount += m_question.ways[way].pieceCount;
            if (!m_question.ways[way].hangsNow)
                answer.changeCount += m_question.ways[way].pieceCount;
        }
        for (std::size_t way = 0; way < m_question.ways.size(); ++way)
            if (m_question.ways[way].hangsNow && std::find(answer.wayIndex.begin(), answer.wayIndex.end(), way) == answer.wayIndex.end())
                answer.changeCount += m_question.ways[way].pieceCount;
    }

    static bool better(const HangAnswer& a, const HangAnswer& b)
    {
        if (std::abs((a.cost - b.cost).si()) > alike)
            return a.cost < b.cost;
        if (a.pieceCount != b.pieceCount)
            return a.pieceCount < b.pieceCount;
        if (a.changeCount != b.changeCount)
            return a.changeCount < b.changeCount;
        return std::tie(a.loadIndex, a.wayIndex) < std::tie(b.loadIndex, b.wayIndex);
    }

    [[nodiscard]] double worst() const { return m_next ? m_next->cost.si() : never; }

    void take(HangAnswer answer)
    {
        if (m_best && !better(answer, *m_best)) {
            m_next = std::move(answer);
            return;
        }
        m_next = std::move(m_best);
        m_best = std::move(answer);
        if (m_listener.found)
            m_listener.found(*m_best);
    }

    const HangQuestion& m_question;
    const HangListener& m_listener;
    std::size_t m_count;
    std::vector<OnPath> m_paths;
    const OnPath* m_on = nullptr;
    std::vector<std::size_t> m_chosen;
    std::optional<HangAnswer> m_best, m_next;
    std::size_t m_looks = 0;
    double m_open = never;
    bool m_stopped = false;
};

/// The first target that nothing meets even by itself; else the one that the best answer misses by most of its tolerances.
std::optional<TargetPlace> failingOf(const HangQuestion& question, const HangAnswer& best)
{
    for (const HangTarget& target : question.targets) {
        HangQuestion alone = question;
        alone.targets = {target};
        const HangListener nobody;
        const HangAnswers answers = Search(alone, nobody).run();
        if (!answers.best || !answers.best->isWithin)
            return target.place;
    }
    std::optional<TargetPlace> worst;
    double most = 1;
    for (std::size_t t = 0; t < question.targets.size(); ++t) {
        const double miss = std::abs((best.readings[t].value - question.targets[t].wanted).si()), tolerance = question.targets[t].tolerance.si();
        const double share = tolerance > 0 ? miss / tolerance : miss > 0 ? never : 0;
        if (share > most) {
            most = share;
            worst = question.targets[t].place;
        }
    }
    return worst;
}

}

HangAnswers whatToHang(const HangQuestion& question, const HangListener& listener)
{
    HangAnswers answers = Search(question, listener).run();
    if (answers.best && !answers.best->isWithin && answers.isProved)
        answers.failing = failingOf(question, *answers.best);
    return answers;
}

}
