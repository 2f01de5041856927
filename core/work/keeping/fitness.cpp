// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/fitness.h"

#include "core/journal/cbor.h"
#include "core/journal/content.h"

#include <cmath>

namespace steelyard {

std::optional<Unfit> unfitText(const std::string& text, std::size_t mostByteCount)
{
    if (text.size() > mostByteCount)
        return Unfit::TextTooLong;
    return journal::checkCbor(journal::textItem(text)) ? std::nullopt : std::optional(Unfit::TextUnreadable);
}

std::optional<Unfit> unfitName(const std::string& name)
{
    if (name.find_first_not_of(" \t\n\r") == std::string::npos)
        return Unfit::NameMissing;
    return unfitText(name, mostNameByteCount);
}

bool fits(const std::optional<Mass>& mass)
{
    return !mass || (std::isfinite(mass->si()) && mass->si() > 0);
}

bool fits(const std::optional<Length>& length)
{
    return !length || (std::isfinite(length->si()) && length->si() > 0);
}

std::optional<Unfit> unfitForMore(const Athlete& athlete, std::chrono::sys_days day)
{
    switch (majorityOn(athlete.birthYear, day)) {
    case Majority::Unknown: return Unfit::BirthYearFirst;
    case Majority::MayBeMinor: return athlete.agreement ? std::nullopt : std::optional(Unfit::AgreementFirst);
    case Majority::Adult: return std::nullopt;
    }
    return std::nullopt;
}

}
