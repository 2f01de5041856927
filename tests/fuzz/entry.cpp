// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/entry.h"
#include "tests/fuzz/target.h"

using namespace steelyard::journal;

/// Bytes as a whole entry: as they are, and with a commitment that fits, which chance does not find.
void fuzzing::examine(ByteView bytes)
{
    const Outcome<Entry> entry = decodeEntry(bytes);
    if (entry) {
        const ByteBuffer written = encodeEntry(*entry);
        promise(std::equal(written.begin(), written.end(), bytes.begin(), bytes.end()), "an entry taken is written again byte for byte");
    }
    constexpr std::size_t commitmentAt = 64;
    if (bytes.size() <= Header::size + sizeof(Salt) || bytes.size() > largestEntrySize)
        return;
    ByteBuffer fitting(bytes.begin(), bytes.end());
    Payload payload;
    steelyard::seal::copyBytes(bytes.subspan(Header::size), payload.salt);
    payload.body.assign(bytes.begin() + Header::size + sizeof(Salt), bytes.end());
    steelyard::seal::copyBytes(commitmentTo(payload), steelyard::seal::ByteRoom(fitting).subspan(commitmentAt));
    const Outcome<Header> header = decodeHeader(ByteView(fitting).first(Header::size));
    const Outcome<Entry> whole = decodeEntry(fitting);
    promise(header.ok() == whole.ok(), "an entry is refused for its header or its commitment");
    if (whole) {
        promise(encodeEntry(*whole) == fitting, "an entry is written again byte for byte");
        const Outcome<Held> read = held(*whole);
        promise(!read || read->id == idOf(*header), "an entry is named by its header");
    }
}
