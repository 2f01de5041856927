// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/start.h"
#include "tests/core/seal/sealing.h"

#include <csignal>
#include <ostream>
#include <rapidcheck.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace sealing;

namespace {

template <typename T>
constexpr bool staysPut = !std::is_copy_constructible_v<T> && !std::is_copy_assignable_v<T> && std::is_nothrow_move_constructible_v<T>
    && !requires(std::ostream& out, const T& value) { out << value; };

static_assert(staysPut<SecretBlock> && staysPut<SecretBytes> && staysPut<SecretText> && staysPut<WrappingKey> && staysPut<VaultKey>
    && staysPut<DataKey> && staysPut<SubKey> && staysPut<RecoveryCode> && staysPut<SigningKey> && staysPut<BoxKey>
    && staysPut<DeviceIdentity> && staysPut<SlotKey> && staysPut<Keyring> && staysPut<Hasher>);

/// Whether a child that writes into the secret is stopped by the system.
bool writeEndsProcess(const SecretBytes& secret)
{
    const pid_t child = fork();
    if (child == 0) {
        std::signal(SIGSEGV, SIG_DFL);
        const rlimit none{0, 0};
        setrlimit(RLIMIT_CORE, &none);
        *const_cast<std::byte*>(secret.view().data()) = std::byte{1};
        _exit(0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return !(WIFEXITED(status) && WEXITSTATUS(status) == 0);
}

}

class TestSecretMemory : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void startsTwice()
    {
        QVERIFY(start());
        QVERIFY(start());
    }

    void noCoreFile()
    {
        QVERIFY(forbidCoreDumps());
        rlimit limit{1, 1};
        QCOMPARE(getrlimit(RLIMIT_CORE, &limit), 0);
        QCOMPARE(limit.rlim_cur, rlim_t(0));
        QCOMPARE(limit.rlim_max, rlim_t(0));
        QCOMPARE(prctl(PR_GET_DUMPABLE, 0, 0, 0, 0), 0);
    }

    void wipedBeforeItGoesBack()
    {
        WatchingSource source;
        {
            const SecretBytes random = *SecretBytes::random(40, systemRandom());
            SecretBytes copy = *SecretBytes::copyOf(random.view());
            QVERIFY(sameBytes(copy.view(), random.view()));
            copy = *SecretBytes::random(7, countingRandom());
            QCOMPARE(source.given, 1);
            SecretText text = textOf("a bar, two chains");
            text.clear();
            QCOMPARE(source.given, 2);
        }
        QCOMPARE(source.given, 4);
        QCOMPARE(source.out(), std::size_t(0));
        QVERIFY(source.wiped);
    }

    void wipedAfterARefusedFill()
    {
        WatchingSource source;
        const Outcome<SecretBytes> refused = SecretBytes::make(16, [](ByteRoom room) -> Outcome<Done> {
            room[3] = std::byte{0x5A};
            return Code::WrongSecretTypeAgain;
        });
        QVERIFY(!refused);
        QCOMPARE(refused.code(), Code::WrongSecretTypeAgain);
        QCOMPARE(source.given, 1);
        QVERIFY(source.wiped);
    }

    void readOnlyOnceFilled()
    {
        QVERIFY(writeEndsProcess(*SecretBytes::random(32, systemRandom())));
    }

    void movedFromIsEmpty()
    {
        SecretBytes one = *SecretBytes::random(8, countingRandom());
        const SecretBytes other = std::move(one);
        QCOMPARE(other.size(), std::size_t(8));
        QCOMPARE(one.size(), std::size_t(0));
        SecretText text = textOf("abc");
        const SecretText moved = std::move(text);
        QCOMPARE(moved.view(), std::string_view("abc"));
        QVERIFY(text.empty());
        QCOMPARE(text.characterCount(), std::size_t(0));
    }

    void refusedMemoryIsACode()
    {
        WatchingSource source(0);
        const Outcome<SecretBytes> bytes = SecretBytes::random(32, systemRandom());
        QVERIFY(!bytes);
        QCOMPARE(bytes.code(), Code::MemoryRefusedCloseOthers);
        SecretText text;
        const Outcome<Done> added = text.append("x");
        QVERIFY(!added);
        QCOMPARE(added.code(), Code::MemoryRefusedCloseOthers);
        QVERIFY(text.empty());
    }

    void hugeMemoryIsRefused()
    {
        QCOMPARE(SecretBytes::random(SIZE_MAX / 2, systemRandom()).code(), Code::MemoryRefusedCloseOthers);
    }

    void refusedGrowthLeavesTheText()
    {
        WatchingSource source(1);
        SecretText text = textOf("kept");
        const std::string more(200, 'x');
        QCOMPARE(text.append(more).code(), Code::MemoryRefusedCloseOthers);
        QCOMPARE(text.view(), std::string_view("kept"));
    }

    void neverCutOff()
    {
        SecretText text;
        const std::string most(SecretText::largestSize, 'p');
        QVERIFY(text.append(most));
        QCOMPARE(text.view(), std::string_view(most));
        QCOMPARE(text.append("x").code(), Code::TextTooLongShorten);
        QCOMPARE(text.view(), std::string_view(most));
    }

    void codePointsGoWhole()
    {
        SecretText text = textOf("a\u00E9\u20AC\U0001F3CB");
        QCOMPARE(text.characterCount(), std::size_t(4));
        text.removeLast();
        QCOMPARE(text.view(), std::string_view("a\u00E9\u20AC"));
        QCOMPARE(QByteArray(text.view().data() + text.view().size(), 4), QByteArray(4, '\0'));
        text.removeLast();
        QCOMPARE(text.view(), std::string_view("a\u00E9"));
        text.removeLast();
        text.removeLast();
        text.removeLast();
        QVERIFY(text.empty());
    }

    void typedAsAnOrdinaryText()
    {
        WatchingSource source;
        QVERIFY(rc::check("a secret text holds what an ordinary one would", [] {
            SecretText secret;
            std::string plain;
            for (const auto& piece : *rc::gen::arbitrary<std::vector<std::string>>()) {
                if (piece.empty() && !plain.empty()) {
                    secret.removeLast();
                    while ((static_cast<unsigned char>(plain.back()) & 0xC0) == 0x80 && plain.size() > 1)
                        plain.pop_back();
                    plain.pop_back();
                } else if (plain.size() + piece.size() <= SecretText::largestSize) {
                    RC_ASSERT(secret.append(piece).ok());
                    plain += piece;
                } else {
                    RC_ASSERT(secret.append(piece).code() == Code::TextTooLongShorten);
                }
                RC_ASSERT(secret.view() == plain);
            }
        }));
        QCOMPARE(source.out(), std::size_t(0));
        QVERIFY(source.wiped);
    }
};

QTEST_APPLESS_MAIN(TestSecretMemory)
#include "test_secretmemory.moc"
