// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/whattohang.h"

namespace steelyard {

/// Why an answer is the best: what each thing in it does on the path, and the nearest answer with a thing that it does without.
struct HangReason {
    /// What one way pulls at both ends of the path, both sides together; helping counts below nothing.
    struct Part {
        std::size_t wayIndex = 0;
        Force atBottom, atTop;
        [[nodiscard]] Force rise() const { return atTop - atBottom; }
    };
    /// The best that can be had with one more thing, or with it instead of another.
    struct Other {
        std::size_t wayIndex = 0;
        std::optional<std::size_t> insteadOfIndex; ///< a way of the answer
        HangAnswer answer;
        std::size_t targetIndex = 0;          ///< the target that it is furthest from, counted in tolerances
        [[nodiscard]] Force miss(const HangQuestion& question) const { return answer.readings[targetIndex].value - question.targets[targetIndex].wanted; }
    };
    std::vector<Part> parts; ///< in the order of the answer's ways
    std::optional<Other> other;
};

/// The other is looked for among every way of every thing that the answer does without, with the rest of the answer and with each
/// part of it left out, at every load; nothing where no such thing may hang. `answer` is one of the question's.
[[nodiscard]] HangReason whyHung(const HangQuestion& question, const HangAnswer& answer);

}
