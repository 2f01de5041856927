// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/roots.h"
#include "core/measure/units.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <optional>
#include <utility>
#include <vector>

namespace steelyard {

/// A stretch of the bar's path cut at its corners, between which everything is smooth, and what `See` sees at nine heights of
/// each piece; several questions can be put to the same look.
template <typename See>
class Crossings {
public:
    /// Corners in order, the ends of the stretch among them.
    Crossings(std::vector<Height> corners, See see) : m_corners(std::move(corners)), m_see(std::move(see))
    {
        for (std::size_t i = 0; i + 1 < m_corners.size(); ++i) {
            const double a = m_corners[i].si(), b = m_corners[i + 1].si();
            // a nanometre from a corner its own side counts
            const double inset = std::min(1e-9, (b - a) / 10);
            for (int k = 0; k <= parts; ++k) {
                m_at.push_back(k == 0 ? a + inset : k == parts ? b - inset : a + (b - a) * k / parts);
                m_seen.push_back(m_see(metres(m_at.back())));
            }
        }
    }

    /// The lowest height from which f of what is seen is above 0. A hump that stays below 0 at the heights looked at is climbed
    /// to its summit.
    template <typename F>
    [[nodiscard]] std::optional<Height> firstAbove(const F& f) const
    {
        const auto at = [&](double h) { return f(m_see(metres(h))); };
        for (std::size_t i = 0; i + 1 < m_corners.size(); ++i) {
            const std::size_t first = i * (parts + 1);
            double before = 0, last = 0;
            for (std::size_t k = first; k <= first + parts; ++k) {
                const double now = f(m_seen[k]);
                if (now > 0)
                    return k == first ? m_corners[i] : metres(signChange(at, m_at[k - 1], m_at[k]));
                if (k >= first + 2 && last > now && last >= before) {
                    if (const auto found = onSummit(at, k, before, last, now))
                        return found;
                }
                before = last;
                last = now;
            }
        }
        return std::nullopt;
    }

private:
    template <typename F>
    [[nodiscard]] std::optional<Height> onSummit(const F& f, std::size_t k, double before, double middle, double now) const
    {
        // a smooth summit stands no higher over the middle of three heights than the middle over the lower of the others
        if (2 * middle - std::min(before, now) <= 0)
            return std::nullopt;
        constexpr int bits = 26;
        const auto [summit, depth] = boost::math::tools::brent_find_minima([&](double h) { return -f(h); }, m_at[k - 2], m_at[k], bits);
        return depth < 0 ? std::optional(metres(signChange(f, m_at[k - 2], summit))) : std::nullopt;
    }

    static constexpr int parts = 8;
    std::vector<Height> m_corners;
    See m_see;
    std::vector<double> m_at;
    std::vector<decltype(std::declval<See>()(Height{}))> m_seen;
};

}
