// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace steelyard {

enum class MassUnit : std::uint8_t { Kilogram, Pound };
enum class LengthUnit : std::uint8_t { Centimetre, Inch };

/// What is typed and shown in; it belongs to the vault, not to the device.
struct VaultSettings {
    MassUnit mass = MassUnit::Kilogram;
    LengthUnit length = LengthUnit::Centimetre;
    bool operator==(const VaultSettings&) const = default;
};

}
