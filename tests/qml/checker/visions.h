// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QImage>
#include <QString>

/// How a picture looks in grey, and to those who lack one of the three kinds of cone: Machado, Oliveira and Fernandes 2009,
/// "A Physiologically-based Model for Simulation of Color Vision Deficiency", severity 1.0, on linear light (matrices from memory; each
/// row adds up to 1, so that greys stay as they are).
namespace visions {

enum class Kind { Grey, Protan, Deutan, Tritan };
constexpr Kind all[] = {Kind::Grey, Kind::Protan, Kind::Deutan, Kind::Tritan};

[[nodiscard]] QString name(Kind kind);
[[nodiscard]] QRgb seen(QRgb colour, Kind kind);
[[nodiscard]] QImage seen(const QImage &picture, Kind kind);

/// Difference of two colours as CIE 1976 counts it (ΔE of L*a*b*, white D65); some 2 is just seen side by side.
[[nodiscard]] double difference(QRgb a, QRgb b);

/// Where in a picture edges stand out and do not any more as it is seen: neighbours that differ by 20 and more, and there by less than 6.
/// Counted are the squares of 32 pixels in which 12 pixels of edges and three tenths of all are lost: a line in one colour that crosses
/// a texture as light as itself is seen all along it (bounds are ours).
[[nodiscard]] int edgesLost(const QImage &picture, Kind kind);

}
