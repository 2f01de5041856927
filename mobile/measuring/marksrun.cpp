// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/marksrun.h"

#include "core/work/keeping/keepathlete.h"
#include "core/work/measuring/guiding.h"
#include "core/work/records/codec.h"
#include "mobile/text/keepingtexts.h"

#include <algorithm>

using namespace steelyard;

void MarksRun::setForm(MarksEditor* form)
{
    m_form = form;
    if (form) {
        connect(form, &MarksEditor::changed, this, &MarksRun::changed);
        connect(form, &MarksEditor::deskChanged, this, &MarksRun::stepped);
    }
    stepped();
}

void MarksRun::setWork(DeskWork* work)
{
    m_work = work;
    if (work)
        connect(work, &DeskWork::changed, this, &MarksRun::changed);
    stepped();
}

QStringList MarksRun::keys() const
{
    QStringList keys;
    if (!m_form || !m_form->deskService())
        return keys;
    for (const FieldSpec& spec : m_form->specs())
        if (spec.key == QLatin1String("bottom") || spec.key == QLatin1String("top") || (m_zoned && spec.key.startsWith(QLatin1String("zone"))))
            keys << spec.key;
    return keys;
}

QString MarksRun::key() const
{
    return keys().value(m_step);
}

QString MarksRun::heading() const
{
    return m_work ? m_work->who() : QString();
}

QString MarksRun::progress() const
{
    const auto spec = m_form ? m_form->spec(key()) : std::nullopt;
    const QString what = spec ? spec->label : tr("kept");
    const auto all = squad();
    return all.size() < 2 ? what : tr("%1 · %2 of %3").arg(what).arg(place() + 1).arg(all.size());
}

void MarksRun::setZoned(bool zoned)
{
    if (m_zoned == zoned)
        return;
    m_zoned = zoned;
    // the mark at hand stays at hand where it can
    m_step = std::min(m_step, static_cast<int>(keys().size()));
    stepped();
}

std::vector<const Athlete*> MarksRun::squad() const
{
    if (!m_work || !m_work->book())
        return {};
    const Athlete* now = m_work->book()->book().athlete(RecordId::fromHex(m_work->athleteId().toStdString()).value_or(RecordId{}));
    auto all = m_work->book()->book().athletes();
    if (!now)
        return {};
    std::erase_if(all, [now](const Athlete* athlete) { return athlete->squad != now->squad; });
    return all;
}

std::size_t MarksRun::place() const
{
    const auto all = squad();
    const auto at = std::find_if(all.begin(), all.end(), [this](const Athlete* athlete) { return QString::fromStdString(athlete->id.hex()) == m_work->athleteId(); });
    return static_cast<std::size_t>(at - all.begin());
}

QString MarksRun::nextName() const
{
    const auto all = squad();
    const std::size_t at = place() + 1;
    return at < all.size() ? QString::fromStdString(all[at]->name) : QString();
}

std::vector<LiftId> MarksRun::likeLifts() const
{
    if (!m_work || !m_work->book())
        return {};
    const SeasonBook& book = m_work->book()->book();
    const LiftId now = liftIn(m_work->lift().toStdString()).value_or(LiftId{});
    const OwnLift* own = book.lift(now.own);
    std::vector<LiftId> list = own ? std::vector<LiftId>{own->like} : similarLifts(now);
    for (const OwnLift* other : book.lifts())
        if (!own && other->like == now)
            list.push_back(LiftId::added(other->id));
    std::erase_if(list, [&](LiftId lift) { return lift == LiftId{} || book.startOf(lift) != book.startOf(now); });
    return list;
}

QStringList MarksRun::alike() const
{
    QStringList list;
    for (const LiftId lift : likeLifts())
        list << keepingtexts::lift(lift, m_work->book()->book());
    return list;
}

void MarksRun::start()
{
    m_step = 0;
    m_copied.clear();
    stepped();
}

void MarksRun::next()
{
    if (key().isEmpty())
        return;
    ++m_step;
    if (key().isEmpty() && m_work->marksDiffer())
        m_work->keepMarks();
    stepped();
}

bool MarksRun::back()
{
    if (m_step == 0)
        return false;
    --m_step;
    stepped();
    return true;
}

void MarksRun::nextLifter()
{
    const auto all = squad();
    const std::size_t at = place() + 1;
    if (at >= all.size())
        return;
    m_work->take(QString::fromStdString(all[at]->id.hex()), m_work->lift());
    start();
}

void MarksRun::copyTo(int place)
{
    const auto lifts = likeLifts();
    const Athlete* now = m_work ? m_work->book()->book().athlete(RecordId::fromHex(m_work->athleteId().toStdString()).value_or(RecordId{})) : nullptr;
    if (!now || place < 0 || static_cast<std::size_t>(place) >= lifts.size())
        return;
    const LiftId from = liftIn(m_work->lift().toStdString()).value_or(LiftId{}), to = lifts[static_cast<std::size_t>(place)];
    const auto marks = now->marks.find(from);
    if (marks == now->marks.end())
        return;
    Athlete copy = *now;
    copy.marks[to] = marks->second;
    keepAthlete(m_work->book()->keeping(), copy, m_work->book()->teller([self = QPointer(this), from, to](const RecordId&) {
        if (!self || !self->m_work)
            return;
        self->m_copied = tr("Copied from %1 to %2: measure it there when there is time.")
                             .arg(keepingtexts::lift(from, self->m_work->book()->book()), keepingtexts::lift(to, self->m_work->book()->book()));
        Q_EMIT self->changed();
    }));
}

void MarksRun::stepped()
{
    Q_EMIT stepChanged();
    Q_EMIT changed();
}
