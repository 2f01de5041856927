// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gallery/shots.h"

#include <QApplication>
#include <QDir>

int main(int argc, char* argv[])
{
    QApplication app(argc, argv);
    Shots shots;
    const QDir folder(QString::fromLocal8Bit(argc > 1 ? argv[1] : "."));
    if (!shots.ready() || !folder.mkpath(QStringLiteral(".")))
        return 1;
    for (const Shots::Look& look : Shots::looks())
        if (!shots.small(look).save(folder.filePath(look.name() + QStringLiteral(".png"))))
            return 1;
    return 0;
}
