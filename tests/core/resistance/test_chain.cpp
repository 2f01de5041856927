// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/resistance/chain.h"
#include "tests/core/near.h"
#include "tests/core/resistance/kit.h"

#include <numbers>
#include <rapidcheck.h>

using namespace steelyard;
using tests::hungChain;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

double between(int from, int to) { return *rc::gen::inRange(from, to) * 1e-3; }

HungChain anyChain()
{
    const auto how = *rc::gen::element(ChainHanging::Straight, ChainHanging::Doubled, ChainHanging::Bunched);
    return hungChain(how, between(1, 3000), between(0, 1500), between(100, 12000), between(0, 200), 0, between(0, 900), between(1, 500));
}

}
Q_DECLARE_METATYPE(ChainHanging)

class TestChain : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Geometry of a link: two straights of pitch less inner width, two half circles about the inner width and a wire.
    void gauged()
    {
        constexpr double pi = std::numbers::pi;
        const auto m = gaugedChain(metres(0.016), metres(0.048), metres(0.02));
        const double link = 2 * 0.028 + pi * 0.036;
        VERIFY_NEAR_SHARE(m->value.si(), 7850 * pi * 0.016 * 0.016 / 4 * link / 0.048, 1e-15);
        VERIFY_NEAR_SHARE(m->u.si(), 0.03 * m->value.si(), 1e-15);
        VERIFY_NEAR_SHARE(gaugedChain(metres(0.016), metres(0.048), metres(0.02), Density::fromSi(2700))->value / m->value, 2700.0 / 7850, 1e-15);
        QVERIFY(gaugedChain(metres(0.01), metres(0.02), metres(0.02)).ok());
    }

    void gaugeRefusals_data()
    {
        QTest::addColumn<double>("wire");
        QTest::addColumn<double>("pitch");
        QTest::addColumn<double>("inner");
        QTest::addColumn<double>("density");
        QTest::addColumn<QString>("what");
        QTest::newRow("no wire") << 0.0 << 0.048 << 0.02 << 7850.0 << "wire";
        QTest::newRow("wire below 0") << -0.016 << 0.048 << 0.02 << 7850.0 << "wire";
        QTest::newRow("wire not a number") << notANumber << 0.048 << 0.02 << 7850.0 << "wire";
        QTest::newRow("no inner width") << 0.016 << 0.048 << 0.0 << 7850.0 << "inner width";
        QTest::newRow("inner width above the pitch") << 0.016 << 0.048 << 0.049 << 7850.0 << "pitch";
        QTest::newRow("wire as long as the pitch") << 0.048 << 0.048 << 0.02 << 7850.0 << "pitch";
        QTest::newRow("endless pitch") << 0.016 << std::numeric_limits<double>::infinity() << 0.02 << 7850.0 << "pitch";
        QTest::newRow("no density") << 0.016 << 0.048 << 0.02 << 0.0 << "density";
    }
    void gaugeRefusals()
    {
        QFETCH(double, wire);
        QFETCH(double, pitch);
        QFETCH(double, inner);
        QFETCH(double, density);
        QFETCH(QString, what);
        const auto m = gaugedChain(metres(wire), metres(pitch), metres(inner), Density::fromSi(density));
        QVERIFY(!m);
        QCOMPARE(m.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void weighed()
    {
        const auto m = weighedChain(kilograms(8.55), metres(1.5), kilograms(0.1));
        VERIFY_NEAR_SHARE(m->value.si(), 5.7, 1e-15);
        VERIFY_NEAR_SHARE(m->u.si(), 0.1 / std::sqrt(12.0) / 1.5, 1e-15);
        const auto accuracyToo = weighedChain(kilograms(8.55), metres(1.5), kilograms(0.1), kilograms(0.2));
        VERIFY_NEAR_SHARE(accuracyToo->u.si(), std::sqrt(0.01 / 12 + 0.04 / 3) / 1.5, 1e-15);
        QCOMPARE(weighedChain(kilograms(0), metres(1), kilograms(0.1)).error().what, std::string("mass"));
        QCOMPARE(weighedChain(kilograms(1), metres(0), kilograms(0.1)).error().what, std::string("length"));
        QCOMPARE(weighedChain(kilograms(1), metres(1), kilograms(2)).error().what, std::string("scale step"));
        QCOMPARE(weighedChain(kilograms(1), metres(1), kilograms(0)).error().what, std::string("scale step"));
        QCOMPARE(weighedChain(kilograms(1), metres(1), kilograms(0.1), kilograms(-1)).error().what, std::string("scale accuracy"));
    }

    /// 5.7 kg/m, 1.5 m, lead of 0.8 m weighing 0.4 kg, bunch of 0.2 m.
    void carries_data()
    {
        QTest::addColumn<ChainHanging>("how");
        QTest::addColumn<double>("height");
        QTest::addColumn<double>("kg");
        QTest::addColumn<double>("kgPerMetre");
        using enum ChainHanging;
        QTest::newRow("straight, on the floor") << Straight << 0.0 << 0.0 << 0.0;
        QTest::newRow("straight, below the floor") << Straight << -0.3 << 0.0 << 0.0;
        QTest::newRow("straight, half the lead") << Straight << 0.4 << 0.2 << 0.5;
        QTest::newRow("straight, first link") << Straight << 0.8 << 0.4 << 0.0;
        QTest::newRow("straight, taking up") << Straight << 1.0 << 0.4 + 5.7 * 0.2 << 5.7;
        QTest::newRow("straight, last link") << Straight << 2.3 << 0.4 + 5.7 * 1.5 << 0.0;
        QTest::newRow("straight, swinging") << Straight << 9.0 << 0.4 + 5.7 * 1.5 << 0.0;
        QTest::newRow("doubled, taking up twice as fast") << Doubled << 1.0 << 0.4 + 5.7 * 0.4 << 11.4;
        QTest::newRow("doubled, last link") << Doubled << 1.55 << 0.4 + 5.7 * 1.5 << 0.0;
        QTest::newRow("doubled, swinging") << Doubled << 2.0 << 0.4 + 5.7 * 1.5 << 0.0;
        QTest::newRow("bunched, half up") << Bunched << 0.9 << 0.4 + 5.7 * 0.75 << 5.7 * 7.5;
        QTest::newRow("bunched, all up") << Bunched << 1.0 << 0.4 + 5.7 * 1.5 << 0.0;
    }
    void carries()
    {
        QFETCH(ChainHanging, how);
        QFETCH(double, height);
        QFETCH(double, kg);
        QFETCH(double, kgPerMetre);
        const HungChain chain = hungChain(how, 1.5, 0.8, 5.7, 0.1, 0, 0.4);
        VERIFY_NEAR(chain.massAt(metres(height)).si(), kg, 1e-14);
        VERIFY_NEAR(chain.massSlopeAt(metres(height)).si(), kgPerMetre, 1e-13);
        const double lead = 0.4 * std::clamp(height / 0.8, 0.0, 1.0);
        VERIFY_NEAR(chain.uncertaintyAt(metres(height)).si(), (kg - lead) * 0.1 / 5.7, 1e-14);
    }

    void aLeadOfNoLengthIsCarriedOffTheFloor()
    {
        const HungChain chain = hungChain(ChainHanging::Straight, 1, 0, 5, 0, 0, 0.4);
        QCOMPARE(chain.massAt(metres(0)), kilograms(0));
        QCOMPARE(chain.massAt(metres(1e-12)).si(), 0.4 + 5e-12);
        VERIFY_NEAR(chain.meanMass(metres(0), metres(1)).si(), 2.9, 1e-14);
        VERIFY_NEAR(chain.meanMass(metres(-1), metres(1)).si(), 1.45, 1e-14);
    }

    void marksOfTheLinks()
    {
        const HungChain straight = hungChain(ChainHanging::Straight, 1.5, 0.8), doubled = hungChain(ChainHanging::Doubled, 1.5, 0.8),
                        bunched = hungChain(ChainHanging::Bunched, 1.5, 0.8);
        QCOMPARE(straight.firstLinkUp().si(), 0.8);
        QCOMPARE(straight.lastLinkOff().si(), 2.3);
        QCOMPARE(doubled.lastLinkOff().si(), 1.55);
        QCOMPARE(bunched.lastLinkOff().si(), 1.0);
        QVERIFY(!straight.linkStep());
        const Chain pitched{{kilogramsPerMetre(5.7), {}}, ownSource, metres(1), metres(0.05)};
        VERIFY_NEAR(HungChain::of(pitched, {})->linkStep()->si(), 0.285, 1e-15);
    }

    void hangRefusals_data()
    {
        QTest::addColumn<double>("perMetre");
        QTest::addColumn<double>("u");
        QTest::addColumn<double>("length");
        QTest::addColumn<double>("lead");
        QTest::addColumn<double>("leadMass");
        QTest::addColumn<double>("bunch");
        QTest::addColumn<double>("pitch");
        QTest::addColumn<QString>("what");
        QTest::newRow("no mass") << 0.0 << 0.0 << 1.0 << 0.0 << 0.0 << 0.1 << 0.05 << "mass per metre";
        QTest::newRow("mass not a number") << notANumber << 0.0 << 1.0 << 0.0 << 0.0 << 0.1 << 0.05 << "mass per metre";
        QTest::newRow("u below 0") << 5.0 << -0.1 << 1.0 << 0.0 << 0.0 << 0.1 << 0.05 << "uncertainty of the mass per metre";
        QTest::newRow("no length") << 5.0 << 0.0 << 0.0 << 0.0 << 0.0 << 0.1 << 0.05 << "length";
        QTest::newRow("lead below 0") << 5.0 << 0.0 << 1.0 << -0.1 << 0.0 << 0.1 << 0.05 << "lead";
        QTest::newRow("lead lighter than nothing") << 5.0 << 0.0 << 1.0 << 0.1 << -0.1 << 0.1 << 0.05 << "lead mass";
        QTest::newRow("bunch of no size") << 5.0 << 0.0 << 1.0 << 0.1 << 0.0 << 0.0 << 0.05 << "bunch";
        QTest::newRow("no pitch") << 5.0 << 0.0 << 1.0 << 0.1 << 0.0 << 0.1 << 0.0 << "pitch";
    }
    void hangRefusals()
    {
        QFETCH(double, perMetre);
        QFETCH(double, u);
        QFETCH(double, length);
        QFETCH(double, lead);
        QFETCH(double, leadMass);
        QFETCH(double, bunch);
        QFETCH(double, pitch);
        QFETCH(QString, what);
        const Chain chain{{kilogramsPerMetre(perMetre), kilogramsPerMetre(u)}, ownSource, metres(length), metres(pitch)};
        const auto hung = HungChain::of(chain, {ChainHanging::Bunched, metres(lead), kilograms(leadMass), metres(bunch)});
        QVERIFY(!hung);
        QCOMPARE(hung.error(), (Error{Refusal::OutOfRange, what.toStdString()}));
    }

    void meanIsExact()
    {
        QVERIFY(rc::check("against many steps, between least and greatest, and whole from its parts", [] {
            const HungChain chain = anyChain();
            const double a = between(0, 2000), b = a + between(1, 1500), middle = a + (b - a) * *rc::gen::inRange(1, 100) / 100;
            const double mean = chain.meanMass(metres(a), metres(b)).si();
            const double low = chain.massAt(metres(a)).si(), high = chain.massAt(metres(b)).si();
            RC_ASSERT(mean >= low - 1e-12 && mean <= high + 1e-12);
            const double parts = chain.meanMass(metres(a), metres(middle)).si() * (middle - a) + chain.meanMass(metres(middle), metres(b)).si() * (b - middle);
            RC_ASSERT(tests::near(parts / (b - a), mean, 1e-10));
            const double rough = tests::roughMean([&](double h) { return chain.massAt(metres(h)).si(); }, a, b, 4000);
            RC_ASSERT(tests::near(mean, rough, 1e-3 * (1 + high)));
            const double share = chain.chain().perLength.u / chain.chain().perLength.value;
            RC_ASSERT(chain.meanUncertainty(metres(a), metres(b)).si() >= 0);
            RC_ASSERT(chain.meanUncertainty(metres(a), metres(b)).si() <= share * mean + 1e-12);
        }));
    }

    /// A chain of length 2L hung doubled has two strands of L on the floor; it is the same as two straight chains of L
    /// on the same lead, at every height, not only in the end.
    void doubledIsTwoStraights()
    {
        QVERIFY(rc::check("2m'·clamp(h−s, 0, 2L/2) = 2·m'·clamp(h−s, 0, L), to the last bit", [] {
            const double length = between(1, 3000), lead = between(0, 1000), perMetre = between(100, 12000);
            const HungChain one = hungChain(ChainHanging::Straight, length, lead, perMetre, 0.1),
                            folded = hungChain(ChainHanging::Doubled, 2 * length, lead, perMetre, 0.1);
            const Height h = metres(between(0, 4000)), top = h + metres(between(1, 1000));
            RC_ASSERT(folded.massAt(h) == 2 * one.massAt(h));
            RC_ASSERT(folded.uncertaintyAt(h) == 2 * one.uncertaintyAt(h));
            RC_ASSERT(folded.meanMass(h, top) == 2 * one.meanMass(h, top));
            RC_ASSERT(folded.lastLinkOff() == one.lastLinkOff());
        }));
    }

    void higherIsNeverLighter()
    {
        QVERIFY(rc::check("and the slope is the derivative away from corners", [] {
            const HungChain chain = anyChain();
            const double h = between(0, 3000), step = 1e-7;
            RC_ASSERT(chain.massAt(metres(h + step)) >= chain.massAt(metres(h)));
            for (const double corner : {0.0, chain.firstLinkUp().si(), chain.lastLinkOff().si()})
                RC_PRE(std::abs(h - corner) > 2 * step);
            const double rise = (chain.massAt(metres(h + step)) - chain.massAt(metres(h - step))).si() / (2 * step);
            RC_ASSERT(tests::near(chain.massSlopeAt(metres(h)).si(), rise, 1e-6 * (1 + rise)));
        }));
    }
};

QTEST_APPLESS_MAIN(TestChain)
#include "test_chain.moc"
