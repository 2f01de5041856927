// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/refusal.h"
#include "mobile/text/sentences.h"

/** Sentences about the vault: one for what is the matter, one for what to do next. */
namespace vaulttexts {

[[nodiscard]] sentences::Said said(const steelyard::vault::Refusal& refusal);
/// For a recovery code that was typed.
[[nodiscard]] sentences::Said said(steelyard::seal::Code code);
/// Whether another secret, or the same one once more, may still open the vault or make it.
[[nodiscard]] bool anotherTryHelps(steelyard::vault::Code code);
[[nodiscard]] sentences::Said restartRefused();
[[nodiscard]] QString noBackupYet();

}
