// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/door/vaultservice.h"

#include "core/seal/start.h"
#include "tests/mobile/door/fakevault.h"

#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// The door goes from state to state as the vault answers, and says what is the matter.
class VaultServiceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void looks_data();
    void looks();
    void unlocks();
    void wrongSecretStaysAtTheDoor();
    void damageStopsThere();
    void nothingTypedIsNoTry();
    void byCode();
    void anUnfinishedCodeStaysInTheField();
    void makes();
    void locksAfterTheLastWordAndStartsAnew();
    void aRefusedRestartIsSaid();
    void lockedIsNotLockedAgain();
    void newsWaitsUntilItIsRead();
    void aSampleOpensByItsOwnPassphrase();
    void aSampleIsRemovedOnceItIsLocked();
    void whatStandsInTheWayOfRemovingIsSaid();
    void anOwnVaultIsNeverRemoved();

private:
    static void type(SecretField& field, std::string_view text);
    static void atTheDoor(VaultService& door, FakeVault& fake);
    static void unlocked(VaultService& door, FakeVault& fake);
};

void VaultServiceTest::type(SecretField& field, std::string_view text)
{
    for (const char c : text) {
        QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(QLatin1Char(c)));
        QCoreApplication::sendEvent(&field, &event);
    }
}

void VaultServiceTest::atTheDoor(VaultService& door, FakeVault& fake)
{
    fake.standing.standing = vault::Standing::Locked;
    door.look();
    QTRY_COMPARE(door.state(), VaultService::State::Locked);
}

void VaultServiceTest::unlocked(VaultService& door, FakeVault& fake)
{
    atTheDoor(door, fake);
    SecretField field;
    type(field, "twelve or more");
    door.unlock(&field);
    QTRY_COMPARE(door.state(), VaultService::State::Open);
}

void VaultServiceTest::looks_data()
{
    QTest::addColumn<int>("standing");
    QTest::addColumn<int>("trouble");
    QTest::addColumn<int>("state");
    const auto number = [](VaultService::State state) { return static_cast<int>(state); };
    QTest::newRow("none") << 0 << -1 << number(VaultService::State::NoVault);
    QTest::newRow("one") << 1 << -1 << number(VaultService::State::Locked);
    QTest::newRow("in use") << 2 << static_cast<int>(vault::Code::SecondInstanceCloseOther) << number(VaultService::State::Stopped);
    QTest::newRow("newer") << 2 << static_cast<int>(vault::Code::NewerVersionUpdateApp) << number(VaultService::State::Stopped);
}

void VaultServiceTest::looks()
{
    QFETCH(int, standing);
    QFETCH(int, trouble);
    QFETCH(int, state);
    FakeVault fake;
    fake.standing.standing = static_cast<vault::Standing>(standing);
    if (trouble >= 0)
        fake.standing.trouble = vault::Refusal{static_cast<vault::Code>(trouble)};
    VaultService door(fake, {}, [] { return true; });
    door.look();
    QCOMPARE(door.state(), VaultService::State::Looking);
    QTRY_COMPARE(static_cast<int>(door.state()), state);
    QCOMPARE(door.head().isEmpty(), trouble < 0);
    QCOMPARE(door.body().isEmpty(), trouble < 0);
}

void VaultServiceTest::unlocks()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    QSignalSpy opened(&door, &VaultService::opened);
    unlocked(door, fake);
    QCOMPARE(fake.passphrase, std::string("twelve or more"));
    QCOMPARE(opened.count(), 1);
    QVERIFY(door.head().isEmpty());
}

void VaultServiceTest::wrongSecretStaysAtTheDoor()
{
    FakeVault fake;
    fake.answer = vault::Refusal{vault::Code::WrongSecretTypeAgain};
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    SecretField field;
    type(field, "wrong");
    door.unlock(&field);
    QCOMPARE(door.state(), VaultService::State::Working);
    QCOMPARE(field.count(), 0);
    QTRY_COMPARE(door.state(), VaultService::State::Locked);
    QVERIFY(!door.head().isEmpty() && !door.body().isEmpty());
    door.hush();
    QVERIFY(door.head().isEmpty() && door.body().isEmpty());
}

void VaultServiceTest::damageStopsThere()
{
    FakeVault fake;
    fake.answer = vault::Refusal{vault::Code::PageDamagedRestoreBackup};
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    SecretField field;
    type(field, "right");
    door.unlock(&field);
    QTRY_COMPARE(door.state(), VaultService::State::Stopped);
    QVERIFY(!door.head().isEmpty());
    door.look();
    QTRY_COMPARE(door.state(), VaultService::State::Locked);
    QVERIFY(door.head().isEmpty());
}

void VaultServiceTest::nothingTypedIsNoTry()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    SecretField field;
    door.unlock(&field);
    QCOMPARE(door.state(), VaultService::State::Locked);
}

void VaultServiceTest::byCode()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    const auto code = seal::RecoveryCode::generate(seal::systemRandom());
    QVERIFY(code.ok());
    const auto text = code->text();
    SecretField field;
    type(field, text->view());
    door.unlockByCode(&field);
    QTRY_COMPARE(door.state(), VaultService::State::Open);
    QCOMPARE(fake.codeCount, 1);
    QCOMPARE(field.count(), 0);
}

void VaultServiceTest::anUnfinishedCodeStaysInTheField()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    SecretField field;
    type(field, "ABC");
    door.unlockByCode(&field);
    QCOMPARE(door.state(), VaultService::State::Locked);
    QCOMPARE(field.count(), 3);
    QVERIFY(!door.head().isEmpty());
    QCOMPARE(fake.codeCount, 0);
}

void VaultServiceTest::makes()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    door.look();
    QTRY_COMPARE(door.state(), VaultService::State::NoVault);
    seal::SecretText text;
    QVERIFY(text.append("a passphrase").ok());
    auto code = seal::RecoveryCode::generate(seal::systemRandom());
    fake.answer = vault::Refusal{vault::Code::DiskFullFreeSpace, 3000000, 400000};
    door.create(std::move(text), *std::move(code));
    QTRY_COMPARE(door.state(), VaultService::State::NoVault);
    QVERIFY(!door.head().isEmpty());
    fake.answer.reset();
    seal::SecretText again;
    QVERIFY(again.append("a passphrase").ok());
    auto second = seal::RecoveryCode::generate(seal::systemRandom());
    door.create(std::move(again), *std::move(second));
    QTRY_COMPARE(door.state(), VaultService::State::Open);
    QVERIFY(door.head().isEmpty());
}

void VaultServiceTest::locksAfterTheLastWordAndStartsAnew()
{
    FakeVault fake;
    int restarts = 0;
    QStringList order;
    VaultService door(fake, {}, [&] { ++restarts; order << QStringLiteral("restart"); return true; });
    connect(&door, &VaultService::closing, this, [&] { order << QStringLiteral("closing %1").arg(fake.lockedCount); });
    unlocked(door, fake);
    door.lockNow();
    QTRY_COMPARE(restarts, 1);
    QCOMPARE(fake.lockedCount, 1);
    QCOMPARE(order, QStringList({QStringLiteral("closing 0"), QStringLiteral("restart")}));
}

void VaultServiceTest::aSampleOpensByItsOwnPassphrase()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    QVERIFY(!door.isSample());
    door.unlockSample();
    QCOMPARE(door.state(), VaultService::State::Locked);
    fake.standing.nature = seal::VaultNature::Sample;
    atTheDoor(door, fake);
    QVERIFY(door.isSample());
    door.unlockSample();
    QTRY_COMPARE(door.state(), VaultService::State::Open);
    QCOMPARE(QString::fromStdString(fake.passphrase), door.samplePassphrase());
    QVERIFY(door.isSample());
}

void VaultServiceTest::aSampleIsRemovedOnceItIsLocked()
{
    FakeVault fake;
    QStringList order;
    VaultService door(fake, {}, [&] { order << QStringLiteral("restart"); return true; });
    connect(&door, &VaultService::closing, this, [&] { order << QStringLiteral("closing"); });
    connect(&door, &VaultService::sampleRemoved, this, [&] { order << QStringLiteral("removed %1 %2").arg(fake.lockedCount).arg(fake.removedCount); });
    fake.standing.nature = seal::VaultNature::Sample;
    unlocked(door, fake);
    door.removeSample();
    QTRY_COMPARE(order, QStringList({QStringLiteral("closing"), QStringLiteral("removed 1 1"), QStringLiteral("restart")}));
}

void VaultServiceTest::whatStandsInTheWayOfRemovingIsSaid()
{
    FakeVault fake;
    int restarts = 0;
    VaultService door(fake, {}, [&] { ++restarts; return true; });
    fake.standing.nature = seal::VaultNature::Sample;
    unlocked(door, fake);
    fake.answer = vault::Refusal{vault::Code::FolderReadOnlyChooseOther};
    door.removeSample();
    QTRY_COMPARE(door.state(), VaultService::State::Stopped);
    QVERIFY(!door.head().isEmpty());
    QCOMPARE(restarts, 0);
}

void VaultServiceTest::anOwnVaultIsNeverRemoved()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    unlocked(door, fake);
    door.removeSample();
    QTest::qWait(20);
    QCOMPARE(door.state(), VaultService::State::Open);
    QCOMPARE(fake.lockedCount + fake.removedCount, 0);
}

void VaultServiceTest::newsWaitsUntilItIsRead()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    QSignalSpy told(&door, &VaultService::newsChanged);
    door.tell({});
    QCOMPARE(told.count(), 0);
    door.tell({{QStringLiteral("first"), QStringLiteral("do this")}});
    door.tell({{QStringLiteral("second"), QStringLiteral("do that")}});
    QCOMPARE(door.news().size(), 2);
    QCOMPARE(door.news().at(1).toMap().value(QStringLiteral("body")).toString(), QStringLiteral("do that"));
    door.newsRead();
    QVERIFY(door.news().isEmpty());
    QCOMPARE(told.count(), 3);
}

void VaultServiceTest::aRefusedRestartIsSaid()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return false; });
    unlocked(door, fake);
    door.lockNow();
    QTRY_COMPARE(door.state(), VaultService::State::Stopped);
    QVERIFY(!door.head().isEmpty());
}

void VaultServiceTest::lockedIsNotLockedAgain()
{
    FakeVault fake;
    VaultService door(fake, {}, [] { return true; });
    atTheDoor(door, fake);
    door.lockNow();
    QTest::qWait(5);
    QCOMPARE(fake.lockedCount, 0);
}

QTEST_MAIN(VaultServiceTest)
#include "test_vaultservice.moc"
