// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/strength/liftstrengthview.h"

#include "core/work/records/codec.h"
#include "core/work/strength/standing.h"
#include "mobile/follow.h"
#include "mobile/strength/strengthtexts.h"
#include "mobile/strength/testform.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

using namespace steelyard;

namespace {

/// What it says by itself goes without saying where nothing else is there that day.
TestRow rowOf(const StrengthTest& test, bool isAlone, const BookService& book)
{
    TestRow row;
    row.testId = QString::fromStdString(test.id.hex());
    row.label = strengthtexts::set(test);
    const auto max = oneRepMaxFrom(test);
    row.refused = !max;
    if (book.draft(testform::draftKey(test.athlete, test.lift, test.id)))
        row.hint = LiftStrengthView::tr("changes not kept");
    else if (!max || !isAlone)
        row.hint = max ? LiftStrengthView::tr("by itself: %1").arg(strengthtexts::range(*max)) : LiftStrengthView::tr("nothing follows: %1").arg(strengthtexts::refusal(max.error(), test).head);
    return row;
}

}

void LiftStrengthView::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &LiftStrengthView::refresh))
        return;
    refresh();
}

void LiftStrengthView::setAthleteId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

QString LiftStrengthView::lift() const
{
    return QString::fromStdString(partOf(m_lift));
}

void LiftStrengthView::setLift(const QString& lift)
{
    m_lift = liftIn(lift.toStdString()).value_or(LiftId{});
    refresh();
}

QString LiftStrengthView::name() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_id) : nullptr;
    return athlete ? QString::fromStdString(athlete->name) : QString();
}

QString LiftStrengthView::liftName() const
{
    return m_book ? keepingtexts::lift(m_lift, m_book->book()) : QString();
}

QString LiftStrengthView::unit() const
{
    return say::massUnit();
}

void LiftStrengthView::refresh()
{
    std::vector<TestRow> rows;
    m_counts.clear();
    m_days.clear();
    m_sentence.clear();
    if (m_book && m_book->book().athlete(m_id)) {
        const auto today = m_book->today();
        std::vector<StrengthTest> tests;
        for (const StrengthTest* test : m_book->book().testsOf(m_id, m_lift))
            tests.push_back(*test);
        const auto history = strengthHistory(tests, m_lift);
        QStringList said;
        bool breaks = false;
        for (const StrengthDay& one : history) {
            breaks = breaks || !one.isLikeBefore;
            if (!one.maximum)
                continue;
            const OneRepMax& max = one.maximum->max;
            const QString day = keepingtexts::day(one.day, today);
            m_days << QVariantMap{{QStringLiteral("at"), static_cast<double>((one.day - history.front().day).count())}, {QStringLiteral("low"), say::shown(max.lowest.value)},
                                  {QStringLiteral("middle"), say::shown(max.middle.value)}, {QStringLiteral("high"), say::shown(max.highest.value)},
                                  {QStringLiteral("tested"), max.isTested}, {QStringLiteral("breaks"), breaks && !m_days.isEmpty()}, {QStringLiteral("day"), day}};
            breaks = false;
            said << tr("%1: %2").arg(day, strengthtexts::range(max));
        }
        m_sentence = said.join(QStringLiteral(", "));
        bool cut = false;
        for (auto one = history.rbegin(); one != history.rend(); ++one) {
            // the last kept first, as the days
            for (auto test = one->tests.rbegin(); test != one->tests.rend(); ++test) {
                rows.push_back(rowOf(*test, one->tests.size() == 1, *m_book));
                if (test != one->tests.rbegin())
                    continue;
                TestRow& first = rows.back();
                first.day = tr("%1, %2").arg(keepingtexts::day(one->day, today), strengthtexts::conditions(test->conditions, m_book->book(), today));
                first.range = one->maximum ? strengthtexts::range(one->maximum->max) : tr("no maximum");
                first.why = one->maximum && one->tests.size() > 1 ? strengthtexts::why(*one->maximum) : QString();
                first.cut = cut ? tr("Other conditions below: not to be compared with those above.") : QString();
            }
            cut = !one->isLikeBefore;
        }
        const LiftStanding standing = standingOn(m_book->book(), m_id, m_lift, today);
        if (standing.maximum) {
            const QString how = tr("%1, %2").arg(strengthtexts::middle(standing.maximum->max), strengthtexts::when(*standing.maximum, today));
            m_counts = {strengthtexts::range(standing.maximum->max), standing.isOld ? tr("%1; older than your limit: test again").arg(how) : how, strengthtexts::scaled(standing)};
        }
    }
    m_tests.setRows(std::move(rows));
    Q_EMIT changed();
}
