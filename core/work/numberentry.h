// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace steelyard {

/// Why a key was not taken, or a number cannot be kept.
enum class EntryRefusal : std::uint8_t {
    SecondPoint,     ///< there is a decimal point already
    TooManyDigits,   ///< no room before the point
    TooManyDecimals, ///< no room after the point
    NotAKey,         ///< a key that no number has
    NothingKeyed,
    BelowLeast,
    AboveMost,
};

/// What may be keyed into one field.
struct EntryLimits {
    int digitCount = 3;      ///< before the point
    int decimalCount = 2;    ///< after it; 0 takes no point
    double leastRatio = 0;   ///< least value in the shown unit
    double mostRatio = 999;  ///< most value in the shown unit
};

/// A number being keyed: it shows exactly what was keyed, with a nought before a leading point, and says why a key was
/// not taken; no key is dropped unsaid.
class NumberEntry {
public:
    explicit NumberEntry(const EntryLimits& limits) : m_limits(limits) {}

    /// A digit or '.'; the refusal if it was not taken. The text does not change then.
    std::optional<EntryRefusal> press(char key);
    /// Takes the last key back; does nothing on an empty entry.
    void rub();
    void clear() { m_keyed.clear(); }

    [[nodiscard]] std::string text() const { return m_keyed.starts_with('.') ? "0" + m_keyed : m_keyed; }
    /// The number as keyed; none while nothing but a point is there.
    [[nodiscard]] std::optional<double> ratioKeyed() const;
    /// Why it cannot be kept; none when it can.
    [[nodiscard]] std::optional<EntryRefusal> check() const;
    [[nodiscard]] const EntryLimits& limits() const { return m_limits; }

private:
    EntryLimits m_limits;
    std::string m_keyed;
};

/// Why a number deserves a question before it is kept.
enum class Doubt : std::uint8_t {
    None,
    FarOff,              ///< more than 20 % away from last time
    PoundsForKilograms,  ///< 2.2 times as much, or as little
    TenTimes,            ///< 8 to 12 times as much, or as little: a nought or a point too many or too few
};

/// How a number looks beside that of last time, both above 0 and in one unit; no doubt otherwise. The bounds are ours.
[[nodiscard]] Doubt doubtOf(double ratioKeyed, double ratioLastTime);

}
