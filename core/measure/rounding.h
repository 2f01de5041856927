// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace steelyard {

/// A value and its give-or-take, rounded together for reading.
struct Rounded {
    double value = 0;
    double give = 0;
    int decimals = 0; ///< places after the point that both are shown with
};

/// Rounds a value to where its give-or-take says: the give-or-take to one figure, two if its first figure is a 1,
/// the value to the same place (JCGM 100:2008, 7.2.6, asks for at most two figures; the choice between is ours).
/// Without a give-or-take (below 1e-12 or not finite) the value keeps `plainDecimals` places, and the give is returned as it is.
[[nodiscard]] Rounded roundTogether(double value, double give, int plainDecimals);

}
