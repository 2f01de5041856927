// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/secretmemory.h"

/** Passphrases drawn from the word list of the assets. */
namespace fivewords {

inline constexpr int drawnCount = 5;
/// Words on the list, all different.
[[nodiscard]] int wordCount();
/// What guessing has to cover: drawnCount · log2(wordCount) bits.
[[nodiscard]] double entropyBitCount();
/// Five words with a space between them, each as likely as every other.
[[nodiscard]] steelyard::seal::Outcome<steelyard::seal::SecretText> draw(const steelyard::seal::RandomSource& random);

}
