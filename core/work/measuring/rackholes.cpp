// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/rackholes.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace steelyard {

namespace {

std::optional<Error> wrong(const std::optional<Entered<Length>>& length, const std::string& what, bool needed)
{
    if (!length)
        return needed ? std::optional(Error{Refusal::NotThere, what}) : std::nullopt;
    if (!std::isfinite(length->si()))
        return Error{Refusal::NotFinite, what};
    return length->si() > 0 ? std::nullopt : std::optional(Error{Refusal::OutOfRange, what});
}

Height atHole(const RackMeasurement& rack, int hole)
{
    constexpr double micrometres = 1e6;
    const double spacing = rack.spacing ? rack.spacing->si() : 0;
    return metres(std::round((rack.firstHole->si() + (hole - 1) * spacing) * micrometres) / micrometres);
}

}

Result<RackHeights> checked(const RackMeasurement& rack)
{
    if (rack.holeCount < 0 || rack.holeCount > mostHoleCount)
        return Error{Refusal::OutOfRange, "count of holes"};
    if (auto error = wrong(rack.firstHole, "lowest hole", rack.holeCount > 0 || rack.anchors.empty()))
        return *error;
    if (rack.holeCount == 0 && rack.anchors.empty())
        return Error{Refusal::NotThere, "count of holes"};
    if (auto error = wrong(rack.spacing, "hole to hole", rack.holeCount > 1))
        return *error;
    RackHeights heights;
    heights.holeCount = rack.holeCount;
    if (rack.holeCount > 0) {
        heights.lowest = atHole(rack, 1);
        heights.highest = atHole(rack, rack.holeCount);
    }
    for (std::size_t i = 0; i < rack.anchors.size(); ++i) {
        const double height = rack.anchors[i].si();
        if (!std::isfinite(height) || height < 0)
            return Error{std::isfinite(height) ? Refusal::OutOfRange : Refusal::NotFinite, "anchor " + std::to_string(i + 1)};
    }
    heights.anchors = rack.anchors;
    std::stable_sort(heights.anchors.begin(), heights.anchors.end(), [](const Entered<Height>& a, const Entered<Height>& b) { return a < b; });
    return heights;
}

std::optional<Height> heightOfHole(const RackMeasurement& rack, int hole)
{
    const bool there = checked(rack).ok() && hole >= 1 && hole <= rack.holeCount;
    return there ? std::optional(atHole(rack, hole)) : std::nullopt;
}

MarkOrigin originOf(const HoleRead& read, const Height& height, std::span<const KitItem> kit)
{
    MarkOrigin origin{read, std::nullopt, std::nullopt, false};
    const auto at = std::find_if(kit.begin(), kit.end(), [&read](const KitItem& item) { return item.id == read.rack; });
    const auto* rack = at == kit.end() ? nullptr : std::get_if<RackMeasurement>(&at->measurement);
    const auto there = rack ? heightOfHole(*rack, read.hole) : std::nullopt;
    if (!there)
        return origin;
    origin.lowest = rack->firstHole->quantity();
    if (rack->spacing)
        origin.spacing = rack->spacing->quantity();
    // marks are kept to the whole µm
    constexpr double micrometre = 1e-6;
    origin.still = std::abs((*there - height).si()) < micrometre;
    return origin;
}

}
