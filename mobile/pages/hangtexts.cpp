// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/setuptexts.h"

#include "core/work/measuredkit.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <cmath>

namespace setuptexts {

using namespace steelyard;

namespace {

QString tr(const char* text) { return QCoreApplication::translate("setuptexts", text); }

QStringList plateMarks(const BarRecord& bar, const std::vector<PlateType>& plates)
{
    QStringList marks;
    for (const PlateType& p : plates)
        marks << say::plateMark(bar, p);
    return marks;
}

QString howChain(const ChainPlacing& c)
{
    const QString ways[] = {tr("straight"), tr("doubled"), tr("bunched")};
    const QString way = ways[static_cast<int>(c.way)];
    return c.lead.si() > 0 ? tr("%1, on a lead of %2").arg(way, say::lengthWithUnit(c.lead)) : tr("%1, no lead").arg(way);
}

QString howBand(const BandPlacing& b)
{
    const QString way = b.doubled ? tr("doubled") : tr("one loop");
    const QString anchor = b.above ? tr("from above, %1").arg(say::lengthWithUnit(b.anchorHeight))
                         : b.anchorHeight.si() > 0 ? tr("anchored at %1").arg(say::lengthWithUnit(b.anchorHeight)) : tr("anchored on the floor");
    if (b.offset.si() == 0)
        return tr("%1, %2").arg(way, anchor);
    const QString away = say::lengthWithUnit(metres(std::abs(b.offset.si())));
    return (b.offset.si() > 0 ? tr("%1, %2, %3 in front") : tr("%1, %2, %3 behind")).arg(way, anchor, away);
}

QString howAid(const AidPlacing& a)
{
    return a.chest ? tr("worn, the chest at %1").arg(say::lengthWithUnit(*a.chest)) : tr("worn, the chest at her bottom mark");
}

QVariantMap drawn(const QString& label, double diameter, double thickness, const QString& hang)
{
    return {{QStringLiteral("label"), label}, {QStringLiteral("diameterMm"), diameter}, {QStringLiteral("thicknessMm"), thickness},
            {QStringLiteral("hang"), hang}, {QStringLiteral("change"), 0}};
}

}

QString howItHangs(const HungRecord& record)
{
    if (const auto* chain = std::get_if<ChainPlacing>(&record.placing))
        return howChain(*chain);
    if (const auto* band = std::get_if<BandPlacing>(&record.placing))
        return howBand(*band);
    return howAid(std::get<AidPlacing>(record.placing));
}

std::vector<ThingRow> hanging(const Desk& desk)
{
    std::vector<ThingRow> rows;
    for (const HungRecord& h : desk.setup().hung) {
        const KitItem* item = desk.item(h.item);
        if (!item)
            continue;
        const bool twin = std::holds_alternative<BandPlacing>(h.placing) && item->pair && h.on == HungOn::BothSides;
        // an aid is worn in the middle of the bar, on neither side of it
        if (std::holds_alternative<AidPlacing>(h.placing)) {
            rows.push_back({QString::fromStdString(h.item.hex()), QString::fromStdString(wordOf(kindOf(item->measurement))), true, item->isOutOfUse(),
                            QString::fromStdString(item->name), howItHangs(h), {}, {}});
            continue;
        }
        const QString one = tr("one"), second = twin ? tr("its twin") : one, none = QStringLiteral("–");
        rows.push_back({QString::fromStdString(h.item.hex()), QString::fromStdString(wordOf(kindOf(item->measurement))), true, item->isOutOfUse(), QString::fromStdString(item->name), howItHangs(h),
                        h.on == HungOn::RightOnly ? none : one, h.on == HungOn::LeftOnly ? none : h.on == HungOn::RightOnly ? one : second});
    }
    return rows;
}

BeamText beam(const Desk& desk)
{
    BeamText out;
    out.down = QStringLiteral("−");
    out.up = QStringLiteral("+");
    const auto loads = loadsOf(desk.setup().bar);
    const auto& load = desk.answer().load;
    if (!loads || !load)
        return out;
    // what a thumb may want next stands on the beam; the rest of a long list would only be thinned out again
    constexpr std::ptrdiff_t eachWay = 40;
    const auto& all = loads->all();
    std::ptrdiff_t here = 0;
    while (here + 1 < std::ssize(all) && all[static_cast<std::size_t>(here)].total < load->total)
        ++here;
    const std::ptrdiff_t from = std::max<std::ptrdiff_t>(0, here - eachWay), to = std::min<std::ptrdiff_t>(std::ssize(all), here + eachWay + 1);
    for (std::ptrdiff_t i = from; i < to; ++i) {
        const Mass total = all[static_cast<std::size_t>(i)].total;
        out.loads.append(say::shown(total));
        out.labels.append(say::mass(total));
    }
    out.value = say::shown(load->total);
    const Entered<Mass> asked = loadAsAskedFor(desk.setup().bar.wanted, *load);
    out.number = say::entered(asked);
    out.valueText = say::inMassUnit(out.number);
    out.enteredAs = say::enteredAs(asked.typed(), unitFor(NumberKind::InMass, say::units()));
    if (const PlateLoad* down = loads->nextBelow(load->total)) {
        out.canDown = true;
        out.down = QStringLiteral("−") + say::mass(load->total - down->total);
    }
    if (const PlateLoad* up = loads->nextAbove(load->total)) {
        out.canUp = true;
        out.up = QStringLiteral("+") + say::mass(up->total - load->total);
    }
    out.eachSide = load->eachSide.empty() ? tr("bare bar") : plateMarks(desk.setup().bar, load->eachSide).join(QStringLiteral(" · "));
    return out;
}

QString plateChange(const BarRecord& bar, const PlateChange& change)
{
    const auto said = [&bar](const std::vector<PlateType>& plates) { return plateMarks(bar, plates).join(QStringLiteral(" + ")); };
    if (change.nothing())
        return tr("it hangs already");
    if (change.takeOff.empty())
        return tr("put on %1, each side").arg(said(change.putOn));
    if (change.putOn.empty())
        return tr("take off %1, each side").arg(said(change.takeOff));
    return tr("take off %1, put on %2, each side").arg(said(change.takeOff), said(change.putOn));
}

QVariantList plates(const Desk& desk)
{
    QVariantList list;
    const WeighedUp& weighed = desk.answer();
    if (weighed.load)
        for (const PlateType& p : weighed.load->eachSide)
            list.append(drawn(say::plateMark(desk.setup().bar, p), inMetres(p.diameter) * 1000, inMetres(p.thickness) * 1000, {}));
    return list;
}

QVariantList strip(const Desk& desk)
{
    QVariantList list = plates(desk);
    const WeighedUp& weighed = desk.answer();
    if (!weighed.setup)
        return list;
    const auto& side = weighed.setup->left.empty() ? weighed.setup->right : weighed.setup->left;
    for (const HungItem& item : side) {
        if (std::holds_alternative<HungChain>(item))
            list.append(drawn(tr("chain"), 0, 0, QStringLiteral("chain")));
        else if (std::holds_alternative<HungBand>(item))
            list.append(drawn(tr("band"), 0, 0, QStringLiteral("band")));
    }
    return list;
}

QVariantList elevation(const WeighedUp& weighed)
{
    QVariantList list;
    if (!weighed.setup)
        return list;
    // a chain that was weighed has no gauge: it is drawn with links as wide as its mass makes likely
    // (short-link chain of 10 mm weighs some 2.25 kg a metre, and mass goes with the square of the wire)
    const auto wireOf = [](const Chain& c) { return std::sqrt(c.perLength.value.si() / 2.25) * 0.01; };
    const auto& side = weighed.setup->left.empty() ? weighed.setup->right : weighed.setup->left;
    for (const HungItem& item : side) {
        QVariantMap thing;
        if (const auto* chain = std::get_if<HungChain>(&item)) {
            const QString ways[] = {QStringLiteral("straight"), QStringLiteral("doubled"), QStringLiteral("bunched")};
            const double wire = wireOf(chain->chain());
            thing = {{QStringLiteral("kind"), QStringLiteral("chain")}, {QStringLiteral("hang"), ways[static_cast<int>(chain->hang().how)]},
                     {QStringLiteral("lead"), inMetres(chain->hang().lead)}, {QStringLiteral("length"), inMetres(chain->chain().length)},
                     {QStringLiteral("pitch"), chain->chain().pitch ? inMetres(*chain->chain().pitch) : 2.8 * wire}, {QStringLiteral("wire"), wire},
                     {QStringLiteral("bunch"), inMetres(chain->hang().bunch)}};
        } else if (const auto* band = std::get_if<HungBand>(&item)) {
            thing = {{QStringLiteral("kind"), QStringLiteral("band")}, {QStringLiteral("hang"), band->hang().doubled ? QStringLiteral("doubled") : QStringLiteral("single")},
                     {QStringLiteral("length"), inMetres(band->band().fit.rest())}, {QStringLiteral("anchorHeight"), inMetres(band->hang().anchorHeight)},
                     {QStringLiteral("above"), band->hang().above}};
        } else {
            continue;
        }
        list.append(thing);
    }
    return list;
}

}
