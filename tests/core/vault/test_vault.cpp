// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/vault/vaulting.h"

#include <QDir>

using namespace vaulting;

namespace {

std::vector<std::string> contents(const Snapshot& snapshot)
{
    std::vector<std::string> texts;
    for (const Head& head : snapshot.heads)
        texts.emplace_back(reinterpret_cast<const char*>(head.held.body.content.data()) + 1, head.held.body.content.size() - 1);
    std::sort(texts.begin(), texts.end());
    return texts;
}

using Texts = std::vector<std::string>;

}

class TestVault : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<Place> m_place;

    void createWith(const std::vector<journal::Draft>& drafts) const
    {
        const auto vault = m_place->create();
        QVERIFY(vault.ok());
        for (const journal::Draft& draft : drafts) {
            QVERIFY((*vault)->keep({draft}).ok());
            (*vault)->witness();
        }
    }
    void spoil(const QString& name, qsizetype at) const
    {
        QByteArray bytes = m_place->bytes(name);
        bytes[at] = static_cast<char>(bytes[at] ^ 1);
        m_place->put(name, bytes);
    }
    [[nodiscard]] std::optional<Code> codeOfUnlocking(unsigned key = 1) const
    {
        const auto vault = m_place->unlock(key);
        return vault ? std::nullopt : std::optional(vault.code());
    }
    [[nodiscard]] Code codeOfLook() const { return Vault::look(m_place->folder()).trouble.value().code; }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void init() { m_place = std::make_unique<Place>(); }

    void nothingThereYet()
    {
        QCOMPARE(Vault::look(m_place->folder()).standing, Standing::None);
        QCOMPARE(codeOfUnlocking(), Code::NoVaultHereCreateOne);
        QVERIFY(!QFile::exists(m_place->dir.filePath("vault")));
    }

    void keptIsThereAfterUnlocking()
    {
        createWith({fieldOf(1, 1, "Ada"), fieldOf(1, 2, "junior"), fieldOf(2, 1, "Bo")});
        QCOMPARE(Vault::look(m_place->folder()).standing, Standing::Locked);
        const auto vault = m_place->unlock();
        QVERIFY(vault.ok());
        const auto opened = (*vault)->opened(everything());
        QVERIFY(opened.ok());
        QCOMPARE(contents(opened->snapshot), (Texts{"Ada", "Bo", "junior"}));
        QCOMPARE(opened->snapshot.entryCount, std::uint64_t{3});
        QCOMPARE(opened->findings.witness, WitnessState::Agrees);
        QVERIFY(!opened->findings.movedHere && !opened->findings.keyFileHealed && !opened->findings.reserveMissing);
    }

    void onlyTheKindsAskedForAreLoaded()
    {
        const auto vault = m_place->create();
        QVERIFY((*vault)->keep({fieldOf(1, 1, "Ada"), addedTo(1, 9, 3, "80 kg")}).ok());
        const auto people = (*vault)->opened({{journal::RecordKind::Athlete}});
        QCOMPARE(people->snapshot.heads.size(), 1U);
        QVERIFY(people->snapshot.added.empty());
        const auto sizes = (*vault)->opened({{journal::RecordKind::BodySize}});
        QVERIFY(sizes->snapshot.heads.empty());
        QCOMPARE(sizes->snapshot.added.size(), 1U);
    }

    void whatIsReplacedIsNoHead()
    {
        const auto vault = m_place->create();
        const auto first = (*vault)->keep({fieldOf(1, 1, "Ada")});
        QVERIFY((*vault)->keep({fieldOf(1, 1, "Ida", {first->entries[0].id})}).ok());
        QCOMPARE(contents((*vault)->opened(everything())->snapshot), (Texts{"Ida"}));
    }

    void aBatchIsKeptWholeOrNotAtAll()
    {
        const auto vault = m_place->create();
        journal::Draft huge = fieldOf(1, 2, "x");
        huge.part = std::string(70'000, 'x');
        QCOMPARE((*vault)->keep({fieldOf(1, 1, "Ada"), huge}).code(), Code::DraftUnfitShorten);
        QVERIFY(contents((*vault)->opened(everything())->snapshot).empty());
        const auto next = (*vault)->keep({fieldOf(1, 1, "Ada")});
        QCOMPARE(next->entries[0].sequenceNumber, std::uint64_t{1});
    }

    void nothingIsWrittenAboutAnErasedAthlete()
    {
        const auto vault = m_place->create();
        QVERIFY((*vault)->keep({fieldOf(1, 1, "Ada"), addedTo(1, 9, 3, "80 kg"), fieldOf(2, 1, "Bo")}).ok());
        journal::Draft erased = fieldOf(1, 0, "");
        erased.kind = journal::Kind::Erased;
        erased.content.clear();
        QVERIFY((*vault)->keep({erased}).ok());
        QCOMPARE((*vault)->keep({fieldOf(1, 1, "Ada")}).code(), Code::AthleteErasedStartAnew);
        const auto opened = (*vault)->opened(everything());
        QVERIFY(opened->snapshot.added.empty());
        QCOMPARE(opened->snapshot.erasedAthletes, std::vector{recordId(1)});
        QCOMPARE((*vault)->store().database().answer("SELECT count(*) FROM entries WHERE payload IS NULL").value_or(""), std::string("2"));
    }

    void draftsComeBackUntilTheyAreRemoved()
    {
        {
            const auto vault = m_place->create();
            QVERIFY((*vault)->saveDraft("desk", content("half")).ok());
            QVERIFY((*vault)->saveDraft("desk", content("half typed")).ok());
            QVERIFY((*vault)->saveDraft("item", content("gone")).ok());
            QVERIFY((*vault)->saveDraft("item", std::nullopt).ok());
        }
        const auto vault = m_place->unlock();
        QCOMPARE((*vault)->opened({})->drafts, (Drafts{{"desk", content("half typed")}}));
    }

    void wrongSecretAndDamageAreToldApart()
    {
        createWith({fieldOf(1, 1, "Ada")});
        QCOMPARE(codeOfUnlocking(5), Code::WrongSecretTypeAgain);
        spoil("vault-1.db", 200);
        QCOMPARE(codeOfUnlocking(5), Code::WrongSecretTypeAgain);
        const auto damaged = m_place->unlock();
        QCOMPARE(damaged.code(), Code::PageDamagedRestoreBackup);
        QCOMPARE(damaged.refusal().entryCount, std::uint64_t{1});
    }

    void eachTroubleOfTheFileHasItsCode()
    {
        createWith({fieldOf(1, 1, "Ada")});
        const QByteArray whole = m_place->bytes("vault-1.db");
        m_place->put("vault-1.db", {});
        QCOMPARE(codeOfUnlocking(), Code::DatabaseEmptyRestoreBackup);
        QCOMPARE(codeOfLook(), Code::DatabaseEmptyRestoreBackup);
        m_place->put("vault-1.db", whole.chopped(100));
        QCOMPARE(codeOfUnlocking(), Code::DatabaseTornRestoreBackup);
        QFile::remove(m_place->file("vault-1.db"));
        QCOMPARE(codeOfUnlocking(), Code::DatabaseMissingRestoreBackup);
        m_place->put("vault-1.db", whole);
        QCOMPARE(codeOfUnlocking(), std::nullopt);
        QFile::remove(m_place->file("vault.key"));
        QFile::remove(m_place->file("vault.key.2"));
        QCOMPARE(codeOfUnlocking(), Code::KeyFileMissingFindFolder);
        QCOMPARE(codeOfLook(), Code::KeyFileMissingFindFolder);
        QCOMPARE(m_place->create().code(), Code::VaultThereUnlockIt);
    }

    void aNewerLayoutIsLeftAlone()
    {
        {
            const auto vault = m_place->create();
            (*vault)->store().database().runScript("PRAGMA user_version=99");
        }
        const QByteArray before = m_place->bytes("vault-1.db");
        QCOMPARE(codeOfUnlocking(), Code::NewerVersionUpdateApp);
        QCOMPARE(m_place->bytes("vault-1.db"), before);
    }

    void oneInstanceAtATime()
    {
        const auto first = m_place->create();
        QVERIFY(first.ok());
        QCOMPARE(codeOfUnlocking(), Code::SecondInstanceCloseOther);
        QCOMPARE(codeOfLook(), Code::SecondInstanceCloseOther);
    }

    void nothingIsCreatedOverAVault()
    {
        createWith({fieldOf(1, 1, "Ada")});
        QCOMPARE(m_place->create(2).code(), Code::VaultThereUnlockIt);
        QCOMPARE(codeOfUnlocking(), std::nullopt);
    }

    void aDamagedKeyFileIsHealedFromTheOther()
    {
        createWith({});
        const QByteArray whole = m_place->bytes("vault.key");
        spoil("vault.key", 80);
        const auto vault = m_place->unlock();
        QVERIFY((*vault)->opened({})->findings.keyFileHealed);
        QCOMPARE(m_place->bytes("vault.key"), whole);
    }

    void anOlderDatabaseIsNoticedAndWritesAChainOfItsOwn()
    {
        createWith({fieldOf(1, 1, "Ada")});
        const QByteArray older = m_place->bytes("vault-1.db");
        {
            const auto vault = m_place->unlock();
            QVERIFY((*vault)->keep({fieldOf(2, 1, "Bo"), fieldOf(3, 1, "Cy")}).ok());
        }
        m_place->put("vault-1.db", older);
        const auto vault = m_place->unlock();
        const Findings findings = (*vault)->opened({})->findings;
        QCOMPARE(findings.witness, WitnessState::DatabaseBehind);
        QCOMPARE(findings.entriesMissingCount, std::uint64_t{2});
        const auto kept = (*vault)->keep({fieldOf(4, 1, "Di")});
        QCOMPARE(kept->entries[0].sequenceNumber, std::uint64_t{1});
        QVERIFY(kept->entries[0].chain.incarnationNumber != 1);
    }

    void aDatabaseAheadOfItsWitnessIsAsUsual()
    {
        createWith({fieldOf(1, 1, "Ada")});
        const QByteArray a = m_place->bytes("witness.a");
        const QByteArray b = m_place->bytes("witness.b");
        {
            const auto vault = m_place->unlock();
            QVERIFY((*vault)->keep({fieldOf(2, 1, "Bo")}).ok());
        }
        m_place->put("witness.a", a);
        m_place->put("witness.b", b);
        {
            const auto vault = m_place->unlock();
            QCOMPARE((*vault)->opened({})->findings.witness, WitnessState::DatabaseAhead);
        }
        const auto vault = m_place->unlock();
        QCOMPARE((*vault)->opened({})->findings.witness, WitnessState::Agrees);
        QCOMPARE((*vault)->keep({fieldOf(2, 2, "x")})->entries[0].chain.incarnationNumber, 1U);
    }

    void aTornOrForgedWitnessGivesWayToTheOther()
    {
        createWith({fieldOf(1, 1, "Ada"), fieldOf(2, 1, "Bo")});
        for (const char* const name : {"witness.a", "witness.b"}) {
            const QByteArray whole = m_place->bytes(name);
            spoil(name, 30);
            const auto vault = m_place->unlock();
            const WitnessState state = (*vault)->opened({})->findings.witness;
            QVERIFY(state == WitnessState::Agrees || state == WitnessState::DatabaseAhead);
            m_place->put(name, whole);
        }
        QFile::remove(m_place->file("witness.a"));
        QFile::remove(m_place->file("witness.b"));
        const auto vault = m_place->unlock();
        QCOMPARE((*vault)->opened({})->findings.witness, WitnessState::Missing);
    }

    void aCopiedFolderWritesAChainOfItsOwn()
    {
        createWith({fieldOf(1, 1, "Ada")});
        const auto copyWrites = [this](const QString& install) {
            Surroundings other = m_place->surroundings;
            other.installFolder = m_place->dir.filePath(install).toStdString();
            const auto vault = Vault::unlock(m_place->folder(), opener(), other);
            QVERIFY((*vault)->opened({})->findings.movedHere);
            const auto kept = (*vault)->keep({fieldOf(2, 1, "Bo")});
            QVERIFY(kept->entries[0].chain.incarnationNumber != 1);
            QCOMPARE(kept->entries[0].sequenceNumber, std::uint64_t{1});
        };
        copyWrites("elsewhere");
        const auto vault = m_place->unlock();
        QVERIFY((*vault)->opened({})->findings.movedHere);
    }

    void theClockGoesOnWhereItWas()
    {
        createWith({fieldOf(1, 1, "Ada")});
        const auto vault = m_place->unlock();
        m_place->now = noon(-400);
        const auto kept = (*vault)->keep({fieldOf(1, 2, "x")});
        QVERIFY(kept->entries[0].body.stamp.clock.wall >= noon());
        QVERIFY(kept->entries[0].body.stamp.doubtful);
    }

    void theReserveIsThereAndComesBack()
    {
        createWith({});
        QCOMPARE(m_place->bytes("reserve.bin").size(), qsizetype{2 * 1024 * 1024});
        QFile::remove(m_place->file("reserve.bin"));
        QCOMPARE(codeOfUnlocking(), std::nullopt);
        QVERIFY(QFile::exists(m_place->file("reserve.bin")));
    }

    void foldersThatAreCarriedAreRefused_data()
    {
        QTest::addColumn<QString>("folder");
        QTest::addColumn<QString>("marker");
        QTest::addColumn<bool>("refused");
        QTest::newRow("plain") << "squad/vault" << "" << false;
        QTest::newRow("word at the end") << "FolderSync/vault" << "" << true;
        QTest::newRow("word at the beginning") << "cloud files/vault" << "" << true;
        QTest::newRow("another word") << "async-notes/vault" << "" << false;
        QTest::newRow("marker above") << "squad/vault" << "squad/.stfolder" << true;
        QTest::newRow("marker of another kind") << "squad/vault" << "squad/vault/.sync" << true;
        QTest::newRow("settings of something") << "squad/vault" << "squad/.gcloud" << false;
    }
    void foldersThatAreCarriedAreRefused()
    {
        QFETCH(QString, folder);
        QFETCH(QString, marker);
        QFETCH(bool, refused);
        QVERIFY(QDir(m_place->dir.path()).mkpath(folder));
        if (!marker.isEmpty())
            QVERIFY(QDir(m_place->dir.path()).mkpath(marker));
        const auto made = Vault::create(m_place->dir.filePath(folder).toStdString(), newRing(), m_place->surroundings);
        QCOMPARE(made.ok(), !refused);
        if (refused)
            QCOMPARE(made.code(), Code::SyncedFolderChooseOther);
    }

    void aFolderThatIsCarriedLaterStillOpens()
    {
        {
            const auto vault = m_place->create();
            QVERIFY(vault.ok());
            const auto opened = (*vault)->opened({});
            QVERIFY(opened.ok() && !opened->findings.folderSynced);
        }
        QVERIFY(QDir(m_place->dir.path()).mkdir(".stfolder"));
        const auto vault = m_place->unlock();
        QVERIFY(vault.ok());
        const auto opened = (*vault)->opened({});
        QVERIFY(opened.ok() && opened->findings.folderSynced);
    }

    void oneRecordIsReadInSlices()
    {
        const auto vault = m_place->create();
        std::vector<journal::Draft> drafts;
        for (unsigned record = 0; record < 40; ++record)
            drafts.push_back(addedTo(1 + record % 2, 100 + record, static_cast<int>(record), "one"));
        QVERIFY((*vault)->keep(drafts).ok());
        journal::Draft right = addedTo(1, 110, 0, "another");
        right.kind = journal::Kind::PutRight;
        QVERIFY((*vault)->keep({right}).ok());
        Vault::Reading reading;
        reading.query = {{journal::RecordKind::Athlete, journal::RecordKind::BodySize}, recordId(1),
            std::chrono::sys_days(std::chrono::days(20'004)), std::chrono::sys_days(std::chrono::days(20'030))};
        int slices = 0;
        for (bool all = false; !all; ++slices) {
            const Outcome<bool> read = (*vault)->readOn(reading, 5);
            QVERIFY(read.ok());
            all = *read;
        }
        QCOMPARE(reading.records.size(), 14U);
        QVERIFY(slices >= 3);
        for (std::size_t at = 0; at < reading.records.size(); ++at) {
            QCOMPARE(reading.records[at].added.body.subject.id, recordId(104 + 2 * static_cast<unsigned>(at)));
            QCOMPARE(reading.records[at].since.size(), at == 3 ? 1U : 0U);
        }
    }
};

QTEST_APPLESS_MAIN(TestVault)
#include "test_vault.moc"
