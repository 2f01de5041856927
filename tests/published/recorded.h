// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtTest>

#include "tests/published/rows.h"

#include <cmath>

namespace steelyard::published {

/// Lines of a recorded opinion without its heading: thing, quantity, value, and how near the engine is to come as a share.
[[nodiscard]] inline QList<QStringList> recordedLines(const char* file)
{
    auto lines = csvLines(QStringLiteral("second_opinion/") + file);
    lines.takeFirst();
    return lines;
}

/// The columns of a test's data for recorded opinions.
inline void addRecordedColumns()
{
    QTest::addColumn<QString>("name");
    QTest::addColumn<double>("expected");
    QTest::addColumn<double>("share");
}

/// Its rows: every line of a file, with who said it before the names; a share for all where the lines have none.
inline void addRecordedRows(const char* file, const QString& whose = {}, double shareOfAll = 0)
{
    for (const QStringList& line : recordedLines(file))
        QTest::newRow(qPrintable(whose + line[0] + ' ' + line[1])) << line[0] + '/' + line[1] << line[2].toDouble() << (line.size() > 3 ? line[3].toDouble() : shareOfAll);
}

/// Empty when the engine said the same to that share.
[[nodiscard]] inline QString recordedVerdict(const QMap<QString, double>& said)
{
    QFETCH(QString, name);
    QFETCH(double, expected);
    QFETCH(double, share);
    if (!said.contains(name))
        return name + QStringLiteral(" was not said");
    return std::abs(said[name] - expected) <= share * std::abs(expected) ? QString() : QStringLiteral("%1 instead of %2").arg(said[name], 0, 'g', 12).arg(expected, 0, 'g', 12);
}

}
