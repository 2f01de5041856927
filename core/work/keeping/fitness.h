// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

/// What every record is held to. A name has something in it besides blanks.
[[nodiscard]] std::optional<Unfit> unfitName(const std::string& name);
[[nodiscard]] std::optional<Unfit> unfitText(const std::string& text, std::size_t mostByteCount);
/// A mass or length that is finite and above nothing.
[[nodiscard]] bool fits(const std::optional<Mass>& mass);
[[nodiscard]] bool fits(const std::optional<Length>& length);

/// At most so many bytes of UTF-8 in a name, and in notes.
inline constexpr std::size_t mostNameByteCount = 200, mostNotesByteCount = 20'000;

/// Whether more than name, squad and loads may be kept about somebody on a day: an adult, or a minor with a guardian's agreement.
/// The rule is the project's own; local law decides, and may ask for more.
[[nodiscard]] std::optional<Unfit> unfitForMore(const Athlete& athlete, std::chrono::sys_days day);

}
