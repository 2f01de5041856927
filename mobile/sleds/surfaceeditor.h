// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"
#include "mobile/sleds/sledforms.h"

/** How a sled slides on a surface of a venue: pulled at a steady walk with a scale in its strap, with two loads or more. */
class SurfaceEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)

public:
    static constexpr std::size_t mostPulls = 6;

    using FieldEditor::FieldEditor;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    /// Surfaces of the venue that this sled was pulled on before.
    [[nodiscard]] QStringList names() const;
    /// "friction 0.45 ± 0.03"; else what is missing.
    [[nodiscard]] QString answer() const;
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] bool canKeep() const;
    [[nodiscard]] bool isDrafted() const;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();

Q_SIGNALS:
    void kept();

private:
    [[nodiscard]] QString draftKey() const { return QStringLiteral("surface:%1:%2").arg(venueId(), itemId()); }
    [[nodiscard]] SurfaceForm form() const;
    void setForm(const SurfaceForm& form);
    [[nodiscard]] const steelyard::SledMeasurement* sled() const;
    [[nodiscard]] steelyard::SledSurface surface() const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_venue, m_item;
};
