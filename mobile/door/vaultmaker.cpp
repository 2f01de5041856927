// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/vaultmaker.h"

#include "core/seal/start.h"
#include "mobile/door/fivewords.h"
#include "mobile/text/vaulttexts.h"

using namespace steelyard;

VaultMaker::VaultMaker(QObject* parent) : VaultMaker(seal::systemRandom(), parent)
{
}

VaultMaker::VaultMaker(seal::RandomSource random, QObject* parent)
    : QObject(parent), m_random(std::move(random)), m_groups(seal::RecoveryCode::groupCount, 0)
{
}

void VaultMaker::setVault(VaultService* vault)
{
    if (m_vault == vault)
        return;
    m_vault = vault;
    Q_EMIT vaultChanged();
}

QString VaultMaker::strength() const
{
    return tr("Five of %1 words, drawn by this device: 1 in 2 to the power of %2.").arg(fivewords::wordCount()).arg(static_cast<int>(fivewords::entropyBitCount()));
}

void VaultMaker::choose(bool drawn)
{
    m_drawn = drawn;
    if (drawn)
        drawAgain();
    else
        m_words.wipe();
    go(Step::Passphrase);
}

void VaultMaker::drawAgain()
{
    auto words = fivewords::draw(m_random);
    if (words)
        m_words.set(*std::move(words));
    else
        refuse(vaulttexts::said(seal::Code::MemoryRefusedCloseOthers).head);
}

bool VaultMaker::takePassphrase(SecretField* first, SecretField* second)
{
    if (!second || (!m_drawn && !first))
        return false;
    if (m_drawn) {
        if (second->view() != m_words.view()) {
            refuse(tr("Those are not the five words above. One space stands between two words."));
            return false;
        }
    } else if (first->count() < leastCharacters) {
        refuse(tr("At least %n characters: there are %1.", nullptr, leastCharacters).arg(first->count()));
        return false;
    } else if (first->view() != second->view()) {
        refuse(tr("The two are not the same. Hold Show to see them."));
        return false;
    }
    m_passphrase = second->take();
    if (first)
        first->wipe();
    m_words.wipe();
    if (!drawCode())
        return false;
    go(Step::Code);
    return true;
}

bool VaultMaker::drawCode()
{
    auto code = seal::RecoveryCode::generate(m_random);
    auto text = code ? code->text() : seal::Outcome<seal::SecretText>(code.code());
    if (!text) {
        refuse(vaulttexts::said(seal::Code::MemoryRefusedCloseOthers).head);
        return false;
    }
    m_recovery = *std::move(code);
    m_code.set(*std::move(text));
    return true;
}

void VaultMaker::codeWritten()
{
    go(Step::Retype);
}

void VaultMaker::compare(SecretField* typed)
{
    const auto states = seal::RecoveryCode::groups(typed->view());
    const auto parsed = seal::RecoveryCode::parse(typed->view());
    m_agreed = parsed && m_recovery && parsed->sameAs(*m_recovery);
    for (std::size_t i = 0; i < states.size(); ++i)
        m_groups[static_cast<int>(i)] = states[i] == seal::GroupState::Unfinished ? 0 : states[i] == seal::GroupState::Right ? 2 : 1;
    refuse(parsed && !m_agreed ? tr("That is another recovery code. Type the one that was shown.") : QString());
    Q_EMIT groupsChanged();
}

bool VaultMaker::finish(SecretField* typed)
{
    compare(typed);
    if (!m_agreed || !m_vault)
        return false;
    typed->wipe();
    m_code.wipe();
    m_agreed = false;
    seal::RecoveryCode code = *std::move(m_recovery);
    m_recovery.reset();
    m_vault->create(std::exchange(m_passphrase, seal::SecretText()), std::move(code));
    go(Step::Choose);
    return true;
}

bool VaultMaker::back()
{
    switch (m_step) {
    case Step::Choose:
        return false;
    case Step::Passphrase:
        m_words.wipe();
        go(Step::Choose);
        return true;
    case Step::Code:
        // nothing is made yet: the passphrase is asked for again, and the code will be another one
        m_passphrase.clear();
        m_code.wipe();
        m_recovery.reset();
        choose(m_drawn);
        return true;
    case Step::Retype:
        go(Step::Code);
        return true;
    }
    return false;
}

void VaultMaker::hush()
{
    refuse({});
}

void VaultMaker::go(Step step)
{
    m_step = step;
    m_agreed = false;
    m_groups.fill(0);
    refuse({});
    Q_EMIT groupsChanged();
    Q_EMIT stepChanged();
}

void VaultMaker::refuse(const QString& why)
{
    if (m_refusal == why)
        return;
    m_refusal = why;
    Q_EMIT refusalChanged();
}
