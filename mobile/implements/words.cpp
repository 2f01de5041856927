// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/implementmass.h"
#include "mobile/implements/implementform.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/say.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

using namespace steelyard;

namespace implementform {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("implementform", text); }

/// Ways as they stand on the page, which begins with the best one here and ends with not knowing.
template <typename Way>
struct Ways {
    std::vector<Way> ways;
    [[nodiscard]] int placeOf(Way way) const { return static_cast<int>(std::find(ways.begin(), ways.end(), way) - ways.begin()); }
    [[nodiscard]] bool has(int place) const { return place >= 0 && static_cast<std::size_t>(place) < ways.size(); }
};

Ways<TyreMeasuring> waysOf(const TyreMeasurement&) { return {{TyreMeasuring::Edge, TyreMeasuring::Whole, TyreMeasuring::Unknown}}; }
Ways<LogMeasuring> waysOf(const LogMeasurement&) { return {{LogMeasuring::Ends, LogMeasuring::Whole, LogMeasuring::Size, LogMeasuring::Unknown}}; }
Ways<StoneMeasuring> waysOf(const StoneMeasurement&) { return {{StoneMeasuring::Whole, StoneMeasuring::Ball, StoneMeasuring::Unknown}}; }
Ways<KegMeasuring> waysOf(const KegMeasurement& m)
{
    return m.sort == KegSort::Sandbag ? Ways<KegMeasuring>{{KegMeasuring::Whole, KegMeasuring::Litres, KegMeasuring::Unknown}}
                                      : Ways<KegMeasuring>{{KegMeasuring::Whole, KegMeasuring::Litres, KegMeasuring::Standing, KegMeasuring::Lying, KegMeasuring::Unknown}};
}

template <typename M>
concept HasWays = requires(const M& m) { waysOf(m); };

QString said(KegMeasuring way)
{
    switch (way) {
    case KegMeasuring::Whole: return tr("whole, on a scale");
    case KegMeasuring::Litres: return tr("by litres");
    case KegMeasuring::Standing: return tr("by its level, standing");
    case KegMeasuring::Lying: return tr("by its level, lying");
    case KegMeasuring::Unknown: break;
    }
    return tr("nobody knows");
}

QString saidSurely(KegMeasuring way)
{
    switch (way) {
    case KegMeasuring::Whole: return tr("surest");
    case KegMeasuring::Litres: return tr("what was poured in");
    case KegMeasuring::Standing:
    case KegMeasuring::Lying: return tr("a stick and a tape");
    case KegMeasuring::Unknown: break;
    }
    return tr("on the list, and given to nobody");
}

void describe(ToolWords& words, const TyreMeasurement&)
{
    words.title = tr("Measure a tyre");
    words.intro = tr("Look for wire that shows and drain it first: water is weighed too, and runs. Clear the ground it could fall on. Twice what an edge reads is too little, the unsafe side: the lever says the rest.");
    words.choices = {tr("one edge lifted"), tr("whole, on a scale"), tr("nobody knows")};
    words.choiceFacts = {tr("a hanging scale and a tape"), tr("surest"), tr("on the list, and given to nobody")};
    words.drawing = QStringLiteral("tyre");
}

void describe(ToolWords& words, const LogMeasurement&)
{
    words.title = tr("Measure a log");
    words.intro = tr("Each end on a scale, one after the other, is surer than size and wood. Look for splits and loose handles; feet clear of it.");
    words.choices = {tr("each end on a scale"), tr("whole, on a scale"), tr("by size and wood"), tr("nobody knows")};
    words.choiceFacts = {tr("however its mass lies"), tr("surest"), tr("a tape, and what wood it is"), tr("on the list, and given to nobody")};
    words.drawing = QStringLiteral("log");
}

void describe(ToolWords& words, const StoneMeasurement&)
{
    words.title = tr("Measure a stone");
    words.intro = tr("On a scale where one holds it. By its size a centimetre in thirty is a tenth of its mass.");
    words.choices = {tr("whole, on a scale"), tr("by its size"), tr("nobody knows")};
    words.choiceFacts = {tr("surest"), tr("a tape, and what it is made of"), tr("on the list, and given to nobody")};
    words.drawing = QStringLiteral("stone");
}

void describe(ToolWords& words, const KegMeasurement& m)
{
    words.title = tr("Measure a keg or sandbag");
    words.intro = tr("Never open or drop a keg that may hold gas: whoever owns it lets it off. One of which nobody knows is not used.");
    for (const KegMeasuring way : waysOf(m).ways) {
        words.choices << said(way);
        words.choiceFacts << saidSurely(way);
    }
    words.drawing = m.sort == KegSort::Keg ? QStringLiteral("keg") : QStringLiteral("bag");
}

void describe(ToolWords& words, const SledMeasurement&)
{
    words.title = tr("Measure a sled");
    words.intro = tr("What it weighs, and how its strap pulls. How it slides is measured on the spot, on each surface.");
    words.drawing = QStringLiteral("sled");
}

void describe(ToolWords& words, const CarryMeasurement& m)
{
    words.title = tr("Measure what is carried by");
    words.intro = tr("Handles, a yoke or a bar weigh something themselves, and it is carried too. Look at welds and collars.");
    words.drawing = m.sort == CarrySort::Handles || m.sort == CarrySort::OneHandle ? QStringLiteral("handles") : QStringLiteral("yoke");
}

void describe(ToolWords& words, const BellMeasurement&)
{
    words.title = tr("Measure a kettlebell or dumbbell");
    words.intro = tr("The right mass can be the wrong thing in the hand: whether it sits is tried, not worked out.");
    words.drawing = QStringLiteral("bell");
    words.note = tr("Warn of, in words");
}

template <typename Other>
void describe(ToolWords&, const Other&)
{
}

}

int wayOf(const Measured& measured)
{
    return std::visit([](const auto& m) {
        if constexpr (HasWays<std::decay_t<decltype(m)>>)
            return waysOf(m).placeOf(m.by);
        else
            return -1;
    }, measured);
}

void setWay(Measured& measured, int way)
{
    std::visit([way](auto& m) {
        if constexpr (HasWays<std::decay_t<decltype(m)>>)
            if (const auto all = waysOf(m); all.has(way))
                m.by = all.ways[static_cast<std::size_t>(way)];
    }, measured);
}

ToolWords wordsOf(const Measured& measured)
{
    ToolWords words;
    std::visit([&words](const auto& m) { describe(words, m); }, measured);
    if (!words.choices.isEmpty())
        words.choiceLabel = tr("Its mass");
    words.more = moreOf(measured);
    return words;
}

QString nameOf(const Measured& measured)
{
    const QString what = implementtexts::named(measured);
    const ImplementMass found = implementMass(measured);
    return found.mass ? tr("%1, %2").arg(what, say::massWithUnit(kilograms(std::round(inKilograms(found.mass->value))))) : what;
}

WholeMass* scaleOf(Measured& measured)
{
    const auto numbers = numbersOf(measured);
    if (std::none_of(numbers.begin(), numbers.end(), [](const Number& number) { return number.key == QLatin1String("step"); }))
        return nullptr;
    return std::visit([](auto& m) -> WholeMass* {
        if constexpr (requires { m.whole; })
            return &m.whole;
        else
            return nullptr;
    }, measured);
}

}
