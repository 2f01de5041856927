// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "mobile/door/vaultport.h"
#include "mobile/text/sentences.h"
#endif
#include "mobile/door/secretfield.h"

#include <QJSEngine>
#include <QObject>
#include <QQmlEngine>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

/** The door of the vault: how it stands, what to say about it, and the ways in and out. */
class VaultService : public QObject {
    Q_OBJECT
    Q_PROPERTY(State state READ state NOTIFY changed FINAL)
    Q_PROPERTY(QString head READ head NOTIFY changed FINAL)
    Q_PROPERTY(QString body READ body NOTIFY changed FINAL)
    Q_PROPERTY(QString backupNote READ backupNote CONSTANT FINAL)
    Q_PROPERTY(bool sample READ isSample NOTIFY changed FINAL)
    Q_PROPERTY(QString samplePassphrase READ samplePassphrase CONSTANT FINAL)
    Q_PROPERTY(QVariantList news READ news NOTIFY newsChanged FINAL)

public:
    enum class State {
        Looking, ///< not known yet, or about to close
        NoVault,
        Locked,
        Working, ///< a key is being made
        Open,
        Stopped, ///< no secret helps; `head` and `body` say what does
    };
    Q_ENUM(State)
    /// Replaces the process by a fresh one; false when the system refuses.
    using Restart = std::function<bool()>;

    /// Gets what the vault holds, before anybody is told that it is open.
    using Receive = std::function<void(steelyard::vault::Opened)>;

    VaultService(VaultPort& port, Receive receive, Restart restart, QObject* parent = nullptr);

    [[nodiscard]] State state() const { return m_state; }
    /// What went wrong and what to do next; empty when nothing did.
    [[nodiscard]] QString head() const { return m_head; }
    [[nodiscard]] QString body() const { return m_body; }
    /// That there is no second copy, until there is one.
    [[nodiscard]] QString backupNote() const;

    /// Whether the vault here is a sample, known before it is unlocked.
    [[nodiscard]] bool isSample() const { return m_sample; }
    /// Opens every sample, and is no secret.
    [[nodiscard]] QString samplePassphrase() const;

    /// What is not as usual with a vault that opens all the same: a list of {head, body}, until it has been read.
    [[nodiscard]] QVariantList news() const { return m_news; }
    void tell(const std::vector<sentences::Said>& said);
    Q_INVOKABLE void newsRead();

    void create(steelyard::seal::SecretText passphrase, steelyard::seal::RecoveryCode code);
    /// Looks at the vault's folder anew.
    Q_INVOKABLE void look();
    Q_INVOKABLE void unlock(SecretField* passphrase);
    Q_INVOKABLE void unlockByCode(SecretField* code);
    /// Unlocks a sample by its own passphrase.
    Q_INVOKABLE void unlockSample();
    /// Locks, takes a sample vault away for good, and starts anew without it.
    Q_INVOKABLE void removeSample();
    /// Full lock: whatever is half entered is saved first, then the process starts anew without a secret.
    Q_INVOKABLE void lockNow();
    /// Takes the sentence away, once something else has been typed.
    Q_INVOKABLE void hush();

Q_SIGNALS:
    void changed();
    void newsChanged();
    void opened();
    /// The last moment to save what is half entered.
    void closing();
    /// The sample is gone from the disk; the app starts anew right after.
    void sampleRemoved();

private:
    void enter(State state);
    void say(const sentences::Said& said);
    void startAnew();
    VaultPort::WhenOpen afterOpening(State otherwise);

    VaultPort& m_port;
    Receive m_receive;
    Restart m_restart;
    State m_state = State::Looking;
    QString m_head, m_body;
    QVariantList m_news;
    bool m_sample = false;
};

/** The door as a type, for pages that are given one. */
struct VaultServiceForeign {
    Q_GADGET
    QML_FOREIGN(VaultService)
    QML_NAMED_ELEMENT(VaultService)
    QML_UNCREATABLE("there is one, and it is given")
};

/** The one of the app, which is a type of its own, as a type has one name in QML. */
class OneVault : public VaultService {
    Q_OBJECT

public:
    using VaultService::VaultService;
};

/** Shows the one vault to QML; main() or a test sets `instance` first. */
struct VaultForeign {
    Q_GADGET
    QML_FOREIGN(OneVault)
    QML_SINGLETON
    QML_NAMED_ELEMENT(TheVault)

public:
    inline static OneVault* instance = nullptr;
    static OneVault* create(QQmlEngine*, QJSEngine*)
    {
        QJSEngine::setObjectOwnership(instance, QJSEngine::CppOwnership);
        return instance;
    }
};
