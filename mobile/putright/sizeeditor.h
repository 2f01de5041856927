// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/dayeditor.h"

#ifndef Q_MOC_RUN
#include "core/season/athlete.h"
#endif

/** Body mass and height of one day, to be put right or taken out; what is typed waits as a draft until it is kept. */
class SizeEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY bookChanged REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(QString sizeId READ sizeId WRITE setSizeId NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(DayEditor* day READ day CONSTANT FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString stands READ stands NOTIFY changed FINAL)
    Q_PROPERTY(QString said READ said NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    explicit SizeEditor(QObject* parent = nullptr);

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString sizeId() const { return QString::fromStdString(m_id.hex()); }
    void setSizeId(const QString& id);
    [[nodiscard]] DayEditor* day() { return &m_day; }
    [[nodiscard]] QString name() const;
    /// "72.4 kg, 3 Nov", as it stands in the book.
    [[nodiscard]] QString stands() const;
    /// What it said before it was put right; empty where it stands as it was kept first.
    [[nodiscard]] QString said() const;
    /// Why it cannot be kept as it is typed.
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] bool isDrafted() const;
    [[nodiscard]] bool canKeep() const;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    /// Says it as it is typed; `kept` follows once it is on the disk.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();
    Q_INVOKABLE void takeOut();

Q_SIGNALS:
    void bookChanged();
    void targetChanged();
    void kept();

protected:
    void refresh() override;

private:
    /// A body size as it is typed.
    struct Form {
        std::optional<steelyard::Entered<steelyard::Mass>> mass;
        std::optional<steelyard::Entered<steelyard::Length>> height;
        TypedDay day;
        bool operator==(const Form&) const = default;
    };
    [[nodiscard]] const steelyard::BodySize* size() const;
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] std::optional<Form> keptForm() const;
    [[nodiscard]] std::optional<Form> form() const;
    void setForm(const Form& form);

    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_id;
    DayEditor m_day;
};
