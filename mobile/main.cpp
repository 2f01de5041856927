// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/deskservice.h"
#include "mobile/preferences.h"
#include "mobile/typeface.h"

#include <QApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QTimer>

#include <cstdio>
#include <memory>

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
    typeface::Coming face;

    DeskService desk;
    Preferences preferences;
    DeskForeign::instance = &desk;
    PreferencesForeign::instance = &preferences;

    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    bool warned = false;
    QObject::connect(&engine, &QQmlEngine::warnings, &app, [&warned](const auto&) { warned = true; });
    QQmlComponent main(&engine, QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Ui/Main.qml")));
    face.wait();
    const std::unique_ptr<QObject> window(main.create());
    if (!window) {
        std::fputs(qPrintable(main.errorString()), stderr);
        return 1;
    }
    if (QApplication::arguments().contains(QStringLiteral("--first-frame")))
        sayFirstFrame(window.get());
    const bool selfTest = QApplication::arguments().contains(QStringLiteral("--self-test"));
    if (selfTest)
        QTimer::singleShot(200, &app, &QCoreApplication::quit);
    const int code = QApplication::exec();
    return selfTest && warned ? 1 : code;
}
