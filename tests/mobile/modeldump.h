// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>
#include <QObject>
#include <QString>

struct SeasonSetup;

/// What every view-model and form shows of a set-up, as JSON to compare: numbers to nine digits, long lines of points
/// thinned to five.
namespace modeldump {

[[nodiscard]] QJsonObject of(const SeasonSetup& setup);
/// Where two dumps differ first, as a path and both values; empty when they do not.
[[nodiscard]] QString firstDifference(const QJsonValue& actual, const QJsonValue& expected, const QString& path = {});

}
