// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/legcheck/forcerecord.h"

#include <cmath>
#include <numbers>
#include <vector>

namespace steelyard::tests {

/// A made-up record of force, put together piece by piece.
class Trace {
public:
    explicit Trace(double rate) : m_record{hertz(rate), {}} {}

    Trace& hold(double newtonsHeld, double seconds) { return add(seconds, [=](double) { return newtonsHeld; }); }
    /// Half a sine on top of a weight.
    Trace& push(double weight, double amplitude, double seconds)
    {
        return add(seconds, [=](double share) { return weight + amplitude * std::sin(std::numbers::pi * share); });
    }
    /// Rises to a force as e-functions do.
    Trace& pull(double weight, double rise, double timeConstant, double seconds)
    {
        return add(seconds, [=](double share) { return weight + rise * (1 - std::exp(-share * seconds / timeConstant)); });
    }
    /// Shakes everything so far up and down by turns, two samples each way so that neither sums nor pairs cancel it.
    Trace& shake(double newtonsOff)
    {
        for (std::size_t i = 0; i < m_record.force.size(); ++i)
            m_record.force[i] += newtons(i % 4 < 2 ? newtonsOff : -newtonsOff);
        return *this;
    }
    /// What an empty plate shows.
    Trace& offset(double newtonsOff)
    {
        for (Force& force : m_record.force)
            force += newtons(newtonsOff);
        return *this;
    }

    [[nodiscard]] const ForceRecord& record() const { return m_record; }

private:
    template <typename At>
    Trace& add(double seconds, At&& at)
    {
        const auto count = static_cast<std::size_t>(std::round(seconds * m_record.rate.si()));
        for (std::size_t i = 0; i < count; ++i)
            m_record.force.push_back(newtons(at(static_cast<double>(i) / static_cast<double>(count))));
        return *this;
    }

    ForceRecord m_record;
};

}
