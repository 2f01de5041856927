// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace steelyard {

/// Why something was refused. Codes are fixed; sentences for people are made from them elsewhere.
enum class Refusal {
    NotFinite,        ///< a number is missing, infinite or not a number
    OutOfRange,       ///< a number lies outside what the thing can have
    TooFewPoints,     ///< a fit has fewer points than coefficients
    PointsNotApart,   ///< points coincide, so that a curve cannot be drawn through them
    BelowRest,        ///< a band was read shorter than at rest, or at rest with a load on
    NoRisingFit,      ///< no model rises over the measured lengths
    HeightsOutOfOrder,///< bottom, sticking zone and top are not in this order
    AnchorOnWrongSide,///< anchored below, yet above the bar's lowest mark; or above, yet below its highest
    NotThere,         ///< the thing asked for is not in the kit
    TooMany,          ///< more than the kit has, or than can be worked through
    NotFalling,       ///< what has to fall rises: the help of an elastic aid less stretched, the speed with a heavier sled
    NotStill,         ///< somebody who was weighed by a record of force did not stand or pull still meanwhile
    NoFlight,         ///< a record of force without a flight in it
    NoPull,           ///< a record of force without a pull in it
    DipBeforePull,    ///< the force fell before it rose, so that the pull began with a drop of the body
    RearFootSupported,///< the other foot carries what nobody knows
    NotComparable,    ///< measured in ways that cannot be set against each other
    UnknownUnit,      ///< numbers without the unit they are in
};

/// A refusal with the name of the entry that caused it ("pitch", "point 3"), for the one who has to put it right.
struct Error {
    Refusal code;
    std::string what;
    bool operator==(const Error&) const = default;
};

/// A value, or the reason there is none. Reading the wrong side is a programming fault and ends the process.
template <typename T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const T& operator*() const { return *std::get_if<0>(&m_state); }
    [[nodiscard]] T& operator*() { return *std::get_if<0>(&m_state); }
    [[nodiscard]] const T* operator->() const { return std::get_if<0>(&m_state); }
    [[nodiscard]] const Error& error() const { return *std::get_if<1>(&m_state); }

private:
    std::variant<T, Error> m_state;
};

}
