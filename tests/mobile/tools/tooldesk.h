// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/desk.h"
#include "tests/core/work/samples.h"

/// A venue with a scale that is 0.2 kg out, a bar, a pair of twenties, straps and a rack.
namespace tooldesk {

using namespace steelyard;

inline std::vector<KitItem> kit()
{
    const ScaleMeasurement scale{kilograms(0.1), kilograms(0.1), {{kilograms(20), kilograms(20.3)}}};
    return {samples::item(1, "chains", samples::weighed()),
            samples::item(2, "scale", scale, false),
            samples::item(3, "old bar", IronMeasurement{IronSort::Bar, kilograms(20), kilograms(20.3), kilograms(0.1), kilograms(0.2), 1}, false),
            samples::item(4, "twenties", IronMeasurement{IronSort::Plates, kilograms(20), kilograms(40.6), kilograms(0.1), {}, 2}, false),
            samples::item(5, "straps", LeadMeasurement{metres(0.62), kilograms(0.35)}),
            samples::item(6, "rack", RackMeasurement{metres(0.415), metres(0.05), 28, {metres(0.06), metres(2.14)}}, false),
            samples::item(7, "bands", samples::band())};
}

}
