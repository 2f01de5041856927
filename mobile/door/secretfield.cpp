// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/secretfield.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QInputMethod>
#include <QKeyEvent>

#include <array>

using namespace steelyard;

namespace {

/// One code point in UTF-8 on the stack, wiped at the end.
class PointBytes {
public:
    explicit PointBytes(char32_t point)
    {
        if (point < 0x80) {
            put(point);
        } else if (point < 0x800) {
            put(0xC0 | (point >> 6)), put(0x80 | (point & 0x3F));
        } else if (point < 0x10000) {
            put(0xE0 | (point >> 12)), put(0x80 | ((point >> 6) & 0x3F)), put(0x80 | (point & 0x3F));
        } else {
            put(0xF0 | (point >> 18)), put(0x80 | ((point >> 12) & 0x3F)), put(0x80 | ((point >> 6) & 0x3F)), put(0x80 | (point & 0x3F));
        }
    }
    PointBytes(const PointBytes&) = delete;
    PointBytes& operator=(const PointBytes&) = delete;
    ~PointBytes()
    {
        for (volatile char& byte : m_bytes)
            byte = 0;
    }
    [[nodiscard]] std::string_view view() const { return {m_bytes.data(), m_size}; }

private:
    void put(char32_t byte) { m_bytes[m_size++] = static_cast<char>(byte); }

    std::array<char, 4> m_bytes{};
    std::size_t m_size = 0;
};

/// Appends UTF-16 to a secret; a lone surrogate and control characters are left out. False when it does not fit.
bool put(seal::SecretText& text, QStringView units)
{
    for (qsizetype i = 0; i < units.size(); ++i) {
        char32_t point = units[i].unicode();
        if (units[i].isHighSurrogate() && i + 1 < units.size() && units[i + 1].isLowSurrogate())
            point = QChar::surrogateToUcs4(units[i].unicode(), units[i + 1].unicode()), ++i;
        else if (units[i].isSurrogate() || units[i].category() == QChar::Other_Control)
            continue;
        if (!text.append(PointBytes(point).view()))
            return false;
    }
    return true;
}

/// A text object of Qt that has held a secret, overwritten where nobody else shares it.
void overwrite(QString& text)
{
    text.detach();
    for (QChar& c : text)
        *const_cast<volatile char16_t*>(&c.unicode()) = 0;
}

}

SecretField::SecretField(QQuickItem* parent) : SecretSurface(parent)
{
    setFlag(ItemAcceptsInputMethod);
    setAcceptedMouseButtons(Qt::LeftButton);
    setActiveFocusOnTab(true);
}

void SecretField::setRevealed(bool revealed)
{
    if (m_revealed == revealed)
        return;
    m_revealed = revealed;
    update();
    Q_EMIT revealedChanged();
}

seal::SecretText SecretField::take()
{
    seal::SecretText taken = std::exchange(m_text, seal::SecretText());
    m_full = false;
    told();
    // below U+0300 every text is in its normal form already, and no text object of Qt has to see it
    const auto composed = [](char byte) { return static_cast<unsigned char>(byte) >= 0xCC; };
    if (std::none_of(taken.view().begin(), taken.view().end(), composed))
        return taken;
    QString before = QString::fromUtf8(taken.view().data(), static_cast<qsizetype>(taken.view().size()));
    QString normal = before.normalized(QString::NormalizationForm_C);
    seal::SecretText result;
    const bool fits = put(result, normal);
    overwrite(before);
    overwrite(normal);
    return fits ? std::move(result) : std::move(taken);
}

void SecretField::wipe()
{
    m_text.clear();
    m_full = false;
    told();
}

QVariant SecretField::inputMethodQuery(Qt::InputMethodQuery query) const
{
    switch (query) {
    case Qt::ImEnabled:
        return isEnabled();
    case Qt::ImHints:
        return int(Qt::ImhSensitiveData | Qt::ImhHiddenText | Qt::ImhNoPredictiveText | Qt::ImhNoAutoUppercase);
    case Qt::ImCursorRectangle:
        return QRectF(0, 0, 1, height());
    default:
        // what surrounds the cursor is nobody's business
        return {};
    }
}

void SecretField::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Backspace) {
        m_text.removeLast();
        m_full = false;
        told();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (!event->isAutoRepeat())
            Q_EMIT accepted();
    } else if (event->matches(QKeySequence::Paste)) {
        QString pasted = QGuiApplication::clipboard()->text();
        append(pasted);
        overwrite(pasted);
    } else if (!event->text().isEmpty() && event->text().front().category() != QChar::Other_Control && !(event->modifiers() & (Qt::ControlModifier | Qt::MetaModifier))) {
        append(event->text());
    } else {
        event->ignore();
    }
}

void SecretField::inputMethodEvent(QInputMethodEvent* event)
{
    for (int i = 0; event->replacementStart() < 0 && i < event->replacementLength(); ++i)
        m_text.removeLast();
    append(event->commitString());
    event->accept();
}

void SecretField::mousePressEvent(QMouseEvent* event)
{
    event->accept();
}

void SecretField::mouseReleaseEvent(QMouseEvent* event)
{
    event->accept();
    forceActiveFocus(Qt::MouseFocusReason);
    if (auto* method = QGuiApplication::inputMethod())
        method->show();
}

void SecretField::focusInEvent(QFocusEvent* event)
{
    SecretSurface::focusInEvent(event);
    update();
}

void SecretField::focusOutEvent(QFocusEvent* event)
{
    SecretSurface::focusOutEvent(event);
    update();
}

void SecretField::append(QStringView text)
{
    m_full = !put(m_text, text);
    told();
}

void SecretField::told()
{
    update();
    Q_EMIT edited();
}
