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
    Q_PROPERTY(bool bigKeys READ bigKeys WRITE setBigKeys NOTIFY changed FINAL)
    Q_PROPERTY(bool staysOn READ staysOn WRITE setStaysOn NOTIFY changed FINAL)
    Q_PROPERTY(int language READ language WRITE setLanguage NOTIFY languageChanged FINAL)
    Q_PROPERTY(QStringList languages READ languages NOTIFY languageChanged FINAL)

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
    /// Keys that answer a running lift are 20 mm high, for gloves and cold hands.
    [[nodiscard]] bool bigKeys() const { return m_bigKeys; }
    void setBigKeys(bool big);
    /// The display stays on as long as the vault is open.
    [[nodiscard]] bool staysOn() const { return m_staysOn; }
    void setStaysOn(bool on);
    /// Which of `languages`, 0 the device's own; anything else is that one. It is spoken at once.
    [[nodiscard]] int language() const { return m_language; }
    void setLanguage(int language);
    /// As the device, and then each by its own name.
    [[nodiscard]] QStringList languages() const;

Q_SIGNALS:
    void changed();
    void languageChanged();

private:
    void set(bool& now, bool value, const QString& key);

    int m_theme = 0;
    int m_textSize = 0;
    int m_hand = 0;
    int m_language = 0;
    bool m_bigKeys = false;
    bool m_staysOn = true;
};

/** Shows the one set of preferences to QML; main() or a test sets `instance` first. */
struct PreferencesForeign {
    Q_GADGET
    QML_FOREIGN(Preferences)
    QML_SINGLETON
    QML_NAMED_ELEMENT(ThePreferences)

public:
    inline static Preferences* instance = nullptr;
    static Preferences* create(QQmlEngine* engine, QJSEngine*)
    {
        QObject::connect(instance, &Preferences::languageChanged, engine, &QQmlEngine::retranslate);
        QJSEngine::setObjectOwnership(instance, QJSEngine::CppOwnership);
        return instance;
    }
};
