// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/gateform.h"

#include "core/work/keeping/athlete/aboutsomebody.h"
#include "mobile/follow.h"
#include "mobile/gates/standingtexts.h"
#include "mobile/text/keepingtexts.h"

#include <QCborValue>
#include <QPointer>

#include <algorithm>

using namespace steelyard;

namespace {

constexpr int version = 1;
constexpr qsizetype mostNames = 6;
constexpr int fromToday = 0, fromOther = 1;

}

GateForm::GateForm(QObject* parent)
    : QObject(parent), m_from([this] { return m_book && form().fromKeyed ? std::optional(form().from) : std::nullopt; },
                              [this](const TypedDay& day) {
                                  Form now = form();
                                  now.from = day;
                                  setForm(now);
                              },
                              this),
      m_until([this] { return m_book && form().untilKeyed ? form().until : std::nullopt; },
              [this](const TypedDay& day) {
                  Form now = form();
                  now.until = day;
                  setForm(now);
              },
              this)
{
}

void GateForm::setDesk(DeskService* desk)
{
    m_desk = desk;
    m_from.setDeskService(desk);
    m_until.setDeskService(desk);
    refresh();
}

void GateForm::setBook(BookService* book)
{
    if (follow(this, m_book, book, &GateForm::refresh))
        refresh();
}

void GateForm::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void GateForm::setRecordId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void GateForm::refresh()
{
    if (!m_book)
        return;
    m_from.readAgain();
    m_until.readAgain();
    Q_EMIT changed();
}

GateForm::Form GateForm::formOf(const std::string& who, std::chrono::sys_days from, const std::optional<std::chrono::sys_days>& until, const QCborArray& what)
{
    Form form;
    form.who = QString::fromStdString(who);
    form.from = TypedDay::of(from);
    if (until)
        form.until = TypedDay::of(*until);
    form.what = what;
    return form;
}

GateForm::Form GateForm::keptForm() const
{
    Form fresh;
    fresh.from = TypedDay::of(m_book->today());
    fresh.what = nothingSaid();
    Form kept = keptRecord().value_or(fresh);
    kept.fromKeyed = kept.from != fresh.from;
    kept.untilKeyed = kept.until.has_value();
    return kept;
}

GateForm::Form GateForm::form() const
{
    if (!m_book)
        return {};
    const auto bytes = m_book->draft(draftKey());
    const QCborArray list = bytes ? QCborValue::fromCbor(*bytes).toArray() : QCborArray();
    const auto from = TypedDay::in(list.at(2).toByteArray());
    if (list.size() != 7 || list.at(0).toInteger() != version || !from)
        return keptForm();
    return {list.at(1).toString(), *from, list.at(3).toBool(), TypedDay::in(list.at(4).toByteArray()), list.at(5).toBool(), list.at(6).toArray()};
}

void GateForm::setForm(const Form& form)
{
    if (!m_book || this->form() == form)
        return;
    if (form == keptForm())
        m_book->throwDraft(draftKey());
    else
        m_book->setDraft(draftKey(), QCborArray{version, form.who, form.from.bytes(), form.fromKeyed, form.until ? form.until->bytes() : QByteArray(), form.untilKeyed, form.what}
                                         .toCborValue()
                                         .toCbor());
    m_book->hush();
    refresh();
}

void GateForm::setWho(const QString& who)
{
    Form now = form();
    now.who = who;
    setForm(now);
}

QStringList GateForm::names() const
{
    QStringList list;
    if (m_book)
        for (const std::string& name : namedAlready(m_book->book()))
            if (list.size() < mostNames)
                list << QString::fromStdString(name);
    return list;
}

void GateForm::chooseFrom(int index)
{
    if (!m_book || (index != fromToday && index != fromOther))
        return;
    Form now = form();
    now.fromKeyed = index == fromOther;
    if (!now.fromKeyed)
        now.from = TypedDay::of(m_book->today());
    setForm(now);
}

void GateForm::chooseUntil(int index)
{
    const auto days = lengths();
    const int other = static_cast<int>(days.size()) + 1;
    if (!m_book || index < 0 || index > other)
        return;
    Form now = form();
    now.untilKeyed = index == other;
    const auto begins = now.from.date().value_or(m_book->today());
    if (index == 0)
        now.until.reset();
    else if (!now.untilKeyed)
        now.until = TypedDay::of(begins + days[static_cast<std::size_t>(index) - 1]);
    else if (!now.until)
        now.until = TypedDay::of(begins);
    setForm(now);
}

GatePeriod GateForm::period() const
{
    GatePeriod period;
    period.froms = {tr("today"), tr("another day")};
    period.untils = {withoutEnd()};
    const auto days = lengths();
    for (const std::chrono::days length : days)
        period.untils << (length == std::chrono::days{0} ? tr("that day") : length.count() % 7 == 0 ? tr("%n weeks", nullptr, static_cast<int>(length.count() / 7)) : tr("%n days", nullptr, static_cast<int>(length.count())));
    period.untils << tr("another day");
    if (!m_book)
        return period;
    const Form now = form();
    period.from = now.fromKeyed ? fromOther : fromToday;
    period.fromKeyed = now.fromKeyed;
    period.untilKeyed = now.untilKeyed;
    const auto begins = now.from.date(), ends = now.until ? now.until->date() : std::nullopt;
    if (now.untilKeyed)
        period.until = static_cast<int>(period.untils.size()) - 1;
    else if (begins && ends)
        period.until = static_cast<int>(std::find(days.begin(), days.end(), *ends - *begins) - days.begin()) + 1;
    if (begins && (!now.until || ends)) {
        const QString from = keepingtexts::day(*begins, m_book->today());
        period.text = ends ? tr("from %1 to the end of %2").arg(from, keepingtexts::day(*ends, m_book->today())) : tr("from %1 on").arg(from);
    }
    return period;
}

QString GateForm::waits() const
{
    const Athlete* known = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    return known ? standingtexts::waits(unfitForMore(m_book->keeping(), m_athlete)) : QString();
}

QString GateForm::trouble(const Form& form) const
{
    const QString noDay = tr("There is no such day: look at day and month.");
    const auto begins = form.from.date(), ends = form.until ? form.until->date() : std::nullopt;
    if (!begins || (form.until && !ends))
        return noDay;
    if (ends && *ends < *begins)
        return tr("It would end before it begins: put a later last day, or none.");
    return troubleIn(form);
}

GateWords GateForm::words() const
{
    GateWords words;
    const Athlete* known = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    if (!known)
        return words;
    words.name = QString::fromStdString(known->name);
    words.trouble = trouble(form());
    words.waits = waits();
    words.isThere = keptRecord().has_value();
    return words;
}

bool GateForm::isDrafted() const
{
    return m_book && m_book->draft(draftKey());
}

bool GateForm::canKeep() const
{
    return isDrafted() && trouble(form()).isEmpty() && !form().who.trimmed().isEmpty();
}

WhenTold GateForm::whenKept()
{
    return m_book->teller([self = QPointer<GateForm>(this), book = QPointer<BookService>(m_book), draft = draftKey()](const RecordId&) {
        if (book)
            book->throwDraft(draft);
        if (self) {
            self->refresh();
            Q_EMIT self->kept();
        }
    });
}

void GateForm::keep()
{
    if (!canKeep())
        return;
    Form now = form();
    now.who = now.who.trimmed();
    keepForm(now, whenKept());
}

void GateForm::throwDraft()
{
    if (!m_book)
        return;
    m_book->throwDraft(draftKey());
    m_book->hush();
    refresh();
}

void GateForm::end(const QString& who)
{
    if (m_book && keptRecord())
        endRecord({who.trimmed().toStdString(), m_book->today()}, whenKept());
}
