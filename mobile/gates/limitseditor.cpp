// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/limitseditor.h"

#include "core/work/keeping/keepvenue.h"
#include "mobile/follow.h"
#include "mobile/gates/limittexts.h"

#include <QCborMap>
#include <QCborValue>
#include <QPointer>

#include <algorithm>
#include <cmath>

using namespace steelyard;

namespace {

// the draft: 0 says the version, each limit stands at one more than its number; as it was shipped is nothing
constexpr int version = 1;
const QString draftKey = QStringLiteral("limits");

QString keyOf(LimitKind kind)
{
    return QStringLiteral("limit%1").arg(static_cast<int>(kind));
}

std::optional<LimitKind> kindOf(const QString& key)
{
    for (const LimitKind kind : allLimits)
        if (keyOf(kind) == key)
            return kind;
    return std::nullopt;
}

/// A factor is keyed as such; all else is a whole number.
double perNumber(LimitKind kind)
{
    return kind == LimitKind::HoldPercent ? 100 : 1;
}

int countOf(const CoachLimits& limits, LimitKind kind)
{
    return ownLimitCount(limits, kind).value_or(ourLimitCount(kind));
}

}

void LimitsEditor::setBook(BookService* book)
{
    if (!follow(this, m_book, book, [this] { refresh(); }))
        return;
    Q_EMIT bookChanged();
    refresh();
}

CoachLimits LimitsEditor::form() const
{
    if (!m_book)
        return {};
    const auto bytes = m_book->draft(draftKey);
    const QCborMap map = bytes ? QCborValue::fromCbor(*bytes).toMap() : QCborMap();
    if (map.value(0).toInteger() != version)
        return m_book->book().limits();
    CoachLimits limits;
    for (const LimitKind kind : allLimits)
        if (const QCborValue own = map.value(static_cast<int>(kind) + 1); own.isInteger())
            limits = withLimit(limits, kind, static_cast<int>(own.toInteger()));
    return limits;
}

void LimitsEditor::setForm(const CoachLimits& limits)
{
    if (!m_book || form() == limits)
        return;
    QCborMap map{{0, version}};
    for (const LimitKind kind : allLimits)
        if (const auto own = ownLimitCount(limits, kind))
            map.insert(static_cast<int>(kind) + 1, *own);
    if (limits == m_book->book().limits())
        m_book->throwDraft(draftKey);
    else
        m_book->setDraft(draftKey, map.toCborValue().toCbor());
    m_book->hush();
    refresh();
}

void LimitsEditor::refresh()
{
    if (!m_book)
        return;
    const CoachLimits now = form();
    std::vector<LimitRow> rows;
    for (const LimitKind kind : allLimits) {
        const int count = countOf(now, kind), down = steppedLimitCount(now, kind, false), up = steppedLimitCount(now, kind, true);
        const bool own = ownLimitCount(now, kind).has_value();
        const QString shipped = limittexts::value(kind, ourLimitCount(kind));
        rows.push_back({keyOf(kind), limittexts::name(kind), limittexts::value(kind, count), limittexts::meaning(kind),
                        own ? tr("yours; as it was shipped: %1").arg(shipped) : tr("ours, as it was shipped"), limittexts::value(kind, down), limittexts::value(kind, up),
                        down != count, up != count, own});
    }
    m_limits.setRows(std::move(rows));
    FieldEditor::refresh();
}

bool LimitsEditor::isDrafted() const
{
    return m_book && m_book->draft(draftKey);
}

QString LimitsEditor::keeps() const
{
    if (!isDrafted())
        return {};
    QStringList changed;
    const CoachLimits now = form(), kept = m_book->book().limits();
    for (const LimitKind kind : allLimits)
        if (ownLimitCount(now, kind) != ownLimitCount(kept, kind))
            changed << limittexts::value(kind, countOf(now, kind));
    return changed.join(QStringLiteral(", "));
}

int LimitsEditor::ownCount() const
{
    if (!m_book)
        return 0;
    return static_cast<int>(std::count_if(allLimits.begin(), allLimits.end(), [this](LimitKind kind) { return ownLimitCount(m_book->book().limits(), kind).has_value(); }));
}

std::vector<FieldSpec> LimitsEditor::specs() const
{
    std::vector<FieldSpec> all;
    if (!m_book)
        return all;
    const CoachLimits now = form();
    for (const LimitKind kind : allLimits) {
        const double per = perNumber(kind);
        const LimitRange range = rangeOf(kind);
        all.push_back({keyOf(kind), limittexts::name(kind), unitless(countOf(now, kind) / per), {per > 1 ? 2 : 3, per > 1 ? 2 : 0, range.leastCount / per, range.mostCount / per}, false,
                       limittexts::meaning(kind)});
    }
    return all;
}

KeepOutcome LimitsEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    const auto kind = kindOf(key);
    if (!kind)
        return {tr("There is no such number."), {}};
    setForm(withLimit(form(), *kind, static_cast<int>(std::lround(keyed.ratio * perNumber(*kind)))));
    return {};
}

void LimitsEditor::step(const QString& key, bool up)
{
    const CoachLimits now = form();
    if (const auto kind = kindOf(key); kind && steppedLimitCount(now, *kind, up) != countOf(now, *kind))
        setForm(withLimit(now, *kind, steppedLimitCount(now, *kind, up)));
}

void LimitsEditor::asShipped(const QString& key)
{
    if (const auto kind = kindOf(key))
        setForm(withLimit(form(), *kind, std::nullopt));
}

void LimitsEditor::keep()
{
    if (!isDrafted())
        return;
    keepLimits(m_book->keeping(), form(), m_book->teller([self = QPointer<LimitsEditor>(this), book = QPointer<BookService>(m_book)](const RecordId&) {
        if (book)
            book->throwDraft(draftKey);
        if (self) {
            self->refresh();
            Q_EMIT self->kept();
        }
    }));
}

void LimitsEditor::throwDraft()
{
    if (!m_book)
        return;
    m_book->throwDraft(draftKey);
    m_book->hush();
    refresh();
}
