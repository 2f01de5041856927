// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/visions.h"
#include <QHash>
#include <array>
#include <cmath>

namespace visions {

namespace {

using Light = std::array<double, 3>;
using Rows = std::array<Light, 3>;

constexpr Rows protan{{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Rows deutan{{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr Rows tritan{{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};
// luminance of sRGB primaries: IEC 61966-2-1
constexpr Light weights{0.2126, 0.7152, 0.0722};
constexpr Rows grey{weights, weights, weights};
constexpr Rows toXyz{{{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};
constexpr Light whiteD65{0.9505, 1.0, 1.089};

double linear(int channel)
{
    const double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

int encoded(double light)
{
    const double l = qBound(0.0, light, 1.0);
    return qRound(255 * (l <= 0.0031308 ? 12.92 * l : 1.055 * std::pow(l, 1 / 2.4) - 0.055));
}

Light times(const Rows &rows, const Light &light)
{
    Light out{};
    for (std::size_t i = 0; i < 3; ++i)
        out[i] = rows[i][0] * light[0] + rows[i][1] * light[1] + rows[i][2] * light[2];
    return out;
}

Light lab(QRgb colour)
{
    const Light xyz = times(toXyz, {linear(qRed(colour)), linear(qGreen(colour)), linear(qBlue(colour))});
    const auto f = [](double t) { return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116; };
    const double x = f(xyz[0] / whiteD65[0]), y = f(xyz[1] / whiteD65[1]), z = f(xyz[2] / whiteD65[2]);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double apart(const Light &a, const Light &b)
{
    return std::hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

}

QString name(Kind kind)
{
    switch (kind) {
    case Kind::Grey: return QStringLiteral("grey");
    case Kind::Protan: return QStringLiteral("without red cones");
    case Kind::Deutan: return QStringLiteral("without green cones");
    case Kind::Tritan: break;
    }
    return QStringLiteral("without blue cones");
}

QRgb seen(QRgb colour, Kind kind)
{
    const Rows &rows = kind == Kind::Grey ? grey : kind == Kind::Protan ? protan : kind == Kind::Deutan ? deutan : tritan;
    const Light out = times(rows, {linear(qRed(colour)), linear(qGreen(colour)), linear(qBlue(colour))});
    return qRgb(encoded(out[0]), encoded(out[1]), encoded(out[2]));
}

QImage seen(const QImage &picture, Kind kind)
{
    QImage out = picture.convertToFormat(QImage::Format_RGB32);
    QHash<QRgb, QRgb> known;
    for (int y = 0; y < out.height(); ++y) {
        auto *line = reinterpret_cast<QRgb *>(out.scanLine(y));
        for (int x = 0; x < out.width(); ++x) {
            const auto at = known.constFind(line[x]);
            line[x] = at != known.cend() ? *at : known.insert(line[x], seen(line[x], kind)).value();
        }
    }
    return out;
}

double difference(QRgb a, QRgb b)
{
    return apart(lab(a), lab(b));
}

int edgesLost(const QImage &picture, Kind kind)
{
    struct Known {
        Light now, then;
    };
    QHash<QRgb, Known> known;
    const auto look = [&](QRgb colour) -> const Known & {
        auto at = known.find(colour);
        if (at == known.end())
            at = known.insert(colour, {lab(colour), lab(seen(colour, kind))});
        return *at;
    };
    constexpr double standsOut = 20, isSeen = 6;
    struct Square {
        int all = 0, lost = 0;
    };
    constexpr int side = 32, speck = 12;
    constexpr double most = 0.3;
    const int across = picture.width() / side + 1;
    QList<Square> squares(across * (picture.height() / side + 1));
    const auto compare = [&](int x, int y, QRgb a, QRgb b) {
        if (a == b)
            return;
        const Known one = look(a), other = look(b);
        if (apart(one.now, other.now) < standsOut)
            return;
        Square &here = squares[(y / side) * across + x / side];
        ++here.all;
        here.lost += apart(one.then, other.then) < isSeen ? 1 : 0;
    };
    // two apart, so that a softened edge is one
    constexpr int step = 2;
    for (int y = 0; y + step < picture.height(); ++y)
        for (int x = 0; x + step < picture.width(); ++x) {
            compare(x, y, picture.pixel(x, y), picture.pixel(x + step, y));
            compare(x, y, picture.pixel(x, y), picture.pixel(x, y + step));
        }
    int count = 0;
    for (const Square &here : squares)
        count += here.lost > speck && here.lost > most * here.all ? 1 : 0;
    return count;
}

}
