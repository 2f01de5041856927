// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/eccentricload.h"
#include "tests/published/rows.h"

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

class TestPublishedEccentric : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedEccentric()
    {
        m_account.computes({"AEL-07", "AEL-09"}, [](const Row& r) {
            return Numbers{idealHook(*eccentricTarget(kilograms(given(r, "1RM")), given(r, "CON"), given(r, "ECC"), PercentBase::OneRepMax)).si()};
        });
        m_account.computes({"AEL-10"}, [](const Row& r) {
            const auto target = *eccentricTarget(kilograms(100), given(r, "CON"), 100 * given(r, "ECC"), PercentBase::ConcentricLoad);
            return Numbers{(target.concentric + 2 * idealHook(target)).si()};
        });
        m_account.standsAside({"AEL-01", "AEL-03", "AEL-05", "AEL-06"}, "among the published loads");
        m_account.standsAside({"AEL-02", "AEL-04"}, "what came of it, for nobody to count on");
    }

private:
    Account m_account{"data/resistance.csv", {"AEL"}};
};

QTEST_APPLESS_MAIN(TestPublishedEccentric)
#include "test_eccentric.moc"
