// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/start.h"
#include "mobile/preferences.h"
#include "mobile/typeface.h"
#include "tests/guided/guide.h"

#include <QApplication>
#include <QQmlComponent>
#include <QQmlEngine>

#include <cstdio>

/// The app of the same parts as the one that people have, with the cheapest keys and a guide in place of a hand.
int main(int argc, char* argv[])
{
    QApplication app(argc, argv); // Qt Charts draws with widgets
    QApplication::setApplicationName(QStringLiteral("Steelyard"));
    QApplication::setOrganizationName(QStringLiteral("Steelyard"));
    typeface::install();
    if (!steelyard::seal::start() || !steelyard::seal::forbidCoreDumps())
        return 1;

    BadLeave leave;
    Household* house = nullptr;
    Household household(AppVault::usualFolders(), [&] { return leave.leave(house->door()); }, steelyard::seal::weakestStretch);
    house = &household;
    household.door().look();
    Preferences preferences;
    DeskForeign::instance = &household.desk();
    BookForeign::instance = &household.book();
    VaultForeign::instance = &household.door();
    PreferencesForeign::instance = &preferences;

    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent main(&engine, QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Ui/Main.qml")));
    const std::unique_ptr<QObject> root(main.create());
    auto* window = qobject_cast<QQuickWindow*>(root.get());
    if (!window) {
        std::fputs(qPrintable(main.errorString()), stderr);
        return 1;
    }
    const Guide guide(*window, engine, household, leave);
    return QApplication::exec();
}
