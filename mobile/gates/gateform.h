// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/dayeditor.h"

#include <QCborArray>

/** From when until when, as choices. */
struct GatePeriod {
    Q_GADGET
    QML_VALUE_TYPE(gatePeriod)
    Q_PROPERTY(QStringList froms MEMBER froms)
    Q_PROPERTY(int from MEMBER from)
    Q_PROPERTY(bool fromKeyed MEMBER fromKeyed)
    Q_PROPERTY(QStringList untils MEMBER untils)
    Q_PROPERTY(int until MEMBER until)
    Q_PROPERTY(bool untilKeyed MEMBER untilKeyed)
    Q_PROPERTY(QString text MEMBER text)

public:
    QStringList froms, untils;
    int from = 0, until = 0;
    bool fromKeyed = false, untilKeyed = false; ///< the day is keyed
    QString text;                               ///< "from 2 Nov until 14 Nov"
};

/** What a form has to say besides. */
struct GateWords {
    Q_GADGET
    QML_VALUE_TYPE(gateWords)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString trouble MEMBER trouble)
    Q_PROPERTY(QString waits MEMBER waits)
    Q_PROPERTY(bool there MEMBER isThere)

public:
    QString name;         ///< of the athlete
    QString trouble;      ///< why it cannot be kept as it is typed
    QString waits;        ///< why more cannot be kept of her yet
    bool isThere = false; ///< it stands in the book
};

/** Something that somebody said of an athlete for some days: who, from when, until when. What is typed waits as a draft until it is kept. */
class GateForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a form of its own kind")
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId WRITE setAthleteId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString recordId READ recordId WRITE setRecordId NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who WRITE setWho NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(GatePeriod period READ period NOTIFY changed FINAL)
    Q_PROPERTY(DayEditor* from READ from CONSTANT FINAL)
    Q_PROPERTY(DayEditor* until READ until CONSTANT FINAL)
    Q_PROPERTY(GateWords words READ words NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    explicit GateForm(QObject* parent = nullptr);

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    void setAthleteId(const QString& id);
    /// Empty for a new one.
    [[nodiscard]] QString recordId() const { return QString::fromStdString(m_id.hex()); }
    void setRecordId(const QString& id);
    [[nodiscard]] QString who() const { return form().who; }
    void setWho(const QString& who);
    /// Who was named before, the last first; at most six.
    [[nodiscard]] QStringList names() const;
    [[nodiscard]] GatePeriod period() const;
    /// The days as numbers to tap, where none of the choices is it.
    [[nodiscard]] DayEditor* from() { return &m_from; }
    [[nodiscard]] DayEditor* until() { return &m_until; }
    [[nodiscard]] GateWords words() const;
    [[nodiscard]] bool isDrafted() const;
    [[nodiscard]] bool canKeep() const;

    Q_INVOKABLE void chooseFrom(int index);
    Q_INVOKABLE void chooseUntil(int index);
    /// Keeps it as it is typed; `kept` follows once it is on the disk.
    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();
    /// That it holds no more from today on: taken back, or lifted.
    Q_INVOKABLE void end(const QString& who);

Q_SIGNALS:
    void changed();
    void kept();

protected:
    struct Form {
        QString who;
        TypedDay from;
        bool fromKeyed = false; ///< its day is keyed
        std::optional<TypedDay> until;
        bool untilKeyed = false;
        QCborArray what; ///< what is said, as each kind of form writes it
        bool operator==(const Form&) const = default;
    };
    /// What was said by somebody for some days, as a form.
    [[nodiscard]] static Form formOf(const std::string& who, std::chrono::sys_days from, const std::optional<std::chrono::sys_days>& until, const QCborArray& what);
    [[nodiscard]] const steelyard::RecordId& athlete() const { return m_athlete; }
    [[nodiscard]] const steelyard::RecordId& record() const { return m_id; }
    [[nodiscard]] Form form() const;
    void setForm(const Form& form);
    [[nodiscard]] Form keptForm() const;
    /// More than name, squad and loads waits for birth year or guardian: what to do about it; empty where nothing waits.
    [[nodiscard]] QString waits() const;

    /// One word, for the draft.
    [[nodiscard]] virtual QString kind() const = 0;
    /// As it is kept; nothing where it is not there.
    [[nodiscard]] virtual std::optional<Form> keptRecord() const = 0;
    [[nodiscard]] virtual QCborArray nothingSaid() const = 0;
    /// How many days it may go on, as choices.
    [[nodiscard]] virtual std::vector<std::chrono::days> lengths() const = 0;
    [[nodiscard]] virtual QString withoutEnd() const = 0;
    /// What is still missing or wrong in what is said.
    [[nodiscard]] virtual QString troubleIn(const Form& form) const = 0;
    virtual void keepForm(const Form& form, const steelyard::WhenTold& told) = 0;
    virtual void endRecord(const steelyard::SaidSo& by, const steelyard::WhenTold& told) = 0;

private:
    [[nodiscard]] QString draftKey() const { return kind() + QLatin1Char(':') + athleteId() + QLatin1Char(':') + recordId(); }
    [[nodiscard]] QString trouble(const Form& form) const;
    [[nodiscard]] steelyard::WhenTold whenKept();
    void refresh();

    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_id;
    DayEditor m_from, m_until;
};
