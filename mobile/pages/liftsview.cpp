// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/liftsview.h"

#include "core/work/keeping/acknowledge.h"
#include "core/work/measuring/marksdue.h"
#include "core/work/records/codec.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

using namespace steelyard;

namespace {

QString marksFact(const BarMarks& marks)
{
    if (marks.top && marks.bottom && marks.start == LiftStart::OwnBottom)
        return LiftsView::tr("%1 to %2").arg(say::entered(*marks.bottom), say::inLengthUnit(say::entered(*marks.top)));
    return marks.top ? LiftsView::tr("top %1").arg(say::inLengthUnit(say::entered(*marks.top))) : LiftsView::tr("begun");
}

/// Why the marks of a lift should be taken again; empty where they need not.
QString againFact(const BookService& book, const Athlete& athlete, LiftId lift)
{
    switch (remeasureMarks(book.book(), athlete, lift, book.today())) {
    case Remeasure::Grown:
        return LiftsView::tr("measure again: the height has changed");
    case Remeasure::MayHave:
        return LiftsView::tr("measure again: may have grown");
    case Remeasure::No:
        break;
    }
    return {};
}

/// "24 Nov · looked over on 25 Nov".
QString setupFact(const BookService& book, const SavedSetup& setup)
{
    const QString kept = keepingtexts::day(setup.day, book.today());
    const auto looked = lastLookedOver(book.book(), setup);
    return looked ? LiftsView::tr("%1 · looked over on %2").arg(kept, keepingtexts::day(*looked, book.today())) : kept;
}

}

void LiftsView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &LiftsView::refresh))
        return;
    refresh();
}

void LiftsView::setAthleteId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString LiftsView::name() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr;
    return athlete ? QString::fromStdString(athlete->name) : QString();
}

void LiftsView::refresh()
{
    std::vector<LiftRow> known, others;
    std::vector<SavedRow> saved;
    if (const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr) {
        const auto add = [&](LiftId lift, const QString& hint) {
            const auto at = athlete->marks.find(lift);
            const bool marked = at != athlete->marks.end();
            LiftRow row{QString::fromStdString(partOf(lift)), keepingtexts::lift(lift, m_book->book()), hint, marked ? marksFact(at->second) : QString(), !lift.own.isNone()};
            if (const QString again = marked ? againFact(*m_book, *athlete, lift) : QString(); !again.isEmpty())
                row.hint = row.hint.isEmpty() ? again : tr("%1 · %2").arg(row.hint, again);
            (marked ? known : others).push_back(row);
        };
        for (const OwnLift* own : m_book->book().lifts())
            add(LiftId::added(own->id), own->like == LiftId{} ? tr("yours") : tr("yours, like the %1").arg(keepingtexts::lift(own->like, m_book->book())));
        for (const Lift& lift : shippedLifts())
            if (lift.onBar)
                add(lift.id, {});
        for (const SavedSetup* setup : m_book->book().setupsOf(m_id))
            saved.push_back({QString::fromStdString(setup->id.hex()), keepingtexts::lift(setup->lift, m_book->book()), setupFact(*m_book, *setup),
                             tr("%1 and %2 hung").arg(say::inMassUnit(say::entered(setup->setup.bar.wanted))).arg(setup->setup.hung.size())});
    }
    known.insert(known.end(), others.begin(), others.end());
    m_lifts.setRows(std::move(known));
    m_setups.setRows(std::move(saved));
    Q_EMIT changed();
}
