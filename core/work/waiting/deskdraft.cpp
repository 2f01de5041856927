// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/waiting/deskdraft.h"

#include "core/work/records/codec.h"

namespace steelyard {

namespace {

constexpr std::int64_t versionNumber = 1;

/// The items behind the version; nothing where that is another one, or there are more or fewer.
std::optional<std::vector<journal::ByteBuffer>> itemsIn(journal::ByteView bytes, std::size_t leastCount, std::size_t mostCount)
{
    auto items = journal::listIn(bytes);
    if (!items || items->size() < leastCount + 1 || items->size() > mostCount + 1 || journal::numberIn(items->front()) != versionNumber)
        return std::nullopt;
    items->erase(items->begin());
    return items;
}

}

std::optional<journal::ByteBuffer> encodeDraft(const DeskDraft& desk)
{
    const Content marks = contentOf(desk.marks, {}), load = contentOf(desk.setup, {});
    if (!marks || !load)
        return std::nullopt;
    if (!desk.setup.release)
        return journal::listItem({journal::numberItem(versionNumber), *marks, *load});
    const Content release = contentOf(*desk.setup.release, {});
    return release ? std::optional(journal::listItem({journal::numberItem(versionNumber), *marks, *load, *release})) : std::nullopt;
}

std::optional<journal::ByteBuffer> encodeDraft(const KitItem& item)
{
    const Content measured = contentOf(MeasurementRecord{{}, item.id, {}, item.measurement}, {});
    if (!measured)
        return std::nullopt;
    return journal::listItem({journal::numberItem(versionNumber), journal::textItem(item.name), journal::flagItem(item.pair),
                              item.venue.isNone() ? journal::nullItem() : journal::idItem(item.venue), *measured});
}

std::optional<DeskDraft> deskDraftIn(journal::ByteView bytes)
{
    const auto items = itemsIn(bytes, 2, 3);
    const auto marks = items ? marksIn(items->at(0)) : std::nullopt;
    auto load = items ? loadIn(items->at(1)) : std::nullopt;
    const bool hasRelease = items && items->size() == 3;
    if (load && hasRelease) {
        load->release = releasePlanIn(items->at(2));
        if (!load->release)
            return std::nullopt;
    }
    return marks && load ? std::optional(DeskDraft{*marks, std::move(*load)}) : std::nullopt;
}

std::optional<KitItem> itemDraftIn(journal::ByteView bytes)
{
    const auto items = itemsIn(bytes, 4, 4);
    if (!items)
        return std::nullopt;
    const auto name = journal::textIn(items->at(0));
    const auto pair = journal::flagIn(items->at(1));
    const auto venue = journal::isNull(items->at(2)) ? std::optional(RecordId{}) : journal::idIn(items->at(2));
    const auto measured = measurementIn(items->at(3));
    if (!name || !pair || !venue || !measured)
        return std::nullopt;
    return KitItem{measured->item, *name, *pair, measured->measured, *venue};
}

std::string draftNameOf(const KitItem& item)
{
    const std::string name(itemDraftPrefix);
    if (!item.id.isNone())
        return name + item.id.hex();
    return name + wordOf(kindOf(item.measurement));
}

}
