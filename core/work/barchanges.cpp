// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/barchanges.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

Mass distance(Mass a, Mass b) { return a > b ? a - b : b - a; }

}

BarRecord withBar(BarRecord record, const Entered<Mass>& bar)
{
    record.wanted = record.wanted + bar - record.bar;
    record.bar = bar;
    record.barEntered = true;
    return record;
}

BarRecord withCollars(BarRecord record, const Entered<Mass>& collars)
{
    record.wanted = record.wanted + collars - record.collars;
    record.collars = collars;
    return record;
}

BarRecord withPairMore(BarRecord record, const Entered<Mass>& plate)
{
    constexpr double milligram = 1e-6;
    for (PlatesHere& p : record.stock)
        if (std::abs((p.type.mass - plate.quantity()).si()) < milligram) {
            p.count += 2;
            return record;
        }
    const auto usual = usualStock();
    PlateType type = std::min_element(usual.begin(), usual.end(), [&](const PlatesHere& a, const PlatesHere& b) {
                         return distance(a.type.mass, plate) < distance(b.type.mass, plate);
                     })->type;
    type.mass = plate;
    record.stock.push_back({type, 2, plate.typed()});
    std::stable_sort(record.stock.begin(), record.stock.end(), [](const PlatesHere& a, const PlatesHere& b) { return a.type.mass > b.type.mass; });
    return record;
}

BarRecord withPairsStepped(BarRecord record, std::size_t rowIndex, bool up)
{
    constexpr int most = 40;
    if (rowIndex < record.stock.size()) {
        int& count = record.stock[rowIndex].count;
        count = std::clamp(count / 2 * 2 + (up ? 2 : -2), 0, most);
    }
    return record;
}

}
