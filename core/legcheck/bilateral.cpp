// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/bilateral.h"

#include "core/measure/conditions.h"

#include <cmath>

namespace steelyard {

namespace {

Estimate<double> percentOf(double bothScore, double sumScore, Uncertainty uncertainty)
{
    return {100 * bothScore / sumScore - 100, std::move(uncertainty)};
}

Estimate<double> asScore(const Estimate<Mass>& mass) { return {mass.number(), mass.uncertainty}; }

}

Result<BilateralIndex> bilateralIndex(const BilateralScores& scores)
{
    if (const auto wrong = broken({{isPositive(scores.both), "both"}, {isPositive(scores.left), "left"}, {isPositive(scores.right), "right"}}))
        return *wrong;
    const double both = scores.both.number(), sum = scores.left.number() + scores.right.number();
    const double bySide = -100 * both / (sum * sum);
    return BilateralIndex{scores, percentOf(both, sum, propagated({{scores.both.uncertainty, 100 / sum}, {scores.left.uncertainty, bySide}, {scores.right.uncertainty, bySide}}))};
}

Result<BilateralIndex> bilateralIndexOfLoads(const BilateralLoads& external, const Estimate<Mass>& body, BodyInTest bodyInTest)
{
    if (bodyInTest == BodyInTest::RearFootSupported)
        return Error{Refusal::RearFootSupported, "rear foot"};
    if (bodyInTest == BodyInTest::NotLifted)
        return bilateralIndex({asScore(external.both), asScore(external.left), asScore(external.right)});
    if (const auto wrong = broken({{isPositive(body), "body"}, {isNotNegative(external.both), "both"}, {isNotNegative(external.left), "left"}, {isNotNegative(external.right), "right"}}))
        return *wrong;
    const double both = external.both.number() + body.number(), sum = external.left.number() + external.right.number() + 2 * body.number();
    const double ratio = both / sum, bySide = -100 * ratio / sum;
    // the body stands in all three, and its error with it, so it counts once and by its own derivative
    Uncertainty u = propagated({{external.both.uncertainty, 100 / sum}, {external.left.uncertainty, bySide}, {external.right.uncertainty, bySide}, {body.uncertainty, 100 * (1 - 2 * ratio) / sum}});
    const auto system = [&](const Estimate<Mass>& load) { return asScore(sumOf(load, body)); };
    return BilateralIndex{{system(external.both), system(external.left), system(external.right)}, percentOf(both, sum, std::move(u))};
}

std::optional<Error> whyNoIndex(const TestCondition& both, const TestCondition& left, const TestCondition& right)
{
    for (const TestCondition* condition : {&both, &left, &right})
        if (condition->body == BodyInTest::RearFootSupported)
            return Error{Refusal::RearFootSupported, "rear foot"};
    const auto differ = [&](auto member) { return both.*member != left.*member || both.*member != right.*member; };
    if (differ(&TestCondition::what))
        return Error{Refusal::NotComparable, "what is measured"};
    if (differ(&TestCondition::body))
        return Error{Refusal::NotComparable, "body"};
    if (differ(&TestCondition::methodNumber))
        return Error{Refusal::NotComparable, "method"};
    if (both.what == Measured::Time)
        return Error{Refusal::NotComparable, "time"};
    if (both.what == Measured::NetForce && both.body == BodyInTest::Lifted)
        return Error{Refusal::NotComparable, "net force"};
    return std::nullopt;
}

Result<BilateralVerdict> bilateralVerdict(const BilateralIndex& index, int triesCount)
{
    if (triesCount < 1)
        return Error{Refusal::TooFewPoints, "tries"};
    BilateralVerdict verdict{index, index.percent.giveOrTake()};
    const double u = index.percent.u(), size = std::abs(index.percent.number());
    if (!(u > 0))
        return verdict;
    if (size > verdict.giveOrTakePercent) {
        verdict.call = index.percent.number() < 0 ? BilateralCall::Deficit : BilateralCall::Facilitation;
        return verdict;
    }
    verdict.call = BilateralCall::TooClose;
    const double freedom = index.percent.degreesOfFreedom();
    verdict.triesNeededCount = triesToSettle(triesCount, [&](int tries) {
        // effective degrees of freedom grow in step with those of each condition
        const double grown = triesCount > 1 ? freedom * (tries - 1) / (triesCount - 1) : freedom;
        return size > coverageFactor95(grown) * u * std::sqrt(static_cast<double>(triesCount) / tries);
    });
    return verdict;
}

}
