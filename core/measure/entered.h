// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/unit.h"
#include "core/measure/units.h"

#include <algorithm>
#include <array>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace steelyard {

/// Digits with a sign and a point among them, as many as the journal takes: 18 and both. A longer text is none of a number, and none
/// is kept of it. Records are copied at every step of a load, so it takes no memory of its own.
class TypedDigits {
public:
    TypedDigits() = default;
    TypedDigits(std::string_view text) : m_size(text.size() > m_chars.size() ? 0 : static_cast<std::uint8_t>(text.size()))
    {
        std::copy_n(text.begin(), m_size, m_chars.begin());
    }
    TypedDigits(const std::string& text) : TypedDigits(std::string_view(text)) {}
    TypedDigits(const char* text) : TypedDigits(std::string_view(text)) {}

    [[nodiscard]] std::string_view text() const { return {m_chars.data(), m_size}; }
    /// Behind the point, or the comma.
    [[nodiscard]] int placeCount() const
    {
        const auto point = text().find_first_of(".,");
        return point == std::string_view::npos ? 0 : static_cast<int>(m_size - point) - 1;
    }
    bool operator==(const TypedDigits&) const = default;

private:
    std::array<char, 20> m_chars{};
    std::uint8_t m_size = 0;
};

/// The digits that somebody typed, just so, and the unit they were typed in.
struct AsTyped {
    TypedDigits decimal;
    Unit unit = Unit::Kilogram;
    bool operator==(const AsTyped&) const = default;
};

/// A quantity of a record, with what was typed for it where that is known. Two are the same when their quantities are, however typed;
/// a new quantity has nothing typed.
template <typename Quantity>
class Entered {
public:
    Entered() = default;
    Entered(Quantity quantity) : m_quantity(quantity) {}
    Entered(Quantity quantity, const AsTyped& typed) : m_quantity(quantity), m_typed(typed) {}

    operator Quantity() const { return m_quantity; }
    [[nodiscard]] Quantity quantity() const { return m_quantity; }
    [[nodiscard]] constexpr double si() const { return m_quantity.si(); }
    [[nodiscard]] const std::optional<AsTyped>& typed() const { return m_typed; }

    friend bool operator==(const Entered& a, const Entered& b) { return a.m_quantity == b.m_quantity; }
    friend bool operator==(const Entered& a, const Quantity& b) { return a.m_quantity == b; }
    friend std::partial_ordering operator<=>(const Entered& a, const Entered& b) { return a.m_quantity <=> b.m_quantity; }
    friend std::partial_ordering operator<=>(const Entered& a, const Quantity& b) { return a.m_quantity <=> b; }

private:
    Quantity m_quantity;
    std::optional<AsTyped> m_typed;
};

}
