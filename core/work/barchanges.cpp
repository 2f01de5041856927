// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/barchanges.h"

#include "core/journal/typed.h"
#include "core/work/typing.h"

#include <algorithm>
#include <cmath>

namespace steelyard {

namespace {

Mass distance(Mass a, Mass b) { return a > b ? a - b : b - a; }

bool isMarked(const PlatesHere& plates, Mass mark)
{
    constexpr double milligram = 1e-6;
    return std::abs((markedMass(plates).quantity() - mark).si()) < milligram;
}

/// Of the usual plate nearest in mass: only drawings and the start of a floor lift ask for a plate's size.
PlateType usualSize(Mass mass)
{
    const auto usual = usualStock();
    PlateType type = std::min_element(usual.begin(), usual.end(), [&](const PlatesHere& a, const PlatesHere& b) {
                         return distance(a.type.mass, mass) < distance(b.type.mass, mass);
                     })->type;
    type.mass = mass;
    return type;
}

void sortStock(BarRecord& record)
{
    std::stable_sort(record.stock.begin(), record.stock.end(), [](const PlatesHere& a, const PlatesHere& b) { return a.type.mass > b.type.mass; });
}

std::optional<AsTyped> markOn(const Entered<Mass>& marked)
{
    if (marked.typed())
        return marked.typed();
    const auto typed = journal::typed(marked.quantity(), Unit::Kilogram);
    return typed ? std::optional(AsTyped{typed->decimal, typed->unit}) : std::nullopt;
}

}

Entered<Mass> markedMass(const PlatesHere& plates)
{
    if (!plates.mark)
        return plates.type.mass;
    return massTyped(plates.mark->decimal.text(), plates.mark->unit).value_or(Entered<Mass>(plates.type.mass));
}

BarRecord withBar(BarRecord record, const Entered<Mass>& bar)
{
    record.wanted = record.wanted + bar - record.bar;
    record.bar = bar;
    record.barEntered = true;
    record.barWeighed.reset();
    return record;
}

BarRecord withWeighedBar(BarRecord record, const KnownIron& bar)
{
    record = withBar(std::move(record), bar.check.each);
    record.barWeighed = IronWeighed{bar.item, bar.check.u};
    return record;
}

BarRecord withWeighedPlates(BarRecord record, const KnownIron& plates)
{
    record = withPlatesByMark(std::move(record), plates.item);
    const Mass mark = *plates.measured.marked;
    PlatesHere weighed{usualSize(mark), plates.measured.count, markOn(*plates.measured.marked), IronWeighed{plates.item, plates.check.u}};
    for (PlatesHere& here : record.stock)
        if (!here.weighed && isMarked(here, mark)) {
            weighed.type = here.type;
            weighed.mark = here.mark ? here.mark : weighed.mark;
            here.count -= std::min(here.count, plates.measured.count);
        }
    weighed.type.mass = plates.check.each;
    std::erase_if(record.stock, [&](const PlatesHere& here) { return !here.weighed && here.count == 0 && isMarked(here, mark); });
    record.stock.push_back(weighed);
    sortStock(record);
    return record;
}

bool isTaken(const BarRecord& record, const RecordId& item)
{
    return std::any_of(record.stock.begin(), record.stock.end(), [&item](const PlatesHere& here) { return here.weighed && here.weighed->item == item; });
}

BarRecord withPlatesByMark(BarRecord record, const RecordId& item)
{
    const auto of = [&item](const PlatesHere& here) { return here.weighed && here.weighed->item == item; };
    const auto at = std::find_if(record.stock.begin(), record.stock.end(), of);
    if (at == record.stock.end())
        return record;
    PlatesHere marked = *at;
    record.stock.erase(at);
    marked.type.mass = markedMass(marked);
    marked.weighed.reset();
    const auto same = std::find_if(record.stock.begin(), record.stock.end(), [&](const PlatesHere& here) { return !here.weighed && isMarked(here, marked.type.mass); });
    if (same != record.stock.end())
        same->count += marked.count;
    else
        record.stock.push_back(marked);
    sortStock(record);
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
    for (PlatesHere& p : record.stock)
        if (!p.weighed && isMarked(p, plate)) {
            p.count += 2;
            return record;
        }
    record.stock.push_back({usualSize(plate), 2, plate.typed()});
    sortStock(record);
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
