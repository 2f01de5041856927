// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/hangeditor.h"

#include "core/work/venues/freenow.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <algorithm>
#include <cmath>

using namespace steelyard;

const HungRecord* HangEditor::record() const
{
    if (!ready() || m_row < 0 || m_row >= static_cast<int>(desk().setup().hung.size()))
        return nullptr;
    return &desk().setup().hung[static_cast<std::size_t>(m_row)];
}

template <typename Change>
void HangEditor::change(const Change& how)
{
    if (const HungRecord* now = record()) {
        HungRecord next = *now;
        how(next);
        desk().rehang(static_cast<std::size_t>(m_row), next);
    }
}

std::vector<FieldSpec> HangEditor::specs() const
{
    const HungRecord* now = record();
    if (!now)
        return {};
    std::vector<FieldSpec> all;
    if (const auto* chain = std::get_if<ChainPlacing>(&now->placing)) {
        const bool plain = chain->lead.si() == 0 && chain->leadMass.si() == 0;
        all.push_back({QStringLiteral("lead"), tr("Lead"), inLength(chain->lead), {3, 1, 0, 250}, plain, tr("strap from the bar's middle to the first link")});
        all.push_back({QStringLiteral("leadMass"), tr("Lead and hook weigh"), inMass(chain->leadMass), {2, 2, 0, 20}, plain, tr("0 when it is next to nothing")});
        if (chain->way == ChainHangingWay::Bunched)
            all.push_back({QStringLiteral("bunch"), tr("Height of the bunch"), inLength(chain->bunch), {3, 1, 1, 150}, plain, {}});
    } else if (const auto* band = std::get_if<BandPlacing>(&now->placing)) {
        const bool plain = band->anchorHeight.si() == 0 && band->handle.si() == 0;
        all.push_back({QStringLiteral("anchor"), tr("Anchor's height"), inLength(band->anchorHeight), {3, 1, 0, 350}, plain, tr("floor to where the band holds")});
        if (!band->above)
            all.push_back({QStringLiteral("heldBy"), tr("Anchor held down by"), inMass(band->heldBy), {3, 1, 0, 600}, false, tr("plates or a rack that stands loose; leave out when bolted")});
        if (m_lean != 0)
            all.push_back({QStringLiteral("offset"), m_lean == 1 ? tr("In front of the bar by") : tr("Behind the bar by"), inLength(band->offset.si() < 0 ? opposite(band->offset) : band->offset), {3, 1, 0, 200}, false, {}});
        if (band->doubled)
            all.push_back({QStringLiteral("handle"), tr("Goes round a bar of"), inLength(band->handle), {2, 1, 0, 30}, plain, tr("thickness of the handle or peg")});
    } else if (const auto* aid = std::get_if<AidPlacing>(&now->placing)) {
        all.push_back({QStringLiteral("chest"), tr("Bar on the chest"), inLength(aid->chest), {3, 1, 1, 200}, false, tr("floor to the bar's middle where it touches; her bottom mark if left out")});
    }
    return all;
}

KeepOutcome HangEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    const Entered<Length> length = keyed.length();
    bool known = false;
    change([&](HungRecord& r) {
        known = true;
        if (auto* chain = std::get_if<ChainPlacing>(&r.placing)) {
            if (key == QLatin1String("lead"))
                chain->lead = length;
            else if (key == QLatin1String("leadMass"))
                chain->leadMass = keyed.mass();
            else if (key == QLatin1String("bunch"))
                chain->bunch = length;
            else
                known = false;
        } else if (auto* band = std::get_if<BandPlacing>(&r.placing)) {
            if (key == QLatin1String("anchor"))
                band->anchorHeight = length;
            else if (key == QLatin1String("offset"))
                band->offset = m_lean == 2 ? opposite(length) : length;
            else if (key == QLatin1String("handle"))
                band->handle = length;
            else if (key == QLatin1String("heldBy"))
                band->heldBy = keyed.mass();
            else
                known = false;
        } else if (auto* aid = std::get_if<AidPlacing>(&r.placing)) {
            known = key == QLatin1String("chest");
            if (known)
                aid->chest = length;
        }
    });
    return known ? KeepOutcome{} : KeepOutcome{tr("There is no such entry."), {}};
}

bool HangEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    change([](HungRecord& r) {
        if (auto* band = std::get_if<BandPlacing>(&r.placing))
            band->heldBy.reset();
        else if (auto* aid = std::get_if<AidPlacing>(&r.placing))
            aid->chest.reset();
    });
    return true;
}

void HangEditor::setRow(int row)
{
    if (m_row == row)
        return;
    m_row = row;
    m_lean = 0;
    Q_EMIT rowChanged();
    refresh();
}

void HangEditor::refresh()
{
    // an anchor stands in front or behind before it is said by how much
    const HungRecord* now = record();
    if (const auto* band = now ? std::get_if<BandPlacing>(&now->placing) : nullptr; band && band->offset.si() != 0)
        m_lean = band->offset.si() > 0 ? 1 : 2;
    FieldEditor::refresh();
}

QString HangEditor::itemId() const
{
    const HungRecord* now = record();
    return now ? QString::fromStdString(now->item.hex()) : QString();
}

QString HangEditor::kind() const
{
    const HungRecord* now = record();
    const KitItem* item = now ? desk().item(now->item) : nullptr;
    return item ? QString::fromStdString(wordOf(kindOf(item->measurement))) : QString();
}

QString HangEditor::what() const
{
    const HungRecord* now = record();
    const KitItem* item = now ? desk().item(now->item) : nullptr;
    return item ? QString::fromStdString(item->name) : QString();
}

int HangEditor::sides() const
{
    const HungRecord* now = record();
    return now ? static_cast<int>(now->on) : 0;
}

void HangEditor::setSides(int sides)
{
    if (sides >= 0 && sides <= 2)
        change([sides](HungRecord& r) { r.on = static_cast<HungOn>(sides); });
}

int HangEditor::way() const
{
    const HungRecord* now = record();
    if (!now)
        return 0;
    if (const auto* chain = std::get_if<ChainPlacing>(&now->placing))
        return static_cast<int>(chain->way);
    const auto* band = std::get_if<BandPlacing>(&now->placing);
    return band && band->doubled ? 1 : 0;
}

void HangEditor::setWay(int way)
{
    change([way](HungRecord& r) {
        if (auto* chain = std::get_if<ChainPlacing>(&r.placing); chain && way >= 0 && way <= 2)
            chain->way = static_cast<ChainHangingWay>(way);
        else if (auto* band = std::get_if<BandPlacing>(&r.placing))
            band->doubled = way == 1;
    });
}

int HangEditor::anchor() const
{
    const HungRecord* now = record();
    const auto* band = now ? std::get_if<BandPlacing>(&now->placing) : nullptr;
    return band && band->above ? 1 : 0;
}

void HangEditor::setAnchor(int anchor)
{
    change([anchor](HungRecord& r) {
        if (auto* band = std::get_if<BandPlacing>(&r.placing))
            band->above = anchor == 1;
    });
}

void HangEditor::setLean(int lean)
{
    if (lean < 0 || lean > 2)
        return;
    m_lean = lean;
    change([lean](HungRecord& r) {
        if (auto* band = std::get_if<BandPlacing>(&r.placing)) {
            const Entered<Length> away = band->offset.si() < 0 ? opposite(band->offset) : band->offset;
            band->offset = lean == 0 ? Entered<Length>() : lean == 1 ? away : opposite(away);
        }
    });
    refresh();
}

QString HangEditor::trouble() const
{
    const HungRecord* now = record();
    const KitItem* item = now ? desk().item(now->item) : nullptr;
    if (!item)
        return {};
    const auto& answer = desk().answer();
    if (!answer.error || answer.readiness != Readiness::Refused)
        return {};
    const std::string& what = answer.error->what;
    const bool mine = what == item->name || what.starts_with(item->name + ": ");
    return mine ? sentences::refusal(*answer.error) : QString();
}

int HangEditor::hang(const QString& itemId)
{
    const auto id = RecordId::fromHex(itemId.toStdString());
    const KitItem* item = ready() && id ? desk().item(*id) : nullptr;
    const auto placing = item ? firstPlacing(kindOf(item->measurement)) : std::nullopt;
    const auto on = item ? sidesFree(*item, desk().setup()) : std::nullopt;
    if (!placing || !on)
        return hangsAlready(id.value_or(RecordId{}));
    HungRecord fresh;
    fresh.item = item->id;
    fresh.on = *on;
    fresh.placing = *placing;
    desk().hang(fresh);
    setRow(static_cast<int>(desk().setup().hung.size()) - 1);
    return m_row;
}

int HangEditor::hangsAlready(const RecordId& item)
{
    if (!ready())
        return -1;
    const auto& hung = desk().setup().hung;
    const auto at = std::find_if(hung.begin(), hung.end(), [&item](const HungRecord& record) { return record.item == item; });
    if (at == hung.end())
        return -1;
    setRow(static_cast<int>(at - hung.begin()));
    return m_row;
}

void HangEditor::takeOff()
{
    if (record())
        desk().takeOff(static_cast<std::size_t>(m_row));
}
