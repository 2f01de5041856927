// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/origintexts.h"

#include "mobile/text/keepingtexts.h"
#include "mobile/text/marktexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <algorithm>

namespace origintexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("origintexts", text); }

QString formula(KnownBy by)
{
    switch (by) {
    case KnownBy::Marked: return tr("what is marked on it, added up");
    case KnownBy::Unweighed: return tr("what is marked on it, added up; nobody has weighed the plates, so 2 % either way (our choice)");
    case KnownBy::IronWeighed: return tr("what a scale said of it, and what is marked on the rest, added up; one scale is out by the same on all of it");
    case KnownBy::IronPartWeighed: return tr("what a scale said of it, and what is marked on the rest, added up; one scale is out by the same on all of it, and plates that nobody has weighed by 2 % either way (our choice)");
    case KnownBy::Weighed: return tr("what a metre weighs, times the metres that are off the floor; put on a scale");
    case KnownBy::Gauged: return tr("what a metre weighs, times the metres that are off the floor; by wire, pitch and inner width, 3 % (chain tables differ by as much)");
    case KnownBy::Hung: return tr("what it pulls at the length it has there, upright; read with known plates on it");
    case KnownBy::HungTwin: return tr("what it pulls at the length it has there, upright; read with known plates on one of the pair, the other taken for its twin: 3 % more on the length at rest");
    case KnownBy::Rested: return tr("what it carries at that height over the chest; read with known plates resting on it, 2 % either way for them and a centimetre for the height (our choices)");
    case KnownBy::Taped: break;
    }
    return tr("read to a centimetre (our choice), times how steeply the pull rises there");
}

QString nameOf(const RecordId& id, const Desk& desk)
{
    const KitItem* item = desk.item(id);
    return item ? QString::fromStdString(item->name) : QString();
}

}

QString which(WhichPull which)
{
    switch (which) {
    case WhichPull::Rack: return tr("off the rack");
    case WhichPull::Bottom: return tr("bottom");
    case WhichPull::Zone: return tr("sticking zone");
    case WhichPull::Top: return tr("top");
    case WhichPull::Mean: break;
    }
    return tr("mean of the path");
}

QString number(const Origin& origin)
{
    const QString pull = say::pull(origin.reading).withUnit();
    if (origin.from == origin.to)
        return tr("%1 at %2").arg(pull, say::lengthWithUnit(origin.from));
    return tr("%1 from %2 to %3").arg(pull, say::length(origin.from), say::lengthWithUnit(origin.to));
}

QString what(const OriginLine& line, const Desk& desk)
{
    switch (line.by) {
    case KnownBy::Marked:
    case KnownBy::IronWeighed:
    case KnownBy::IronPartWeighed:
    case KnownBy::Unweighed: return tr("Bar, collars and plates");
    case KnownBy::Taped: return tr("Bar marks");
    default: return nameOf(line.item, desk);
    }
}

QString adds(const OriginLine& line, Force giveOrTake)
{
    if (line.by != KnownBy::Taped)
        return say::pull(line.pull, giveOrTake).withUnit();
    const say::Pull nothing = say::pull(Force{}, giveOrTake);
    return nothing.give.isEmpty() ? tr("nothing to speak of") : tr("± %1").arg(say::inMassUnit(nothing.give));
}

QString how(const OriginLine& line, const SeasonBook& book, std::chrono::sys_days today)
{
    const KitRecord* kept = line.item.isNone() ? nullptr : book.item(line.item);
    if (!kept || kept->measurements.empty())
        return formula(line.by);
    return tr("%1. Measured %2").arg(formula(line.by), keepingtexts::day(kept->measurements.front().day, today));
}

QString howMarked(WhichPull which, const Desk& desk)
{
    const QString read = marktexts::read(desk.marks(), which, desk.kit());
    return read.isEmpty() ? formula(KnownBy::Taped) : tr("%1; %2").arg(read, formula(KnownBy::Taped));
}

QString advice(const Origin& origin, const Desk& desk)
{
    const auto most = std::max_element(origin.lines.begin(), origin.lines.end(), [](const OriginLine& a, const OriginLine& b) { return a.share < b.share; });
    // half and more of the squares: the rest together would not make as much of a difference
    if (most == origin.lines.end() || most->share < 0.5)
        return origin.reading.u.si() > 0 ? tr("No part makes most of the give-or-take.") : tr("Nothing here is uncertain enough to show.");
    const QString name = nameOf(most->item, desk);
    switch (most->by) {
    case KnownBy::Marked: break;
    case KnownBy::Unweighed: return tr("The plates make most of the give-or-take. Weigh them.");
    case KnownBy::IronWeighed: return tr("The iron makes most of the give-or-take. Weigh it on a finer scale, or a checked one.");
    case KnownBy::IronPartWeighed: return tr("The iron makes most of the give-or-take. Weigh the rest of the plates.");
    case KnownBy::Weighed: return tr("%1 makes most of the give-or-take. Weigh more of it at once, or on a finer scale.").arg(name);
    case KnownBy::Gauged: return tr("%1 makes most of the give-or-take. Put it on a scale.").arg(name);
    case KnownBy::Hung: return tr("%1 makes most of the give-or-take. Hang more plates on it, at more lengths.").arg(name);
    case KnownBy::HungTwin: return tr("%1 makes most of the give-or-take. Measure the other of the pair by itself.").arg(name);
    case KnownBy::Rested: return tr("%1 makes most of the give-or-take: it is steep there, and every height counts to a centimetre.").arg(name);
    case KnownBy::Taped: return tr("The bar marks make most of the give-or-take. Read them twice, and where she really stops.");
    }
    return {};
}

}
