// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/vault/migrations/migrations.h"
#include "core/vault/opening.h"
#include "tests/core/vault/vaulting.h"

using namespace vaulting;

class TestMigrations : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_dir;
    std::unique_ptr<Database> m_database;

    [[nodiscard]] QString answer(std::string_view question) const
    {
        return QString::fromStdString(m_database->answer(question).value_or("nothing"));
    }
    [[nodiscard]] static Migration second(const char* script)
    {
        return {2, [script](Database& database) { database.runScript(script); }};
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void init()
    {
        m_database.reset();
        m_dir = std::make_unique<QTemporaryDir>();
        m_database = *createSealed(m_dir->filePath("a.db").toStdString(), *newRing().databaseKeyText());
    }

    void theNumbersRiseWithoutAGap()
    {
        std::int64_t number = 0;
        for (const Migration& step : migrations())
            QCOMPARE(step.versionNumber, ++number);
    }

    void fromNothingToTheNewest()
    {
        QVERIFY(migrate(*m_database, migrations()).ok());
        QCOMPARE(answer("PRAGMA user_version"), QString::number(migrations().back().versionNumber));
        QVERIFY(migrate(*m_database, migrations()).ok());
        QCOMPARE(answer("SELECT count(*) FROM entries"), "0");
    }

    void onlyTheStepsThatAreWantingAreTaken()
    {
        const std::vector<Migration> both{{1, layout1}, second("CREATE TABLE two(a); INSERT INTO two VALUES(1)")};
        QVERIFY(migrate(*m_database, std::span(both).first(1)).ok());
        m_database->runScript("INSERT INTO drafts VALUES('desk', x'01')");
        QVERIFY(migrate(*m_database, both).ok());
        QCOMPARE(answer("SELECT count(*) FROM drafts"), "1");
        QCOMPARE(answer("SELECT count(*) FROM two"), "1");
        QVERIFY(migrate(*m_database, both).ok());
        QCOMPARE(answer("SELECT count(*) FROM two"), "1");
    }

    void aStepThatFailsLeavesTheOldLayout()
    {
        QVERIFY(migrate(*m_database, migrations()).ok());
        const std::vector<Migration> both{{1, layout1}, second("CREATE TABLE two(a); DROP TABLE drafts; INSERT INTO nowhere VALUES(1)")};
        QCOMPARE(migrate(*m_database, both).code(), Code::MigrationStoppedOldVaultStands);
        QCOMPARE(answer("PRAGMA user_version"), "1");
        QCOMPARE(answer("SELECT count(*) FROM drafts"), "0");
        QCOMPARE(answer("SELECT count(*) FROM sqlite_master WHERE name='two'"), "0");
    }

    void aNewerLayoutIsRefused()
    {
        m_database->runScript("PRAGMA user_version=2");
        QCOMPARE(migrate(*m_database, migrations()).code(), Code::NewerVersionUpdateApp);
        QCOMPARE(answer("SELECT count(*) FROM sqlite_master"), "0");
    }
};

QTEST_APPLESS_MAIN(TestMigrations)
#include "test_migrations.moc"
