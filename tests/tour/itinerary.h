// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

/** One state of one page: whose set-up lies on the desk, and what a hand does from the first page on. */
struct Stop {
    QString name;
    QString season;      ///< a file of the sample season
    QString page;        ///< the page that the deeds end on
    QStringList deeds;   ///< see Hand::perform
    bool everywhere = false; ///< also in dark, in sun and with the largest text
};

/// Every page in its main states, in the order of their pictures.
[[nodiscard]] std::vector<Stop> itinerary();
