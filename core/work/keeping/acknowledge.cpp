// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/acknowledge.h"

#include "core/work/records/codec.h"

namespace steelyard {

void acknowledge(SeasonKeeping& keeping, const RecordId& setup, CautionCode caution, const WhenTold& told)
{
    const SavedSetup* known = keeping.book().setup(setup);
    if (!known)
        return told({setup, Unfit::SetupUnknown, std::nullopt});
    Acknowledgement looked;
    looked.id = keeping.newId();
    looked.setup = setup;
    looked.caution = caution;
    looked.hungMark = hungMark(known->setup);
    Drafting drafting(keeping);
    drafting.add(acknowledgementPlace(looked.id, known->athlete), keeping.here().day, *contentOf(looked));
    keeping.keep(Deed::LookedOver, looked.id, std::move(drafting).drafts(), told);
}

}
