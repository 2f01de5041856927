// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/start.h"
#include "core/vault/vault.h"

#include <QFile>
#include <QTemporaryDir>
#include <deque>
#include <random>

namespace vaulting {

using namespace steelyard;
using namespace steelyard::vault;

/// A row of bytes that a number begins, the same on every machine.
inline seal::RandomSource seededRandom(std::uint32_t seed)
{
    return [engine = std::make_shared<std::mt19937>(seed)](seal::ByteRoom room) {
        for (std::byte& byte : room)
            byte = static_cast<std::byte>((*engine)() & 0xFF);
    };
}

inline journal::Instant noon(int day = 0)
{
    return journal::Instant(std::chrono::days(20'000 + day) + std::chrono::hours(12));
}

inline seal::SlotKey slotKey(seal::SlotKind kind, unsigned filling)
{
    return {kind, seal::weakestStretch, {}, *seal::WrappingKey::make([filling](seal::ByteRoom room) -> seal::Outcome<Done> {
                std::fill(room.begin(), room.end(), static_cast<std::byte>(filling));
                return Done{};
            })};
}

/// A vault's keys without a stretch, and the way in that belongs to them.
inline seal::Keyring newRing(std::uint32_t seed = 1)
{
    return *seal::Keyring::create(slotKey(seal::SlotKind::Passphrase, 1), slotKey(seal::SlotKind::RecoveryCode, 2), seededRandom(seed));
}
inline seal::Opener opener(unsigned filling = 1)
{
    return [filling](const seal::KeyFile& file) {
        return seal::Keyring::open(file, seal::SlotKind::Passphrase, slotKey(seal::SlotKind::Passphrase, filling).key);
    };
}

inline RecordId recordId(unsigned number)
{
    RecordId id;
    id.bytes[0] = static_cast<std::byte>(number >> 8);
    id.bytes[1] = static_cast<std::byte>(number & 0xFF);
    id.bytes[15] = std::byte{1};
    return id;
}

/// A text as one item of CBOR.
inline journal::ByteBuffer content(std::string_view text)
{
    journal::ByteBuffer bytes;
    if (text.size() < 24)
        bytes = {static_cast<std::byte>(0x60 + text.size())};
    else
        bytes = {std::byte{0x78}, static_cast<std::byte>(text.size())};
    const auto view = seal::bytesOf(text);
    bytes.insert(bytes.end(), view.begin(), view.end());
    return bytes;
}

inline journal::Draft fieldOf(unsigned athlete, std::uint32_t field, std::string_view text, std::vector<journal::EntryId> replaces = {})
{
    journal::Draft draft;
    draft.subject = {journal::RecordKind::Athlete, recordId(athlete)};
    draft.athlete = recordId(athlete);
    draft.fieldNumber = field;
    draft.localDay = std::chrono::sys_days(std::chrono::days(20'000));
    draft.zone = "Etc/UTC";
    draft.replaces = std::move(replaces);
    draft.content = content(text);
    return draft;
}

inline journal::Draft addedTo(unsigned athlete, unsigned record, int day, std::string_view text)
{
    journal::Draft draft = fieldOf(athlete, 0, text);
    draft.kind = journal::Kind::Added;
    draft.subject = {journal::RecordKind::BodySize, recordId(record)};
    draft.localDay = std::chrono::sys_days(std::chrono::days(20'000 + day));
    return draft;
}

/// All kinds of records there are.
inline Wanted everything()
{
    Wanted wanted;
    for (std::uint16_t kind = 1; kind <= 14; ++kind)
        wanted.kinds.push_back(static_cast<journal::RecordKind>(kind));
    return wanted;
}

/// A folder for a vault and one for the install, with a clock that stands and what was posted.
class Place {
public:
    Place()
    {
        surroundings.post = [this](std::function<void()> work) { posted.push_back(std::move(work)); };
        surroundings.now = [this] { return now; };
        surroundings.random = seededRandom(7);
        surroundings.installFolder = dir.filePath("install").toStdString();
    }
    [[nodiscard]] std::filesystem::path folder() const { return dir.filePath("vault").toStdString(); }
    [[nodiscard]] QString file(const QString& name) const { return dir.filePath("vault/" + name); }
    [[nodiscard]] auto create(std::uint32_t seed = 1) { return Vault::create(folder(), newRing(seed), surroundings); }
    [[nodiscard]] auto unlock(unsigned filling = 1) { return Vault::unlock(folder(), opener(filling), surroundings); }

    [[nodiscard]] QByteArray bytes(const QString& name) const
    {
        QFile opened(file(name));
        return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
    }
    void put(const QString& name, const QByteArray& bytes) const
    {
        QFile opened(file(name));
        if (opened.open(QIODevice::WriteOnly))
            opened.write(bytes);
    }

    QTemporaryDir dir;
    journal::Instant now = noon();
    Surroundings surroundings;
    std::deque<std::function<void()>> posted;
};

}
