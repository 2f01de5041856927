// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/seasonfile.h"

#include "core/sample/kitreader.h"
#include "tests/core/numberedids.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <algorithm>

using namespace steelyard;
using sample::StrictObject;

namespace {

const KitItem* named(const std::vector<KitItem>& kit, const std::string& name)
{
    const auto at = std::find_if(kit.begin(), kit.end(), [&](const KitItem& item) { return item.name == name; });
    return at == kit.end() ? nullptr : &*at;
}

std::vector<KitItem> kitFrom(std::vector<StrictObject> list)
{
    std::vector<KitItem> kit;
    for (StrictObject& from : list) {
        KitItem item;
        item.id = numberedids::numbered(kit.size() + 1);
        item.name = from.neededText("name");
        if (named(kit, item.name))
            from.fault("name", "stands in the kit twice");
        item.pair = from.neededFlag("pair");
        item.measurement = sample::measuredFrom(from);
        from.finish();
        kit.push_back(std::move(item));
    }
    return kit;
}

}

namespace seasonfile {

SeasonSetup parse(const QString& name, const QByteArray& json)
{
    SeasonSetup season;
    season.name = name;
    sample::Faults faults;
    StrictObject root = StrictObject::of(json.toStdString(), name.toStdString(), faults);
    if (faults.empty()) {
        season.about = QString::fromStdString(root.neededText("about"));
        StrictObject marks = root.neededObject("marks");
        season.marks = sample::marksFrom(marks);
        marks.finish();
        season.kit = kitFrom(root.neededList("kit"));
        season.setup.bar = sample::barFrom(root.neededObject("bar"));
        season.setup.hung = sample::hungFrom(root.neededList("hung"), [&](const std::string& item) { return named(season.kit, item); });
        root.finish();
    }
    for (const std::string& fault : faults)
        season.faults << QString::fromStdString(fault);
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
