// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/firstfonts.h"

#include <QQmlComponent>
#include <QQmlEngine>
#include <QtTest>

#include <memory>

/// The fonts that are asked for before any QML is there are those of the theme.
class FirstFontsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void asTheThemeHasThem_data();
    void asTheThemeHasThem();
};

void FirstFontsTest::asTheThemeHasThem_data()
{
    QTest::addColumn<int>("mode");
    QTest::addColumn<int>("textSize");
    for (int mode = 0; mode < 3; ++mode)
        for (int textSize = 0; textSize < 4; ++textSize)
            QTest::addRow("theme %d, text size %d", mode, textSize) << mode << textSize;
}

void FirstFontsTest::asTheThemeHasThem()
{
    QFETCH(int, mode);
    QFETCH(int, textSize);
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QQmlComponent component(&engine);
    component.setData("import QtQml\nimport Steelyard.Theme\nQtObject { readonly property QtObject theme: Theme }", QUrl());
    const std::unique_ptr<QObject> holder(component.create());
    QVERIFY2(holder, qPrintable(component.errorString()));
    auto* theme = holder->property("theme").value<QObject*>();
    QVERIFY(theme);
    const auto factors = theme->property("textFactors").value<QJSValue>().toVariant().toList();
    QCOMPARE(factors.size(), static_cast<qsizetype>(firstfonts::textFactors.size()));
    QVERIFY(theme->setProperty("mode", mode));
    QVERIFY(theme->setProperty("textFactor", factors.at(textSize)));

    const QList<QFont> fonts = firstfonts::all(mode, textSize);
    const std::vector<std::pair<const char*, const char*>> purposes{{"title", "strong"}, {"act", "strong"}, {"body", "plain"},
                                                                    {"body", "strong"},  {"act", "plain"},  {"note", "plain"}};
    QCOMPARE(fonts.size(), static_cast<qsizetype>(purposes.size()));
    for (qsizetype i = 0; i < fonts.size(); ++i) {
        const auto& [size, weight] = purposes[static_cast<std::size_t>(i)];
        QCOMPARE(fonts[i].family(), theme->property("face").toString());
        QCOMPARE(fonts[i].pixelSize(), theme->property(size).toInt());
        QCOMPARE(static_cast<int>(fonts[i].weight()), theme->property(weight).toInt());
    }
}

QTEST_MAIN(FirstFontsTest)
#include "test_firstfonts.moc"
