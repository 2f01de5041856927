// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/squadview.h"

#include "mobile/follow.h"

#include <QSet>

using namespace steelyard;

namespace {

QString initialOf(const Athlete& athlete)
{
    const QList<uint> name = QString::fromStdString(athlete.name).normalized(QString::NormalizationForm_D).trimmed().toUcs4();
    if (name.isEmpty())
        return QStringLiteral("#");
    const char32_t first = name.front();
    return QString::fromUcs4(&first, 1).toUpper();
}

/// The writing that a name begins in: there is no stretch from a letter of one to a letter of another.
QChar::Script scriptOf(const Athlete& athlete)
{
    return QChar::script(initialOf(athlete).toUcs4().front());
}

/// Stretches of neighbouring initials of one script with at most a handful of people each, as the index of each one's first person.
std::vector<std::size_t> stretches(const std::vector<const Athlete*>& people, int handful)
{
    std::vector<std::size_t> starts;
    std::size_t from = 0;
    while (from < people.size()) {
        starts.push_back(from);
        std::size_t to = from, next = from;
        while (next < people.size()) {
            const QString initial = initialOf(*people[next]);
            while (next < people.size() && initialOf(*people[next]) == initial)
                ++next;
            if (to > from && (next - from > static_cast<std::size_t>(handful) || scriptOf(*people[next - 1]) != scriptOf(*people[from])))
                break;
            to = next;
        }
        from = to;
    }
    return starts;
}

QString markFact(const Athlete& athlete)
{
    return athlete.marks.empty() ? SquadView::tr("no bar marks") : SquadView::tr("bar marks: %1").arg(athlete.marks.size());
}

}

void SquadView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &SquadView::refresh))
        return;
    Q_EMIT bookChanged();
    refresh();
}

void SquadView::setSquad(int index)
{
    m_squad = index > 0 && index < m_squads.size() ? m_squads[index] : QString();
    m_letter.clear();
    refresh();
}

void SquadView::setLetter(int index)
{
    m_letter = index >= 0 && index < m_letters.size() ? m_letters[index] : QString();
    refresh();
}

void SquadView::refresh()
{
    std::vector<const Athlete*> people = m_book ? m_book->book().athletes() : std::vector<const Athlete*>();
    QStringList squads;
    for (const Athlete* athlete : people)
        if (!athlete->squad.empty() && !squads.contains(QString::fromStdString(athlete->squad)))
            squads << QString::fromStdString(athlete->squad);
    squads.sort(Qt::CaseInsensitive);
    squads.prepend(tr("everybody"));
    m_squads = squads;
    if (!m_squads.contains(m_squad))
        m_squad.clear();
    if (!m_squad.isEmpty())
        std::erase_if(people, [this](const Athlete* athlete) { return QString::fromStdString(athlete->squad) != m_squad; });

    const auto byInitial = [](const Athlete* a, const Athlete* b) { return initialOf(*a) < initialOf(*b); };
    std::stable_sort(people.begin(), people.end(), byInitial);
    const auto starts = people.size() > handful ? stretches(people, handful) : std::vector<std::size_t>();
    m_letters.clear();
    std::size_t from = 0, to = people.size();
    for (std::size_t i = 0; i < starts.size(); ++i) {
        const std::size_t end = i + 1 < starts.size() ? starts[i + 1] : people.size();
        const QString first = initialOf(*people[starts[i]]), last = initialOf(*people[end - 1]);
        m_letters << (first == last ? first : tr("%1–%2").arg(first, last));
        if (m_letters.back() == m_letter) {
            from = starts[i];
            to = end;
        }
    }
    if (!m_letters.contains(m_letter))
        m_letter.clear();

    std::vector<AthleteRow> rows;
    for (std::size_t i = from; i < to; ++i)
        rows.push_back({QString::fromStdString(people[i]->id.hex()), QString::fromStdString(people[i]->name), QString::fromStdString(people[i]->squad), markFact(*people[i])});
    m_athletes.setRows(std::move(rows));
    Q_EMIT changed();
}
