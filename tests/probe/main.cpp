// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/probe/line.h"

#include <iostream>

int main()
{
    std::ios::sync_with_stdio(false);
    steelyard::probe::answerAll(std::cin, std::cout);
    return 0;
}
