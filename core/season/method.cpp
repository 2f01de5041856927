// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/method.h"

#include <algorithm>
#include <array>

namespace steelyard {

namespace {

/// Something that several of the lifts that ship have in common; at most so many of them, the rest 0.
template <typename What>
struct Common {
    What what;
    std::array<std::uint16_t, 16> liftNumbers;
};

constexpr std::array byMethod = {
    Common<Method>{Method::Machine, {23, 24}},
    Common<Method>{Method::Overhead, {8, 9, 19, 20, 29, 30, 31, 37}},
    Common<Method>{Method::Tyre, {32}},
    Common<Method>{Method::Implement, {30, 31}},
    Common<Method>{Method::Carry, {33, 34, 35, 36, 37}},
    Common<Method>{Method::Sled, {38, 39}},
    Common<Method>{Method::Kettlebell, {27, 28, 29}},
    Common<Method>{Method::IsometricTest, {25, 26}},
    Common<Method>{Method::Jumps, {40}},
    Common<Method>{Method::Throws, {41}},
};

constexpr std::array byGroup = {
    Common<LiftGroup>{LiftGroup::Squat, {1, 2, 3, 4, 5, 23, 24, 25}},
    Common<LiftGroup>{LiftGroup::Hinge, {10, 14, 15, 16, 17, 18, 20, 21, 22, 26, 27, 28, 30, 32}},
    Common<LiftGroup>{LiftGroup::Press, {6, 7, 8, 9, 13, 19, 29, 30, 31}},
    Common<LiftGroup>{LiftGroup::Pull, {10, 11, 12}},
    Common<LiftGroup>{LiftGroup::Explosive, {9, 18, 19, 20, 21, 22, 27, 28, 40, 41}},
    Common<LiftGroup>{LiftGroup::OneLeg, {3, 4, 5, 24}},
};

template <typename What, std::size_t count>
std::vector<What> commonTo(const LiftId& lift, const std::array<Common<What>, count>& table)
{
    std::vector<What> those;
    for (const Common<What>& row : table)
        if (shippedLift(lift) && std::find(row.liftNumbers.begin(), row.liftNumbers.end(), lift.number) != row.liftNumbers.end())
            those.push_back(row.what);
    return those;
}

}

std::vector<Method> methodsOf(const LiftId& shipped)
{
    return commonTo(shipped, byMethod);
}

std::vector<LiftGroup> groupsOf(const LiftId& shipped)
{
    return commonTo(shipped, byGroup);
}

}
