// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace steelyard::probe {

using Json = nlohmann::json;

/// A line that is not answered; `why` is the sentence of its error.
struct Refused {
    std::string why;
};

/// What a number may be. No set-up of this world weighs or measures a million of anything.
struct Range {
    double least = -1e6, most = 1e6;
    bool leastCounts = true;
};
inline constexpr Range aboveZero{0, 1e6, false}, notBelowZero{0, 1e6}, anySize{}, anyFinite{-1e300, 1e300};

/// The keys of one input object: hands out what a function asks for, and refuses what is missing, of the wrong type,
/// out of range, or left over.
class Fields {
public:
    /// `place` says where in the line the object stands ("left[0].chain"); empty for `in` itself.
    Fields(const Json& object, std::string place);

    [[nodiscard]] bool has(const char* key) const { return m_object.contains(key); }
    [[nodiscard]] const Json& value(const char* key);
    [[nodiscard]] double number(const char* key, Range range);
    [[nodiscard]] double number(const char* key, Range range, double otherwise);
    [[nodiscard]] std::optional<double> maybe(const char* key, Range range);
    [[nodiscard]] int whole(const char* key, int least, int most);
    [[nodiscard]] bool flag(const char* key);
    [[nodiscard]] bool flag(const char* key, bool otherwise);
    [[nodiscard]] std::vector<double> numbers(const char* key, Range range);
    [[nodiscard]] std::vector<std::pair<double, double>> pairs(const char* key, Range first, Range second);
    [[nodiscard]] const Json& list(const char* key);
    [[nodiscard]] Fields object(const char* key);

    template <typename Choice>
    [[nodiscard]] Choice oneOf(const char* key, std::initializer_list<std::pair<const char*, Choice>> choices)
    {
        const Json& given = value(key);
        std::string words;
        for (const auto& [word, choice] : choices) {
            if (given.is_string() && given.get_ref<const std::string&>() == word)
                return choice;
            words += (words.empty() ? "" : ", ") + std::string(word);
        }
        refuse(name(key), "must be one of " + words);
    }

    /// The full name of a key, for a sentence.
    [[nodiscard]] std::string name(const std::string& key) const;
    [[nodiscard]] const Json& json() const { return m_object; }
    void nothingElse() const;

    [[noreturn]] static void refuse(const std::string& name, const std::string& complaint);
    /// A number in its range, or a refusal that names it.
    [[nodiscard]] static double checked(const Json& value, const std::string& name, Range range);

private:
    const Json& m_object;
    std::string m_place;
    std::set<std::string> m_taken;
};

}
