// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/vault/opening.h"
#include "tests/core/vault/shown.h"

#include <set>

using namespace vaulting;

/// In place of the system's, in this program alone: what is asked here is whether tables are right, not whether they are on the disk.
extern "C" int fdatasync(int)
{
    return 0;
}

namespace {

using journal::Entry;
using journal::EntryId;
using journal::Held;
using journal::Kind;
using Engine = std::mt19937;

unsigned below(Engine& engine, unsigned bound)
{
    return static_cast<unsigned>(engine() % bound);
}

/// A device that writes entries about few athletes and records, with ids it has seen, has not seen, or that belong elsewhere.
struct Writer {
    journal::ChainEnd end;
    std::vector<Entry> waiting; ///< written, and not yet with the vault
};

journal::Draft randomDraft(Engine& engine, const std::vector<EntryId>& ids)
{
    journal::Draft draft = fieldOf(below(engine, 4), below(engine, 3), std::string(1, static_cast<char>('a' + below(engine, 26))));
    const unsigned kind = below(engine, 60);
    if (kind == 0) {
        draft.kind = Kind::Erased;
        draft.fieldNumber = 0;
        draft.content.clear();
        return draft;
    }
    if (kind < 20) {
        return addedTo(below(engine, 4), 10 + below(engine, 30), static_cast<int>(below(engine, 9)), "kg");
    } else if (kind < 30) {
        draft = addedTo(below(engine, 4), 10 + below(engine, 30), 0, "kg");
        draft.kind = Kind::PutRight;
    } else if (kind < 40) {
        draft.kind = kind < 36 || ids.empty() ? Kind::TagAdded : Kind::TagRemoved;
        draft.fieldNumber = 0;
        draft.part = kind % 2 == 0 ? "bench" : "squat";
        draft.content.clear();
    } else if (kind < 46) {
        draft.kind = Kind::Removed;
        draft.fieldNumber = 0;
        draft.content = {std::byte{0xF5}};
    }
    for (unsigned count = ids.empty() ? 0 : (draft.kind == Kind::TagRemoved ? 1 : 0) + below(engine, 4); count > 0; --count)
        draft.replaces.push_back(ids[below(engine, static_cast<unsigned>(ids.size()))]);
    return draft;
}

std::vector<std::string> table(Database& database, std::string_view question)
{
    std::vector<std::string> rows;
    for (Rows found = database.query(question); found.next();)
        rows.push_back(found->text(0));
    return rows;
}

}

class TestViews : public QObject {
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_dir;

    [[nodiscard]] std::unique_ptr<Store> newStore() const
    {
        const seal::Keyring ring = newRing();
        auto made = createSealed(m_dir->filePath("a.db").toStdString(), *ring.databaseKeyText());
        return *Store::open(*std::move(made), journal::OriginId::of(ring.identity().signing().publicKey()));
    }

    /// What a check of everything says, in slices of so many entries.
    static std::optional<Code> checked(Store& store, std::int64_t slice)
    {
        Store::Checking checking;
        for (int slices = 0; slices < 100; ++slices) {
            const Outcome<bool> all = store.checkOn(checking, slice, noon(9));
            if (!all || *all)
                return all ? std::nullopt : std::optional(all.code());
        }
        return Code::StoppedTryAgain;
    }

private Q_SLOTS:
    void initTestCase() { QVERIFY(seal::start().ok()); }
    void init() { m_dir = std::make_unique<QTemporaryDir>(); }

    // What the tables have to equal is the fold of everything that has arrived, from scratch and in another order, at every step.
    void tablesEqualAFoldFromScratchAtEveryStep_data()
    {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = 1; seed <= 24; ++seed)
            QTest::newRow(qPrintable(QString::number(seed))) << seed;
    }
    void tablesEqualAFoldFromScratchAtEveryStep()
    {
        QFETCH(unsigned, seed);
        Engine engine(seed);
        const seal::RandomSource random = seededRandom(seed);
        const std::unique_ptr<Store> store = newStore();
        std::vector<Writer> writers(3);
        for (Writer& writer : writers)
            random(writer.end.chain.origin.bytes);
        std::vector<EntryId> ids;
        std::vector<Held> arrived;
        int erasures = 0;
        int shownAtMost = 0;
        for (int step = 0; step < 150; ++step) {
            Writer& writer = writers[below(engine, 3)];
            const auto when = noon(static_cast<int>(below(engine, 20'000)) - 10'000);
            const journal::Draft draft = randomDraft(engine, ids);
            const auto entry = journal::nextEntry(writer.end, journal::finished(draft, {{when, below(engine, 3)}, false, {}}), random);
            QVERIFY(entry.ok());
            writer.end = journal::endAt(entry->header);
            ids.push_back(writer.end.id);
            writer.waiting.push_back(*entry);

            Writer& sender = writers[below(engine, 3)];
            std::vector<Entry> some(sender.waiting.begin(), sender.waiting.begin() + below(engine, 1 + static_cast<unsigned>(sender.waiting.size())));
            sender.waiting.erase(sender.waiting.begin(), sender.waiting.begin() + static_cast<std::ptrdiff_t>(some.size()));
            QVERIFY(store->append(some).ok());
            if (below(engine, 5) == 0) {
                std::vector<Held> tried;
                if (store->keep({randomDraft(engine, ids)}, {when, random}, tried).ok()) {
                    ids.push_back(tried[0].id);
                    arrived.push_back(tried[0]);
                }
            }
            for (const Entry& taken : some)
                arrived.push_back(*journal::held(taken));
            std::shuffle(arrived.begin(), arrived.end(), engine);
            journal::Fold fold;
            for (const Held& held : arrived)
                fold.take(held);
            const Shown wanted = shownBy(fold);
            QCOMPARE(shownBy(store->views()), wanted);
            const std::vector<RecordId> erased = store->views().erasedAthletes();
            QVERIFY(std::equal(erased.begin(), erased.end(), fold.erased().begin(), fold.erased().end()));
            erasures = static_cast<int>(erased.size());
            shownAtMost = std::max(shownAtMost, static_cast<int>(wanted.size()));
            QCOMPARE(store->entryCount(), std::uint64_t{arrived.size()});
        }
        QVERIFY(shownAtMost > 10 || erasures > 1);

        for (const std::string& place : table(store->database(), "SELECT place FROM entries WHERE payload NOT NULL")) {
            Rows rows = store->database().query("SELECT substr(payload, 17) FROM entries WHERE place=?", std::int64_t{std::stoll(place)});
            QVERIFY(rows.next());
            const auto body = journal::decodeBody(rows->view(0));
            QVERIFY(body.ok());
            QVERIFY(body->kind == Kind::Erased || !store->views().isErased(body->athlete));
        }
    }

    void madeAnewTheyAreTheSame()
    {
        Engine engine(5);
        const seal::RandomSource random = seededRandom(5);
        const seal::Keyring ring = newRing();
        const journal::OriginId own = journal::OriginId::of(ring.identity().signing().publicKey());
        Shown before;
        {
            const std::unique_ptr<Store> store = newStore();
            std::vector<EntryId> ids;
            for (int step = 0; step < 200; ++step) {
                std::vector<Held> tried;
                if (store->keep({randomDraft(engine, ids)}, {noon(step), random}, tried).ok())
                    ids.push_back(tried[0].id);
            }
            before = shownBy(store->views());
            store->database().run("UPDATE meta SET value=0 WHERE name='views'");
            store->database().run("DELETE FROM heads");
            QVERIFY(store->database().outcome().ok());
        }
        auto opened = openSealed(m_dir->filePath("a.db").toStdString(), *ring.databaseKeyText());
        const auto store = Store::open(*std::move(opened), own);
        QVERIFY(store.ok());
        QVERIFY((*store)->viewsRebuilt());
        QVERIFY(before.size() > 10);
        QCOMPARE(shownBy((*store)->views()), before);
    }

    void aChainThatDoesNotFollowIsNotTaken()
    {
        const std::unique_ptr<Store> store = newStore();
        const seal::RandomSource random = seededRandom(3);
        journal::ChainEnd end;
        random(end.chain.origin.bytes);
        std::vector<Entry> entries;
        for (int count = 0; count < 3; ++count) {
            entries.push_back(*journal::nextEntry(end, journal::finished(fieldOf(1, 1, "x"), {}), random));
            end = journal::endAt(entries.back().header);
        }
        QVERIFY(!store->append({entries[0], entries[2]}).ok());
        QCOMPARE(store->entryCount(), std::uint64_t{0});
        QVERIFY(store->append({entries[0]}).ok());
        QVERIFY(!store->append({entries[0]}).ok());
        QVERIFY(store->append({entries[1], entries[2]}).ok());
        QCOMPARE(store->entryCount(), std::uint64_t{3});
        QVERIFY(store->checkEnds(256).ok());
        QVERIFY(store->checkEnds(2).ok());
        QCOMPARE(checked(*store, 2), std::optional<Code>());
        QCOMPARE(store->lastChecked(), std::optional(noon(9)));
        store->database().run("UPDATE entries SET payload=substr(payload, 1, 20) WHERE place=?", placeOf(1, 1));
        QCOMPARE(checked(*store, 2), std::optional(Code::PageDamagedRestoreBackup));
        store->database().run("UPDATE entries SET payload=NULL WHERE place=?", placeOf(1, 1));
        QCOMPARE(checked(*store, 1), std::optional<Code>());
        store->database().run("DELETE FROM entries WHERE place=?", placeOf(1, 2));
        QCOMPARE(store->checkEnds(256).code(), Code::PageDamagedRestoreBackup);
        QCOMPARE(checked(*store, 1), std::optional(Code::PageDamagedRestoreBackup));
        store->database().run("DELETE FROM entries WHERE place=?", placeOf(1, 3));
        QCOMPARE(checked(*store, 2), std::optional(Code::PageDamagedRestoreBackup));
    }
};

QTEST_APPLESS_MAIN(TestViews)
#include "test_views.moc"
