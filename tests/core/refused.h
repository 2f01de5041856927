// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"

#include <string>

namespace steelyard::tests {

/// What a refusal is about; "nothing" where nothing was refused.
template <typename T>
[[nodiscard]] std::string whatOf(const Result<T>& result)
{
    return result ? "nothing" : result.error().what;
}

}
