// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/clocks.h"

#include "core/journal/faults.h"

#include <algorithm>
#include <limits>

namespace steelyard::journal {

void Stamper::see(const Clock& clock)
{
    if ((!m_highest || clock > *m_highest) && !planted(Fault::SeenClocksIgnored))
        m_highest = clock;
}

Stamp Stamper::stamp(Instant now)
{
    now = std::clamp(now, earliestInstant, latestInstant);
    Stamp stamp;
    stamp.clock.wall = now;
    if (m_highest) {
        stamp.doubtful = now < m_highest->wall - furthestBehind || now > m_highest->wall + furthestAhead;
        if (now <= m_highest->wall) {
            stamp.clock = *m_highest;
            if (stamp.clock.count < std::numeric_limits<std::uint32_t>::max())
                ++stamp.clock.count;
            else
                stamp.clock = {stamp.clock.wall + std::chrono::milliseconds(1), 0};
        }
    }
    if (stamp.clock.wall != now)
        stamp.reading = now;
    m_highest = stamp.clock;
    return stamp;
}

}
