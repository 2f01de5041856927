// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/appvault.h"

#include "core/seal/start.h"
#include "core/work/records/seasonbook.h"

#include <QStandardPaths>

using namespace steelyard;

namespace {

std::filesystem::path inside(QStandardPaths::StandardLocation place, const char* name)
{
    return std::filesystem::path(QStandardPaths::writableLocation(place).toStdString()) / name;
}

journal::Instant systemNow()
{
    return std::chrono::floor<std::chrono::milliseconds>(std::chrono::system_clock::now());
}

}

AppVault::Folders AppVault::usualFolders()
{
    return {inside(QStandardPaths::AppDataLocation, "vault"), inside(QStandardPaths::AppConfigLocation, "install")};
}

AppVault::Folders AppVault::sampleFolders()
{
    return {inside(QStandardPaths::AppDataLocation, "sample"), usualFolders().install};
}

AppVault::AppVault(Folders folders, std::optional<seal::StretchCost> cost)
    : m_folders(std::move(folders)), m_cost(cost),
      m_access({[this](std::function<void()> work) { QMetaObject::invokeMethod(&m_here, std::move(work), Qt::QueuedConnection); }, systemNow,
                seal::systemRandom(), m_folders.install})
{
}

void AppVault::look(std::function<void(vault::Look)> done)
{
    m_access.look(m_folders.vault, std::move(done));
}

void AppVault::create(seal::SecretText passphrase, seal::RecoveryCode code, WhenOpen done)
{
    m_access.create(m_folders.vault, {std::move(passphrase), std::move(code), m_cost, SeasonBook::wanted()}, std::move(done));
}

void AppVault::unlock(seal::SecretText passphrase, WhenOpen done)
{
    m_access.unlock(m_folders.vault, vault::byPassphrase(std::move(passphrase)), SeasonBook::wanted(), std::move(done));
}

void AppVault::unlock(seal::RecoveryCode code, WhenOpen done)
{
    m_access.unlock(m_folders.vault, vault::byRecoveryCode(std::move(code)), SeasonBook::wanted(), std::move(done));
}

void AppVault::lock(std::function<void()> done)
{
    m_access.lock([done = std::move(done)](vault::Outcome<vault::Done>) { done(); });
}

void AppVault::removeSample(std::function<void(std::optional<vault::Refusal>)> done)
{
    m_access.removeSample(m_folders.vault, [done = std::move(done)](const vault::Outcome<vault::Done>& outcome) {
        done(outcome ? std::nullopt : std::optional(outcome.refusal()));
    });
}
