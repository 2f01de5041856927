// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/recoverycode.h"

#include "core/seal/hash.h"

#include <optional>
#include <sodium.h>

namespace steelyard::seal {

namespace {

// Crockford's base 32, https://www.crockford.com/base32.html: no I, L, O or U.
constexpr std::string_view alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::array<std::size_t, RecoveryCode::groupCount> groupSizes{5, 5, 5, 5, 6};
constexpr std::size_t largestGroup = 6;
constexpr std::byte unreadable{0xFF};

/// The symbols of one group as typed, with the check symbol; `size` counts on when there is no room any more.
struct TypedGroup {
    ByteArray<largestGroup + 1> symbols{};
    std::size_t size = 0;
};

/// A whole code as typed, wiped at its end.
struct TypedCode {
    std::array<TypedGroup, RecoveryCode::groupCount> groups;

    TypedCode() = default;
    TypedCode(const TypedCode&) = delete;
    TypedCode& operator=(const TypedCode&) = delete;
    ~TypedCode() { sodium_memzero(groups.data(), sizeof(groups)); }
};

bool separates(char c)
{
    return c == '-' || c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

std::byte symbolOf(char c)
{
    const char capital = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    const char read = capital == 'O' ? '0' : capital == 'I' || capital == 'L' ? '1' : capital;
    const std::size_t value = alphabet.find(read);
    return value == std::string_view::npos ? unreadable : static_cast<std::byte>(value);
}

// With all symbols there, their places tell the groups; with one too few or too many, five parts tell them better.
bool partsTellGroups(std::string_view typed)
{
    constexpr std::size_t wholeSize = RecoveryCode::symbolCount + RecoveryCode::groupCount;
    std::size_t parts = 0;
    std::size_t symbols = 0;
    bool inside = false;
    for (const char c : typed) {
        if (!separates(c) && !inside)
            ++parts;
        inside = !separates(c);
        symbols += inside ? 1 : 0;
    }
    return parts == RecoveryCode::groupCount && symbols != wholeSize;
}

void read(std::string_view typed, TypedCode& code)
{
    const bool apart = partsTellGroups(typed);
    std::size_t group = 0;
    for (const char c : typed) {
        if (separates(c)) {
            if (apart && code.groups[group].size > 0 && group + 1 < RecoveryCode::groupCount)
                ++group;
            continue;
        }
        if (!apart && code.groups[group].size == groupSizes[group] + 1 && group + 1 < RecoveryCode::groupCount)
            ++group;
        TypedGroup& current = code.groups[group];
        if (current.size < current.symbols.size())
            current.symbols[current.size] = symbolOf(c);
        ++current.size;
    }
}

std::byte doubled(std::byte value)
{
    constexpr std::byte carry{0x20};
    constexpr std::byte modulus{0x25};
    const std::byte shifted = value << 1;
    return (shifted & carry) == std::byte{} ? shifted : shifted ^ modulus;
}

// What the check symbol has to be; the check symbol itself has the factor 1, the symbol before it 2, and so on.
std::byte checkOf(ByteView symbols, std::size_t group)
{
    std::byte sum{};
    for (const std::byte symbol : symbols)
        sum = doubled(sum ^ symbol);
    return sum ^ static_cast<std::byte>(group + 1);
}

GroupState stateOf(const TypedGroup& group, std::size_t number)
{
    const std::size_t size = groupSizes[number];
    const ByteView symbols = ByteView(group.symbols).first(std::min(group.size, group.symbols.size()));
    if (group.size > size + 1 || std::find(symbols.begin(), symbols.end(), unreadable) != symbols.end())
        return GroupState::Wrong;
    if (group.size < size + 1)
        return GroupState::Unfinished;
    return checkOf(symbols.first(size), number) == symbols[size] ? GroupState::Right : GroupState::Wrong;
}

RecoveryCode::Groups statesOf(const TypedCode& code)
{
    RecoveryCode::Groups states{};
    for (std::size_t number = 0; number < states.size(); ++number)
        states[number] = stateOf(code.groups[number], number);
    return states;
}

char charOf(std::byte symbol)
{
    return alphabet[std::to_integer<std::size_t>(symbol)];
}

}

Outcome<RecoveryCode> RecoveryCode::of(Outcome<SecretBytes> symbols)
{
    if (!symbols)
        return symbols.code();
    RecoveryCode code;
    code.m_symbols = *std::move(symbols);
    return code;
}

Outcome<RecoveryCode> RecoveryCode::generate(const RandomSource& random)
{
    return of(SecretBytes::make(symbolCount, [&random](ByteRoom room) -> Outcome<Done> {
        random(room);
        for (std::byte& symbol : room)
            symbol &= std::byte{0x1F};
        return Done{};
    }));
}

Outcome<RecoveryCode> RecoveryCode::parse(std::string_view typed)
{
    TypedCode entered;
    read(typed, entered);
    const Groups states = statesOf(entered);
    if (std::find(states.begin(), states.end(), GroupState::Wrong) != states.end())
        return Code::RecoveryCodeGroupTypeAgain;
    if (std::find(states.begin(), states.end(), GroupState::Unfinished) != states.end())
        return Code::RecoveryCodeTypeOn;
    return of(SecretBytes::make(symbolCount, [&entered](ByteRoom room) -> Outcome<Done> {
        std::size_t at = 0;
        for (std::size_t number = 0; number < groupCount; ++number) {
            copyBytes(ByteView(entered.groups[number].symbols).first(groupSizes[number]), room.subspan(at));
            at += groupSizes[number];
        }
        return Done{};
    }));
}

RecoveryCode::Groups RecoveryCode::groups(std::string_view typed)
{
    TypedCode code;
    read(typed, code);
    return statesOf(code);
}

Outcome<SecretText> RecoveryCode::text() const
{
    SecretText text;
    std::size_t at = 0;
    for (std::size_t number = 0; number < groupCount; ++number) {
        const ByteView symbols = m_symbols.view().subspan(at, groupSizes[number]);
        at += groupSizes[number];
        std::array<char, largestGroup + 2> written{};
        std::size_t size = 0;
        for (const std::byte symbol : symbols)
            written[size++] = charOf(symbol);
        written[size++] = charOf(checkOf(symbols, number));
        if (number + 1 < groupCount)
            written[size++] = '-';
        const Outcome<Done> added = text.append({written.data(), size});
        sodium_memzero(written.data(), written.size());
        if (!added)
            return added.code();
    }
    return text;
}

Outcome<WrappingKey> RecoveryCode::stretched(const Salt& salt, const StretchCost& cost) const
{
    const Outcome<SecretBytes> capitals = SecretBytes::make(symbolCount, [this](ByteRoom room) -> Outcome<Done> {
        std::transform(m_symbols.view().begin(), m_symbols.view().end(), room.begin(),
            [](std::byte symbol) { return static_cast<std::byte>(charOf(symbol)); });
        return Done{};
    });
    if (!capitals)
        return capitals.code();
    return stretch(capitals->view(), salt, cost);
}

bool RecoveryCode::sameAs(const RecoveryCode& other) const
{
    return sameBytes(m_symbols.view(), other.m_symbols.view());
}

}
