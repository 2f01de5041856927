// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/untranslated.h"
#include <utility>

QString Untranslated::translate(const char *context, const char *source, const char *, int) const
{
    // the toolkit's own sentences are on no page of ours
    const QLatin1String from(context);
    if (!(from.size() > 1 && from.startsWith(QLatin1Char('Q')) && QChar::fromLatin1(context[1]).isUpper())) {
        const QString said = QString::fromUtf8(context) + QLatin1Char('/') + QString::fromUtf8(source);
        if (!m_asked.contains(said))
            m_asked << said;
    }
    return {};
}

QStringList Untranslated::take()
{
    return std::exchange(m_asked, {});
}
