// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/whattohang.h"

#include "core/hanging/pathchoices.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>

namespace steelyard {

using namespace choices;

namespace {

/// Of costs: two of the engine's roundings apart are alike.
constexpr double alike = 1e-9;

class Search {
public:
    Search(const HangQuestion& question, const HangListener& listener) : m_question(question), m_listener(listener), m_count(question.targets.size()) {}

    HangAnswers run()
    {
        HangAnswers out;
        if (m_count == 0 || m_count > placesCount || m_question.loads.empty() || !everyPlaceIsThere())
            return out;
        m_paths = pathsOf(m_question);
        for (const OnPath& on : m_paths) {
            if (!on.worn)
                continue;
            m_on = &on;
            m_chosen.clear();
            if (m_question.strength)
                m_level.emplace(levelCostOf(m_question, on.path));
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
        }) && (!m_question.strength || std::all_of(m_question.loads.begin(), m_question.loads.end(), [&](const IronLoad& iron) { return levelStretch(iron.path, *m_question.strength).has_value(); }));
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
            for (const Added& added : m_on->things[thing]) {
                const std::uint64_t takes = m_question.ways[added.wayIndex].takenPieces;
                if (takes & taken)
                    continue;
                Numbers next = now;
                for (std::size_t t = 0; t < m_count; ++t)
                    next[t] += added.numbers[t];
                m_chosen.push_back(added.wayIndex);
                if (m_level)
                    m_level->hang(added.wayIndex);
                branch(thing + 1, next, taken | takes);
                if (m_level)
                    m_level->takeOff();
                m_chosen.pop_back();
            }
    }

    /// With just these things: the loads that may do, the best first on either side.
    void load(const Numbers& now)
    {
        double wanted = 0, base = 0;
        for (std::size_t t = 0; t < m_count; ++t) {
            wanted += (m_question.targets[t].wanted.si() - now[t].pull) / static_cast<double>(m_count);
            base += now[t].u2 + marks2(m_on->path, m_question.targets[t].place, now[t]);
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
        const auto look = [&](std::size_t i) {
            const double square = cost2(i);
            if (within(square) && (!m_level || within(square + m_level->square(iron[i]))))
                weigh(i);
        };
        // away from the load that suits best the misses only get worse
        auto from = start, to = start;
        while (to < iron.size() && within(floor2(to)))
            ++to;
        while (from > 0 && within(floor2(from - 1)))
            --from;
        if (from == to)
            return;
        const double least = std::min(to > start ? floor2(start) : never, from < start ? floor2(start - 1) : never);
        if (m_level && !within(least + m_level->leastSquare(iron[from], iron[to - 1])))
            return;
        for (std::size_t i = start; i < to && within(floor2(i)); ++i)
            look(i);
        for (std::size_t i = start; i-- > from && within(floor2(i));)
            look(i);
    }

    /// By the engine itself.
    void weigh(std::size_t i)
    {
        const std::size_t index = m_on->loads[i];
        const Setup setup = choices::setupOf(m_question, index, m_chosen);
        auto answer = answerOf(m_question, setup, index, m_chosen);
        if (!answer)
            return;
        count(*answer);
        if ((!m_next || better(*answer, *m_next)) && !isForbidden(setup))
            take(std::move(*answer));
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
    std::optional<LevelCost> m_level;
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
