// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/sledrecords.h"
#include "tests/core/work/samples.h"

#include <cmath>

/// Things that lie at a borrowed pitch, each measured in one of its ways.
namespace borrowed {

using namespace steelyard;
using numberedids::numbered;

inline WholeMass onScale(double kg, double step = 0.5, std::optional<double> accuracy = {})
{
    WholeMass whole;
    whole.read = kilograms(kg);
    whole.step = kilograms(step);
    if (accuracy)
        whole.accuracy = kilograms(*accuracy);
    return whole;
}

inline WholeMass marked(double kg)
{
    WholeMass whole;
    whole.marked = kilograms(kg);
    return whole;
}

/// 61.5·(56 + 43)/43 = 141.6 kg by its first edge, 63·(56 + 43.5)/43.5 = 144.1 kg by the other.
inline TyreMeasurement tyre()
{
    TyreMeasurement m;
    m.drained = true;
    m.edges = {{kilograms(61.5), metres(0.56), metres(0.43)}, {kilograms(63), metres(0.56), metres(0.435)}};
    m.whole.step = kilograms(0.5);
    m.whole.accuracy = kilograms(0.4);
    m.diameter = metres(1.18);
    m.width = metres(0.36);
    return m;
}

inline TyreMeasurement unknownTyre()
{
    TyreMeasurement m;
    m.by = TyreMeasuring::Unknown;
    return m;
}

/// A tyre of that mass on a scale, give or take half a kilogram.
inline TyreMeasurement tyreOf(double kg)
{
    TyreMeasurement m = tyre();
    m.by = TyreMeasuring::Whole;
    m.edges.clear();
    m.whole = onScale(kg);
    return m;
}

inline LogMeasurement logByEnds()
{
    LogMeasurement m;
    m.by = LogMeasuring::Ends;
    m.ends = {kilograms(38.5), kilograms(33), metres(1.8), metres(0.06), std::nullopt};
    m.whole.step = kilograms(0.5);
    return m;
}

inline LogMeasurement logBySize()
{
    LogMeasurement m;
    m.length = metres(2);
    m.firstAcross = metres(0.3);
    m.secondAcross = metres(0.26);
    m.gravityRatio = 0.4;
    m.moisturePercent = 12;
    return m;
}

inline StoneMeasurement stone()
{
    StoneMeasurement m;
    m.across = metres(0.41);
    m.density = DensityRange{2600, 2700};
    return m;
}

/// As in the worked example of a lying keg, its pressure let off.
inline KegMeasurement lyingKeg()
{
    KegMeasurement m;
    m.by = KegMeasuring::Lying;
    m.empty = kilograms(12.5);
    m.whole.step = kilograms(0.1);
    m.filling = Filling::Water;
    m.across = metres(0.38);
    m.length = metres(0.5);
    m.depth = metres(0.14);
    m.pressure = KegPressure::Released;
    return m;
}

inline SledMeasurement sled(double kg = 25)
{
    SledMeasurement m;
    m.whole = onScale(kg, 0.2);
    m.strap = metres(3.2);
    m.hook = metres(0.18);
    return m;
}

inline CarryMeasurement handles(double kg = 8.5)
{
    return {CarrySort::Handles, onScale(kg, 0.1)};
}

inline BellMeasurement kettlebell(double kg = 16)
{
    BellMeasurement m;
    m.whole = marked(kg);
    m.oneHand = m.twoHands = HandFit::Fits;
    return m;
}

/// 20 kg lay on it and 60 kg, pulled at 45 % of what it weighs.
inline SledSurface surface(const RecordId& venue, const RecordId& sled, std::string name = "grass, wet", double ratio = 0.45)
{
    SledSurface s;
    s.day = std::chrono::year(2026) / 10 / 12;
    s.venue = venue;
    s.sled = sled;
    s.name = std::move(name);
    for (const double added : {20.0, 60.0})
        s.readings.push_back({kilograms(added), kilograms(ratio * (25 + added))});
    s.scaleStep = kilograms(0.5);
    return s;
}

inline SledRunTimed run(const RecordId& athlete, const RecordId& venue, const RecordId& sled, double added, double metresPerSecond)
{
    SledRunTimed r;
    r.athlete = athlete;
    r.day = std::chrono::year(2026) / 10 / 20;
    r.venue = venue;
    r.sled = sled;
    r.surface = "grass, wet";
    r.added = kilograms(added);
    r.distance = metres(20);
    r.time = std::chrono::milliseconds(std::llround(20'000 / metresPerSecond));
    return r;
}

}
