// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/whatishere.h"

#include "core/work/records/seasonbook.h"
#include "core/work/venues/keepvenuekit.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace steelyard {

namespace {

/// Asks for one thing after the other, and looks up each lift once.
class Listing {
public:
    Listing(const SeasonBook& book, const HereQuestion& question) : m_book(book), m_question(question) {}

    [[nodiscard]] HereRow rowOf(const KitItem& item)
    {
        HereRow row;
        row.item = item.id;
        row.name = item.name;
        row.kind = kindOf(item.measurement);
        row.mass = implementMass(item.measurement);
        if (row.mass.mass)
            row.held = heldAtOnce(item.measurement, *row.mass.mass);
        for (const LiftId& lift : liftsWith(item.measurement))
            row.uses.push_back(implementUse(item, row.mass, factsOf(lift), m_question.lookedOver));
        const auto least = std::min_element(row.uses.begin(), row.uses.end(), [](const ImplementUse& a, const ImplementUse& b) { return a.permission < b.permission; });
        if (least != row.uses.end()) {
            row.permission = least->permission;
            row.heaviestSetting = heaviestLike(item, row.mass, *least);
        }
        return row;
    }

private:
    const UseFacts& factsOf(const LiftId& lift)
    {
        auto at = m_facts.find(lift);
        if (at == m_facts.end())
            at = m_facts.emplace(lift, *useFacts(m_book, m_question.athlete, lift, m_question.day)).first;
        return at->second;
    }

    [[nodiscard]] std::optional<Mass> heaviestLike(const KitItem& item, const ImplementMass& mass, const ImplementUse& lightest)
    {
        const auto* bell = std::get_if<BellMeasurement>(&item.measurement);
        if (!bell || bell->settings.empty() || lightest.permission == Permission::Not)
            return std::nullopt;
        std::optional<Mass> heaviest;
        for (const Estimate<Mass>& setting : bellSettings(*bell)) {
            if (implementUse(item, mass, factsOf(lightest.lift), m_question.lookedOver, setting).permission > lightest.permission)
                break;
            heaviest = setting.value;
        }
        return heaviest;
    }

    const SeasonBook& m_book;
    const HereQuestion& m_question;
    std::map<LiftId, UseFacts> m_facts;
};

}

Result<std::vector<HereRow>> whatIsHere(const SeasonBook& book, const HereQuestion& question)
{
    if (!book.athlete(question.athlete))
        return Error{Refusal::NotThere, "athlete"};
    if (!book.venue(question.venue))
        return Error{Refusal::NotThere, "venue"};
    std::vector<HereRow> rows;
    Listing listing(book, question);
    for (const KitRecord* record : book.kit()) {
        const KitItem& item = record->item;
        if (isImplement(kindOf(item.measurement)) && venueNow(book, item) == question.venue && !item.lent && !item.isOutOfUse())
            rows.push_back(listing.rowOf(item));
    }
    std::sort(rows.begin(), rows.end(), [](const HereRow& a, const HereRow& b) {
        return std::tie(a.permission, a.kind, a.name, a.item) < std::tie(b.permission, b.kind, b.name, b.item);
    });
    return rows;
}

}
