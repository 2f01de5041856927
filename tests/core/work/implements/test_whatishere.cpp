// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/implements/whatishere.h"
#include "core/work/venues/freenow.h"
#include "core/work/venues/keepvenuekit.h"
#include "tests/core/work/implements/pitch.h"

#include <QtTest>

#include <algorithm>
#endif

using namespace steelyard;
using namespace pitch;

namespace {

std::vector<HereRow> here(const Pitch& p, const RecordId& venue, std::vector<UseLookedOver> looked = {})
{
    const auto rows = whatIsHere(p.book, {p.who, venue, p.today, std::move(looked)});
    return rows ? *rows : std::vector<HereRow>();
}

QStringList names(const std::vector<HereRow>& rows)
{
    QStringList all;
    for (const HereRow& row : rows)
        all << QString::fromStdString(row.name);
    return all;
}

}

/// What lies at a venue on a day, and what of it she may use.
class WhatIsHereTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsThere()
    {
        Pitch p;
        p.tried(deadliftId, 140);
        p.item("Chains", samples::weighed(), true);
        const RecordId tyre = p.item("Tyre", borrowed::tyreOf(90)), keg = p.item("Keg", borrowed::lyingKeg()), sled = p.item("Sled", borrowed::sled());
        p.item("Bare", StoneMeasurement{});
        // what is not measured yet is there all the same: it is what has to be weighed
        QCOMPARE(names(here(p, p.venue)), (QStringList{"Sled", "Tyre", "Keg", "Bare"}));
        QVERIFY(here(p, p.home).empty());
        keepLoan(p.keeping, keg, LoanKind::Lent, {"the rowers", {}}, p.told());
        keepInspection(p.keeping, tyre, KitFault::WireShowing, {}, p.told());
        QCOMPARE(names(here(p, p.venue)), (QStringList{"Sled", "Bare"}));
        keepLoan(p.keeping, keg, LoanKind::None, {}, p.told());
        keepInspection(p.keeping, tyre, std::nullopt, {}, p.told());
        takeAlong(p.keeping, p.home, std::vector{sled}, {}, p.told());
        QCOMPARE(names(here(p, p.venue)), (QStringList{"Tyre", "Keg", "Bare"}));
        QCOMPARE(names(here(p, p.home)), (QStringList{"Sled"}));
        const auto rows = here(p, p.venue);
        QVERIFY(rows[0].permission == Permission::Caution && rows[0].held && rows[0].held->value == kilograms(90) && rows[0].kind == ItemKind::Tyre);
        QVERIFY(rows[2].permission == Permission::Not && !rows[2].held && rows[2].mass.gap == MassGap::NotMeasured);
        // none of them ever hangs on a bar
        for (const KitRecord* record : p.book.kit())
            QCOMPARE(sidesFree(record->item, {}).has_value(), record->item.name == "Chains");
    }

    void theLeastStrictUseSays()
    {
        Pitch p;
        p.tried(press, 60);
        p.tried(deadliftId, 120);
        p.item("Keg", borrowed::lyingKeg());
        p.cap(kegPress, press, 50);
        p.cap(frontCarry, deadliftId, 60);
        const auto rows = here(p, p.venue);
        QCOMPARE(rows.size(), std::size_t{1});
        QCOMPARE(rows[0].uses.size(), std::size_t{2});
        QVERIFY(rows[0].uses[0].lift == kegPress && rows[0].uses[0].permission == Permission::Not);
        QVERIFY(rows[0].uses[1].lift == frontCarry && rows[0].uses[1].permission == Permission::Caution);
        QVERIFY(rows[0].permission == Permission::Caution);
        std::vector<UseLookedOver> looked;
        for (const Reason& reason : rows[0].uses[1].gates)
            looked.push_back({rows[0].item, frontCarry, reason.key});
        QVERIFY(here(p, p.venue, looked)[0].permission == Permission::Permitted);
    }

    void anAdjustableBell()
    {
        Pitch p;
        p.tried(press, 40);
        BellMeasurement bell = borrowed::kettlebell();
        bell.whole = {};
        bell.settings = {kilograms(24), kilograms(12), kilograms(16), kilograms(20)};
        p.item("Bell", bell);
        QVERIFY(here(p, p.venue)[0].heaviestSetting == kilograms(24) && here(p, p.venue)[0].mass.mass->value == kilograms(12));
        // 50 % of 40 kg, and a mark of 20 kg may be 0.4 kg off
        p.cap(LiftId{27}, press, 50);
        p.cap(LiftId{28}, press, 50);
        p.cap(LiftId{29}, press, 50);
        QVERIFY(here(p, p.venue)[0].heaviestSetting == kilograms(16));
        p.cap(LiftId{27}, press, 10);
        p.cap(LiftId{28}, press, 10);
        p.cap(LiftId{29}, press, 10);
        QVERIFY(here(p, p.venue)[0].permission == Permission::Not && !here(p, p.venue)[0].heaviestSetting);
    }

    void sorted()
    {
        Pitch p;
        for (const char* name : {"b", "a", "c"}) {
            p.item(std::string("stone ") + name, borrowed::stone());
            p.item(std::string("tyre ") + name, borrowed::unknownTyre());
            p.item(std::string("handles ") + name, borrowed::handles());
        }
        QCOMPARE(names(here(p, p.venue)), (QStringList{"stone a", "stone b", "stone c", "handles a", "handles b", "handles c", "tyre a", "tyre b", "tyre c"}));
    }

    void nobodyAndNowhere()
    {
        Pitch p;
        const auto nobody = whatIsHere(p.book, {numberedids::numbered(99), p.venue, p.today, {}}), nowhere = whatIsHere(p.book, {p.who, numberedids::numbered(99), p.today, {}});
        QVERIFY(!nobody && nobody.error().code == Refusal::NotThere && nobody.error().what == "athlete");
        QVERIFY(!nowhere && nowhere.error().what == "venue");
    }
};

QTEST_APPLESS_MAIN(WhatIsHereTest)
#include "test_whatishere.moc"
