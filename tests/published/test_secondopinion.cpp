// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/measure/leastsquares.h"
#include "core/measure/monotonecurve.h"
#include "core/measure/uncertainty.h"
#include "core/resistance/bandfit.h"
#include "core/work/measuring/aidkit.h"
#include "core/work/measuring/machinekit.h"
#include "tests/probe/line.h"
#include "tests/published/rows.h"

#include <QFile>
#include <cmath>
#include <numbers>

using namespace steelyard;
using namespace steelyard::published;

namespace {

using Values = QMap<QString, double>;

/// Lines of a recorded opinion by their heading.
QList<QMap<QString, QString>> recorded(const char* file)
{
    auto lines = csvLines(QStringLiteral("second_opinion/") + file);
    const QStringList head = lines.takeFirst();
    QList<QMap<QString, QString>> out;
    for (const QStringList& line : lines) {
        QMap<QString, QString> row;
        for (int i = 0; i < head.size(); ++i)
            row[head[i]] = line[i];
        out += row;
    }
    return out;
}

std::vector<double> list(const QString& json) { return nlohmann::json::parse(json.toStdString()).get<std::vector<double>>(); }

Values bandValues(const BandFit& fit)
{
    Values out{{"residual sd", fit.residualSd()->si()}, {"aicc", *fit.aiccScore()}};
    for (std::size_t i = 0; i < fit.coefficients().size(); ++i)
        out[QStringLiteral("coefficient %1").arg(i)] = fit.coefficients()[i].si();
    for (const double stretch : {1.1, 1.4, 1.9}) {
        out[QStringLiteral("pull %1").arg(stretch)] = fit.pull(stretch * fit.rest()).si();
        out[QStringLiteral("u %1").arg(stretch)] = fit.uncertainty(stretch * fit.rest()).si();
    }
    return out;
}

void addErrors(Values& out, const LinearFit& fit)
{
    for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
        out[QStringLiteral("coefficient %1").arg(i)] = fit.coefficients[i];
        out[QStringLiteral("standard error %1").arg(i)] = fit.standardErrors()->at(i);
    }
    out["residual sd"] = *fit.residualSd;
}

BandModel modelNamed(const QString& name)
{
    return name == "line" ? BandModel::Line : name == "quadratic" ? BandModel::Quadratic : BandModel::Rubber;
}

/// What the engine says to the sets that R was given.
QMap<QString, Values> setsOfR()
{
    QMap<QString, Values> sets;
    auto pontius = columnsOf("data/nist_pontius.csv"), noint = columnsOf("data/nist_noint1.csv"), gum = columnsOf("data/jcgm100_h3.csv");
    addErrors(sets["pontius"], PolynomialFit::of(pontius["x"], pontius["y"], 2, false)->fit());
    addErrors(sets["noint1"], PolynomialFit::of(noint["x"], noint["y"], 1, true)->fit());
    for (double& t : gum["t_degC"])
        t -= 20;
    const auto line = *PolynomialFit::of(gum["t_degC"], gum["b_degC"], 1, false);
    addErrors(sets["thermometer"], line.fit());
    for (const int t : {20, 24, 30}) {
        sets["thermometer"][QStringLiteral("value at %1").arg(t)] = line.at(t - 20);
        sets["thermometer"][QStringLiteral("u at %1").arg(t)] = *line.standardErrorAt(t - 20);
    }
    std::vector<BandPoint> points;
    double kg = 5;
    for (const double length : {1.15, 1.245, 1.37, 1.525, 1.72, 1.95}) {
        points.push_back({metres(length), weight(kilograms(kg))});
        kg += 2.5;
    }
    for (const QString& name : {QStringLiteral("line"), QStringLiteral("quadratic"), QStringLiteral("rubber")}) {
        std::vector<double> design, pulls;
        sets[name] = bandValues(*BandFit::with(modelNamed(name), metres(1), points));
        for (const BandPoint& p : points) {
            const double l = p.length.si(), s = l - 1;
            design.push_back(name == "rubber" ? l - 1 / (l * l) : s);
            if (name != "line")
                design.push_back(name == "rubber" ? 1 - 1 / (l * l * l) : s * s);
            pulls.push_back(p.pull.si());
        }
        addErrors(sets[name], *fitLinear(design, name == "line" ? 1 : 2, pulls));
    }
    return sets;
}

}

/// The engine beside NumPy, SciPy and R: second_opinion.py and second_opinion.R wrote the files down.
class TestSecondOpinion : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bandFits()
    {
        for (const auto& row : recorded("band_fits.csv")) {
            std::vector<BandPoint> points;
            const auto pairs = nlohmann::json::parse(row["points"].toStdString());
            for (const auto& pair : pairs)
                points.push_back({metres(pair[0].get<double>()), newtons(pair[1].get<double>())});
            const auto fit = *BandFit::with(modelNamed(row["model"]), metres(row["rest_m"].toDouble()), points);
            compare(bandValues(fit), row, "band fits, NumPy", 1e-9);
        }
    }

    void monotoneCurves()
    {
        for (const auto& row : recorded("monotone_curves.csv")) {
            const auto curve = *MonotoneCurve::through(list(row["x"]), list(row["y"]));
            const double from = row["from"].toDouble(), to = row["to"].toDouble();
            const Values values{{"value", *curve.at(from)}, {"slope", *curve.slopeAt(from)}, {"integral", *curve.integral(from, to)}};
            compare(values, row, "monotone curves, SciPy", 1e-12, 1e-12);
        }
    }

    /// A bench aid and a cam machine from their readings to what the pages say, u among it.
    void measuredThings()
    {
        AidMeasurement aid;
        for (const auto& [m, kg] : {std::pair{0.0, 62.5}, {0.05, 41.0}, {0.11, 22.5}, {0.19, 8.5}, {0.31, 0.0}})
            aid.readings.push_back({kilograms(kg), metres(m), false});
        MachineMeasurement cam, pull;
        constexpr double degree = std::numbers::pi / 180;
        cam.stack = kilograms(40);
        for (const auto& [degrees, m] : {std::pair{0.0, 0.081}, {20.0, 0.096}, {45.0, 0.118}, {70.0, 0.121}, {100.0, 0.104}, {120.0, 0.088}}) {
            MachineReading& r = cam.readings.emplace_back();
            r.angle = Angle{degrees * degree};
            r.radius = metres(m);
        }
        pull.by = MachineMeasuring::Pull;
        pull.stack = kilograms(40);
        pull.scaleStep = kilograms(0.5);
        for (const auto& [m, kg] : {std::pair{0.0, 31.5}, {0.1, 36.0}, {0.2, 38.5}, {0.35, 37.0}, {0.5, 30.5}}) {
            MachineReading& r = pull.readings.emplace_back();
            r.travel = metres(m);
            r.pull = kilograms(kg);
        }
        const auto help = *aidFrom(aid);
        const auto profile = *camFrom(cam);
        const auto turned = *answerOf(cam), pulled = *answerOf(pull);
        QMap<QString, Values> said;
        said["cam"] = {{"rise", turned.rise.si()}, {"mean", turned.meanTorque->value.newtonMetres}, {"u mean", turned.meanTorque->u.newtonMetres}, {"work", turned.work.si()}, {"u work", turned.uWork.si()}};
        said["pull"] = {{"mean", pulled.meanPull->si()}, {"u mean", pulled.uMeanPull->si()}, {"work", pulled.work.si()}, {"u work", pulled.uWork.si()}};
        for (const auto& row : recorded("measured_things.csv")) {
            const QString quantity = row["quantity"];
            const double at = quantity.section(' ', -1).toDouble();
            if (row["thing"] == "aid")
                said["aid"][quantity] = (quantity.startsWith("u ") ? help.uncertaintyAt(metres(at)) : help.at(metres(at)))->si();
            else if (quantity.contains("torque"))
                said["cam"][quantity] = quantity.startsWith("u ") ? torqueAt(profile, kilograms(40), Angle{at * degree})->u.newtonMetres : torqueAt(profile, kilograms(40), Angle{at * degree})->value.newtonMetres;
            compare(said[row["thing"]], row, "bench aid and machine, SciPy", 1e-11, 1e-9);
        }
    }

    void student()
    {
        for (const char* file : {"student.csv", "r_student.csv"})
            for (auto row : recorded(file)) {
                row["quantity"] = "k95 of " + row["degrees_of_freedom"];
                row["value"] = row["k95"];
                compare({{row["quantity"], coverageFactor95(row["degrees_of_freedom"].toDouble())}}, row, "Student, SciPy and R", 1e-11);
            }
    }

    void fitsOfR()
    {
        const auto sets = setsOfR();
        for (const auto& row : recorded("r_fits.csv"))
            compare(sets[row["set"]], row, "fits, R", 1e-9);
    }

    /// Pulls and means to 1e-9 of the load. Errors were followed there by moving each source a little, hence 1e-5 of them.
    void setups()
    {
        const auto answers = probed();
        int compared = 0;
        for (const auto& row : recorded("setups.csv")) {
            const bool isU = row["quantity"].startsWith("u_");
            compare(answers[row["setup"]], row, isU ? "set-ups, u, NumPy" : "set-ups, SciPy", isU ? 1e-5 : 1e-9, isU ? 1e-8 : 0);
            ++compared;
        }
        int answered = 0;
        for (const Values& values : answers)
            answered += static_cast<int>(values.size());
        QCOMPARE(compared, answered);
    }

    /// 20,000 draws know a standard deviation to 0.5 %; three of these, and what a straight line leaves out.
    void setupsDrawnAnew()
    {
        const auto answers = probed();
        for (const auto& row : recorded("monte_carlo.csv"))
            compare(answers[row["setup"]], row, "set-ups, drawn anew", 0.02, 1e-6);
    }

    void cleanupTestCase()
    {
        for (auto at = m_worst.begin(); at != m_worst.end(); ++at)
            qInfo("%s: furthest apart by %.2g of the number", qPrintable(at.key()), at.value());
    }

private:
    /// Numbers of the probe's answers to setups.json, by set-up and key.
    static QMap<QString, Values> probed()
    {
        QFile file(QStringLiteral(PUBLISHED_FOLDER "/second_opinion/setups.json"));
        if (!file.open(QIODevice::ReadOnly))
            qFatal("no set-ups");
        QMap<QString, Values> out;
        const auto entries = nlohmann::json::parse(file.readAll().toStdString());
        for (const auto& entry : entries) {
            const auto answer = nlohmann::json::parse(probe::answer(nlohmann::json{{"fn", "setup"}, {"in", entry["in"]}}.dump()));
            for (const auto& [key, value] : answer.at("out").items())
                if (value.is_number())
                    out[QString::fromStdString(entry["name"].get<std::string>())][QString::fromStdString(key)] = value.get<double>();
        }
        return out;
    }

    void compare(const Values& values, const QMap<QString, QString>& row, const char* what, double share, double absolute = 0)
    {
        const QString quantity = row["quantity"];
        QVERIFY2(values.contains(quantity), qPrintable(quantity));
        const double expected = row["value"].toDouble(), actual = values[quantity], apart = std::abs(actual - expected);
        QVERIFY2(apart <= share * std::abs(expected) + absolute,
            qPrintable(QStringLiteral("%1: %2 %3 for %4").arg(QStringList(row.values()).join(' '), quantity).arg(actual, 0, 'g', 17).arg(expected, 0, 'g', 17)));
        if (apart > absolute)
            m_worst[what] = std::max(m_worst[what], apart / std::abs(expected));
    }

    QMap<QString, double> m_worst;
};

QTEST_APPLESS_MAIN(TestSecondOpinion)
#include "test_secondopinion.moc"
