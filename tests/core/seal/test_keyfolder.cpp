// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/keyfolder.h"
#include "tests/core/seal/sealing.h"

#include <QTemporaryDir>
#include <csignal>
#include <sys/resource.h>
#include <sys/stat.h>

using namespace sealing;

namespace {

const std::array<QString, 2> names{"vault.key", "vault.key.2"};

/// What may have happened to one copy.
enum class Fate { Whole, Missing, Empty, Torn, Flipped, Huge };
constexpr std::array fates{Fate::Whole, Fate::Missing, Fate::Empty, Fate::Torn, Fate::Flipped, Fate::Huge};

QByteArray bytesAs(const KeyFile& file)
{
    return QByteArray::fromHex(toHex(encode(file)));
}

QByteArray spoilt(QByteArray bytes, Fate fate)
{
    switch (fate) {
    case Fate::Empty:
        return {};
    case Fate::Torn:
        return bytes.first(bytes.size() / 2);
    case Fate::Flipped:
        bytes[100] = static_cast<char>(bytes[100] ^ 4);
        return bytes;
    case Fate::Huge:
        return bytes + QByteArray(200'000, 'x');
    case Fate::Whole:
    case Fate::Missing:
        break;
    }
    return bytes;
}

CopyState stateOf(Fate fate)
{
    return fate == Fate::Whole ? CopyState::Whole : fate == Fate::Missing ? CopyState::Missing : CopyState::Damaged;
}

Outcome<Keyring> byPassphrase(const KeyFile& file)
{
    return Keyring::open(file, SlotKind::Passphrase, passphraseKey().key);
}

}

class TestKeyFolder : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_dir;

    [[nodiscard]] KeyFolder folder() const { return KeyFolder(m_dir->path().toStdString()); }
    [[nodiscard]] QByteArray read(std::size_t copy) const
    {
        QFile file(m_dir->filePath(names[copy]));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("none");
    }
    void put(std::size_t copy, const QByteArray& bytes) const
    {
        QFile file(m_dir->filePath(names[copy]));
        QVERIFY(file.open(QIODevice::WriteOnly));
        QCOMPARE(file.write(bytes), bytes.size());
    }

private Q_SLOTS:
    void init()
    {
        m_dir = std::make_unique<QTemporaryDir>();
        QVERIFY(m_dir->isValid());
    }

    void writesTwoEqualCopies()
    {
        const Keyring ring = newRing();
        QVERIFY(folder().write(ring.file()));
        QCOMPARE(read(0), bytesAs(ring.file()));
        QCOMPARE(read(1), bytesAs(ring.file()));
        QCOMPARE(QDir(m_dir->path()).entryList(QDir::Files | QDir::Hidden).size(), 2);
        const QFile::Permissions owner = QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser;
        QCOMPARE(QFile(m_dir->filePath(names[0])).permissions() | owner, owner);
        const Outcome<KeyFileCopies> copies = folder().read();
        QVERIFY(copies);
        QCOMPARE(copies->candidates.size(), std::size_t(1));
        QVERIFY(copies->candidates[0] == ring.file());
        QVERIFY(openNewest(*copies, byPassphrase));
        const Outcome<Healed> healed = folder().heal(ring.file());
        QVERIFY(healed && !healed->any());
    }

    // Every fate of one copy with every fate of the other.
    void everyDamagedPair()
    {
        const Keyring ring = newRing();
        const QByteArray good = bytesAs(ring.file());
        for (const Fate first : fates) {
            for (const Fate second : fates) {
                init();
                const std::array pair{first, second};
                for (std::size_t copy = 0; copy < 2; ++copy)
                    if (pair[copy] != Fate::Missing)
                        put(copy, spoilt(good, pair[copy]));
                const Outcome<KeyFileCopies> copies = folder().read();
                if (first != Fate::Whole && second != Fate::Whole) {
                    const bool none = first == Fate::Missing && second == Fate::Missing;
                    QCOMPARE(copies.code(), none ? Code::KeyFileMissingFindFolder : Code::KeyFileDamagedRestoreBackup);
                    continue;
                }
                QVERIFY(copies);
                QVERIFY(copies->states == (std::array{stateOf(first), stateOf(second)}));
                const Outcome<Keyring> opened = openNewest(*copies, byPassphrase);
                QVERIFY(opened);
                const Outcome<Healed> healed = folder().heal(opened->file());
                QVERIFY(healed);
                QCOMPARE(healed->copies[0], first != Fate::Whole);
                QCOMPARE(healed->copies[1], second != Fate::Whole);
                QCOMPARE(read(0), good);
                QCOMPARE(read(1), good);
            }
        }
    }

    // A stop between the two copies leaves one generation in each, either way round.
    void newerGenerationWins()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withFreshDataKey(systemRandom());
        for (const std::size_t newer : {0U, 1U}) {
            put(newer, bytesAs(next.file()));
            put(1 - newer, bytesAs(ring.file()));
            const Keyring opened = *openNewest(*folder().read(), byPassphrase);
            QCOMPARE(opened.file().generationNumber, std::uint64_t(2));
            const Healed healed = *folder().heal(opened.file());
            QVERIFY(healed.copies[1 - newer] && !healed.copies[newer]);
            QCOMPARE(read(1 - newer), bytesAs(next.file()));
        }
    }

    void damagedNewerGivesWayToOlder()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withFreshDataKey(systemRandom());
        put(0, spoilt(bytesAs(next.file()), Fate::Torn));
        put(1, bytesAs(ring.file()));
        QCOMPARE(openNewest(*folder().read(), byPassphrase)->file().generationNumber, std::uint64_t(1));
    }

    void forgedNewerGivesWayToOlder()
    {
        const Keyring ring = newRing();
        KeyFile forged = ring.file();
        forged.generationNumber = 9;
        forged.databaseNumber = 7;
        put(0, bytesAs(forged));
        put(1, bytesAs(ring.file()));
        const Outcome<Keyring> opened = openNewest(*folder().read(), byPassphrase);
        QVERIFY(opened);
        QCOMPARE(opened->file().databaseNumber, std::uint32_t(1));
        put(1, bytesAs(forged));
        QCOMPARE(openNewest(*folder().read(), byPassphrase).code(), Code::KeyFileForgedRestoreBackup);
    }

    // The old passphrase must not come in through the older copy.
    void replacedPassphraseStaysOut()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withSlot(slotKey(SlotKind::Passphrase, 0xB1, 0x21), systemRandom());
        put(0, bytesAs(next.file()));
        put(1, bytesAs(ring.file()));
        QCOMPARE(openNewest(*folder().read(), byPassphrase).code(), Code::WrongSecretTypeAgain);
    }

    void spoiltSlotWithinAGenerationGivesWay()
    {
        const Keyring ring = newRing();
        KeyFile spoiltSlot = ring.file();
        spoiltSlot.slots[0].vaultKey.text[0] ^= std::byte{1};
        put(0, bytesAs(spoiltSlot));
        put(1, bytesAs(ring.file()));
        QVERIFY(openNewest(*folder().read(), byPassphrase));
    }

    void wrongSecretCostsOneTry()
    {
        QVERIFY(folder().write(newRing().file()));
        int tries = 0;
        const Outcome<Keyring> refused = openNewest(*folder().read(), [&tries](const KeyFile& file) {
            ++tries;
            return Keyring::open(file, SlotKind::Passphrase, recoveryKey().key);
        });
        QCOMPARE(refused.code(), Code::WrongSecretTypeAgain);
        QCOMPARE(tries, 1);
    }

    void newerVersionIsLeftAlone()
    {
        const Keyring ring = newRing();
        QByteArray newer = bytesAs(ring.file());
        newer[8] = 2;
        const QByteArray start = newer.first(newer.size() - 32);
        newer = start + QByteArray::fromHex(toHex(hash(bytesOf(start.toStdString()))));
        for (const std::size_t copy : {0U, 1U}) {
            put(copy, newer);
            put(1 - copy, bytesAs(ring.file()));
            QCOMPARE(folder().read().code(), Code::KeyFileNewerUpdateApp);
            QCOMPARE(read(copy), newer);
        }
    }

    void copiesOfTwoVaults()
    {
        put(0, bytesAs(newRing().file()));
        put(1, bytesAs(Keyring::create(passphraseKey(), recoveryKey(), systemRandom())->file()));
        QCOMPARE(folder().read().code(), Code::KeyFilesOfTwoVaultsSortOut);
    }

    void leftoverOfAStoppedWriteDoesNoHarm()
    {
        const Keyring ring = newRing();
        QVERIFY(folder().write(ring.file()));
        QFile part(m_dir->filePath("vault.key.part"));
        QVERIFY(part.open(QIODevice::WriteOnly));
        part.write("half");
        part.close();
        QVERIFY(openNewest(*folder().read(), byPassphrase));
        const Keyring next = *ring.withFreshDataKey(systemRandom());
        QVERIFY(folder().write(next.file()));
        QVERIFY(!QFile::exists(part.fileName()));
        QCOMPARE(read(0), bytesAs(next.file()));
    }

    void refusedWritesLeaveTheOldCopies()
    {
        const Keyring ring = newRing();
        const Keyring next = *ring.withFreshDataKey(systemRandom());
        QVERIFY(folder().write(ring.file()));
        std::signal(SIGXFSZ, SIG_IGN);
        rlimit before{};
        getrlimit(RLIMIT_FSIZE, &before);
        const rlimit tight{100, before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &tight);
        const Outcome<Done> written = folder().write(next.file());
        setrlimit(RLIMIT_FSIZE, &before);
        QVERIFY(!written);
        QCOMPARE(written.code(), Code::DiskFullFreeSpace);
        QCOMPARE(read(0), bytesAs(ring.file()));
        QCOMPARE(read(1), bytesAs(ring.file()));
        QCOMPARE(QDir(m_dir->path()).entryList(QDir::Files | QDir::Hidden).size(), 2);
        QVERIFY(folder().write(next.file()));
    }

    void strangePlacesAreCodes()
    {
        const KeyFolder nowhere(m_dir->filePath("not/there").toStdString());
        QCOMPARE(nowhere.read().code(), Code::KeyFileMissingFindFolder);
        QCOMPARE(nowhere.write(newRing().file()).code(), Code::WriteFailedTryAgain);
        QVERIFY(QDir(m_dir->path()).mkdir("vault.key"));
        QCOMPARE(folder().read().code(), Code::FileUnreadableTryAgain);
        put(1, spoilt(bytesAs(newRing().file()), Fate::Torn));
        QCOMPARE(folder().read().code(), Code::FileUnreadableTryAgain);
        put(1, bytesAs(newRing().file()));
        const Outcome<KeyFileCopies> copies = folder().read();
        QVERIFY(copies);
        QVERIFY(copies->states == (std::array{CopyState::Unreadable, CopyState::Whole}));
        QVERIFY(openNewest(*copies, byPassphrase));
        QCOMPARE(folder().heal(copies->candidates[0]).code(), Code::WriteFailedTryAgain);
        QCOMPARE(folder().write(newRing().file()).code(), Code::WriteFailedTryAgain);
        QCOMPARE(openNewest(KeyFileCopies{}, byPassphrase).code(), Code::KeyFileMissingFindFolder);
    }
};

QTEST_APPLESS_MAIN(TestKeyFolder)
#include "test_keyfolder.moc"
