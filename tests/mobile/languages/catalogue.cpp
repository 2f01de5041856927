// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/mobile/languages/catalogue.h"

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <algorithm>

QList<Message> messagesIn(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    QXmlStreamReader xml(&file);
    QList<Message> all;
    QString context;
    Message now;
    while (!xml.atEnd()) {
        xml.readNext();
        const auto name = xml.name();
        if (xml.isStartElement() && name == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (xml.isStartElement() && name == QLatin1String("message")) {
            now = {};
            now.context = context;
            now.bends = xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes");
        } else if (xml.isStartElement() && name == QLatin1String("source")) {
            now.source = xml.readElementText();
        } else if (xml.isStartElement() && name == QLatin1String("translation")) {
            now.finished = !xml.attributes().hasAttribute(QLatin1String("type"));
            if (!now.bends)
                now.forms << xml.readElementText();
        } else if (xml.isStartElement() && name == QLatin1String("numerusform")) {
            now.forms << xml.readElementText();
        } else if (xml.isEndElement() && name == QLatin1String("message")) {
            all << now;
        }
    }
    return xml.hasError() ? QList<Message>() : all;
}

namespace {

QStringList placesIn(const QString& text)
{
    static const QRegularExpression place(QStringLiteral("%L?[1-9n]"));
    QStringList found;
    for (auto at = place.globalMatch(text); at.hasNext();)
        found << at.next().captured();
    std::sort(found.begin(), found.end());
    return found;
}

bool isAllCapitals(const QString& text)
{
    qsizetype letters = 0;
    for (const QChar c : text)
        if (c.isLetter()) {
            if (c.isLower())
                return false;
            ++letters;
        }
    return letters > 1;
}

/// Spanish asks with a sign at the beginning as well.
bool endsAlike(const QString& source, const QString& said)
{
    for (const char* end : {".", "?", ":"})
        if (source.endsWith(QLatin1String(end)) != said.endsWith(QLatin1String(end)))
            return false;
    return true;
}

}

QStringList faultsOf(const Message& message)
{
    QStringList faults;
    const auto say = [&](const char* what, const QString& said) { faults << QStringLiteral("%1: %2 → %3").arg(QLatin1String(what), message.key(), said); };
    for (qsizetype i = 0; i < message.forms.size(); ++i) {
        const QString& said = message.forms[i];
        QStringList wanted = placesIn(message.source), got = placesIn(said);
        // one may say so in words
        if (message.bends && i == 0) {
            for (QStringList* places : {&wanted, &got})
                places->erase(std::remove_if(places->begin(), places->end(), [](const QString& place) { return place.endsWith(QLatin1Char('n')); }), places->end());
        }
        if (said.trimmed().isEmpty())
            say("empty", said);
        if (wanted != got)
            say("placeholders", said);
        if (isAllCapitals(message.source) && message.source.size() > 2 && said.size() > 2 && !isAllCapitals(said))
            say("capitals", said);
        if (said.trimmed() != said || said.contains(QLatin1String("  ")))
            say("spaces", said);
        if (!endsAlike(message.source, said))
            say("its end", said);
    }
    return faults;
}
