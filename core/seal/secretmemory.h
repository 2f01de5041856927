// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"
#include "core/seal/outcome.h"

#include <utility>

namespace steelyard::seal {

/// Where secret memory comes from: guarded by unreadable pages, kept out of swap and core files as far as the system lets us.
/// Tests put a stingy or a watching one in its place.
class SecretSource {
public:
    SecretSource() = default;
    SecretSource(const SecretSource&) = delete;
    SecretSource& operator=(const SecretSource&) = delete;
    virtual ~SecretSource() = default;

    /// Null where there is none.
    [[nodiscard]] virtual void* take(std::size_t size);
    /// Gets the block back, writable and already wiped.
    virtual void give(ByteRoom block);

    [[nodiscard]] static SecretSource& current();
    /// Blocks taken before go back to where they came from.
    static void use(SecretSource& source);
    static void useSystem();
};

/// One block of secret memory, wiped before it goes back; what SecretBytes and SecretText are made of.
class SecretBlock {
public:
    SecretBlock() = default;
    SecretBlock(SecretBlock&& other) noexcept;
    SecretBlock& operator=(SecretBlock&& other) noexcept;
    SecretBlock(const SecretBlock&) = delete;
    SecretBlock& operator=(const SecretBlock&) = delete;
    ~SecretBlock();

    [[nodiscard]] static Outcome<SecretBlock> make(std::size_t size);
    [[nodiscard]] ByteRoom room() { return m_room; }
    [[nodiscard]] ByteView view() const { return m_room; }
    /// From here on a write into it ends the process.
    void makeReadOnly();

private:
    void giveBack();

    SecretSource* m_source = nullptr;
    ByteRoom m_room;
};

/// A secret of fixed length: filled once, read-only from then on, wiped at the end; it moves and is never copied unasked.
class SecretBytes {
public:
    using Fill = std::function<Outcome<Done>(ByteRoom)>;

    SecretBytes() = default;
    /// A refusal of `fill` is passed on; what it wrote is wiped.
    [[nodiscard]] static Outcome<SecretBytes> make(std::size_t size, const Fill& fill);
    [[nodiscard]] static Outcome<SecretBytes> copyOf(ByteView bytes);
    [[nodiscard]] static Outcome<SecretBytes> random(std::size_t size, const RandomSource& source);

    [[nodiscard]] ByteView view() const { return m_block.view(); }
    [[nodiscard]] std::size_t size() const { return view().size(); }

private:
    SecretBlock m_block;
};

/// A passphrase while it is typed: UTF-8 in its own growing buffer, whose old copies are wiped.
/// It is taken as it comes: normalisation to NFC is the caller's. Nothing is ever cut off: what does not fit is refused whole.
class SecretText {
public:
    static constexpr std::size_t largestSize = 4096;

    SecretText() = default;
    SecretText(SecretText&& other) noexcept;
    SecretText& operator=(SecretText&& other) noexcept;
    SecretText(const SecretText&) = delete;
    SecretText& operator=(const SecretText&) = delete;
    ~SecretText() = default;

    /// Refused, it stands as it was.
    Outcome<Done> append(std::string_view utf8);
    /// Takes one code point off the end and wipes it; on an empty text nothing happens.
    void removeLast();
    void clear();

    [[nodiscard]] std::string_view view() const;
    [[nodiscard]] bool empty() const { return m_size == 0; }
    /// Code points.
    [[nodiscard]] std::size_t characterCount() const;

private:
    SecretBlock m_block;
    std::size_t m_size = 0;
};

}
