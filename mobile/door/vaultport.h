// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/access.h"

/** The vault as the app's door needs it. Results come on the thread that asked, never before the call has returned. */
class VaultPort {
public:
    using WhenOpen = steelyard::vault::WhenDone<steelyard::vault::Opened>;

    VaultPort() = default;
    VaultPort(const VaultPort&) = delete;
    VaultPort& operator=(const VaultPort&) = delete;
    virtual ~VaultPort() = default;

    virtual void look(std::function<void(steelyard::vault::Look)> done) = 0;
    virtual void create(steelyard::seal::SecretText passphrase, steelyard::seal::RecoveryCode code, WhenOpen done) = 0;
    virtual void unlock(steelyard::seal::SecretText passphrase, WhenOpen done) = 0;
    virtual void unlock(steelyard::seal::RecoveryCode code, WhenOpen done) = 0;
    /// Waits for what is being kept, closes the database and wipes the keys.
    virtual void lock(std::function<void()> done) = 0;
    /// Takes a sample vault away once it is locked; told what stood in the way, if anything.
    virtual void removeSample(std::function<void(std::optional<steelyard::vault::Refusal>)> done) = 0;
};
