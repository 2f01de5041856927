// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/work/keeping/post.h"
#include "tests/core/vault/vaulting.h"

#include <thread>

using namespace vaulting;

namespace {

seal::SecretText secret(std::string_view text)
{
    seal::SecretText typed;
    return typed.append(text) ? std::move(typed) : seal::SecretText();
}

}

class TestAccess : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<Post> m_post;
    std::unique_ptr<Place> m_place;
    std::unique_ptr<VaultAccess> m_access;

    template <typename T, typename Call>
    Outcome<T> await(const Call& call)
    {
        std::optional<Outcome<T>> result;
        call([&result](Outcome<T> outcome) { result.emplace(std::move(outcome)); });
        while (!result)
            m_post->takeOne();
        return *std::move(result);
    }
    Outcome<Opened> create(std::string_view passphrase = "a squad of nine")
    {
        return await<Opened>([&](auto done) {
            m_access->create(m_place->folder(), {secret(passphrase), *seal::RecoveryCode::generate(seededRandom(3)), seal::weakestStretch, everything()}, done);
        });
    }
    Outcome<Opened> unlock(seal::Opener way)
    {
        return await<Opened>([&](auto done) { m_access->unlock(m_place->folder(), std::move(way), everything(), done); });
    }
    Outcome<Kept> keep(std::vector<journal::Draft> drafts)
    {
        return await<Kept>([&](auto done) { m_access->keep(std::move(drafts), done); });
    }
    Outcome<Done> lock()
    {
        return await<Done>([&](auto done) { m_access->lock(done); });
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void init()
    {
        m_access.reset();
        m_post = std::make_unique<Post>();
        m_place = std::make_unique<Place>();
        m_place->surroundings.post = m_post->executor();
        m_access = std::make_unique<VaultAccess>(m_place->surroundings);
    }

    void everyWayIn()
    {
        QVERIFY(create().ok());
        QVERIFY(keep({fieldOf(1, 1, "Ada")}).ok());
        QVERIFY(lock().ok());
        QCOMPARE(unlock(byPassphrase(secret("a squad of ten!"))).code(), Code::WrongSecretTypeAgain);
        const auto opened = unlock(byPassphrase(secret("a squad of nine")));
        QCOMPARE(opened->snapshot.heads.size(), 1U);
        QVERIFY(lock().ok());
        QVERIFY(unlock(byRecoveryCode(*seal::RecoveryCode::generate(seededRandom(3)))).ok());
    }

    void aShortPassphraseIsRefused()
    {
        QCOMPARE(create("eleven char").code(), Code::SecretUnfitTypeAgain);
        QVERIFY(!QFile::exists(m_place->dir.filePath("vault")));
    }

    void nothingWithoutAnOpenVault()
    {
        QCOMPARE(keep({fieldOf(1, 1, "Ada")}).code(), Code::LockedUnlockFirst);
        QCOMPARE(await<Done>([&](auto done) { m_access->saveDraft("desk", content("x"), done); }).code(), Code::LockedUnlockFirst);
        QCOMPARE(await<std::vector<Record>>([&](auto done) { m_access->read({}, Urgency::Page, done); }).code(), Code::LockedUnlockFirst);
        QVERIFY(lock().ok());
    }

    void oneVaultAtATime()
    {
        QVERIFY(create().ok());
        QCOMPARE(create().code(), Code::OpenAlreadyLockFirst);
        QCOMPARE(unlock(byPassphrase(secret("a squad of nine"))).code(), Code::OpenAlreadyLockFirst);
    }

    void lockingWaitsForWhatIsToBeKept()
    {
        QVERIFY(create().ok());
        std::vector<int> order;
        for (int count = 0; count < 5; ++count)
            m_access->keep({fieldOf(1, static_cast<std::uint32_t>(count), "x")}, [&order](const Outcome<Kept>& kept) { order.push_back(kept ? 1 : 0); });
        m_access->saveDraft("desk", content("half"), [&order](const Outcome<Done>& saved) { order.push_back(saved ? 2 : 0); });
        QVERIFY(lock().ok());
        QCOMPARE(order, (std::vector{1, 1, 1, 1, 1, 2}));
        const auto opened = unlock(byPassphrase(secret("a squad of nine")));
        QCOMPARE(opened->snapshot.heads.size(), 5U);
        QCOMPARE(opened->drafts.size(), 1U);
    }

    void theEndKeepsWhatWasAskedFor()
    {
        QVERIFY(create().ok());
        for (std::uint32_t count = 0; count < 5; ++count)
            m_access->keep({fieldOf(1, count, "x")}, {});
        m_access.reset();
        m_access = std::make_unique<VaultAccess>(m_place->surroundings);
        QCOMPARE(unlock(byPassphrase(secret("a squad of nine")))->snapshot.heads.size(), 5U);
    }

    void keepingGoesBetweenTheSlicesOfARead()
    {
        QVERIFY(create().ok());
        std::vector<journal::Draft> drafts;
        for (unsigned record = 0; record < 4'000; ++record)
            drafts.push_back(addedTo(1, record, static_cast<int>(record % 300), "kg"));
        QVERIFY(keep(std::move(drafts)).ok());
        std::vector<std::string> order;
        std::size_t backgroundCount = 0;
        const Query all{{journal::RecordKind::BodySize}, std::nullopt, std::chrono::sys_days::min(), std::chrono::sys_days::max()};
        m_access->read(all, Urgency::Background, [&](const Outcome<std::vector<Record>>& read) {
            order.emplace_back("background");
            backgroundCount = read->size();
        });
        m_access->read(all, Urgency::Page, [&](const auto&) { order.emplace_back("page"); });
        m_access->keep({fieldOf(1, 1, "x")}, [&](const auto&) { order.emplace_back("kept"); });
        while (order.size() < 3)
            m_post->takeOne();
        QCOMPARE(order, (std::vector<std::string>{"kept", "page", "background"}));
        QCOMPARE(backgroundCount, 4'000U);
        QVERIFY(await<Done>([&](auto done) { m_access->checkAll(done); }).ok());
        QVERIFY(lock().ok());
        QVERIFY(!unlock(byPassphrase(secret("a squad of nine")))->findings.checkDue);
    }

    void aReadDoesNotOutliveItsVault()
    {
        QVERIFY(create().ok());
        std::vector<journal::Draft> drafts;
        for (unsigned record = 0; record < 4'000; ++record)
            drafts.push_back(addedTo(1, record, 0, "kg"));
        QVERIFY(keep(std::move(drafts)).ok());
        std::optional<Code> code;
        m_access->read({{journal::RecordKind::BodySize}, std::nullopt, std::chrono::sys_days::min(), std::chrono::sys_days::max()}, Urgency::Page,
            [&code](const Outcome<std::vector<Record>>& read) { code = read ? std::nullopt : std::optional(read.code()); });
        QVERIFY(lock().ok());
        while (!code)
            m_post->takeOne();
        QCOMPARE(code, Code::LockedUnlockFirst);
    }

    void resultsComeOnTheThreadTheyAreWantedOn()
    {
        const std::thread::id here = std::this_thread::get_id();
        std::optional<std::thread::id> there;
        m_access->look(m_place->folder(), [&there](const Look&) { there = std::this_thread::get_id(); });
        while (!there)
            m_post->takeOne();
        QVERIFY(*there == here);
    }
};

QTEST_APPLESS_MAIN(TestAccess)
#include "test_access.moc"
