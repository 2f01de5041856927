// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/isometric.h"
#include "core/legcheck/jump.h"
#include "core/legcheck/jumprecord.h"
#include "tests/probe/parts.h"

namespace steelyard::probe {

namespace {

constexpr Range gravityRange{0.1, 100}, rateRange{50, 100'000}, forceRange{-100'000, 100'000};

ForceRecord recordFrom(Fields& in)
{
    ForceRecord record{hertz(in.number("rate_hz", rateRange)), {}};
    for (const double force : in.numbers("force_n", forceRange))
        record.force.push_back(newtons(force));
    return record;
}

template <typename Q>
Out numberOrNull(const std::optional<Q>& quantity)
{
    return quantity ? Out(quantity->number()) : Out(nullptr);
}

}

Out jumpHeight(Fields& in)
{
    const bool byFlight = in.has("flight_s"), byTakeoff = in.has("takeoff_m_s");
    if (byFlight && byTakeoff)
        Fields::refuse("flight_s", "and takeoff_m_s are two questions");
    if (!byFlight && !byTakeoff)
        Fields::refuse("flight_s is missing, or takeoff_m_s", "is missing");
    constexpr Range flightRange{0, 2}, speedRange{0, 10};
    const double given = byFlight ? in.number("flight_s", flightRange) : in.number("takeoff_m_s", speedRange);
    const auto gravity = Acceleration::fromSi(in.number("g_m_s2", gravityRange));
    return {{"height_m", accepted(byFlight ? heightByFlight(exactly(Seconds{given}), gravity) : heightByTakeoff(exactly(Speed::fromSi(given)), gravity)).number()}};
}

Out jumpForce(Fields& in)
{
    const ForceRecord record = recordFrom(in);
    const auto shortWeighing = in.flag("allow_short_weighing", false) ? ShortWeighing::Allowed : ShortWeighing::No;
    const ForceJump jump = accepted(forceJump(record, shortWeighing, Acceleration::fromSi(in.number("g_m_s2", gravityRange, standardGravity.si()))));
    return {{"body_kg", jump.body.number()}, {"onset_s", jump.onset.count()}, {"takeoff_s", jump.takeoff.count()},
            {"landing_s", jump.landing ? Out(jump.landing->count()) : Out(nullptr)}, {"flight_height_m", numberOrNull(jump.flightHeight)},
            {"impulse_height_m", numberOrNull(jump.impulseHeight)}, {"takeoff_m_s", jump.takeoffSpeed.number()}};
}

Out isometricForce(Fields& in)
{
    const IsometricTry pull = accepted(isometricTry(recordFrom(in)));
    Out force = Out::object(), development = Out::object(), impulse = Out::object();
    for (std::size_t i = 0; i < isometricTimes.size(); ++i) {
        const std::string after = std::to_string(isometricTimes[i].count());
        const auto& at = pull.at[i];
        force[after] = at ? Out(at->gross.si()) : Out(nullptr);
        development[after] = at ? Out(at->development.si()) : Out(nullptr);
        impulse[after] = at ? Out(at->netImpulse.si()) : Out(nullptr);
    }
    return {{"body_n", pull.weighing.mean.si()}, {"onset_s", pull.onset.count()}, {"peak_n", pull.grossPeak.si()}, {"net_peak_n", pull.netPeak.si()},
            {"force_at_ms", force}, {"rfd_n_s", development}, {"impulse_n_s", impulse}};
}

}
