// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vault/access.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/** One state of one page: whose set-up lies on the desk, and what a hand does from the first page on. */
struct Stop {
    QString name;
    QString season;      ///< a file of the sample season
    QString page;        ///< the page that the deeds end on
    QStringList deeds;   ///< see Hand::perform
    bool everywhere = false; ///< also in dark, in sun and with the largest text
    int people = 0;          ///< in the squad
    bool lookback = false;   ///< something was put right, measured again, and said differently by two devices
    bool sample = false;     ///< the sample season's vault, and its people, kit and set-ups
    bool news = false;       ///< the vault opened with something unusual about it
    /// Before the door: how the vault stands, and what it answers to a secret.
    std::optional<steelyard::vault::Look> look = std::nullopt;
    std::optional<steelyard::vault::Code> answer = std::nullopt;
};

/// Every page in its main states, in the order of their pictures.
[[nodiscard]] std::vector<Stop> itinerary();
