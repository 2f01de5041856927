// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/probe/fields.h"

#include <charconv>
#include <cmath>

namespace steelyard::probe {

namespace {

/// More points than any record of a training day, and still quick to work through.
constexpr std::size_t mostEntries = 100'000;

std::string shortest(double value)
{
    char text[40];
    const auto end = std::to_chars(text, text + sizeof text, value).ptr;
    return {text, end};
}

std::string wordsFor(Range range)
{
    return (range.leastCounts ? "from " : "above ") + shortest(range.least) + " to " + shortest(range.most);
}

const Json& asList(const Json& value, const std::string& name)
{
    if (!value.is_array())
        Fields::refuse(name, "must be a list");
    if (value.size() > mostEntries)
        Fields::refuse(name, "has more than " + std::to_string(mostEntries) + " entries");
    return value;
}

std::string entry(const std::string& name, std::size_t i) { return name + "[" + std::to_string(i) + "]"; }

}

Fields::Fields(const Json& object, std::string place) : m_object(object), m_place(std::move(place))
{
    if (!object.is_object())
        refuse(m_place.empty() ? "in" : m_place, "must be an object");
}

void Fields::refuse(const std::string& name, const std::string& complaint)
{
    throw Refused{name + " " + complaint};
}

std::string Fields::name(const std::string& key) const
{
    return m_place.empty() ? key : m_place + "." + key;
}

const Json& Fields::value(const char* key)
{
    const auto at = m_object.find(key);
    if (at == m_object.end())
        refuse(name(key), "is missing");
    m_taken.insert(key);
    return *at;
}

double Fields::checked(const Json& value, const std::string& name, Range range)
{
    if (!value.is_number())
        refuse(name, "must be a number");
    const double number = value.get<double>();
    // written so that a number which is not one fails too
    const bool enough = range.leastCounts ? number >= range.least : number > range.least;
    if (!(enough && number <= range.most))
        refuse(name, "is out of range: " + shortest(number) + " is not " + wordsFor(range));
    return number;
}

double Fields::number(const char* key, Range range)
{
    return checked(value(key), name(key), range);
}

double Fields::number(const char* key, Range range, double otherwise)
{
    return has(key) ? number(key, range) : otherwise;
}

std::optional<double> Fields::maybe(const char* key, Range range)
{
    return has(key) ? std::optional(number(key, range)) : std::nullopt;
}

int Fields::whole(const char* key, int least, int most)
{
    const double given = number(key, {static_cast<double>(least), static_cast<double>(most)});
    if (given != std::floor(given))
        refuse(name(key), "must be a whole number");
    return static_cast<int>(given);
}

bool Fields::flag(const char* key)
{
    const Json& given = value(key);
    if (!given.is_boolean())
        refuse(name(key), "must be true or false");
    return given.get<bool>();
}

bool Fields::flag(const char* key, bool otherwise)
{
    return has(key) ? flag(key) : otherwise;
}

const Json& Fields::list(const char* key)
{
    return asList(value(key), name(key));
}

std::vector<double> Fields::numbers(const char* key, Range range)
{
    std::vector<double> out;
    for (const Json& number : list(key))
        out.push_back(checked(number, entry(name(key), out.size()), range));
    return out;
}

std::vector<std::pair<double, double>> Fields::pairs(const char* key, Range first, Range second)
{
    std::vector<std::pair<double, double>> out;
    for (const Json& pair : list(key)) {
        const std::string here = entry(name(key), out.size());
        if (asList(pair, here).size() != 2)
            refuse(here, "must be a pair of numbers");
        out.emplace_back(checked(pair[0], entry(here, 0), first), checked(pair[1], entry(here, 1), second));
    }
    return out;
}

Fields Fields::object(const char* key)
{
    return {value(key), name(key)};
}

void Fields::nothingElse() const
{
    for (const auto& [key, given] : m_object.items())
        if (!m_taken.contains(key))
            refuse("unknown key", name(key));
}

}
