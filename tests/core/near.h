// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <cmath>

namespace steelyard::tests {

/// Equal within a tolerance in the unit of the numbers; a number that is not one is near nothing.
[[nodiscard]] inline bool near(double actual, double expected, double tolerance)
{
    return std::abs(actual - expected) <= tolerance;
}

/// Equal within a share of the expected number; for an expected 0 only 0 is near.
[[nodiscard]] inline bool nearShare(double actual, double expected, double share)
{
    return near(actual, expected, share * std::abs(expected));
}

[[nodiscard]] inline QString versus(double actual, double expected)
{
    return QStringLiteral("%1 instead of %2, off by %3").arg(actual, 0, 'g', 17).arg(expected, 0, 'g', 17).arg(actual - expected, 0, 'g', 3);
}

}

/// Fails with both numbers in the message.
#define VERIFY_NEAR(actual, expected, tolerance) \
    QVERIFY2(steelyard::tests::near(actual, expected, tolerance), qPrintable(steelyard::tests::versus(actual, expected)))
#define VERIFY_NEAR_SHARE(actual, expected, share) \
    QVERIFY2(steelyard::tests::nearShare(actual, expected, share), qPrintable(steelyard::tests::versus(actual, expected)))
