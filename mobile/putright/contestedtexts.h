// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

/** What several devices said differently, in words. */
namespace contestedtexts {

/// "Ana M.: birth year".
[[nodiscard]] QString what(const BookService& book, const steelyard::journal::RegisterKey& key);
/// "2008"; what an entry of that register says.
[[nodiscard]] QString answer(const BookService& book, const steelyard::journal::RegisterKey& key, const steelyard::journal::Held& entry);

}
