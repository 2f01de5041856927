// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "tests/mobile/standinhouse.h"
#endif

#include <QAccessible>
#include <QApplication>
#include <QDirIterator>
#include <QFontDatabase>
#include <QQmlEngine>
#include <QtQuickTest>

#include <memory>

namespace {

/// Gives every test file the app's own import tree and typeface, and a desk of its own.
class Setup : public QObject {
    Q_OBJECT

public Q_SLOTS:
    void applicationAvailable()
    {
        QDirIterator fonts(QStringLiteral(":/steelyard"), {QStringLiteral("*.otf"), QStringLiteral("*.ttf")}, QDir::Files,
                           QDirIterator::Subdirectories);
        while (fonts.hasNext())
            QFontDatabase::addApplicationFont(fonts.next());
        QAccessible::setActive(true);
    }
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        m_house = std::make_unique<StandInHouse>();
        m_house->open();
    }

private:
    std::unique_ptr<StandInHouse> m_house;
};

}

int main(int argc, char **argv)
{
    QTEST_SET_MAIN_SOURCE_PATH
    QApplication app(argc, argv); // a ChartView crashes under the stock runner's application
    Setup setup;
    return quick_test_main_with_setup(argc, argv, "steelyard", nullptr, &setup);
}

#include "main.moc"
