// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/numberentry.h"

#include <charconv>

namespace steelyard {

std::optional<EntryRefusal> NumberEntry::press(char key)
{
    const auto point = m_text.find('.');
    if (key == '.') {
        if (m_limits.decimals == 0)
            return EntryRefusal::TooManyDecimals;
        if (point != std::string::npos)
            return EntryRefusal::SecondPoint;
        m_text += m_text.empty() ? "0." : ".";
        return std::nullopt;
    }
    if (key < '0' || key > '9')
        return EntryRefusal::NotAKey;
    if (point == std::string::npos) {
        if (m_text.size() >= static_cast<std::size_t>(m_limits.digits))
            return EntryRefusal::TooManyDigits;
    } else if (m_text.size() - point > static_cast<std::size_t>(m_limits.decimals)) {
        return EntryRefusal::TooManyDecimals;
    }
    m_text += key;
    return std::nullopt;
}

void NumberEntry::rub()
{
    if (m_text == "0.")
        m_text.clear();
    else if (!m_text.empty())
        m_text.pop_back();
}

std::optional<double> NumberEntry::ratioKeyed() const
{
    double value = 0;
    const auto [end, code] = std::from_chars(m_text.data(), m_text.data() + m_text.size(), value);
    if (m_text.empty() || code != std::errc{})
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
