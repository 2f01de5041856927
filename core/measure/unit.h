// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace steelyard {

/// The units that quantities are typed in. Numbers are written down for ever and never used again.
enum class Unit : std::uint16_t {
    Kilogram = 1, Gram = 2, Pound = 3,
    Metre = 11, Centimetre = 12, Millimetre = 13, Inch = 14, Foot = 15,
    Second = 21, Minute = 22,
    Newton = 31, Kilonewton = 32,
    Litre = 41,
};

}
