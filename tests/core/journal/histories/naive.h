// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

/// The rules of the fold once more, slow and plain, written from the rules and sharing no code with the journal: it reads the bytes
/// by itself, looks at all entries at once, and says in lines of text what is shown.
namespace naive {

struct Raw {
    std::string id;    ///< 32 bytes
    std::string bytes; ///< header, and salt and body unless they were erased
};

/// What the fold of the journal has to say too, each register a line:
/// class, athlete, subject, field, part, then each head from the winner on with its content and shown time; "review" where unequal.
[[nodiscard]] std::vector<std::string> shownLines(const std::vector<Raw>& entries);

}
