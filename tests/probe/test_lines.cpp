// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/probe/functions.h"
#include "tests/probe/line.h"

#include <QFile>
#include <cmath>
#include <set>

using namespace steelyard::probe;
using Ordered = nlohmann::ordered_json;

namespace {

/// Same keys in the same order, same words, numbers within 1e-12.
bool same(const Ordered& a, const Ordered& b)
{
    if (a.is_number() && b.is_number())
        return std::abs(a.get<double>() - b.get<double>()) <= 1e-12 * std::max(1.0, std::abs(b.get<double>()));
    if (!a.is_structured() || !b.is_structured())
        return a == b;
    if (a.size() != b.size() || a.is_object() != b.is_object())
        return false;
    auto other = b.items().begin();
    for (const auto& [key, value] : a.items()) {
        if (key != other.key() || !same(value, other.value()))
            return false;
        ++other;
    }
    return true;
}

}

class TestLines : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        QFile file(QStringLiteral(PROBE_FOLDER "/lines.txt"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        for (const QByteArray& line : file.readAll().split('\n'))
            if (!line.isEmpty() && !line.startsWith("# "))
                m_lines.push_back(line);
        QCOMPARE(m_lines.size() % 3, 0);
        QVERIFY(m_lines.size() > 3 * 90);
    }

    void answers_data()
    {
        QTest::addColumn<QByteArray>("line");
        QTest::addColumn<QByteArray>("expected");
        for (int i = 0; i < m_lines.size(); i += 3)
            QTest::newRow(m_lines[i].constData()) << m_lines[i + 1] << m_lines[i + 2];
    }
    void answers()
    {
        QFETCH(QByteArray, line);
        QFETCH(QByteArray, expected);
        const std::string given = answer(line.toStdString());
        QVERIFY2(same(Ordered::parse(given), Ordered::parse(expected.toStdString())), given.c_str());
    }

    /// Each function is shown to answer and to refuse.
    void everyFunctionIsInTheTable()
    {
        std::set<std::string> answered, refused;
        for (int i = 0; i < m_lines.size(); i += 3) {
            const auto line = Ordered::parse(m_lines[i + 1].toStdString(), nullptr, false);
            if (line.is_object() && line.contains("fn") && line["fn"].is_string())
                (m_lines[i + 2].startsWith("{\"out\"") ? answered : refused).insert(line["fn"].get<std::string>());
        }
        for (const Function& f : functions()) {
            QVERIFY2(answered.contains(f.name), f.name);
            const std::string without = answer(R"({"fn": ")" + std::string(f.name) + R"(", "in": {}})");
            QVERIFY2(without.find("is missing") != std::string::npos, without.c_str());
            QVERIFY(find(f.name) == &f);
        }
    }

    /// Take any required key away and it is named; add one and it is named.
    void everyMissingKeyIsNamed()
    {
        const std::set<std::string> optional{"lead_kg", "bunch_m", "wrap_m", "rack_m", "u_mark_m", "u_plates_kg", "sticking_from_m", "sticking_to_m", "u_lift_m", "u_contact_m",
                                             "u_plates_share", "cap_kg", "most_things", "strength", "u_strength_n", "lower_is_better", "u_body_kg", "allow_short_weighing"};
        // the same key may be needed by one function and not by another
        const std::set<std::pair<std::string, std::string>> optionalThere{{"bilateral_index_lift", "cv_both"}, {"bilateral_index_lift", "cv_left"}, {"bilateral_index_lift", "cv_right"}, {"jump_force", "g_m_s2"}};
        int looked = 0;
        for (int i = 0; i < m_lines.size(); i += 3) {
            if (!m_lines[i + 2].startsWith("{\"out\""))
                continue;
            const auto line = Ordered::parse(m_lines[i + 1].toStdString());
            for (const auto& [key, value] : line["in"].items()) {
                auto without = line;
                without["in"].erase(key);
                const std::string given = answer(without.dump());
                if ((!optional.contains(key) && !optionalThere.contains({line["fn"].get<std::string>(), key})) || (key == "bunch_m" && line["in"]["hang"] == "bunched"))
                    QVERIFY2(given.find(key + " is missing") != std::string::npos, given.c_str());
                ++looked;
            }
            auto more = line;
            more["in"]["colour"] = "red";
            QVERIFY(answer(more.dump()).find("unknown key colour") != std::string::npos);
        }
        QVERIFY(looked > 150);
    }

    /// Give any key a value of another type and it is named.
    void everyWrongTypeIsNamed()
    {
        for (int i = 0; i < m_lines.size(); i += 3) {
            if (!m_lines[i + 2].startsWith("{\"out\""))
                continue;
            const auto line = Ordered::parse(m_lines[i + 1].toStdString());
            for (const auto& [key, value] : line["in"].items()) {
                for (const Ordered& wrong : {Ordered("red"), Ordered(true), Ordered::array({true}), Ordered{{"a", 1}}}) {
                    if (wrong.type() == value.type() && !(value.is_string() || value.is_array()))
                        continue;
                    auto changed = line;
                    changed["in"][key] = wrong;
                    const std::string given = answer(changed.dump());
                    QVERIFY2(given.starts_with("{\"error\"") && given.find(key) != std::string::npos, given.c_str());
                }
            }
        }
    }

private:
    QList<QByteArray> m_lines;
};

QTEST_APPLESS_MAIN(TestLines)
#include "test_lines.moc"
