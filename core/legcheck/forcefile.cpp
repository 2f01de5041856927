// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/forcefile.h"

#include "core/legcheck/numbertable.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

constexpr double ratesAgreeShare = 0.01, evenShare = 0.75;
constexpr std::size_t mostPlates = 2;
constexpr Seconds shortestRecord{0.1};

/// A heading in small letters, its name and unit apart: "Force Left [N]" is "force left" and "n".
struct Heading {
    std::string name, unit;
};

std::string smallOf(std::string_view text)
{
    std::string small;
    for (const char c : text)
        small += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return small;
}

/// A word of its own, not a part of one: between anything that is no letter.
bool hasWord(const std::string& text, std::string_view word)
{
    const auto isLetter = [&](std::size_t at) { return at < text.size() && (std::isalpha(static_cast<unsigned char>(text[at])) || (text[at] & 0x80)); };
    for (auto at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
        if ((at == 0 || !isLetter(at - 1)) && !isLetter(at + word.size()))
            return true;
    return false;
}

template <std::size_t Count>
bool hasOneOf(const std::string& text, const std::array<std::string_view, Count>& words)
{
    return std::any_of(words.begin(), words.end(), [&](std::string_view word) { return hasWord(text, word); });
}

constexpr std::array<std::string_view, 5> timeWords{"time", "timestamp", "zeit", "tiempo", "t"};
constexpr std::array<std::string_view, 5> leftWords{"left", "links", "izquierda", "izq", "l"};
constexpr std::array<std::string_view, 6> rightWords{"right", "rechts", "derecha", "der", "dch", "r"};
constexpr std::array<std::string_view, 6> sumWords{"total", "sum", "both", "summe", "gesamt", "suma"};
constexpr std::array<std::string_view, 8> forceWords{"force", "kraft", "fuerza", "grf", "fz", "f", "vgrf", "load"};
constexpr std::array<std::string_view, 2> otherAxes{"fx", "fy"};
/// Parts of what names a rate of samples, and of what names another in the same unit.
constexpr std::array<std::string_view, 8> rateParts{"hz", "sampling rate", "sample rate", "samplerate", "sampling freq", "abtastrate", "abtastfreq", "frecuencia de muestreo"};
constexpr std::array<std::string_view, 6> otherRateParts{"filter", "filtro", "cut", "pass", "heart", "puls"};

template <std::size_t Count>
bool hasPartOf(const std::string& text, const std::array<std::string_view, Count>& parts)
{
    return std::any_of(parts.begin(), parts.end(), [&](std::string_view part) { return text.find(part) != std::string::npos; });
}

Heading headingOf(const std::string& text)
{
    const std::string small = smallOf(text);
    for (const auto& [open, close] : {std::pair{'[', ']'}, {'(', ')'}}) {
        const auto from = small.find(open), to = small.find(close, from == std::string::npos ? 0 : from);
        if (from != std::string::npos && to != std::string::npos)
            return {small.substr(0, from), small.substr(from + 1, to - from - 1)};
    }
    // behind the last gap: "force_n", "Fz / kN"
    const auto gap = small.find_last_of("_ /");
    if (gap == std::string::npos)
        return {small, {}};
    return {small.substr(0, gap), small.substr(gap + 1)};
}

std::optional<double> newtonsIn(const std::string& unit)
{
    if (unit == "n" || unit == "newton" || unit == "newtons")
        return 1;
    if (unit == "kn")
        return 1000;
    return std::nullopt;
}

std::optional<double> newtonsIn(std::optional<ForceUnit> unit)
{
    return unit ? std::optional(*unit == ForceUnit::Kilonewton ? 1000.0 : 1.0) : std::nullopt;
}

/// Where the time and the forces stand, and what one unit of each is.
struct Columns {
    std::optional<std::size_t> timeIndex{};
    double secondsFactor = 1;
    struct Plate {
        std::size_t index;
        double newtonsFactor;
        std::string name;
    };
    std::vector<Plate> plates{};
};

bool risesEvenly(const std::vector<double>& times)
{
    const double step = times.size() > 1 ? (times.back() - times.front()) / static_cast<double>(times.size() - 1) : 0;
    for (std::size_t i = 0; i < times.size(); ++i)
        if (!(step > 0) || std::abs(times[i] - times.front() - step * static_cast<double>(i)) > evenShare * step)
            return false;
    return times.size() > 2;
}

/// Names with their units, where those stand in a line of their own beneath.
std::vector<std::string> headingsOf(const NumberTable& table)
{
    std::vector<std::string> headings = table.headings();
    if (headings.empty() || table.above.size() < 2 || table.above[table.above.size() - 2].size() != headings.size())
        return headings;
    const auto unitIn = [](std::string field) {
        std::erase_if(field, [](char c) { return std::string_view("[]()").find(c) != std::string_view::npos; });
        return smallOf(field);
    };
    if (std::none_of(headings.begin(), headings.end(), [&](const std::string& field) { return newtonsIn(unitIn(field)).has_value(); }))
        return headings;
    for (std::size_t i = 0; i < headings.size(); ++i)
        headings[i] = table.above[table.above.size() - 2][i] + " [" + unitIn(headings[i]) + "]";
    return headings;
}

Result<Columns> byHeadings(const std::vector<std::string>& headings, const ForceFileHints& hints)
{
    Columns columns;
    std::vector<Columns::Plate> sums;
    std::optional<Error> unknownSide;
    for (std::size_t i = 0; i < headings.size(); ++i) {
        const Heading heading = headingOf(headings[i]);
        const std::string whole = smallOf(headings[i]);
        if (!columns.timeIndex && hasOneOf(heading.name, timeWords)) {
            columns.timeIndex = i;
            if (heading.unit == "ms")
                columns.secondsFactor = 1e-3;
            else if (!heading.unit.empty() && heading.unit != "s" && heading.unit != "sec" && heading.unit != "seconds")
                return Error{Refusal::UnknownUnit, "unit of " + headings[i]};
            continue;
        }
        if (hasOneOf(whole, otherAxes))
            continue;
        const auto newtonsOfFile = newtonsIn(heading.unit);
        const bool isForce = newtonsOfFile || hasOneOf(whole, forceWords);
        if (!isForce && !hasOneOf(whole, leftWords) && !hasOneOf(whole, rightWords))
            continue;
        // a word behind a gap is a unit only if it is one; in brackets it always is
        const bool saysUnit = headings[i].find_first_of("[(") != std::string::npos;
        const auto factor = newtonsOfFile ? newtonsOfFile : saysUnit ? std::nullopt : newtonsIn(hints.unit);
        if (!factor) {
            const Error unknown{Refusal::UnknownUnit, "unit of " + headings[i]};
            if (isForce)
                return unknown;
            // a side of something else, unless no force turns up
            unknownSide = unknownSide.value_or(unknown);
            continue;
        }
        (hasOneOf(whole, sumWords) ? sums : columns.plates).push_back({i, *factor, whole});
    }
    if (columns.plates.empty())
        columns.plates = sums;
    if (columns.plates.empty() && unknownSide)
        return *unknownSide;
    return columns;
}

Result<Columns> columnsOf(const NumberTable& table, const ForceFileHints& hints)
{
    // a title over a lone column is no heading of it
    if (const auto headings = headingsOf(table); !headings.empty())
        if (auto columns = byHeadings(headings, hints); !columns || !columns->plates.empty() || headings.size() > 1)
            return columns;
    Columns columns;
    if (table.columnScores.size() > 1 && risesEvenly(table.columnScores.front()))
        columns.timeIndex = 0;
    const auto factor = newtonsIn(hints.unit);
    if (!factor)
        return Error{Refusal::UnknownUnit, "unit of force"};
    for (std::size_t i = columns.timeIndex ? 1 : 0; i < table.columnScores.size(); ++i)
        columns.plates.push_back({i, *factor, {}});
    return columns;
}

/// From a line such as "Sampling rate [Hz];1000"; nothing where none says it, refused where two say it differently.
Result<std::optional<double>> rateAbove(const NumberTable& table)
{
    std::optional<double> found;
    for (const auto& line : table.above) {
        std::string whole;
        for (const std::string& field : line)
            whole += smallOf(field) + ' ';
        const auto digit = whole.find_first_of("0123456789");
        if (!hasPartOf(whole, rateParts) || hasPartOf(whole, otherRateParts) || digit == std::string::npos)
            continue;
        std::replace(whole.begin(), whole.end(), ',', '.');
        double rate = 0;
        std::from_chars(whole.data() + digit, whole.data() + whole.size(), rate);
        if (found && *found != rate)
            return Error{Refusal::NotComparable, "rate"};
        found = rate;
    }
    return found;
}

Result<double> rateByTime(const NumberTable& table, const std::vector<double>& times, double secondsFactor)
{
    const double n = static_cast<double>(times.size() - 1), step = times.size() > 1 ? (times.back() - times.front()) / n : 0;
    if (!(step > 0))
        return Error{Refusal::OutOfRange, "time"};
    for (std::size_t i = 1; i < times.size(); ++i)
        if (!(times[i] > times[i - 1]) || std::abs(times[i] - times.front() - step * static_cast<double>(i)) > evenShare * step)
            return Error{Refusal::OutOfRange, "line " + std::to_string(table.firstLineNumber + i)};
    return 1 / (step * secondsFactor);
}

Result<Frequency> rateOf(const NumberTable& table, const Columns& columns, const ForceFileHints& hints)
{
    const auto above = rateAbove(table);
    if (!above)
        return above.error();
    const std::optional<double> said = *above;
    if (columns.timeIndex) {
        const auto rate = rateByTime(table, table.columnScores[*columns.timeIndex], columns.secondsFactor);
        if (!rate)
            return rate.error();
        if (said && std::abs(*said - *rate) > ratesAgreeShare * *rate)
            return Error{Refusal::NotComparable, "rate"};
        // times are rounded, a rate that is said is not
        return hertz(said ? *said : *rate);
    }
    if (said)
        return hertz(*said);
    if (hints.rate)
        return *hints.rate;
    return Error{Refusal::NotThere, "rate"};
}

}

ForceRecord ForceFile::together() const
{
    ForceRecord record = plate(0);
    for (std::size_t i = 1; i < plates.size(); ++i)
        for (std::size_t j = 0; j < record.force.size(); ++j)
            record.force[j] += plates[i][j];
    return record;
}

Result<ForceFile> readForceFile(std::string_view text, const ForceFileHints& hints)
{
    const auto table = readNumberTable(text);
    if (!table)
        return table.error();
    auto columns = columnsOf(*table, hints);
    if (!columns)
        return columns.error();
    if (columns->plates.empty())
        return Error{Refusal::NotThere, "force"};
    if (columns->plates.size() > mostPlates)
        return Error{Refusal::TooMany, "columns"};
    const auto rate = rateOf(*table, *columns, hints);
    if (!rate)
        return rate.error();
    ForceFile file;
    file.rate = *rate;
    if (columns->plates.size() == mostPlates) {
        Columns::Plate &first = (*columns).plates.front(), &second = (*columns).plates.back();
        if (hasOneOf(first.name, rightWords) && hasOneOf(second.name, leftWords))
            std::swap(first, second);
        file.areSidesKnown = hasOneOf(first.name, leftWords) && hasOneOf(second.name, rightWords);
    }
    for (const Columns::Plate& plate : columns->plates) {
        std::vector<Force> force;
        for (const double number : table->columnScores[plate.index])
            force.push_back(newtons(number * plate.newtonsFactor));
        if (const auto fault = faultOf({file.rate, force}, shortestRecord))
            return *fault;
        file.plates.push_back(std::move(force));
    }
    return file;
}

}
