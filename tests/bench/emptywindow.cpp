// SPDX-License-Identifier: GPL-3.0-or-later
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickWindow>

#include <cstdio>

/// The least that Qt Quick can show: a window with nothing in it. Says so at its first frame, and ends.
int main(int argc, char* argv[])
{
    const QGuiApplication app(argc, argv);
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick\nWindow { width: 360; height: 720; visible: true }\n");
    auto* window = engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    if (!window)
        return 1;
    QObject::connect(window, &QQuickWindow::frameSwapped, &app, [] {
        std::puts("first frame");
        std::fflush(stdout);
        QGuiApplication::quit();
    });
    return QGuiApplication::exec();
}
