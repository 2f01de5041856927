// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/seal/sealing.h"

#include <cctype>
#include <rapidcheck.h>

using namespace sealing;
using Groups = RecoveryCode::Groups;

namespace {

const std::string alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr Groups allRight{GroupState::Right, GroupState::Right, GroupState::Right, GroupState::Right, GroupState::Right};

RecoveryCode anyCode()
{
    const auto values = *rc::gen::container<std::vector<std::uint8_t>>(RecoveryCode::symbolCount, rc::gen::arbitrary<std::uint8_t>());
    return *RecoveryCode::generate([&values](ByteRoom room) { copyBytes(std::as_bytes(std::span(values)), room); });
}

std::string written(const RecoveryCode& code)
{
    return std::string(code.text()->view());
}

std::size_t groupAt(const std::string& text, std::size_t at)
{
    return static_cast<std::size_t>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '-'));
}

std::size_t anySymbolPlace(const std::string& text)
{
    return *rc::gen::suchThat(rc::gen::inRange<std::size_t>(0, text.size()), [&text](std::size_t at) { return text[at] != '-'; });
}

Groups onlyWrong(std::size_t group)
{
    Groups states = allRight;
    states[group] = GroupState::Wrong;
    return states;
}

/// The check symbol by long multiplication of polynomials over x^5 + x^2 + 1, apart from the code under test.
char checkSymbol(const std::string& symbols, unsigned group)
{
    unsigned sum = group;
    for (std::size_t at = 0; at < symbols.size(); ++at) {
        unsigned product = static_cast<unsigned>(alphabet.find(symbols[at])) << (symbols.size() - at);
        for (unsigned degree = 12; degree >= 5; --degree)
            if (product >> degree & 1)
                product ^= 0b100101U << (degree - 5);
        sum ^= product;
    }
    return alphabet[sum];
}

}

class TestRecoveryCode : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // https://www.crockford.com/base32.html: the encode column, and the decode column with its other spellings.
    void alphabetOfThePage()
    {
        for (unsigned value = 0; value < 32; ++value) {
            const RecoveryCode code = *RecoveryCode::generate([value](ByteRoom room) {
                std::fill(room.begin(), room.end(), std::byte{});
                room[0] = static_cast<std::byte>(value);
            });
            QCOMPARE(written(code)[0], "0123456789ABCDEFGHJKMNPQRSTVWXYZ"[value]);
        }
        const std::string plain = written(*RecoveryCode::generate([](ByteRoom room) { copyBytes(fromHex(
            "0001000100"
            "0100010001"
            "0a0b0c0d0e"
            "1011121314"
            "1f1e1d1c1b1a"), room); }));
        QVERIFY(plain.starts_with("01010"));
        for (const char* spelling : {"0101010101", "o1o1o1o1o1", "OIOIOIOIOI", "0i0i0i0i0i", "0L0L0L0L0L", "olOlolOlOl"}) {
            std::string other = plain;
            std::size_t used = 0;
            for (std::size_t at = 0; at < 13; ++at)
                if (at != 5 && at != 6 && at != 12)
                    other[at] = spelling[used++];
            const Outcome<RecoveryCode> read = RecoveryCode::parse(other);
            QVERIFY2(read, other.c_str());
            QCOMPARE(written(*read), plain);
        }
        for (const char stranger : {'U', 'u', '*', '~', '$', '=', '@', '\0', '\x7F', '\xC3'}) {
            std::string other = plain;
            other[15] = stranger;
            QCOMPARE(RecoveryCode::parse(other).code(), Code::RecoveryCodeGroupTypeAgain);
            QVERIFY(RecoveryCode::groups(other) == onlyWrong(2));
        }
    }

    void formIsFiveGroups()
    {
        QVERIFY(rc::check("31 symbols of the alphabet in groups of 6, 6, 6, 6 and 7, each ended by its check symbol", [] {
            const std::string text = written(anyCode());
            RC_ASSERT(text.size() == 35U);
            for (unsigned group = 0; group < 5; ++group) {
                const std::string part = text.substr(group * 7, group == 4 ? 7 : 6);
                RC_ASSERT(part.find_first_not_of(alphabet) == std::string::npos);
                RC_ASSERT(part.back() == checkSymbol(part.substr(0, part.size() - 1), group + 1));
                RC_ASSERT(group == 4 || text[group * 7 + 6] == '-');
            }
        }));
    }

    void readsWhatItWrote()
    {
        QVERIFY(rc::check("written, then typed in any case with spaces, hyphens and look-alikes, it is the same code", [] {
            const RecoveryCode code = anyCode();
            const bool keepsGroups = *rc::gen::arbitrary<bool>();
            std::string typed;
            for (char c : written(code)) {
                if (c == '-' && !keepsGroups)
                    continue;
                if (c == '0' && *rc::gen::arbitrary<bool>())
                    c = 'O';
                if (c == '1' && *rc::gen::arbitrary<bool>())
                    c = *rc::gen::element('I', 'L', 'i', 'l');
                typed += *rc::gen::arbitrary<bool>() ? static_cast<char>(std::tolower(c)) : c;
                if (!keepsGroups && *rc::gen::inRange(0, 4) == 0)
                    typed += *rc::gen::element<std::string>("-", " ", "\n", " - ");
            }
            const Outcome<RecoveryCode> again = RecoveryCode::parse(typed);
            RC_ASSERT(again.ok());
            RC_ASSERT(again->sameAs(code));
            RC_ASSERT(RecoveryCode::groups(typed) == allRight);
        }));
    }

    void everySingleWrongSymbol()
    {
        const std::string text = written(*RecoveryCode::generate(countingRandom()));
        int tried = 0;
        for (std::size_t at = 0; at < text.size(); ++at) {
            if (text[at] == '-')
                continue;
            for (const char other : alphabet) {
                if (other == text[at])
                    continue;
                std::string typed = text;
                typed[at] = other;
                QVERIFY(RecoveryCode::groups(typed) == onlyWrong(groupAt(text, at)));
                QCOMPARE(RecoveryCode::parse(typed).code(), Code::RecoveryCodeGroupTypeAgain);
                ++tried;
            }
        }
        QCOMPARE(tried, 31 * 31);
    }

    void oneWrongSymbolInAnyCode()
    {
        QVERIFY(rc::check("a wrong symbol is pointed out in its group", [] {
            const std::string text = written(anyCode());
            const std::size_t at = anySymbolPlace(text);
            std::string typed = text;
            typed[at] = *rc::gen::distinctFrom(rc::gen::elementOf(alphabet), text[at]);
            RC_ASSERT(RecoveryCode::groups(typed) == onlyWrong(groupAt(text, at)));
        }));
    }

    void exchangedSymbols()
    {
        QVERIFY(rc::check("any two different symbols of a group exchanged are noticed, its check symbol among them", [] {
            const std::string text = written(anyCode());
            const std::size_t one = anySymbolPlace(text);
            const std::size_t other = anySymbolPlace(text);
            RC_PRE(groupAt(text, one) == groupAt(text, other) && text[one] != text[other]);
            std::string typed = text;
            std::swap(typed[one], typed[other]);
            RC_ASSERT(RecoveryCode::groups(typed) == onlyWrong(groupAt(text, one)));
        }));
    }

    void exchangedGroups()
    {
        QVERIFY(rc::check("two of the first four groups exchanged are both wrong", [] {
            const std::string text = written(anyCode());
            const std::size_t one = *rc::gen::inRange<std::size_t>(0, 4);
            const std::size_t other = *rc::gen::distinctFrom(rc::gen::inRange<std::size_t>(0, 4), one);
            std::string typed = text;
            std::swap_ranges(typed.begin() + static_cast<std::ptrdiff_t>(one * 7), typed.begin() + static_cast<std::ptrdiff_t>(one * 7 + 6),
                typed.begin() + static_cast<std::ptrdiff_t>(other * 7));
            Groups expected = onlyWrong(one);
            expected[other] = GroupState::Wrong;
            RC_ASSERT(RecoveryCode::groups(typed) == expected);
        }));
    }

    void missingAndSurplusStayInTheirGroup()
    {
        const std::string text = written(*RecoveryCode::generate(countingRandom()));
        std::string shorter = text;
        shorter.erase(9, 1);
        Groups expected = allRight;
        expected[1] = GroupState::Unfinished;
        QVERIFY(RecoveryCode::groups(shorter) == expected);
        QCOMPARE(RecoveryCode::parse(shorter).code(), Code::RecoveryCodeTypeOn);
        std::string longer = text;
        longer.insert(9, 1, '7');
        QVERIFY(RecoveryCode::groups(longer) == onlyWrong(1));
        QCOMPARE(RecoveryCode::parse(text + "7").code(), Code::RecoveryCodeGroupTypeAgain);
    }

    void whileTyping()
    {
        const std::string text = written(*RecoveryCode::generate(countingRandom()));
        for (std::size_t size = 0; size < text.size(); ++size) {
            const std::string typed = text.substr(0, size);
            QCOMPARE(RecoveryCode::parse(typed).code(), Code::RecoveryCodeTypeOn);
            const Groups states = RecoveryCode::groups(typed);
            for (std::size_t group = 0; group < states.size(); ++group)
                QVERIFY(states[group] == (size >= group * 7 + (group == 4 ? 7 : 6) ? GroupState::Right : GroupState::Unfinished));
        }
    }

    void anyTextIsTaken()
    {
        QVERIFY(rc::check("whatever is typed, the reading ends, and agrees with its groups", [](const std::string& typed) {
            const bool right = RecoveryCode::groups(typed) == allRight;
            RC_ASSERT(RecoveryCode::parse(typed).ok() == right);
        }));
    }

    void stretchedAsItsSymbolsInCapitals()
    {
        const RecoveryCode code = *RecoveryCode::generate(countingRandom());
        Salt salt{};
        salt.fill(std::byte{0x77});
        const QByteArray expected = toHex(stretch(bytesOf("0123456789ABCDEFGHJKMNPQRS"), salt, weakestStretch)->view());
        QCOMPARE(toHex(code.stretched(salt, weakestStretch)->view()), expected);
        QCOMPARE(code.stretched(salt, {{1}, 1}).code(), Code::StretchTooWeakRestoreBackup);
    }

    void leavesNothingBehind()
    {
        {
            WatchingSource source;
            const std::string text = written(*RecoveryCode::generate(systemRandom()));
            QVERIFY(RecoveryCode::parse(text));
            QCOMPARE(source.out(), std::size_t(0));
            QVERIFY(source.wiped);
        }
        WatchingSource none(0);
        QCOMPARE(RecoveryCode::generate(systemRandom()).code(), Code::MemoryRefusedCloseOthers);
    }
};

QTEST_APPLESS_MAIN(TestRecoveryCode)
#include "test_recoverycode.moc"
