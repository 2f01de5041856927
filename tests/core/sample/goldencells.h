// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFile>
#include <QStringList>

#include <vector>

/// The lines of a file of golden numbers, cell by cell, without its head; none where it cannot be read.
inline std::vector<QStringList> goldenCells(const QString& path)
{
    std::vector<QStringList> lines;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return lines;
    file.readLine();
    while (!file.atEnd())
        lines.push_back(QString::fromUtf8(file.readLine()).trimmed().split(QLatin1Char(',')));
    return lines;
}
