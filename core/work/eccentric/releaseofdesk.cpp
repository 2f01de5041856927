// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/eccentric/releaseofdesk.h"

#include "core/work/records/seasonbook.h"
#include "core/work/strength/maxima.h"

#include <algorithm>

namespace steelyard {

DeskRelease deskRelease(const Desk& desk, const SeasonBook& book, const ReleaseFor& whom)
{
    DeskRelease out;
    ReleaseFacts facts;
    facts.kit = desk.kit();
    facts.marks = desk.marks();
    const auto known = book.athlete(whom.athlete) ? gateFacts(book, whom.athlete, whom.lift) : std::nullopt;
    if (known) {
        facts.alike = known->alike;
        out.maximum = knownMaximum(book, whom.athlete, whom.lift, whom.day);
        if (out.maximum && out.maximum->plain)
            facts.maximum = Uncertain<Mass>{out.maximum->value, out.maximum->u};
    }
    out.answer = releaseAnswer(desk.setup(), facts);
    const auto& cautions = desk.answer().cautions;
    out.lookedOver = std::all_of(cautions.begin(), cautions.end(), [](const Caution& caution) { return caution.lookedOver; });
    if (!known || !out.answer.load)
        return out;
    const auto gate = mayUse(book, whom.athlete, {whom.lift, Method::EccentricRelease, whom.day, out.answer.worst, out.maximum, {}});
    if (gate)
        out.gate = *gate;
    return out;
}

}
