// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/eccentric/releaseplanner.h"

#include "mobile/eccentric/releasetexts.h"
#include "mobile/follow.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"

#include <algorithm>

using namespace steelyard;

namespace {

const QString upKey = QStringLiteral("up"), downKey = QStringLiteral("down");
constexpr double percentStep = 2.5, leastPercent = 2.5, mostPercent = 300;
constexpr EntryLimits percents{3, 1, 1, mostPercent}, loads{3, 2, 1, 600};

template <typename Value>
std::optional<Value> numbered(int number, Value last)
{
    return number >= 0 && number <= static_cast<int>(last) ? std::optional(static_cast<Value>(number)) : std::nullopt;
}

}

void ReleasePlanner::setWork(DeskWork* work)
{
    if (!follow(this, m_work, work, [this] { refresh(); }))
        return;
    Q_EMIT workChanged();
    refresh();
}

ReleasePlan ReleasePlanner::plan() const
{
    return isPlanned() ? *desk().setup().release : ReleasePlan{};
}

template <typename Change>
void ReleasePlanner::change(const Change& how)
{
    if (!ready())
        return;
    ReleasePlan next = plan();
    how(next);
    desk().setRelease(std::move(next));
}

void ReleasePlanner::setWay(int way)
{
    if (const auto chosen = numbered(way, ReleaseWay::DumbbellsDropped))
        change([&](ReleasePlan& plan) { plan.way = *chosen; });
}

void ReleasePlanner::setInPercent(bool inPercent)
{
    change([&](ReleasePlan& plan) {
        plan.asked.inPercent = inPercent;
        // a load to begin with: what hangs now, and a fifth more
        if (!inPercent && !plan.asked.down)
            plan.asked.down = kilograms(std::round(1.2 * desk().setup().bar.wanted.si() / 2.5) * 2.5);
    });
}

void ReleasePlanner::setDownOfWayUp(bool downOfWayUp)
{
    change([&](ReleasePlan& plan) {
        ReleaseAsked& asked = plan.asked;
        if (asked.downOfWayUp == downOfWayUp)
            return;
        asked.downOfWayUp = downOfWayUp;
        const double same = downOfWayUp ? 100 * asked.downPercent / asked.upPercent : asked.downPercent * asked.upPercent / 100;
        asked.downPercent = std::round(10 * same) / 10;
    });
}

void ReleasePlanner::setPutBack(int putBack)
{
    if (const auto chosen = numbered(putBack, PutBack::EachCluster))
        change([&](ReleasePlan& plan) {
            plan.set.putBack = *chosen;
            // what the choice asks for is filled in, and can be said otherwise
            if (*chosen != PutBack::Never && plan.set.putBackBy == PutBackBy::Nobody)
                plan.set.putBackBy = PutBackBy::Spotters;
            if (*chosen == PutBack::Never)
                plan.set.putBackBy = PutBackBy::Nobody;
        });
}

void ReleasePlanner::setPutBackBy(int by)
{
    if (const auto chosen = numbered(by, PutBackBy::Athlete))
        change([&](ReleasePlan& plan) { plan.set.putBackBy = *chosen; });
}

std::vector<FieldSpec> ReleasePlanner::specs() const
{
    if (!ready())
        return {};
    const ReleaseAsked asked = plan().asked;
    if (!asked.inPercent)
        return {{upKey, tr("On the way up"), inMass(desk().setup().bar.wanted), loads, false, tr("bar, collars and plates")},
                {downKey, tr("On the way down"), inMass(asked.down), loads, false, tr("with all that is let go")}};
    return {{upKey, tr("On the way up"), unitless(asked.upPercent), percents, false, tr("per cent of her 1RM")},
            {downKey, tr("On the way down"), unitless(asked.downPercent), percents, false, asked.downOfWayUp ? tr("per cent of the way up") : tr("per cent of her 1RM")}};
}

KeepOutcome ReleasePlanner::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    if (!ready() || !spec(key))
        return {tr("There is no such number."), {}};
    if (!plan().asked.inPercent && key == upKey) {
        BarRecord bar = desk().setup().bar;
        bar.wanted = keyed.mass();
        desk().setBar(bar);
        return {};
    }
    change([&](ReleasePlan& plan) {
        if (!plan.asked.inPercent)
            plan.asked.down = keyed.mass();
        else
            (key == upKey ? plan.asked.upPercent : plan.asked.downPercent) = keyed.ratio;
    });
    return {};
}

void ReleasePlanner::step(const QString& key, bool up)
{
    if (!ready() || !spec(key))
        return;
    if (!plan().asked.inPercent && key == upKey)
        return desk().stepLoad(up);
    change([&](ReleasePlan& plan) {
        ReleaseAsked& asked = plan.asked;
        if (asked.inPercent) {
            double& percent = key == upKey ? asked.upPercent : asked.downPercent;
            percent = std::clamp(percent + (up ? percentStep : -percentStep), leastPercent, mostPercent);
        } else if (asked.down) {
            const Mass by = say::units().mass == MassUnit::Pound ? 5 * pound : kilograms(2.5);
            const Mass next = up ? asked.down->quantity() + by : asked.down->quantity() - by;
            if (next >= by)
                asked.down = Entered<Mass>(next);
        }
    });
}

void ReleasePlanner::hang()
{
    if (!ready() || !m_barTotal || m_shown.forbidden)
        return;
    BarRecord bar = desk().setup().bar;
    bar.wanted = Entered<Mass>(*m_barTotal);
    desk().setBar(bar);
}

void ReleasePlanner::throwAway()
{
    if (ready())
        desk().setRelease(std::nullopt);
}

QString ReleasePlanner::stateNow() const
{
    if (m_shown.forbidden)
        return tr("Do not lift this");
    if (m_shown.ready)
        return tr("Ready");
    switch (desk().releaseWants()) {
    case ReleaseWants::Measuring: return tr("Not ready: something is still to measure");
    case ReleaseWants::ItsBar: return tr("Not ready: hang this bar first");
    case ReleaseWants::Somebody: return tr("Not ready: for nobody yet, so nobody's clearance can be looked up");
    case ReleaseWants::Nothing: break;
    }
    return desk().readiness() == Readiness::LookOver ? tr("Look the cautions over first") : tr("Not ready: see the set-up");
}

void ReleasePlanner::refresh()
{
    if (!ready() || !m_work || !m_work->book())
        return FieldEditor::refresh();
    m_barTotal.reset();
    m_shown = {};
    m_drawn = {};
    std::vector<NoticeRow> facts, gate;
    std::vector<TargetRow> asked;
    // it stands on the set-up page too, where nothing is planned most of the time
    if (isPlanned()) {
        const ReleaseAnswer& answer = *desk().release();
        if (answer.load)
            m_barTotal = answer.load->bar.total;
        m_shown = releasetexts::shown(desk().setup(), answer);
        // what forbids the bar as it hangs is settled where the plan's own is hung instead
        const bool itsBarHangs = desk().releaseWants() != ReleaseWants::ItsBar;
        m_shown.forbidden = desk().gate().permission == Permission::Not || (itsBarHangs && desk().readiness() == Readiness::NotToBeUsed);
        m_shown.ready = desk().readiness() == Readiness::Ready;
        m_shown.state = answer.load || m_shown.forbidden ? stateNow() : QString();
        m_drawn = releasetexts::drawn(desk().marks(), answer);
        facts = releasetexts::facts(plan(), answer);
        gate = setuptexts::notices(desk());
        std::erase_if(gate, [](const NoticeRow& row) { return !row.stop; });
        for (const FieldSpec& one : specs()) {
            const QString value = plan().asked.inPercent ? tr("%1 %").arg(one.text) : one.shown ? tr("%1 %2").arg(one.text, one.unit) : tr("not said");
            asked.push_back({one.key, one.label, value, true});
        }
    }
    m_facts.setRows(std::move(facts));
    m_gate.setRows(std::move(gate));
    m_asked.setRows(std::move(asked));
    FieldEditor::refresh();
}
