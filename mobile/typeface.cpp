// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/typeface.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace typeface {

namespace {

bool load()
{
    bool all = true;
    for (const char* weight : {"Regular", "Medium", "SemiBold", "Bold"})
        all = QFontDatabase::addApplicationFont(QStringLiteral(":/steelyard/fonts/SteelyardText-%1.otf").arg(QLatin1String(weight))) >= 0 && all;
    return all;
}

void use()
{
    QGuiApplication::setFont(QFont(QStringLiteral("Steelyard Text")));
}

}

bool install()
{
    const bool all = load();
    use();
    return all;
}

Coming::Coming() : m_loaded(std::async(std::launch::async, load)) {}

bool Coming::wait()
{
    const bool all = m_loaded.get();
    use();
    return all;
}

}
