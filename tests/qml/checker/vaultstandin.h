// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "tests/mobile/door/fakevault.h"
#endif
#include "mobile/door/secretnote.h"
#include "mobile/door/vaultservice.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** A door with a vault behind it that does as a test says. */
class VaultStandIn : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(VaultService* vault READ vault CONSTANT FINAL)
    Q_PROPERTY(QString passphrase READ passphrase FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] VaultService* vault() { return &m_door; }
    /// What came in last, to be held against what was typed.
    [[nodiscard]] QString passphrase() const { return QString::fromStdString(m_fake.passphrase); }
    [[nodiscard]] int restartCount() const { return m_restartCount; }
    /// The next answer to a secret, by the code's number; -1 opens.
    Q_INVOKABLE void answer(int code);
    Q_INVOKABLE void none() { stand(steelyard::vault::Standing::None); }
    Q_INVOKABLE void locked() { stand(steelyard::vault::Standing::Locked); }
    /// A sample, locked.
    Q_INVOKABLE void example() { stand(steelyard::vault::Standing::Locked, steelyard::seal::VaultNature::Sample); }
    Q_INVOKABLE void stopped(int code);
    /// Types a secret that is shown, as a person reads it from the page.
    Q_INVOKABLE void copy(SecretNote* shown, SecretField* into) const;
    /// Straight past the door.
    Q_INVOKABLE void open();

private:
    void stand(steelyard::vault::Standing standing, steelyard::seal::VaultNature nature = steelyard::seal::VaultNature::Own);

    FakeVault m_fake;
    int m_restartCount = 0;
    VaultService m_door{m_fake, {}, [this] { ++m_restartCount; return true; }};
};
