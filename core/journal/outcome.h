// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/outcome.h"

namespace steelyard::journal {

/// Why bytes are no entry of ours, or an entry cannot be written. Codes are fixed; sentences for people are made elsewhere.
enum class Code {
    NotCborRefuse,            ///< the bytes are no well-formed CBOR, or end too early
    NotDeterministicRefuse,   ///< CBOR that could have been written another way: longer than needed, unsorted, indefinite, said twice
    NotOurCborRefuse,         ///< well-formed, but a kind of item that we never write: float, tag, text as key, too deep
    TrailingBytesRefuse,      ///< something stands behind the end
    TooLargeRefuse,           ///< larger than an entry may be: 64 KiB with its header
    NotAnEntryRefuse,         ///< deterministic CBOR that has not the shape of an entry, or contradicts itself
    NewerVersionUpdateApp,    ///< written by a newer version of the app: kept as it is, shown once the app is newer
    CommitmentWrongRefuse,    ///< the body is not the one that the header was made for
    TwoAthletesSplit,         ///< an entry may name one athlete only
};

using seal::Done;

/// A value, or the code why there is none.
template <typename T>
using Outcome = seal::Outcome<T, Code>;

}
