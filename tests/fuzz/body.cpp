// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/clockshift.h"
#include "core/journal/fold.h"
#include "tests/fuzz/target.h"

using namespace steelyard::journal;

/// Bytes as the body of an entry: read, written, folded.
void fuzzing::examine(ByteView bytes)
{
    const Outcome<Body> body = decodeBody(bytes);
    if (!body)
        return;
    const Outcome<ByteBuffer> written = encodeBody(*body);
    promise(written.ok() && std::equal(written->begin(), written->end(), bytes.begin(), bytes.end()), "a body taken is written again byte for byte");
    const Held entry{{}, {}, 1, *body};
    Fold fold;
    promise(fold.take(entry).has_value(), "an entry changes an empty fold");
    promise(!fold.take(entry), "the same entry again changes nothing");
    (void)fold.digest();
    (void)fold.toReview();
    (void)shownTime(entry, {entry});
    Stamper stamper;
    stamper.see(body->stamp.clock);
    promise(stamper.stamp({}).clock > body->stamp.clock || body->stamp.clock.count == UINT32_MAX, "the next stamp is higher");
}
