// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/hangchoice.h"

#include "core/work/measuring/keptkit.h"
#include "mobile/follow.h"
#include "mobile/text/say.h"

using namespace steelyard;

void HangChoice::setForm(HangEditor* form)
{
    if (!follow(this, m_form, form, &HangChoice::changed))
        return;
    if (form) {
        connect(form, &HangEditor::deskChanged, this, &HangChoice::changed);
        connect(form, &HangEditor::rowChanged, this, &HangChoice::changed);
    }
    Q_EMIT changed();
}

const HungRecord* HangChoice::record() const
{
    if (!m_form || !m_form->deskService())
        return nullptr;
    const auto& hung = m_form->deskService()->desk().setup().hung;
    return m_form->row() >= 0 && static_cast<std::size_t>(m_form->row()) < hung.size() ? &hung[static_cast<std::size_t>(m_form->row())] : nullptr;
}

std::vector<HangChoice::Offer> HangChoice::offers() const
{
    const HungRecord* now = record();
    std::vector<Offer> all;
    if (!now)
        return all;
    const auto& kit = m_form->deskService()->desk().kit();
    if (std::holds_alternative<ChainPlacing>(now->placing)) {
        for (const KeptLead& lead : leadsIn(kit)) {
            const QString name = QString::fromStdString(lead.name), length = say::inLengthUnit(say::entered(lead.length));
            all.push_back({name.contains(length) ? name : tr("%1, %2").arg(name, length), lead.length, lead.mass});
        }
    } else if (std::holds_alternative<BandPlacing>(now->placing)) {
        for (const KeptRack& rack : racksIn(kit))
            for (const Entered<Height>& anchor : rack.check.anchors)
                all.push_back({tr("%1, %2").arg(QString::fromStdString(rack.name), say::inLengthUnit(say::entered(anchor))), anchor, {}});
    }
    return all;
}

QString HangChoice::label() const
{
    const HungRecord* now = record();
    return now && std::holds_alternative<BandPlacing>(now->placing) ? tr("Anchored at") : tr("Hangs by");
}

QStringList HangChoice::names() const
{
    QStringList list;
    for (const Offer& offer : offers())
        list << offer.name;
    return list;
}

int HangChoice::chosen() const
{
    const HungRecord* now = record();
    const auto all = offers();
    const auto at = std::find_if(all.begin(), all.end(), [now](const Offer& offer) {
        if (const auto* chain = std::get_if<ChainPlacing>(&now->placing))
            return chain->lead == offer.length && chain->leadMass == offer.mass;
        return std::get<BandPlacing>(now->placing).anchorHeight == offer.length;
    });
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

void HangChoice::setChosen(int place)
{
    const auto all = offers();
    if (place < 0 || static_cast<std::size_t>(place) >= all.size())
        return;
    const Offer& offer = all[static_cast<std::size_t>(place)];
    HungRecord next = *record();
    if (auto* chain = std::get_if<ChainPlacing>(&next.placing)) {
        chain->lead = offer.length;
        chain->leadMass = offer.mass;
    } else {
        std::get<BandPlacing>(next.placing).anchorHeight = offer.length;
    }
    m_form->deskService()->desk().rehang(static_cast<std::size_t>(m_form->row()), next);
}
