// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/eccentric/eccentricset.h"

#include <rapidcheck.h>

using namespace steelyard;
using namespace std::chrono_literals;
using Reps = std::vector<int>;

namespace {

EccentricSet plain(int reps) { return {.reps = reps, .clusterReps = {}, .clusterRest = {}}; }
EccentricSet eachRep(int reps) { return {.reps = reps, .clusterReps = {}, .clusterRest = {}, .putBack = PutBack::EachRep, .putBackBy = PutBackBy::Spotters}; }
EccentricSet clusters(int reps, int each, PutBack putBack = PutBack::EachCluster, PutBackBy by = PutBackBy::Athlete)
{
    return {.reps = reps, .clusterReps = each, .clusterRest = 20s, .putBack = putBack, .putBackBy = by};
}

template <typename Change>
EccentricSet changed(EccentricSet set, const Change& change)
{
    change(set);
    return set;
}

EccentricSet anySet()
{
    const int reps = *rc::gen::inRange(1, 51);
    switch (*rc::gen::inRange(0, reps > 1 ? 4 : 2)) {
    case 0: return plain(reps);
    case 1: return eachRep(reps);
    case 2: return clusters(reps, *rc::gen::inRange(1, reps));
    default: return clusters(reps, *rc::gen::inRange(1, reps), PutBack::EachRep, PutBackBy::Spotters);
    }
}

}
Q_DECLARE_METATYPE(EccentricSet)

class TestEccentricSet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void overloaded_data()
    {
        QTest::addColumn<EccentricSet>("set");
        QTest::addColumn<Reps>("reps");
        QTest::newRow("never put back") << plain(5) << Reps{1};
        QTest::newRow("put back at each rep") << eachRep(4) << Reps{1, 2, 3, 4};
        QTest::newRow("clusters of two, put back between") << clusters(6, 2) << Reps{1, 3, 5};
        QTest::newRow("the last cluster is short") << clusters(5, 2) << Reps{1, 3, 5};
        QTest::newRow("clusters of one") << clusters(3, 1) << Reps{1, 2, 3};
        QTest::newRow("rests, and never put back") << clusters(6, 2, PutBack::Never, PutBackBy::Nobody) << Reps{1};
        QTest::newRow("a single") << plain(1) << Reps{1};
    }
    void overloaded()
    {
        QFETCH(EccentricSet, set);
        QFETCH(Reps, reps);
        QCOMPARE(*overloadedReps(set), reps);
    }

    void refusals_data()
    {
        QTest::addColumn<EccentricSet>("set");
        QTest::addColumn<int>("code");
        QTest::addColumn<QString>("what");
        const auto row = [](const char* name, const EccentricSet& set, Refusal code, const char* what) { QTest::newRow(name) << set << static_cast<int>(code) << what; };
        row("no reps", plain(0), Refusal::OutOfRange, "reps");
        row("more reps than anybody does", plain(51), Refusal::OutOfRange, "reps");
        row("no time down", changed(plain(3), [](auto& s) { s.tempoDown = 0ms; }), Refusal::OutOfRange, "tempo down");
        row("half a minute and more down", changed(plain(3), [](auto& s) { s.tempoDown = 30'001ms; }), Refusal::OutOfRange, "tempo down");
        row("a cluster of nothing", clusters(4, 0), Refusal::OutOfRange, "reps of a cluster");
        row("a cluster as long as the set", clusters(4, 4), Refusal::OutOfRange, "reps of a cluster");
        row("clusters without a rest", changed(clusters(4, 2), [](auto& s) { s.clusterRest.reset(); }), Refusal::NotThere, "cluster rest");
        row("a rest without clusters", changed(plain(4), [](auto& s) { s.clusterRest = 20s; }), Refusal::NotThere, "reps of a cluster");
        row("a rest of nothing", changed(clusters(4, 2), [](auto& s) { s.clusterRest = 0s; }), Refusal::OutOfRange, "cluster rest");
        row("a rest of eleven minutes", changed(clusters(4, 2), [](auto& s) { s.clusterRest = 11min; }), Refusal::OutOfRange, "cluster rest");
        row("between clusters where there are none", changed(eachRep(4), [](auto& s) { s.putBack = PutBack::EachCluster; }), Refusal::NotThere, "reps of a cluster");
        row("put back by nobody", changed(eachRep(4), [](auto& s) { s.putBackBy = PutBackBy::Nobody; }), Refusal::OutOfRange, "who puts it back");
        row("never, yet by spotters", changed(plain(4), [](auto& s) { s.putBackBy = PutBackBy::Spotters; }), Refusal::OutOfRange, "who puts it back");
        row("by herself with the bar in her hands", changed(eachRep(4), [](auto& s) { s.putBackBy = PutBackBy::Athlete; }), Refusal::OutOfRange, "who puts it back");
    }
    void refusals()
    {
        QFETCH(EccentricSet, set);
        QFETCH(int, code);
        QFETCH(QString, what);
        const Error wanted{static_cast<Refusal>(code), what.toStdString()};
        QCOMPARE(eccentricSetFault(set), std::optional(wanted));
        QCOMPARE(overloadedReps(set).error(), wanted);
        QCOMPARE(eccentricDone(set, 1, 0).error(), wanted);
    }

    void missedReleasesAreCountedApart()
    {
        const auto done = *eccentricDone(clusters(6, 2), 5, 1);
        QCOMPARE(done.overloadedReps, 2);
        QCOMPARE(done.plainReps, 2);
        QCOMPARE(done.missedReleaseCount, 1);
        QCOMPARE(eccentricDone(plain(5), 0, 0)->overloadedReps, 0);
        QCOMPARE(eccentricDone(plain(5), 6, 0).error(), (Error{Refusal::OutOfRange, "reps"}));
        QCOMPARE(eccentricDone(plain(5), -1, 0).error(), (Error{Refusal::OutOfRange, "reps"}));
        QCOMPARE(eccentricDone(plain(5), 5, 2).error(), (Error{Refusal::OutOfRange, "missed releases"}));
        QCOMPARE(eccentricDone(plain(5), 5, -1).error(), (Error{Refusal::OutOfRange, "missed releases"}));
        QCOMPARE(eccentricDone(plain(5), 0, 1).error(), (Error{Refusal::OutOfRange, "missed releases"}));
    }

    void everyRepIsCountedOnce()
    {
        QVERIFY(rc::check("the first is overloaded, all lie in the set, and what was made adds up", [] {
            const EccentricSet set = anySet();
            RC_ASSERT(!eccentricSetFault(set));
            const auto reps = *overloadedReps(set);
            RC_ASSERT(reps.front() == 1 && reps.back() <= set.reps);
            RC_ASSERT(std::is_sorted(reps.begin(), reps.end()));
            RC_ASSERT(set.putBack != PutBack::EachRep || static_cast<int>(reps.size()) == set.reps);
            const int made = *rc::gen::inRange(0, set.reps + 1);
            const auto begun = static_cast<int>(std::count_if(reps.begin(), reps.end(), [&](int rep) { return rep <= made; }));
            const int missed = *rc::gen::inRange(0, begun + 1);
            const auto done = *eccentricDone(set, made, missed);
            RC_ASSERT(done.overloadedReps + done.plainReps + done.missedReleaseCount == made);
            RC_ASSERT(done.missedReleaseCount == missed && done.plainReps >= 0);
        }));
    }
};

QTEST_APPLESS_MAIN(TestEccentricSet)
#include "test_eccentricset.moc"
