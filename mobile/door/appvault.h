// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/door/vaultport.h"

#include <QObject>

/** The vault of this device, in the app's own folder. */
class AppVault : public VaultPort {
public:
    /// Where the vault lies, and where this install remembers which vaults it wrote; never one inside the other.
    struct Folders {
        std::filesystem::path vault, install;
    };
    /// As the system has it for the app's own data.
    [[nodiscard]] static Folders usualFolders();
    /// Beside it, for the sample season.
    [[nodiscard]] static Folders sampleFolders();

    /// What keys cost is measured unless it is given.
    explicit AppVault(Folders folders, std::optional<steelyard::seal::StretchCost> cost = std::nullopt);

    [[nodiscard]] QString folder() const { return QString::fromStdString(m_folders.vault.string()); }
    [[nodiscard]] steelyard::vault::VaultAccess& access() { return m_access; }
    void look(std::function<void(steelyard::vault::Look)> done) override;
    void create(steelyard::seal::SecretText passphrase, steelyard::seal::RecoveryCode code, WhenOpen done) override;
    void unlock(steelyard::seal::SecretText passphrase, WhenOpen done) override;
    void unlock(steelyard::seal::RecoveryCode code, WhenOpen done) override;
    void lock(std::function<void()> done) override;
    void removeSample(std::function<void(std::optional<steelyard::vault::Refusal>)> done) override;

private:
    Folders m_folders;
    std::optional<steelyard::seal::StretchCost> m_cost;
    // results wait in the queue of this object, and go with it
    QObject m_here;
    steelyard::vault::VaultAccess m_access;
};
