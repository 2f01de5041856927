// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFile>
#include <QStringList>

#include <vector>

/// The cells of a line; those in quotes may hold commas.
inline QStringList goldenCellsOf(const QString& line)
{
    QStringList cells{QString()};
    bool quoted = false;
    for (const QChar c : line) {
        if (c == QLatin1Char('"'))
            quoted = !quoted;
        else if (c == QLatin1Char(',') && !quoted)
            cells << QString();
        else
            cells.back() += c;
    }
    return cells;
}

/// The lines of a file of golden numbers, cell by cell, without its head; none where it cannot be read.
inline std::vector<QStringList> goldenCells(const QString& path)
{
    std::vector<QStringList> lines;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return lines;
    file.readLine();
    while (!file.atEnd())
        lines.push_back(goldenCellsOf(QString::fromUtf8(file.readLine()).trimmed()));
    return lines;
}
