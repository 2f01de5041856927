// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/text/vaulttexts.h"

#include <QSet>
#include <QtTest>
#endif

using namespace steelyard;

/// Every code has a sentence and a next step of its own.
class VaultTextsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyCode_data();
    void everyCode();
    void noTwoAlike();
    void wrongSecretIsNoDamage();
    void aFullDiskSaysHowFull();
    void damageSaysHowMuch();
    void recoveryCodes();
    void whatOpeningFound_data();
    void whatOpeningFound();
    void aCarriedFolderIsNamed();
    void nothingUnusualIsNotTold();
};

namespace {

constexpr int codeCount = static_cast<int>(vault::Code::StoppedTryAgain) + 1;

sentences::Said of(int code)
{
    return vaulttexts::said(vault::Refusal{static_cast<vault::Code>(code)});
}

}

void VaultTextsTest::everyCode_data()
{
    QTest::addColumn<int>("code");
    for (int i = 0; i < codeCount; ++i)
        QTest::addRow("code %d", i) << i;
}

void VaultTextsTest::everyCode()
{
    QFETCH(int, code);
    const auto said = of(code);
    QVERIFY(said.head.endsWith(QLatin1Char('.')) && said.head.size() <= 70);
    QVERIFY(said.body.endsWith(QLatin1Char('.')) && said.body.size() > 20);
}

void VaultTextsTest::noTwoAlike()
{
    QSet<QString> heads;
    for (int i = 0; i < codeCount; ++i)
        heads.insert(of(i).head);
    QCOMPARE(heads.size(), codeCount);
}

void VaultTextsTest::wrongSecretIsNoDamage()
{
    const auto wrong = vaulttexts::said(vault::Refusal{vault::Code::WrongSecretTypeAgain});
    QVERIFY(!wrong.head.contains(QStringLiteral("damaged")) && !wrong.body.contains(QStringLiteral("damaged")));
    QVERIFY(vaulttexts::said(vault::Refusal{vault::Code::PageDamagedRestoreBackup}).head.contains(QStringLiteral("damaged")));
    QVERIFY(vaulttexts::anotherTryHelps(vault::Code::WrongSecretTypeAgain));
    QVERIFY(!vaulttexts::anotherTryHelps(vault::Code::PageDamagedRestoreBackup));
    QVERIFY(!vaulttexts::anotherTryHelps(vault::Code::KeyFileDamagedRestoreBackup));
}

void VaultTextsTest::aFullDiskSaysHowFull()
{
    const auto said = vaulttexts::said(vault::Refusal{vault::Code::DiskFullFreeSpace, 3000000, 400000});
    QCOMPARE(said.head, QStringLiteral("Not saved: 3 MB needed, 0.4 MB free."));
    QVERIFY(said.body.contains(QStringLiteral("still on the page")));
}

void VaultTextsTest::damageSaysHowMuch()
{
    vault::Refusal refusal{vault::Code::PageDamagedRestoreBackup};
    refusal.entryCount = 17;
    QVERIFY(vaulttexts::said(refusal).head.contains(QStringLiteral("17 entries")));
}

void VaultTextsTest::recoveryCodes()
{
    const auto unfinished = vaulttexts::said(seal::Code::RecoveryCodeTypeOn), mistaken = vaulttexts::said(seal::Code::RecoveryCodeGroupTypeAgain);
    QVERIFY(unfinished.head != mistaken.head && unfinished.body != mistaken.body);
    QCOMPARE(vaulttexts::said(seal::Code::MemoryRefusedCloseOthers).head, vaulttexts::said(vault::Refusal{vault::Code::MemoryRefusedCloseOthers}).head);
}

void VaultTextsTest::whatOpeningFound_data()
{
    using vault::Findings, vault::WitnessState;
    QTest::addColumn<Findings>("findings");
    QTest::addColumn<QString>("head");
    const auto row = [](const char* name, auto change, const char* head) {
        Findings findings;
        change(findings);
        QTest::newRow(name) << findings << QString::fromLatin1(head);
    };
    row("behind", [](Findings& f) { f.witness = WitnessState::DatabaseBehind; f.entriesMissingCount = 12; }, "12 entries that had been kept are missing.");
    row("no witness", [](Findings& f) { f.witness = WitnessState::Missing; }, "The list that shows missing entries is gone.");
    row("moved", [](Findings& f) { f.movedHere = true; }, "This vault comes from another install.");
    row("healed", [](Findings& f) { f.keyFileHealed = true; }, "One copy of the key file was damaged.");
    row("synced", [](Findings& f) { f.folderSynced = true; }, "Something may carry the vault's folder to other devices.");
    row("full", [](Findings& f) { f.reserveMissing = true; }, "This device is as good as full.");
}

void VaultTextsTest::whatOpeningFound()
{
    QFETCH(const vault::Findings, findings);
    QFETCH(const QString, head);
    const auto all = vaulttexts::found(findings, 0);
    QCOMPARE(all.size(), std::size_t(1));
    QCOMPARE(all.front().head, head);
    QVERIFY(!all.front().body.isEmpty());
    QCOMPARE(vaulttexts::found(findings, 3).back().head, QStringLiteral("Half-typed forms of a newer app are here: 3."));
}

void VaultTextsTest::aCarriedFolderIsNamed()
{
    vault::Findings findings;
    findings.folderSynced = true;
    // what to do, and with what
    QVERIFY(vaulttexts::found(findings, 0).front().body.contains(QStringLiteral("leave the vault's folder out")));
    QVERIFY(vaulttexts::found(findings, 0, QStringLiteral("kept here/vault")).front().body.endsWith(QStringLiteral("leave this folder out: kept here/vault")));
}

void VaultTextsTest::nothingUnusualIsNotTold()
{
    vault::Findings usual;
    usual.witness = vault::WitnessState::DatabaseAhead;
    usual.checkDue = usual.viewsRebuilt = true;
    QVERIFY(vaulttexts::found(usual, 0).empty());
}

QTEST_GUILESS_MAIN(VaultTextsTest)
#include "test_vaulttexts.moc"
