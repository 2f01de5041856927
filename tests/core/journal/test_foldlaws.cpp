// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/journal/folding.h"

#include <rapidcheck.h>

using namespace journaling;

namespace {

RecordId anyRecord()
{
    return record(*rc::gen::inRange(1u, 3u));
}

Draft anyDraft(const std::vector<Held>& before)
{
    Draft draft;
    const auto what = *rc::gen::inRange(0, 9);
    draft.kind = what < 3 ? Kind::FieldSet : static_cast<Kind>(what);
    draft.subject = {*rc::gen::element(RecordKind::Setup, RecordKind::KitItem), anyRecord()};
    if (*rc::gen::arbitrary<bool>())
        draft.athlete = anyRecord();
    draft.content = numberItem(*rc::gen::inRange(0, 3));
    if (draft.kind == Kind::Removed)
        draft.content = flagItem(*rc::gen::arbitrary<bool>());
    if (draft.kind == Kind::TagAdded || draft.kind == Kind::TagRemoved) {
        draft.part = "spring";
        draft.content = nullItem();
    }
    if (draft.kind == Kind::ClockShifted) {
        draft.subject = {RecordKind::Chain, RecordId{origin(1).bytes}};
        draft.athlete.reset();
        draft.content = writeClockShift({1, 1, 3, std::chrono::milliseconds(5), {}});
    }
    if (draft.kind == Kind::Erased) {
        draft.subject = {RecordKind::Athlete, anyRecord()};
        draft.athlete.reset();
        draft.content = nullItem();
    }
    if (draft.kind != Kind::Added && draft.kind != Kind::Erased) {
        for (const Held& entry : before) {
            if (*rc::gen::inRange(0, 4) == 0)
                draft.replaces.push_back(entry.id);
        }
        if (draft.kind == Kind::TagRemoved && draft.replaces.empty())
            draft.replaces.push_back(entryId(200));
    }
    return draft;
}

/// Entries of three devices with clocks that say what they like, as they come back from their bytes.
std::vector<Held> anyEntries()
{
    std::vector<Held> entries;
    std::vector<ChainEnd> ends;
    for (unsigned i = 1; i <= 3; ++i)
        ends.push_back({{origin(i), 1}, 0, {}});
    const auto random = countingRandom();
    const int count = *rc::gen::inRange(0, 14);
    for (int i = 0; i < count; ++i) {
        Stamp stamp;
        stamp.clock = {at(*rc::gen::inRange<std::int64_t>(-3, 3)), *rc::gen::inRange(0u, 2u)};
        ChainEnd& end = ends[*rc::gen::inRange<std::size_t>(0, 3)];
        const Outcome<Entry> entry = nextEntry(end, finished(anyDraft(entries), stamp), random);
        RC_ASSERT(entry.ok());
        end = endAt(entry->header);
        const Outcome<Held> read = held(*decodeEntry(encodeEntry(*entry)));
        RC_ASSERT(read.ok());
        entries.push_back(*read);
    }
    return entries;
}

std::vector<Held> shuffled(std::vector<Held> entries)
{
    for (std::size_t i = entries.size(); i > 1; --i)
        std::swap(entries[i - 1], entries[*rc::gen::inRange<std::size_t>(0, i)]);
    return entries;
}

std::vector<Held> joined(std::vector<Held> a, const std::vector<Held>& b)
{
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

}

class TestFoldLaws : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void orderDoesNotMatter()
    {
        QVERIFY(rc::check("any order of entries gives the same registers", [] {
            const std::vector<Held> entries = anyEntries();
            const Fold one = folded(entries), other = folded(shuffled(entries));
            RC_ASSERT(one.registers() == other.registers());
            RC_ASSERT(one.erased() == other.erased());
            RC_ASSERT(one.digest() == other.digest());
            RC_ASSERT(one.toReview() == other.toReview());
        }));
    }

    void twiceIsOnce()
    {
        QVERIFY(rc::check("entries taken twice change nothing", [] {
            const std::vector<Held> entries = anyEntries();
            Fold fold = folded(entries);
            const Fold::Registers before = fold.registers();
            for (const Held& entry : shuffled(entries))
                RC_ASSERT(!fold.take(entry));
            RC_ASSERT(fold.registers() == before);
        }));
    }

    void anyWayOfMerging()
    {
        QVERIFY(rc::check("what three devices have gives the same in any grouping", [] {
            const std::vector<Held> all = anyEntries();
            std::vector<Held> parts[3];
            for (const Held& entry : all) {
                parts[*rc::gen::inRange<std::size_t>(0, 3)].push_back(entry);
                parts[*rc::gen::inRange<std::size_t>(0, 3)].push_back(entry);
            }
            const Fold left = folded(joined(joined(parts[0], parts[1]), parts[2]));
            const Fold right = folded(joined(parts[2], joined(parts[1], parts[0])));
            RC_ASSERT(left.registers() == right.registers() && left.registers() == folded(all).registers());
        }));
    }

    // Whoever is not named by an entry of the same place is shown, or counted among the heads.
    void nothingIsOutOfReach()
    {
        QVERIFY(rc::check("a value is a head unless one of its register replaces it or its athlete was erased", [] {
            const std::vector<Held> entries = anyEntries();
            const Fold fold = folded(entries);
            for (const Held& entry : entries) {
                const bool replaced = std::any_of(entries.begin(), entries.end(), [&entry](const Held& other) {
                    const std::vector<EntryId>& ids = other.body.replaces;
                    return keyOf(other.body) == keyOf(entry.body) && std::find(ids.begin(), ids.end(), entry.id) != ids.end();
                });
                const bool erased = entry.body.kind != Kind::Erased && entry.body.athlete && fold.erased().contains(*entry.body.athlete);
                const std::vector<EntryId> heads = headIds(fold, entry);
                const bool head = std::find(heads.begin(), heads.end(), entry.id) != heads.end();
                RC_ASSERT(head == (!replaced && !erased && entry.body.kind != Kind::TagRemoved));
            }
        }));
    }
};

QTEST_APPLESS_MAIN(TestFoldLaws)
#include "test_foldlaws.moc"
