// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/faults.h"
#include "tests/core/journal/histories/history.h"

using namespace steelyard::journal;

namespace {

constexpr std::uint64_t mostHistories = 1'000;

/// Seed and failure of the first history that notices the mistake; nothing where none does.
std::optional<std::pair<std::uint64_t, std::string>> noticed(Fault fault)
{
    plantedFault = fault;
    for (std::uint64_t seed = 1; seed <= mostHistories; ++seed) {
        histories::History history(seed);
        if (std::string failure = history.run(); !failure.empty())
            return std::pair(seed, failure);
    }
    return std::nullopt;
}

}

class TestPlantedFaults : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyMistakeIsNoticed_data()
    {
        QTest::addColumn<int>("fault");
        const std::pair<const char*, Fault> faults[] = {{"clamped clocks", Fault::ClampedClocks}, {"refused clocks", Fault::RefusedClocks},
            {"seen clocks ignored", Fault::SeenClocksIgnored}, {"count ignored", Fault::CountIgnored},
            {"ties by origin alone", Fault::TiesByOriginAlone}, {"arrival wins", Fault::ArrivalWins}, {"losers dropped", Fault::LosersDropped},
            {"everything replaced", Fault::EverythingReplaced}, {"marks ignored", Fault::MarksIgnored}, {"marks expire", Fault::MarksExpire},
            {"edit revives", Fault::EditRevives}, {"tag removed by name", Fault::TagRemovedByName},
            {"late bodies come back", Fault::LateBodiesComeBack}, {"erasure leaves heads", Fault::ErasureLeavesHeads},
            {"erasures not repeated", Fault::ErasuresNotRepeated},
            {"repeats count", Fault::RepeatsCount}, {"vectors by sequence", Fault::VectorsBySequence}, {"fork overwritten", Fault::ForkOverwritten},
            {"gaps accepted", Fault::GapsAccepted}, {"commitment unchecked", Fault::CommitmentUnchecked}};
        for (const auto& [name, fault] : faults)
            QTest::newRow(name) << static_cast<int>(fault);
    }
    void everyMistakeIsNoticed()
    {
        QFETCH(int, fault);
        const auto failure = noticed(static_cast<Fault>(fault));
        QVERIFY(failure.has_value());
        qInfo("history %llu: %s", static_cast<unsigned long long>(failure->first), failure->second.c_str());
    }

    void withoutMistakeNothingIsWrong()
    {
        QVERIFY(!noticed(Fault::None));
    }
};

QTEST_APPLESS_MAIN(TestPlantedFaults)
#include "test_plantedfaults.moc"
