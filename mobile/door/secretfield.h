// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/door/secretsurface.h"

/** Takes a secret key by key into a buffer of its own, which is wiped; QML learns its length and nothing else. */
class SecretField : public SecretSurface {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count READ count NOTIFY edited FINAL)
    Q_PROPERTY(bool revealed READ isRevealed WRITE setRevealed NOTIFY revealedChanged FINAL)
    Q_PROPERTY(bool full READ isFull NOTIFY edited FINAL)

public:
    explicit SecretField(QQuickItem* parent = nullptr);

    /// Characters, as a person counts them.
    [[nodiscard]] int count() const { return static_cast<int>(m_text.characterCount()); }
    [[nodiscard]] bool isRevealed() const { return m_revealed; }
    void setRevealed(bool revealed);
    /// Whether the last character did not fit and was left out.
    [[nodiscard]] bool isFull() const { return m_full; }
    [[nodiscard]] std::string_view view() const { return m_text.view(); }
    /// The secret in its normal form (Unicode NFC), so that it opens the same vault however it was typed; the field is empty then.
    [[nodiscard]] steelyard::seal::SecretText take();
    Q_INVOKABLE void wipe();
    [[nodiscard]] QVariant inputMethodQuery(Qt::InputMethodQuery query) const override;

Q_SIGNALS:
    void edited();
    void accepted();
    void revealedChanged();

protected:
    [[nodiscard]] std::string_view secret() const override { return m_text.view(); }
    [[nodiscard]] bool isShown() const override { return m_revealed; }
    [[nodiscard]] bool isTyping() const override { return hasActiveFocus(); }
    void keyPressEvent(QKeyEvent* event) override;
    void inputMethodEvent(QInputMethodEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void append(QStringView text);
    void told();

    steelyard::seal::SecretText m_text;
    bool m_revealed = false;
    bool m_full = false;
};
