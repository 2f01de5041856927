// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace steelyard {

/// A text file of numbers in columns, with what stood above them.
struct NumberTable {
    std::vector<std::vector<std::string>> above; ///< lines before the numbers, by field; the last one is the heading where it fits
    std::vector<std::vector<double>> columnScores; ///< column by column, all of one length
    std::size_t firstLineNumber = 0;             ///< of the numbers in the file, from 1

    [[nodiscard]] std::size_t rowsCount() const { return columnScores.empty() ? 0 : columnScores.front().size(); }
    /// The last line above, when it has a field a column, or whole over a lone column; empty otherwise.
    [[nodiscard]] std::vector<std::string> headings() const;
};

/// Reads columns apart by semicolon, tab, comma or spaces, with a decimal point or a decimal comma; which of them is found from the file.
/// Numbers begin at the first line that is all numbers and go on to the end; blank lines at the end count for nothing. UTF-8 with or
/// without a byte order mark; lines end as they do anywhere; fields may stand in quotes. Refuses more than 64 MB, a zero byte ("text"),
/// no line of numbers, more than 64 columns, a line among the numbers that has other fields or something that is no finite number ("line
/// 57"), and commas that could be either ("separator": 1,500 alone is one and a half or one thousand five hundred).
[[nodiscard]] Result<NumberTable> readNumberTable(std::string_view text);

}
