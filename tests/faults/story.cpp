// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/story.h"

#include "tests/core/vault/shown.h"

#include <sys/wait.h>
#include <unistd.h>

namespace faults {

namespace {

constexpr unsigned batchesBeforeLocking = 5;
constexpr unsigned batchesAfterLocking = 4;

unsigned sizeOf(std::uint32_t day, unsigned batch)
{
    return 1 + (day + batch) % 3;
}

/// What an entry says tells which batch it belongs to, and how many that has.
std::string saying(unsigned batch, unsigned size)
{
    return "b" + std::to_string(batch) + "/" + std::to_string(size);
}

std::vector<journal::Draft> batchOf(std::uint32_t day, unsigned batch, const std::vector<journal::EntryId>& seen)
{
    std::vector<journal::Draft> drafts;
    const unsigned size = sizeOf(day, batch);
    for (unsigned at = 0; at < size; ++at) {
        const unsigned athlete = (day + batch + at) % 4;
        if ((batch + at) % 3 == 0)
            drafts.push_back(addedTo(athlete, 100 * batch + at, static_cast<int>(batch), saying(batch, size)));
        else
            drafts.push_back(fieldOf(athlete, at, saying(batch, size), at == 1 ? seen : std::vector<journal::EntryId>()));
    }
    return drafts;
}

void unlockAndWork(const std::string& root, std::uint32_t day, unsigned firstBatch, unsigned batchCount, const Tell& tell)
{
    const Surroundings surroundings = surroundingsOf(root, day, 2);
    auto vault = Vault::unlock(folderOf(root), opener(), surroundings);
    if (!vault) {
        tell("refused");
        vault = Vault::unlock(folderOf(root), opener(), surroundings);
    }
    if (!vault)
        return tell("refused");
    if (!(*vault)->opened(everything()))
        tell("refused");
    work(**vault, day, firstBatch, batchCount, tell);
}

/// What the journal says, batch by batch, with the ids it has.
struct Written {
    std::map<std::string, unsigned> counts;
    std::set<std::string> ids;
};

Written readWritten(Store& store)
{
    Written written;
    for (Rows rows = store.database().query("SELECT header || payload FROM entries ORDER BY place"); rows.next();) {
        const auto entry = journal::decodeEntry(rows->view(0));
        const auto held = entry ? journal::held(*entry) : journal::Outcome<journal::Held>(journal::Code::NotAnEntryRefuse);
        if (!held)
            continue;
        written.ids.insert(held->id.hex());
        const journal::ByteBuffer& said = held->body.content;
        ++written.counts[std::string(reinterpret_cast<const char*>(said.data()) + 1, said.size() - 1)];
    }
    return written;
}

QString faultOfEntries(Store& store, const Told& told, std::size_t extraBatches)
{
    const Written written = readWritten(store);
    for (const std::vector<std::string>& batch : told.batches)
        for (const std::string& id : batch)
            if (!written.ids.contains(id))
                return "an entry that was told to be kept is gone";
    for (const auto& [said, count] : written.counts)
        if (count != static_cast<unsigned>(std::stoi(said.substr(said.find('/') + 1))))
            return "half a batch: " + QString::fromStdString(said);
    if (written.counts.size() > told.batches.size() + extraBatches)
        return QString("%1 batches, %2 told").arg(written.counts.size()).arg(told.batches.size());
    if (!store.checkEnds(1'000'000).ok() || store.entryCount() != written.ids.size())
        return "a chain is not whole";
    if (store.database().answer("PRAGMA integrity_check") != "ok")
        return "the database is not whole";
    if (shownBy(store.views()) != shownFromScratch(store.database()))
        return "the tables are not those of a fold from scratch";
    return {};
}

QString faultOfDraft(const Drafts& drafts, const std::string& told)
{
    if (told.empty())
        return {};
    const auto draft = drafts.find("desk");
    if (draft == drafts.end())
        return "the draft is gone";
    const int found = std::stoi(std::string(reinterpret_cast<const char*>(draft->second.data()) + 2, draft->second.size() - 2));
    return found >= std::stoi(told.substr(1)) ? QString() : "an older draft";
}

}

std::filesystem::path folderOf(const std::string& root)
{
    return std::filesystem::path(root) / "vault";
}

Surroundings surroundingsOf(const std::string& root, std::uint32_t day, std::uint32_t part)
{
    Surroundings surroundings;
    surroundings.now = [day] { return noon(static_cast<int>(day % 1000)); };
    surroundings.random = seededRandom(day * 16 + part);
    surroundings.installFolder = std::filesystem::path(root) / "install";
    return surroundings;
}

void work(Vault& vault, std::uint32_t day, unsigned firstBatch, unsigned batchCount, const Tell& tell)
{
    std::vector<journal::EntryId> seen;
    for (unsigned batch = firstBatch; batch < firstBatch + batchCount; ++batch) {
        if (const auto kept = vault.keep(batchOf(day, batch, seen))) {
            std::string line = "kept";
            seen.clear();
            for (const journal::Held& held : kept->entries) {
                line += " " + held.id.hex();
                seen.push_back(held.id);
            }
            tell(line);
        } else {
            tell("refused");
        }
        if (batch % 2 == 0)
            tell(vault.saveDraft("desk", content("d" + std::to_string(batch))) ? "draft d" + std::to_string(batch) : "refused");
        if (batch % 3 == 0)
            vault.witness();
    }
}

void Told::hear(const std::string& line)
{
    if (line == "created")
        created = true;
    else if (line == "refused")
        ++refusals;
    else if (line == "refused afterwards")
        refusedAfterwards = true;
    else if (line.starts_with("draft "))
        draft = line.substr(6);
    else if (line.starts_with("kept ")) {
        std::vector<std::string>& batch = batches.emplace_back();
        for (std::size_t at = 5; at < line.size(); at += 65)
            batch.push_back(line.substr(at, 64));
    }
}

void live(const std::string& root, std::uint32_t day, const Tell& tell)
{
    {
        const Surroundings surroundings = surroundingsOf(root, day, 1);
        auto vault = Vault::create(folderOf(root), newRing(day), surroundings);
        if (!vault) {
            tell("refused");
            vault = Vault::create(folderOf(root), newRing(day), surroundings);
        }
        if (!vault)
            return tell("refused");
        tell("created");
        work(**vault, day, 0, batchesBeforeLocking, tell);
    }
    unlockAndWork(root, day, batchesBeforeLocking, batchesAfterLocking, tell);
}

QString faultOf(const std::string& root, const Told& told, std::uint32_t day, std::size_t extraBatches)
{
    const Surroundings surroundings = surroundingsOf(root, day, 3);
    const Look look = Vault::look(folderOf(root));
    if (look.trouble)
        return QString("trouble %1 before unlocking").arg(static_cast<int>(look.trouble->code));
    if (look.standing == Standing::None && told.created)
        return "the vault is gone";
    auto vault = look.standing == Standing::None ? Vault::create(folderOf(root), newRing(day + 1), surroundings)
                                                 : Vault::unlock(folderOf(root), opener(), surroundings);
    if (!vault)
        return QString("code %1 on opening").arg(static_cast<int>(vault.code()));
    const auto opened = (*vault)->opened(everything());
    if (!opened)
        return QString("code %1 on reading").arg(static_cast<int>(opened.code()));
    if (opened->findings.witness == WitnessState::DatabaseBehind)
        return "the witness has seen more";
    if (const QString fault = faultOfEntries((*vault)->store(), told, extraBatches); !fault.isEmpty())
        return fault;
    if (const QString fault = faultOfDraft(opened->drafts, told.draft); !fault.isEmpty())
        return fault;
    return (*vault)->keep(batchOf(day, 99, {})) ? QString() : QString("nothing more can be kept");
}

bool inAProcess(const std::function<void(const Tell&)>& work, Told& told)
{
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0)
        return false;
    const pid_t child = ::fork();
    if (child == 0) {
        ::close(ends[0]);
        work([&ends](const std::string& line) {
            const std::string whole = line + "\n";
            if (::write(ends[1], whole.data(), whole.size()) != static_cast<ssize_t>(whole.size()))
                ::_exit(3);
        });
        ::_exit(0);
    }
    ::close(ends[1]);
    std::string heard;
    std::array<char, 4096> room{};
    for (ssize_t got = 0; (got = ::read(ends[0], room.data(), room.size())) > 0;)
        heard.append(room.data(), static_cast<std::size_t>(got));
    ::close(ends[0]);
    int state = 0;
    ::waitpid(child, &state, 0);
    for (std::size_t from = 0, to = 0; (to = heard.find('\n', from)) != std::string::npos; from = to + 1)
        told.hear(heard.substr(from, to - from));
    return WIFEXITED(state) && WEXITSTATUS(state) == 0;
}

}
