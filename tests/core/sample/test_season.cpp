// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/implements/figures.h"
#include "core/work/implements/implementmass.h"
#include "core/work/measuredkit.h"
#include "core/work/measuring/aidkit.h"
#include "core/work/measuring/comparing.h"
#include "core/work/measuring/keptkit.h"
#include "core/work/measuring/machinekit.h"
#include "core/work/gates/mayuse.h"
#include "core/work/weighup.h"
#include "tests/core/sample/marrowhill.h"

#include <QtTest>

#include <set>
#endif

using namespace steelyard;
using namespace steelyard::sample;
using marrowhill::today;

/// The files of the sample season are read strictly, and say nothing that a coach would not believe.
class SeasonTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void readsWithoutFault();
    void faultsNameFileAndKey_data();
    void faultsNameFileAndKey();
    void missingFileIsAFault();
    void oneIsBorrowedAndOneLent();
    void holdsWhatItPromises();
    void daysCountBack();
    void marksFitTheBody();
    void minorsAreKeptSparely();
    void measuringsFit();
    void toolsComeToSomething();
    void someMarksAreHolesOfTheRack();
    void aTwinHasDrifted();
    void loadsCanBeMade();
    void setupsWeighUp();
    void someAreClearedAndSomeAreNot();
    void testsOfEveryKind();
};

void SeasonTest::readsWithoutFault()
{
    Faults faults;
    const Season season = readSeason(marrowhill::texts(), today, faults);
    QVERIFY2(faults.empty(), faults.empty() ? "" : faults.front().c_str());
    QCOMPARE(season.people.size(), std::size_t(26));
    QCOMPARE(season.venues.size(), std::size_t(3));
}

void SeasonTest::faultsNameFileAndKey_data()
{
    QTest::addColumn<QString>("file");
    QTest::addColumn<QString>("from");
    QTest::addColumn<QString>("to");
    QTest::addColumn<QString>("fault");
    const auto row = [](const char* name, const char* file, const char* from, const char* to, const char* fault) {
        QTest::newRow(name) << QString::fromUtf8(file) << QString::fromUtf8(from) << QString::fromUtf8(to) << QString::fromUtf8(fault);
    };
    row("no such venue", "kit.json", "\"venue\": \"Weight room\"", "\"venue\": \"Weigh room\"", "kit.json: kit[0].venue: \"Weigh room\" is not there");
    row("a thing twice", "kit.json", "\"Chains, 13 mm\"", "\"Chains, 16 mm\"", "kit.json: kit[1].name: stands there twice");
    row("a day to come", "kit.json", "\"days_ago\": 111", "\"days_ago\": -1", "kit.json: kit[0].measured[0].days_ago: is still to come");
    row("half a day", "squad.json", "\"turns\": 27", "\"turns\": 27.5", "squad.json: squad[0].turns: is not a whole number");
    row("no such lift", "squad.json", "\"lift\": \"back squat\"", "\"lift\": \"back squad\"", "squad.json: squad[0].marks[0].lift: \"back squad\" is no lift");
    row("no such athlete", "setups.json", "Adaeze Thornbeck", "Ada Thornbeck", "setups.json: setups[0].athlete: \"Ada Thornbeck\" is not there");
    row("no such thing to hang", "setups.json", "Chains, 16 mm", "Chains, 61 mm", "setups.json: setups[0].hung[0].item: \"Chains, 61 mm\" is not in the kit");
    row("a caution that there is not", "setups.json", "[\"chains\"]", "[\"ropes\"]", "setups.json: setups[0].looked_over: \"ropes\" is no caution");
    row("a key that nobody asked for", "venues.json", "\"notes\"", "\"note\"", "venues.json: venues[0].note: is not a key here");
    row("a hole that the rack has not", "squad.json", "\"rack_hole\": 19", "\"rack_hole\": 27", "squad.json: squad[16].marks[0].rack_hole: is no hole of the rack");
    row("a mark said twice", "squad.json", "\"rack_hole\": 19", "\"rack_hole\": 19, \"rack_cm\": 132", "squad.json: squad[16].marks[0].rack_hole: stands there in centimetres too");
    row("no such rack", "squad.json", "\"rack\": \"Rack by the door\"", "\"rack\": \"Hall chains\"", "squad.json: squad[16].marks[0].rack: is no rack");
    row("no weighed iron", "setups.json", "[\"Hall tens\"]", "[\"Hall chains\"]", "setups.json: setups[31].iron_weighed: \"Hall chains\" is no weighed iron");
    row("a scale's key", "kit.json", "\"empty_kg\"", "\"zero_kg\"", "kit.json: kit[17].measured[0].scale.zero_kg: is not a key here");
    row("no sort of iron", "kit.json", "\"sort\": \"plates\"", "\"sort\": \"discs\"", "kit.json: kit[18].measured[0].iron.sort: is \"discs\", not one of bar, plates");
    row("a machine read in no way", "kit.json", "\"by\": \"radius\"", "\"by\": \"weight\"", "kit.json: kit[28].measured[0].machine.by: is \"weight\", not one of radius, pull");
    row("half an angle", "kit.json", "\"angle_deg\": 120", "\"angle_deg\": 120.5", "kit.json: kit[28].measured[0].machine.readings[1].angle_deg: is not a whole number");
    row("a height of another unit", "kit.json", "\"above_chest_cm\": 27", "\"above_chest_in\": 27", "kit.json: kit[27].measured[0].aid.readings[0].above_chest_in: is not a key here");
    row("an aid hung as a band", "setups.json", "\"aid\": {}", "\"band\": {}", "setups.json: setups[43].hung[0].item: hangs as what it is not");
    row("an aid beside a band", "setups.json", "\"aid\": {}", "\"aid\": {}, \"band\": {}", "setups.json: setups[43].hung[0].chain: one thing of the kit is wanted, and no more");
    row("a tyre in no way", "kit.json", "\"by\": \"edge\"", "\"by\": \"rim\"", "kit.json: kit[29].measured[0].tyre.by: is \"rim\", not one of unknown, edge, whole");
    row("an edge's key", "kit.json", "\"lift_point_cm\": 51.5, \"far_contact_cm\": 40 }", "\"lift_point_in\": 51.5, \"far_contact_cm\": 40 }", "kit.json: kit[29].measured[0].tyre.edges[0].lift_point_in: is not a key here");
    row("half a millilitre", "kit.json", "\"capacity_ml\": 50000", "\"capacity_ml\": 50000.5", "kit.json: kit[31].measured[0].keg.capacity_ml: is not a whole number");
    row("a surface of no venue", "kit.json", "{ \"venue\": \"Far pitch\", \"days_ago\": 95", "{ \"venue\": \"Near pitch\", \"days_ago\": 95", "kit.json: kit[38].surfaces[0].venue: \"Near pitch\" is not there");
    row("a run with no sled", "squad.json", "\"sled\": \"Sled\"", "\"sled\": \"Sledge\"", "squad.json: squad[0].runs[0].sled: \"Sledge\" is not there");
    row("held against no lift", "squad.json", "\"against\": \"bench press\"", "\"against\": \"bench\"", "squad.json: squad[0].caps[0].against: \"bench\" is no lift");
    row("borrowed of nobody", "kit.json", "\"who\": \"the school in Pell\"", "\"from\": \"the school in Pell\"", "kit.json: kit[24].borrowed.who: is missing");
    row("lent and borrowed", "kit.json", "\"lent\":", "\"borrowed\": { \"who\": \"the farm\", \"days_ago\": 9 }, \"lent\":", "kit.json: kit[11].lent: is borrowed too");
    row("lent before it was there", "kit.json", "\"days_ago\": 12, \"back_in_days\"", "\"days_ago\": 120, \"back_in_days\"", "kit.json: kit[11].lent.days_ago: is before it was last measured");
    row("half a day to be back", "kit.json", "\"back_in_days\": 9", "\"back_in_days\": 9.5", "kit.json: kit[11].lent.back_in_days: is not a whole number");
    row("no such method", "clearances.json", "\"method\": \"maximal test\"", "\"method\": \"most\"",
        "clearances.json: clearances[3].method: is \"most\", not one of plain iron, maximal test, eccentric release, chains, bands below, bands above, bench aid, machine, overhead, tyre, implement, carry, sled, kettlebell, isometric test, jumps, throws");
    row("cleared for no day", "clearances.json", "\"for_days\": 90", "\"for_days\": 0", "clearances.json: clearances[3].for_days: is no day");
    row("nobody gave it", "clearances.json", "\"who\": \"the head coach\", \"for_days\": 90", "\"for_days\": 90", "clearances.json: clearances[3].who: is missing");
    row("kept from something unknown", "statuses.json", "[\"jumps\"]", "[\"leaps\"]", "statuses.json: statuses[2].not_methods: \"leaps\" is not known");
    row("no such group", "statuses.json", "[\"press\"]", "[\"push\"]", "statuses.json: statuses[0].not_groups: \"push\" is not known");
    row("no such fitness", "statuses.json", "\"none\"", "\"nothing\"", "statuses.json: statuses[1].fitness: is \"nothing\", not one of all, some, none");
    row("what hangs in no test", "squad.json", "\"hung\": [\"chains\"]", "\"hung\": [\"ropes\"]", "squad.json: squad[0].tests[5].hung: \"ropes\" hangs in no test");
    row("half a rep", "squad.json", "\"reps\": 5,", "\"reps\": 5.5,", "squad.json: squad[0].tests[0].reps: is not a whole number");
    row("a test without a load", "squad.json", "\"load_kg\"", "\"load_lb\"", "squad.json: squad[0].tests[0].load_kg: is missing");
    row("not JSON", "venues.json", "{", "", "venues.json: is not JSON");
}

void SeasonTest::faultsNameFileAndKey()
{
    QFETCH(QString, file);
    QFETCH(QString, from);
    QFETCH(QString, to);
    QFETCH(QString, fault);
    SeasonTexts texts = marrowhill::texts();
    std::string& text = texts[file.toStdString()];
    const auto at = text.find(from.toStdString());
    QVERIFY(at != std::string::npos);
    text.replace(at, from.toStdString().size(), to.toStdString());
    Faults faults;
    (void)readSeason(texts, today, faults);
    QVERIFY2(std::find(faults.begin(), faults.end(), fault.toStdString()) != faults.end(), faults.empty() ? "none" : faults.front().c_str());
}

void SeasonTest::missingFileIsAFault()
{
    SeasonTexts texts = marrowhill::texts();
    texts.erase("setups.json");
    Faults faults;
    (void)readSeason(texts, today, faults);
    QVERIFY(faults == Faults{"setups.json: is missing"});
}

void SeasonTest::oneIsBorrowedAndOneLent()
{
    const Season season = marrowhill::season();
    const auto count = [&season](std::optional<OnLoan> KitItem::*loan) { return std::count_if(season.kit.begin(), season.kit.end(), [loan](const SampleItem& item) { return (item.item.*loan).has_value(); }); };
    QCOMPARE(count(&KitItem::borrowed), 4);
    QCOMPARE(count(&KitItem::lent), 1);
    const SampleItem* stands = season.item("Squat stands");
    QVERIFY(stands && stands->item.borrowed == (OnLoan{"the school in Pell", today + std::chrono::days(5)}));
    const SampleItem* chain = season.item("Gate chain");
    QVERIFY(chain && chain->item.lent == (OnLoan{"the rowers at the quay", today + std::chrono::days(9)}));
    // no set-up of the season waits for what is lent
    for (const SampleSetup& setup : season.setups)
        for (const HungRecord& hung : setup.saved.setup.hung)
            QVERIFY(hung.item != chain->item.id);
}

/// Over the whole season: plain ones and one under other conditions, tried out and estimated, too old, belied, refused, with the body in it.
void SeasonTest::testsOfEveryKind()
{
    std::vector<StrengthTest> all;
    for (const SamplePerson& person : marrowhill::season().people)
        all.insert(all.end(), person.tests.begin(), person.tests.end());
    const auto any = [&all](const auto& is) { return std::any_of(all.begin(), all.end(), is); };
    QVERIFY(all.size() >= 15);
    QVERIFY(any([](const StrengthTest& t) { return t.conditions.hung.contains(Method::Chains); }));
    QVERIFY(any([](const StrengthTest& t) { return t.maximum && today - t.day > ours::maximumAge; }) && any([](const StrengthTest& t) { return t.maximum && today - t.day <= ours::maximumAge; }));
    QVERIFY(any([](const StrengthTest& t) { return t.missed; }) && any([](const StrengthTest& t) { return t.reps > 10; }));
    QVERIFY(any([](const StrengthTest& t) { return t.conditions.bodyMass && t.load > kilograms(0); }) && any([](const StrengthTest& t) { return t.conditions.bodyMass && t.load < kilograms(0); }));
    QVERIFY(any([](const StrengthTest& t) { return t.day <= today - std::chrono::weeks(14); }) && any([](const StrengthTest& t) { return t.day >= today - std::chrono::weeks(2); }));
}

void SeasonTest::holdsWhatItPromises()
{
    const Season season = marrowhill::season();
    std::set<std::string> squads;
    for (const SamplePerson& person : season.people) {
        squads.insert(person.athlete.squad);
        QVERIFY2(!person.athlete.marks.empty(), person.athlete.name.c_str());
    }
    QVERIFY(squads == (std::set<std::string>{"Women", "Youth"}));
    // names that are long, in other letters, with an apostrophe
    const auto any = [&](const auto& is) { return std::any_of(season.people.begin(), season.people.end(), [&](const SamplePerson& p) { return is(p.athlete.name); }); };
    QVERIFY(any([](const std::string& name) { return name.size() > 45; }));
    QVERIFY(any([](const std::string& name) { return static_cast<unsigned char>(name.front()) >= 0xE0; }));
    QVERIFY(any([](const std::string& name) { return name.find('\'') != std::string::npos; }));
    int weighed = 0, gauged = 0, twoTerms = 0, unmeasured = 0;
    for (const SampleItem& item : season.kit) {
        if (const auto* chain = std::get_if<ChainMeasurement>(&item.item.measurement))
            ++(chain->by == ChainMeasuring::Weighed ? weighed : gauged);
        if (const auto* band = std::get_if<BandMeasurement>(&item.item.measurement)) {
            twoTerms += item.measurings.size() == 2 ? 1 : 0;
            unmeasured += band->hangings.empty() ? 1 : 0;
        }
    }
    QVERIFY(weighed >= 3 && gauged >= 3);
    // an aid that has lost some of its help over a term, with a reading left out; a cam machine; each comes to something
    const SampleItem* aid = season.item("Bench aid");
    QVERIFY(aid && aid->measurings.size() == 2 && compared(aid->measurings[0].second, aid->measurings[1].second));
    QVERIFY(aidFrom(std::get<AidMeasurement>(aid->item.measurement)).ok());
    const SampleItem* machine = season.item("Leg curl, cam");
    QVERIFY(machine && answerOf(std::get<MachineMeasurement>(machine->item.measurement)).ok());
    QVERIFY(twoTerms >= 4);
    QCOMPARE(unmeasured, 1);
    QVERIFY(season.setups.size() >= 40);
    // each kind of implement, one that nobody weighed and a keg that nobody may lift; a sled on two surfaces, runs enough for a line, caps
    std::set<ItemKind> kinds;
    int unknown = 0, pressed = 0;
    for (const SampleItem& item : season.kit) {
        if (!isImplement(kindOf(item.item.measurement)))
            continue;
        kinds.insert(kindOf(item.item.measurement));
        unknown += implementMass(item.item.measurement).mass ? 0 : 1;
        const auto* keg = std::get_if<KegMeasurement>(&item.item.measurement);
        pressed += keg && !mayBeLifted(*keg) ? 1 : 0;
    }
    QCOMPARE(kinds.size(), std::size_t{7});
    QVERIFY(unknown == 1 && pressed == 1);
    QVERIFY(season.item("Sled")->surfaces.size() == 3 && season.people[0].runs.size() >= 3 && season.people[0].athlete.caps.size() == 3);
    QVERIFY(season.venue("Far pitch")->venue.lane == Entered<Length>(metres(25)));
}

void SeasonTest::daysCountBack()
{
    const std::chrono::sys_days later = today + std::chrono::days(400);
    const Season now = marrowhill::season(), then = marrowhill::season(later);
    QCOMPARE((then.venues[0].day - now.venues[0].day).count(), 400);
    QCOMPARE((then.setups[3].saved.day - now.setups[3].saved.day).count(), 400);
    QCOMPARE((then.people[0].athlete.sizes[0].day - now.people[0].athlete.sizes[0].day).count(), 400);
    // everybody is as old as before
    QCOMPARE((*then.people[0].athlete.birthYear - *now.people[0].athlete.birthYear).count(), 1);
}

/// Common practice, no source: the bar on the back stands at about 0.82 of the height, and travels a quarter to two fifths of it.
void SeasonTest::marksFitTheBody()
{
    for (const SamplePerson& person : marrowhill::season().people) {
        const auto height = bodyHeightOn(person.athlete, today);
        for (const auto& [lift, marks] : person.athlete.marks) {
            QVERIFY2(marks.top.has_value(), person.athlete.name.c_str());
            if (marks.bottom)
                QVERIFY2(*marks.bottom + metres(0.2) < *marks.top, person.athlete.name.c_str());
            if (marks.zoneFrom)
                QVERIFY2(*marks.bottom < *marks.zoneFrom && *marks.zoneFrom < *marks.zoneTo && *marks.zoneTo < *marks.top, person.athlete.name.c_str());
            if (!height || lift != LiftId{1})
                continue;
            const double share = *marks.top / *height, path = (*marks.top - *marks.bottom) / *height;
            QVERIFY2(share > 0.79 && share < 0.85 && path > 0.25 && path < 0.40, person.athlete.name.c_str());
        }
    }
}

void SeasonTest::minorsAreKeptSparely()
{
    int agreed = 0, spare = 0, adults = 0;
    for (const SamplePerson& person : marrowhill::season().people) {
        const Athlete& athlete = person.athlete;
        if (majorityOn(athlete.birthYear, today) == Majority::Adult) {
            ++adults;
            continue;
        }
        ++(athlete.agreement ? agreed : spare);
        if (!athlete.agreement)
            QVERIFY2(athlete.notes.empty() && athlete.sizes.empty(), athlete.name.c_str());
    }
    QVERIFY(adults >= 12);
    QVERIFY(agreed >= 4);
    QVERIFY(spare >= 3);
}

void SeasonTest::measuringsFit()
{
    int odd = 0;
    for (const SampleItem& item : marrowhill::season().kit)
        for (const auto& [day, measured] : item.measurings) {
            if (const auto* chain = std::get_if<ChainMeasurement>(&measured)) {
                const auto made = chainFrom(*chain);
                QVERIFY2(made.ok(), item.item.name.c_str());
                QVERIFY(made->perLength.value.si() > 0.3 && made->perLength.value.si() < 8);
                continue;
            }
            const auto* known = std::get_if<BandMeasurement>(&measured);
            if (!known || known->hangings.empty())
                continue;
            const BandMeasurement& band = *known;
            const auto count = std::count_if(band.hangings.begin(), band.hangings.end(), [](const BandHanging& h) { return !h.unloading; });
            QVERIFY2(count >= 3 && count <= 8, item.item.name.c_str());
            const auto fit = bandFitFrom(band);
            QVERIFY2(fit.ok() && fit->rises(), item.item.name.c_str());
            // read to half a centimetre, no reading lies far off
            BandMeasurement whole = band;
            for (BandHanging& hanging : whole.hangings)
                hanging.leftOut = false;
            odd += oddHanging(whole) ? 1 : 0;
        }
    QCOMPARE(odd, 1);
}

void SeasonTest::toolsComeToSomething()
{
    const Season season = marrowhill::season();
    std::vector<KitItem> kit;
    for (const SampleItem& item : season.kit)
        kit.push_back(item.item);
    const auto scales = scalesIn(kit);
    QVERIFY(std::any_of(scales.begin(), scales.end(), [](const KeptScale& scale) { return scale.check.good; }));
    QVERIFY(std::any_of(scales.begin(), scales.end(), [](const KeptScale& scale) { return !scale.check.good; }));
    QCOMPARE(racksIn(kit).size(), season.venues.size());
    QVERIFY(leadsIn(kit).size() >= 2);
    QVERIFY(!ironIn(kit, IronSort::Bar).empty() && !ironIn(kit, IronSort::Plates).empty());
    // each of them that stands in the files
    for (const KitItem& item : kit) {
        const bool ok = std::visit([]<typename M>(const M& m) {
            if constexpr (std::is_same_v<M, ScaleMeasurement> || std::is_same_v<M, IronMeasurement> || std::is_same_v<M, LeadMeasurement> || std::is_same_v<M, RackMeasurement>)
                return checked(m).ok();
            else
                return true;
        }, item.measurement);
        QVERIFY2(ok, item.name.c_str());
    }
    const auto weighed = [](const SampleSetup& setup) {
        const auto& stock = setup.saved.setup.bar.stock;
        return std::any_of(stock.begin(), stock.end(), [](const PlatesHere& plates) { return plates.weighed.has_value(); });
    };
    QVERIFY(std::any_of(season.setups.begin(), season.setups.end(), weighed));
    QVERIFY(std::any_of(season.setups.begin(), season.setups.end(), [](const SampleSetup& setup) { return setup.saved.setup.bar.barWeighed.has_value(); }));
}

void SeasonTest::someMarksAreHolesOfTheRack()
{
    const Season season = marrowhill::season();
    const SampleItem* rack = season.item("Rack by the door");
    int byHole = 0;
    for (const SamplePerson& person : season.people)
        for (const auto& [lift, marks] : person.athlete.marks)
            if (marks.holes.rack) {
                QVERIFY(marks.holes.rack->rack == rack->item.id);
                QVERIFY(marks.rack == Entered<Height>(*heightOfHole(std::get<RackMeasurement>(rack->item.measurement), marks.holes.rack->hole)));
                ++byHole;
            }
    QVERIFY(byHole >= 8);
}

void SeasonTest::aTwinHasDrifted()
{
    const Season season = marrowhill::season();
    const auto pull = [&](const char* name, std::size_t term) {
        const auto fit = bandFitFrom(std::get<BandMeasurement>(season.item(name)->measurings[term].second));
        return fit->pull(metres(1.4)).si();
    };
    const double before = pull("Wide band, two knots", 0) / pull("Wide band, one knot", 0);
    const double after = pull("Wide band, two knots", 1) / pull("Wide band, one knot", 1);
    QVERIFY2(before > 0.97 && before < 1.03, qPrintable(QString::number(before)));
    QVERIFY2(after < 0.85, qPrintable(QString::number(after)));
}

void SeasonTest::loadsCanBeMade()
{
    for (const SampleSetup& setup : marrowhill::season().setups) {
        const auto loads = loadsOf(setup.saved.setup.bar);
        QVERIFY(loads.ok());
        const Mass wanted = setup.saved.setup.bar.wanted;
        QVERIFY2(std::abs((loads->nearest(wanted).total - wanted).si()) < 1e-9, qPrintable(QString::number(wanted.si())));
    }
}

void SeasonTest::setupsWeighUp()
{
    const Season season = marrowhill::season();
    std::vector<KitItem> kit;
    for (const SampleItem& item : season.kit)
        kit.push_back(item.item);
    std::map<Readiness, int> counts;
    for (const SampleSetup& setup : season.setups) {
        const auto person = std::find_if(season.people.begin(), season.people.end(), [&](const SamplePerson& p) { return p.athlete.id == setup.saved.athlete; });
        const BarMarks& marks = person->athlete.marks.at(setup.saved.lift);
        const WeighedUp answer = weighUp(setup.saved.setup, kit, marks, setup.lookedOver);
        ++counts[answer.readiness];
        if (answer.curve)
            for (const CurveSample& at : answer.curve->samples)
                QVERIFY2(asMass(at.total).si() > 14 && asMass(at.total).si() < 200, person->athlete.name.c_str());
    }
    QVERIFY2(counts[Readiness::Ready] >= 25, qPrintable(QString::number(counts[Readiness::Ready])));
    QVERIFY2(counts[Readiness::LookOver] >= 3, qPrintable(QString::number(counts[Readiness::LookOver])));
    QVERIFY(counts[Readiness::Refused] >= 1);     // hung on a band that nobody has measured
    QVERIFY(counts[Readiness::NotToBeUsed] >= 1); // an anchor that might lift
    QCOMPARE(counts[Readiness::MarksMissing], 0);
}

/// Two who are cleared, one who is refused, one under age who was approved by name, and one who does not train.
void SeasonTest::someAreClearedAndSomeAreNot()
{
    Faults faults;
    const Season season = readSeason(marrowhill::texts(), today, faults);
    const auto answer = [&season](const std::string& name, LiftId lift, Method method) {
        const Athlete& athlete = season.person(name)->athlete;
        GateFacts facts;
        facts.birthYear = athlete.birthYear;
        facts.alike = lift;
        for (const Clearance& one : season.clearances)
            if (one.athlete == athlete.id)
                facts.clearances.push_back(one);
        for (const DayStatus& one : season.statuses)
            if (one.athlete == athlete.id)
                facts.statuses.push_back(one);
        UseQuestion question;
        question.lift = lift;
        question.method = method;
        question.day = today;
        question.load = LoadAtWorst{kilograms(80), kilograms(1)};
        question.maximum = KnownMaximum{lift, true, kilograms(90), kilograms(94), kilograms(2), today - std::chrono::days(20), true};
        const auto first = mayUse(question, facts);
        for (const Reason& reason : first->reasons)
            if (reason.alone == Permission::Caution)
                question.lookedOver.push_back(reason.key);
        return *mayUse(question, facts);
    };
    constexpr LiftId squat{1}, press{8}, isometricSquat{25};
    QVERIFY(answer("Jola Przybyłkowicz-Nkemelu", squat, Method::EccentricRelease).permission == Permission::Permitted);
    QVERIFY(answer("Adaeze Thornbeck", isometricSquat, Method::IsometricTest).permission == Permission::Permitted);
    QVERIFY(answer("Quilla Ramsgarde", squat, Method::MaximalTest).permission == Permission::Permitted);
    QVERIFY(answer("Rua Mac an Tóiseagh", squat, Method::MaximalTest).permission == Permission::Not);
    const GateAnswer refused = answer("Katalin Ördöghegyi", squat, Method::EccentricRelease);
    QVERIFY(refused.permission == Permission::Not);
    QVERIFY(refused.reasons.size() >= 2 && refused.reasons[0].key.code == GateCode::ClearanceExpired && refused.reasons[1].key.code == GateCode::StatusNames);
    QVERIFY(answer("Katalin Ördöghegyi", press, Method::Plain).permission == Permission::Not);
    QVERIFY(answer("Katalin Ördöghegyi", squat, Method::Plain).permission == Permission::Permitted);
    QVERIFY(answer("Saoirse N'Gambaye", squat, Method::Plain).permission == Permission::Not);
    QVERIFY(answer("Hine Te Rangimoss", squat, Method::Plain).permission == Permission::Permitted);
}

QTEST_APPLESS_MAIN(SeasonTest)
#include "test_season.moc"
