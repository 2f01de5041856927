// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

#include <QDateTime>
#include <QString>

/** What was measured, what it said before it was put right, and when somebody said so. */
namespace saidtexts {

/// "72.4 kg · 178 cm".
[[nodiscard]] QString bodySize(const steelyard::BodySize& size);
/// "8.55 kg and 150 cm, weighed", "6 hangings, to 195 cm".
[[nodiscard]] QString measured(const steelyard::Measured& measured);
/// "today", "12 days old", "7 months old".
[[nodiscard]] QString age(std::chrono::sys_days day, std::chrono::sys_days today);
/// "72.4 kg at first; put right on 5 Nov"; empty where it stands as it was kept first.
[[nodiscard]] QString bodySizeBefore(const BookService& book, const steelyard::RecordId& athlete, const steelyard::BodySize& size);
[[nodiscard]] QString measurementBefore(const BookService& book, const steelyard::MeasurementRecord& record);
/// The moment of an entry at the place where it was kept.
[[nodiscard]] QDateTime moment(const BookService& book, const steelyard::journal::Held& entry);
/// "5 Nov 2026, 14:05, on this device".
[[nodiscard]] QString whenAndWhere(BookService& book, const steelyard::journal::Held& entry);

}
