// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/implements/sledline.h"

#include "core/measure/conditions.h"

#include <algorithm>
#include <array>

namespace steelyard {

namespace {

/// No watch tells speeds apart that differ by less.
constexpr double roundingShare = 1e-9;

}

Result<SledRun> timedRun(const Estimate<Mass>& total, const Estimate<Length>& distance, const Estimate<Seconds>& time)
{
    if (const auto wrong = broken({{isPositive(total), "mass"}, {isPositive(distance), "distance"}, {isPositive(time), "time"}}))
        return *wrong;
    return SledRun{total, speedOf(distance, time)};
}

Result<LoadSpeedLine> LoadSpeedLine::of(std::span<const SledRun> runs)
{
    if (runs.size() < 3)
        return Error{Refusal::TooFewPoints, "points"};
    std::vector<double> masses, speeds;
    for (const SledRun& run : runs) {
        if (const auto wrong = broken({{isPositive(run.total), "mass"}, {isPositive(run.speed), "speed"}}))
            return *wrong;
        masses.push_back(run.total.number());
        speeds.push_back(run.speed.number());
    }
    auto line = PolynomialFit::of(masses, speeds, 1, false);
    if (!line)
        return line.error();
    LoadSpeedLine fitted(std::move(*line));
    const auto [least, most] = std::minmax_element(masses.begin(), masses.end());
    // speeds that are all alike leave a slope of rounding, and a load beyond all measure
    if (!(-fitted.slope() * (*most - *least) > roundingShare * fitted.free()))
        return Error{Refusal::NotFalling, "points"};
    fitted.m_runs.assign(runs.begin(), runs.end());
    fitted.m_lightest = kilograms(*least);
    fitted.m_heaviest = kilograms(*most);
    return fitted;
}

Uncertainty LoadSpeedLine::uncertaintyFor(double byFree, double bySlope) const
{
    const LinearFit& fit = m_line.fit();
    Uncertainty sum;
    if (const auto own = fit.standardError(std::array{byFree, bySlope}); own && *own > 0)
        sum.add({ownSource, {*own, 0, 0}, static_cast<double>(fit.degreesOfFreedom())});
    const std::vector<double>& c = fit.unscaledCovariance;
    for (const SledRun& run : m_runs) {
        // by this run's speed: the coefficients are (XᵀX)⁻¹Xᵀv; its mass acts as a speed that is off by the slope
        const double m = run.total.number(), bySpeed = byFree * (c[0] + c[1] * m) + bySlope * (c[2] + c[3] * m);
        sum.addScaled(run.speed.uncertainty, bySpeed);
        sum.addScaled(run.total.uncertainty, -slope() * bySpeed);
    }
    return sum;
}

Estimate<Speed> LoadSpeedLine::freeSpeed() const
{
    return speedAt(Mass{});
}

Estimate<Speed> LoadSpeedLine::speedAt(Mass total) const
{
    return {Speed::fromSi(m_line.at(total.si())), uncertaintyFor(1, total.si())};
}

Result<Estimate<Mass>> LoadSpeedLine::loadFor(double speedLossShare) const
{
    if (!(speedLossShare >= 0 && speedLossShare <= 1))
        return Error{Refusal::OutOfRange, "speed loss"};
    const double load = -speedLossShare * free() / slope();
    return Estimate<Mass>{kilograms(load), uncertaintyFor(-speedLossShare / slope(), -load / slope())};
}

bool LoadSpeedLine::fallsClearly() const
{
    return -slope() > uncertaintyFor(0, 1).giveOrTake();
}

}
