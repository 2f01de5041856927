// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/preferences.h"

#include <QSettings>

namespace {

const QString themeKey = QStringLiteral("look/theme"), textSizeKey = QStringLiteral("look/textSize"), handKey = QStringLiteral("look/hand");

int within(int value, int most) { return value >= 0 && value <= most ? value : 0; }

}

Preferences::Preferences(QObject* parent) : QObject(parent)
{
    const QSettings settings;
    m_theme = within(settings.value(themeKey).toInt(), 2);
    m_textSize = within(settings.value(textSizeKey).toInt(), 3);
    m_hand = within(settings.value(handKey).toInt(), 1);
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
