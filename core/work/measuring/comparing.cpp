// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/comparing.h"

#include "core/work/measuredkit.h"
#include "core/work/measuring/aidkit.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

std::optional<Compared> compared(const BandMeasurement& first, const BandMeasurement& second)
{
    const auto one = bandFitFrom(first), other = bandFitFrom(second);
    if (!one || !other)
        return std::nullopt;
    const Length length = std::min(one->longestMeasured(), other->longestMeasured());
    if (length <= one->rest() || length <= other->rest())
        return std::nullopt;
    // upright from the floor, a bar at this height stretches each to this length
    const auto a = HungBand::of(Band{*one, SourceId{1}}, BandHang{}), b = HungBand::of(Band{*other, SourceId{2}}, BandHang{});
    if (!a || !b)
        return std::nullopt;
    Uncertainty sum;
    sum.add(a->effectAt(length));
    sum.add(b->effectAt(length));
    const Force pulls[] = {one->pull(length), other->pull(length)};
    return Compared{length, pulls[0], pulls[1], pulls[1] - pulls[0], newtons(sum.giveOrTake())};
}

std::optional<Compared> compared(const ChainMeasurement& first, const ChainMeasurement& second)
{
    const auto one = chainFrom(first), other = chainFrom(second);
    if (!one || !other)
        return std::nullopt;
    const Length metre = metres(1);
    const Force a = weight(one->perLength.value * metre), b = weight(other->perLength.value * metre);
    const double u = std::hypot(weight(one->perLength.u * metre).si(), weight(other->perLength.u * metre).si());
    return Compared{metre, a, b, b - a, newtons(coverageFactor95(knownExactly) * u)};
}

std::optional<Compared> compared(const AidMeasurement& first, const AidMeasurement& second)
{
    const auto one = aidFrom(first), other = aidFrom(second);
    if (!one || !other)
        return std::nullopt;
    const Length height = std::max(one->first(), other->first());
    const auto a = one->at(height), b = other->at(height);
    if (!a || !b || *a == Force{})
        return std::nullopt;
    const double u = std::hypot(one->uncertaintyAt(height)->si(), other->uncertaintyAt(height)->si());
    return Compared{height, *a, *b, *b - *a, newtons(coverageFactor95(knownExactly) * u)};
}

std::optional<Compared> compared(const Measured& first, const Measured& second)
{
    if (const auto* band = std::get_if<BandMeasurement>(&first))
        if (const auto* other = std::get_if<BandMeasurement>(&second))
            return compared(*band, *other);
    if (const auto* chain = std::get_if<ChainMeasurement>(&first))
        if (const auto* other = std::get_if<ChainMeasurement>(&second))
            return compared(*chain, *other);
    if (const auto* aid = std::get_if<AidMeasurement>(&first))
        if (const auto* other = std::get_if<AidMeasurement>(&second))
            return compared(*aid, *other);
    return std::nullopt;
}

}
