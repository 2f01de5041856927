// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/deskfiller.h"

#include "mobile/text/vaulttexts.h"
#include "tests/mobile/eccentric/cleared.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/lookback.h"
#include "tests/mobile/people.h"
#include "tests/mobile/strength/tested.h"
#include "tests/mobile/venues/twovenues.h"
#include "tests/core/numberedids.h"

using namespace steelyard;
using numberedids::numbered;

namespace {

BarMarks marks()
{
    BarMarks m;
    m.bottom = metres(0.77);
    m.zoneFrom = metres(0.88);
    m.zoneTo = metres(1.02);
    m.top = metres(1.27);
    m.rack = metres(1.22);
    return m;
}

std::vector<KitItem> kit()
{
    ChainMeasurement chain;
    chain.by = ChainMeasuring::Gauged;
    chain.length = metres(0.70);
    chain.wire = metres(0.016);
    chain.pitch = metres(0.048);
    chain.innerWidth = metres(0.0195);
    BandMeasurement band;
    band.rest = metres(0.52);
    for (const auto& [kg, cm] : {std::pair{2.5, 68.4}, {5.0, 82.9}, {7.5, 97.8}, {10.0, 117.0}, {12.5, 124.0}, {15.0, 137.4}})
        band.hangings.push_back({kilograms(kg), metres(cm / 100), false});
    return {{numbered(1), "Chain, 16 mm, 70 cm", true, chain}, {numbered(2), "Band B1", true, band}, {numbered(3), "Band B2", false, band}};
}

SetupRecord iron()
{
    SetupRecord setup;
    setup.bar.stock = usualStock();
    setup.bar.wanted = kilograms(82.5);
    return setup;
}

HungRecord chains() { return {numbered(1), HungOn::BothSides, ChainPlacing{ChainHangingWay::Straight, metres(0.8), kilograms(0.4), metres(0.3)}}; }

}

void DeskFiller::empty(DeskService* desk) const
{
    SetupRecord bare;
    bare.bar.stock = usualStock();
    layOut(*BookForeign::instance, desk->desk(), {}, {}, bare);
}

void DeskFiller::stopped(DeskService* desk) const
{
    SetupRecord setup = iron();
    setup.hung = {chains(), {numbered(2), HungOn::BothSides, BandPlacing{false, false, metres(0.05), metres(0.1), Length{}, kilograms(5)}}};
    layOut(*BookForeign::instance, desk->desk(), marks(), kit(), setup);
}

void DeskFiller::full(DeskService* desk) const
{
    SetupRecord setup = iron();
    setup.hung = {chains(), {numbered(2), HungOn::LeftOnly, BandPlacing{false, false, metres(0.05), metres(0.1), Length{}, kilograms(5)}},
                  {numbered(3), HungOn::RightOnly, BandPlacing{true, true, metres(2.2), Length{}, metres(0.05), std::nullopt}}};
    layOut(*BookForeign::instance, desk->desk(), marks(), kit(), setup);
}

void DeskFiller::worn(DeskService* desk) const
{
    AidMeasurement aid;
    for (const auto& [kg, cm] : {std::pair{0.0, 31.0}, {62.5, 0.0}, {41.0, 5.0}, {52.5, 11.0}, {8.5, 19.0}})
        aid.readings.push_back({kilograms(kg), metres(cm / 100), kg == 52.5});
    MachineMeasurement machine;
    machine.stack = kilograms(40);
    for (const auto& [radians, cm] : {std::pair{0.0, 8.1}, {0.5, 10.6}, {1.0, 12.3}, {1.5, 11.2}, {2.0, 8.8}}) {
        MachineReading& r = machine.readings.emplace_back();
        r.angle = Angle{radians};
        r.radius = metres(cm / 100);
    }
    BarMarks bench;
    bench.bottom = metres(0.65);
    bench.top = metres(1.00);
    SetupRecord setup = iron();
    setup.hung = {{numbered(4), HungOn::BothSides, AidPlacing{metres(0.65)}}};
    layOut(*BookForeign::instance, desk->desk(), bench, {{numbered(4), "Aid", false, aid}, {numbered(5), "Leg curl", false, machine}}, setup);
}

void DeskFiller::asked(DeskService* desk, double bottom, double top, bool level) const
{
    std::vector<IsometricPull> pulls;
    for (const auto& [cm, kg] : {std::pair{75, 118}, {92, 112}, {110, 138}, {130, 171}})
        pulls.push_back({{}, {}, LiftId{1}, metres(cm / 100.0), kilograms(kg), kilograms(0.5)});
    desk->desk().setPulls(std::move(pulls));
    WantedPulls wanted;
    wanted.masses = {{TargetPlace::Bottom, kilograms(bottom)}, {TargetPlace::Top, kilograms(top)}};
    wanted.isLevel = level;
    desk->desk().want(std::move(wanted));
}

void DeskFiller::tools(DeskService* desk) const
{
    SetupRecord setup = iron();
    setup.hung = {chains(), {numbered(2), HungOn::BothSides, BandPlacing{false, false, metres(0.06), Length{}, Length{}, std::nullopt}}};
    std::vector<KitItem> all = kit();
    const auto add = [&all](std::uint64_t number, const char* name, Measured measured, bool pair) { all.push_back({numbered(number), name, pair, std::move(measured)}); };
    add(4, "Scale by the door", ScaleMeasurement{kilograms(0.1), kilograms(0.1), {{kilograms(20), kilograms(20.2)}}}, false);
    add(5, "Straps, short", LeadMeasurement{metres(0.62), kilograms(0.35)}, true);
    add(6, "The old bar", IronMeasurement{IronSort::Bar, kilograms(20), kilograms(20.3), kilograms(0.1), kilograms(0.1), 1}, false);
    add(7, "Twenties", IronMeasurement{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), kilograms(0.1), 2}, false);
    add(8, "Uprights", RackMeasurement{metres(0.415), metres(0.05), 28, {metres(0.06), metres(2.14)}}, false);
    layOut(*BookForeign::instance, desk->desk(), marks(), std::move(all), setup);
}

void DeskFiller::tested(BookService* book) const
{
    ::tested::fill(*book);
}

void DeskFiller::released(DeskService* desk, BookService* book, bool isCleared) const
{
    SetupRecord setup = iron();
    setup.bar.wanted = kilograms(70);
    ReleasePlan plan;
    plan.hook = {kilograms(3.2), kilograms(0.05), metres(0.18), kilograms(60), {metres(0.78), metres(0.82), metres(0.86)}};
    plan.measures.sleeveRadius = metres(0.025);
    plan.measures.lipDrop = metres(0.012);
    plan.measures.lowest = {metres(0.77), metres(0.785), metres(0.76), metres(0.775)};
    plan.measures.spacing = metres(1.6);
    plan.measures.grip = metres(0.8);
    plan.set = {6, 2, std::chrono::seconds(30), std::chrono::seconds(3), PutBack::EachCluster, PutBackBy::Spotters};
    setup.release = plan;
    layOut(*BookForeign::instance, desk->desk(), marks(), kit(), setup);
    ::people::fill(*book, 3);
    const RecordId first = book->book().athletes().front()->id;
    cleared::tested(*book, first, 100);
    if (isCleared)
        cleared::byName(*book, first);
    book->keeping().forget();
}

void DeskFiller::lastTime(DeskService* desk, double kilograms) const
{
    desk->desk().setLastTime(steelyard::kilograms(kilograms));
}

void DeskFiller::squad(BookService* book, int count) const
{
    book->load({});
    ::people::fill(*book, count);
}

void DeskFiller::people(BookService* book, int count) const
{
    ::people::fill(*book, count);
}

void DeskFiller::sizes(BookService* book) const
{
    lookback::sizes(*book);
}

void DeskFiller::saidTwice(BookService* book) const
{
    lookback::saidTwice(*book);
}

void DeskFiller::cleared(BookService* book) const
{
    lookback::cleared(*book);
}

QString DeskFiller::clearanceId(BookService* book, int place) const
{
    return QString::fromStdString(book->book().clearancesOf(book->book().athletes().front()->id).at(static_cast<std::size_t>(place))->id.hex());
}

QString DeskFiller::statusId(BookService* book, int place) const
{
    return QString::fromStdString(book->book().statusesOf(book->book().athletes().front()->id).at(static_cast<std::size_t>(place))->id.hex());
}

void DeskFiller::measuredAgain(BookService* book) const
{
    lookback::measuredAgain(*book);
}

void DeskFiller::venues(BookService* book) const
{
    twovenues::mixed(*book);
}

void DeskFiller::grown(BookService* book) const
{
    lookback::grown(*book);
}

void DeskFiller::news(VaultService* vault) const
{
    steelyard::vault::Findings findings;
    findings.witness = steelyard::vault::WitnessState::DatabaseBehind;
    findings.entriesMissingCount = 12;
    findings.keyFileHealed = findings.movedHere = findings.folderSynced = findings.reserveMissing = true;
    vault->tell(vaulttexts::found(findings, 2));
}

void DeskFiller::lift(BookService* book, const QString& name) const
{
    lookback::lift(*book, name.toStdString());
}

QString DeskFiller::liftId(BookService* book, int place) const
{
    const auto all = book->book().lifts();
    return place >= 0 && static_cast<std::size_t>(place) < all.size() ? QString::fromStdString(all[static_cast<std::size_t>(place)]->id.hex()) : QString();
}

QString DeskFiller::testId(BookService* book, int place) const
{
    const auto people = book->book().athletes();
    const auto all = people.empty() ? std::vector<const StrengthTest*>() : book->book().testsOf(people.front()->id);
    return place >= 0 && static_cast<std::size_t>(place) < all.size() ? QString::fromStdString(all[static_cast<std::size_t>(place)]->id.hex()) : QString();
}

QString DeskFiller::counts(BookService* book, DeskService* desk) const
{
    const SeasonBook& all = book->book();
    std::size_t setups = 0, measured = 0;
    for (const Athlete* athlete : all.athletes())
        setups += all.setupsOf(athlete->id).size();
    for (const KitRecord* record : all.kit())
        measured += record->measurements.size();
    const auto& marks = desk->desk().marks();
    return QStringLiteral("%1 people, %2 set-ups, %3 venues, %4 things, %5 measurements; marks %6 to %7, load %8, %9 hung")
        .arg(all.athletes().size()).arg(setups).arg(all.venues().size()).arg(all.kit().size()).arg(measured)
        .arg(marks.bottom ? marks.bottom->si() : -1).arg(marks.top ? marks.top->si() : -1)
        .arg(desk->desk().setup().bar.wanted.si()).arg(desk->desk().setup().hung.size());
}

QString DeskFiller::itemId(BookService* book, int place) const
{
    const auto all = book->book().kit();
    return place >= 0 && static_cast<std::size_t>(place) < all.size() ? QString::fromStdString(all[static_cast<std::size_t>(place)]->item.id.hex()) : QString();
}

QString DeskFiller::athleteId(BookService* book, int place) const
{
    const auto all = book->book().athletes();
    return place >= 0 && static_cast<std::size_t>(place) < all.size() ? QString::fromStdString(all[static_cast<std::size_t>(place)]->id.hex()) : QString();
}
