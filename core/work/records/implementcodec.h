// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/sledrecords.h"
#include "core/work/records/codec.h"

namespace steelyard {

/// How a thing was measured, under the number of its kind's key.
struct KeyedContent {
    std::uint32_t keyNumber = 0;
    Content content;
};

/// What came after chains, bands and tools, each with the number of its key in a measurement; see codec.h for how values are written.
///   measurement     10 tyre, 11 log, 12 stone, 13 keg or bag, 14 sled, 15 what is carried by, 16 kettlebell or dumbbell
///   whole           1 read · 2 scale step · 3 accuracy of the scale · 4 marked
///   both ends       1 first · 2 second · 3 span · 4 first inset · 5 second inset
///   tyre            1 by (1 unknown, 2 edge, 3 whole) · 2 true when drained · 3 list of edges (1 shown · 2 lift point · 3 far contact)
///                   4 whole · 5 diameter · 6 width
///   log             1 by (1 unknown, 2 size, 3 ends, 4 whole) · 2 true when girths · 3 length · 4 first across · 5 second across
///                   6 specific gravity, in thousandths · 7 moisture, in tenths of a percent · 8 both ends · 9 whole
///   density         1 least · 2 most, in kg/m³
///   stone           1 by (1 unknown, 2 ball, 3 whole) · 2 true when a girth · 3 across · 4 density · 5 whole
///   keg             1 sort (1 keg, 2 sandbag) · 2 by (1 unknown, 2 litres, 3 standing, 4 lying, 5 whole) · 3 empty
///                   4 filling (1 water, 2 dry sand, 3 wet sand, 4 lead shot, 5 rubber crumb) · 5 density · 6 content · 7 capacity
///                   8 across · 9 length · 10 depth · 11 whole · 12 pressure (1 not known, 2 holding, 3 released)
///   sled            1 whole · 2 strap · 3 hook
///   carried by      1 sort (1 handles, 2 one handle, 3 hex bar, 4 yoke, 5 frame) · 2 whole
///   bell            1 sort (1 kettlebell, 2 dumbbell) · 2 whole · 3 list of settings (1 mass) · 4 handle · 5 window
///                   6 one hand, 7 two hands (1 not tried, 2 fits, 3 does not) · 8 note
///   surface         1 venue · 2 sled · 3 name · 4 list of readings (1 added · 2 pull, as a mass) · 5 hip · 6 scale step
///                   7 accuracy of the scale; the day is the entry's
///   timed run       1 venue · 2 sled · 3 surface · 4 added · 5 distance · 6 time · 7 way (1 towed, 2 pushed) · 8 hip; the day is the entry's
///   cap             1 lift that it goes by · 2 percent
///   lane            its length
[[nodiscard]] KeyedContent keyed(const TyreMeasurement& tyre, const WrittenIn& in);
[[nodiscard]] KeyedContent keyed(const LogMeasurement& log, const WrittenIn& in);
[[nodiscard]] KeyedContent keyed(const StoneMeasurement& stone, const WrittenIn& in);
[[nodiscard]] KeyedContent keyed(const KegMeasurement& keg, const WrittenIn& in);
[[nodiscard]] KeyedContent keyed(const SledMeasurement& sled, const WrittenIn& in);
[[nodiscard]] KeyedContent keyed(const CarryMeasurement& carry, const WrittenIn& in);
[[nodiscard]] KeyedContent keyed(const BellMeasurement& bell, const WrittenIn& in);

/// Whether one of these stands in a measurement, and it; what cannot be read makes all of it unread.
[[nodiscard]] bool hasImplement(const RecordReader& reader);
[[nodiscard]] Measured implementIn(RecordReader& reader);

/// What was weighed by both ends, of a log or of a bar.
[[nodiscard]] Content bothEndsContent(const BothEnds& ends, const WrittenIn& in);
[[nodiscard]] std::optional<BothEnds> bothEndsIn(RecordReader reader);

/// Records of sleds, what a load is held against, and the lane of a venue, as content and back.
[[nodiscard]] Content contentOf(const SledSurface& surface, const WrittenIn& in);
[[nodiscard]] Content contentOf(const SledRunTimed& run, const WrittenIn& in);
[[nodiscard]] Content contentOf(const CapRule& rule);
[[nodiscard]] Content laneContent(const Entered<Length>& lane, const WrittenIn& in);
[[nodiscard]] std::optional<SledSurface> sledSurfaceIn(journal::ByteView content);
[[nodiscard]] std::optional<SledRunTimed> sledRunIn(journal::ByteView content);
[[nodiscard]] std::optional<Entered<Length>> laneIn(journal::ByteView content);
/// Nothing too for a share that a cap cannot have.
[[nodiscard]] std::optional<CapRule> capRuleIn(journal::ByteView content);

}
