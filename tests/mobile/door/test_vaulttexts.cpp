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

QTEST_GUILESS_MAIN(VaultTextsTest)
#include "test_vaulttexts.moc"
