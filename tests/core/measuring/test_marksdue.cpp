// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/marksdue.h"

#include "core/work/keeping/keepathlete.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/core/work/samples.h"

#include <QtTest>
#endif

using namespace steelyard;
using keeping::Device;

namespace {

constexpr LiftId squat{1}, bench{6};

void keepMarks(Device& device, LiftId lift)
{
    Athlete athlete = *device.book.athletes().front();
    athlete.marks[lift] = samples::marks(0.5, 1.2);
    keepAthlete(device.keeping, athlete, device.told());
}

void keepHeight(Device& device, double metre)
{
    keepBodySize(device.keeping, device.book.athletes().front()->id, {{}, device.today, std::nullopt, metres(metre)}, device.told());
}

std::vector<MarksDue> due(const Device& device)
{
    return marksDue(device.book, *device.book.athletes().front(), device.today);
}

}

/// Which bar marks of an athlete should be taken again.
class MarksDueTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingWithoutMarks();
    void grownSinceTheyWereTaken();
    void measuredFirst();
};

void MarksDueTest::nothingWithoutMarks()
{
    Device device;
    Athlete athlete;
    athlete.name = "Ines";
    athlete.birthYear = std::chrono::year(1999);
    keepAthlete(device.keeping, athlete, device.told());
    QVERIFY(due(device).empty());
    QVERIFY(remeasureMarks(device.book, *device.book.athletes().front(), squat, device.today) == Remeasure::No);
}

void MarksDueTest::grownSinceTheyWereTaken()
{
    Device device;
    Athlete athlete;
    athlete.name = "Ines";
    athlete.birthYear = std::chrono::year(1999);
    keepAthlete(device.keeping, athlete, device.told());
    keepHeight(device, 1.70);
    keepMarks(device, squat);
    device.today += std::chrono::days(100);
    keepHeight(device, 1.75);
    keepMarks(device, bench);
    QVERIFY((due(device) == std::vector<MarksDue>{{squat, Remeasure::Grown}}));
    // taken again they fit
    device.today += std::chrono::days(1);
    Athlete again = *device.book.athletes().front();
    again.marks[squat] = samples::marks(0.52, 1.25);
    keepAthlete(device.keeping, again, device.told());
    QVERIFY(due(device).empty());
}

void MarksDueTest::measuredFirst()
{
    Device device;
    Athlete athlete;
    athlete.name = "Ines";
    athlete.birthYear = std::chrono::year(2011);
    athlete.agreement = GuardianAgreement{"her mother", device.today};
    keepAthlete(device.keeping, athlete, device.told());
    keepMarks(device, squat);
    keepHeight(device, 1.60);
    device.today += std::chrono::days(1);
    keepHeight(device, 1.60);
    keepMarks(device, bench);
    device.today += std::chrono::days(200);
    // nobody has measured her for half a year
    QVERIFY((due(device) == std::vector<MarksDue>{{squat, Remeasure::MayHave}, {bench, Remeasure::MayHave}}));
    keepHeight(device, 1.66);
    for (const MarksDue& one : due(device))
        QVERIFY(one.why == Remeasure::Grown);
    QCOMPARE(due(device).size(), std::size_t(2));
}

QTEST_APPLESS_MAIN(MarksDueTest)
#include "test_marksdue.moc"
