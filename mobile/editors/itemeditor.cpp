// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/itemeditor.h"

#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/putright.h"
#include "core/work/measuring/due.h"
#include "mobile/follow.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/text/itemorigintexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/venues/venuetexts.h"

#include <QPointer>

#include <algorithm>

using namespace steelyard;

ItemEditor::ItemEditor(QObject* parent)
    : FieldEditor(parent), m_day([this] { return typedDay(); }, [this](const TypedDay& day) { setTypedDay(day); }, this)
{
}

void ItemEditor::setItemId(const QString& id)
{
    const RecordId next = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    if (m_id == next)
        return;
    m_id = next;
    Q_EMIT itemIdChanged();
    refresh();
}

void ItemEditor::setBook(BookService* book)
{
    if (!follow(this, m_book, book, [this] { refresh(); }))
        return;
    Q_EMIT bookChanged();
    refresh();
}

QString ItemEditor::name() const
{
    const KitItem now = item();
    return now.name.empty() ? ownName(now) : QString::fromStdString(now.name);
}

void ItemEditor::setName(const QString& name)
{
    KitItem now = item();
    now.name = name.trimmed().toStdString();
    setItem(now);
}

void ItemEditor::setPair(bool pair)
{
    KitItem now = item();
    now.pair = pair;
    setItem(now);
}

void ItemEditor::setMeasurementId(const QString& id)
{
    m_measurement = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    Q_EMIT itemIdChanged();
    refresh();
}

void ItemEditor::refresh()
{
    m_day.setDeskService(deskService());
    m_day.readAgain();
    FieldEditor::refresh();
}

const MeasurementRecord* ItemEditor::known() const
{
    const KitRecord* record = m_book && isRighting() ? m_book->book().item(m_id) : nullptr;
    if (!record)
        return nullptr;
    const auto at = std::find_if(record->measurements.begin(), record->measurements.end(), [this](const MeasurementRecord& m) { return m.id == m_measurement; });
    return at == record->measurements.end() ? nullptr : &*at;
}

std::optional<TypedDay> ItemEditor::typedDay() const
{
    if (!known())
        return std::nullopt;
    const auto bytes = m_book->draft(dayKey());
    const auto typed = bytes ? TypedDay::in(*bytes) : std::nullopt;
    return typed ? typed : std::optional(TypedDay::of(known()->day));
}

void ItemEditor::setTypedDay(const TypedDay& day)
{
    if (!known())
        return;
    if (day == TypedDay::of(known()->day))
        m_book->throwDraft(dayKey());
    else
        m_book->setDraft(dayKey(), day.bytes());
    m_book->hush();
    refresh();
}

std::optional<MeasurementRecord> ItemEditor::righted() const
{
    const auto day = typedDay();
    if (!day || !day->date())
        return std::nullopt;
    return MeasurementRecord{m_measurement, m_id, *day->date(), item().measurement};
}

QString ItemEditor::changesText() const
{
    const auto right = righted();
    if (!right || !isDrafted())
        return {};
    const auto changed = setupsChangedBy(m_book->book(), m_id, m_measurement, right);
    if (changed.empty())
        return tr("No kept set-up pulls otherwise by it.");
    QStringList names;
    for (const SavedSetup* setup : changed) {
        const Athlete* athlete = m_book->book().athlete(setup->athlete);
        const QString name = tr("%1, %2").arg(athlete ? QString::fromStdString(athlete->name) : tr("somebody taken out"), keepingtexts::lift(setup->lift, m_book->book()));
        if (!names.contains(name))
            names << name;
    }
    return tr("Kept set-ups that pull otherwise by it: %1.").arg(names.join(QStringLiteral("; ")));
}

ItemRecordText ItemEditor::record() const
{
    ItemRecordText text;
    const KitRecord* record = m_book ? m_book->book().item(m_id) : nullptr;
    if (!record)
        return text;
    if (const MeasurementRecord* measurement = known()) {
        const auto day = typedDay();
        text.said = saidtexts::measurementBefore(*m_book, *measurement);
        text.changes = changesText();
        if (*day != TypedDay::of(measurement->day))
            text.trouble = DayEditor::trouble(*day, m_book->today());
        return text;
    }
    const auto venues = m_book->book().venues();
    for (const Venue* venue : venues)
        text.venues << QString::fromStdString(venue->name);
    if (!text.venues.isEmpty())
        text.venues.prepend(tr("no venue"));
    const auto at = std::find_if(venues.begin(), venues.end(), [id = item().venue](const Venue* venue) { return venue->id == id; });
    text.venue = at == venues.end() ? 0 : static_cast<int>(at - venues.begin()) + 1;
    const KitItem& kept = record->item;
    text.loan = kept.lent ? venuetexts::lent(*kept.lent, m_book->today()) : kept.borrowed ? venuetexts::borrowed(*kept.borrowed, m_book->today()) : tr("neither");
    text.listed = record->measurements.empty();
    if (text.listed) {
        text.measured = tr("not yet");
        return text;
    }
    if (const auto origin = originOf(kept.measurement))
        text.number = itemorigintexts::number(*origin);
    const Due due = dueOn(record->measurements.front(), m_book->today());
    text.isDue = due.state == DueState::Due;
    text.due = (text.isDue ? tr("due since %1") : tr("due %1")).arg(keepingtexts::day(due.next, m_book->today()));
    const QString age = saidtexts::age(record->measurements.front().day, m_book->today());
    text.measured = record->measurements.size() == 1 ? age : tr("%1, the last %2").arg(record->measurements.size()).arg(age);
    return text;
}

void ItemEditor::moveTo(int venue)
{
    const auto all = m_book ? m_book->book().venues() : std::vector<const Venue*>();
    if (venue < 0 || static_cast<std::size_t>(venue) > all.size())
        return;
    KitItem now = item();
    now.venue = venue > 0 ? all[static_cast<std::size_t>(venue) - 1]->id : RecordId{};
    setItem(now);
}

void ItemEditor::measureAnew()
{
    KitItem now = item();
    now.measurement = notYetMeasured(kind());
    setItem(now);
}

bool ItemEditor::isDrafted() const
{
    return ready() && (desk().draft(draftId(), kind()) || (isRighting() && m_book && m_book->draft(dayKey())));
}

bool ItemEditor::canKeep() const
{
    // what is on a list may get its name, its count and its place before anybody measures it
    const KitRecord* known = m_book ? m_book->book().item(m_id) : nullptr;
    if (known && known->measurements.empty() && !item().isMeasured())
        return isDrafted();
    return isMeasured() && (!isRighting() || (isDrafted() && righted() && record().trouble.isEmpty()));
}

QString ItemEditor::keep()
{
    if (!canKeep())
        return {};
    if (isRighting()) {
        keepRight();
        return itemId();
    }
    KitItem now = item();
    if (now.name.empty())
        now.name = ownName(now).toStdString();
    if (m_book) {
        keepInBook(now);
        return itemId();
    }
    m_id = desk().keepItem(now);
    Q_EMIT itemIdChanged();
    refresh();
    Q_EMIT kept();
    return itemId();
}

void ItemEditor::keepInBook(KitItem item)
{
    if (item.id.isNone())
        item.venue = RecordId::fromHex(m_venueId.toStdString()).value_or(RecordId{});
    // the draft stays until the item is on the disk
    const auto done = [self = QPointer<ItemEditor>(this), desk = QPointer<DeskService>(deskService()), id = item.id, kind = kind()](const RecordId& keptAs) {
        if (desk)
            desk->desk().throwDraft(id, kind);
        if (!self)
            return;
        self->m_id = keptAs;
        Q_EMIT self->itemIdChanged();
        self->refresh();
        Q_EMIT self->kept();
    };
    keepKitItem(m_book->keeping(), std::move(item), m_book->teller(done));
}

void ItemEditor::keepRight()
{
    const auto done = [self = QPointer<ItemEditor>(this), desk = QPointer<DeskService>(deskService()), book = QPointer<BookService>(m_book), key = dayKey(),
                       id = m_measurement, kind = kind()](const RecordId&) {
        if (desk)
            desk->desk().throwDraft(id, kind);
        if (book)
            book->throwDraft(key);
        if (!self)
            return;
        self->refresh();
        Q_EMIT self->kept();
    };
    putMeasurementRight(m_book->keeping(), *righted(), m_book->teller(done));
}

void ItemEditor::throwDraft()
{
    desk().throwDraft(draftId(), kind());
    if (isRighting() && m_book)
        m_book->throwDraft(dayKey());
    refresh();
}

void ItemEditor::remove()
{
    if (isRighting()) {
        if (m_book)
            takeOut(m_book->keeping(), measurementPlace(m_measurement), m_book->teller([self = QPointer<ItemEditor>(this)](const RecordId&) {
                if (self)
                    Q_EMIT self->kept();
            }));
        return;
    }
    desk().removeItem(m_id);
    if (m_book && m_book->book().item(m_id))
        takeOut(m_book->keeping(), itemPlace(m_id), m_book->teller());
}

KitItem ItemEditor::item() const
{
    KitItem fresh;
    fresh.measurement = notYetMeasured(kind());
    fresh.pair = comesInPairs(kind());
    if (!ready())
        return fresh;
    if (const KitItem* draft = desk().draft(draftId(), kind()))
        return *draft;
    if (const MeasurementRecord* measurement = known()) {
        KitItem told = m_book->book().item(m_id)->item;
        told.id = m_measurement;
        told.measurement = measurement->measured;
        return told;
    }
    if (const KitItem* kept = desk().item(m_id))
        return *kept;
    return fresh;
}

void ItemEditor::setItem(const KitItem& item)
{
    if (!ready() || this->item() == item)
        return;
    desk().setDraft(item);
    refresh();
}
