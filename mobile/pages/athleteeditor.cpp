// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/athleteeditor.h"

#include "core/work/keeping/fitness.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/putright.h"
#include "core/work/measuring/marksdue.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QPointer>

using namespace steelyard;

void AthleteEditor::setBook(BookService* book)
{
    if (!follow(this, m_book, book, [this] { refresh(); }))
        return;
    Q_EMIT bookChanged();
    refresh();
}

void AthleteEditor::setAthleteId(const QString& id)
{
    const RecordId next = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    if (m_id == next)
        return;
    m_id = next;
    Q_EMIT athleteIdChanged();
    refresh();
}

QString AthleteEditor::draftKey() const
{
    return QStringLiteral("athlete:") + athleteId();
}

AthleteForm AthleteEditor::keptForm() const
{
    AthleteForm form;
    form.athlete.id = m_id;
    const Athlete* known = m_book ? m_book->book().athlete(m_id) : nullptr;
    if (!known)
        return form;
    form.athlete = *known;
    form.mass = bodyMassOn(*known, m_book->today());
    form.height = bodyHeightOn(*known, m_book->today());
    return form;
}

AthleteForm AthleteEditor::form() const
{
    AthleteForm form = keptForm();
    const auto bytes = m_book ? m_book->draft(draftKey()) : std::nullopt;
    const auto draft = bytes ? formIn(*bytes) : std::nullopt;
    if (!draft)
        return form;
    // marks and earlier sizes are not part of what is typed here
    AthleteForm typed = *draft;
    typed.athlete.marks = form.athlete.marks;
    typed.athlete.sizes = form.athlete.sizes;
    return typed;
}

void AthleteEditor::setForm(const AthleteForm& form)
{
    if (!m_book || this->form() == form)
        return;
    if (form == keptForm())
        m_book->throwDraft(draftKey());
    else
        m_book->setDraft(draftKey(), bytesOf(form));
    m_book->hush();
    refresh();
}

void AthleteEditor::setName(const QString& name)
{
    AthleteForm now = form();
    now.athlete.name = name.toStdString();
    setForm(now);
}

void AthleteEditor::setSquad(const QString& squad)
{
    AthleteForm now = form();
    now.athlete.squad = squad.toStdString();
    setForm(now);
}

void AthleteEditor::setNotes(const QString& notes)
{
    AthleteForm now = form();
    now.athlete.notes = notes.toStdString();
    setForm(now);
}

QString AthleteEditor::agreement() const
{
    const auto& agreed = form().athlete.agreement;
    return agreed && m_book ? tr("%1, %2").arg(QString::fromStdString(agreed->who), keepingtexts::day(agreed->day, m_book->today())) : QString();
}

bool AthleteEditor::isDrafted() const
{
    return m_book && m_book->draft(draftKey());
}

bool AthleteEditor::canKeep() const
{
    return isDrafted() && !unfitName(form().athlete.name);
}

bool AthleteEditor::isMinor() const
{
    return m_book && majorityOn(form().athlete.birthYear, m_book->today()) == Majority::MayBeMinor;
}

bool AthleteEditor::isWaiting() const
{
    return !m_book || unfitForMore(form().athlete, m_book->today()).has_value();
}

QStringList AthleteEditor::ways() const
{
    const Athlete* known = m_book ? m_book->book().athlete(m_id) : nullptr;
    if (!known)
        return {QString(), QString(), QString(), QString()};
    const auto count = [](std::size_t n) { return n == 0 ? tr("none yet") : QString::number(n); };
    return {count(known->marks.size()), count(m_book->book().setupsOf(m_id).size()), known->sizes.empty() ? QString() : count(known->sizes.size()),
            count(m_book->book().testsOf(m_id).size())};
}

QStringList AthleteEditor::again() const
{
    const Athlete* known = m_book ? m_book->book().athlete(m_id) : nullptr;
    if (!known)
        return {};
    const auto due = marksDue(m_book->book(), *known, m_book->today());
    if (due.empty())
        return {};
    QStringList lifts;
    // one reason at a time, the measured one first
    for (const MarksDue& one : due)
        if (one.why == due.front().why)
            lifts << keepingtexts::lift(one.lift, m_book->book());
    const bool grown = due.front().why == Remeasure::Grown;
    return {grown ? tr("the height has changed since they were taken") : tr("may have grown since they were taken"), lifts.join(QStringLiteral(", "))};
}

std::vector<FieldSpec> AthleteEditor::specs() const
{
    if (!m_book)
        return {};
    const AthleteForm now = form();
    const int thisYear = int(std::chrono::year_month_day(m_book->today()).year());
    const auto& year = now.athlete.birthYear;
    std::vector<FieldSpec> all;
    all.push_back({QStringLiteral("birthYear"), tr("Born in"), unitless(year ? std::optional<double>(int(*year)) : std::nullopt), {4, 0, 1900, double(thisYear)}, false,
                   isWaiting() && !isMinor() ? tr("comes before body mass, height and notes") : QString()});
    if (isWaiting())
        return all;
    all.push_back({QStringLiteral("mass"), tr("Body mass"), inMass(now.mass), {3, 1, 15, 300}, false, {}});
    all.push_back({QStringLiteral("height"), tr("Height"), inLength(now.height), {3, 1, 80, 250}, false, {}});
    // what was measured last, each for itself
    if (const Athlete* known = m_book->book().athlete(m_id))
        for (const BodySize& size : known->sizes) {
            if (size.mass)
                all[1].last = say::shown(*size.mass);
            if (size.height)
                all[2].last = say::shown(*size.height);
        }
    return all;
}

KeepOutcome AthleteEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    AthleteForm now = form();
    if (key == QLatin1String("birthYear"))
        now.athlete.birthYear = std::chrono::year(static_cast<int>(keyed.ratio));
    else if (key == QLatin1String("mass"))
        now.mass = keyed.mass();
    else if (key == QLatin1String("height"))
        now.height = keyed.length();
    else
        return {tr("There is no such number."), {}};
    setForm(now);
    return {};
}

bool AthleteEditor::canClear(const QString& key) const
{
    return key == QLatin1String("birthYear");
}

bool AthleteEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    AthleteForm now = form();
    now.athlete.birthYear.reset();
    setForm(now);
    return true;
}

void AthleteEditor::keep()
{
    if (!canKeep())
        return;
    const AthleteForm now = form(), before = keptForm();
    const QString draft = draftKey();
    const auto done = [self = QPointer<AthleteEditor>(this), book = QPointer<BookService>(m_book), draft](const RecordId& id) {
        if (book)
            book->throwDraft(draft);
        if (!self)
            return;
        self->setAthleteId(QString::fromStdString(id.hex()));
        self->refresh();
        Q_EMIT self->kept();
    };
    BodySize size;
    size.day = m_book->today();
    if (now.mass != before.mass)
        size.mass = now.mass;
    if (now.height != before.height)
        size.height = now.height;
    Athlete athlete = now.athlete;
    keepAthlete(m_book->keeping(), athlete, m_book->teller([book = QPointer<BookService>(m_book), size, done](const RecordId& id) {
        if (!book || (!size.mass && !size.height))
            return done(id);
        keepBodySize(book->keeping(), id, size, book->teller([done, id](const RecordId&) { done(id); }));
    }));
}

void AthleteEditor::throwDraft()
{
    if (!m_book)
        return;
    m_book->throwDraft(draftKey());
    m_book->hush();
    refresh();
}

void AthleteEditor::agree(const QString& who)
{
    if (!m_book || who.trimmed().isEmpty())
        return;
    AthleteForm now = form();
    now.athlete.agreement = GuardianAgreement{who.trimmed().toStdString(), m_book->today()};
    setForm(now);
}

void AthleteEditor::takeOut()
{
    if (!m_book || m_id.isNone())
        return;
    m_book->throwDraft(draftKey());
    steelyard::takeOut(m_book->keeping(), athletePlace(m_id), m_book->teller([self = QPointer<AthleteEditor>(this)](const RecordId&) {
        if (self)
            Q_EMIT self->takenOut();
    }));
}
