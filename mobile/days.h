// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>

#include <chrono>

/// A date of Qt's as the core counts days; Qt's own conversion is not there with Debian 12's compiler.
[[nodiscard]] inline std::chrono::sys_days sysDaysOf(QDate date)
{
    return std::chrono::sys_days(std::chrono::days(QDate(1970, 1, 1).daysTo(date)));
}
