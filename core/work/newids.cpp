// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/newids.h"

#include <utility>

namespace steelyard {

NewIds randomIds(seal::RandomSource random)
{
    return [from = std::move(random)] {
        RecordId id;
        from(id.bytes);
        return id;
    };
}

}
