// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/charts/seriesfill.h"

#include <QCoreApplication>
#include <QLibrary>

#include <algorithm>
#include <cmath>

namespace {

using ReplacePoints = void (*)(QObject *, const QList<QPointF> &);

/// Loaded with the first line, from beside the program: a program that were linked to Qt Charts would load it before its first page.
ReplacePoints replacePoints()
{
    static const auto found = reinterpret_cast<ReplacePoints>(
        QLibrary::resolve(QCoreApplication::applicationDirPath() + QStringLiteral("/libsteelyard_seriespoints"), "steelyardReplacePoints"));
    if (!found)
        qFatal("libsteelyard_seriespoints is not beside the program");
    return found;
}

QPointF at(const QPointF &a, const QPointF &b, qreal y)
{
    return {a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()), y};
}

}

void SeriesFill::replace(QObject *series, const QList<QPointF> &points, qreal from, qreal to) const
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
    replacePoints()(series, kept);
}

QList<QPointF> SeriesFill::lesser(const QList<QPointF> &points, const QList<QPointF> &other) const
{
    QList<QPointF> made = points;
    for (qsizetype i = 0; i < std::min(points.size(), other.size()); ++i)
        made[i].setX(std::min(points[i].x(), other[i].x()));
    return made;
}
