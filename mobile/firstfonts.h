// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QList>
#include <QString>

#include <array>
#include <cmath>

/** What the first page is written in, as the theme has it on a phone: asked for before any QML is there, and held to the theme by a test. */
namespace firstfonts {

constexpr std::array textFactors{1.0, 1.25, 1.5, 2.0};

/// By the preferences: which theme (2 is for the sun) and which text size.
inline QList<QFont> all(int theme, int textSize)
{
    const double factor = textFactors.at(static_cast<std::size_t>(textSize));
    const QFont::Weight plain = theme == 2 ? QFont::Medium : QFont::Normal, strong = theme == 2 ? QFont::Bold : QFont::DemiBold;
    const auto scaled = [&](double size) { return static_cast<int>(std::lround(size * factor)); };
    const int note = scaled(16), body = scaled(18), act = scaled(20), title = static_cast<int>(std::lround(24 * (1 + (factor - 1) * 0.6)));
    QList<QFont> fonts;
    for (const auto& [size, weight] : {std::pair{title, strong}, {act, strong}, {body, plain}, {body, strong}, {act, plain}, {note, plain}}) {
        QFont font(QStringLiteral("Steelyard Text"));
        font.setPixelSize(size);
        font.setWeight(weight);
        fonts.append(font);
    }
    return fonts;
}

}
