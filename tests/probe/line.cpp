// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/probe/line.h"

#include "tests/probe/functions.h"

#include <charconv>
#include <cmath>
#include <istream>
#include <ostream>
#include <set>

namespace steelyard::probe {

namespace {

constexpr int deepest = 16;

std::string quoted(const std::string& text)
{
    return nlohmann::ordered_json(text).dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

std::string digits17(double value)
{
    if (!std::isfinite(value))
        throw Refused{"out of range: these numbers have no finite result"};
    char text[40];
    // a zero has no sign for a reader
    const auto end = std::to_chars(text, text + sizeof text, value == 0 ? 0.0 : value, std::chars_format::general, 17).ptr;
    return {text, end};
}

std::string error(const std::string& why)
{
    return R"({"error": )" + quoted(why) + "}";
}

std::string answerTo(std::string_view line)
{
    const Json asked = read(line);
    if (!asked.is_object())
        throw Refused{"a line must be an object with fn and in"};
    Fields outer(asked, "");
    const Json& fn = outer.value("fn");
    if (!fn.is_string())
        Fields::refuse("fn", "must be a string");
    const auto& name = fn.get_ref<const std::string&>();
    const Function* function = find(name);
    if (!function)
        throw Refused{"unknown function " + name.substr(0, 60)};
    try {
        Fields in(outer.value("in"), "");
        outer.nothingElse();
        const Out out = function->work(in);
        in.nothingElse();
        return R"({"out": )" + written(out) + "}";
    } catch (const Refused& refused) {
        throw Refused{name + ": " + refused.why};
    }
}

}

Json read(std::string_view line)
{
    // the parser takes a zero byte for the end of the text
    if (line.find('\0') != std::string_view::npos)
        throw Refused{"not JSON: a zero byte"};
    std::vector<std::set<std::string>> keys;
    const Json::parser_callback_t watch = [&](int depth, Json::parse_event_t event, Json& parsed) {
        using Event = Json::parse_event_t;
        if (depth > deepest)
            throw Refused{"nested too deeply"};
        if (event == Event::object_start)
            keys.emplace_back();
        else if (event == Event::object_end)
            keys.pop_back();
        else if (event == Event::key && !keys.back().insert(parsed.get<std::string>()).second)
            throw Refused{"key " + parsed.get<std::string>().substr(0, 60) + " stands twice"};
        return true;
    };
    try {
        return Json::parse(line.begin(), line.end(), watch);
    } catch (const Json::parse_error& fault) {
        throw Refused{"not JSON from byte " + std::to_string(fault.byte)};
    } catch (const Json::out_of_range& fault) {
        // its text ends in the number, between quotes
        const std::string text = fault.what();
        const auto from = text.find('\'');
        throw Refused{"out of range: " + (from == std::string::npos ? "a number" : text.substr(from, 60)) + " is too large"};
    }
}

std::string written(const nlohmann::ordered_json& value)
{
    if (value.is_number_float())
        return digits17(value.get<double>());
    if (!value.is_structured())
        return value.is_string() ? quoted(value.get<std::string>()) : value.dump();
    std::string text;
    for (const auto& [key, part] : value.items())
        text += (text.empty() ? "" : ", ") + (value.is_object() ? quoted(key) + ": " : "") + written(part);
    return value.is_object() ? "{" + text + "}" : "[" + text + "]";
}

std::string answer(std::string_view line)
{
    try {
        if (line.size() > longestLine)
            throw Refused{"a line has more than " + std::to_string(longestLine) + " bytes"};
        return answerTo(line);
    } catch (const Refused& refused) {
        return error(refused.why);
    }
}

void answerAll(std::istream& in, std::ostream& out)
{
    std::string line;
    bool blank = true;
    const auto finish = [&] {
        if (!blank)
            out << answer(line) << '\n' << std::flush;
        line.clear();
        blank = true;
    };
    auto* bytes = in.rdbuf();
    for (int byte = bytes->sbumpc(); byte != std::istream::traits_type::eof(); byte = bytes->sbumpc()) {
        const char c = static_cast<char>(byte);
        if (c == '\n') {
            finish();
            continue;
        }
        blank = blank && (c == ' ' || c == '\t' || c == '\r');
        // one byte past the longest is enough to refuse it
        if (line.size() <= longestLine)
            line.push_back(c);
    }
    finish();
}

}
