// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/publishedloads.h"

namespace steelyard {

namespace {

constexpr PublishedEccentric published[] = {
    {{105, 105}, PercentBase::OneRepMax, PercentSpan{100, 100}, "bench press", "",
     "Doan et al. (2002) J Strength Cond Res 16:9–13"},
    {{70, 100}, PercentBase::OneRepMax, PercentSpan{70, 70}, "bench press", "4 × 10, 2 min",
     "Ojasto & Häkkinen (2009) J Strength Cond Res 23:946–953"},
    {{140, 140}, PercentBase::ConcentricLoad, std::nullopt, "", "3 × 6 and 3 × 10",
     "Walker et al. (2016) Front Physiol 7:149"},
    {{100, 110}, PercentBase::OneRepMax, PercentSpan{30, 80}, "bench press", "",
     "Taber et al. (2021) Sports 9:54"},
    {{120, 120}, PercentBase::OneRepMax, PercentSpan{65, 65}, "", "3 × 5",
     "Merrigan & Jones (2021) J Strength Cond Res 35:S107–S113"},
    {{120, 120}, PercentBase::OneRepMax, PercentSpan{80, 80}, "", "3 × 3",
     "Merrigan & Jones (2021) J Strength Cond Res 35:S107–S113"},
};

}

std::span<const PublishedEccentric> publishedEccentrics() { return published; }

}
