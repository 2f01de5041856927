// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/hanging/eccentricload.h"
#include "core/resistance/releasehook.h"
#include "tests/probe/line.h"

#include <QFile>
#include <cmath>
#include <numbers>

using namespace steelyard;
using namespace steelyard::probe;

namespace {

/// What the probe answers; an error comes back as it is, so that a comparison with it fails and shows it.
Json asked(const char* fn, const Json& in)
{
    const Json given = Json::parse(answer(Json{{"fn", fn}, {"in", in}}.dump()));
    return given.contains("out") ? given["out"] : given;
}

Json heights(const Json& path, double uMark)
{
    Json in = path;
    in["u_mark_m"] = uMark;
    return in;
}

}

/// The worked examples through the probe, at the tolerance they state: 5e-4 of the number.
class TestExamples : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        QFile file(QStringLiteral(PUBLISHED_FOLDER "/data/worked_examples.md"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const std::string text = file.readAll().toStdString();
        for (auto at = text.find("```json"); at != std::string::npos; at = text.find("```json", at + 1)) {
            const auto from = at + 7, to = text.find("```", from);
            const Json example = Json::parse(text.substr(from, to - from));
            m_examples[example.at("id").get<std::string>()] = example;
        }
        QVERIFY(m_examples.contains("WE01") && m_examples.contains("WE02") && m_examples.contains("WE04") && m_examples.contains("WE05"));
    }

    void chainsForTwoLifters_data()
    {
        QTest::addColumn<QString>("lead");
        QTest::addColumn<QString>("lifter");
        for (const char* lead : {"without_lead_mass", "with_lead_mass"})
            for (const char* lifter : {"short", "tall"})
                QTest::addRow("%s, %s", lifter, lead) << lead << lifter;
    }
    void chainsForTwoLifters()
    {
        QFETCH(QString, lead);
        QFETCH(QString, lifter);
        const Json &inputs = m_examples["WE01"]["inputs"], &expected = m_examples["WE01"]["expected"];
        Json chain = inputs["each_side"]["chain"];
        if (lead == "without_lead_mass")
            chain.erase("lead_kg");
        chain["u_kg_per_m"] = 0.1 / std::sqrt(12.0) / chain["length_m"].get<double>();
        chain["measurement"] = "weighed together";
        Json in = heights(inputs[lifter.toStdString()], 0.01);
        for (const char* key : {"bar_kg", "collars_kg", "plates_kg"})
            in[key] = inputs[key];
        in["left"] = in["right"] = Json::array({{{"chain", chain}}});
        const Json out = asked("setup", in);
        for (const auto& [key, value] : expected[lead.toStdString()][lifter.toStdString()].items())
            compare(out[key], value, key);
        QVERIFY(out["ready"].get<bool>());
        if (lead == "with_lead_mass")
            return;
        for (const char* mark : {"bottom", "top"})
            compare(out[std::string("u_") + mark + "_kg"], expected["u"][lifter.toStdString() + "_" + mark + "_kg"], mark);
        const bool isShort = lifter == "short";
        const Json warning{{"code", isShort ? "first_link_up" : "last_link_off"}, {"side", "both"}, {"height_m", isShort ? 0.8 : 1.55}};
        QCOMPARE(out["warnings"].size(), 1u);
        QCOMPARE(out["warnings"][0]["code"], warning["code"]);
        QVERIFY(std::abs(out["warnings"][0]["height_m"].get<double>() - warning["height_m"].get<double>()) < 1e-12);
    }

    void bandFits()
    {
        const Json& expected = m_examples["WE02"]["expected"];
        for (const char* model : {"rubber", "quadratic", "line"}) {
            Json in = fit();
            in["model"] = model;
            compare(asked("band_fit", in)["aicc"], expected["aicc"][model], model);
        }
        Json in = fit();
        in["model"] = "best";
        const Json out = asked("band_fit", in);
        QCOMPARE(out["model"], Json("rubber"));
        compare(out["coefficients"][0], expected["a_n"], "a");
        compare(out["coefficients"][1], expected["b_n"], "b");
        compare(out["residual_sd"], expected["residual_sd_n"], "residual SD");
    }

    void slantedPair()
    {
        const Json &expected = m_examples["WE02"]["expected"]["single_pair"], given = m_examples["WE02"]["inputs"]["single"];
        const Json out = asked("setup", pair(given["u_mark_m"], false));
        for (const char* key : {"bottom_kg", "sticking_kg", "top_kg", "mean_kg", "two_point_mean_kg"})
            compare(out[key], expected[key], key);
        compare(out["warnings"][0]["height_m"], expected["slack_below_m"], "slack below");
        compare(out["u_top_kg"], expected["u_top_kg"]["both"], "u with marks");
        compare(asked("setup", pair(0, false))["u_top_kg"], expected["u_top_kg"]["fit_only_correlated"], "u of the fit");
        compare(asked("setup", pair(given["u_mark_m"], true))["u_top_kg"], expected["u_top_kg"]["right_band_is_unmeasured_twin"], "u with a twin");
        Json hang = band(false);
        hang.erase("measurement");
        hang["bar_height_m"] = given["top_m"];
        const Json one = asked("band_hang", hang);
        compare(one["along_floor_n"].get<double>() * 2 / 9.80665, expected["along_floor_top_kg"], "along the floor");
        compare(one["along_floor_n"].get<double>() / one["vertical_n"].get<double>(), expected["along_over_vertical"], "along over vertical");
    }

    void doubledPairGoesPastItsMeasurement_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<double>("wrap");
        QTest::newRow("without a wrap") << "doubled_pair_no_wrap" << 0.0;
        QTest::newRow("round a handle of 5 cm") << "doubled_pair_wrap" << std::numbers::pi * 0.05 / 2;
    }
    void doubledPairGoesPastItsMeasurement()
    {
        QFETCH(QString, name);
        QFETCH(double, wrap);
        const Json& expected = m_examples["WE02"]["expected"][name.toStdString()];
        Json doubled = band(false);
        doubled["hang"] = "doubled";
        doubled["offset_m"] = 0;
        doubled["wrap_m"] = wrap;
        Json in = pair(0.01, false);
        in["left"] = in["right"] = Json::array({{{"band", doubled}}});
        const Json out = asked("setup", in);
        compare(out["bottom_kg"], expected["bottom_kg"], "bottom");
        QVERIFY(out["top_kg"].is_null() && out["mean_kg"].is_null() && !out["ready"].get<bool>());
        const Json warning = out["warnings"][0];
        QCOMPARE(warning["code"], Json("beyond_measured"));
        compare(warning["height_m"], expected["known_up_to_h_m"], "known up to");
        in["top_m"] = warning["height_m"];
        const Json whole = asked("setup", in);
        compare(whole["top_kg"], expected["pull_at_that_height_kg"], "pull at that height");
        QVERIFY(whole["ready"].get<bool>());
    }

    void smallPlatesStartLower_data()
    {
        QTest::addColumn<QString>("plates");
        QTest::newRow("plates of 45 cm") << "a";
        QTest::newRow("plates of 32.5 cm") << "b";
    }
    void smallPlatesStartLower()
    {
        QFETCH(QString, plates);
        const Json& inputs = m_examples["WE04"]["inputs"];
        Json chain = inputs["each_side"];
        chain["hang"] = "straight";
        Json in{{"bar_kg", inputs["bar_plus_plates_kg"]}, {"collars_kg", 0}, {"plates_kg", 0}, {"top_m", inputs["top_m"]}};
        in["bottom_m"] = inputs["case_" + plates.toStdString() + "_plate_diameter_m"].get<double>() / 2;
        in["left"] = in["right"] = Json::array({{{"chain", chain}}});
        const Json out = asked("setup", in);
        for (const auto& [key, value] : m_examples["WE04"]["expected"][plates.toStdString()].items())
            compare(out[key], value, key);
    }

    void hooksLetGoAboveTheBottom()
    {
        const Json &inputs = m_examples["WE05"]["inputs"], &expected = m_examples["WE05"]["expected"], &given = inputs["geometry"];
        const Json out = asked("release_hook", {{"one_rm_kg", inputs["one_rm_kg"]}, {"eccentric_percent", inputs["eccentric_percent"]}, {"concentric_percent", inputs["concentric_percent"]},
                                                {"bottom_m", given["bottom_bar_centre_m"]}, {"margin_m", given["free_margin_m"]}, {"sleeve_radius_m", given["sleeve_radius_m"]}, {"lip_drop_m", given["drop_to_clear_lip_m"]}});
        compare(out["each_hook_kg"], expected["ideal_each_hook_kg"], "ideal hook");
        compare(out["hook_length_m"], expected["hook_length_seat_to_foot_m"], "hook length");
        compare(out["touch_m"], expected["overload_ends_bar_centre_m"], "overload ends");
        compare(out["free_m"], expected["hook_free_bar_centre_m"], "hook free");
        compare(endDrop(metres(given["hook_spacing_m"]), oneDegree).si(), expected["end_to_end_drop_at_1_degree_m"], "drop of one end");
    }

    void barAndHooksFromOneStock()
    {
        const Json &inputs = m_examples["WE05"]["inputs"], &expected = m_examples["WE05"]["expected"];
        EccentricKit kit;
        for (const auto& [kg, count] : inputs["plate_pairs"].items())
            kit.stock.push_back({{kilograms(std::stod(kg)), {}, {}}, 2 * count.get<int>()});
        kit.base.value = kilograms(inputs["bar_kg"].get<double>() + inputs["collars_total_kg"].get<double>());
        kit.frame.value = kilograms(inputs["hook_frame_kg_each"]);
        const Mass most = kilograms(inputs["one_rm_kg"]);
        const auto percent = [&](const Uncertain<Mass>& load) { return percentReached(load, {most, {}})->percent; };
        const auto answer = *eccentricLoad(kit, *eccentricTarget(most, inputs["concentric_percent"], inputs["eccentric_percent"], PercentBase::OneRepMax));
        const EccentricLoad& best = answer.best;
        compare(best.bar.plates().si() / 2, expected["bar_each_side_kg"], "plates on a side");
        compare(best.concentric.value.si(), expected["concentric_kg"], "concentric");
        compare(percent(best.concentric), expected["concentric_pct"], "concentric %");
        compare(best.eachHook.value.si(), expected["each_hook_kg"], "hook");
        compare((best.eachHook.value - kit.frame.value).si(), expected["hook_plates_each_kg"], "plates on a hook");
        compare(best.eccentric.value.si(), expected["eccentric_kg"], "eccentric");
        compare(percent(best.eccentric), expected["eccentric_pct"], "eccentric %");
        const Json& lighter = expected["next_lighter"];
        compare((answer.lighter->eachHook.value - kit.frame.value).si(), lighter["hook_plates_each_kg"], "plates on a lighter hook");
        compare(answer.lighter->eccentric.value.si(), lighter["eccentric_kg"], "lighter eccentric");
        compare(percent(answer.lighter->eccentric), lighter["eccentric_pct"], "lighter eccentric %");
    }

    void ofTheConcentricLoadIsAnotherBase()
    {
        const Json &inputs = m_examples["WE05"]["inputs"], &expected = m_examples["WE05"]["expected"]["plus_40_percent_of_concentric"];
        const Mass most = kilograms(inputs["one_rm_kg"]);
        const auto target = *eccentricTarget(most, inputs["concentric_percent"], 140, PercentBase::ConcentricLoad);
        const Mass eccentric = target.concentric + 2 * idealHook(target);
        compare(idealHook(target).si(), expected["each_hook_kg"], "hook");
        compare(eccentric.si(), expected["eccentric_kg"], "eccentric");
        compare(100 * (eccentric / most), expected["eccentric_pct"], "eccentric %");
    }

private:
    [[nodiscard]] Json fit()
    {
        const Json& inputs = m_examples["WE02"]["inputs"];
        return {{"rest_m", inputs["rest_m"]}, {"points", inputs["points"]}, {"model", inputs["model"]}};
    }
    [[nodiscard]] Json band(bool twin)
    {
        const Json& single = m_examples["WE02"]["inputs"]["single"];
        Json out = fit();
        out.update({{"hang", "single"}, {"anchor", "below"}, {"anchor_height_m", single["anchor_height_m"]}, {"offset_m", single["offset_m"]}, {"measurement", "one fit"}});
        if (twin)
            out["twin"] = true;
        return out;
    }
    [[nodiscard]] Json pair(const Json& uMark, bool rightIsTwin)
    {
        Json in{{"bar_kg", 0}, {"collars_kg", 0}, {"plates_kg", 0}, {"u_mark_m", uMark}};
        for (const char* key : {"bottom_m", "top_m", "sticking_from_m", "sticking_to_m"})
            in[key] = m_examples["WE02"]["inputs"]["single"][key];
        in["left"] = Json::array({{{"band", band(false)}}});
        in["right"] = Json::array({{{"band", band(rightIsTwin)}}});
        return in;
    }
    static void compare(const Json& actual, const Json& expected, const std::string& what)
    {
        QVERIFY2(actual.is_number() && expected.is_number(), (what + ": " + actual.dump() + " for " + expected.dump()).c_str());
        const double a = actual.get<double>(), e = expected.get<double>();
        QVERIFY2(std::abs(a - e) <= 5e-4 * std::abs(e), (what + ": " + actual.dump() + " for " + expected.dump()).c_str());
    }

    std::map<std::string, Json> m_examples;
};

QTEST_APPLESS_MAIN(TestExamples)
#include "test_examples.moc"
