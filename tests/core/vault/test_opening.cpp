// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/keys.h"
#include "core/seal/start.h"
#include "core/vault/opening.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTextStream>

using namespace steelyard;
using namespace steelyard::vault;

namespace {

constexpr qint64 pageSize = 4096;

seal::SecretBytes keyText(unsigned filling)
{
    const auto key = seal::DataKey::make([filling](seal::ByteRoom room) -> seal::Outcome<Done> {
        std::fill(room.begin(), room.end(), static_cast<std::byte>(filling));
        return Done{};
    });
    seal::Salt salt{};
    salt.fill(std::byte{7});
    return *seal::databaseKeyText(*key, salt);
}

}

class TestOpening : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_dir;

    [[nodiscard]] QString name() const { return m_dir->filePath("vault-1.db"); }
    [[nodiscard]] std::filesystem::path path() const { return name().toStdString(); }
    [[nodiscard]] QByteArray bytes() const
    {
        QFile file(name());
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void put(const QByteArray& bytes, const QString& suffix = {}) const
    {
        QFile file(name() + suffix);
        QVERIFY(file.open(QIODevice::WriteOnly));
        QCOMPARE(file.write(bytes), bytes.size());
    }
    /// A database with 200 rows, more than a page holds.
    void fill() const
    {
        auto made = createSealed(path(), keyText(1));
        QVERIFY(made.ok());
        (*made)->runScript("CREATE TABLE t(a INTEGER PRIMARY KEY, b BLOB)");
        Transaction all(**made);
        for (int row = 0; row < 200; ++row)
            (*made)->run("INSERT INTO t VALUES(?, ?)", row, seal::bytesOf("a row that is long enough to take some room"));
        QVERIFY(all.commit().ok());
    }
    [[nodiscard]] std::optional<Code> codeOfOpening(unsigned key = 1) const
    {
        const auto opened = openSealed(path(), keyText(key));
        return opened ? std::nullopt : std::optional(opened.code());
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void init() { m_dir = std::make_unique<QTemporaryDir>(); }

    void engineEncryptsAndSaysSo()
    {
        const auto made = createSealed(path(), keyText(1));
        QVERIFY(made.ok());
        QVERIFY(cipherVersion(**made).has_value());
        QVERIFY(!bytes().startsWith("SQLite format 3"));
        QCOMPARE(bytes().size() % pageSize, 0);
        QCOMPARE(QFile::permissions(name()) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions());
    }

    void everySettingHolds()
    {
        fill();
        const auto opened = openSealed(path(), keyText(1));
        QVERIFY(opened.ok());
        const std::map<const char*, const char*> wanted{{"PRAGMA journal_mode", "truncate"}, {"PRAGMA synchronous", "2"},
            {"PRAGMA secure_delete", "1"}, {"PRAGMA temp_store", "2"}, {"PRAGMA mmap_size", "0"},
            {"PRAGMA locking_mode", "exclusive"}, {"PRAGMA foreign_keys", "1"}, {"PRAGMA cell_size_check", "1"},
            {"PRAGMA cache_size", "-65536"}, {"PRAGMA cipher_page_size", "4096"}, {"PRAGMA integrity_check", "ok"}};
        for (const auto& [question, answer] : wanted)
            QCOMPARE((*opened)->answer(question).value_or("nothing"), std::string(answer));
    }

    void whatWasWrittenIsReadAgain()
    {
        fill();
        const auto opened = openSealed(path(), keyText(1));
        QVERIFY(opened.ok());
        QCOMPARE((*opened)->answer("SELECT count(*) FROM t").value_or(""), std::string("200"));
        QVERIFY(!bytes().contains("long enough"));
        QVERIFY(!bytes().contains("CREATE TABLE"));
    }

    void missingEmptyTornPlain()
    {
        QCOMPARE(codeOfOpening(), Code::DatabaseMissingRestoreBackup);
        put({});
        QCOMPARE(codeOfOpening(), Code::DatabaseEmptyRestoreBackup);
        put(QByteArray("SQLite format 3\0", 16) + QByteArray(pageSize - 16, 'x'));
        QCOMPARE(codeOfOpening(), Code::DatabasePlainRefuse);
        QFile::remove(name());
        fill();
        put(bytes().chopped(1));
        QCOMPARE(codeOfOpening(), Code::DatabaseTornRestoreBackup);
    }

    void aFileIsNeverMadeByOpening()
    {
        QVERIFY(codeOfOpening().has_value());
        QVERIFY(!QFile::exists(name()));
    }

    void anotherKeyAndADamagedHeadLookAlike()
    {
        fill();
        QCOMPARE(codeOfOpening(2), Code::PageDamagedRestoreBackup);
        QByteArray spoilt = bytes();
        spoilt[100] = static_cast<char>(spoilt[100] ^ 1);
        put(spoilt);
        QCOMPARE(codeOfOpening(), Code::PageDamagedRestoreBackup);
    }

    void aDamagedSaltDoesNoHarm()
    {
        fill();
        QByteArray spoilt = bytes();
        spoilt[3] = static_cast<char>(spoilt[3] ^ 1);
        put(spoilt);
        QCOMPARE(codeOfOpening(), std::nullopt);
    }

    void aDamagedPageIsNoticedWhenItIsRead()
    {
        fill();
        QByteArray spoilt = bytes();
        const qsizetype inTable = 2 * pageSize + 500;
        spoilt[inTable] = static_cast<char>(spoilt[inTable] ^ 1);
        put(spoilt);
        const auto opened = openSealed(path(), keyText(1));
        QVERIFY(opened.ok());
        (*opened)->run("SELECT b FROM t");
        QCOMPARE((*opened)->outcome().code(), Code::PageDamagedRestoreBackup);
    }

    void anotherProgramsDatabaseIsRefused()
    {
        {
            const auto made = createSealed(path(), keyText(1));
            QVERIFY(made.ok());
            (*made)->runScript("PRAGMA application_id=1");
        }
        QCOMPARE(codeOfOpening(), Code::DatabaseForeignRefuse);
    }

    void nothingThereIsCreatedOver()
    {
        fill();
        const QByteArray before = bytes();
        QCOMPARE(createSealed(path(), keyText(1)).code(), Code::VaultThereUnlockIt);
        QCOMPARE(bytes(), before);
    }

    void foreignFilesAreNotAttached()
    {
        const auto made = createSealed(path(), keyText(1));
        QVERIFY(made.ok());
        (*made)->run("ATTACH ':memory:' AS other");
        QCOMPARE((*made)->outcome().code(), Code::EngineUnfitReinstall);
        QVERIFY((*made)->answer("SELECT 1").has_value());
    }

    void afterAFailureNothingRunsUntilItIsTaken()
    {
        const auto made = createSealed(path(), keyText(1));
        QVERIFY(made.ok());
        Database& database = **made;
        database.runScript("CREATE TABLE t(a INTEGER PRIMARY KEY)");
        {
            Transaction both(database);
            database.run("INSERT INTO t VALUES(1)");
            database.run("INSERT INTO t VALUES(1)");
            database.run("INSERT INTO t VALUES(2)");
            QVERIFY(!both.commit().ok());
        }
        QVERIFY(!database.failed());
        QCOMPARE(database.answer("SELECT count(*) FROM t").value_or(""), std::string("0"));
    }
};

QTEST_APPLESS_MAIN(TestOpening)
#include "test_opening.moc"
