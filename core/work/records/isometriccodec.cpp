// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/records/isometriccodec.h"

#include <limits>

namespace steelyard {

Content contentOf(const IsometricPull& pull, const WrittenIn& in)
{
    RecordWriter writer(in);
    if (pull.lift.own.isNone())
        writer.number(1, pull.lift.number);
    else
        writer.id(2, pull.lift.own);
    return writer.length(3, pull.height).mass(4, pull.pull).mass(5, pull.scaleStep).content();
}

std::optional<IsometricPull> isometricPullIn(journal::ByteView content)
{
    RecordReader reader(content);
    IsometricPull pull;
    if (reader.has(2)) {
        pull.lift.own = reader.neededId(2);
    } else {
        const auto number = reader.neededNumber(1);
        if (number <= 0 || number > std::numeric_limits<std::uint16_t>::max())
            return std::nullopt;
        pull.lift.number = static_cast<std::uint16_t>(number);
    }
    pull.height = reader.neededLength(3);
    pull.pull = reader.neededMass(4);
    pull.scaleStep = reader.mass(5);
    return reader.fits() ? std::optional(pull) : std::nullopt;
}

}
