// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/charts/linereading.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace {

template<typename Coordinate>
QList<qreal> ends(const QList<QPointF> &points, Coordinate of)
{
    if (points.isEmpty())
        return {};
    const auto [least, greatest] = std::minmax_element(points.begin(), points.end(),
                                                       [of](const QPointF &a, const QPointF &b) { return of(a) < of(b); });
    return {of(*least), of(*greatest)};
}

}

QList<QPointF> LineReading::finite(const QList<QPointF> &points) const
{
    QList<QPointF> kept;
    kept.reserve(points.size());
    std::copy_if(points.begin(), points.end(), std::back_inserter(kept),
                 [](const QPointF &point) { return std::isfinite(point.x()) && std::isfinite(point.y()); });
    return kept;
}

QList<qreal> LineReading::pulls(const QList<QPointF> &points) const
{
    return ends(points, [](const QPointF &point) { return point.x(); });
}

QList<qreal> LineReading::heights(const QList<QPointF> &points) const
{
    return ends(points, [](const QPointF &point) { return point.y(); });
}

qreal LineReading::at(const QList<QPointF> &line, qreal height) const
{
    const qreal close = 1e-9; // a nanometre
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QPointF &a = line[i - 1], &b = line[i];
        if (std::min(a.y(), b.y()) <= height + close && height - close <= std::max(a.y(), b.y()))
            return a.y() == b.y() ? b.x() : a.x() + (b.x() - a.x()) * std::clamp((height - a.y()) / (b.y() - a.y()), 0.0, 1.0);
    }
    return line.size() == 1 && line[0].y() == height ? line[0].x() : qQNaN();
}

bool LineReading::parted(const QList<QPointF> &low, const QList<QPointF> &high, qreal least) const
{
    for (qsizetype i = 0; i < std::min(low.size(), high.size()); ++i)
        if (std::abs(high[i].x() - low[i].x()) > least)
            return true;
    return false;
}

QList<QPointF> LineReading::onAxis(const QList<QPointF> &points) const
{
    QList<QPointF> made = points;
    for (QPointF &point : made)
        point.setX(0);
    return made;
}
