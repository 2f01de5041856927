// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/rows.h"

#ifndef Q_MOC_RUN
#include "core/work/implements/figures.h"
#include "core/work/implements/maybelifted.h"
#endif

#include <QStringList>

/** What leads the page of one thing and one athlete. */
struct UseWords {
    Q_GADGET
    QML_VALUE_TYPE(useWords)
    Q_PROPERTY(QString thing MEMBER thing)
    Q_PROPERTY(QString who MEMBER who)
    Q_PROPERTY(QString mass MEMBER mass)
    Q_PROPERTY(QString may MEMBER may)
    Q_PROPERTY(QString figures MEMBER figures)
    Q_PROPERTY(QString against MEMBER against)
    Q_PROPERTY(QStringList flip MEMBER flip)
    Q_PROPERTY(QString setLabel MEMBER setLabel)
    Q_PROPERTY(QString set MEMBER set)
    Q_PROPERTY(bool stop MEMBER stop)
    Q_PROPERTY(bool ready MEMBER ready)

public:
    bool operator==(const UseWords&) const = default;

    QString thing, who, mass;
    QString may;     ///< "may use it", "look over first", "not now"
    QString figures; ///< of a tyre what flipping it takes, of a carry what is in her hands
    QString against; ///< "70 % of her deadlift"; empty for a tyre, which goes by the limit for tyres
    QStringList flip; ///< of a tyre: what it takes straight up, angle by angle until it stands by itself
    QString setLabel, set; ///< what plates hang on it, or what it is set to; empty where nothing is
    bool stop = false, ready = false;
};

/** Whether an athlete may use one thing for a lift: every reason with what would settle it, and what is to be looked over before. */
class UseView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString kind READ kind NOTIFY changed FINAL)
    Q_PROPERTY(UseWords words READ words NOTIFY changed FINAL)
    Q_PROPERTY(QStringList lifts READ lifts NOTIFY changed FINAL)
    Q_PROPERTY(int lift READ lift WRITE setLift NOTIFY changed FINAL)
    Q_PROPERTY(QString liftId READ liftId NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* stops READ stops CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* cautions READ cautions CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    /// The thing's one word.
    [[nodiscard]] QString kind() const;
    [[nodiscard]] const UseWords& words() const { return m_words; }
    /// What it is used for, the usual lift first.
    [[nodiscard]] QStringList lifts() const;
    [[nodiscard]] int lift() const { return m_lift; }
    void setLift(int lift);
    [[nodiscard]] QString liftId() const;
    [[nodiscard]] QAbstractListModel* stops() { return &m_stops; }
    [[nodiscard]] QAbstractListModel* cautions() { return &m_cautions; }

    /// Plates on handles, yoke or frame by this much; ours.
    static constexpr double addedStepKg = 2.5;
    /// More or less on it; or the next mass that a bell can be set to.
    Q_INVOKABLE void step(bool up);
    /// A caution was looked over, for this thing and lift; another lift or athlete is looked over anew.
    Q_INVOKABLE void lookOver(int code);

Q_SIGNALS:
    void changed();

private:
    void refresh();
    [[nodiscard]] const steelyard::KitItem* item() const;
    [[nodiscard]] std::vector<steelyard::LiftId> liftIds() const;
    [[nodiscard]] QString figures(const steelyard::UseFacts& facts) const;
    [[nodiscard]] QStringList flip(const steelyard::UseFacts& facts) const;
    [[nodiscard]] QString carried(const steelyard::UseFacts& facts, const steelyard::CarryMeasurement& carry) const;
    /// What it carries with the plates that are set.
    [[nodiscard]] steelyard::Result<steelyard::CarryLoad> carryNow(const steelyard::CarryMeasurement& carry) const;
    /// What is lifted with what is set; nothing where it is the thing by itself.
    [[nodiscard]] std::optional<steelyard::Estimate<steelyard::Mass>> load() const;
    [[nodiscard]] QString heldAgainst(const steelyard::UseFacts& facts) const;

    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_item;
    int m_lift = 0;
    int m_setting = 0;
    double m_addedKg = 0;
    std::vector<steelyard::UseLookedOver> m_lookedOver;
    std::vector<std::variant<steelyard::UseCode, steelyard::ReasonKey>> m_shown; ///< of the cautions, by their codes
    UseWords m_words;
    RowList<NoticeRow> m_stops;
    RowList<CautionRow> m_cautions;
};
