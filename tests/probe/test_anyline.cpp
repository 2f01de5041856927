// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/probe/line.h"

#include <QFile>
#include <rapidcheck.h>
#include <sstream>

using namespace steelyard::probe;

namespace {

/// One line out for a line in, of one of the two shapes, whatever came in.
void holdsToItsWord(const std::string& line)
{
    std::istringstream in(line);
    std::ostringstream out;
    answerAll(in, out);
    const std::string given = out.str();
    const bool blank = line.find_first_not_of(" \t\r") == std::string::npos;
    RC_ASSERT(std::count(given.begin(), given.end(), '\n') == (blank ? 0 : 1));
    if (blank)
        return;
    const auto json = nlohmann::json::parse(given, nullptr, false);
    RC_ASSERT((json.is_object() && json.size() == 1));
    RC_ASSERT((json.contains("out") ? json["out"].is_object() : json.at("error").is_string()));
    RC_ASSERT((json.contains("out") || !json.at("error").get_ref<const std::string&>().empty()));
}

std::string anyByte() { return std::string(1, static_cast<char>(*rc::gen::inRange(0, 256))); }

std::string without(std::string text, char c)
{
    std::erase(text, c);
    return text;
}

}

class TestAnyLine : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase()
    {
        QFile file(QStringLiteral(PROBE_FOLDER "/lines.txt"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        for (const QByteArray& line : file.readAll().split('\n'))
            if (line.startsWith("{\"fn\""))
                m_lines.push_back(line.toStdString());
        QVERIFY(m_lines.size() > 60);
    }

    void anyBytes()
    {
        QVERIFY(rc::check("random bytes", [] {
            std::string line;
            for (int i = *rc::gen::inRange(0, 60); i > 0; --i)
                line += anyByte();
            holdsToItsWord(without(line, '\n'));
        }));
    }

    void spoiltLines()
    {
        QVERIFY(rc::check("good lines with bytes taken out, put in, changed, or stretches repeated", [this] {
            std::string line = *rc::gen::elementOf(m_lines);
            for (int i = *rc::gen::inRange(1, 6); i > 0 && !line.empty(); --i) {
                const auto at = *rc::gen::inRange<std::size_t>(0, line.size());
                const auto length = *rc::gen::inRange<std::size_t>(1, 12);
                switch (*rc::gen::inRange(0, 5)) {
                case 0: line.erase(at, length); break;
                case 1: line.insert(at, anyByte()); break;
                case 2: line[at] = anyByte()[0]; break;
                case 3: line.insert(at, line.substr(at, length)); break;
                default: line.resize(at); break;
                }
            }
            holdsToItsWord(without(line, '\n'));
        }));
    }

    void oddValues()
    {
        QVERIFY(rc::check("good lines with values that are extreme, of another type, swapped or taken away", [this] {
            nlohmann::json line = nlohmann::json::parse(*rc::gen::elementOf(m_lines), nullptr, false);
            RC_PRE((line.is_object() && line.contains("in") && line["in"].is_structured()));
            for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
                nlohmann::json* place = &line["in"];
                while (place->is_structured() && !place->empty()) {
                    place = &*std::next(place->begin(), *rc::gen::inRange<std::ptrdiff_t>(0, static_cast<std::ptrdiff_t>(place->size())));
                    if (*rc::gen::inRange(0, 4) == 0)
                        break;
                }
                *place = *rc::gen::element<nlohmann::json>(0, -1, 1e300, -1e300, 1e-300, 5e-324, 1e6, 1e-9, 1.0000000000000002, "", "doubled", true, nullptr,
                    nlohmann::json::array(), nlohmann::json::object(), nlohmann::json::array({1, 2}), 9007199254740993LL, 18446744073709551615ULL, 3);
            }
            holdsToItsWord(line.dump());
        }));
    }

    void closeNumbers()
    {
        QVERIFY(rc::check("set-ups with heights that all but coincide", [] {
            const auto near = [](double v) { return v + *rc::gen::inRange(-3, 4) * *rc::gen::element(0.0, 1e-16, 1e-12, 1e-9, 1e-6); };
            nlohmann::json chain{{"kg_per_m", near(5)}, {"length_m", near(0.5)}, {"hang", "bunched"}, {"lead_m", near(1)}, {"bunch_m", near(1e-5)}, {"lead_kg", 0.4}};
            nlohmann::json band{{"rest_m", near(1)}, {"points", {{near(1.00002), 10}, {near(1.5), 100}, {near(1.6), 110}}}, {"model", *rc::gen::element<std::string>("line", "rubber", "best")},
                {"hang", "single"}, {"anchor", "below"}, {"anchor_height_m", 0}, {"offset_m", near(1)}};
            nlohmann::json in{{"bar_kg", 20}, {"collars_kg", 0}, {"plates_kg", 0}, {"bottom_m", near(1)}, {"top_m", near(1.5)}, {"rack_m", near(1.5)}, {"u_mark_m", near(0.01)},
                {"sticking_from_m", near(1 + 1e-5)}, {"sticking_to_m", near(1.5 - 1e-5)}, {"left", {{{"chain", chain}}, {{"band", band}}}}, {"right", {{{"band", band}}}}};
            holdsToItsWord(nlohmann::json{{"fn", "setup"}, {"in", in}}.dump());
        }));
    }

private:
    std::vector<std::string> m_lines;
};

QTEST_APPLESS_MAIN(TestAnyLine)
#include "test_anyline.moc"
