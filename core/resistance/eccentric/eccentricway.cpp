// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/resistance/eccentric/eccentricway.h"

#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

struct Added {
    Uncertain<Mass> iron{}; ///< both sides together
    Force uPush;
    std::vector<HungItem> left, right;
    std::optional<Uncertain<Height>> touch;
    bool isKnown = true;
};

Result<Added> ironAdded(const Uncertain<Mass>& mass, double pieces, const char* name)
{
    if (!mass.isSound() || mass.value <= Mass{})
        return Error{Refusal::OutOfRange, name};
    Added added;
    added.iron = {pieces * mass.value, pieces * mass.u};
    return added;
}

class AddedBy {
public:
    explicit AddedBy(const LiftPath& path) : m_path(path) {}

    Result<Added> operator()(const HooksReleased& way) const
    {
        auto added = ironAdded(way.each, 2, "hook");
        if (!way.touch.isSound())
            return Error{Refusal::OutOfRange, "touch"};
        if (way.touch.value <= m_path.bottom || way.touch.value > m_path.top)
            return Error{Refusal::HeightsOutOfOrder, "touch"};
        if (added)
            (*added).touch = way.touch;
        return added;
    }
    Result<Added> operator()(const PartnerLiftsOff& way) const { return ironAdded(way.both, 1, "plates"); }
    Result<Added> operator()(const DumbbellsDropped& way) const { return ironAdded(way.each, 2, "dumbbell"); }
    Result<Added> operator()(const PartnerAdds& way) const
    {
        Added added;
        added.isKnown = way.push.has_value();
        if (!added.isKnown)
            return added;
        if (!way.push->isSound() || way.push->value < Force{})
            return Error{Refusal::OutOfRange, "push"};
        added.iron.value = asMass(way.push->value);
        added.uPush = way.push->u;
        return added;
    }
    Result<Added> operator()(const BandsLetGo& way) const
    {
        const auto areBands = [](const std::vector<HungItem>& items) { return std::all_of(items.begin(), items.end(), [](const HungItem& item) { return std::holds_alternative<HungBand>(item); }); };
        if ((way.left.empty() && way.right.empty()) || !areBands(way.left) || !areBands(way.right))
            return Error{Refusal::NotThere, "bands"};
        Added added;
        added.left = way.left;
        added.right = way.right;
        return added;
    }

private:
    const LiftPath& m_path;
};

/// The set-up of the way down, had its overload no end.
Setup downOf(const Setup& up, const Added& added)
{
    Setup down = up;
    down.plates += added.iron.value;
    down.uIron = inSquares(up.uIron + added.iron.u, asMass(added.uPush));
    down.left.insert(down.left.end(), added.left.begin(), added.left.end());
    down.right.insert(down.right.end(), added.right.begin(), added.right.end());
    return down;
}

/// The mean with what is added only down to the touch: each mark moves the mean of the bar and the share of the path.
Reading meanToTouch(const Setup& up, const Added& added)
{
    const Height bottom = up.path.bottom, top = up.path.top, touch = added.touch->value;
    const Length path = top - bottom;
    const double share = (top - touch) / path;
    Setup without = up;
    without.uIron = up.uIron + share * added.iron.u;
    without.path.uMark = {};
    const PullSum sum(without);
    const Reading bar = sum.meanReading(bottom, top);
    const Force hooks = weight(added.iron.value);
    const Force byTop = sum.total(top) - bar.value + (touch - bottom) / path * hooks;
    const Force byBottom = bar.value - sum.total(bottom) + share * hooks;
    const double mark = up.path.uMark / path;

    Uncertainty all;
    all.add({ownSource, {bar.u.si()}, bar.degreesOfFreedom});
    all.add({ownSource, {mark * byTop.si(), mark * byBottom.si(), added.touch->u / path * hooks.si()}});
    return {bar.value + share * hooks, newtons(all.standard()), newtons(all.giveOrTake()), all.degreesOfFreedom()};
}

}

Result<DownAndUp> downAndUp(const Setup& up, const EccentricWay& way)
{
    auto curve = pullCurve(up);
    if (!curve)
        return curve.error();
    const auto added = std::visit(AddedBy(up.path), way);
    if (!added)
        return added.error();
    DownAndUp both;
    both.up = std::move(*curve);
    both.ends = added->touch.value_or(Uncertain<Height>{up.path.bottom, up.path.uMark});
    if (!added->isKnown)
        return both;
    Setup down = downOf(up, *added);
    const auto readAt = [&](Height h) {
        const PullSum sum(down);
        return sum.knows(h) ? std::optional(sum.at(h)) : std::nullopt;
    };
    both.downTop = readAt(up.path.top);
    if (added->touch && both.up.mean)
        both.downMean = meanToTouch(up, *added);
    else if (!added->touch)
        if (const PullSum sum(down); sum.knowsAll(up.path.bottom, up.path.top))
            both.downMean = sum.meanReading(up.path.bottom, up.path.top);
    down.path.uMark = both.ends.u;
    both.downEnds = readAt(both.ends.value);
    return both;
}

}
