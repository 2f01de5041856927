// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/preferences.h"

#include "mobile/text/language.h"

#include <QSettings>

namespace {

const QString themeKey = QStringLiteral("look/theme"), textSizeKey = QStringLiteral("look/textSize"), handKey = QStringLiteral("look/hand"),
              bigKeysKey = QStringLiteral("look/bigKeys"), staysOnKey = QStringLiteral("look/staysOn"), languageKey = QStringLiteral("look/language");

int within(int value, int most) { return value >= 0 && value <= most ? value : 0; }

}

Preferences::Preferences(QObject* parent) : QObject(parent)
{
    const QSettings settings;
    m_theme = within(settings.value(themeKey).toInt(), 2);
    m_textSize = within(settings.value(textSizeKey).toInt(), 3);
    m_hand = within(settings.value(handKey).toInt(), 1);
    m_bigKeys = settings.value(bigKeysKey).toBool();
    m_staysOn = settings.value(staysOnKey, true).toBool();
    const QString spoken = settings.value(languageKey).toString();
    m_language = static_cast<int>(language::codes().indexOf(spoken)) + 1;
    language::speak(spoken);
}

void Preferences::setTheme(int theme)
{
    theme = within(theme, 2);
    if (m_theme == theme)
        return;
    m_theme = theme;
    QSettings().setValue(themeKey, theme);
    Q_EMIT changed();
}

void Preferences::setTextSize(int textSize)
{
    textSize = within(textSize, 3);
    if (m_textSize == textSize)
        return;
    m_textSize = textSize;
    QSettings().setValue(textSizeKey, textSize);
    Q_EMIT changed();
}

void Preferences::setHand(int hand)
{
    hand = within(hand, 1);
    if (m_hand == hand)
        return;
    m_hand = hand;
    QSettings().setValue(handKey, hand);
    Q_EMIT changed();
}

void Preferences::set(bool& now, bool value, const QString& key)
{
    if (now == value)
        return;
    now = value;
    QSettings().setValue(key, value);
    Q_EMIT changed();
}

void Preferences::setBigKeys(bool big)
{
    set(m_bigKeys, big, bigKeysKey);
}

void Preferences::setStaysOn(bool on)
{
    set(m_staysOn, on, staysOnKey);
}

void Preferences::setLanguage(int language)
{
    language = within(language, static_cast<int>(language::codes().size()));
    if (m_language == language)
        return;
    m_language = language;
    const QString code = language == 0 ? QString() : language::codes().at(language - 1);
    // a code, not a place in a list that may grow
    QSettings().setValue(languageKey, code);
    language::speak(code);
    Q_EMIT languageChanged();
}

QStringList Preferences::languages() const
{
    QStringList all{tr("as the device")};
    for (const QString& code : language::codes())
        all << language::ownName(code);
    return all;
}
