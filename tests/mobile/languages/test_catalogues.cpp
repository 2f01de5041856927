// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/language.h"
#include "mobile/text/liftnames.h"
#include "tests/mobile/languages/catalogue.h"

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QtTest>

namespace {

QString fileOf(const QString& folder, const QString& code)
{
    return QDir(folder).filePath(QStringLiteral("steelyard_%1.ts").arg(code));
}

/// The catalogues in a folder as they would be after the sources below another had been read.
QString renew(const QString& folder, const QString& sources)
{
    QProcess process;
    process.setWorkingDirectory(sources);
    process.start(QStringLiteral(CATALOGUES "/renew"), {QStringLiteral(LUPDATE), folder});
    if (!process.waitForFinished(300000) || process.exitCode() != 0)
        return QString::fromLocal8Bit(process.readAllStandardError());
    return {};
}

QStringList unfinishedIn(const QList<Message>& messages)
{
    QStringList list;
    for (const Message& m : messages)
        if (!m.finished || m.forms.isEmpty())
            list << m.key();
    return list;
}

/// A word of the trade and how each language says it, everywhere: what a sentence with the word has to have in it.
struct Term {
    const char *word, *german, *spanish;
};
// our own glossary: the interface, the help and the prints say one thing by one word
constexpr Term terms[] = {
    {"\\bvault\\b(?!\\.key)", "tresor", "caja fuerte"},
    {"recovery code", "rettungscode", "código de rescate"},
    {"\\bpassphrase\\b", "passphrase", "frase de acceso"},
    {"sticking zone", "sticking-zone", "zona de estancamiento"},
    {"bench aid", "bankhilfe", "ayuda de banca"},
    {"cam machine", "kurvenmaschine", "máquina de leva"},
    {"bar marks", "marken", "marcas"},
    {"\\bchains?\\b", "kette", "cadena"},
    {"\\bcollars\\b", "verschlüsse", "cierres"},
    {"\\bspotters?\\b", "helfer", "ayudante"},
};

}

/// What the app says in its languages is complete, and holds by its look.
class CataloguesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everySentenceIsThere_data();
    void everySentenceIsThere();
    void aForgottenSentenceIsNoticed();
    void whatNobodySaysAnyMoreIsNoticed();
    void holdsByItsLook_data();
    void holdsByItsLook();
    void aFaultIsNoticed_data();
    void aFaultIsNoticed();
    void nothingIsLeftInEnglish_data();
    void nothingIsLeftInEnglish();
    void oneWordForOneThing_data();
    void oneWordForOneThing();
    void everyLiftIsThere();

private:
    void others() const;
};

void CataloguesTest::others() const
{
    QTest::addColumn<QString>("code");
    for (const QString& code : language::codes())
        if (code != QLatin1String("en"))
            QTest::newRow(qPrintable(code)) << code;
}

void CataloguesTest::everySentenceIsThere_data()
{
    QTest::addColumn<QString>("code");
    for (const QString& code : language::codes())
        QTest::newRow(qPrintable(code)) << code;
}

void CataloguesTest::everySentenceIsThere()
{
    QFETCH(const QString, code);
    const QTemporaryDir folder;
    for (const QString& each : language::codes())
        QVERIFY(QFile::copy(fileOf(QStringLiteral(CATALOGUES), each), fileOf(folder.path(), each)));
    const QString trouble = renew(folder.path(), QStringLiteral(SOURCES));
    QVERIFY2(trouble.isEmpty(), qPrintable(trouble));
    const auto kept = messagesIn(fileOf(QStringLiteral(CATALOGUES), code)), now = messagesIn(fileOf(folder.path(), code));
    QVERIFY(kept.size() > 20);
    const QStringList wanting = unfinishedIn(now);
    QVERIFY2(wanting.isEmpty(), qPrintable(QStringLiteral("build the target renew_catalogues, then translate:\n") + wanting.join(QLatin1Char('\n'))));
    const auto keys = [](const QList<Message>& all) {
        QStringList list;
        for (const Message& m : all)
            list << m.key();
        return list;
    };
    QCOMPARE(keys(kept), keys(now));
}

void CataloguesTest::aForgottenSentenceIsNoticed()
{
    const QTemporaryDir sources;
    QVERIFY(QDir(sources.path()).mkpath(QStringLiteral("mobile")));
    QVERIFY(QDir(sources.path()).mkpath(QStringLiteral("qml")));
    QFile page(QDir(sources.path()).filePath(QStringLiteral("qml/NewPage.qml")));
    QVERIFY(page.open(QIODevice::WriteOnly));
    page.write("import QtQuick\nText { text: qsTr(\"Nobody has translated this\") }\n");
    page.close();
    QCOMPARE(renew(sources.path(), sources.path()), QString());
    QCOMPARE(unfinishedIn(messagesIn(fileOf(sources.path(), QStringLiteral("de")))), QStringList{QStringLiteral("NewPage/Nobody has translated this")});
}

void CataloguesTest::whatNobodySaysAnyMoreIsNoticed()
{
    const QTemporaryDir sources;
    for (const char* part : {"mobile", "qml"})
        QVERIFY(QDir(sources.path()).mkpath(QLatin1String(part)));
    for (const QString& each : language::codes())
        QVERIFY(QFile::copy(fileOf(QStringLiteral(CATALOGUES), each), fileOf(sources.path(), each)));
    QCOMPARE(renew(sources.path(), sources.path()), QString());
    QVERIFY(messagesIn(fileOf(sources.path(), QStringLiteral("de"))).isEmpty());
}

void CataloguesTest::holdsByItsLook_data()
{
    others();
}

void CataloguesTest::holdsByItsLook()
{
    QFETCH(const QString, code);
    QStringList faults;
    for (const Message& m : messagesIn(fileOf(QStringLiteral(CATALOGUES), code)))
        faults << faultsOf(m);
    QVERIFY2(faults.isEmpty(), qPrintable(faults.join(QLatin1Char('\n'))));
}

void CataloguesTest::aFaultIsNoticed_data()
{
    QTest::addColumn<QString>("source");
    QTest::addColumn<QStringList>("forms");
    QTest::addColumn<QString>("fault");
    const auto row = [](const char* name, const char* source, const QStringList& forms, const char* fault) {
        QTest::newRow(name) << QString::fromUtf8(source) << forms << QString::fromUtf8(fault);
    };
    row("sound", "Pulls %1 at %2.", {QStringLiteral("Bei %2 zieht es %1.")}, "");
    row("a place lost", "Pulls %1 at %2.", {QStringLiteral("Zieht %1.")}, "placeholders");
    row("a place twice", "Pulls %1.", {QStringLiteral("Zieht %1 %1.")}, "placeholders");
    row("one in words", "%n days", {QStringLiteral("morgen"), QStringLiteral("%n Tage")}, "");
    row("many without their count", "%n days", {QStringLiteral("%n Tag"), QStringLiteral("Tage")}, "placeholders");
    row("small letters", "KEEP", {QStringLiteral("Behalten")}, "capitals");
    row("two spaces", "a pair", {QStringLiteral("ein  Paar")}, "spaces");
    row("a space behind", "a pair", {QStringLiteral("ein Paar ")}, "spaces");
    row("no full stop", "It weighs.", {QStringLiteral("Es wiegt")}, "its end");
    row("nothing", "a pair", {QString()}, "empty");
}

void CataloguesTest::aFaultIsNoticed()
{
    QFETCH(const QString, source);
    QFETCH(const QStringList, forms);
    QFETCH(const QString, fault);
    const QStringList found = faultsOf({QStringLiteral("Page"), source, forms, forms.size() > 1, true});
    if (fault.isEmpty())
        QCOMPARE(found, QStringList());
    else
        QVERIFY(!found.isEmpty() && found.first().startsWith(fault + QLatin1Char(':')));
}

void CataloguesTest::nothingIsLeftInEnglish_data()
{
    others();
}

void CataloguesTest::nothingIsLeftInEnglish()
{
    QFETCH(const QString, code);
    // three words in small letters are a sentence, not a name, a unit or a formula
    static const QRegularExpression sentence(QStringLiteral("\\b[a-z]{2,}\\b[^%]* [a-z]{2,}\\b.* [a-z]{2,}\\b"));
    QStringList same;
    for (const Message& m : messagesIn(fileOf(QStringLiteral(CATALOGUES), code)))
        if (m.forms.contains(m.source) && sentence.match(m.source).hasMatch())
            same << m.key();
    QVERIFY2(same.isEmpty(), qPrintable(same.join(QLatin1Char('\n'))));
}

void CataloguesTest::oneWordForOneThing_data()
{
    others();
}

void CataloguesTest::oneWordForOneThing()
{
    QFETCH(const QString, code);
    QStringList others;
    const auto messages = messagesIn(fileOf(QStringLiteral(CATALOGUES), code));
    for (const Term& term : terms) {
        const QRegularExpression word(QString::fromUtf8(term.word), QRegularExpression::CaseInsensitiveOption);
        const QString said = QString::fromUtf8(code == QLatin1String("de") ? term.german : term.spanish);
        int count = 0;
        for (const Message& m : messages) {
            if (!word.match(m.source).hasMatch())
                continue;
            ++count;
            for (const QString& form : m.forms)
                if (!QString(form).remove(QChar::SoftHyphen).contains(said, Qt::CaseInsensitive))
                    others << QStringLiteral("%1: %2 → %3").arg(said, m.key(), form);
        }
        QVERIFY2(count > 0, term.word);
    }
    QVERIFY2(others.isEmpty(), qPrintable(others.join(QLatin1Char('\n'))));
}

void CataloguesTest::everyLiftIsThere()
{
    QStringList shipped;
    for (const steelyard::Lift& lift : steelyard::shippedLifts())
        shipped << QString::fromUtf8(lift.term.data());
    QCOMPARE(liftnames::terms(), shipped);
}

QTEST_GUILESS_MAIN(CataloguesTest)
#include "test_catalogues.moc"
