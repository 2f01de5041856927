// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/content.h"
#include "core/sample/samplevault.h"
#include "core/seal/start.h"
#include "core/vault/opening.h"
#include "core/vault/vault.h"
#include "core/work/records/seasonbook.h"

#include <chrono>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string_view>

/// A vault on its way between machines with other versions of the engine and of Qt: made on one, read through and written on by another.
namespace {

using namespace steelyard;

int failed(const std::string& why)
{
    std::fprintf(stderr, "%s\n", why.c_str());
    return 1;
}

std::string refusal(const char* what, vault::Code code)
{
    return std::string(what) + ": refusal " + std::to_string(static_cast<int>(code));
}

vault::Surroundings surroundings(const std::filesystem::path& folder)
{
    return {[](const std::function<void()>&) {}, [] { return journal::Instant(std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now())); },
            seal::systemRandom(), folder / "install"};
}

/// The example's season out of its files, in the folder's vault.
int make(const std::filesystem::path& folder, const std::filesystem::path& club)
{
    sample::SeasonTexts texts;
    for (const std::string& name : sample::seasonFileNames) {
        std::ifstream file(club / name, std::ios::binary);
        texts[name] = std::string(std::istreambuf_iterator<char>(file), {});
    }
    sample::Faults faults;
    constexpr std::chrono::sys_days day{std::chrono::year(2026) / 11 / 2};
    const sample::Season season = sample::readSeason(texts, day, faults);
    if (!faults.empty())
        return failed(faults.front());
    std::filesystem::create_directories(folder);
    if (const auto notMade = sample::makeSampleVault({folder / "vault", folder / "install"}, season, day))
        return failed(notMade->refusal ? refusal("not made", notMade->refusal->code) : "not kept: " + notMade->notKept->what);
    return 0;
}

/// Unlocks, reads every entry through, keeps one venue more where it is told a name, and prints the digest of all that is shown.
int read(const std::filesystem::path& folder, std::string_view venue)
{
    const vault::Surroundings about = surroundings(folder);
    const auto opener = [](const seal::KeyFile& file) {
        seal::SecretText secret;
        if (const auto taken = secret.append(sample::passphrase); !taken)
            return seal::Outcome<seal::Keyring>(taken.code());
        return seal::unlock(file, secret);
    };
    auto vault = vault::Vault::unlock(folder / "vault", opener, about);
    if (!vault)
        return failed(refusal("not unlocked", vault.refusal().code));
    if (!venue.empty()) {
        journal::Draft draft;
        draft.subject = {journal::RecordKind::Venue, {}};
        about.random(draft.subject.id.bytes);
        draft.fieldNumber = field::venueNameNumber;
        draft.localDay = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
        draft.zone = "Etc/UTC";
        draft.content = journal::textItem(std::string(venue));
        if (const auto kept = (*vault)->keep({draft}); !kept)
            return failed(refusal("not kept", kept.refusal().code));
    }
    vault::Store::Checking checking;
    for (bool all = false; !all;) {
        const auto slice = (*vault)->checkOn(checking, 500);
        if (!slice)
            return failed(refusal("not in order", slice.refusal().code));
        all = *slice;
    }
    const auto opened = (*vault)->opened(SeasonBook::wanted());
    if (!opened)
        return failed(refusal("not read", opened.refusal().code));
    if (opened->findings.witness != vault::WitnessState::Agrees || opened->findings.viewsRebuilt || opened->findings.movedHere)
        return failed("the vault was not found as it had been left");
    SeasonBook book;
    book.load(opened->snapshot);
    for (const std::byte byte : book.fold().digest())
        std::printf("%02x", static_cast<unsigned>(byte));
    std::printf(" of %llu entries\n", static_cast<unsigned long long>(opened->snapshot.entryCount));
    return 0;
}

}

int main(int argc, char** argv)
{
    if (!seal::start())
        return failed("no randomness here, or no memory for keys");
    const std::string_view deed = argc > 3 ? argv[3] : "";
    if (deed == "make" && argc == 4)
        return make(argv[1], argv[2]);
    if (deed == "digest" && argc == 4)
        return read(argv[1], {});
    if (deed == "add" && argc == 5)
        return read(argv[1], argv[4]);
    std::fputs("steelyard_carried FOLDER CLUB make | digest | add VENUE\n", stderr);
    return 2;
}
