// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/vaultkeeper.h"

#include "core/work/keeping/post.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepkititem.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/undo.h"
#include "core/work/waiting/draftkeeper.h"
#include "tests/core/vault/vaulting.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;

namespace {

seal::SecretText passphrase()
{
    seal::SecretText typed;
    return typed.append("a squad of nine") ? std::move(typed) : seal::SecretText();
}

/// The app's way from a vault to the book and back, without an interface.
struct Sitting {
    explicit Sitting(const std::filesystem::path& folder, const std::filesystem::path& install, bool first)
        : access({post.executor(), [] { return vaulting::noon(); }, seal::systemRandom(), install}), keeper(access),
          keeping(book, keeper, [next = first ? 100U : 200U]() mutable { return numberedids::numbered(++next); },
                  [] { return Here{std::chrono::sys_days(std::chrono::days(20'000)), "Etc/UTC"}; })
    {
        std::optional<vault::Refusal> refusal;
        bool answered = false;
        const auto done = [&](vault::Outcome<vault::Opened> outcome) {
            answered = true;
            if (outcome) {
                book.load(outcome->snapshot);
                unread = drafts.begin(outcome->drafts);
            } else {
                refusal = outcome.refusal();
            }
        };
        if (first)
            access.create(folder, {passphrase(), *seal::RecoveryCode::generate(seal::systemRandom()), seal::weakestStretch, SeasonBook::wanted()}, done);
        else
            access.unlock(folder, vault::byPassphrase(passphrase()), SeasonBook::wanted(), done);
        while (!answered)
            post.takeOne();
        open = !refusal;
    }
    [[nodiscard]] WhenTold told()
    {
        last.reset();
        return [this](const Told& how) { last = how; };
    }
    /// The answer to what was asked for.
    [[nodiscard]] Told answer()
    {
        while (!last)
            post.takeOne();
        return *last;
    }
    bool lock()
    {
        drafts.flush();
        std::optional<bool> locked;
        access.lock([&locked](const vault::Outcome<vault::Done>& done) { locked = done.ok(); });
        while (!locked)
            post.takeOne();
        drafts.end();
        return *locked;
    }

    Post post;
    vault::VaultAccess access;
    VaultKeeper keeper;
    SeasonBook book;
    SeasonKeeping keeping;
    Desk desk{numberedids::counted()};
    DraftKeeper drafts{desk, keeper, [](std::chrono::milliseconds, const std::function<void()>&) {}};
    std::set<std::string> unread;
    std::optional<Told> last;
    bool open = false;
};

}

/// Use-cases over a real vault: what was told to be kept is there when it is opened again.
class VaultKeeperTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void keptIsThereAgain();
    void halfTypedIsThereAgain();
    void lockedVaultRefuses();
};

void VaultKeeperTest::keptIsThereAgain()
{
    const vaulting::Place place;
    Athlete athlete;
    athlete.name = "Ines";
    athlete.birthYear = std::chrono::year(1999);
    athlete.marks[LiftId{1}] = samples::marks(0.77, 1.27);
    KitRecord chain;
    SavedSetup setup;
    {
        Sitting first(place.folder(), place.surroundings.installFolder, true);
        QVERIFY(first.open);
        keepAthlete(first.keeping, athlete, first.told());
        QVERIFY(first.answer().kept());
        athlete = *first.book.athlete(first.last->id);
        keepBodySize(first.keeping, athlete.id, {{}, std::chrono::sys_days(std::chrono::days(19'990)), kilograms(61.5), std::nullopt}, first.told());
        QVERIFY(first.answer().kept());
        athlete = *first.book.athlete(athlete.id);
        keepKitItem(first.keeping, samples::item(0, "Chain", samples::weighed()), first.told());
        QVERIFY(first.answer().kept());
        KitItem item = first.book.item(first.last->id)->item;
        item.measurement = samples::gauged();
        keepKitItem(first.keeping, item, first.told());
        QVERIFY(first.answer().kept());
        chain = *first.book.item(item.id);
        keepSetup(first.keeping, {{}, athlete.id, LiftId{1}, samples::setup(60, {{item.id, HungOn::BothSides, samples::chainOn(0.8)}}), {}}, first.told());
        QVERIFY(first.answer().kept());
        setup = *first.book.setup(first.last->id);
        athlete.squad = "taken back";
        keepAthlete(first.keeping, athlete, first.told());
        QVERIFY(first.answer().kept());
        undo(first.keeping, 0, first.told());
        QVERIFY(first.answer().kept());
        athlete.squad.clear();
        QVERIFY(first.lock());
    }
    Sitting second(place.folder(), place.surroundings.installFolder, false);
    QVERIFY(second.open);
    QVERIFY(*second.book.athlete(athlete.id) == athlete);
    QCOMPARE(chain.measurements.size(), std::size_t(2));
    QVERIFY(*second.book.item(chain.item.id) == chain);
    QVERIFY(*second.book.setup(setup.id) == setup);
    QCOMPARE(second.book.unreadCount(), std::size_t(0));
    QVERIFY(second.book.review().empty());
    // what is kept on goes on from what was there
    athlete.squad = "Women";
    keepAthlete(second.keeping, athlete, second.told());
    QVERIFY(second.answer().kept());
    QVERIFY(second.book.review().empty());
    QVERIFY(second.lock());
}

void VaultKeeperTest::halfTypedIsThereAgain()
{
    const vaulting::Place place;
    {
        Sitting first(place.folder(), place.surroundings.installFolder, true);
        first.desk.setMarks(samples::marks(0.77, 1.27));
        first.desk.setDraft(samples::item(0, "New chain", samples::weighed()));
        QVERIFY(first.lock());
    }
    Sitting second(place.folder(), place.surroundings.installFolder, false);
    QVERIFY(second.unread.empty());
    QVERIFY(second.desk.marks() == samples::marks(0.77, 1.27));
    QVERIFY(*second.desk.draft({}, ItemKind::Chain) == samples::item(0, "New chain", samples::weighed()));
    QVERIFY(second.book.kit().empty());
    second.desk.throwDraft({}, ItemKind::Chain);
    QVERIFY(second.lock());
}

void VaultKeeperTest::lockedVaultRefuses()
{
    const vaulting::Place place;
    Sitting first(place.folder(), place.surroundings.installFolder, true);
    QVERIFY(first.lock());
    Athlete athlete;
    athlete.name = "Ines";
    keepAthlete(first.keeping, athlete, first.told());
    QVERIFY(first.answer().refusal && first.last->refusal->code == vault::Code::LockedUnlockFirst);
    QVERIFY(first.book.athletes().empty());
}

QTEST_APPLESS_MAIN(VaultKeeperTest)
#include "test_vaultkeeper.moc"
