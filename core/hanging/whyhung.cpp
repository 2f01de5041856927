// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hanging/whyhung.h"

#include "core/hanging/pathchoices.h"
#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace steelyard {

using namespace choices;

namespace {

/// One choice, and the square of about what it costs.
struct Tried {
    double square = never;
    std::size_t loadIndex = 0;
    std::vector<std::size_t> ways;
    std::size_t newWay = 0;
    std::optional<std::size_t> insteadOfIndex;
};

class Others {
public:
    Others(const HangQuestion& question, const HangAnswer& answer) : m_question(question), m_answer(answer)
    {
        for (const OnPath& on : pathsOf(question))
            if (on.worn)
                look(on);
    }

    /// The first that may hang, by what they cost.
    [[nodiscard]] std::optional<HangReason::Other> best()
    {
        onlyTheBest();
        for (const Tried& one : m_tried) {
            const Setup setup = choices::setupOf(m_question, one.loadIndex, one.ways);
            auto answer = answerOf(m_question, setup, one.loadIndex, one.ways);
            if (answer && !isForbidden(setup))
                return HangReason::Other{one.newWay, one.insteadOfIndex, *answer, furthest(*answer)};
        }
        return std::nullopt;
    }

private:
    static constexpr std::size_t mostTriedCount = 500;

    void onlyTheBest()
    {
        std::sort(m_tried.begin(), m_tried.end(), [](const Tried& a, const Tried& b) { return std::tie(a.square, a.loadIndex, a.ways) < std::tie(b.square, b.loadIndex, b.ways); });
        if (m_tried.size() < mostTriedCount)
            return;
        m_tried.resize(mostTriedCount);
        m_worst = m_tried.back().square;
    }

    [[nodiscard]] bool takesThing(std::size_t thing) const
    {
        return std::any_of(m_answer.wayIndex.begin(), m_answer.wayIndex.end(), [&](std::size_t way) { return m_question.ways[way].thingIndex == thing; });
    }

    void look(const OnPath& on)
    {
        std::vector<const Added*> kept;
        for (const auto& thing : on.things)
            for (const Added& added : thing)
                if (std::find(m_answer.wayIndex.begin(), m_answer.wayIndex.end(), added.wayIndex) != m_answer.wayIndex.end())
                    kept.push_back(&added);
        // on a path where a part of the answer is not known, there is nothing to compare with
        if (kept.size() != m_answer.wayIndex.size())
            return;
        if (m_question.strength)
            m_level.emplace(levelCostOf(m_question, on.path));
        for (const auto& thing : on.things)
            for (const Added& added : thing) {
                if (takesThing(m_question.ways[added.wayIndex].thingIndex))
                    continue;
                if (kept.size() < m_question.mostThingsCount)
                    weigh(on, kept, added, std::nullopt);
                for (std::size_t out = 0; out < kept.size(); ++out) {
                    auto rest = kept;
                    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(out));
                    weigh(on, rest, added, kept[out]->wayIndex);
                }
            }
    }

    /// Each load with these things.
    void weigh(const OnPath& on, std::vector<const Added*> things, const Added& added, std::optional<std::size_t> insteadOfIndex)
    {
        std::uint64_t taken = 0;
        things.push_back(&added);
        for (const Added* thing : things) {
            const std::uint64_t takes = m_question.ways[thing->wayIndex].takenPieces;
            if (taken & takes)
                return;
            taken |= takes;
        }
        Numbers sum = *on.worn;
        Tried one;
        for (const Added* thing : things) {
            one.ways.push_back(thing->wayIndex);
            for (std::size_t t = 0; t < m_question.targets.size(); ++t)
                sum[t] += thing->numbers[t];
            if (m_level)
                m_level->hang(thing->wayIndex);
        }
        std::sort(one.ways.begin(), one.ways.end());
        one.newWay = added.wayIndex;
        one.insteadOfIndex = insteadOfIndex;
        for (std::size_t i = 0; i < on.iron.size(); ++i) {
            one.square = m_level ? m_level->square(on.iron[i]) : 0;
            for (std::size_t t = 0; t < m_question.targets.size(); ++t) {
                const double miss = on.iron[i] + sum[t].pull - m_question.targets[t].wanted.si();
                one.square += miss * miss + sum[t].u2 + marks2(on.path, m_question.targets[t].place, sum[t]) + on.uIron2[i];
            }
            one.loadIndex = on.loads[i];
            if (one.square < m_worst)
                m_tried.push_back(one);
            if (m_tried.size() == 4 * mostTriedCount)
                onlyTheBest();
        }
        for (std::size_t i = 0; m_level && i < things.size(); ++i)
            m_level->takeOff();
    }

    [[nodiscard]] std::size_t furthest(const HangAnswer& answer) const
    {
        const auto share = [&](std::size_t t) {
            return std::abs((answer.readings[t].value - m_question.targets[t].wanted).si()) / std::max(m_question.targets[t].tolerance.si(), 1e-9);
        };
        std::size_t most = 0;
        for (std::size_t t = 1; t < m_question.targets.size(); ++t)
            if (share(t) > share(most))
                most = t;
        return most;
    }

    const HangQuestion& m_question;
    const HangAnswer& m_answer;
    std::optional<LevelCost> m_level;
    std::vector<Tried> m_tried;
    double m_worst = never; ///< what is no better is not looked at
};

}

HangReason whyHung(const HangQuestion& question, const HangAnswer& answer)
{
    HangReason reason;
    const LiftPath& path = question.loads[answer.loadIndex].path;
    for (const std::size_t way : answer.wayIndex) {
        Setup alone;
        alone.left = question.ways[way].left;
        alone.right = question.ways[way].right;
        const PullSum sum(alone);
        reason.parts.push_back({way, sum.total(path.bottom), sum.total(path.top)});
    }
    reason.other = Others(question, answer).best();
    return reason;
}

}
