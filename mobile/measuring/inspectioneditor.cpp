// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/inspectioneditor.h"

#include "core/work/keeping/keepkititem.h"
#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/text/keepingtexts.h"

#include <QPointer>

using namespace steelyard;

void InspectionEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, &InspectionEditor::changed))
        Q_EMIT changed();
}

void InspectionEditor::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    Q_EMIT changed();
}

const KitItem* InspectionEditor::item() const
{
    const KitRecord* record = m_book ? m_book->book().item(m_item) : nullptr;
    return record ? &record->item : nullptr;
}

QString InspectionEditor::name() const
{
    return item() ? QString::fromStdString(item()->name) : QString();
}

bool InspectionEditor::isOutOfUse() const
{
    return item() && item()->isOutOfUse();
}

QString InspectionEditor::state() const
{
    if (!item() || !item()->inspection)
        return {};
    const Inspection& last = *item()->inspection;
    return last.fault ? measuretexts::outOfUse(last, m_book->today()) : tr("looked over and fit on %1").arg(keepingtexts::day(last.day, m_book->today()));
}

QStringList InspectionEditor::faults() const
{
    return {measuretexts::fault(KitFault::WornLink), measuretexts::fault(KitFault::Cut), measuretexts::fault(KitFault::Other)};
}

void InspectionEditor::keep(bool fit)
{
    if (!item() || (!fit && (m_fault < 0 || m_fault >= faults().size())))
        return;
    const auto done = [self = QPointer(this)](const RecordId&) {
        if (self)
            Q_EMIT self->kept();
    };
    const auto fault = fit ? std::nullopt : std::optional(static_cast<KitFault>(m_fault));
    keepInspection(m_book->keeping(), m_item, fault, m_note.trimmed().toStdString(), m_book->teller(done));
}
