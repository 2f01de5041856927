// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/seasonfile.h"

#include "tests/core/numberedids.h"
#include "tests/tour/strictobject.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>

#include <algorithm>

using namespace steelyard;

namespace {

std::optional<Length> centimetres(StrictObject& from, const QString& key)
{
    const auto value = from.number(key);
    return value ? std::optional(metres(*value / 100)) : std::nullopt;
}

std::optional<Length> millimetres(StrictObject& from, const QString& key)
{
    const auto value = from.number(key);
    return value ? std::optional(metres(*value / 1000)) : std::nullopt;
}

std::optional<Mass> kilogramsOf(StrictObject& from, const QString& key)
{
    const auto value = from.number(key);
    return value ? std::optional(kilograms(*value)) : std::nullopt;
}

BarMarks marksFrom(StrictObject from)
{
    BarMarks marks;
    marks.start = static_cast<LiftStart>(from.choice(QStringLiteral("start"), {QStringLiteral("own bottom"), QStringLiteral("floor")}));
    marks.bottom = centimetres(from, QStringLiteral("bottom_cm"));
    marks.blocks = centimetres(from, QStringLiteral("blocks_cm"));
    marks.zoneFrom = centimetres(from, QStringLiteral("zone_from_cm"));
    marks.zoneTo = centimetres(from, QStringLiteral("zone_to_cm"));
    marks.top = centimetres(from, QStringLiteral("top_cm"));
    marks.rack = centimetres(from, QStringLiteral("rack_cm"));
    from.finish();
    return marks;
}

ChainMeasurement chainFrom(StrictObject from)
{
    ChainMeasurement chain;
    chain.by = static_cast<ChainMeasuring>(from.choice(QStringLiteral("measured"), {QStringLiteral("weighed"), QStringLiteral("gauged")}));
    chain.length = centimetres(from, QStringLiteral("length_cm"));
    chain.mass = kilogramsOf(from, QStringLiteral("mass_kg"));
    chain.scaleStep = kilogramsOf(from, QStringLiteral("scale_step_kg"));
    chain.wire = millimetres(from, QStringLiteral("wire_mm"));
    chain.pitch = millimetres(from, QStringLiteral("pitch_mm"));
    chain.innerWidth = millimetres(from, QStringLiteral("inner_width_mm"));
    from.finish();
    return chain;
}

BandMeasurement bandFrom(StrictObject from)
{
    BandMeasurement band;
    band.rest = centimetres(from, QStringLiteral("rest_cm"));
    const int curve = from.choice(QStringLiteral("curve"), {QStringLiteral("best"), QStringLiteral("line"), QStringLiteral("quadratic"), QStringLiteral("rubber")});
    if (curve > 0)
        band.model = static_cast<BandModel>(curve - 1);
    for (StrictObject hanging : from.neededList(QStringLiteral("hangings"))) {
        BandHanging h;
        h.mass = kilogramsOf(hanging, QStringLiteral("mass_kg"));
        h.length = centimetres(hanging, QStringLiteral("length_cm"));
        h.leftOut = hanging.flag(QStringLiteral("left_out"), false);
        hanging.finish();
        band.hangings.push_back(h);
    }
    from.finish();
    return band;
}

/// A chain or a band stands in `from`, one of them; which, and its object.
std::pair<bool, StrictObject> chainOrBand(StrictObject& from)
{
    const QString chain = QStringLiteral("chain"), band = QStringLiteral("band");
    const bool isChain = from.has(chain);
    if (isChain == from.has(band))
        from.fault(chain, QStringLiteral("either a chain or a band is wanted"));
    return {isChain, from.neededObject(isChain ? chain : band)};
}

std::vector<KitItem> kitFrom(std::vector<StrictObject> list)
{
    std::vector<KitItem> kit;
    for (StrictObject& from : list) {
        KitItem item;
        item.id = numberedids::numbered(kit.size() + 1);
        item.name = from.neededText(QStringLiteral("name")).toStdString();
        if (std::any_of(kit.begin(), kit.end(), [&](const KitItem& i) { return i.name == item.name; }))
            from.fault(QStringLiteral("name"), QStringLiteral("stands in the kit twice"));
        item.pair = from.neededFlag(QStringLiteral("pair"));
        const auto [isChain, measured] = chainOrBand(from);
        if (isChain)
            item.measurement = chainFrom(measured);
        else
            item.measurement = bandFrom(measured);
        from.finish();
        kit.push_back(std::move(item));
    }
    return kit;
}

BarRecord barFrom(StrictObject from)
{
    BarRecord bar;
    bar.bar = kilograms(from.neededNumber(QStringLiteral("mass_kg")));
    bar.barEntered = from.neededFlag(QStringLiteral("entered"));
    bar.collars = kilograms(from.neededNumber(QStringLiteral("collars_kg")));
    bar.wanted = kilograms(from.neededNumber(QStringLiteral("wanted_kg")));
    bar.trust = static_cast<PlateTrust>(from.choice(QStringLiteral("plates"), {QStringLiteral("as marked"), QStringLiteral("unweighed")}));
    bar.sleeve = centimetres(from, QStringLiteral("sleeve_cm"));
    if (!from.has(QStringLiteral("stock"))) {
        bar.stock = usualStock();
        from.finish();
        return bar;
    }
    for (StrictObject plates : from.neededList(QStringLiteral("stock"))) {
        PlatesHere here;
        here.type.mass = kilograms(plates.neededNumber(QStringLiteral("mass_kg")));
        here.type.diameter = metres(plates.neededNumber(QStringLiteral("diameter_mm")) / 1000);
        here.type.thickness = metres(plates.neededNumber(QStringLiteral("thickness_mm")) / 1000);
        const double count = plates.neededNumber(QStringLiteral("count"));
        here.count = static_cast<int>(count);
        if (count != here.count)
            plates.fault(QStringLiteral("count"), QStringLiteral("is not a whole number"));
        plates.finish();
        bar.stock.push_back(here);
    }
    from.finish();
    return bar;
}

ChainPlacing chainPlacing(StrictObject from)
{
    ChainPlacing placing;
    placing.way = static_cast<ChainHangingWay>(from.choice(QStringLiteral("way"), {QStringLiteral("straight"), QStringLiteral("doubled"), QStringLiteral("bunched")}));
    placing.lead = metres(from.neededNumber(QStringLiteral("lead_cm")) / 100);
    placing.leadMass = kilogramsOf(from, QStringLiteral("lead_mass_kg")).value_or(placing.leadMass);
    placing.bunch = centimetres(from, QStringLiteral("bunch_cm")).value_or(placing.bunch);
    from.finish();
    return placing;
}

BandPlacing bandPlacing(StrictObject from)
{
    BandPlacing placing;
    placing.doubled = from.neededFlag(QStringLiteral("doubled"));
    placing.above = from.neededFlag(QStringLiteral("above"));
    placing.anchorHeight = metres(from.neededNumber(QStringLiteral("anchor_cm")) / 100);
    placing.offset = centimetres(from, QStringLiteral("offset_cm")).value_or(placing.offset);
    placing.handle = centimetres(from, QStringLiteral("handle_cm")).value_or(placing.handle);
    placing.heldBy = kilogramsOf(from, QStringLiteral("held_by_kg"));
    from.finish();
    return placing;
}

std::vector<HungRecord> hungFrom(std::vector<StrictObject> list, const std::vector<KitItem>& kit)
{
    std::vector<HungRecord> hung;
    for (StrictObject& from : list) {
        HungRecord record;
        const std::string name = from.neededText(QStringLiteral("item")).toStdString();
        const auto item = std::find_if(kit.begin(), kit.end(), [&](const KitItem& i) { return i.name == name; });
        record.on = static_cast<HungOn>(from.choice(QStringLiteral("on"), {QStringLiteral("both sides"), QStringLiteral("left"), QStringLiteral("right")}));
        const auto [isChain, placing] = chainOrBand(from);
        if (isChain)
            record.placing = chainPlacing(placing);
        else
            record.placing = bandPlacing(placing);
        if (item == kit.end())
            from.fault(QStringLiteral("item"), QStringLiteral("\"%1\" is not in the kit").arg(QString::fromStdString(name)));
        else if (record.item = item->id; isChain != std::holds_alternative<ChainMeasurement>(item->measurement))
            from.fault(QStringLiteral("item"), QStringLiteral("hangs as what it is not"));
        from.finish();
        hung.push_back(std::move(record));
    }
    return hung;
}

}

namespace seasonfile {

SeasonSetup parse(const QString& name, const QByteArray& json)
{
    SeasonSetup season;
    season.name = name;
    QJsonParseError broken;
    const QJsonDocument document = QJsonDocument::fromJson(json, &broken);
    if (!document.isObject()) {
        season.faults << QStringLiteral("%1: %2").arg(name, document.isNull() ? broken.errorString() : QStringLiteral("is not an object"));
        return season;
    }
    StrictObject root(document.object(), name + QStringLiteral(": "), season.faults);
    season.about = root.neededText(QStringLiteral("about"));
    season.marks = marksFrom(root.neededObject(QStringLiteral("marks")));
    season.kit = kitFrom(root.neededList(QStringLiteral("kit")));
    season.setup.bar = barFrom(root.neededObject(QStringLiteral("bar")));
    season.setup.hung = hungFrom(root.neededList(QStringLiteral("hung")), season.kit);
    root.finish();
    return season;
}

std::vector<SeasonSetup> all()
{
    std::vector<SeasonSetup> season;
    const QDir folder(QStringLiteral(":/sample-season"));
    for (const QFileInfo& info : folder.entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(info.filePath());
        if (file.open(QIODevice::ReadOnly))
            season.push_back(parse(info.completeBaseName(), file.readAll()));
    }
    return season;
}

}
