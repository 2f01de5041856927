// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/marks.h"
#include "core/season/setuprecord.h"
#include "tests/core/numberedids.h"

#include <initializer_list>
#include <string>
#include <utility>
#include <variant>

/// Kit, marks and bars that the tests of `core/work` share.
namespace samples {

using namespace steelyard;
using numberedids::counted;
using numberedids::numbered;

/// 5.7 kg a metre: 8.55 kg on a scale in steps of 0.1 kg.
inline ChainMeasurement weighed()
{
    ChainMeasurement m;
    m.length = metres(1.5);
    m.mass = kilograms(8.55);
    m.scaleStep = kilograms(0.1);
    return m;
}

inline ChainMeasurement gauged()
{
    ChainMeasurement m;
    m.by = ChainMeasuring::Gauged;
    m.length = metres(1.8);
    m.wire = metres(0.016);
    m.pitch = metres(0.045);
    m.innerWidth = metres(0.0216);
    return m;
}

inline BandMeasurement band(double rest, std::initializer_list<std::pair<double, double>> massesAndLengths)
{
    BandMeasurement m;
    m.rest = metres(rest);
    for (const auto& [kg, length] : massesAndLengths)
        m.hangings.push_back({kilograms(kg), metres(length), false});
    m.model = BandModel::Rubber;
    return m;
}

/// One metre at rest, known to 2.0475 m.
inline BandMeasurement band()
{
    return band(1.0, {{5, 1.15}, {7.5, 1.245}, {10, 1.37}, {12.5, 1.525}, {15, 1.72}, {17.5, 1.95}});
}

/// A bench aid that carries 62.5 kg at the chest, and goes slack 31 cm above it.
inline AidMeasurement aid()
{
    AidMeasurement m;
    for (const auto& [kg, height] : {std::pair{62.5, 0.0}, {41.0, 0.05}, {22.5, 0.11}, {8.5, 0.19}, {0.0, 0.31}})
        m.readings.push_back({kilograms(kg), metres(height), false});
    return m;
}

inline KitItem item(const RecordId& id, std::string name, Measured measurement, bool pair = true)
{
    return {id, std::move(name), pair, std::move(measurement)};
}

inline KitItem item(std::uint64_t number, std::string name, Measured measurement, bool pair = true)
{
    return item(numbered(number), std::move(name), std::move(measurement), pair);
}

inline HungRecord hung(std::uint64_t number, Placing placing, HungOn on = HungOn::BothSides)
{
    return {numbered(number), on, std::move(placing)};
}

inline BandPlacing bandAt(double anchorHeight, bool above = false)
{
    BandPlacing placing;
    placing.anchorHeight = metres(anchorHeight);
    placing.above = above;
    return placing;
}

inline ChainPlacing chainOn(double lead, ChainHangingWay way = ChainHangingWay::Straight)
{
    ChainPlacing placing;
    placing.lead = metres(lead);
    placing.way = way;
    return placing;
}

inline BarMarks marks(double bottom, double top)
{
    BarMarks m;
    m.bottom = metres(bottom);
    m.top = metres(top);
    return m;
}

/// A 20 kg bar with exact plates of the usual stock.
inline BarRecord bar(double wantedKg)
{
    BarRecord record;
    record.stock = usualStock();
    record.trust = PlateTrust::AsMarked;
    record.wanted = kilograms(wantedKg);
    return record;
}

inline SetupRecord setup(double wantedKg, std::vector<HungRecord> hung = {})
{
    return {bar(wantedKg), std::move(hung)};
}

}
