// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "tests/mobile/modeldump.h"
#include "tests/tour/seasonfile.h"

#include <QFile>
#include <QJsonDocument>
#include <QLocale>
#include <QtTest>
#endif

/// What the view-models show of the sample season is what somebody has read and kept.
class ModelDumpsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QLocale::setDefault(QLocale(QStringLiteral("en"))); }
    void asKept_data();
    void asKept();
    void everyPropertyIsDumped();
    void differencesAreFound();
};

void ModelDumpsTest::asKept_data()
{
    QTest::addColumn<int>("at");
    const auto season = seasonfile::all();
    for (std::size_t i = 0; i < season.size(); ++i)
        QTest::addRow("%s", qPrintable(season[i].name)) << static_cast<int>(i);
}

void ModelDumpsTest::asKept()
{
    QFETCH(int, at);
    const SeasonSetup setup = seasonfile::all().at(static_cast<std::size_t>(at));
    const QString path = QStringLiteral(MODEL_DUMPS_FOLDER "/%1.json").arg(setup.name);
    QFile file(path);
    QVERIFY2(file.open(QIODevice::ReadOnly), qPrintable(path));
    const QJsonObject kept = QJsonDocument::fromJson(file.readAll()).object();
    QVERIFY(!kept.isEmpty());
    // through text and back, as what was kept went
    const QJsonObject now = QJsonDocument::fromJson(QJsonDocument(modeldump::of(setup)).toJson()).object();
    const QString difference = modeldump::firstDifference(now, kept);
    QVERIFY2(difference.isEmpty(), qPrintable(difference + QStringLiteral(" (if it is meant: build renew_model_dumps and read the change)")));
}

void ModelDumpsTest::everyPropertyIsDumped()
{
    for (const SeasonSetup& setup : seasonfile::all()) {
        const QString text = QString::fromUtf8(QJsonDocument(modeldump::of(setup)).toJson());
        QVERIFY2(!text.contains(QStringLiteral("not dumped")), qPrintable(text.mid(text.indexOf(QStringLiteral("not dumped")), 60)));
    }
}

void ModelDumpsTest::differencesAreFound()
{
    const auto difference = [](const char* a, const char* b) {
        return modeldump::firstDifference(QJsonDocument::fromJson(a).object(), QJsonDocument::fromJson(b).object());
    };
    QCOMPARE(difference(R"({"a": [1, {"b": 2}]})", R"({"a": [1, {"b": 2}]})"), QString());
    QCOMPARE(difference(R"({"a": [1, {"b": 2}]})", R"({"a": [1, {"b": 3}]})"), QStringLiteral(".a[1].b: 2 instead of 3"));
    QCOMPARE(difference(R"({"a": 1})", R"({"a": 1, "b": "x"})"), QStringLiteral(".b: nothing instead of x"));
    QCOMPARE(difference(R"({"a": [1, 2]})", R"({"a": [1]})"), QStringLiteral(".a[1]: 2 instead of nothing"));
    QCOMPARE(difference(R"({"a": [1]})", R"({"a": true})"), QStringLiteral(".a: something else instead of true"));
}

QTEST_GUILESS_MAIN(ModelDumpsTest)
#include "test_modeldumps.moc"
