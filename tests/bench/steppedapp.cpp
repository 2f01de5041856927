// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/typeface.h"
#include "tests/bench/screen.h"

#include <QApplication>
#include <QQuickStyle>

#include <cstdio>

/// The app with a full desk, stepped two hundred times and drawn each time; then it says so and waits to be ended.
int main(int argc, char* argv[])
{
    const QApplication app(argc, argv);
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    typeface::install();
    Screen screen(QStringLiteral("4-tall-lifter-chains-and-bands"));
    if (!screen.ready() || !screen.drawn())
        return 1;
    for (int turn = 0; turn < 200; ++turn) {
        screen.step(turn);
        if (!screen.drawn())
            return 1;
    }
    std::puts("stepped");
    std::fflush(stdout);
    return QApplication::exec();
}
