// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/platform/platformhost.h"

#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include <unistd.h>

namespace platformhost {

bool restart(std::string_view without)
{
    // as the system knows them: the toolkit takes some out of its own list
    std::ifstream file("/proc/self/cmdline", std::ios::binary);
    std::string all{std::istreambuf_iterator<char>(file), {}};
    std::vector<char*> arguments;
    for (std::size_t at = 0; at < all.size(); at += std::char_traits<char>::length(&all[at]) + 1)
        if (without.empty() || !std::string_view(&all[at]).starts_with(without))
            arguments.push_back(&all[at]);
    if (arguments.empty())
        return false;
    arguments.push_back(nullptr);
    execv("/proc/self/exe", arguments.data());
    return false;
}

}
