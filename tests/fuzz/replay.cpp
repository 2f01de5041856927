// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/target.h"

#include <fstream>
#include <iostream>
#include <string>

namespace {

int digit(char c)
{
    return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
}

}

/// replay FILE: examines each line's bytes, in hexadecimal digits.
int main(int argc, char** argv)
{
    std::ifstream file(argc > 1 ? argv[1] : "");
    std::size_t count = 0;
    for (std::string line; std::getline(file, line); ++count) {
        steelyard::seal::ByteBuffer bytes;
        for (std::size_t i = 0; i < line.size(); i += 2) {
            const int high = digit(line[i]), low = i + 1 < line.size() ? digit(line[i + 1]) : -1;
            fuzzing::promise(high >= 0 && low >= 0, "a line of hexadecimal digits");
            bytes.push_back(static_cast<std::byte>(high << 4 | low));
        }
        fuzzing::examine(bytes);
    }
    std::cout << count << " inputs\n";
    return count == 0;
}
