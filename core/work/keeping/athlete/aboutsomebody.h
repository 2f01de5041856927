// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/seasonkeeping.h"
#include "core/work/records/codec.h"

namespace steelyard {

/// Whether more than name, squad and loads may be kept about an athlete today; AthleteUnknown where there is none of that id.
[[nodiscard]] std::optional<Unfit> unfitForMore(const SeasonKeeping& keeping, const RecordId& athlete);

/// Adds a record about an athlete under a new id, unless something stands against it; content that is none could not be written.
void addAbout(SeasonKeeping& keeping, Deed deed, Place place, std::chrono::sys_days day, const Content& content,
              const std::optional<Unfit>& unfit, const WhenTold& told);
/// Says what such a record should have said, likewise.
void putRightAbout(SeasonKeeping& keeping, const Place& place, std::chrono::sys_days day, const Content& content,
                   const std::optional<Unfit>& unfit, const WhenTold& told);

/// Who gave a clearance or set a day status, each once, the last day's first.
[[nodiscard]] std::vector<std::string> namedAlready(const SeasonBook& book);

/// Whether the one who says something is fit to be written down: named, and in a sample one who is named there already, since nobody
/// real is to come into it.
[[nodiscard]] std::optional<Unfit> unfitWho(const SeasonKeeping& keeping, const std::string& who);
/// The same of who says so, on a day that does not lie ahead.
[[nodiscard]] std::optional<Unfit> unfitSaidSo(const SeasonKeeping& keeping, const SaidSo& by);

}
