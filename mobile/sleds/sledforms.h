// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/season/settings.h"
#include "core/season/sledrecords.h"
#endif

#include <QByteArray>

/** One pull as it is typed: what lay on the sled, and what the scale in its strap showed. */
struct PullTyped {
    std::optional<steelyard::Entered<steelyard::Mass>> added, pull;
    bool operator==(const PullTyped&) const = default;
};

/** How a sled slides on a surface, as it is typed. */
struct SurfaceForm {
    std::string name;
    std::vector<PullTyped> pulls;
    std::optional<steelyard::Entered<steelyard::Length>> belt;
    std::optional<steelyard::Entered<steelyard::Mass>> step, accuracy;
    bool operator==(const SurfaceForm&) const = default;
};

/** A timed run with a sled, as it is typed. */
struct RunForm {
    std::string surface;
    std::optional<steelyard::Entered<steelyard::Mass>> added;
    std::optional<steelyard::Entered<steelyard::Length>> distance, belt;
    std::optional<steelyard::Entered<std::chrono::milliseconds>> time;
    bool operator==(const RunForm&) const = default;
};

namespace sledforms {

/// As bytes of an own version, and back; nothing where another version, or something else, wrote them.
[[nodiscard]] QByteArray bytesOf(const SurfaceForm& form, const steelyard::VaultSettings& units);
[[nodiscard]] QByteArray bytesOf(const RunForm& form, const steelyard::VaultSettings& units);
[[nodiscard]] std::optional<SurfaceForm> surfaceIn(const QByteArray& bytes);
[[nodiscard]] std::optional<RunForm> runIn(const QByteArray& bytes);

/// As records, as far as they are typed; pulls of which only half is typed are left out.
[[nodiscard]] steelyard::SledSurface record(const SurfaceForm& form);
[[nodiscard]] std::optional<steelyard::SledRunTimed> record(const RunForm& form);

}
