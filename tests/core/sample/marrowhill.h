// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sample/season.h"

#include <filesystem>
#include <fstream>
#include <iterator>

/// The season that the app carries, from the files it is made of.
namespace marrowhill {

using namespace steelyard;

/// The texts as they stand in the source tree.
inline sample::SeasonTexts texts()
{
    sample::SeasonTexts texts;
    for (const std::string& name : sample::seasonFileNames) {
        std::ifstream file(std::filesystem::path(SEASON_FOLDER) / name, std::ios::binary);
        texts[name] = std::string(std::istreambuf_iterator<char>(file), {});
    }
    return texts;
}

inline constexpr std::chrono::sys_days today{std::chrono::year(2026) / 11 / 2};

inline sample::Season season(std::chrono::sys_days on = today)
{
    sample::Faults faults;
    return sample::readSeason(texts(), on, faults);
}

}
