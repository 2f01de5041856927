// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/door/appvault.h"

#include "core/seal/start.h"
#include "mobile/door/vaultmaker.h"

#include <QDirIterator>
#include <QTemporaryDir>
#include <QtTest>

#include <fstream>
#endif

using namespace steelyard;

/// The door with the real vault behind it: made, locked, unlocked either way, and every trouble met on real files.
class AppVaultTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void madeLockedAndUnlocked();
    void wrongPassphraseIsNotDamage();
    void theRecoveryCodeOpensToo();
    void damagedFileIsNotAWrongPassphrase();
    void anEmptyFileIsNoNewVault();
    void aSecondInstanceIsToldAway();
    void aFolderThatCannotBeWritten();
    void noSecretInAnyFile();

private:
    static void type(SecretField& field, std::string_view text);
    void make(VaultService& door);
    void unlock(VaultService& door, std::string_view passphrase);
    [[nodiscard]] QString database() const;
    [[nodiscard]] AppVault::Folders folders() const;

    std::unique_ptr<QTemporaryDir> m_folder;
    std::string m_code;
    int m_restarts = 0;
};

namespace {

const char* const passphrase = "Marrow Hill, canary 8041";

}

void AppVaultTest::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    m_restarts = 0;
}

void AppVaultTest::cleanup()
{
    m_folder.reset();
}

AppVault::Folders AppVaultTest::folders() const
{
    return {m_folder->filePath(QStringLiteral("vault")).toStdString(), m_folder->filePath(QStringLiteral("install")).toStdString()};
}

QString AppVaultTest::database() const
{
    QDirIterator files(m_folder->filePath(QStringLiteral("vault")), {QStringLiteral("vault-*.db")}, QDir::Files);
    return files.hasNext() ? files.next() : QString();
}

void AppVaultTest::type(SecretField& field, std::string_view text)
{
    for (const char c : text) {
        QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(QLatin1Char(c)));
        QCoreApplication::sendEvent(&field, &event);
    }
}

void AppVaultTest::make(VaultService& door)
{
    door.look();
    QTRY_COMPARE(door.state(), VaultService::State::NoVault);
    VaultMaker maker;
    maker.setVault(&door);
    maker.choose(false);
    SecretField first, second, code;
    type(first, passphrase);
    type(second, passphrase);
    QVERIFY(maker.takePassphrase(&first, &second));
    m_code = maker.code()->view();
    maker.codeWritten();
    type(code, m_code);
    QVERIFY(maker.finish(&code));
    QTRY_COMPARE_WITH_TIMEOUT(door.state(), VaultService::State::Open, 30000);
}

void AppVaultTest::unlock(VaultService& door, std::string_view typed)
{
    door.look();
    QTRY_COMPARE(door.state(), VaultService::State::Locked);
    SecretField field;
    type(field, typed);
    door.unlock(&field);
    QTRY_VERIFY_WITH_TIMEOUT(door.state() != VaultService::State::Working, 30000);
}

void AppVaultTest::madeLockedAndUnlocked()
{
    {
        AppVault vault(folders(), seal::weakestStretch);
        VaultService door(vault, {}, [this] { ++m_restarts; return true; });
        make(door);
        door.lockNow();
        QTRY_COMPARE(m_restarts, 1);
    }
    AppVault vault(folders(), seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    unlock(door, passphrase);
    QCOMPARE(door.state(), VaultService::State::Open);
}

void AppVaultTest::wrongPassphraseIsNotDamage()
{
    {
        AppVault vault(folders(), seal::weakestStretch);
        VaultService door(vault, {}, [] { return true; });
        make(door);
    }
    AppVault vault(folders(), seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    unlock(door, "Marrow Hill, canary 8042");
    QCOMPARE(door.state(), VaultService::State::Locked);
    QVERIFY2(door.head().contains(QStringLiteral("does not open")), qPrintable(door.head()));
}

void AppVaultTest::theRecoveryCodeOpensToo()
{
    {
        AppVault vault(folders(), seal::weakestStretch);
        VaultService door(vault, {}, [] { return true; });
        make(door);
    }
    AppVault vault(folders(), seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    door.look();
    QTRY_COMPARE(door.state(), VaultService::State::Locked);
    SecretField field;
    type(field, m_code);
    door.unlockByCode(&field);
    QTRY_COMPARE_WITH_TIMEOUT(door.state(), VaultService::State::Open, 30000);
}

void AppVaultTest::damagedFileIsNotAWrongPassphrase()
{
    {
        AppVault vault(folders(), seal::weakestStretch);
        VaultService door(vault, {}, [] { return true; });
        make(door);
    }
    QFile file(database());
    QVERIFY(file.open(QIODevice::ReadWrite) && file.seek(5000) && file.putChar('\x55') && file.seek(200) && file.putChar('\x55'));
    file.close();
    AppVault vault(folders(), seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    unlock(door, passphrase);
    QCOMPARE(door.state(), VaultService::State::Stopped);
    QVERIFY2(door.head().contains(QStringLiteral("damaged")), qPrintable(door.head()));
}

void AppVaultTest::anEmptyFileIsNoNewVault()
{
    {
        AppVault vault(folders(), seal::weakestStretch);
        VaultService door(vault, {}, [] { return true; });
        make(door);
    }
    QVERIFY(QFile::resize(database(), 0));
    AppVault vault(folders(), seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    door.look();
    QTRY_VERIFY(door.state() != VaultService::State::Looking);
    if (door.state() == VaultService::State::Locked)
        unlock(door, passphrase);
    QCOMPARE(door.state(), VaultService::State::Stopped);
    QVERIFY2(door.head().contains(QStringLiteral("empty")), qPrintable(door.head()));
    QCOMPARE(QFileInfo(database()).size(), 0);
}

void AppVaultTest::aSecondInstanceIsToldAway()
{
    AppVault vault(folders(), seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    make(door);
    AppVault other(folders(), seal::weakestStretch);
    VaultService second(other, {}, [] { return true; });
    second.look();
    QTRY_COMPARE(second.state(), VaultService::State::Stopped);
    QVERIFY2(second.head().contains(QStringLiteral("open already")), qPrintable(second.head()));
}

void AppVaultTest::aFolderThatCannotBeWritten()
{
    // a file stands where the folder has to be made: so it is for every user, root included
    std::ofstream(m_folder->filePath(QStringLiteral("blocked")).toStdString()) << "in the way";
    AppVault vault({m_folder->filePath(QStringLiteral("blocked/vault")).toStdString(), folders().install}, seal::weakestStretch);
    VaultService door(vault, {}, [] { return true; });
    door.look();
    QTRY_VERIFY(door.state() != VaultService::State::Looking);
    if (door.state() == VaultService::State::NoVault) {
        seal::SecretText text;
        QVERIFY(text.append(passphrase).ok());
        auto code = seal::RecoveryCode::generate(seal::systemRandom());
        door.create(std::move(text), *std::move(code));
        QTRY_VERIFY_WITH_TIMEOUT(door.state() != VaultService::State::Working, 30000);
    }
    QVERIFY(door.state() != VaultService::State::Open);
    QVERIFY(!door.head().isEmpty());
}

void AppVaultTest::noSecretInAnyFile()
{
    {
        AppVault vault(folders(), seal::weakestStretch);
        VaultService door(vault, {}, [] { return true; });
        make(door);
    }
    int files = 0;
    QDirIterator all(m_folder->path(), QDir::Files, QDirIterator::Subdirectories);
    while (all.hasNext()) {
        QFile file(all.next());
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        QVERIFY2(!bytes.contains("canary") && !bytes.contains(m_code.substr(0, 6).c_str()), qPrintable(file.fileName()));
        ++files;
    }
    QVERIFY(files >= 4);
}

QTEST_MAIN(AppVaultTest)
#include "test_appvault.moc"
