// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"
#include "mobile/putright/dayeditor.h"

/** What is on record about a kept thing besides its last measurement. */
struct ItemRecordText {
    Q_GADGET
    QML_VALUE_TYPE(itemRecordText)
    Q_PROPERTY(QStringList venues MEMBER venues)
    Q_PROPERTY(int venue MEMBER venue)
    Q_PROPERTY(QString measured MEMBER measured)
    Q_PROPERTY(QString due MEMBER due)
    Q_PROPERTY(bool isDue MEMBER isDue)
    Q_PROPERTY(bool listed MEMBER listed)
    Q_PROPERTY(QString loan MEMBER loan)
    Q_PROPERTY(QString number MEMBER number)
    Q_PROPERTY(QString said MEMBER said)
    Q_PROPERTY(QString changes MEMBER changes)
    Q_PROPERTY(QString trouble MEMBER trouble)

public:
    bool operator==(const ItemRecordText&) const = default;

    QStringList venues; ///< "no venue", then each that it can be moved to; none for a new thing, which belongs where it is measured
    int venue = 0;
    QString measured;   ///< "3, the last 12 days old"; empty for a new thing
    QString due;        ///< "due 12 Mar", "due since 12 Mar"
    bool isDue = false;
    bool listed = false; ///< on a list, with nothing measured yet
    QString loan;       ///< "lent to the rowers, back by 12 Mar"; "neither"
    QString number;     ///< its own number, that a page says where it comes from; empty where it has none
    QString said;       ///< of a measurement put right: what it said at first
    QString changes;    ///< of one being put right: which kept set-ups pull otherwise
    QString trouble;    ///< what is wrong with its day
};

/** What a mass is read on: the scale's step and accuracy, and what it reads. */
struct WeighedOn {
    std::optional<steelyard::Entered<steelyard::Mass>> step, accuracy, read;
};

/** What measuring a chain and measuring a band have in common: a draft on the desk until it is kept. */
class ItemEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a form of its own kind")
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY itemIdChanged FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY bookChanged FINAL)
    Q_PROPERTY(QString venueId MEMBER m_venueId NOTIFY venueIdChanged FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(bool pair READ isPair WRITE setPair NOTIFY changed FINAL)
    Q_PROPERTY(QString measurementId READ measurementId WRITE setMeasurementId NOTIFY itemIdChanged FINAL)
    Q_PROPERTY(DayEditor* day READ day CONSTANT FINAL)
    Q_PROPERTY(ItemRecordText record READ record NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)

public:
    explicit ItemEditor(QObject* parent = nullptr);

    /// As hexadecimal digits; empty is a new one, and so is what no id looks like.
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_id.hex()); }
    void setItemId(const QString& id);
    /// One of its measurements that is put right here; empty where it is measured anew.
    [[nodiscard]] QString measurementId() const { return QString::fromStdString(m_measurement.hex()); }
    void setMeasurementId(const QString& id);
    [[nodiscard]] DayEditor* day() { return &m_day; }
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    [[nodiscard]] bool isPair() const { return item().pair; }
    void setPair(bool pair);
    [[nodiscard]] ItemRecordText record() const;
    /// Moves it to a venue of the list once it is kept.
    Q_INVOKABLE void moveTo(int venue);
    [[nodiscard]] bool canKeep() const;
    /// Whether there is something to measure by; `answer` says what it comes to, `trouble` what is missing.
    [[nodiscard]] virtual bool isMeasured() const = 0;
    [[nodiscard]] virtual QString answer() const = 0;
    [[nodiscard]] virtual QString trouble() const = 0;
    /// What the form says it measures now.
    [[nodiscard]] steelyard::Measured measured() const { return item().measurement; }
    /// Leaves name and number as they are and empties the rest, for whoever measures it again.
    void measureAnew();
    /// Whether two alike may be one thing of the kit, of which one was measured.
    Q_INVOKABLE [[nodiscard]] bool mayBePair() const { return steelyard::comesInPairs(kind()); }
    /// The scale that it is weighed on; nothing for what is not.
    [[nodiscard]] virtual std::optional<WeighedOn> weighedOn() const { return std::nullopt; }
    /// Step and accuracy of another scale; what it reads stays.
    virtual void weighOn(const WeighedOn& scale) { Q_UNUSED(scale) }
    /// Entries that are not kept yet.
    [[nodiscard]] bool isDrafted() const;
    /// Puts the item into the kit as it stands; its id, empty when it cannot be kept.
    Q_INVOKABLE QString keep();
    /// Throws the entries away that are not kept.
    Q_INVOKABLE void throwDraft();
    /// Takes the item out of the kit and off the bar; or, where one of its measurements is put right, that one.
    Q_INVOKABLE void remove();

Q_SIGNALS:
    void itemIdChanged();
    void bookChanged();
    void venueIdChanged();
    /// On the disk where there is a book, else in the kit on the desk; also when a measurement was taken out.
    void kept();

protected:
    [[nodiscard]] steelyard::KitItem item() const;
    void setItem(const steelyard::KitItem& item);
    void refresh() override;
    [[nodiscard]] virtual steelyard::ItemKind kind() const = 0;
    /// The name an item gets when none is given.
    [[nodiscard]] virtual QString ownName(const steelyard::KitItem& item) const = 0;

private:
    void keepInBook(steelyard::KitItem item);
    void keepRight();
    [[nodiscard]] bool isRighting() const { return !m_measurement.isNone(); }
    /// A measurement half put right waits beside the item half measured.
    [[nodiscard]] const steelyard::RecordId& draftId() const { return isRighting() ? m_measurement : m_id; }
    [[nodiscard]] QString dayKey() const { return QStringLiteral("measured:") + measurementId(); }
    [[nodiscard]] const steelyard::MeasurementRecord* known() const;
    [[nodiscard]] std::optional<TypedDay> typedDay() const;
    void setTypedDay(const TypedDay& day);
    /// As it is typed; nothing where it cannot be kept.
    [[nodiscard]] std::optional<steelyard::MeasurementRecord> righted() const;
    [[nodiscard]] QString changesText() const;

    BookService* m_book = nullptr;
    QString m_venueId;
    steelyard::RecordId m_id, m_measurement;
    DayEditor m_day;
};
