// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>

namespace steelyard {

/// Where f changes sign between a and b, to the last bits of a double (TOMS algorithm 748, Boost.Math).
/// f(a) and f(b) must differ in sign or one be zero; at a jump it gives the jump's place.
template <typename F>
[[nodiscard]] double signChange(const F& f, double a, double b)
{
    const double fa = f(a), fb = f(b);
    if (fa == 0)
        return a;
    if (fb == 0)
        return b;
    std::uintmax_t steps = 200;
    const auto [low, high] = boost::math::tools::toms748_solve(f, a, b, fa, fb, boost::math::tools::eps_tolerance<double>(50), steps);
    return low + (high - low) / 2;
}

}
