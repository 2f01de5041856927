// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/strength/testform.h"
#include "mobile/strength/testshown.h"

/** A test of strength: a new one, or one put right or taken out. What is typed waits as a draft until it is kept. */
class TestEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(QString lift READ lift WRITE setLift NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(QString testId READ testId WRITE setTestId NOTIFY targetChanged FINAL)
    Q_PROPERTY(DayEditor* day READ day CONSTANT FINAL)
    Q_PROPERTY(TestShown shown READ shown NOTIFY changed FINAL)
    Q_PROPERTY(TestTyped typed READ typed NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    explicit TestEditor(QObject* parent = nullptr);

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString lift() const;
    void setLift(const QString& lift);
    /// Empty for a new one.
    [[nodiscard]] QString testId() const { return m_id.isNone() ? QString() : QString::fromStdString(m_id.hex()); }
    void setTestId(const QString& id);
    [[nodiscard]] DayEditor* day() { return &m_day; }
    [[nodiscard]] TestShown shown() const;
    [[nodiscard]] TestTyped typed() const;
    [[nodiscard]] bool isDrafted() const;
    [[nodiscard]] bool canKeep() const;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    /// One rep more or less; from none on it starts at five.
    Q_INVOKABLE void stepReps(bool up);
    /// 0 not said, then one more than is in reserve.
    Q_INVOKABLE void setReserve(int index);
    Q_INVOKABLE void setMissed(bool missed);
    Q_INVOKABLE void setMaximum(bool maximum);
    Q_INVOKABLE void setHelped(bool helped);
    /// One of what may hang, on or off.
    Q_INVOKABLE void hang(int index);
    Q_INVOKABLE void chooseSetup(int index);
    Q_INVOKABLE void setToday(bool today);
    /// Keeps it as it is typed; `kept` follows once it is on the disk.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();
    Q_INVOKABLE void takeOut();

Q_SIGNALS:
    void targetChanged();
    void kept();

protected:
    void refresh() override;

private:
    [[nodiscard]] const steelyard::StrengthTest* known() const;
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] TestForm keptForm() const;
    [[nodiscard]] TestForm form() const;
    void setForm(const TestForm& form);
    template <typename Change>
    void change(const Change& change)
    {
        TestForm next = form();
        change(next);
        setForm(next);
    }
    [[nodiscard]] steelyard::StrengthTest testOf(const TestForm& form) const;
    [[nodiscard]] std::vector<const steelyard::SavedSetup*> setups() const;
    [[nodiscard]] QString trouble(const TestForm& form) const;
    [[nodiscard]] bool isBodyLifted() const;
    [[nodiscard]] steelyard::WhenTold whenKept();

    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_id;
    steelyard::LiftId m_lift;
    DayEditor m_day;
};
