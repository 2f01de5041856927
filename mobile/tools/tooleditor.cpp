// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/tooleditor.h"

#include "mobile/text/sentences.h"

using namespace steelyard;

QString ToolEditor::trouble() const
{
    const auto error = refusalOf(item().measurement);
    if (!error)
        return {};
    return error->code == Refusal::TooFewPoints ? tr("Still to do: read it with a known mass on it.") : sentences::refusal(*error);
}

void ToolEditor::refresh()
{
    m_asked.setRows(askedRows());
    ItemEditor::refresh();
}

void ToolEditor::setMeasured(Measured measured)
{
    KitItem now = item();
    now.measurement = std::move(measured);
    setItem(now);
}

std::optional<std::size_t> ToolEditor::placeIn(const QString& key, const char* stem)
{
    const QString start = QLatin1String(stem) + QLatin1Char(':');
    bool isNumber = false;
    const uint place = key.startsWith(start) ? key.mid(start.size()).toUInt(&isNumber) : 0;
    return isNumber ? std::optional<std::size_t>(place) : std::nullopt;
}

QString ToolEditor::keyAt(const char* stem, std::size_t place)
{
    return QLatin1String(stem) + QLatin1Char(':') + QString::number(place);
}
