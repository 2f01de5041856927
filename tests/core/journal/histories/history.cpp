// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/journal/histories/history.h"

#include "core/journal/cbor.h"
#include "core/journal/content.h"
#include "tests/core/journal/histories/naive.h"

#include <algorithm>

namespace histories {

namespace {

constexpr std::size_t mostDevices = 6;
constexpr std::chrono::days thirtyYears(10'957);

RecordId named(unsigned value)
{
    RecordId id;
    id.bytes.fill(static_cast<std::byte>(value));
    return id;
}

OriginId originOf(std::size_t device)
{
    OriginId id;
    id.bytes.fill(static_cast<std::byte>(0x40 + device));
    return id;
}

std::vector<naive::Raw> rawsOf(const std::map<EntryId, ByteBuffer>& entries)
{
    std::vector<naive::Raw> raws;
    for (const auto& [id, bytes] : entries)
        raws.push_back({text(id.bytes), text(bytes)});
    return raws;
}

}

Tally& Tally::operator+=(const Tally& other)
{
    entryCount += other.entryCount;
    parcelCount += other.parcelCount;
    lostCount += other.lostCount;
    forkCount += other.forkCount;
    erasureCount += other.erasureCount;
    reviewCount += other.reviewCount;
    damagedCount += other.damagedCount;
    return *this;
}

History::History(std::uint64_t seed) : m_chance(seed), m_now(std::chrono::milliseconds(1'795'600'000'000))
{
    const std::size_t count = 2 + m_chance.below(3);
    for (std::size_t i = 0; i < count; ++i) {
        m_devices.emplace_back(originOf(i), std::chrono::milliseconds(0));
        m_backups.emplace_back();
        m_heard.emplace_back();
        setClock(i);
    }
    m_erases = m_chance.percent(40);
}

std::string History::run()
{
    const std::size_t steps = 30 + m_chance.below(90);
    for (std::size_t i = 0; i < steps && m_failure.empty(); ++i)
        step();
    exchangeAll();
    checkAllAlike();
    return m_failure;
}

void History::step()
{
    // Time often stands still, so that equal clocks meet.
    if (m_chance.percent(60))
        m_now += m_chance.percent(10) ? std::chrono::milliseconds(std::chrono::days(m_chance.below(120))) : std::chrono::milliseconds(m_chance.below(3));
    const std::size_t device = m_chance.below(m_devices.size());
    const std::size_t what = m_chance.below(100);
    if (what < 45)
        write(device);
    else if (what < 62)
        post(device, m_chance.below(m_devices.size()));
    else if (what < 84)
        deliver();
    else if (what < 88)
        setClock(device);
    else if (what < 91)
        copy(device);
    else if (what < 94)
        restore(device);
    else if (what < 96)
        writeNewer(device);
    else
        check(m_devices[device]);
}

void History::about(Draft& draft)
{
    const unsigned which = static_cast<unsigned>(m_chance.below(4));
    const unsigned athlete = which % 2;
    draft.zone = m_chance.percent(50) ? "Europe/Berlin" : "";
    draft.localDay = std::chrono::sys_days(std::chrono::days(m_chance.between(-9'000, 30'000)));
    switch (which) {
    case 0: draft.subject = {RecordKind::KitItem, named(0xc0)}; return;
    case 1: draft.subject = {RecordKind::Athlete, named(0xa0 + static_cast<unsigned>(m_chance.below(2)))}; return;
    default: draft.subject = {RecordKind::Setup, named(0xb0 + athlete)}; draft.athlete = named(0xa0 + athlete);
    }
}

Draft History::anyDraft(const Device& device)
{
    Draft draft;
    about(draft);
    const std::size_t what = m_chance.below(100);
    const ByteBuffer value = numberItem(m_chance.between(-3, 3));
    if (what < 50) {
        draft.fieldNumber = static_cast<std::uint32_t>(m_chance.below(2));
        draft.part = m_chance.percent(20) ? "squat" : "";
        draft.content = value;
    } else if (what < 60) {
        draft.kind = Kind::Added;
        draft.subject = {RecordKind::Measurement, named(0xd0 + static_cast<unsigned>(m_chance.below(3)))};
        draft.content = value;
    } else if (what < 67) {
        draft.kind = Kind::PutRight;
        draft.subject = {RecordKind::Measurement, named(0xd0 + static_cast<unsigned>(m_chance.below(3)))};
        draft.content = value;
    } else if (what < 76) {
        draft.kind = Kind::Removed;
        draft.content = flagItem(m_chance.percent(70));
    } else if (what < 92) {
        draft.kind = m_chance.percent(60) ? Kind::TagAdded : Kind::TagRemoved;
        draft.part = "spring";
    } else if (what < 97) {
        const std::uint64_t first = 1 + m_chance.below(6);
        draft = Draft{};
        draft.kind = Kind::ClockShifted;
        draft.subject = {RecordKind::Chain, RecordId{originOf(m_chance.below(m_devices.size())).bytes}};
        draft.content = writeClockShift({1 + static_cast<std::uint32_t>(m_chance.below(2)), first, first + m_chance.below(4),
            std::chrono::milliseconds(m_chance.between(-1'000'000, 1'000'000)), std::chrono::days(m_chance.between(-2, 2))});
    } else if (m_erases) {
        draft = Draft{};
        draft.kind = Kind::Erased;
        draft.subject = {RecordKind::Athlete, named(0xa0 + static_cast<unsigned>(m_chance.below(2)))};
    }
    // Most writers have seen the heads; some see a part of them, some write blindly.
    if (draft.kind != Kind::Added && draft.kind != Kind::Erased) {
        draft.replaces = device.headsOf(draft);
        if (draft.kind != Kind::TagRemoved && m_chance.percent(25))
            draft.replaces.resize(m_chance.below(draft.replaces.size() + 1));
    }
    return draft;
}

void History::keep(std::size_t device, const Draft& draft)
{
    Device& writer = m_devices[device];
    std::optional<Clock> seen;
    if (const Register* here = writer.fold().find(keyOf(finished(draft, {})))) {
        for (const Held& head : here->heads) {
            if (!seen || head.body.stamp.clock > *seen)
                seen = head.body.stamp.clock;
        }
    }
    const std::optional<EntryId> id = writer.write(draft, m_now, m_chance);
    if (!id) {
        if (draft.kind != Kind::TagRemoved || !draft.replaces.empty())
            fail("a proper entry was refused");
        return;
    }
    ++m_tally.entryCount;
    m_told.insert(*id);
    const Entry entry = *decodeEntry(writer.entries().at(*id));
    if (draft.kind == Kind::Erased) {
        m_erasures.emplace(*id, draft.subject.id);
        ++m_tally.erasureCount;
    }
    if (entry.payload) {
        const Outcome<Body> body = decodeBody(entry.payload->body);
        if (!body)
            fail("an own entry cannot be read");
        else if (seen && body->stamp.clock <= *seen)
            fail("an entry stands below what its writer had seen");
        m_bodies.emplace(*id, text(writer.entries().at(*id)));
    }
}

void History::write(std::size_t device)
{
    if (m_chance.percent(8))
        writeTwice(device);
    else if (m_erases && m_chance.percent(2))
        eraseAndForget(device);
    else
        keep(device, anyDraft(m_devices[device]));
}

/// Two values side by side, neither replacing anything: a contest that only the order of heads decides.
void History::writeTwice(std::size_t device)
{
    Draft draft;
    draft.subject = {RecordKind::KitItem, named(0xc1)};
    for (int i = 0; i < 2; ++i) {
        draft.content = numberItem(m_chance.between(-3, 3));
        keep(device, draft);
    }
}

void History::writeNewer(std::size_t device)
{
    const bool layout = m_chance.percent(30);
    CborWriter body;
    if (layout)
        body.map(1).number(0).number(2);
    else
        body.map(8).number(0).number(1).number(1).number(9).number(2).number(m_chance.between(0, 9)).number(6).number(3)
            .number(7).bytes(named(0xc0).bytes).number(9).number(0).number(14).null().number(15).text("of a later day");
    const EntryId id = m_devices[device].writeNewer(body.written(), m_chance);
    m_told.insert(id);
    m_bodies.emplace(id, text(m_devices[device].entries().at(id)));
}

/// An erasure of which the others get wind, and perhaps not the entry, before the device that wrote it is put back.
void History::eraseAndForget(std::size_t device)
{
    const Device before = m_devices[device];
    Draft draft;
    draft.kind = Kind::Erased;
    draft.subject = {RecordKind::Athlete, named(0xa0 + static_cast<unsigned>(m_chance.below(2)))};
    keep(device, draft);
    for (std::size_t other = 0; other < m_devices.size(); ++other) {
        post(device, other);
        deliver();
    }
    putBack(device, before);
}

void History::tellErased(std::size_t device, const std::set<RecordId>& erased)
{
    for (const Draft& draft : erasuresToRepeat(erased, m_devices[device].fold().erased()))
        keep(device, draft);
}

void History::post(std::size_t from, std::size_t to)
{
    if (from == to)
        return;
    // The sender may remember what the other had said long ago.
    if (m_chance.percent(70))
        m_heard[to] = m_devices[to].chains().vector();
    Parcel parcel{to, {}, m_devices[from].fold().erased()};
    for (const EntryId& id : m_devices[from].chains().toSend(m_heard[to]))
        parcel.entries.push_back(m_devices[from].entries().at(id));
    if (m_chance.percent(20))
        parcel.entries.resize(m_chance.below(parcel.entries.size() + 1));
    if (m_chance.percent(20))
        m_chance.shuffle(parcel.entries);
    ++m_tally.parcelCount;
    m_underWay.push_back(std::move(parcel));
}

void History::deliver()
{
    if (m_underWay.empty())
        return;
    const std::size_t which = m_chance.below(m_underWay.size());
    Parcel parcel = m_underWay[which];
    const std::size_t fate = m_chance.below(100);
    if (fate < 70 || fate >= 85)
        m_underWay.erase(m_underWay.begin() + static_cast<std::ptrdiff_t>(which)); // else it comes once more later
    if (fate >= 85) {
        ++m_tally.lostCount;
        return;
    }
    tellErased(parcel.to, parcel.erased);
    Device& to = m_devices[parcel.to];
    for (const ByteBuffer& bytes : parcel.entries) {
        if (m_chance.percent(3)) {
            // Where a flipped bit makes no other entry: in the version, the commitment, the salt or the body.
            ByteBuffer damaged = bytes;
            const std::size_t at = m_chance.below(damaged.size() - 60);
            damaged[at < 4 ? at : at + 60] ^= static_cast<std::byte>(1 << m_chance.below(8));
            ++m_tally.damagedCount;
            if (bytes.size() > Header::size && to.receive(damaged, m_now))
                fail("a damaged entry was taken");
        }
        if (!to.receive(bytes, m_now))
            fail("an entry was refused");
    }
    if (m_chance.percent(15))
        check(to);
}

void History::setClock(std::size_t device)
{
    const bool years = m_chance.percent(50);
    const std::chrono::milliseconds most = years ? std::chrono::milliseconds(thirtyYears) : std::chrono::milliseconds(2);
    m_devices[device].setClockError(std::chrono::milliseconds(m_chance.between(-most.count(), most.count())));
}

void History::copy(std::size_t device)
{
    if (m_devices.size() == mostDevices)
        return;
    m_devices.push_back(m_devices[device]);
    m_backups.emplace_back();
    m_heard.emplace_back();
    ++m_tally.forkCount;
    const std::size_t twin = m_devices.size() - 1;
    if (m_chance.percent(40)) {
        m_devices[twin].beginNextIncarnation();
    } else if (m_chance.percent(50)) {
        writeTwice(device);
        writeTwice(twin);
    }
}

void History::restore(std::size_t device)
{
    std::optional<Device>& backup = m_backups[device];
    if (backup && m_chance.percent(50)) {
        putBack(device, *backup);
        backup.reset();
    } else {
        backup = m_devices[device];
    }
}

void History::putBack(std::size_t device, const Device& backup)
{
    m_devices[device] = backup;
    if (m_chance.percent(60))
        m_devices[device].beginNextIncarnation();
    ++m_tally.forkCount;
    std::erase_if(m_told, [this](const EntryId& id) {
        return std::none_of(m_devices.begin(), m_devices.end(), [&id](const Device& d) { return d.entries().contains(id); });
    });
}

void History::exchangeAll()
{
    m_underWay.clear();
    const std::size_t mostRounds = 3 * mostDevices;
    for (std::size_t round = 0; round < mostRounds && m_failure.empty(); ++round) {
        bool quiet = true;
        for (const Device& from : m_devices) {
            for (std::size_t other = 0; other < m_devices.size(); ++other) {
                tellErased(other, from.fold().erased());
                Device& to = m_devices[other];
                const std::vector<EntryId> ids = &from == &to ? std::vector<EntryId>() : from.chains().toSend(to.chains().vector());
                quiet = quiet && ids.empty();
                for (const EntryId& id : ids) {
                    if (!to.receive(from.entries().at(id), m_now))
                        fail("an entry was refused at last");
                }
            }
        }
        if (quiet)
            return;
    }
    fail("the exchange does not come to rest");
}

std::vector<ByteBuffer> History::shuffled(const Device& device)
{
    std::vector<ByteBuffer> entries;
    for (const auto& [id, bytes] : device.entries()) {
        entries.push_back(bytes);
        if (m_chance.percent(10))
            entries.push_back(bytes);
    }
    m_chance.shuffle(entries);
    return entries;
}

void History::check(const Device& device)
{
    const std::vector<std::string> shown = shownLines(device.fold());
    if (shown != naive::shownLines(rawsOf(device.entries())))
        fail("the fold shows something else than the rules say");
    const Fold again = foldOf(shuffled(device));
    if (shownLines(again) != shown || again.digest() != device.fold().digest())
        fail("another order of entries shows something else");
    for (const auto& [id, bytes] : device.entries()) {
        const Entry entry = *decodeEntry(bytes);
        if (entry.header.sequenceNumber > 1 && !device.entries().contains(entry.header.previous))
            fail("a chain has a gap");
        const Outcome<Held> read = held(entry);
        if (read && read->body.kind != Kind::Erased && read->body.athlete && device.fold().erased().contains(*read->body.athlete))
            fail("a body of an erased athlete is still there");
        const auto known = m_bodies.find(id);
        if (entry.payload && known != m_bodies.end() && known->second != text(bytes))
            fail("an entry has changed");
    }
}

void History::checkAllAlike()
{
    if (!m_failure.empty())
        return;
    const Device& first = m_devices.front();
    check(first);
    m_tally.reviewCount += first.fold().toReview().size();
    for (const EntryId& id : m_told) {
        if (!first.entries().contains(id))
            fail("an entry that had been kept is gone");
    }
    for (const Device& device : m_devices) {
        if (device.entries() != first.entries())
            fail("devices hold different entries");
        if (device.fold().digest() != first.fold().digest() || shownLines(device.fold()) != shownLines(first.fold()))
            fail("devices show different things");
        if (device.chains().vector() != first.chains().vector() || device.chains().forked() != first.chains().forked())
            fail("devices say different things of their chains");
        for (const auto& [chain, tips] : first.chains().vector()) {
            if (device.chains().compare(chain, first.chains().vector()) != Standing::Equal)
                fail("equal chains do not compare as equal");
        }
        // An erasure goes with the device that wrote it, where that was put back before it told anybody.
        for (const auto& [erasure, athlete] : m_erasures) {
            for (const auto& [key, here] : device.fold().registers()) {
                if (m_told.contains(erasure) && key.athlete == athlete && key.holds != RegisterClass::Erasure)
                    fail("an erased athlete is shown");
            }
        }
    }
}

void History::fail(const std::string& what)
{
    if (m_failure.empty())
        m_failure = what;
}

}
