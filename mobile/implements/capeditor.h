// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"
#include "mobile/gates/liftchoices.h"

/** What an athlete's load in one lift is held against: a share of the lowest estimate of another. */
class CapEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString liftId READ liftId WRITE setLiftId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(QString lift READ lift NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lifts READ lifts NOTIFY changed FINAL)
    Q_PROPERTY(int of READ of WRITE setOf NOTIFY changed FINAL)
    Q_PROPERTY(QString share READ share NOTIFY changed FINAL)
    Q_PROPERTY(QString comesTo READ comesTo NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(bool there READ isThere NOTIFY changed FINAL)

public:
    /// A step of the share, and where it begins; ours.
    static constexpr int stepPercent = 5;

    using FieldEditor::FieldEditor;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString liftId() const;
    void setLiftId(const QString& id);
    [[nodiscard]] QString who() const;
    [[nodiscard]] QString lift() const;
    /// Lifts that she can be held against; hers first.
    [[nodiscard]] QStringList lifts() const;
    [[nodiscard]] int of() const;
    void setOf(int lift);
    /// "70 %"
    [[nodiscard]] QString share() const;
    /// "at most 63 kg by her lowest estimate of 3 Nov"; else what is missing.
    [[nodiscard]] QString comesTo() const;
    [[nodiscard]] bool canKeep() const;
    [[nodiscard]] bool isThere() const { return kept().has_value(); }

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    Q_INVOKABLE void step(bool up);
    Q_INVOKABLE void keep();
    /// It is held against nothing any more.
    Q_INVOKABLE void takeBack();

Q_SIGNALS:
    void done();

private:
    [[nodiscard]] std::optional<steelyard::CapRule> kept() const;
    [[nodiscard]] LiftChoices choices() const;
    void readKept();
    void write(const std::optional<steelyard::CapRule>& rule);

    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete;
    steelyard::LiftId m_lift;
    steelyard::CapRule m_rule;
};
