// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/probe/fields.h"

#include <iosfwd>
#include <string>
#include <string_view>

namespace steelyard::probe {

/// Longest line that is read; a force record of a minute takes a tenth of it.
inline constexpr std::size_t longestLine = 8'000'000;

/// Reads one line of JSON. Refuses what is not JSON, a key that stands twice, and nesting deeper than anything asked for.
[[nodiscard]] Json read(std::string_view line);

/// JSON text on one line with numbers of 17 significant digits. Refuses a number that JSON cannot say.
[[nodiscard]] std::string written(const nlohmann::ordered_json& value);

/// The answer to one line, without a line end: `{"out": …}` or `{"error": …}`.
[[nodiscard]] std::string answer(std::string_view line);

/// Answers a stream line by line; empty lines are skipped, both kinds of line end are taken.
void answerAll(std::istream& in, std::ostream& out);

}
