// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/seal/bytes.h"
#include "core/seal/outcome.h"

#include <filesystem>
#include <optional>

namespace steelyard::seal {

/// Closes what it holds.
class Descriptor {
public:
    explicit Descriptor(int descriptorNumber) : m_opened(descriptorNumber) {}
    Descriptor(Descriptor&& other) noexcept : m_opened(std::exchange(other.m_opened, -1)) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    Descriptor& operator=(Descriptor&&) = delete;
    ~Descriptor();
    [[nodiscard]] auto get() const { return m_opened; }
    [[nodiscard]] bool ok() const { return m_opened >= 0; }

private:
    int m_opened;
};

/// The code for the error number that the system gave to a failed write.
[[nodiscard]] Code codeOfWriteError(int systemErrorNumber);

/// The bytes of a file; nothing where there is no such file. One that is longer than `largestSize` is cut one byte behind it.
[[nodiscard]] Outcome<std::optional<ByteBuffer>> readWhole(const std::filesystem::path& file, std::size_t largestSize);

/// Writes all of it where the descriptor stands, however often the system stops half way; false leaves the error number.
[[nodiscard]] bool writeAll(const Descriptor& file, ByteView bytes);

/// Forces the names in a folder to the disk.
[[nodiscard]] bool forceFolder(const std::filesystem::path& folder);

/// Written beside its place (".part"), forced to the disk, moved into place, and the folder forced: at any moment the old file is
/// there whole, or the new one.
[[nodiscard]] Outcome<Done> replaceFile(const std::filesystem::path& place, ByteView bytes);

}
