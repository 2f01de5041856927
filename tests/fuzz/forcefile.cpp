// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/forcefile.h"
#include "core/legcheck/jumprecord.h"
#include "tests/fuzz/target.h"

#include <cmath>

using namespace steelyard;

/// Bytes as a file of force: read or refused, with and without what somebody says of it; and what is read is worked as a jump.
void fuzzing::examine(seal::ByteView bytes)
{
    const std::string_view text(reinterpret_cast<const char*>(bytes.data()), bytes.size());
    for (const ForceFileHints& hints : {ForceFileHints{}, ForceFileHints{hertz(100), ForceUnit::Kilonewton}}) {
        const auto file = readForceFile(text, hints);
        if (!file) {
            promise(!file.error().what.empty(), "a refusal names what it is about");
            continue;
        }
        promise(!file->plates.empty() && file->plates.size() <= 2 && file->plates.front().size() == file->plates.back().size(), "one plate or two, of one length");
        promise(!file->areSidesKnown || file->plates.size() == 2, "sides are known of two plates only");
        const ForceRecord record = file->together();
        promise(record.rate > Frequency{} && std::isfinite(record.rate.si()), "a rate is a number above 0");
        if (const auto jump = forceJump(record, ShortWeighing::Allowed))
            promise(jump->onsetIndex < jump->takeoffIndex && jump->takeoffIndex < record.force.size(), "a jump lies in its record");
    }
}
