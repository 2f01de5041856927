// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/measuring/keptkit.h"
#endif
#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/models/rowlist.h"

/** Weighed plates of the kit, taken into the stock or not. */
struct WeighedRow {
    QString what, how;
    bool taken = false;
    bool operator==(const WeighedRow&) const = default;
    static std::vector<RowRole<WeighedRow>> roles()
    {
        return {{"what", [](const WeighedRow& r) { return r.what; }}, {"how", [](const WeighedRow& r) { return r.how; }}, {"taken", [](const WeighedRow& r) { return r.taken; }}};
    }
};

/** Bars and plates here that were weighed, to be taken for what is on the bar page. */
class WeighedIronView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY changed FINAL)
    Q_PROPERTY(QStringList bars READ bars NOTIFY changed FINAL)
    Q_PROPERTY(int bar READ bar WRITE setBar NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* plates READ plates CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    /// "as keyed", then each with its mass and day; none where no bar was weighed.
    [[nodiscard]] QStringList bars() const;
    /// Which of them is on; −1 for one that was taken and is out of use or lent now.
    [[nodiscard]] int bar() const;
    void setBar(int place);
    [[nodiscard]] QAbstractListModel* plates() { return &m_plates; }
    /// Takes the plates of a row into the stock with what they weigh, or gives them their mark back.
    Q_INVOKABLE void takePlates(int row);

Q_SIGNALS:
    void changed();

private:
    void refresh();
    [[nodiscard]] std::vector<steelyard::KnownIron> iron(steelyard::IronSort sort) const;
    /// Plates that are taken and are not offered any more, being elsewhere or not to be used: they can be given their mark back.
    [[nodiscard]] std::vector<steelyard::RecordId> takenAndGone() const;
    [[nodiscard]] QString nameOf(const steelyard::RecordId& item) const;
    /// "20.3 ± 0.06 kg, weighed 3 Nov".
    [[nodiscard]] QString about(const steelyard::KnownIron& iron) const;
    [[nodiscard]] const steelyard::BarRecord& record() const { return m_desk->desk().setup().bar; }

    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    RowList<WeighedRow> m_plates;
};
