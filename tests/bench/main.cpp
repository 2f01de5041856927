// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/typeface.h"
#include "tests/bench/verdicts.h"

#include <QApplication>
#include <QQuickStyle>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

namespace {

/// The same surroundings for this program and those it starts: no display, no settings of whoever runs it.
void pinSurroundings(const QTemporaryDir& home)
{
    for (const auto& [name, value] : {std::pair{"QT_QPA_PLATFORM", "offscreen"}, {"QT_QUICK_BACKEND", "software"},
                                      {"QT_QUICK_CONTROLS_STYLE", "Basic"}, {"TZ", "UTC"}, {"LC_ALL", "C.UTF-8"}})
        qputenv(name, value);
    for (const char* name : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME", "XDG_STATE_HOME", "XDG_RUNTIME_DIR"})
        qputenv(name, home.path().toUtf8());
}

}

/// Times what has a bound, then says which bound holds; a filter of the usual kind limits both.
int main(int argc, char** argv)
{
    const QTemporaryDir home;
    pinSurroundings(home);
    QApplication app(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Steelyard"));
    QApplication::setOrganizationName(QStringLiteral("Steelyard"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    typeface::install();

    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv) || benchmark::RunSpecifiedBenchmarks() == 0)
        return 2;
    return verdicts::print() ? 0 : 1;
}
