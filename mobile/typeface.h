// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/** The app's own typeface, whose figures all have one width. */
namespace typeface {

/// Loads it from the resources and makes it the application's; false when a weight is missing.
bool install();

}
