// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/deskservice.h"
#include "mobile/preferences.h"
#include "mobile/typeface.h"

#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QTimer>

#include <cstdio>

namespace {

/// For whoever times the start from outside.
void sayFirstFrame(QObject* root)
{
    auto* window = qobject_cast<QQuickWindow*>(root);
    QObject::connect(window, &QQuickWindow::frameSwapped, window, [] {
        std::puts("first frame");
        std::fflush(stdout);
        QCoreApplication::quit();
    });
}

}

int main(int argc, char* argv[])
{
    QApplication app(argc, argv); // Qt Charts draws with widgets
    QApplication::setApplicationName(QStringLiteral("Steelyard"));
    QApplication::setOrganizationName(QStringLiteral("Steelyard"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    typeface::install();

    DeskService desk;
    Preferences preferences;
    DeskForeign::instance = &desk;
    PreferencesForeign::instance = &preferences;

    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    bool warned = false;
    QObject::connect(&engine, &QQmlApplicationEngine::warnings, &app, [&warned](const auto&) { warned = true; });
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Ui/Main.qml")));
    if (engine.rootObjects().isEmpty())
        return 1;
    if (QApplication::arguments().contains(QStringLiteral("--first-frame")))
        sayFirstFrame(engine.rootObjects().constFirst());
    const bool selfTest = QApplication::arguments().contains(QStringLiteral("--self-test"));
    if (selfTest)
        QTimer::singleShot(200, &app, &QCoreApplication::quit);
    const int code = QApplication::exec();
    return selfTest && warned ? 1 : code;
}
