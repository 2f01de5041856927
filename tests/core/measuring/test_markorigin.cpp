// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/rackholes.h"

#include "tests/core/near.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;

/// How a mark that was read at a hole came to its height.
class MarkOriginTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void byLowestAndSpacing();
    void rackMeasuredAnew();
    void rackThatIsNotHere();
};

namespace {

const RackMeasurement uprights{metres(0.415), metres(0.05), 28, {}};
const HoleRead eighth{samples::numbered(6), 8};

}

void MarkOriginTest::byLowestAndSpacing()
{
    const std::vector<KitItem> kit{samples::item(1, "Chain", samples::weighed()), samples::item(6, "Uprights", uprights, false)};
    // 41.5 + 7 · 5
    const MarkOrigin origin = originOf(eighth, metres(0.765), kit);
    QVERIFY(origin.still);
    QCOMPARE(origin.lowest->si(), 0.415);
    QCOMPARE(origin.spacing->si(), 0.05);
    const std::vector<KitItem> one{samples::item(6, "Stand", RackMeasurement{metres(0.9), {}, 1, {}}, false)};
    const MarkOrigin only = originOf(HoleRead{samples::numbered(6), 1}, metres(0.9), one);
    QVERIFY(only.still && only.lowest && !only.spacing);
}

void MarkOriginTest::rackMeasuredAnew()
{
    RackMeasurement anew = uprights;
    anew.firstHole = metres(0.425);
    const MarkOrigin origin = originOf(eighth, metres(0.765), std::vector<KitItem>{samples::item(6, "Uprights", anew, false)});
    // the mark stands as it was read then
    QVERIFY(!origin.still && origin.lowest);
}

void MarkOriginTest::rackThatIsNotHere()
{
    for (const std::vector<KitItem>& kit : {std::vector<KitItem>{}, std::vector<KitItem>{samples::item(6, "Chain", samples::weighed())},
                                            std::vector<KitItem>{samples::item(6, "Short", RackMeasurement{metres(0.4), metres(0.05), 3, {}}, false)}}) {
        const MarkOrigin origin = originOf(eighth, metres(0.765), kit);
        QVERIFY(!origin.lowest && !origin.spacing && !origin.still);
        QCOMPARE(origin.read.hole, 8);
    }
}

QTEST_APPLESS_MAIN(MarkOriginTest)
#include "test_markorigin.moc"
