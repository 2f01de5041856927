// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/vaultstandin.h"

#include <QCoreApplication>
#include <QKeyEvent>

using namespace steelyard;

namespace {

void press(SecretField& field, const QString& text)
{
    QKeyEvent key(QEvent::KeyPress, 0, Qt::NoModifier, text);
    QCoreApplication::sendEvent(&field, &key);
}

}

void VaultStandIn::answer(int code)
{
    m_fake.answer.reset();
    if (code >= 0)
        m_fake.answer = vault::Refusal{static_cast<vault::Code>(code), 3000000, 400000, 0};
}

void VaultStandIn::stopped(int code)
{
    m_fake.standing = {vault::Standing::Trouble, vault::Refusal{static_cast<vault::Code>(code)}};
    m_door.look();
    QCoreApplication::processEvents();
}

void VaultStandIn::copy(SecretNote* shown, SecretField* into) const
{
    for (const char c : shown->view())
        press(*into, QString(QLatin1Char(c)));
}

void VaultStandIn::open()
{
    answer(-1);
    locked();
    SecretField field;
    press(field, QStringLiteral("x"));
    m_door.unlock(&field);
    QCoreApplication::processEvents();
}

void VaultStandIn::stand(vault::Standing standing, seal::VaultNature nature)
{
    m_fake.standing = {standing, std::nullopt, nature};
    m_door.look();
    QCoreApplication::processEvents();
}
