// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/capeditor.h"

#include "core/implements/cap.h"
#include "core/work/keeping/athlete/keepcap.h"
#include "core/work/records/codec.h"
#include "core/work/strength/maxima.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QPointer>

#include <algorithm>
#include <cmath>

using namespace steelyard;

void CapEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, [this] { refresh(); }))
        readKept();
}

void CapEditor::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    readKept();
}

QString CapEditor::liftId() const
{
    return QString::fromStdString(partOf(m_lift));
}

void CapEditor::setLiftId(const QString& id)
{
    m_lift = liftIn(id.toStdString()).value_or(LiftId{});
    readKept();
}

std::optional<CapRule> CapEditor::kept() const
{
    const Athlete* her = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    const auto at = her ? her->caps.find(m_lift) : decltype(her->caps.find(m_lift)){};
    return her && at != her->caps.end() ? std::optional(at->second) : std::nullopt;
}

void CapEditor::readKept()
{
    m_rule = kept().value_or(CapRule{{}, static_cast<int>(100 * usualShareOfLift)});
    refresh();
}

QString CapEditor::who() const
{
    const Athlete* her = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    return her ? QString::fromStdString(her->name) : QString();
}

QString CapEditor::lift() const
{
    return m_book ? keepingtexts::lift(m_lift, m_book->book()) : QString();
}

LiftChoices CapEditor::choices() const
{
    return m_book ? liftChoices(m_book->book(), m_athlete, std::span(&m_rule.of, m_rule.of == LiftId{} ? 0 : 1)) : LiftChoices{};
}

QStringList CapEditor::lifts() const
{
    return m_book ? choices().names(m_book->book()) : QStringList{};
}

int CapEditor::of() const
{
    return choices().placeOf(m_rule.of);
}

void CapEditor::setOf(int lift)
{
    const LiftChoices all = choices();
    if (!all.has(lift))
        return;
    m_rule.of = all.ids[static_cast<std::size_t>(lift)];
    refresh();
}

QString CapEditor::share() const
{
    return tr("%1 %").arg(say::fixed(m_rule.percent, 0));
}

QString CapEditor::comesTo() const
{
    if (!m_book || m_rule.of == LiftId{})
        return tr("Choose the lift first.");
    const auto maximum = knownMaximum(m_book->book(), m_athlete, m_rule.of, m_book->today());
    if (!maximum)
        return tr("No maximum of that lift is known yet: test or estimate it, and the cap is known.");
    const Mass cap = maximum->lowest * (m_rule.percent / 100.0);
    return tr("With its give-or-take at most %1, by her lowest estimate of %2.").arg(say::massWithUnit(kilograms(std::floor(inKilograms(cap) * 10) / 10)), keepingtexts::day(maximum->day, m_book->today()));
}

bool CapEditor::canKeep() const
{
    return m_book && canBeCap(m_rule) && kept() != m_rule;
}

std::vector<FieldSpec> CapEditor::specs() const
{
    FieldSpec share(QStringLiteral("share"), tr("How much of it"), unitless(m_rule.percent), {3, 0, 1, 100}, false, tr("of her lowest estimate"), true);
    share.unit = tr("%");
    return {share};
}

KeepOutcome CapEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    if (key != QLatin1String("share"))
        return {tr("There is no such number."), {}};
    m_rule.percent = static_cast<int>(std::lround(keyed.ratio));
    refresh();
    return {};
}

void CapEditor::step(bool up)
{
    m_rule.percent = std::clamp(m_rule.percent + (up ? stepPercent : -stepPercent), stepPercent, 100);
    refresh();
}

void CapEditor::keep()
{
    if (canKeep())
        write(m_rule);
}

void CapEditor::takeBack()
{
    if (m_book && isThere())
        write(std::nullopt);
}

void CapEditor::write(const std::optional<CapRule>& rule)
{
    keepCap(m_book->keeping(), m_athlete, m_lift, rule, m_book->teller([self = QPointer<CapEditor>(this)](const RecordId&) {
        if (self)
            Q_EMIT self->done();
    }));
}
