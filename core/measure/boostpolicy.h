// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/math/policies/policy.hpp>

namespace steelyard {

/// How Boost.Math is asked here: what it cannot say comes back as no number, nothing is thrown, and doubles stay doubles: in long double a
/// quantile comes out the same within 1e-15, five times slower.
using QuietPolicy = boost::math::policies::policy<boost::math::policies::domain_error<boost::math::policies::ignore_error>,
                                                  boost::math::policies::overflow_error<boost::math::policies::ignore_error>,
                                                  boost::math::policies::evaluation_error<boost::math::policies::ignore_error>,
                                                  boost::math::policies::promote_double<false>>;

}
