// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/refusal.h"

namespace steelyard::vault {

Code codeOf(seal::Code code)
{
    switch (code) {
    case seal::Code::MemoryRefusedCloseOthers:
    case seal::Code::StretchRefusedCloseOthers:
        return Code::MemoryRefusedCloseOthers;
    case seal::Code::StretchTooCostlyRestoreBackup:
    case seal::Code::StretchTooWeakRestoreBackup:
    case seal::Code::KeyFileForgedRestoreBackup:
    case seal::Code::SignatureWrongRefuse:
    case seal::Code::SealNotForUsRefuse:
        return Code::KeyFileForgedRestoreBackup;
    case seal::Code::TextTooLongShorten:
    case seal::Code::RecoveryCodeTypeOn:
    case seal::Code::RecoveryCodeGroupTypeAgain:
        return Code::SecretUnfitTypeAgain;
    case seal::Code::WrongSecretTypeAgain:
        return Code::WrongSecretTypeAgain;
    case seal::Code::NoSuchSlotUseAnother:
        return Code::NoSuchWayInUseAnother;
    case seal::Code::KeyFileMissingFindFolder:
        return Code::KeyFileMissingFindFolder;
    case seal::Code::KeyFileDamagedRestoreBackup:
        return Code::KeyFileDamagedRestoreBackup;
    case seal::Code::KeyFileNewerUpdateApp:
        return Code::NewerVersionUpdateApp;
    case seal::Code::KeyFilesOfTwoVaultsSortOut:
        return Code::KeyFilesOfTwoVaultsSortOut;
    case seal::Code::FileUnreadableTryAgain:
        return Code::FileUnreadableTryAgain;
    case seal::Code::FolderReadOnlyChooseOther:
        return Code::FolderReadOnlyChooseOther;
    case seal::Code::DiskFullFreeSpace:
        return Code::DiskFullFreeSpace;
    case seal::Code::WriteFailedTryAgain:
        break;
    }
    return Code::WriteFailedTryAgain;
}

}
