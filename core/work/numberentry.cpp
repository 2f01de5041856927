// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/numberentry.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace steelyard {

std::optional<EntryRefusal> NumberEntry::press(char key)
{
    const auto point = m_keyed.find('.');
    if (key == '.') {
        if (m_limits.decimalCount == 0)
            return EntryRefusal::TooManyDecimals;
        if (point != std::string::npos)
            return EntryRefusal::SecondPoint;
        m_keyed += key;
        return std::nullopt;
    }
    if (key < '0' || key > '9')
        return EntryRefusal::NotAKey;
    if (point == std::string::npos) {
        if (m_keyed.size() >= static_cast<std::size_t>(m_limits.digitCount))
            return EntryRefusal::TooManyDigits;
    } else if (m_keyed.size() - point > static_cast<std::size_t>(m_limits.decimalCount)) {
        return EntryRefusal::TooManyDecimals;
    }
    m_keyed += key;
    return std::nullopt;
}

void NumberEntry::rub()
{
    if (!m_keyed.empty())
        m_keyed.pop_back();
}

std::optional<double> NumberEntry::ratioKeyed() const
{
    double value = 0;
    const auto [end, code] = std::from_chars(m_keyed.data(), m_keyed.data() + m_keyed.size(), value);
    if (m_keyed.empty() || code != std::errc{})
        return std::nullopt;
    return value;
}

std::optional<EntryRefusal> NumberEntry::check() const
{
    const auto value = ratioKeyed();
    if (!value)
        return EntryRefusal::NothingKeyed;
    if (*value < m_limits.leastRatio)
        return EntryRefusal::BelowLeast;
    if (*value > m_limits.mostRatio)
        return EntryRefusal::AboveMost;
    return std::nullopt;
}

Doubt doubtOf(double ratioKeyed, double ratioLastTime)
{
    if (!(ratioKeyed > 0) || !(ratioLastTime > 0))
        return Doubt::None;
    // on the edge it is no doubt yet, whatever the last digits of a division say
    constexpr double slack = 1e-9, poundsInKilogram = 1 / 0.45359237, about = 0.03;
    const double up = ratioKeyed / ratioLastTime, apart = std::max(up, 1 / up);
    if (apart >= 8 - slack && apart <= 12 + slack)
        return Doubt::TenTimes;
    if (std::abs(apart / poundsInKilogram - 1) <= about)
        return Doubt::PoundsForKilograms;
    return std::abs(up - 1) > 0.2 + slack ? Doubt::FarOff : Doubt::None;
}

}
