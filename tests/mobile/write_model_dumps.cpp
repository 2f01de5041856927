// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/mobile/modeldump.h"
#include "tests/tour/seasonfile.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonDocument>
#include <QLocale>

#include <cstdio>

/// Writes what the view-models show of each set-up now; the difference is for a person to read before it is kept.
int main(int argc, char* argv[])
{
    const QCoreApplication app(argc, argv);
    QLocale::setDefault(QLocale(QStringLiteral("en")));
    if (argc != 2) {
        std::fputs("write_model_dumps FOLDER\n", stderr);
        return 2;
    }
    for (const SeasonSetup& setup : seasonfile::all()) {
        QFile file(QStringLiteral("%1/%2.json").arg(QString::fromLocal8Bit(argv[1]), setup.name));
        if (!setup.faults.isEmpty() || !file.open(QIODevice::WriteOnly) || file.write(QJsonDocument(modeldump::of(setup)).toJson()) < 0) {
            std::fprintf(stderr, "%s is not written\n", qPrintable(setup.name));
            return 1;
        }
    }
    return 0;
}
