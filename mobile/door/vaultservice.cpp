// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/vaultservice.h"

#include "core/sample/samplevault.h"
#include "mobile/text/vaulttexts.h"

using namespace steelyard;

VaultService::VaultService(VaultPort& port, Receive receive, Restart restart, QObject* parent)
    : QObject(parent), m_port(port), m_receive(std::move(receive)), m_restart(std::move(restart))
{
}

QString VaultService::backupNote() const
{
    return vaulttexts::noBackupYet();
}

QString VaultService::samplePassphrase() const
{
    return QString::fromUtf8(sample::passphrase.data(), static_cast<qsizetype>(sample::passphrase.size()));
}

void VaultService::look()
{
    enter(State::Looking);
    m_port.look([this](const vault::Look& look) {
        m_sample = look.nature == seal::VaultNature::Sample;
        if (look.trouble)
            say(vaulttexts::said(*look.trouble));
        enter(look.standing == vault::Standing::None ? State::NoVault : look.standing == vault::Standing::Locked ? State::Locked : State::Stopped);
    });
}

void VaultService::create(seal::SecretText passphrase, seal::RecoveryCode code)
{
    enter(State::Working);
    m_port.create(std::move(passphrase), std::move(code), afterOpening(State::NoVault));
}

void VaultService::unlock(SecretField* passphrase)
{
    if (m_state != State::Locked || !passphrase || passphrase->count() == 0)
        return;
    enter(State::Working);
    m_port.unlock(passphrase->take(), afterOpening(State::Locked));
}

void VaultService::unlockByCode(SecretField* code)
{
    if (m_state != State::Locked || !code)
        return;
    auto parsed = seal::RecoveryCode::parse(code->view());
    if (!parsed) {
        // what was typed stays, so that one group can be put right
        say(vaulttexts::said(parsed.code()));
        Q_EMIT changed();
        return;
    }
    code->wipe();
    enter(State::Working);
    m_port.unlock(*std::move(parsed), afterOpening(State::Locked));
}

void VaultService::unlockSample()
{
    seal::SecretText secret;
    if (m_state != State::Locked || !m_sample || !secret.append(sample::passphrase))
        return;
    enter(State::Working);
    m_port.unlock(std::move(secret), afterOpening(State::Locked));
}

void VaultService::lockNow()
{
    if (m_state != State::Open)
        return;
    Q_EMIT closing();
    enter(State::Looking);
    m_port.lock([this] { startAnew(); });
}

void VaultService::removeSample()
{
    if (m_state != State::Open || !m_sample)
        return;
    Q_EMIT closing();
    enter(State::Looking);
    m_port.lock([this] {
        m_port.removeSample([this](const std::optional<vault::Refusal>& refusal) {
            if (refusal) {
                say(vaulttexts::said(*refusal));
                enter(State::Stopped);
                return;
            }
            Q_EMIT sampleRemoved();
            startAnew();
        });
    });
}

void VaultService::startAnew()
{
    if (m_restart())
        return;
    say(vaulttexts::restartRefused());
    enter(State::Stopped);
}

void VaultService::tell(const std::vector<sentences::Said>& said)
{
    for (const auto& [head, body] : said)
        m_news.append(QVariantMap{{QStringLiteral("head"), head}, {QStringLiteral("body"), body}});
    if (!said.empty())
        Q_EMIT newsChanged();
}

void VaultService::newsRead()
{
    if (m_news.isEmpty())
        return;
    m_news.clear();
    Q_EMIT newsChanged();
}

void VaultService::hush()
{
    if (m_head.isEmpty())
        return;
    m_head.clear();
    m_body.clear();
    Q_EMIT changed();
}

VaultPort::WhenOpen VaultService::afterOpening(State otherwise)
{
    return [this, otherwise](vault::Outcome<vault::Opened> outcome) {
        if (!outcome) {
            say(vaulttexts::said(outcome.refusal()));
            enter(vaulttexts::anotherTryHelps(outcome.code()) ? otherwise : State::Stopped);
            return;
        }
        m_sample = outcome->nature == seal::VaultNature::Sample;
        if (m_receive)
            m_receive(*std::move(outcome));
        enter(State::Open);
        Q_EMIT opened();
    };
}

void VaultService::enter(State state)
{
    m_state = state;
    if (state == State::Looking || state == State::Working || state == State::Open) {
        m_head.clear();
        m_body.clear();
    }
    Q_EMIT changed();
}

void VaultService::say(const sentences::Said& said)
{
    m_head = said.head;
    m_body = said.body;
}
