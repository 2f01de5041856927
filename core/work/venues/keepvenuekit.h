// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"

namespace steelyard {

enum class LoanKind : std::uint8_t {
    None,     ///< ours, and here
    Borrowed, ///< somebody else's, and here
    Lent,     ///< ours, and somebody else has it
};

/// Keeps whose a thing is and who has it; what was said of that before goes. Who it is has to be said. Nothing hangs from a lent thing
/// until it is back. A sample takes no names.
void keepLoan(SeasonKeeping& keeping, const RecordId& item, LoanKind kind, const OnLoan& loan, const WhenTold& told);

/// Where a thing is now: the venue it was taken along to, else the one it belongs to.
[[nodiscard]] RecordId venueNow(const SeasonBook& book, const KitItem& item);

/// Things go along to a venue for now and keep where they belong, and others go back there, all as one deed. They are the same things,
/// so their measurements go with them. A thing that belongs to the venue is simply back. Refused whole where one is not there any more.
void takeAlong(SeasonKeeping& keeping, const RecordId& venue, std::span<const RecordId> coming, std::span<const RecordId> goingBack,
               const WhenTold& told);

/// What a copy of a venue's list would add to another: things of the list whose name and kind the other does not have, in the order of
/// their names. What was borrowed from somebody is not part of the list.
[[nodiscard]] std::vector<const KitRecord*> listToCopy(const SeasonBook& book, const RecordId& from, const RecordId& to);

/// Adds them as new things of the other venue, names and counts alone, as one deed: another gym's chain is another chain, so nothing
/// of it is measured until somebody does.
void copyList(SeasonKeeping& keeping, const RecordId& from, const RecordId& to, const WhenTold& told);

}
