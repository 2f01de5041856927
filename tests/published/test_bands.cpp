// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/leastsquares.h"
#include "core/resistance/setup.h"
#include "tests/published/rows.h"

#include <cmath>

using namespace steelyard;
using namespace steelyard::published;
using Numbers = Account::Numbers;

namespace {

/// A fit through points that lie on a law of the stretch, so that the engine's curve has to be that law.
template <typename Law>
BandFit fitted(BandModel model, double rest, const Law& law, double longest = 4.2)
{
    std::vector<BandPoint> points;
    for (const double stretch : {1 + (longest - 1) / 5, 1 + (longest - 1) / 3, 1 + (longest - 1) / 2, longest - 0.1, longest})
        points.push_back({metres(rest * stretch), newtons(law(stretch))});
    return *BandFit::with(model, metres(rest), points);
}

BandFit springy(double newtonsPerMetre, double rest)
{
    return fitted(BandModel::Line, rest, [=](double l) { return newtonsPerMetre * rest * (l - 1); });
}

HungBand below(const BandFit& fit, bool doubled = false, double offset = 0)
{
    return *HungBand::of({fit, ownSource, false, false}, {doubled, false, {}, metres(offset), {}});
}

double rubberLaw(double a, double b, double l) { return a * (l - 1 / (l * l)) + b * (1 - 1 / (l * l * l)); }

/// G·A0 of "G=0.4 MPa; A0=100 mm2", in newtons: 1 MPa on 1 mm² is 1 N.
BandFit neoHooke(const Row& r)
{
    const double a = given(r, "G") * given(r, "A0");
    return fitted(BandModel::Rubber, 1, [=](double l) { return rubberLaw(a, 0, l); });
}

/// Mooney and Rivlin's stress in MPa, on an area that makes it newtons: a = 2C1, b = 2C2.
BandFit mooneyRivlin(const Row& r)
{
    const double a = 2 * given(r, "C1"), b = 2 * given(r, "C2");
    return fitted(BandModel::Rubber, 1, [=](double l) { return rubberLaw(a, b, l); });
}

/// Iron of 20 N and a quadratic band over it: F = 20 + 300x − 120x², x the band's stretch in metres, from x = 0.2 m on.
Setup quadraticBand(int bands, double bottom, double top, double rest)
{
    Setup setup;
    setup.plates = asMass(bands * newtons(20));
    const auto fit = fitted(BandModel::Quadratic, rest, [=](double l) { const double x = rest * (l - 1); return 300 * x - 120 * x * x; }, 1 + 1 / rest);
    for (int i = 0; i < bands; ++i)
        (i == 0 ? setup.left : setup.right).push_back(below(fit));
    setup.path.bottom = metres(bottom);
    setup.path.top = metres(top);
    return setup;
}

/// Sum of squares and cross products of a one-column fit on Treloar's points with 1 < λ ≤ 2.5.
template <typename Basis>
double treloarCoefficient(const Basis& basis)
{
    const auto data = columnsOf("data/treloar_uniaxial.csv");
    std::vector<double> x, y;
    for (std::size_t i = 0; i < data["stretch"].size(); ++i) {
        const double l = data["stretch"][i];
        if (l <= 1 || l > 2.5)
            continue;
        x.push_back(basis(l));
        y.push_back(data["stress_kgf_cm2"][i] * 0.0980665);
    }
    return fitLinear(x, 1, y)->coefficients[0];
}

}

class TestPublishedBands : public QObject {
    Q_OBJECT
    STEELYARD_ROWS_TEST

public:
    TestPublishedBands()
    {
        m_account.computes({"BAND-04", "BAND-06"}, [](const Row& r) {
            const double stretch = given(r, "D/L0"), longer = 1 + given(r, "dL0/L0"), stiffness = 100;
            const auto pull = [&](double rest) {
                return fitted(BandModel::Line, rest, [=](double l) { return stiffness * (l - 1); }).pull(metres(stretch)).si();
            };
            return Numbers{100 * (1 - pull(longer) / pull(1))};
        });
        m_account.computes({"RUBBER-01", "RUBBER-02", "RUBBER-03", "RUBBER-04", "RUBBER-05"}, [](const Row& r) { return Numbers{neoHooke(r).pull(metres(given(r, "stretch"))).si()}; });
        m_account.computes({"RUBBER-06", "RUBBER-08"}, [](const Row& r) { return Numbers{mooneyRivlin(r).pull(metres(given(r, "stretch"))).si()}; });
        m_account.computes({"RUBBER-09"}, [](const Row& r) { return Numbers{mooneyRivlin(r).work(metres(given(r, "lambda"))).si()}; });
        m_account.computes({"RUBBER-10"}, [](const Row&) {
            const auto fit = fitted(BandModel::Rubber, 1, [](double l) { return rubberLaw(1, 0, l); });
            return Numbers{fit.slope(metres(1)).si()};
        });
        m_account.computes({"RUBBER-11"}, [](const Row&) { return Numbers{treloarCoefficient([](double l) { return l - 1 / (l * l); })}; });
        m_account.computes({"RUBBER-12"}, [](const Row&) { return Numbers{treloarCoefficient([](double l) { return l - 1; })}; });

        m_account.computes({"SPRING-02"}, [](const Row& r) {
            Setup setup;
            setup.left = {below(springy(given(r, "k1"), 0.5))};
            setup.right = {below(springy(given(r, "k2"), 0.5))};
            setup.path.bottom = metres(0.75);
            setup.path.top = metres(1.75);
            const auto curve = *pullCurve(setup, 0);
            return Numbers{(curve.top->value - curve.bottom->value).si()};
        });
        m_account.computes({"SPRING-03"}, [](const Row& r) { return Numbers{below(springy(given(r, "k"), 1), true).verticalSlope(metres(1)).si()}; });
        m_account.computes({"SPRING-04", "SPRING-05"}, [](const Row& r) {
            return Numbers{below(springy(given(r, "k"), given(r, "L0")), r.id == "SPRING-05").verticalPull(metres(given(r, "D"))).si()};
        });
        m_account.computes({"SPRING-07"}, [](const Row& r) {
            return Numbers{below(springy(given(r, "k"), given(r, "L0")), false, given(r, "horizontal offset")).verticalPull(metres(given(r, "height"))).si()};
        });

        m_account.computes({"VARRES-01", "VARRES-02", "VARRES-03", "VARRES-04"}, [](const Row& r) {
            const Setup setup = quadraticBand(1, 1.2, 2, 1);
            const auto curve = *pullCurve(setup, 3);
            const auto& s = curve.samples;
            const double mean = curve.mean->value.si(), twoPoint = curve.twoPointMean->si(), simpson = (s[0].total + 4 * s[1].total + s[2].total).si() / 6;
            return Numbers{r.id == "VARRES-01" ? mean : r.id == "VARRES-02" ? twoPoint - mean : r.id == "VARRES-03" ? simpson : curve.work->si()};
        });
        m_account.computes({"VARRES-05"}, [](const Row&) {
            Setup setup = quadraticBand(2, 0.5, 1.1, 0.3);
            setup.bar = kilograms(100);
            for (auto* side : {&setup.left, &setup.right})
                side->push_back(*HungChain::of({{kilogramsPerMetre(2.2), {}}, ownSource, metres(2), std::nullopt}, {}));
            return Numbers{pullCurve(setup, 0)->mean->value.si()};
        });
        m_account.computes({"VARRES-06"}, [](const Row& r) { return Numbers{neoHooke(r).work(metres(2)).si()}; });

        m_account.standsAside({"BAND-01", "BAND-08", "BAND-09", "BAND-11"}, "no number, and the readings are not published");
        m_account.standsAside({"BAND-02", "BAND-03", "BAND-10", "BAND-12"}, "differences between bands, of which no readings are published");
        m_account.standsAside({"BAND-13", "BAND-14"}, "shares of a maximum, no set-up");
        m_account.standsAside({"SPRING-01"}, "bands hang side by side here, never one on another");
    }

private Q_SLOTS:
    /// Among Treloar's own points the rubber law has a sixth of the straight line's sum of squares.
    void rubberFitsRubberBetterThanALine()
    {
        const auto data = columnsOf("data/treloar_uniaxial.csv");
        std::vector<BandPoint> points;
        for (std::size_t i = 0; i < data["stretch"].size(); ++i)
            if (data["stretch"][i] > 1 && data["stretch"][i] <= 2.5)
                points.push_back({metres(data["stretch"][i]), newtons(data["stress_kgf_cm2"][i])});
        QCOMPARE(points.size(), 8u);
        QCOMPARE(BandFit::best(metres(1), points)->model(), BandModel::Rubber);
        const auto rubber = *BandFit::with(BandModel::Rubber, metres(1), points), line = *BandFit::with(BandModel::Line, metres(1), points);
        QVERIFY(*line.residualSd() > 2 * *rubber.residualSd());
    }

private:
    Account m_account{"data/resistance.csv", {"BAND", "RUBBER", "SPRING", "VARRES"}};
};

QTEST_APPLESS_MAIN(TestPublishedBands)
#include "test_bands.moc"
