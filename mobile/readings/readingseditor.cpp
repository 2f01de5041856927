// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/readingseditor.h"

QString ReadingsEditor::addReading()
{
    addEmpty();
    return keyOf(true, count() - 1);
}

void ReadingsEditor::refresh()
{
    if (ready())
        m_readings.setRows(rows());
    ItemEditor::refresh();
}

std::optional<ReadingsEditor::Place> ReadingsEditor::placeOf(const QString& key) const
{
    const QString part = key.section(QLatin1Char(':'), 0, 0);
    bool isNumber = false;
    const int at = key.section(QLatin1Char(':'), 1).toInt(&isNumber);
    if (!isNumber || at < 0 || at >= count() || (part != parts().first && part != parts().second))
        return std::nullopt;
    return Place{part == parts().first, static_cast<std::size_t>(at)};
}

KeepOutcome ReadingsEditor::noSuchEntry()
{
    return {tr("There is no such entry."), {}};
}
