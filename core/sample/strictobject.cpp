// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/strictobject.h"

#include <cmath>
#include <limits>

namespace steelyard::sample {

using nlohmann::json;

namespace {

/// Whole numbers are numbers too.
bool sameKind(json::value_t have, json::value_t want)
{
    if (want != json::value_t::number_float)
        return have == want;
    return have == json::value_t::number_float || have == json::value_t::number_integer || have == json::value_t::number_unsigned;
}

json nothingOf(json::value_t type)
{
    return type == json::value_t::number_float ? json(0.0) : json(type);
}

std::string joined(const std::vector<std::string>& words)
{
    std::string all;
    for (const std::string& word : words)
        all += (all.empty() ? "" : ", ") + word;
    return all;
}

}

StrictObject::StrictObject(json object, std::string path, Faults& faults)
    : m_object(object.is_object() ? std::move(object) : json::object()), m_path(std::move(path)), m_faults(&faults)
{
}

StrictObject StrictObject::of(const std::string& text, const std::string& fileName, Faults& faults)
{
    json read = json::parse(text, nullptr, false);
    if (!read.is_object())
        faults.push_back(fileName + (read.is_discarded() ? ": is not JSON" : ": is not an object"));
    return {std::move(read), fileName + ": ", faults};
}

std::optional<Mass> StrictObject::mass(const std::string& key)
{
    return hasAsked(key) ? std::optional(neededMass(key)) : std::nullopt;
}

Mass StrictObject::neededMass(const std::string& key)
{
    return kilograms(number(key).get<double>());
}

std::optional<Length> StrictObject::length(const std::string& key)
{
    return hasAsked(key) ? std::optional(neededLength(key)) : std::nullopt;
}

Length StrictObject::neededLength(const std::string& key)
{
    return metres(number(key).get<double>() / (key.ends_with("_mm") ? 1000 : 100));
}

int StrictObject::neededCount(const std::string& key)
{
    const auto count = number(key).get<double>();
    if (count == std::floor(count) && std::abs(count) <= std::numeric_limits<int>::max())
        return static_cast<int>(count);
    fault(key, "is not a whole number");
    return 0;
}

std::string StrictObject::text(const std::string& key)
{
    return hasAsked(key) ? neededText(key) : std::string();
}

std::string StrictObject::neededText(const std::string& key)
{
    auto text = needed(key, Type::string, "text").get<std::string>();
    if (isOf(key, Type::string) && text.find_first_not_of(" \t\n\r") == std::string::npos)
        fault(key, "is empty");
    return text;
}

bool StrictObject::flag(const std::string& key, bool otherwise)
{
    return hasAsked(key) ? neededFlag(key) : otherwise;
}

bool StrictObject::neededFlag(const std::string& key)
{
    return needed(key, Type::boolean, "true or false").get<bool>();
}

std::size_t StrictObject::choiceIndex(const std::string& key, const std::vector<std::string>& words)
{
    const auto word = needed(key, Type::string, "text").get<std::string>();
    for (std::size_t i = 0; i < words.size(); ++i)
        if (words[i] == word)
            return i;
    if (isOf(key, Type::string))
        fault(key, "is \"" + word + "\", not one of " + joined(words));
    return 0;
}

StrictObject StrictObject::neededObject(const std::string& key)
{
    return {needed(key, Type::object, "an object"), pathTo(key), *m_faults};
}

std::vector<StrictObject> StrictObject::neededList(const std::string& key)
{
    std::vector<StrictObject> list;
    const json array = needed(key, Type::array, "a list");
    for (std::size_t i = 0; i < array.size(); ++i) {
        const std::string at = key + "[" + std::to_string(i) + "]";
        if (!array[i].is_object())
            fault(at, "is not an object");
        list.emplace_back(array[i], pathTo(at), *m_faults);
    }
    return list;
}

std::vector<StrictObject> StrictObject::list(const std::string& key)
{
    return hasAsked(key) ? neededList(key) : std::vector<StrictObject>();
}

std::vector<std::string> StrictObject::texts(const std::string& key)
{
    std::vector<std::string> all;
    if (!hasAsked(key))
        return all;
    for (const json& text : needed(key, Type::array, "a list")) {
        if (!text.is_string())
            fault(key, "holds something that is not text");
        all.push_back(text.is_string() ? text.get<std::string>() : std::string());
    }
    return all;
}

void StrictObject::fault(const std::string& key, const std::string& what)
{
    m_faults->push_back(pathTo(key) + ": " + what);
}

void StrictObject::finish()
{
    for (const auto& [key, value] : m_object.items())
        if (!m_asked.contains(key))
            fault(key, "is not a key here");
}

bool StrictObject::hasAsked(const std::string& key)
{
    m_asked.insert(key);
    return has(key);
}

json StrictObject::needed(const std::string& key, Type type, const char* what)
{
    m_asked.insert(key);
    if (isOf(key, type))
        return m_object.at(key);
    fault(key, has(key) ? std::string("is not ") + what : std::string("is missing"));
    return nothingOf(type);
}

bool StrictObject::isOf(const std::string& key, Type type) const
{
    return has(key) && sameKind(m_object.at(key).type(), type);
}

std::string StrictObject::pathTo(const std::string& key) const
{
    return m_path.ends_with(": ") ? m_path + key : m_path + "." + key;
}

}
