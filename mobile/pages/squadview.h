// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/models/seasonrows.h"

/** The people of the book, by squad and by stretches of the alphabet that hold a handful each. */
class SquadView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY bookChanged REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* athletes READ athletes CONSTANT FINAL)
    Q_PROPERTY(bool empty READ isEmpty NOTIFY changed FINAL)
    Q_PROPERTY(QStringList squads READ squads NOTIFY changed FINAL)
    Q_PROPERTY(int squad READ squad WRITE setSquad NOTIFY changed FINAL)
    Q_PROPERTY(QStringList letters READ letters NOTIFY changed FINAL)
    Q_PROPERTY(int reviewCount READ reviewCount NOTIFY changed FINAL)
    Q_PROPERTY(int letter READ letter WRITE setLetter NOTIFY changed FINAL)

public:
    /// So many names are seen at once on a phone, below the keys and above the thumb.
    static constexpr int handful = 6;

    using QObject::QObject;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QAbstractListModel* athletes() { return &m_athletes; }
    /// Nobody at all, in any squad.
    [[nodiscard]] bool isEmpty() const { return !m_book || m_book->book().athletes().empty(); }
    /// So many things several devices said differently.
    [[nodiscard]] int reviewCount() const { return m_book ? static_cast<int>(m_book->book().review().size()) : 0; }
    /// "everybody", then each squad.
    [[nodiscard]] QStringList squads() const { return m_squads; }
    [[nodiscard]] int squad() const { return static_cast<int>(std::max<qsizetype>(m_squads.indexOf(m_squad), 0)); }
    void setSquad(int index);
    /// "A–C", "D", …: as few as hold no more than a handful each; none where all fit at once.
    [[nodiscard]] QStringList letters() const { return m_letters; }
    /// The stretch that is shown; -1 for all.
    [[nodiscard]] int letter() const { return static_cast<int>(m_letters.indexOf(m_letter)); }
    void setLetter(int index);

Q_SIGNALS:
    void bookChanged();
    void changed();

private:
    void refresh();

    BookService* m_book = nullptr;
    RowList<AthleteRow> m_athletes;
    QStringList m_squads, m_letters;
    QString m_squad, m_letter;
};
