// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJSEngine>
#include <QObject>
#include <QQmlEngine>
#include <QtQml/qqmlregistration.h>

/** How the app looks on this device; nothing private, so it is kept in the system's settings. */
class Preferences : public QObject {
    Q_OBJECT
    Q_PROPERTY(int theme READ theme WRITE setTheme NOTIFY changed FINAL)
    Q_PROPERTY(int hand READ hand WRITE setHand NOTIFY changed FINAL)
    Q_PROPERTY(int textSize READ textSize WRITE setTextSize NOTIFY changed FINAL)

public:
    explicit Preferences(QObject* parent = nullptr);

    /// 0 light, 1 dark, 2 sun; anything else is light.
    [[nodiscard]] int theme() const { return m_theme; }
    void setTheme(int theme);
    /// Which of the four text sizes, 0 the smallest; anything else is the smallest.
    [[nodiscard]] int textSize() const { return m_textSize; }
    void setTextSize(int textSize);
    /// Which hand holds the thumb: 0 right, 1 left; anything else is right.
    [[nodiscard]] int hand() const { return m_hand; }
    void setHand(int hand);

Q_SIGNALS:
    void changed();

private:
    int m_theme = 0;
    int m_textSize = 0;
    int m_hand = 0;
};

/** Shows the one set of preferences to QML; main() or a test sets `instance` first. */
struct PreferencesForeign {
    Q_GADGET
    QML_FOREIGN(Preferences)
    QML_SINGLETON
    QML_NAMED_ELEMENT(ThePreferences)

public:
    inline static Preferences* instance = nullptr;
    static Preferences* create(QQmlEngine*, QJSEngine*)
    {
        QJSEngine::setObjectOwnership(instance, QJSEngine::CppOwnership);
        return instance;
    }
};
