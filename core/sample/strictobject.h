// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/units.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace steelyard::sample {

using Faults = std::vector<std::string>;

/// A JSON object that is asked for its keys by type; what does not fit, and what nobody asked for, is a fault, "file: key: what is
/// wrong with it". A value that does not fit reads as nought, an empty text or an empty object.
class StrictObject {
public:
    /// `path` says where the object stands in its file; faults go to `faults`, which outlives it.
    StrictObject(nlohmann::json object, std::string path, Faults& faults);
    /// The object that a file's text says; a text that is none is a fault.
    [[nodiscard]] static StrictObject of(const std::string& text, const std::string& fileName, Faults& faults);

    [[nodiscard]] bool has(const std::string& key) const { return m_object.contains(key); }
    /// The unit stands at the end of the key: `_kg`, `_cm` or `_mm`.
    [[nodiscard]] std::optional<Mass> mass(const std::string& key);
    [[nodiscard]] Mass neededMass(const std::string& key);
    [[nodiscard]] std::optional<Length> length(const std::string& key);
    [[nodiscard]] Length neededLength(const std::string& key);
    [[nodiscard]] int neededCount(const std::string& key);
    [[nodiscard]] std::string text(const std::string& key);
    [[nodiscard]] std::string neededText(const std::string& key);
    [[nodiscard]] bool flag(const std::string& key, bool otherwise);
    [[nodiscard]] bool neededFlag(const std::string& key);
    /// The place of the key's text among the words; 0 with a fault when it is none of them.
    [[nodiscard]] std::size_t choiceIndex(const std::string& key, const std::vector<std::string>& words);
    [[nodiscard]] StrictObject neededObject(const std::string& key);
    [[nodiscard]] std::vector<StrictObject> neededList(const std::string& key);
    /// None where there is no such key.
    [[nodiscard]] std::vector<StrictObject> list(const std::string& key);
    [[nodiscard]] std::vector<std::string> texts(const std::string& key);
    void fault(const std::string& key, const std::string& what);
    /// Faults for the keys that nobody asked for.
    void finish();

private:
    using Type = nlohmann::json::value_t;
    [[nodiscard]] nlohmann::json number(const std::string& key) { return needed(key, Type::number_float, "a number"); }
    /// Remembers that it was asked for.
    [[nodiscard]] bool hasAsked(const std::string& key);
    [[nodiscard]] nlohmann::json needed(const std::string& key, Type type, const char* what);
    [[nodiscard]] bool isOf(const std::string& key, Type type) const;
    [[nodiscard]] std::string pathTo(const std::string& key) const;

    nlohmann::json m_object;
    std::string m_path;
    Faults* m_faults;
    std::set<std::string> m_asked;
};

}
