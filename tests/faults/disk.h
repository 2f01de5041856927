// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/system.h"

#include <map>
#include <random>

namespace faults {

/// What a disk may hold after a power cut: forced things for certain; of everything else any sectors of 512 bytes, any changes of a
/// file's length, and any names made, moved or taken away. Forcing a file does not force its name. Folders are there from the start.
/// A disk that says to have written what it has not, or writes in the wrong place, is not looked at.
class Disk {
public:
    enum class Lost { Nothing, Everything, ByChance };

    void apply(const Operation& operation);
    /// Lays the files out in a folder.
    void layOut(const std::string& root, Lost lost, std::mt19937& engine) const;

private:
    /// A change of a file that has not been forced; without bytes a change of its length.
    struct Change {
        bool cuts = false;
        std::uint64_t offset = 0;
        std::string bytes;
    };
    struct File {
        std::string forced;
        std::vector<Change> changes;
    };
    struct Naming {
        Operation operation;
        std::size_t file = 0;
    };
    using Names = std::map<std::string, std::size_t>;

    static void change(std::string& content, const Change& change);
    static void name(Names& names, const Naming& naming);
    [[nodiscard]] static std::string contentOf(const File& file, Lost lost, std::mt19937& engine);

    std::vector<File> m_files;
    Names m_names;
    Names m_forcedNames;
    std::vector<Naming> m_namings;
};

}
