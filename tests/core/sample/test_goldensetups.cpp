// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/weighup.h"
#include "tests/core/sample/goldencells.h"
#include "tests/core/sample/marrowhill.h"

#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;
using namespace steelyard::sample;

namespace {

struct Golden {
    double kg = 0, uKg = 0;
};

/// What the script beside this file worked out, by set-up and quantity.
std::map<std::pair<int, QString>, Golden> golden()
{
    std::map<std::pair<int, QString>, Golden> all;
    for (const QStringList& cells : goldenCells(QStringLiteral(GOLDEN_FILE)))
        all[{cells[0].toInt(), cells[1]}] = {cells[2].toDouble(), cells[3].toDouble()};
    return all;
}

}

/// The engine and a second opinion from NumPy and SciPy agree on every set-up of the sample season: pulls to 1e-9 of the load, and their
/// uncertainty, which was followed there by moving each source a little, to 1e-5.
class GoldenSetupsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreeWithASecondOpinion();
};

void GoldenSetupsTest::agreeWithASecondOpinion()
{
    const auto expected = golden();
    QVERIFY(expected.size() > 120);
    const Season season = marrowhill::season();
    std::vector<KitItem> kit;
    for (const SampleItem& item : season.kit)
        kit.push_back(item.item);
    std::size_t compared = 0;
    for (std::size_t i = 0; i < season.setups.size(); ++i) {
        const SavedSetup& saved = season.setups[i].saved;
        const auto person = std::find_if(season.people.begin(), season.people.end(), [&](const SamplePerson& p) { return p.athlete.id == saved.athlete; });
        const WeighedUp answer = weighUp(saved.setup, kit, person->athlete.marks.at(saved.lift), {}, 0);
        const PullCurve curve = answer.curve.value_or(PullCurve{});
        const std::pair<const char*, std::optional<Reading>> readings[] = {
            {"bottom", curve.bottom}, {"sticking", curve.zone}, {"top", curve.top}, {"mean", curve.mean}};
        for (const auto& [quantity, reading] : readings) {
            const auto at = expected.find({static_cast<int>(i), QLatin1String(quantity)});
            const QByteArray where = QStringLiteral("set-up %1, %2").arg(i).arg(QLatin1String(quantity)).toUtf8();
            QVERIFY2(reading.has_value() == (at != expected.end()), where.constData());
            if (!reading)
                continue;
            ++compared;
            const double kg = asMass(reading->value).si(), u = asMass(reading->u).si();
            QVERIFY2(std::abs(kg - at->second.kg) <= 1e-9 * at->second.kg, (where + ' ' + QByteArray::number(kg, 'g', 12)).constData());
            QVERIFY2(std::abs(u - at->second.uKg) <= 1e-5 * at->second.uKg + 1e-8, (where + " u " + QByteArray::number(u, 'g', 12)).constData());
        }
    }
    QCOMPARE(compared, expected.size());
}

QTEST_APPLESS_MAIN(GoldenSetupsTest)
#include "test_goldensetups.moc"
