// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/laneeditor.h"

#include "core/work/keeping/keepvenue.h"
#include "mobile/follow.h"

using namespace steelyard;

namespace {

const QString laneKey = QStringLiteral("lane");

}

void LaneEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, [this] { refresh(); }))
        refresh();
}

void LaneEditor::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

const Venue* LaneEditor::venue() const
{
    return m_book ? m_book->book().venue(m_venue) : nullptr;
}

std::vector<FieldSpec> LaneEditor::specs() const
{
    if (!isThere())
        return {};
    return {{laneKey, tr("Lane"), inLength(venue()->lane), {5, 0, 200, 10000}, false, tr("for carries and sleds, from mark to mark")}};
}

void LaneEditor::keep(const std::optional<Entered<Length>>& lane)
{
    Venue now = *venue();
    now.lane = lane;
    keepVenue(m_book->keeping(), now, m_book->teller());
}

KeepOutcome LaneEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    if (key != laneKey || !isThere())
        return {tr("There is no such number."), {}};
    keep(keyed.length());
    return {};
}

bool LaneEditor::canClear(const QString& key) const
{
    return key == laneKey && isThere() && venue()->lane;
}

bool LaneEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    keep(std::nullopt);
    return true;
}
