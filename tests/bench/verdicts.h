// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace verdicts {

/// The middle one; of an even number, the mean of the middle two. Not a number of nothing.
[[nodiscard]] double median(std::vector<double> values);

/// Milliseconds; the least of three, so that what else the machine did is not counted.
[[nodiscard]] double timeOf(const std::function<void()>& answer);

/// Holds a figure against the most it may be.
void hold(const std::string& figure, double value, double most, const std::string& unit);
/// A figure that could not be had counts as a broken bound.
void missing(const std::string& figure);
/// Prints figure, bound and verdict; false when one is broken.
[[nodiscard]] bool print();

}
