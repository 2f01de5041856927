// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/bareditor.h"

#include "core/work/barchanges.h"
#include "core/work/measuredkit.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

using namespace steelyard;

std::vector<FieldSpec> BarEditor::specs() const
{
    if (!ready())
        return {};
    const BarRecord& bar = desk().setup().bar;
    const QString kg = tr("kg");
    const auto& load = desk().answer().load;
    return {
        {QStringLiteral("bar"), tr("Bar"), kg, {2, 2, 0, 60}, inKilograms(bar.bar), !bar.barEntered, tr("its own mass, sleeves and all")},
        {QStringLiteral("collars"), tr("Collars, both"), kg, {2, 2, 0, 20}, inKilograms(bar.collars), false, {}},
        {QStringLiteral("sleeve"), tr("Room on one sleeve"), tr("cm"), {2, 1, 5, 80}, bar.sleeve ? std::optional(inMetres(*bar.sleeve) * 100) : std::nullopt, false, tr("for plates; may be left out")},
        // keyed from elsewhere, no row of this form
        {QStringLiteral("load"), {}, kg, {3, 2, 0, 600}, load ? std::optional(inKilograms(load->total)) : std::nullopt, false, {}},
        {QStringLiteral("newPlate"), {}, kg, {2, 2, 0.1, 60}, std::nullopt, false, {}},
    };
}

KeepOutcome BarEditor::keepNumber(const QString& key, double shown)
{
    BarRecord bar = desk().setup().bar;
    const Mass mass = kilograms(shown);
    if (key == QLatin1String("bar")) {
        bar = withBar(bar, mass);
    } else if (key == QLatin1String("collars")) {
        bar = withCollars(bar, mass);
    } else if (key == QLatin1String("sleeve")) {
        bar.sleeve = metres(shown / 100);
    } else if (key == QLatin1String("newPlate")) {
        bar = withPairMore(bar, mass);
    } else if (key == QLatin1String("load")) {
        const auto loads = loadsOf(bar);
        if (!loads)
            return {sentences::refusal(loads.error()), {}};
        const PlateLoad* below = loads->atOrBelow(mass);
        const PlateLoad* above = loads->atOrAbove(mass);
        if (below != above) {
            KeepOutcome outcome{tr("%1 kg cannot be hung with the plates here.").arg(say::mass(mass)), {}};
            for (const PlateLoad* near : {below, above})
                if (near)
                    outcome.offers.push_back(inKilograms(near->total));
            return outcome;
        }
        bar.wanted = below->total;
    } else {
        return {tr("There is no such entry."), {}};
    }
    desk().setBar(bar);
    return {};
}

bool BarEditor::clearNumber(const QString& key)
{
    if (key != QLatin1String("sleeve"))
        return false;
    BarRecord bar = desk().setup().bar;
    bar.sleeve.reset();
    desk().setBar(bar);
    return true;
}

bool BarEditor::asMarked() const
{
    return ready() && desk().setup().bar.trust == PlateTrust::AsMarked;
}

void BarEditor::setAsMarked(bool asMarked)
{
    BarRecord bar = desk().setup().bar;
    bar.trust = asMarked ? PlateTrust::AsMarked : PlateTrust::Unweighed;
    desk().setBar(bar);
}

void BarEditor::stepPairs(int row, bool up)
{
    if (row >= 0)
        desk().setBar(withPairsStepped(desk().setup().bar, static_cast<std::size_t>(row), up));
}

void BarEditor::stepLoad(bool up)
{
    desk().stepLoad(up);
}

void BarEditor::refresh()
{
    if (ready()) {
        std::vector<StockRow> rows;
        for (const PlatesHere& p : desk().setup().bar.stock)
            rows.push_back({tr("%1 kg").arg(say::mass(p.type.mass)), tr("%1 plates").arg(p.count), p.count >= 2});
        m_stock.setRows(std::move(rows));
    }
    FieldEditor::refresh();
}
