// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/marktexts.h"

#include "mobile/text/itemorigintexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace marktexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("marktexts", text); }

}

QString sum(const MarkOrigin& origin)
{
    return origin.still ? itemorigintexts::holeSum(*origin.lowest, origin.spacing, origin.read.hole) : QString();
}

QString readAt(const HoleRead& read, const Height& height, std::span<const KitItem> kit)
{
    const auto rack = std::find_if(kit.begin(), kit.end(), [&read](const KitItem& item) { return item.id == read.rack; });
    const QString at = rack == kit.end() ? tr("hole %1 of a rack").arg(read.hole) : tr("hole %1 of %2").arg(read.hole).arg(QString::fromStdString(rack->name));
    const MarkOrigin origin = originOf(read, height, kit);
    if (origin.still)
        return tr("%1: %2").arg(at, sum(origin));
    return origin.lowest ? tr("%1, as the rack was measured then").arg(at) : at;
}

QString read(const BarMarks& marks, WhichPull which, std::span<const KitItem> kit)
{
    QStringList parts;
    const auto add = [&](const QString& name, const std::optional<Entered<Height>>& height, const std::optional<HoleRead>& hole) {
        if (height)
            parts << (hole ? tr("%1 at %2").arg(name, readAt(*hole, *height, kit)) : tr("%1 at %2 by tape").arg(name, say::inLengthUnit(say::entered(*height))));
    };
    const auto addBottom = [&] {
        if (marks.start == LiftStart::Floor)
            parts << tr("bottom by the plates that stand on the floor");
        else
            add(tr("bottom"), marks.bottom, marks.holes.bottom);
    };
    if (which == WhichPull::Rack)
        add(tr("rack"), marks.rack, marks.holes.rack);
    if (which == WhichPull::Bottom || which == WhichPull::Mean)
        addBottom();
    if (which == WhichPull::Zone) {
        add(tr("sticking zone from"), marks.zoneFrom, marks.holes.zoneFrom);
        add(tr("to"), marks.zoneTo, marks.holes.zoneTo);
    }
    if (which == WhichPull::Top || which == WhichPull::Mean)
        add(tr("top"), marks.top, marks.holes.top);
    return parts.join(QStringLiteral("; "));
}

}
