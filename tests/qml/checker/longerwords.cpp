// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/longerwords.h"

bool LongerWords::isEmpty() const
{
    return false;
}

QString LongerWords::translate(const char *, const char *source, const char *, int) const
{
    const QString text = QString::fromUtf8(source);
    qsizetype letters = 0;
    for (const QChar c : text)
        letters += c.isLetter() ? 1 : 0;
    // signs, numbers and placeholders stay as they are
    if (letters < 2)
        return text;
    const double share = letters <= 10 ? 1.0 : letters <= 20 ? 0.6 : 0.4;
    QString more;
    for (auto left = static_cast<qsizetype>(double(letters) * share); left > 0; left -= 5)
        more += QLatin1Char(' ') + QString(qMin<qsizetype>(left, 4), QLatin1Char('o'));
    return text + more;
}
