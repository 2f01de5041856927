// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/athlete.h"

namespace steelyard {

namespace {

template <typename Value>
std::optional<Value> lastBy(const Athlete& athlete, std::chrono::sys_days day, std::optional<Value> BodySize::* which)
{
    std::optional<Value> last;
    for (const BodySize& size : athlete.sizes)
        if (size.day <= day && size.*which)
            last = size.*which;
    return last;
}

}

std::optional<Entered<Mass>> bodyMassOn(const Athlete& athlete, std::chrono::sys_days day)
{
    return lastBy(athlete, day, &BodySize::mass);
}

std::optional<Entered<Length>> bodyHeightOn(const Athlete& athlete, std::chrono::sys_days day)
{
    return lastBy(athlete, day, &BodySize::height);
}

Majority majorityOn(const std::optional<std::chrono::year>& birthYear, std::chrono::sys_days day, std::chrono::years ofAge)
{
    if (!birthYear)
        return Majority::Unknown;
    return *birthYear + ofAge < std::chrono::year_month_day(day).year() ? Majority::Adult : Majority::MayBeMinor;
}

}
