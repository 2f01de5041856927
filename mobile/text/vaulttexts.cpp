// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/vaulttexts.h"

#include "mobile/text/say.h"

#include <QCoreApplication>

namespace vault = steelyard::vault;
using sentences::Said;
using vault::Code;

namespace vaulttexts {

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("vaulttexts", text, about, count); }

/// In millions of bytes, as people know disks.
QString megabytes(std::uint64_t size)
{
    return say::plain(static_cast<double>(size) / 1e6, 1);
}

/// What is wrong with files that a secret cannot help.
Said saidOfFiles(const steelyard::vault::Refusal& refusal)
{
    switch (refusal.code) {
    case Code::KeyFileMissingFindFolder:
        return {tr("The vault's key file is missing."), tr("Put vault.key or vault.key.2 back into the vault's folder, then try again.")};
    case Code::KeyFileDamagedRestoreBackup:
        return {tr("Both copies of the key file are damaged."), tr("No passphrase can open the vault as it is. Put an earlier vault.key back into its folder, then try again.")};
    case Code::KeyFileForgedRestoreBackup:
        return {tr("The key file was not written by this app."), tr("Somebody may have changed it. Put your own vault.key back into the folder, then try again.")};
    case Code::KeyFilesOfTwoVaultsSortOut:
        return {tr("Key files of two vaults lie in one folder."), tr("vault.key and vault.key.2 do not belong together. Move the wrong one away, then try again.")};
    case Code::NewerVersionUpdateApp:
        return {tr("A newer version of the app wrote this vault."), tr("It is untouched. Update the app, then open it again.")};
    case Code::DatabaseMissingRestoreBackup:
        return {tr("The vault's data file is missing."), tr("The key is there, the file it opens is not. Put the vault's files back into their folder, then try again.")};
    case Code::DatabaseEmptyRestoreBackup:
        return {tr("The vault's data file is empty."), tr("The storage has lost what was in it, and nothing is written to it. Put an earlier copy in its place, then try again.")};
    case Code::DatabaseTornRestoreBackup:
        return {tr("The vault's data file ends too soon."), tr("Part of it is gone, and nothing is written to it. Put an earlier copy in its place, then try again.")};
    case Code::DatabasePlainRefuse:
        return {tr("The data file in the vault's folder is not sealed."), tr("It is none of ours, and is left alone. Put the vault's own file in its place, then try again.")};
    case Code::DatabaseForeignRefuse:
        return {tr("The data file was written by something else."), tr("It is left alone. Put the vault's own file in its place, then try again.")};
    case Code::PageDamagedRestoreBackup:
        return {refusal.entryCount > 0 ? tr("The vault's data file is damaged: %n entries cannot be read.", nullptr, static_cast<int>(refusal.entryCount))
                                       : tr("The vault's data file is damaged."),
                tr("Your passphrase is right. Nothing is written to the file. Keep the folder as it is, and put an earlier copy in its place.")};
    case Code::MigrationStoppedOldVaultStands:
        return {tr("The vault could not be brought up to date."), tr("It stands as it was. Free some space and try again, or open it with the app you had before.")};
    default:
        return {tr("The app's database does not do what it should."), tr("Nothing has been touched. Install the app anew, then try again.")};
    }
}

}

Said said(const steelyard::vault::Refusal& refusal)
{
    switch (refusal.code) {
    case Code::WrongSecretTypeAgain:
        return {tr("That does not open the vault."), tr("The vault itself is whole. Look out for capitals and spaces, and type it again.")};
    case Code::NoSuchWayInUseAnother:
        return {tr("This vault has no such way in."), tr("Use the passphrase, or else the recovery code.")};
    case Code::SecretUnfitTypeAgain:
        return {tr("That cannot be a passphrase or recovery code of this vault."), tr("It is too long, or not complete. Nothing was cut off: type it again.")};
    case Code::MemoryRefusedCloseOthers:
        return {tr("There is no memory left to make the key."), tr("Close other programs, then try again.")};
    case Code::NoVaultHereCreateOne:
        return {tr("There is no vault here any more."), tr("If you know where its folder went, put it back and try again. Otherwise make a new one.")};
    case Code::VaultThereUnlockIt:
        return {tr("There is a vault here already."), tr("No second one was made. Try again, and unlock the one that is there.")};
    case Code::SyncedFolderChooseOther:
        return {tr("The vault's folder is carried to other devices."), tr("Two devices writing into one vault would ruin it. Move the folder to a place that stays here, then try again.")};
    case Code::SecondInstanceCloseOther:
        return {tr("The vault is open already."), tr("Steelyard runs a second time on this device. Close the other window, then try again.")};
    case Code::FolderReadOnlyChooseOther:
        return {tr("Nothing can be written into the vault's folder."), tr("Whatever you enter could not be kept. Make the folder writable, then try again.")};
    case Code::DiskFullFreeSpace:
        return {refusal.sizeNeeded > 0 ? tr("Not saved: %1 MB needed, %2 MB free.").arg(megabytes(refusal.sizeNeeded), megabytes(refusal.sizeFree))
                                       : tr("Not saved: this device is full."),
                tr("Your entry is still on the page. Free some space, then do it again.")};
    case Code::WriteFailedTryAgain:
        return {tr("Not saved: the storage gave an error."), tr("Your entry is still on the page, and nothing kept before is gone. Do it again.")};
    case Code::FileUnreadableTryAgain:
        return {tr("The storage gave an error while reading."), tr("Nothing has been changed. Try again; if it comes back, copy the vault's folder to another disk.")};
    case Code::LockedUnlockFirst:
        return {tr("Not saved: the vault is locked."), tr("Unlock it, then do it again.")};
    case Code::OpenAlreadyLockFirst:
        return {tr("A vault is open here already."), tr("Lock it first, then try again.")};
    case Code::DraftUnfitShorten:
        return {tr("Not saved: that is too long."), tr("Your entry is still on the page. Make the note shorter, then do it again.")};
    case Code::AthleteErasedStartAnew:
        return {tr("Not saved: this athlete has been erased."), tr("Nothing more is written about somebody erased. Add the person anew.")};
    case Code::SampleMarkMissingLeaveIt:
        return {tr("This is no example: it is somebody's own vault."), tr("Nothing was removed: only an example can be taken away.")};
    case Code::StoppedTryAgain:
        return {tr("Something more urgent came between."), tr("Nothing is lost. Do it again.")};
    default:
        return saidOfFiles(refusal);
    }
}

Said said(steelyard::seal::Code code)
{
    if (code == steelyard::seal::Code::RecoveryCodeTypeOn)
        return {tr("The recovery code is not complete."), tr("It has five groups. Type on where the first one is missing.")};
    if (code == steelyard::seal::Code::RecoveryCodeGroupTypeAgain)
        return {tr("A group of the recovery code has a mistake."), tr("Compare each group with your paper, and put right the one that differs.")};
    return said(steelyard::vault::Refusal{steelyard::vault::codeOf(code)});
}

bool anotherTryHelps(Code code)
{
    switch (code) {
    case Code::WrongSecretTypeAgain:
    case Code::NoSuchWayInUseAnother:
    case Code::SecretUnfitTypeAgain:
    case Code::MemoryRefusedCloseOthers:
    case Code::DiskFullFreeSpace:
    case Code::WriteFailedTryAgain:
    case Code::FileUnreadableTryAgain:
    case Code::StoppedTryAgain:
        return true;
    default:
        return false;
    }
}

Said restartRefused()
{
    return {tr("The vault is locked. The app could not start anew."), tr("Close this window: until you do, names may still be in this device's memory.")};
}

QString noBackupYet()
{
    return tr("One device only, no backup yet");
}

std::vector<Said> found(const vault::Findings& findings, std::size_t unreadFormCount, const QString& folder)
{
    using vault::WitnessState;
    std::vector<Said> all;
    const auto say = [&all](bool so, const QString& head, const QString& body) {
        if (so)
            all.push_back({head, body});
    };
    say(findings.witness == WitnessState::DatabaseBehind, tr("%n entries that had been kept are missing.", nullptr, static_cast<int>(findings.entriesMissingCount)),
        tr("An older data file was put back, or the storage lost its newest part. Look through what you kept last, and enter again what is not there."));
    say(findings.witness == WitnessState::Missing, tr("The list that shows missing entries is gone."),
        tr("It has been written anew, and whether anything was missing before cannot be told. Look through what you kept last."));
    say(findings.movedHere, tr("This vault comes from another install."),
        tr("From now on it writes as a device of its own. Do not go on with the old copy as well: each would miss what the other keeps."));
    say(findings.keyFileHealed, tr("One copy of the key file was damaged."),
        tr("The other was whole, and the damaged one has been written anew. If this comes again the storage is failing: copy the vault's folder to another disk."));
    say(findings.folderSynced, tr("Something may carry the vault's folder to other devices."),
        folder.isEmpty() ? tr("Two devices writing into one vault would ruin it. Where you chose what is carried, leave the vault's folder out.")
                         : tr("Two devices writing into one vault would ruin it. Where you chose what is carried, leave this folder out: %1").arg(folder));
    say(findings.reserveMissing, tr("This device is as good as full."), tr("Free some space now, so that what you enter next can be kept."));
    say(unreadFormCount > 0, tr("Half-typed forms of a newer app are here: %1.").arg(unreadFormCount),
        tr("They stay as they are. Update the app to go on with them."));
    return all;
}

}
