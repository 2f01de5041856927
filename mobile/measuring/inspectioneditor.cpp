// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/inspectioneditor.h"

#include "core/work/keeping/keepkititem.h"
#include "core/work/measuring/lookover.h"
#include "mobile/follow.h"
#include "mobile/measuring/lookovertexts.h"
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
    return last.fault ? measuretexts::outOfUse(last, m_book->today()) : tr("looked over %1: nothing wrong").arg(keepingtexts::day(last.day, m_book->today()));
}

QString InspectionEditor::lookAt() const
{
    return item() ? lookovertexts::lookAt(kindOf(item()->measurement)) : QString();
}

QStringList InspectionEditor::findings() const
{
    if (!item())
        return {};
    QStringList findings{tr("nothing wrong")};
    for (const KitFault fault : faultsOf(kindOf(item()->measurement)))
        findings << lookovertexts::fault(fault);
    return findings;
}

void InspectionEditor::keep()
{
    if (!item())
        return;
    std::optional<KitFault> fault;
    if (!isFit()) {
        const std::vector<KitFault> faults = faultsOf(kindOf(item()->measurement));
        if (m_found < 1 || static_cast<std::size_t>(m_found) > faults.size())
            return;
        fault = faults[static_cast<std::size_t>(m_found) - 1];
    }
    const auto done = [self = QPointer(this)](const RecordId&) {
        if (self)
            Q_EMIT self->kept();
    };
    keepInspection(m_book->keeping(), m_item, fault, m_note.trimmed().toStdString(), m_book->teller(done));
}
