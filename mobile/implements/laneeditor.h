// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"

/** How long the lane of a venue is, for carries and sleds. It is kept as it is keyed. */
class LaneEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(bool there READ isThere NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    /// Whether there is such a venue.
    [[nodiscard]] bool isThere() const { return venue() != nullptr; }

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

private:
    [[nodiscard]] const steelyard::Venue* venue() const;
    void keep(const std::optional<steelyard::Entered<steelyard::Length>>& lane);

    BookService* m_book = nullptr;
    steelyard::RecordId m_venue;
};
