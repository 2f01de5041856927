// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/keepathlete.h"
#include "mobile/bookservice.h"

#include <array>

/// Invented people, from A to Z.
namespace people {

/// Adds so many in two squads. The first is of age and has bar marks for the back squat; the second may be under 18.
inline void fill(BookService& book, int count)
{
    using namespace steelyard;
    static constexpr std::array names = {"Ana M.", "Bo T.", "Cleo F.", "Dario P.", "Edda K.", "Femi O.", "Gus L.", "Hana V.", "Ivo R.", "Jun S.",
                                         "Kaia B.", "Leo D.", "Mina H.", "Nils A.", "Oda W.", "Pau G.", "Quin J.", "Ria N.", "Sol E.", "Tam C.",
                                         "Una Z.", "Vik Y.", "Wren I.", "Xan U.", "Yara Q.", "Zoe X."};
    for (std::size_t i = 0; i < std::min(names.size(), static_cast<std::size_t>(std::max(count, 0))); ++i) {
        Athlete athlete;
        athlete.name = names[i];
        athlete.squad = i % 2 == 0 ? "Monday rowers" : "Marrow Hill lifters";
        if (i == 0) {
            athlete.birthYear = std::chrono::year(1999);
            BarMarks marks;
            marks.bottom = metres(0.77);
            marks.zoneFrom = metres(0.88);
            marks.zoneTo = metres(1.02);
            marks.top = metres(1.27);
            marks.rack = metres(1.22);
            athlete.marks[LiftId{1}] = marks;
        } else if (i == 1) {
            athlete.birthYear = std::chrono::year(2010);
        }
        keepAthlete(book.keeping(), athlete, [](const Told&) {});
    }
    book.keeping().forget();
}

}
