// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/** What the app asks of the system it runs on. */
namespace platformhost {

/// Replaces this process by a fresh one of the same program with the same arguments, so that nothing it held stays in memory.
/// Those that begin with `without` are left out. Comes back, with false, only where the system refuses.
[[nodiscard]] bool restart(std::string_view without = {});

}
