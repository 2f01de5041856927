// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/strength/rampview.h"

#include "core/work/strength/setupramp.h"
#include "mobile/asking/askingtexts.h"
#include "mobile/follow.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"
#include "mobile/text/sentences.h"

#include <algorithm>

using namespace steelyard;

namespace {

std::vector<TargetPlace> placesOf(const Desk& desk)
{
    std::vector<TargetPlace> all{TargetPlace::Mean, TargetPlace::Bottom};
    if (desk.marks().zoneFrom && desk.marks().zoneTo)
        all.push_back(TargetPlace::Zone);
    all.push_back(TargetPlace::Top);
    return all;
}

/// As it was wanted, at a place that these marks have.
RampWanted wantedOn(const Desk& desk)
{
    RampWanted wanted = desk.ramp();
    const auto places = placesOf(desk);
    if (std::find(places.begin(), places.end(), wanted.place) == places.end())
        wanted.place = TargetPlace::Mean;
    return wanted;
}

}

void RampView::setDesk(DeskService* desk)
{
    if (!follow(this, m_desk, desk, &RampView::refresh))
        return;
    refresh();
}

QStringList RampView::places() const
{
    QStringList names;
    if (m_desk)
        for (const TargetPlace place : placesOf(m_desk->desk()))
            names << askingtexts::place(place);
    return names;
}

int RampView::place() const
{
    if (!m_desk)
        return 0;
    const auto places = placesOf(m_desk->desk());
    return static_cast<int>(std::find(places.begin(), places.end(), wantedOn(m_desk->desk()).place) - places.begin());
}

void RampView::setPlace(int index)
{
    if (!m_desk || index < 0)
        return;
    const auto places = placesOf(m_desk->desk());
    if (static_cast<std::size_t>(index) >= places.size())
        return;
    RampWanted wanted = m_desk->desk().ramp();
    wanted.place = places[static_cast<std::size_t>(index)];
    m_desk->desk().setRamp(std::move(wanted));
}

void RampView::step(int index, bool up)
{
    if (m_desk && index >= 0)
        m_desk->desk().setRamp(stepped(m_desk->desk().ramp(), static_cast<std::size_t>(index), up));
}

void RampView::refresh()
{
    std::vector<RampRow> rows;
    m_head.clear();
    m_least.clear();
    m_refusal.clear();
    if (m_desk) {
        const Desk& desk = m_desk->desk();
        const RampWanted wanted = wantedOn(desk);
        const auto& bar = desk.setup().bar;
        if (const auto ramp = setupRamp(desk.setup(), desk.kit(), desk.marks(), wanted)) {
            for (std::size_t i = 0; i < ramp->steps.size(); ++i) {
                const SetupRampStep& one = ramp->steps[i];
                RampRow row;
                row.share = tr("%1 %").arg(wanted.percents[i]);
                row.load = say::massWithUnit(one.load.total);
                row.pull = tr("pulls %1").arg(say::pull(one.step.reading).withUnit());
                row.change = setuptexts::plateChange(bar, one.change);
                row.note = one.step.isLeast ? tr("as light as it gets: what hangs pulls more than that alone") : one.step.isAsBefore ? tr("nothing here makes a load between: the same as before") : QString();
                row.canLess = canStep(wanted, i, false);
                row.canMore = canStep(wanted, i, true);
                rows.push_back(std::move(row));
            }
            rows.push_back({tr("100 %"), say::massWithUnit(ramp->workingLoad.total), tr("pulls %1").arg(say::pull(ramp->working).withUnit()), setuptexts::plateChange(bar, ramp->toWorking), {}, false, false, true});
            m_head = tr("Up to %1 %2").arg(say::pull(ramp->working).withUnit(), askingtexts::atPlace(wanted.place));
            m_least = tr("The least that can be hung with it: %1 of iron, which pulls %2.").arg(say::massWithUnit(ramp->leastLoad.total), say::pull(ramp->least).withUnit());
        } else {
            m_refusal = ramp.error().what == "pull" ? tr("The pull of what hangs is not known: measure further first.") : sentences::refusal(ramp.error());
        }
    }
    m_steps.setRows(std::move(rows));
    Q_EMIT changed();
}
