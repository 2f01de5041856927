// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/bareditor.h"

#include "core/work/barchanges.h"
#include "core/work/measuredkit.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"
#include "mobile/text/tooltexts.h"

using namespace steelyard;

std::vector<FieldSpec> BarEditor::specs() const
{
    if (!ready())
        return {};
    const BarRecord& bar = desk().setup().bar;
    const auto& load = desk().answer().load;
    const auto onBar = load ? std::optional(loadAsAskedFor(bar.wanted, *load)) : std::nullopt;
    std::vector<FieldSpec> all = {
        {QStringLiteral("bar"), tr("Bar"), inMass(bar.bar), {2, 2, 0, 60}, !bar.barEntered, bar.barWeighed ? tr("weighed, sleeves and all") : tr("its own mass, sleeves and all")},
        {QStringLiteral("collars"), tr("Collars, both"), inMass(bar.collars), {2, 2, 0, 20}, false, {}},
        {QStringLiteral("sleeve"), tr("Room on one sleeve"), inLength(bar.sleeve), {2, 1, 5, 80}, false, tr("for plates; may be left out")},
        // keyed from elsewhere, no row of this form
        {QStringLiteral("load"), {}, inMass(onBar), {3, 2, 0, 600}, false, {}},
        {QStringLiteral("newPlate"), {}, inMass(std::nullopt), {2, 2, 0.1, 60}, false, {}},
    };
    if (desk().lastTime())
        all[3].last = say::shown(*desk().lastTime());
    // what was weighed is said as it is where it is taken
    if (bar.barWeighed)
        all.front().text = tooltexts::giveNumber(bar.bar, bar.barWeighed->u);
    return all;
}

KeepOutcome BarEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    BarRecord bar = desk().setup().bar;
    const Entered<Mass> mass = keyed.mass();
    if (key == QLatin1String("bar")) {
        bar = withBar(bar, mass);
    } else if (key == QLatin1String("collars")) {
        bar = withCollars(bar, mass);
    } else if (key == QLatin1String("sleeve")) {
        bar.sleeve = keyed.length();
    } else if (key == QLatin1String("newPlate")) {
        bar = withPairMore(bar, mass);
    } else if (key == QLatin1String("load")) {
        const auto loads = loadsOf(bar);
        if (!loads)
            return {sentences::refusal(loads.error()), {}};
        const PlateLoad* meant = loadMeant(*loads, mass);
        if (!meant) {
            KeepOutcome outcome{tr("%1 cannot be hung with the plates here.").arg(say::inMassUnit(say::entered(mass))), {}};
            for (const PlateLoad* near : {loads->atOrBelow(mass), loads->atOrAbove(mass)})
                if (near)
                    outcome.offers.push_back(say::shown(near->total));
            return outcome;
        }
        bar.wanted = mass.typed() ? mass : Entered<Mass>(meant->total);
    } else {
        return {tr("There is no such entry."), {}};
    }
    desk().setBar(bar);
    return {};
}

QString BarEditor::changes(const QString& key, const KeyedFigure& keyed) const
{
    if (key != QLatin1String("load") || !ready())
        return {};
    const BarRecord& bar = desk().setup().bar;
    const auto& hangs = desk().answer().load;
    const auto loads = loadsOf(bar);
    const PlateLoad* meant = loads ? loadMeant(*loads, keyed.mass()) : nullptr;
    return hangs && meant ? setuptexts::plateChange(bar, changeBetween(*hangs, *meant)) : QString();
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
            rows.push_back({say::plateMarkWithUnit(p), p.weighed ? tr("%n plates, weighed: %1 each", nullptr, p.count).arg(tooltexts::give(p.type.mass, p.weighed->u)) : tr("%n plates", nullptr, p.count), p.count >= 2});
        m_stock.setRows(std::move(rows));
    }
    FieldEditor::refresh();
}
