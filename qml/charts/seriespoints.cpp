// SPDX-License-Identifier: GPL-3.0-or-later
#include <QList>
#include <QPointF>
#include <QtCharts/QXYSeries>

/// The one call of ours into Qt Charts that QML does not have: all points of a series at once.
extern "C" Q_DECL_EXPORT void steelyardReplacePoints(QObject* series, const QList<QPointF>& points)
{
    if (auto* line = qobject_cast<QXYSeries*>(series))
        line->replace(points);
}
