// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"
#include "mobile/pages/athleteforms.h"

/** One athlete's form: what is typed waits as a draft until it is kept. */
class AthleteEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY bookChanged REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY athleteIdChanged FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(QString squad READ squad WRITE setSquad NOTIFY changed FINAL)
    Q_PROPERTY(QString notes READ notes WRITE setNotes NOTIFY changed FINAL)
    Q_PROPERTY(QString agreement READ agreement NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)
    Q_PROPERTY(bool minor READ isMinor NOTIFY changed FINAL)
    Q_PROPERTY(bool waits READ isWaiting NOTIFY changed FINAL)
    Q_PROPERTY(QStringList ways READ ways NOTIFY changed FINAL)
    Q_PROPERTY(QStringList again READ again NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_id.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString name() const { return QString::fromStdString(form().athlete.name); }
    void setName(const QString& name);
    [[nodiscard]] QString squad() const { return QString::fromStdString(form().athlete.squad); }
    void setSquad(const QString& squad);
    [[nodiscard]] QString notes() const { return QString::fromStdString(form().athlete.notes); }
    void setNotes(const QString& notes);
    /// Who agreed and when; empty where nobody has.
    [[nodiscard]] QString agreement() const;
    [[nodiscard]] bool canKeep() const;
    /// Entries that are not kept yet.
    [[nodiscard]] bool isDrafted() const;
    /// May be under 18.
    [[nodiscard]] bool isMinor() const;
    /// More than name, squad and loads has to wait: for the birth year, or for a guardian's agreement.
    [[nodiscard]] bool isWaiting() const;
    /// What is there behind "Bar marks", "Set-ups", "Measured by day", which is empty where nothing is, and "Strength".
    [[nodiscard]] QStringList ways() const;

    /// Why bar marks should be taken again, and for which lifts; empty where none need.
    [[nodiscard]] QStringList again() const;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    /// Keeps what differs; `kept` follows once it is on the disk.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();
    /// A guardian agrees today; it counts once it is kept.
    Q_INVOKABLE void agree(const QString& who);
    /// Takes the athlete out of the squad.
    Q_INVOKABLE void takeOut();

Q_SIGNALS:
    void bookChanged();
    void athleteIdChanged();
    void kept();
    void takenOut();

private:
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] AthleteForm form() const;
    [[nodiscard]] AthleteForm keptForm() const;
    void setForm(const AthleteForm& form);

    BookService* m_book = nullptr;
    steelyard::RecordId m_id;
};
