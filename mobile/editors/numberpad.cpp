// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/numberpad.h"

#include "mobile/follow.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QLocale>

#include <algorithm>

void NumberPad::setEditor(FieldEditor* editor)
{
    follow(this, m_editor, editor, &NumberPad::look);
    load();
}

void NumberPad::setKey(const QString& key)
{
    m_key = key;
    load();
}

void NumberPad::load()
{
    const auto spec = m_editor ? m_editor->spec(m_key) : std::nullopt;
    m_spec = spec.value_or(FieldSpec{});
    m_entry = steelyard::NumberEntry(m_spec.limits);
    m_refusal.clear();
    m_offers.clear();
    m_asking = false;
    Q_EMIT targetChanged();
    Q_EMIT keyed();
}

void NumberPad::look()
{
    const auto spec = m_editor ? m_editor->spec(m_key) : std::nullopt;
    // what is keyed stays as it was keyed, unless it was meant in another unit
    if (spec && (m_entry.text().empty() || spec->unit != m_spec.unit))
        load();
}

QString NumberPad::subject() const
{
    if (!m_spec.label.isEmpty())
        return m_spec.label;
    if (m_key == QLatin1String("load"))
        return tr("Load on the bar");
    if (m_key == QLatin1String("newPlate"))
        return tr("A pair of plates, each");
    const QString n = QString::number(m_key.mid(m_key.indexOf(QLatin1Char(':')) + 1).toInt() + 1);
    return m_key.startsWith(QLatin1String("mass:")) ? tr("Hanging %1: mass").arg(n) : tr("Hanging %1: length").arg(n);
}

QString NumberPad::text() const
{
    QString shown = QString::fromStdString(m_entry.text());
    return shown.replace(QLatin1Char('.'), QLocale().decimalPoint());
}

QString NumberPad::standing() const
{
    return m_spec.shown ? m_spec.text : QString();
}

std::optional<KeyedFigure> NumberPad::figure() const
{
    return m_entry.check() ? std::nullopt : std::optional<KeyedFigure>(m_entry);
}

QString NumberPad::hint() const
{
    if (const auto keyed = figure(); keyed && m_editor)
        if (QString changes = m_editor->changes(m_key, *keyed); !changes.isEmpty())
            return changes;
    if (m_spec.shown) {
        const QString now = tr("now %1 %2").arg(m_spec.text, m_spec.unit);
        return m_spec.enteredAs.isEmpty() ? now : tr("%1, %2").arg(now, m_spec.enteredAs);
    }
    return m_spec.text.isEmpty() ? m_spec.hint : tr("now %1").arg(m_spec.text);
}

QString NumberPad::fact() const
{
    const QString wants = wanting();
    return wants.isEmpty() ? tr("%1 %2").arg(text(), m_spec.unit) : wants;
}

NumberPad::State NumberPad::state() const
{
    return m_asking ? Asking : m_entry.check() ? Wanting : Ready;
}

QString NumberPad::question() const
{
    using steelyard::Doubt;
    const auto keyed = figure();
    if (!keyed || !m_spec.last)
        return {};
    const QString now = tr("%1 %2").arg(text(), m_spec.unit), before = tr("%1 %2").arg(say::figure(*m_spec.last, m_spec.kind), m_spec.unit);
    switch (steelyard::doubtOf(keyed->ratio, *m_spec.last)) {
    case Doubt::None: break;
    case Doubt::FarOff: return tr("%1? Last time it was %2.").arg(now, before);
    case Doubt::PoundsForKilograms: return tr("%1? Last time it was %2. Pounds for kilograms?").arg(now, before);
    case Doubt::TenTimes: return tr("%1? Last time it was %2. Look at the noughts and the point.").arg(now, before);
    }
    return {};
}

QString NumberPad::wanting() const
{
    const auto refused = m_entry.check();
    if (!refused)
        return {};
    const auto bound = [this](double ratio) { return tr("%1 %2").arg(say::plain(ratio, std::max(2, m_spec.limits.decimalCount)), m_spec.unit).trimmed(); };
    switch (*refused) {
    case steelyard::EntryRefusal::BelowLeast: return tr("%1 at least").arg(bound(m_spec.limits.leastRatio));
    case steelyard::EntryRefusal::AboveMost: return tr("%1 at most").arg(bound(m_spec.limits.mostRatio));
    default: return tr("once keyed");
    }
}

QStringList NumberPad::offers() const
{
    QStringList list;
    for (const double v : m_offers)
        list.append(tr("%1 %2").arg(say::figure(v, m_spec.kind), m_spec.unit));
    return list;
}

bool NumberPad::canClear() const
{
    // asked of the form, not guessed: only what may be missing can be left out
    return m_spec.shown.has_value() && m_editor && m_editor->canClear(m_key);
}

void NumberPad::paste(const QString& text)
{
    QString refused;
    for (const QChar sign : text.trimmed()) {
        press(QString(sign));
        if (!m_refusal.isEmpty())
            refused = m_refusal;
    }
    if (refused.isEmpty())
        return;
    // a later sign that was taken does not unsay it
    m_refusal = refused;
    Q_EMIT keyed();
}

void NumberPad::pasteClipboard()
{
    paste(QGuiApplication::clipboard()->text());
}

void NumberPad::press(const QString& key)
{
    m_refusal.clear();
    m_offers.clear();
    m_asking = false;
    if (key == QLatin1String("rub")) {
        m_entry.rub();
    } else if (!key.isEmpty()) {
        const bool point = key == QLocale().decimalPoint() || key == QLatin1String(".") || key == QLatin1String(",");
        const int digit = key.size() == 1 ? key.at(0).digitValue() : -1;
        const char plain = point ? '.' : digit >= 0 ? static_cast<char>('0' + digit) : '?';
        if (const auto refused = m_entry.press(plain))
            m_refusal = sentences::refusal(*refused, m_spec.limits, m_spec.unit);
    }
    Q_EMIT keyed();
}

bool NumberPad::keep()
{
    m_offers.clear();
    if (const auto refused = m_entry.check()) {
        m_refusal = sentences::refusal(*refused, m_spec.limits, m_spec.unit);
        Q_EMIT keyed();
        return false;
    }
    if (const QString doubt = question(); !m_asking && !doubt.isEmpty()) {
        m_asking = true;
        m_refusal = doubt;
        Q_EMIT keyed();
        return false;
    }
    return keepValue(KeyedFigure(m_entry));
}

bool NumberPad::take(int offer)
{
    if (offer < 0 || offer >= static_cast<int>(m_offers.size()))
        return false;
    return keepValue(m_offers[static_cast<std::size_t>(offer)]);
}

bool NumberPad::clear()
{
    return m_editor && m_editor->clearNumber(m_key);
}

bool NumberPad::keepValue(const KeyedFigure& number)
{
    if (!m_editor)
        return false;
    const KeepOutcome outcome = m_editor->keepNumber(m_key, number);
    m_asking = false;
    m_refusal = outcome.refusal;
    m_offers = outcome.offers;
    Q_EMIT keyed();
    return outcome.kept();
}
