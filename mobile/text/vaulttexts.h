// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/snapshot.h"
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
/// What opening found that is not as usual, the gravest first; and forms of a newer version that wait unread.
[[nodiscard]] std::vector<sentences::Said> found(const steelyard::vault::Findings& findings, std::size_t unreadFormCount,
                                                 const QString& folder = {});

}
