// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/typeface.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

namespace typeface {

bool install()
{
    bool all = true;
    for (const char* weight : {"Regular", "Medium", "SemiBold", "Bold"})
        all = QFontDatabase::addApplicationFont(QStringLiteral(":/steelyard/fonts/SteelyardText-%1.otf").arg(QLatin1String(weight))) >= 0 && all;
    QGuiApplication::setFont(QFont(QStringLiteral("Steelyard Text")));
    return all;
}

}
