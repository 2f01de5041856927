// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/chain.h"
#include "tests/published/rows.h"

using namespace steelyard;
using namespace steelyard::published;

namespace {

constexpr double millimetre = 1e-3;

double gauged(double wire, double pitch, double inner, double density = 7850)
{
    return gaugedChain(metres(wire * millimetre), metres(pitch * millimetre), metres(inner * millimetre), Density::fromSi(density))->value.si();
}

HungChain straight(double perMetre, double length)
{
    return *HungChain::of({{kilogramsPerMetre(perMetre), {}}, ownSource, metres(length), std::nullopt}, {});
}

}

class TestPublishedChains : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedChains()
    {
        m_account.computes({"CHAIN-01", "CHAIN-02", "CHAIN-03", "CHAIN-05", "CHAIN-06", "CHAIN-07", "CHAIN-08", "CHAIN-09", "CHAIN-11", "CHAIN-12", "CHAIN-13", "CHAIN-15"}, [](const Row& r) { return Account::Numbers{gauged(given(r, "d"), given(r, "p"), given(r, "b"))}; });
        m_account.computes({"CHAINGEO-"}, [](const Row& r) { return Account::Numbers{gauged(given(r, "d"), given(r, "p"), given(r, "b"), given(r, "rho"))}; });
        // a long-link table gives the least inner and the greatest outer width: the middle of the two inner ones
        m_account.computes({"CHAIN-22", "CHAIN-24", "CHAIN-26"}, [](const Row& r) {
            return Account::Numbers{gauged(given(r, "d"), given(r, "p"), (given(r, "inner min") + given(r, "outer max") - 2 * given(r, "d")) / 2)};
        });
        m_account.computes({"CHAIN-27", "CHAIN-28", "CHAIN-29", "CHAIN-30"},
            [](const Row& r) { return Account::Numbers{gauged(given(r, "d"), given(r, "p"), given(r, "external width") - 2 * given(r, "d"))}; });
        m_account.computes({"CHAIN-42"}, [](const Row& r) {
            const double inches = metres(given(r, "d") * millimetre) / inch;
            return Account::Numbers{(pounds(10 * inches * inches) / (12 * inch)).si()};
        });
        m_account.computes({"CHAINLOAD-08", "CHAINLOAD-09", "CHAINLOAD-10", "CHAINLOAD-11"},
            [](const Row& r) { return Account::Numbers{straight(given(r, "m'"), given(r, "length")).massAt(metres(given(r, "attachment height"))).si()}; });
        m_account.computes({"CHAINLOAD-12"},
            [](const Row& r) { return Account::Numbers{straight(given(r, "m'"), given(r, "L")).meanMass(metres(given(r, "h from")), metres(given(r, "to"))).si()}; });

        m_account.standsAside({"CHAIN-31", "CHAIN-32", "CHAIN-33", "CHAIN-34", "CHAIN-35", "CHAIN-36"}, "the row gives no inner width");
        m_account.standsAside({"CHAIN-37", "CHAIN-38", "CHAIN-39", "CHAIN-40"}, "a trade size is not the wire, and the row gives no pitch");
        m_account.standsAside({"CHAIN-41"}, "a rule for stud link chain without its pitch");
        m_account.standsAside({"CHAINLOAD-01", "CHAINLOAD-07"}, "no number");
        m_account.standsAside({"CHAINLOAD-02"}, "the row gives no lengths and heights");
        m_account.standsAside({"CHAINLOAD-05", "CHAINLOAD-06"}, "shares of a maximum, no set-up");
        m_account.standsAside({"CHAINLOAD-15"}, "the engine works at rest");
    }

private:
    Account m_account{"data/resistance.csv", {"CHAIN", "CHAINGEO", "CHAINLOAD"}};
};

QTEST_APPLESS_MAIN(TestPublishedChains)
#include "test_chains.moc"
