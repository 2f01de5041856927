// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/hanging/kits.h"
#include "tests/core/hanging/linearprogram.h"

using namespace steelyard;

/// Another solver, of another kind and by other people, finds nothing better.
class TestSecondSolver : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noBetterAnswerThanOurs();
};

void TestSecondSolver::noBetterAnswerThanOurs()
{
    int finished = 0;
    for (unsigned seed = 1; seed <= 260 && finished < 200; ++seed) {
        HangQuestion q = kits::Kits(50'000 + seed).large(12);
        // what the marks do to the uncertainty is no sum over what hangs, and a store of loads is not what is tried here
        std::vector<IronLoad> fewer;
        for (std::size_t i = seed % 4; i < q.loads.size(); i += 4)
            fewer.push_back(q.loads[i]);
        q.loads = fewer;
        q.loadNowIndex.reset();
        for (IronLoad& iron : q.loads)
            iron.path.uMark = {};
        const auto theirs = linearprogram::leastSquares(q);
        if (!theirs)
            continue;
        ++finished;
        const auto ours = whatToHang(q);
        QVERIFY2(ours.best && ours.isProved, qPrintable(QString::number(seed)));
        const double cost = asMass(ours.best->cost).si();
        QVERIFY2(std::abs(cost * cost - *theirs) <= 1e-5 * std::max(1.0, *theirs), qPrintable(QStringLiteral("%1: ours %2, theirs %3").arg(seed).arg(cost * cost).arg(*theirs)));
    }
    QCOMPARE(finished, 200);
}

QTEST_APPLESS_MAIN(TestSecondSolver)
#include "test_secondsolver.moc"
