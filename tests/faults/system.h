// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

namespace faults {

/// What goes wrong at an operation.
enum class Trouble {
    None,
    Kill,              ///< the process ends before it
    KillHalfWay,       ///< a write gets as far as half its sectors, then the process ends
    FullOnce,          ///< no space, this once
    FullFromThere,     ///< no space from there on
    FullUntilReserve,  ///< no space from there on, until the reserve is given up
    ErrorOnce,         ///< the storage gives an error, this once
    ErrorFromThere,    ///< the storage gives errors from there on
};

/// What the program did to a folder, one system call after the other.
struct Operation {
    enum class What { Create, Write, Truncate, Force, ForceFolder, Unlink, Rename, Told };
    What what = What::Write;
    std::string name;   ///< within the folder; for Told, what was told
    std::string target; ///< of a renaming
    std::uint64_t offset = 0;
    std::string bytes;
};

/// Where and how things go wrong: operations below `root` are counted, from 1.
struct Plan {
    std::string root;
    Trouble trouble = Trouble::None;
    long at = 0;
    bool countReads = false;
    bool forceNothing = true; ///< what was written survives the end of a process anyway, and forcing takes time
    std::vector<Operation>* record = nullptr;
};

/// Every system call of this program that touches files goes through here, those of the database engine as well, since it is linked
/// into the program: there is one count over all files, in the order in which things are done.
void arm(const Plan& plan);
/// Back to the plain system; how many operations there were.
long disarm();
/// Puts a mark between the operations that are being recorded.
void recordTold(const std::string& what);

}
