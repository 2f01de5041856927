// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/eccentric/release.h"
#include "tests/core/near.h"
#include "tests/core/sample/goldencells.h"
#include "tests/core/sample/marrowhill.h"

#include <QtTest>
#endif

using namespace steelyard;
using namespace steelyard::sample;

namespace {

/// What the script beside this file worked out, by set-up and quantity.
std::map<std::pair<int, QString>, double> golden()
{
    std::map<std::pair<int, QString>, double> all;
    for (const QStringList& cells : goldenCells(QStringLiteral(GOLDEN_FILE)))
        all[{cells[0].toInt(), cells[1]}] = cells[2].toDouble();
    return all;
}

std::map<QString, double> worked(const ReleaseAnswer& answer)
{
    const ReleaseLoad& load = *answer.load;
    const ReleaseHeights& heights = *answer.heights;
    return {{QStringLiteral("up_kg"), load.up.value.si()}, {QStringLiteral("each_kg"), load.each->value.si()}, {QStringLiteral("down_kg"), load.down->value.si()},
            {QStringLiteral("u_down_kg"), load.down->u.si()}, {QStringLiteral("length_m"), heights.length.value.si()},
            {QStringLiteral("setting_m"), heights.setting->si()}, {QStringLiteral("touch_m"), heights.at.touch.value.si()},
            {QStringLiteral("free_m"), heights.at.free.value.si()}, {QStringLiteral("last_free_m"), heights.tilted->lastFree.value.si()},
            {QStringLiteral("safeties_low_m"), answer.safeties->at.lowest.value.si()}, {QStringLiteral("safeties_high_m"), answer.safeties->at.highest.value.si()},
            {QStringLiteral("down_mean_kg"), asMass(answer.pulls->downMean->value).si()}, {QStringLiteral("tipping_nm"), answer.oneSide->tipping.newtonMetres},
            {QStringLiteral("released_ratio"), heights.releasedRatio}};
}

}

/// The engine and a second opinion, which tries every way to share the plates and takes Student's t from SciPy, agree on every set-up of
/// the sample season whose way down is heavier: to nine digits.
class GoldenReleasesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreeWithASecondOpinion();
};

void GoldenReleasesTest::agreeWithASecondOpinion()
{
    const auto expected = golden();
    QVERIFY(expected.size() >= 14);
    const Season season = marrowhill::season();
    std::vector<KitItem> kit;
    for (const SampleItem& item : season.kit)
        kit.push_back(item.item);
    std::size_t compared = 0;
    for (std::size_t i = 0; i < season.setups.size(); ++i) {
        const SavedSetup& saved = season.setups[i].saved;
        if (!saved.setup.release)
            continue;
        const auto person = std::find_if(season.people.begin(), season.people.end(), [&](const SamplePerson& p) { return p.athlete.id == saved.athlete; });
        const ReleaseAnswer answer = releaseAnswer(saved.setup, {kit, person->athlete.marks.at(saved.lift), saved.lift, std::nullopt});
        QVERIFY2(answer.isComplete() && answer.heights && answer.safeties, qPrintable(QString::number(i)));
        for (const auto& [quantity, value] : worked(answer)) {
            const auto at = expected.find({static_cast<int>(i), quantity});
            QVERIFY2(at != expected.end(), qPrintable(quantity));
            QVERIFY2(tests::nearShare(value, at->second, 1e-9), qPrintable(quantity + QStringLiteral(": ") + tests::versus(value, at->second)));
            ++compared;
        }
    }
    QCOMPARE(compared, expected.size());
}

QTEST_APPLESS_MAIN(GoldenReleasesTest)
#include "test_goldenreleases.moc"
