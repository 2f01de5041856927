// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/typeface.h"

#include <QApplication>
#include <QQmlApplicationEngine>

/// Every control in every state, to leaf through.
int main(int argc, char* argv[])
{
    QApplication app(argc, argv); // Qt Charts draws with widgets
    typeface::install();
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Gallery/Gallery.qml")));
    return engine.rootObjects().isEmpty() ? 1 : QApplication::exec();
}
