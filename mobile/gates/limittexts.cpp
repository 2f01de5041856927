// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/limittexts.h"

#include "mobile/text/say.h"

#include <QCoreApplication>

using namespace steelyard;

namespace limittexts {

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1)
{
    return QCoreApplication::translate("limittexts", text, about, count);
}

}

QString name(LimitKind kind)
{
    switch (kind) {
    case LimitKind::TyrePercent: return tr("Tyre");
    case LimitKind::EccentricPercent: return tr("On the way down");
    case LimitKind::MaximumAge: return tr("A maximum counts for");
    case LimitKind::BandAge: return tr("A band's measurement is fresh for");
    case LimitKind::HoldPercent: return tr("An anchor is held by");
    case LimitKind::OfAge: break;
    }
    return tr("Of age");
}

QString meaning(LimitKind kind)
{
    switch (kind) {
    case LimitKind::TyrePercent: return tr("of the lowest estimate of her deadlift, the tyre's give-or-take counted in");
    case LimitKind::EccentricPercent: return tr("of the lowest estimate of her maximum, at its worst place");
    case LimitKind::MaximumAge: return tr("after that it is tested or estimated again");
    case LimitKind::BandAge: return tr("after that what is uncertain of its pull counts half as much again");
    case LimitKind::HoldPercent: return tr("the greatest pull on it; with less the load is not to be lifted");
    case LimitKind::OfAge: break;
    }
    return tr("before it maximal lifts, eccentric overload and tyres need an approval by name");
}

QString value(LimitKind kind, int count)
{
    constexpr double whole = 100;
    switch (kind) {
    case LimitKind::TyrePercent:
    case LimitKind::EccentricPercent: return tr("%1 %").arg(count);
    case LimitKind::MaximumAge:
    case LimitKind::BandAge: return tr("%n days", nullptr, count);
    case LimitKind::HoldPercent: return tr("%1 times").arg(say::plain(count / whole, 2));
    case LimitKind::OfAge: break;
    }
    return tr("%n years", nullptr, count);
}

}
