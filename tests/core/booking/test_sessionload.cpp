// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/booking/sessionload.h"
#include "tests/core/near.h"
#include "tests/core/propagation.h"
#include "tests/core/refused.h"

#include <numeric>
#include <rapidcheck.h>

using namespace steelyard;
using tests::whatOf;
using tests::Given;

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();

using Days = std::vector<std::optional<Score>>;

WeekLoad week(const Days& days) { return *weekLoad(days); }

double mean(const std::vector<double>& x) { return std::accumulate(x.begin(), x.end(), 0.0) / static_cast<double>(x.size()); }

double monotony(const std::vector<double>& x)
{
    double squares = 0;
    for (const double v : x)
        squares += (v - mean(x)) * (v - mean(x));
    return mean(x) / std::sqrt(squares / static_cast<double>(x.size() - 1));
}

}

class TestSessionLoad : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void exertionTimesMinutes()
    {
        QCOMPARE(sessionLoad(7, Minutes{60})->score, 420.0);
        QCOMPARE(sessionLoad(7, std::chrono::hours{1})->score, 420.0);
        QCOMPARE(sessionLoad(0, Minutes{60})->score, 0.0);
        QCOMPARE(sessionLoad(7, Minutes{60})->uScore, 0.0);
        VERIFY_NEAR_SHARE(sessionLoad(7, Minutes{60}, 1 / std::sqrt(12), Minutes{2})->uScore, std::hypot(60 / std::sqrt(12), 14), 1e-14);
    }

    void sessionRefusals()
    {
        for (const double rpe : {-0.1, 10.1, notANumber})
            QCOMPARE(whatOf(sessionLoad(rpe, Minutes{60})), std::string("rpe"));
        for (const double minutes : {-1.0, 1441.0, notANumber})
            QCOMPARE(whatOf(sessionLoad(7, Minutes{minutes})), std::string("minutes"));
        QCOMPARE(whatOf(sessionLoad(7, Minutes{60}, -1)), std::string("uncertainty"));
        QCOMPARE(whatOf(sessionLoad(7, Minutes{60}, 0, Minutes{notANumber})), std::string("uncertainty"));
        QCOMPARE(whatOf(sessionLoad(10, Minutes{1440})), std::string("nothing"));
    }

    void twoSessionsADay()
    {
        const Score day = dayLoad(std::vector<Score>{{300, 3}, {120, 4}});
        QCOMPARE(day.score, 420.0);
        QCOMPARE(day.uScore, 5.0);
        QCOMPARE(dayLoad({}).score, 0.0);
    }

    /// By hand: 200, 400, 600 have mean 400 and SD 200.
    void byHand()
    {
        const WeekLoad three = week({Score{200}, Score{400}, Score{600}});
        QCOMPARE(three.reportedCount, 3u);
        QCOMPARE(three.load->score, 1200.0);
        VERIFY_NEAR_SHARE(three.monotony->score, 2, 1e-14);
        VERIFY_NEAR_SHARE(three.strain->score, 2400, 1e-14);
    }

    /// A day that nobody reported changes nothing but the count of days; a day of rest does.
    void unreportedIsNotZero()
    {
        const Days reported{Score{200}, Score{400}, Score{600}}, gap{Score{200}, {}, Score{400}, {}, {}, Score{600}, {}}, rest{Score{200}, Score{0}, Score{400}, Score{600}};
        QCOMPARE(week(gap).monotony->score, week(reported).monotony->score);
        QCOMPARE(week(gap).strain->score, week(reported).strain->score);
        QCOMPARE(week(gap).reportedCount, 3u);
        QVERIFY(week(rest).monotony->score < week(reported).monotony->score);
        QCOMPARE(week(rest).load->score, week(reported).load->score);
    }

    void whatCannotBeSaidIsNothing()
    {
        const WeekLoad none = week({{}, {}}), one = week({Score{300}, {}});
        QVERIFY(none.reportedCount == 0 && !none.load && !none.monotony && !none.strain);
        QVERIFY(one.load && !one.monotony && !one.strain);
        QVERIFY(week({}).reportedCount == 0);
        // alike, also where their mean is not exactly one of them
        for (const double load : {0.0, 300.0, 0.1, 421.7})
            QVERIFY(!week(Days(7, Score{load})).monotony && !week(Days(3, Score{load})).strain);
    }

    void uAgainstSmallSteps()
    {
        QVERIFY(rc::check("load, monotony and strain; all above or at 0", [] {
            std::vector<Given> x;
            Days days;
            for (int i = *rc::gen::inRange(2, 8); i > 0; --i) {
                x.push_back({*rc::gen::inRange(0, 900) + 0.5 * i, *rc::gen::inRange(0, 40) * 1.0});
                days.emplace_back(Score{x.back().value, x.back().u});
            }
            const WeekLoad here = week(days);
            std::vector<double> values;
            for (const Given& day : x)
                values.push_back(day.value);
            // days all but alike make a monotony that small steps cannot follow
            RC_PRE(monotony(values) < 50);
            RC_ASSERT(tests::nearShare(here.monotony->score, monotony(values), 1e-12));
            RC_ASSERT(tests::near(here.monotony->uScore, tests::numericU(monotony, x), 1e-4 * here.monotony->uScore + 1e-9));
            const auto strain = [](const std::vector<double>& v) { return monotony(v) * mean(v) * static_cast<double>(v.size()); };
            RC_ASSERT(tests::near(here.strain->uScore, tests::numericU(strain, x), 1e-4 * here.strain->uScore + 1e-6));
            RC_ASSERT(here.load->score >= 0 && here.monotony->score >= 0 && here.strain->score >= 0 && here.load->uScore >= 0);
        }));
    }

    void weekRefusals()
    {
        QCOMPARE(weekLoad(Days(8, Score{300})).error(), (Error{Refusal::TooMany, "days"}));
        for (const Score& wrong : {Score{-1}, Score{notANumber}, Score{14401}, Score{300, -1}, Score{300, notANumber}})
            QCOMPARE(weekLoad(Days{Score{300}, wrong}).error(), (Error{Refusal::OutOfRange, "days"}));
    }
};

QTEST_APPLESS_MAIN(TestSessionLoad)
#include "test_sessionload.moc"
