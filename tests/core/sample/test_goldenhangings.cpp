// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/asking/kitquestion.h"
#include "core/work/asking/wantedpulls.h"
#include "tests/core/sample/goldencells.h"
#include "tests/core/sample/marrowhill.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#endif

using namespace steelyard;
using namespace steelyard::sample;

namespace {

std::optional<TargetPlace> placeOf(const QString& word)
{
    const QStringList words{QStringLiteral("bottom"), QStringLiteral("zone"), QStringLiteral("top"), QStringLiteral("mean")};
    const auto at = words.indexOf(word);
    return at < 0 ? std::nullopt : std::optional(static_cast<TargetPlace>(at));
}

QString inCentimetres(double metre) { return QString::number(std::round(metre * 1e6) / 1e4, 'g', 6); }

/// "Long chains: doubled, 62", "Wide bands: 6": as the file beside this one writes it.
QString wordsOf(const HungRecord& hung, const std::vector<KitItem>& kit)
{
    const auto item = std::find_if(kit.begin(), kit.end(), [&](const KitItem& one) { return one.id == hung.item; });
    const QString name = QString::fromStdString(item->name);
    if (const auto* chain = std::get_if<ChainPlacing>(&hung.placing))
        return QStringLiteral("%1: %2, %3").arg(name, chain->way == ChainHangingWay::Doubled ? QStringLiteral("doubled") : QStringLiteral("straight"), inCentimetres(chain->lead.si()));
    return QStringLiteral("%1: %2").arg(name, inCentimetres(std::get<BandPlacing>(hung.placing).anchorHeight.si()));
}

}

/// What to hang on the sample season, and a second opinion that tried every choice with NumPy and SciPy: the same load, the same things hung
/// the same way, and what the best and the next cost to 1e-5.
class GoldenHangingsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreeWithASecondOpinion_data();
    void agreeWithASecondOpinion();
};

void GoldenHangingsTest::agreeWithASecondOpinion_data()
{
    QTest::addColumn<QStringList>("cells");
    const auto lines = goldenCells(QStringLiteral(GOLDEN_FILE));
    QVERIFY(!lines.empty());
    for (const QStringList& cells : lines)
        QTest::newRow(qPrintable(cells.mid(0, 4).join(QLatin1Char(' ')))) << cells;
}

void GoldenHangingsTest::agreeWithASecondOpinion()
{
    QFETCH(const QStringList, cells);
    const Season season = marrowhill::season();
    const SampleVenue* venue = season.venue(cells[2].toStdString());
    const SamplePerson* person = season.person(cells[0].toStdString());
    QVERIFY(venue && person);
    std::vector<KitItem> here;
    for (const SampleItem& one : season.kit)
        if (one.item.venue == venue->venue.id)
            here.push_back(one.item);
    const auto lift = std::find_if(person->athlete.marks.begin(), person->athlete.marks.end(), [&](const auto& one) {
        const Lift* known = shippedLift(one.first);
        return known && cells[1] == QString::fromStdString(std::string(known->term));
    });
    QVERIFY(lift != person->athlete.marks.end());
    WantedPulls wanted;
    for (const QString& one : cells[3].split(QLatin1Char(';'))) {
        const auto place = placeOf(one.section(QLatin1Char('='), 0, 0));
        QVERIFY(place);
        wanted.masses[*place] = kilograms(one.section(QLatin1Char('='), 1).toDouble());
    }
    SetupRecord now;
    now.bar = venue->bar;
    const auto asked = kitQuestion(now, here, lift->second, {}, targetsOf(wanted, lift->second));
    QVERIFY(asked);
    const HangAnswers answers = whatToHang(asked->question);
    QVERIFY(answers.best && answers.next && answers.isProved);
    QCOMPARE(QString::number(asked->question.loads[answers.best->loadIndex].load.total.si(), 'g', 6), cells[4]);
    QStringList hung;
    for (const std::size_t way : answers.best->wayIndex)
        hung << wordsOf(asked->ways[way], here);
    std::sort(hung.begin(), hung.end());
    QCOMPARE(hung.join(QLatin1Char(';')), cells[5]);
    const auto near = [](Force cost, const QString& expected) { return std::abs(asMass(cost).si() - expected.toDouble()) <= 1e-5 * expected.toDouble(); };
    QVERIFY2(near(answers.best->cost, cells[6]), qPrintable(QString::number(asMass(answers.best->cost).si(), 'g', 10)));
    QVERIFY2(near(answers.next->cost, cells[7]), qPrintable(QString::number(asMass(answers.next->cost).si(), 'g', 10)));
}

QTEST_APPLESS_MAIN(GoldenHangingsTest)
#include "test_goldenhangings.moc"
