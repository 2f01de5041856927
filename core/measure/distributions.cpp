// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/distributions.h"

#include "core/measure/boostpolicy.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <cmath>
#include <numbers>

namespace steelyard {

double fQuantile(double probability, double degreesAbove, double degreesBelow)
{
    return boost::math::quantile(boost::math::fisher_f_distribution<double, QuietPolicy>(degreesAbove, degreesBelow), probability);
}

double chiSquaredQuantile(double probability, double degreesOfFreedom)
{
    return boost::math::quantile(boost::math::chi_squared_distribution<double, QuietPolicy>(degreesOfFreedom), probability);
}

double normalProbability(double z)
{
    return std::erfc(-z / std::numbers::sqrt2) / 2;
}

}
