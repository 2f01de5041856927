// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/stretch.h"

namespace steelyard::seal {

/// How one group of a typed recovery code stands.
enum class GroupState {
    Unfinished, ///< symbols are missing
    Wrong,      ///< a symbol, or their order, is not right; or one too many
    Right,
};

/// The way in for somebody who has lost the passphrase: 26 symbols of Crockford's base 32 (130 bits) in five groups, four of
/// 5 symbols and one of 6, each followed by its check symbol: "KAMR4W-…", 31 symbols in all.
/// The check symbol makes the sum of 2^place · symbol over the group equal the group's number, in the field of 32 elements over
/// x⁵ + x² + 1: it stays within the alphabet, where the modulus 37 of the base-32 page needs five signs more. It notices
/// every single wrong symbol and every two symbols exchanged within a group, and groups of one length exchanged whole.
/// Two independent mistakes in one group slip through once in 32 times.
class RecoveryCode {
public:
    static constexpr std::size_t symbolCount = 26;
    static constexpr std::size_t groupCount = 5;
    using Groups = std::array<GroupState, groupCount>;

    [[nodiscard]] static Outcome<RecoveryCode> generate(const RandomSource& random);
    /// Any case; spaces and hyphens anywhere; O for 0, I and L for 1. Where symbols are missing or too many, five parts
    /// between hyphens or spaces are taken for the groups, so that a mistake in one does not spoil those behind it.
    [[nodiscard]] static Outcome<RecoveryCode> parse(std::string_view typed);
    /// The same reading, to point out where a mistake is; an empty text gives five unfinished groups.
    [[nodiscard]] static Groups groups(std::string_view typed);

    /// The groups with a hyphen between them, in capitals.
    [[nodiscard]] Outcome<SecretText> text() const;
    /// Argon2id of the 26 symbols in capitals, without check symbols.
    [[nodiscard]] Outcome<WrappingKey> stretched(const Salt& salt, const StretchCost& cost) const;
    [[nodiscard]] bool sameAs(const RecoveryCode& other) const;

private:
    RecoveryCode() = default;
    static Outcome<RecoveryCode> of(Outcome<SecretBytes> symbols);

    SecretBytes m_symbols;
};

}
