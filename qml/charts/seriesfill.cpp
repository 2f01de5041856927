// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/charts/seriesfill.h"

#include <algorithm>
#include <cmath>

namespace {

QPointF at(const QPointF &a, const QPointF &b, qreal y)
{
    return {a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()), y};
}

}

void SeriesFill::replace(QXYSeries *series, const QList<QPointF> &points, qreal from, qreal to) const
{
    if (!series)
        return;
    QList<QPointF> kept;
    kept.reserve(points.size() + 2);
    const QPointF *before = nullptr;
    for (const QPointF &point : points) {
        if (!std::isfinite(point.x()) || !std::isfinite(point.y()))
            continue;
        if (before) {
            QList<qreal> crossed;
            for (const qreal edge : {from, to})
                if ((before->y() < edge && edge < point.y()) || (point.y() < edge && edge < before->y()))
                    crossed.append(edge);
            if (point.y() < before->y())
                std::reverse(crossed.begin(), crossed.end());
            for (const qreal edge : crossed)
                kept.append(at(*before, point, edge));
        }
        if (from <= point.y() && point.y() <= to)
            kept.append(point);
        before = &point;
    }
    series->replace(kept);
}

QList<QPointF> SeriesFill::lesser(const QList<QPointF> &points, const QList<QPointF> &other) const
{
    QList<QPointF> made = points;
    for (qsizetype i = 0; i < std::min(points.size(), other.size()); ++i)
        made[i].setX(std::min(points[i].x(), other[i].x()));
    return made;
}
