// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/sample/samplevault.h"
#include "core/work/keeping/vaultkeeper.h"
#include "tests/core/sample/marrowhill.h"
#include "tests/core/vault/vaulting.h"

#include <QtTest>

#include <future>
#endif

using namespace steelyard;
using namespace steelyard::sample;

namespace {

/// The vault's own thread answers, and the test waits.
class Asked {
public:
    explicit Asked(std::filesystem::path install)
        : m_access({[](const std::function<void()>& work) { work(); }, [] { return vaulting::noon(); }, seal::systemRandom(), std::move(install)})
    {
    }
    vault::Look look(const std::filesystem::path& folder)
    {
        std::promise<vault::Look> answer;
        m_access.look(folder, [&](vault::Look look) { answer.set_value(std::move(look)); });
        return answer.get_future().get();
    }
    vault::Outcome<vault::Opened> unlock(const std::filesystem::path& folder, std::string_view secret)
    {
        seal::SecretText text;
        (void)text.append(secret);
        return got<vault::Opened>([&](auto done) { m_access.unlock(folder, vault::byPassphrase(std::move(text)), SeasonBook::wanted(), done); });
    }
    vault::Outcome<vault::Opened> create(const std::filesystem::path& folder)
    {
        seal::SecretText text;
        (void)text.append("a squad of nine");
        vault::NewVault how{std::move(text), *seal::RecoveryCode::generate(seal::systemRandom()), seal::weakestStretch, SeasonBook::wanted()};
        return got<vault::Opened>([&](auto done) { m_access.create(folder, std::move(how), done); });
    }
    vault::Outcome<vault::Done> remove(const std::filesystem::path& folder)
    {
        return got<vault::Done>([&](auto done) { m_access.removeSample(folder, done); });
    }
    void lock()
    {
        (void)got<vault::Done>([&](auto done) { m_access.lock(done); });
    }

private:
    template <typename Value, typename Ask>
    vault::Outcome<Value> got(const Ask& ask)
    {
        auto answer = std::make_shared<std::promise<vault::Outcome<Value>>>();
        auto coming = answer->get_future();
        ask(vault::WhenDone<Value>([answer](vault::Outcome<Value> outcome) { answer->set_value(std::move(outcome)); }));
        return coming.get();
    }

    vault::VaultAccess m_access;
};

Site siteIn(const vaulting::Place& place)
{
    return {place.folder(), place.surroundings.installFolder};
}

}

/// A sample vault is a true one, says what it is, and can be taken away; a vault of somebody's own cannot.
class SampleVaultTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void opensWithItsPassphrase();
    void isThereOrIsNot();
    void goesInOneStep();
    void ownVaultIsLeftAlone();
    void openVaultIsLeftAlone();
};

void SampleVaultTest::opensWithItsPassphrase()
{
    const vaulting::Place place;
    const Season season = marrowhill::season();
    const auto trouble = makeSampleVault(siteIn(place), season, marrowhill::today);
    QVERIFY(!trouble);
    Asked asked(place.surroundings.installFolder);
    const vault::Look look = asked.look(place.folder());
    QVERIFY(look.standing == vault::Standing::Locked && look.nature == seal::VaultNature::Sample);
    QVERIFY(asked.unlock(place.folder(), "marrow hill is no example").code() == vault::Code::WrongSecretTypeAgain);
    const auto opened = asked.unlock(place.folder(), sample::passphrase);
    QVERIFY(opened.ok());
    QVERIFY(opened->nature == seal::VaultNature::Sample);
    // nothing about it is out of the ordinary
    QVERIFY(!opened->findings.movedHere && opened->findings.witness == vault::WitnessState::Agrees && opened->findings.entriesMissingCount == 0);
    QVERIFY(opened->drafts.empty());
    SeasonBook book;
    book.load(opened->snapshot);
    QCOMPARE(book.athletes().size(), season.people.size());
    QCOMPARE(book.kit().size(), season.kit.size());
    QCOMPARE(book.unreadCount(), std::size_t(0));
}

void SampleVaultTest::isThereOrIsNot()
{
    const vaulting::Place place;
    Season season = marrowhill::season();
    season.people.back().athlete.name.clear();
    const auto trouble = makeSampleVault(siteIn(place), season, marrowhill::today);
    QVERIFY(trouble && trouble->notKept && trouble->notKept->told.unfit == Unfit::NameMissing);
    QVERIFY(!std::filesystem::exists(place.folder()));
    // what an earlier try left behind is in nobody's way
    std::filesystem::create_directories(place.folder().string() + ".part");
    QVERIFY(!makeSampleVault(siteIn(place), marrowhill::season(), marrowhill::today));
    QVERIFY(!std::filesystem::exists(place.folder().string() + ".part"));
    const auto again = makeSampleVault(siteIn(place), marrowhill::season(), marrowhill::today);
    QVERIFY(again && again->refusal && again->refusal->code == vault::Code::VaultThereUnlockIt);
}

void SampleVaultTest::goesInOneStep()
{
    const vaulting::Place place;
    QVERIFY(!makeSampleVault(siteIn(place), marrowhill::season(), marrowhill::today));
    QVERIFY(!std::filesystem::is_empty(place.surroundings.installFolder));
    Asked asked(place.surroundings.installFolder);
    QVERIFY(asked.remove(place.folder()).ok());
    QVERIFY(!std::filesystem::exists(place.folder()));
    QVERIFY(!std::filesystem::exists(place.folder().string() + ".gone"));
    QVERIFY(std::filesystem::is_empty(place.surroundings.installFolder));
    QVERIFY(asked.look(place.folder()).standing == vault::Standing::None);
}

void SampleVaultTest::ownVaultIsLeftAlone()
{
    const vaulting::Place place;
    Asked asked(place.surroundings.installFolder);
    const auto created = asked.create(place.folder());
    QVERIFY(created.ok() && created->nature == seal::VaultNature::Own);
    asked.lock();
    QVERIFY(asked.look(place.folder()).nature == seal::VaultNature::Own);
    QVERIFY(asked.remove(place.folder()).code() == vault::Code::SampleMarkMissingLeaveIt);
    QVERIFY(asked.unlock(place.folder(), "a squad of nine").ok());
    // neither does a sample take its place
    const auto trouble = makeSampleVault(siteIn(place), marrowhill::season(), marrowhill::today);
    QVERIFY(trouble && trouble->refusal->code == vault::Code::VaultThereUnlockIt);
}

void SampleVaultTest::openVaultIsLeftAlone()
{
    const vaulting::Place place;
    QVERIFY(!makeSampleVault(siteIn(place), marrowhill::season(), marrowhill::today));
    Asked here(place.surroundings.installFolder), elsewhere(place.surroundings.installFolder);
    QVERIFY(here.unlock(place.folder(), sample::passphrase).ok());
    QVERIFY(here.remove(place.folder()).code() == vault::Code::OpenAlreadyLockFirst);
    QVERIFY(elsewhere.remove(place.folder()).code() == vault::Code::SecondInstanceCloseOther);
    here.lock();
    QVERIFY(here.remove(place.folder()).ok());
}

QTEST_APPLESS_MAIN(SampleVaultTest)
#include "test_samplevault.moc"
