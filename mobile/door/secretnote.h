// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/door/secretsurface.h"

/** A secret that is shown once and then wiped; pages hand it on without being able to read it. */
class SecretNote : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where its secret is made")

public:
    using QObject::QObject;

    [[nodiscard]] std::string_view view() const { return m_text.view(); }
    void set(steelyard::seal::SecretText text)
    {
        m_text = std::move(text);
        Q_EMIT changed();
    }
    void wipe() { set({}); }

Q_SIGNALS:
    void changed();

private:
    steelyard::seal::SecretText m_text;
};

/** Paints a note. */
class SecretLetters : public SecretSurface {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(SecretNote* note READ note WRITE setNote NOTIFY noteChanged REQUIRED FINAL)

public:
    using SecretSurface::SecretSurface;

    [[nodiscard]] SecretNote* note() const { return m_note; }
    void setNote(SecretNote* note);

Q_SIGNALS:
    void noteChanged();

protected:
    [[nodiscard]] std::string_view secret() const override { return m_note ? m_note->view() : std::string_view(); }
    [[nodiscard]] bool isShown() const override { return true; }

private:
    SecretNote* m_note = nullptr;
};
