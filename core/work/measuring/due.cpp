// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/due.h"

#include "core/season/marks.h"

#include <algorithm>

namespace steelyard {

using std::chrono::days;
using std::chrono::sys_days;

days goodFor(const Measured& measured)
{
    constexpr days term{120}, year{365};
    return kindOf(measured) == ItemKind::Band || kindOf(measured) == ItemKind::Aid ? term : year;
}

Due dueOn(const MeasurementRecord& last, sys_days day)
{
    constexpr days soon{14};
    Due due;
    due.age = std::max(days{0}, day - last.day);
    due.next = last.day + goodFor(last.measured);
    due.state = day >= due.next ? DueState::Due : day + soon >= due.next ? DueState::Soon : DueState::Fresh;
    return due;
}

Remeasure remeasureMarks(const Athlete& athlete, sys_days marksTaken, sys_days day)
{
    const auto then = bodyHeightOn(athlete, marksTaken), now = bodyHeightOn(athlete, day);
    if (then && now) {
        const Length change = *now > *then ? *now - *then : *then - *now;
        // a hair over two centimetres apart is not less than two centimetres
        if (change >= 2 * uBarMark - metres(1e-9))
            return Remeasure::Grown;
    }
    constexpr days halfYear{182};
    constexpr std::chrono::years stillGrowing{2};
    const auto then18 = athlete.birthYear ? majorityOn(*athlete.birthYear + stillGrowing, day) : Majority::Unknown;
    if (then18 != Majority::MayBeMinor || day - marksTaken < halfYear)
        return Remeasure::No;
    const bool measuredSince = std::any_of(athlete.sizes.begin(), athlete.sizes.end(), [&](const BodySize& size) {
        return size.height && size.day > marksTaken && size.day <= day && day - size.day < halfYear;
    });
    return measuredSince && then ? Remeasure::No : Remeasure::MayHave;
}

}
