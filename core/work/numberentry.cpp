// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/numberentry.h"

#include <charconv>

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

}
