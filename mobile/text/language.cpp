// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/language.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

#include <algorithm>
#include <array>

namespace language {

namespace {

struct Known {
    const char *code, *ownName;
};
constexpr std::array known = {Known{"en", "English"}, Known{"de", "Deutsch"}, Known{"es", "Español"}};

QString catalogue(const QString& code)
{
    return QStringLiteral(":/steelyard/languages/steelyard_%1.qm").arg(code);
}

/// English is what the sources say; its catalogue bends words to their count.
QTranslator& plurals()
{
    static QTranslator words;
    return words;
}

QTranslator& other()
{
    static QTranslator words;
    return words;
}

QString& now()
{
    static QString code = QStringLiteral("en");
    return code;
}

steelyard::Listeners& listeners()
{
    static steelyard::Listeners all;
    return all;
}

QString ofDevice()
{
    for (const QString& tongue : QLocale::system().uiLanguages())
        if (QString code = tongue.left(2); codes().contains(code) && (tongue.size() == 2 || !tongue.at(2).isLetter()))
            return code;
    return QStringLiteral("en");
}

// every program that shows words has them, a test too
void bendEnglish()
{
    if (plurals().load(catalogue(QStringLiteral("en"))))
        QCoreApplication::installTranslator(&plurals());
}
Q_COREAPP_STARTUP_FUNCTION(bendEnglish)

}

QStringList codes()
{
    QStringList all;
    for (const Known& one : known)
        all << QString::fromLatin1(one.code);
    return all;
}

QString ownName(const QString& code)
{
    const auto at = std::find_if(known.begin(), known.end(), [&](const Known& one) { return code == QLatin1String(one.code); });
    return at == known.end() ? QString() : QString::fromUtf8(at->ownName);
}

void speak(const QString& code)
{
    const QLocale device = QLocale::system();
    const bool chosen = codes().contains(code);
    const QString wanted = chosen ? code : ofDevice();
    // of one language the device knows how its country writes numbers
    const QLocale locale = !chosen || QLocale(code).language() == device.language() ? device : QLocale(code);
    if (wanted == now() && locale == QLocale())
        return;
    QCoreApplication::removeTranslator(&other());
    if (wanted != QLatin1String("en") && other().load(catalogue(wanted)))
        QCoreApplication::installTranslator(&other());
    QLocale::setDefault(locale);
    now() = wanted;
    tellAnew();
}

QString spoken()
{
    return now();
}

steelyard::Subscription onSaidOtherwise(std::function<void()> told)
{
    return listeners().add(std::move(told));
}

void tellAnew()
{
    listeners().tell();
}

}
