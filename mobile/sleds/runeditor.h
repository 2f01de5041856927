// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"
#include "mobile/sleds/sledforms.h"

/** A timed run of an athlete with a sled; three with different loads make her own line of speed by load. */
class RunEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString venueId READ venueId WRITE setVenueId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString surface READ surface WRITE setSurface NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString venueId() const { return QString::fromStdString(m_venue.hex()); }
    void setVenueId(const QString& id);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    /// On which it is run; as it was said of the sled.
    [[nodiscard]] QString surface() const { return m_surface; }
    void setSurface(const QString& surface);
    [[nodiscard]] QString who() const;
    /// "6.5 ± 0.2 m/s"
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
    [[nodiscard]] QString draftKey() const { return QStringLiteral("run:%1:%2").arg(athleteId(), itemId()); }
    [[nodiscard]] RunForm form() const;
    void setForm(const RunForm& form);
    [[nodiscard]] std::optional<steelyard::SledRunTimed> run() const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_venue, m_item;
    QString m_surface;
};
