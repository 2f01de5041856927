// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/lookovertexts.h"

#include <QCoreApplication>

namespace lookovertexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("lookovertexts", text); }

}

QString lookAt(ItemKind kind)
{
    switch (kind) {
    case ItemKind::Chain:
        // a tenth of the thickness: from memory; instructions that come with chain slings say the same
        return tr("Every link, held slack: worn where links meet, bent, open, cracked or stretched; a hook or carabiner that does not close. Chain slings are put away once a link has lost a tenth of its thickness (EN 818-6, annex A, from memory).");
    case ItemKind::Band:
        return tr("All of it, stretched by hand to arm's length, face turned away: a cut, a crack, a thin place, rubber that is sticky or has gone white (common practice, no source).");
    case ItemKind::Aid:
        return tr("All round, stretched by hand: a cut, a thin place, rubber that is sticky or has gone white, a seam that gives (common practice, no source).");
    case ItemKind::Machine:
        return tr("The cable along its whole way: a broken strand, a bulge, a torn sleeve. The pin: bent, or not all the way in. Welds and bolts: a crack, a gap (common practice, no source). Keep fingers out of the stack.");
    case ItemKind::Scale:
        return tr("A minute with nothing on it: a zero that runs away. Its hooks: bent or open. Dropped or overloaded since it was checked (common practice, no source): check it with a known mass before it counts again.");
    case ItemKind::Iron:
        return tr("Plates: a crack at the hole or the rim. Bar: bent, a sleeve that sticks. Collars: worn, sliding (common practice, no source).");
    case ItemKind::Lead:
        return tr("The whole length, both faces: a cut, a frayed edge, stitching that has come loose; a buckle that slips, a hook that does not close (common practice, no source).");
    case ItemKind::Tyre:
        return tr("All round: wire that shows, a tear or a bulge in a sidewall, glass or nails in the tread; water that is left in it (common practice, no source).");
    case ItemKind::Log:
        return tr("All of it: a split, rot, a nail that stands out; handles that move (common practice, no source).");
    case ItemKind::Stone:
        return tr("All round: a crack, an edge that cuts, a face that flakes (common practice, no source).");
    case ItemKind::Keg:
        return tr("A keg: whether it still holds gas, by whoever brought it; never open or drop one under pressure. Its valve, welds and rims: a leak, a dent, an edge that cuts. A bag: seams and handles (common practice, no source).");
    case ItemKind::Sled:
        return tr("Runners and welds: a crack, an edge that digs in. Strap, hook and belt: a cut, stitching that has come loose, a hook that does not close (common practice, no source).");
    case ItemKind::Carry:
        return tr("Grips that turn or slide, pins and collars for the plates, welds: a crack, a gap (common practice, no source).");
    case ItemKind::Bell:
        return tr("Handle: rough, loose or cracked. What can be set: a lock that does not hold (common practice, no source).");
    case ItemKind::Rack:
        break;
    }
    return tr("Pins and safeties: bent, or not all the way through. Holes pulled long. Welds, feet and bolts: a crack, a gap, anything that rocks (common practice, no source).");
}

QString fault(KitFault fault)
{
    switch (fault) {
    case KitFault::WornLink: return tr("worn link");
    case KitFault::Cut: return tr("cut");
    case KitFault::BentLink: return tr("bent or open link");
    case KitFault::Hook: return tr("hook bent or open");
    case KitFault::Crack: return tr("crack");
    case KitFault::Sticky: return tr("sticky or gone white");
    case KitFault::Seam: return tr("loose seam");
    case KitFault::Cable: return tr("frayed cable");
    case KitFault::Pin: return tr("bent or loose pin");
    case KitFault::ZeroRuns: return tr("zero runs away");
    case KitFault::Dropped: return tr("was dropped");
    case KitFault::Collar: return tr("worn collar");
    case KitFault::Buckle: return tr("slipping buckle");
    case KitFault::Weld: return tr("cracked weld");
    case KitFault::WireShowing: return tr("wire showing");
    case KitFault::Sidewall: return tr("torn sidewall");
    case KitFault::UnderPressure: return tr("under pressure");
    case KitFault::Leak: return tr("leak");
    case KitFault::Split: return tr("split");
    case KitFault::HandleLoose: return tr("loose handle");
    case KitFault::Other: break;
    }
    return tr("something else");
}

}
