// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/legcheck/numbertable.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace steelyard {

namespace {

constexpr std::size_t mostBytes = 64'000'000, mostColumns = 64;
constexpr char spaces = ' ';

using Fields = std::vector<std::string>;

/// How the fields of a file are apart, and what stands before the decimals.
struct Style {
    char separator = ';';
    bool decimalComma = false;
};

bool isBlank(std::string_view text) { return text.find_first_not_of(" \t\r") == std::string_view::npos; }

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t\r\"");
    return first == std::string_view::npos ? std::string_view{} : text.substr(first, text.find_last_not_of(" \t\r\"") - first + 1);
}

std::vector<std::string_view> linesOf(std::string_view text)
{
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    if (text.starts_with(mark))
        text.remove_prefix(mark.size());
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = text.find_first_of("\r\n");
        lines.push_back(text.substr(0, end));
        if (end == std::string_view::npos)
            break;
        text.remove_prefix(end + (text.substr(end).starts_with("\r\n") ? 2 : 1));
    }
    while (!lines.empty() && isBlank(lines.back()))
        lines.pop_back();
    return lines;
}

Fields fieldsOf(std::string_view line, char separator)
{
    Fields fields;
    if (separator == spaces) {
        for (std::size_t at = line.find_first_not_of(' '); at != std::string_view::npos; at = line.find_first_not_of(' ', at)) {
            const auto end = std::min(line.find(' ', at), line.size());
            fields.emplace_back(trimmed(line.substr(at, end - at)));
            at = end;
        }
        return fields;
    }
    bool isQuoted = false;
    std::size_t from = 0;
    for (std::size_t i = 0; i <= line.size(); ++i) {
        if (i < line.size() && line[i] == '"')
            isQuoted = !isQuoted;
        if (i == line.size() || (line[i] == separator && !isQuoted)) {
            fields.emplace_back(trimmed(line.substr(from, i - from)));
            from = i + 1;
        }
    }
    // a separator at the end of every line closes it
    if (fields.size() > 1 && fields.back().empty())
        fields.pop_back();
    return fields;
}

std::optional<double> numberIn(std::string text, bool decimalComma)
{
    const bool hasPoint = text.find('.') != std::string::npos;
    if (const auto comma = text.find(','); comma != std::string::npos) {
        if (!decimalComma || hasPoint)
            return std::nullopt;
        text[comma] = '.';
    }
    const char* first = text.data() + (text.starts_with('+') && !text.starts_with("+-") ? 1 : 0);
    const char* last = text.data() + text.size();
    double number = 0;
    const auto read = std::from_chars(first, last, number);
    if (first == last || read.ec != std::errc{} || read.ptr != last || !std::isfinite(number))
        return std::nullopt;
    return number;
}

/// The numbers of a line, or nothing where a field is none.
std::optional<std::vector<double>> numbersOf(const Fields& fields, bool decimalComma)
{
    std::vector<double> numbers;
    for (const std::string& field : fields) {
        const auto number = numberIn(field, decimalComma);
        if (!number)
            return std::nullopt;
        numbers.push_back(*number);
    }
    return numbers.empty() ? std::nullopt : std::optional(numbers);
}

/// Nothing in it but what numbers and what stands between them are made of.
bool looksNumeric(std::string_view line)
{
    return line.find_first_of("0123456789") != std::string_view::npos && line.find_first_not_of("0123456789+-.,;eE\t \"\r") == std::string_view::npos;
}

/// Whole numbers apart by commas, or decimals behind them: what stands above with as many fields knows, or more than one comma.
Result<Style> styleOfCommas(const std::vector<std::string_view>& lines, std::size_t numbersBegin, std::size_t commasCount)
{
    if (commasCount > 1)
        return Style{',', false};
    if (numbersBegin > 0) {
        const auto fieldsCount = fieldsOf(lines[numbersBegin - 1], ',').size();
        if (fieldsCount == 2)
            return Style{',', false};
        if (fieldsCount == 1)
            return Style{spaces, true};
    }
    return Error{Refusal::OutOfRange, "separator"};
}

/// By all lines at the end of the file that look like numbers.
Result<Style> styleOf(const std::vector<std::string_view>& lines)
{
    std::size_t begin = lines.size(), commasCount = 0;
    std::string used;
    bool isSpaced = false;
    while (begin > 0 && looksNumeric(lines[begin - 1])) {
        const std::string_view line = lines[--begin];
        for (const char c : {';', '\t', ',', '.'})
            if (line.find(c) != std::string_view::npos && used.find(c) == std::string::npos)
                used += c;
        commasCount = std::max(commasCount, static_cast<std::size_t>(std::count(line.begin(), line.end(), ',')));
        isSpaced = isSpaced || (trimmed(line).find(' ') != std::string_view::npos && line.find(", ") == std::string_view::npos);
    }
    const auto has = [&used](char c) { return used.find(c) != std::string::npos; };
    for (const char separator : {';', '\t'})
        if (has(separator))
            return Style{separator, has(',')};
    if (!has(',') || isSpaced)
        return Style{spaces, has(',')};
    return has('.') ? Result<Style>(Style{',', false}) : styleOfCommas(lines, begin, commasCount);
}

}

std::vector<std::string> NumberTable::headings() const
{
    if (above.empty() || above.back().size() == columnScores.size())
        return above.empty() ? Fields{} : above.back();
    if (columnScores.size() != 1)
        return {};
    // over a lone column words are apart by spaces, as fields would be
    std::string whole;
    for (const std::string& word : above.back())
        whole += (whole.empty() ? "" : " ") + word;
    return {whole};
}

Result<NumberTable> readNumberTable(std::string_view text)
{
    if (text.size() > mostBytes)
        return Error{Refusal::TooMany, "text"};
    if (text.find('\0') != std::string_view::npos)
        return Error{Refusal::OutOfRange, "text"};
    const auto lines = linesOf(text);
    if (lines.empty())
        return Error{Refusal::TooFewPoints, "lines"};
    const auto style = styleOf(lines);
    if (!style)
        return style.error();
    NumberTable table;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Fields fields = fieldsOf(lines[i], style->separator);
        const auto numbers = numbersOf(fields, style->decimalComma);
        if (table.columnScores.empty()) {
            if (!numbers) {
                // numbers written the other way would be lost among the words
                if (style->separator != ',' && numbersOf(fields, !style->decimalComma))
                    return Error{Refusal::NotFinite, "line " + std::to_string(i + 1)};
                if (!isBlank(lines[i]))
                    table.above.push_back(fields);
                continue;
            }
            if (numbers->size() > mostColumns)
                return Error{Refusal::TooMany, "columns"};
            table.columnScores.resize(numbers->size());
            table.firstLineNumber = i + 1;
        }
        if (!numbers || numbers->size() != table.columnScores.size())
            return Error{Refusal::NotFinite, "line " + std::to_string(i + 1)};
        for (std::size_t j = 0; j < numbers->size(); ++j)
            table.columnScores[j].push_back((*numbers)[j]);
    }
    if (table.columnScores.empty())
        return Error{Refusal::TooFewPoints, "lines"};
    return table;
}

}
