// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/door/vaultport.h"

#include <QTimer>

#include <string>

/** A vault that does as a test says, one turn of the event loop later. */
class FakeVault : public VaultPort {
public:
    steelyard::vault::Look standing{};
    std::optional<steelyard::vault::Refusal> answer;
    std::string passphrase; ///< what came in last
    int codeCount = 0;
    int lockedCount = 0;
    int removedCount = 0;

    void look(std::function<void(steelyard::vault::Look)> done) override
    {
        later([this, done] { done(standing); });
    }
    void create(steelyard::seal::SecretText text, steelyard::seal::RecoveryCode, WhenOpen done) override
    {
        passphrase = text.view();
        later([this, done] { done(result()); });
    }
    void unlock(steelyard::seal::SecretText text, WhenOpen done) override
    {
        passphrase = text.view();
        later([this, done] { done(result()); });
    }
    void unlock(steelyard::seal::RecoveryCode, WhenOpen done) override
    {
        ++codeCount;
        later([this, done] { done(result()); });
    }
    void removeSample(std::function<void(std::optional<steelyard::vault::Refusal>)> done) override
    {
        later([this, done] { ++removedCount; done(answer); });
    }
    void lock(std::function<void()> done) override
    {
        later([this, done] { ++lockedCount; done(); });
    }

private:
    [[nodiscard]] steelyard::vault::Outcome<steelyard::vault::Opened> result() const
    {
        if (answer)
            return *answer;
        steelyard::vault::Opened opened;
        opened.nature = standing.nature;
        return opened;
    }
    void later(std::function<void()> what) { QTimer::singleShot(0, &m_here, std::move(what)); }

    QObject m_here;
};
