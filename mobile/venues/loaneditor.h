// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/putright/dayeditor.h"

#ifndef Q_MOC_RUN
#include "core/work/venues/keepvenuekit.h"
#endif

/** Whose a thing is and who has it: ours, borrowed or lent out, and until when. What is typed waits as a draft until it is kept. */
class LoanEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString state READ state NOTIFY changed FINAL)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who WRITE setWho NOTIFY changed FINAL)
    Q_PROPERTY(QStringList days READ days CONSTANT FINAL)
    Q_PROPERTY(int when READ when WRITE setWhen NOTIFY changed FINAL)
    Q_PROPERTY(DayEditor* day READ day CONSTANT FINAL)
    Q_PROPERTY(QString dayText READ dayText NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)

public:
    /// The choices of `days`, in their order.
    enum When { NoDay, Today, Tomorrow, InAWeek, InAMonth, OtherDay };
    Q_ENUM(When)

    explicit LoanEditor(QObject* parent = nullptr);

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_item.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] QString name() const;
    /// What is kept of it: "lent to the rowers, back by 12 Mar"; empty where it is ours and here.
    [[nodiscard]] QString state() const;
    /// 0 ours and here, 1 borrowed, 2 lent out.
    [[nodiscard]] int kind() const { return static_cast<int>(form().kind); }
    void setKind(int kind);
    [[nodiscard]] QString who() const { return form().who; }
    void setWho(const QString& who);
    [[nodiscard]] QStringList days() const;
    [[nodiscard]] int when() const;
    void setWhen(int when);
    /// The day as numbers to tap, where none of the choices is it.
    [[nodiscard]] DayEditor* day() { return &m_day; }
    /// "12 Mar", or what is wrong with the day; empty where none is said.
    [[nodiscard]] QString dayText() const;
    [[nodiscard]] bool canKeep() const;
    Q_INVOKABLE void keep();

Q_SIGNALS:
    void changed();
    void kept();

private:
    struct Form {
        steelyard::LoanKind kind = steelyard::LoanKind::None;
        QString who;
        std::optional<TypedDay> day;
        bool other = false; ///< its day is keyed
        bool operator==(const Form&) const = default;
    };
    [[nodiscard]] const steelyard::KitItem* item() const;
    [[nodiscard]] QString draftKey() const { return QStringLiteral("loan:") + itemId(); }
    [[nodiscard]] Form keptForm() const;
    [[nodiscard]] Form form() const;
    void setForm(const Form& form);
    void refresh();

    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    steelyard::RecordId m_item;
    DayEditor m_day;
};
