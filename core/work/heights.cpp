// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/heights.h"

#include "core/resistance/pullsum.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

HeightLine lineAt(const Setup& setup, const PullSum& sum, Height height, HeightMark mark)
{
    HeightLine line;
    line.height = height;
    line.mark = mark;
    const auto parts = pullPartsAt(setup, height);
    line.known = sum.knows(height) && parts.ok();
    if (!line.known)
        return line;
    line.total = sum.at(height);
    line.iron = parts->iron;
    line.uIron = parts->uIron;
    for (const PullPart& part : parts->parts) {
        const auto at = std::find_if(line.hung.begin(), line.hung.end(), [&](const PullOfKind& of) { return of.kind == part.kind; });
        if (at == line.hung.end()) {
            line.hung.push_back({part.kind, part.pull, part.u});
        } else {
            at->pull = at->pull + part.pull;
            at->u = Force::fromSi(std::hypot(at->u.si(), part.u.si()));
        }
    }
    std::sort(line.hung.begin(), line.hung.end(), [](const PullOfKind& a, const PullOfKind& b) { return a.kind < b.kind; });
    return line;
}

}

std::vector<HeightLine> heightTable(const WeighedUp& answer, Length step)
{
    if (!answer.curve || !answer.path || !answer.setup || !(step.si() > 0))
        return {};
    const LiftPath& path = *answer.path;
    std::vector<HeightLine> lines;
    const PullSum sum(*answer.setup);
    const auto add = [&](Height height, HeightMark mark) { lines.push_back(lineAt(*answer.setup, sum, height, mark)); };
    add(path.top, HeightMark::Top);
    if (path.zoneFrom && path.zoneTo) {
        add(*path.zoneTo, HeightMark::ZoneTo);
        add(*path.zoneFrom, HeightMark::ZoneFrom);
    }
    add(path.bottom, HeightMark::Bottom);
    const std::size_t markCount = lines.size();
    // a multiple on a mark is that mark
    constexpr double hair = 1e-6;
    const double bottom = path.bottom.si(), top = path.top.si(), each = step.si();
    for (double n = std::ceil(bottom / each); n * each < top; ++n) {
        const double at = n * each;
        if (std::none_of(lines.begin(), lines.begin() + static_cast<std::ptrdiff_t>(markCount), [&](const HeightLine& mark) { return std::abs(mark.height.si() - at) < hair; }))
            add(Height::fromSi(at), HeightMark::None);
    }
    std::sort(lines.begin(), lines.end(), [](const HeightLine& a, const HeightLine& b) { return a.height > b.height; });
    return lines;
}

}
