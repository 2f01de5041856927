// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/season/athlete.h"
#endif

#include <QByteArray>

#include <map>

/** An athlete as typed so far, with the body size to be added. */
struct AthleteForm {
    steelyard::Athlete athlete;
    std::optional<steelyard::Entered<steelyard::Mass>> mass;
    std::optional<steelyard::Entered<steelyard::Length>> height;
    bool operator==(const AthleteForm&) const = default;
};

/** A form as bytes of an own version, and back; nothing where another version, or something else, wrote them. Bar marks stay out. */
[[nodiscard]] QByteArray bytesOf(const AthleteForm& form);
[[nodiscard]] std::optional<AthleteForm> formIn(const QByteArray& bytes);
