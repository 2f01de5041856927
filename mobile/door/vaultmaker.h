// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/door/secretnote.h"
#include "mobile/door/vaultservice.h"

#include <optional>

/** The first start: a passphrase, then a recovery code shown once and typed back, then the vault. */
class VaultMaker : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(VaultService* vault READ vault WRITE setVault NOTIFY vaultChanged REQUIRED FINAL)
    Q_PROPERTY(Step step READ step NOTIFY stepChanged FINAL)
    Q_PROPERTY(bool drawn READ isDrawn NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged FINAL)
    Q_PROPERTY(QList<int> groups READ groups NOTIFY groupsChanged FINAL)
    Q_PROPERTY(bool agreed READ isAgreed NOTIFY groupsChanged FINAL)
    Q_PROPERTY(SecretNote* words READ words CONSTANT FINAL)
    Q_PROPERTY(SecretNote* code READ code CONSTANT FINAL)
    Q_PROPERTY(QString strength READ strength CONSTANT FINAL)
    Q_PROPERTY(int least READ least CONSTANT FINAL)

public:
    enum class Step { Choose, Passphrase, Code, Retype };
    Q_ENUM(Step)
    static constexpr int leastCharacters = 12;

    explicit VaultMaker(QObject* parent = nullptr);
    VaultMaker(steelyard::seal::RandomSource random, QObject* parent);

    [[nodiscard]] VaultService* vault() const { return m_vault; }
    void setVault(VaultService* vault);
    [[nodiscard]] Step step() const { return m_step; }
    /// Whether the passphrase is five words drawn here, and not the coach's own.
    [[nodiscard]] bool isDrawn() const { return m_drawn; }
    [[nodiscard]] QString refusal() const { return m_refusal; }
    /// How each of the five groups typed back stands: 0 unfinished, 1 not as shown, 2 right.
    [[nodiscard]] QList<int> groups() const { return m_groups; }
    /// Whether the code was typed back whole.
    [[nodiscard]] bool isAgreed() const { return m_agreed; }
    [[nodiscard]] SecretNote* words() { return &m_words; }
    [[nodiscard]] SecretNote* code() { return &m_code; }
    [[nodiscard]] QString strength() const;
    [[nodiscard]] int least() const { return leastCharacters; }

    Q_INVOKABLE void choose(bool drawn);
    Q_INVOKABLE void drawAgain();
    /// Takes the passphrase when both fields agree, or the second agrees with the words drawn; false with the reason otherwise.
    Q_INVOKABLE bool takePassphrase(SecretField* first, SecretField* second);
    Q_INVOKABLE void codeWritten();
    /// Looks at what has been typed back so far.
    Q_INVOKABLE void compare(SecretField* typed);
    /// Makes the vault; false while the code does not agree.
    Q_INVOKABLE bool finish(SecretField* typed);
    /// One step back; false at the first.
    Q_INVOKABLE bool back();
    Q_INVOKABLE void hush();

Q_SIGNALS:
    void vaultChanged();
    void stepChanged();
    void refusalChanged();
    void groupsChanged();

private:
    void go(Step step);
    void refuse(const QString& why);
    bool drawCode();

    VaultService* m_vault = nullptr;
    steelyard::seal::RandomSource m_random;
    Step m_step = Step::Choose;
    bool m_drawn = true;
    bool m_agreed = false;
    QString m_refusal;
    QList<int> m_groups;
    SecretNote m_words, m_code;
    steelyard::seal::SecretText m_passphrase;
    std::optional<steelyard::seal::RecoveryCode> m_recovery;
};
