// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/measureguide.h"

#include "mobile/follow.h"
#include "mobile/measuring/measuretexts.h"

using namespace steelyard;

void MeasureGuide::setForm(ItemEditor* form)
{
    if (!follow(this, m_form, form, &MeasureGuide::changed))
        return;
    if (form) {
        connect(form, &ItemEditor::itemIdChanged, this, &MeasureGuide::resume);
        connect(form, &ItemEditor::deskChanged, this, &MeasureGuide::resume);
    }
    Q_EMIT formChanged();
    resume();
}

QString MeasureGuide::drift() const
{
    const BookService* book = ready() ? m_form->book() : nullptr;
    const KitRecord* before = book ? book->book().item(RecordId::fromHex(m_form->itemId().toStdString()).value_or(RecordId{})) : nullptr;
    if (!before || before->measurements.empty() || before->item.measurement == m_form->measured())
        return {};
    const MeasurementRecord& last = before->measurements.front();
    const auto both = compared(last.measured, m_form->measured());
    return both ? measuretexts::drift(*both, last, book->today()) : QString();
}

void MeasureGuide::stepped()
{
    Q_EMIT stepChanged();
    Q_EMIT changed();
}

void MeasureGuide::begin()
{
    if (!m_form->isDrafted())
        m_form->measureAnew();
}
