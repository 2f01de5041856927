// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/fieldeditor.h"

#include "mobile/follow.h"

void FieldEditor::setDeskService(DeskService* desk)
{
    if (!follow(this, m_desk, desk, &FieldEditor::refresh))
        return;
    Q_EMIT deskChanged();
    refresh();
}

std::optional<FieldSpec> FieldEditor::spec(const QString& key) const
{
    for (const FieldSpec& s : specs())
        if (s.key == key)
            return s;
    return std::nullopt;
}

QString FieldEditor::nextMissing(const QString& key) const
{
    bool past = false;
    for (const FieldSpec& s : specs()) {
        if (past && s.needed && !s.shown)
            return s.key;
        past = past || s.key == key;
    }
    return {};
}

void FieldEditor::refresh()
{
    if (!m_desk)
        return;
    refreshFields();
    Q_EMIT changed();
}

void FieldEditor::refreshFields()
{
    std::vector<FieldRow> rows;
    for (const FieldSpec& s : specs()) {
        if (s.label.isEmpty())
            continue;
        rows.push_back({s.key, s.label, s.text.isEmpty() && !s.shown ? tr("not entered") : s.text, s.shown ? s.unit : QString(), s.about(), s.filledIn, s.shown.has_value() || !s.text.isEmpty()});
    }
    m_fields.setRows(std::move(rows));
}
