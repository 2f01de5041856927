// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/implementform.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <cmath>

using namespace steelyard;

namespace implementform {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("implementform", text); }

constexpr double dryIndoors = 12, dryUnderRoof = 18, softwood = 0.40, hardwood = 0.60;

/// What stones are made of, as ranges of handbooks (from memory); concrete by EN 1991-1-1, Annex A (from memory).
constexpr std::array stones{DensityRange{2600, 2800}, DensityRange{2300, 2700}, DensityRange{2100, 2500}, DensityRange{2300, 2400}};

int placeOf(const std::optional<double>& value, std::initializer_list<double> choices)
{
    int place = 0;
    for (const double choice : choices) {
        if (value && std::abs(*value - choice) < 1e-9)
            return place;
        ++place;
    }
    return -1;
}

std::vector<AskedRow> of(const TyreMeasurement& m)
{
    if (m.by == TyreMeasuring::Unknown)
        return {};
    return {{QStringLiteral("drained"), tr("Water in it"), {tr("drained, none left"), tr("not looked yet")}, m.drained ? 0 : 1}};
}

std::vector<AskedRow> of(const LogMeasurement& m)
{
    if (m.by != LogMeasuring::Size)
        return {};
    return {{QStringLiteral("girths"), tr("The tape was laid"), {tr("across its ends"), tr("round it")}, m.girths ? 1 : 0},
            {QStringLiteral("wood"), tr("Wood"), {tr("spruce, fir, pine"), tr("oak, beech, ash")}, placeOf(m.gravityRatio, {softwood, hardwood})},
            {QStringLiteral("dry"), tr("It has lain"), {tr("indoors"), tr("under a roof")}, placeOf(m.moisturePercent, {dryIndoors, dryUnderRoof})}};
}

std::vector<AskedRow> of(const StoneMeasurement& m)
{
    if (m.by != StoneMeasuring::Ball)
        return {};
    const auto at = m.density ? std::find(stones.begin(), stones.end(), *m.density) : stones.end();
    return {{QStringLiteral("girth"), tr("The tape was laid"), {tr("across it"), tr("round it")}, m.girth ? 1 : 0},
            {QStringLiteral("stone"), tr("Made of"), {tr("granite"), tr("limestone"), tr("sandstone"), tr("concrete")}, at == stones.end() ? -1 : static_cast<int>(at - stones.begin())}};
}

std::vector<AskedRow> of(const KegMeasurement& m)
{
    std::vector<AskedRow> all{{QStringLiteral("sort"), tr("It is"), {tr("a keg"), tr("a sandbag")}, static_cast<int>(m.sort)}};
    if (m.by != KegMeasuring::Unknown && m.by != KegMeasuring::Whole)
        all.push_back({QStringLiteral("filling"), tr("Filled with"), {tr("water"), tr("dry sand"), tr("wet sand"), tr("lead shot"), tr("rubber crumb")}, m.filling ? static_cast<int>(*m.filling) : -1});
    if (m.sort == KegSort::Keg)
        all.push_back({QStringLiteral("pressure"), tr("Gas in it"), {tr("nobody knows"), tr("it holds gas"), tr("let off by whoever may")}, static_cast<int>(m.pressure)});
    return all;
}

std::vector<AskedRow> of(const CarryMeasurement& m)
{
    return {{QStringLiteral("sort"), tr("It is"), {tr("a pair of handles"), tr("one handle"), tr("a hex bar"), tr("a yoke"), tr("a frame")}, static_cast<int>(m.sort)}};
}

std::vector<AskedRow> of(const BellMeasurement& m)
{
    const QStringList fits{tr("not tried"), tr("it fits"), tr("it does not fit")};
    std::vector<AskedRow> all{{QStringLiteral("sort"), tr("It is"), {tr("a kettlebell"), tr("a dumbbell")}, static_cast<int>(m.sort)}};
    all.push_back({QStringLiteral("one"), tr("Tried with one hand"), fits, static_cast<int>(m.oneHand)});
    if (m.sort == BellSort::Kettlebell)
        all.push_back({QStringLiteral("two"), tr("Tried with two, little fingers on the horns"), fits, static_cast<int>(m.twoHands)});
    return all;
}

template <typename Other>
std::vector<AskedRow> of(const Other&)
{
    return {};
}

template <typename Choice>
void choose(Choice& now, int index, Choice last)
{
    if (index >= 0 && index <= static_cast<int>(last))
        now = static_cast<Choice>(index);
}

void set(std::optional<double>& now, int index, std::initializer_list<double> choices)
{
    if (index >= 0 && static_cast<std::size_t>(index) < choices.size())
        now = *(choices.begin() + index);
}

void take(TyreMeasurement& m, const QString& key, int index)
{
    if (key == QLatin1String("drained"))
        m.drained = index == 0;
}

void take(LogMeasurement& m, const QString& key, int index)
{
    if (key == QLatin1String("girths"))
        m.girths = index == 1;
    else if (key == QLatin1String("wood"))
        set(m.gravityRatio, index, {softwood, hardwood});
    else if (key == QLatin1String("dry"))
        set(m.moisturePercent, index, {dryIndoors, dryUnderRoof});
}

void take(StoneMeasurement& m, const QString& key, int index)
{
    if (key == QLatin1String("girth"))
        m.girth = index == 1;
    else if (key == QLatin1String("stone") && index >= 0 && static_cast<std::size_t>(index) < stones.size())
        m.density = stones[static_cast<std::size_t>(index)];
}

void take(KegMeasurement& m, const QString& key, int index)
{
    if (key == QLatin1String("sort"))
        choose(m.sort, index, KegSort::Sandbag);
    else if (key == QLatin1String("pressure"))
        choose(m.pressure, index, KegPressure::Released);
    else if (key == QLatin1String("filling") && index >= 0 && index <= static_cast<int>(Filling::RubberCrumb))
        m.filling = static_cast<Filling>(index);
    // a bag holds no gas, and does not stand like a barrel
    if (m.sort == KegSort::Sandbag && (m.by == KegMeasuring::Standing || m.by == KegMeasuring::Lying))
        m.by = KegMeasuring::Litres;
}

void take(CarryMeasurement& m, const QString& key, int index)
{
    if (key == QLatin1String("sort"))
        choose(m.sort, index, CarrySort::Frame);
}

void take(BellMeasurement& m, const QString& key, int index)
{
    if (key == QLatin1String("sort"))
        choose(m.sort, index, BellSort::Dumbbell);
    else if (key == QLatin1String("one"))
        choose(m.oneHand, index, HandFit::DoesNotFit);
    else if (key == QLatin1String("two"))
        choose(m.twoHands, index, HandFit::DoesNotFit);
}

template <typename Other>
void take(Other&, const QString&, int)
{
}

}

std::vector<AskedRow> askedOf(const Measured& measured)
{
    return std::visit([](const auto& m) { return of(m); }, measured);
}

void answer(Measured& measured, const QString& key, int index)
{
    for (const AskedRow& row : askedOf(measured))
        if (row.key == key && index >= 0 && index < row.options.size())
            std::visit([&](auto& m) { take(m, key, index); }, measured);
}

}
