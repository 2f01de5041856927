// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/desk.h"

#include "core/work/measuredkit.h"
#include "core/work/strength/percentof.h"

#include <algorithm>
#include <utility>

namespace steelyard {

namespace {

bool isDraftOf(const KitItem& draft, const RecordId& id, ItemKind kind) { return draft.id == id && kindOf(draft.measurement) == kind; }

}

Desk::Desk(NewIds newIds) : m_newIds(std::move(newIds))
{
    m_setup.bar.stock = usualStock();
    changed();
}

const KitItem* Desk::item(const RecordId& id) const
{
    const auto at = std::find_if(m_kit.begin(), m_kit.end(), [&](const KitItem& i) { return i.id == id; });
    return at == m_kit.end() ? nullptr : &*at;
}

void Desk::setMarks(const BarMarks& marks)
{
    m_marks = marks;
    changed();
}

void Desk::setBar(const BarRecord& bar)
{
    m_setup.bar = bar;
    changed();
}

RecordId Desk::keepItem(KitItem item)
{
    throwDraft(item.id, kindOf(item.measurement));
    const auto at = std::find_if(m_kit.begin(), m_kit.end(), [&](const KitItem& i) { return i.id == item.id; });
    // a listener may add to the kit while it is told, so nothing is read from there afterwards
    const RecordId id = at == m_kit.end() ? m_newIds() : item.id;
    item.id = id;
    if (at == m_kit.end())
        m_kit.push_back(std::move(item));
    else
        *at = std::move(item);
    hangs(id) ? hungChanged() : changed();
    return id;
}

void Desk::setKit(std::vector<KitItem> kit)
{
    if (kit == m_kit)
        return;
    const std::vector<KitItem> before = std::exchange(m_kit, std::move(kit));
    const bool asItHung = std::all_of(m_setup.hung.begin(), m_setup.hung.end(), [&](const HungRecord& hung) {
        const KitItem* now = item(hung.item);
        return now && std::find(before.begin(), before.end(), *now) != before.end();
    });
    asItHung ? changed() : hungChanged();
}

void Desk::removeItem(const RecordId& which)
{
    // it may be the id of the very item that goes
    const RecordId id = which;
    const KitItem* gone = item(id);
    if (!gone)
        return;
    if (!draft(RecordId{}, kindOf(gone->measurement))) {
        KitItem waiting = *gone;
        waiting.id = {};
        setDraft(waiting);
    }
    const bool hung = hangs(id);
    if (std::erase_if(m_drafts, [&](const KitItem& i) { return i.id == id; }) > 0)
        m_draftListeners.tell();
    std::erase_if(m_kit, [&](const KitItem& i) { return i.id == id; });
    std::erase_if(m_setup.hung, [&](const HungRecord& h) { return h.item == id; });
    hung ? hungChanged() : changed();
}

void Desk::setDraft(const KitItem& item)
{
    std::erase_if(m_drafts, [&](const KitItem& i) { return isDraftOf(i, item.id, kindOf(item.measurement)); });
    m_drafts.push_back(item);
    m_draftListeners.tell();
}

const KitItem* Desk::draft(const RecordId& id, ItemKind kind) const
{
    const auto at = std::find_if(m_drafts.begin(), m_drafts.end(), [&](const KitItem& i) { return isDraftOf(i, id, kind); });
    return at == m_drafts.end() ? nullptr : &*at;
}

void Desk::throwDraft(const RecordId& which, ItemKind kind)
{
    // it may be the id of the very draft that goes
    const RecordId id = which;
    if (std::erase_if(m_drafts, [&](const KitItem& i) { return isDraftOf(i, id, kind); }) > 0)
        m_draftListeners.tell();
}

void Desk::hang(const HungRecord& record)
{
    m_setup.hung.push_back(record);
    hungChanged();
}

void Desk::rehang(std::size_t index, const HungRecord& record)
{
    if (index >= m_setup.hung.size() || m_setup.hung[index] == record)
        return;
    m_setup.hung[index] = record;
    hungChanged();
}

void Desk::takeOff(std::size_t index)
{
    if (index >= m_setup.hung.size())
        return;
    m_setup.hung.erase(m_setup.hung.begin() + static_cast<std::ptrdiff_t>(index));
    hungChanged();
}

void Desk::setRelease(std::optional<ReleasePlan> plan)
{
    if (m_setup.release == plan)
        return;
    const bool asItHung = m_setup.release && plan && withoutAsked(*m_setup.release) == withoutAsked(*plan);
    m_setup.release = std::move(plan);
    asItHung ? changed() : hungChanged();
}

void Desk::stepLoad(bool up)
{
    const auto loads = loadsOf(m_setup.bar);
    if (!loads)
        return;
    const Mass now = loads->nearest(m_setup.bar.wanted).total;
    if (const PlateLoad* next = up ? loads->nextAbove(now) : loads->nextBelow(now)) {
        m_setup.bar.wanted = next->total;
        changed();
    }
}

void Desk::lookOver(CautionCode code)
{
    if (std::find(m_lookedOver.begin(), m_lookedOver.end(), code) == m_lookedOver.end())
        m_lookedOver.push_back(code);
    changed();
}

void Desk::lookOverReason(std::size_t index)
{
    if (index >= m_gate.reasons.size() || m_gate.reasons[index].reason.alone != Permission::Caution)
        return;
    for (const ReasonKey& key : keysOf(m_gate.reasons[index]))
        if (std::find(m_lookedOverReasons.begin(), m_lookedOverReasons.end(), key) == m_lookedOverReasons.end())
            m_lookedOverReasons.push_back(key);
    changed();
}

void Desk::holdTo(const HeldTo& heldTo)
{
    if (heldTo == m_heldTo)
        return;
    m_heldTo = heldTo;
    changed();
}

void Desk::setLifter(std::optional<GateLifter> lifter)
{
    if (lifter == m_lifter)
        return;
    m_lifter = std::move(lifter);
    m_lookedOverReasons.clear();
    changed();
}

void Desk::setPulls(std::vector<IsometricPull> pulls)
{
    if (pulls == m_pulls)
        return;
    m_pulls = std::move(pulls);
    m_listeners.tell();
}

void Desk::setMaximum(std::optional<DayMaximum> maximum, std::chrono::sys_days on)
{
    // the rest of it follows from the tests of a day, of which the best and the refused are there
    const auto same = [&] {
        return maximum->test == m_maximum->test && maximum->why == m_maximum->why && maximum->setsShowMore == m_maximum->setsShowMore && maximum->refused == m_maximum->refused;
    };
    if (on == m_maximumOn && maximum.has_value() == m_maximum.has_value() && (!maximum || same()))
        return;
    m_maximumOn = on;
    m_maximum = std::move(maximum);
    m_listeners.tell();
}

WantedPulls Desk::wantedOfMaximum() const
{
    WantedPulls wanted = m_wanted;
    if (!wanted.oneRepMax && !whyNoPercent(m_maximum))
        wanted.oneRepMax = Entered<Mass>(m_maximum->max.middle.value);
    return wanted;
}

void Desk::setRamp(RampWanted ramp)
{
    if (ramp == m_ramp)
        return;
    m_ramp = std::move(ramp);
    m_listeners.tell();
}

void Desk::lay(const BarMarks& marks, SetupRecord setup)
{
    if (marks != m_marks)
        m_wanted = {};
    m_marks = marks;
    m_setup = std::move(setup);
    hungChanged();
}

void Desk::replaceAll(BarMarks marks, std::vector<KitItem> kit, SetupRecord setup)
{
    m_marks = marks;
    m_kit = std::move(kit);
    m_setup = std::move(setup);
    m_lastTime.reset();
    m_wanted = {};
    m_pulls.clear();
    m_lifter.reset();
    m_maximum.reset();
    m_ramp = RampWanted::usual();
    m_drafts.clear();
    m_draftListeners.tell();
    hungChanged();
}

bool Desk::hangs(const RecordId& id) const
{
    return std::any_of(m_setup.hung.begin(), m_setup.hung.end(), [&](const HungRecord& h) { return h.item == id; });
}

void Desk::hungChanged()
{
    m_lookedOver.clear();
    m_lookedOverReasons.clear();
    changed();
}

std::optional<ReleaseAnswer> Desk::releaseNow() const
{
    if (!m_setup.release)
        return std::nullopt;
    ReleaseFacts facts{m_kit, m_marks, {}, {}, m_heldTo};
    if (m_lifter) {
        facts.alike = m_lifter->facts.alike;
        if (m_lifter->maximum && m_lifter->maximum->plain)
            facts.maximum = Uncertain<Mass>{m_lifter->maximum->value, m_lifter->maximum->u};
    }
    return releaseAnswer(m_setup, facts);
}

ReleaseWants Desk::releaseWants() const
{
    return m_release ? wantedBy(*m_release, m_answer.load, m_lifter.has_value()) : ReleaseWants::Nothing;
}

std::optional<LoadAtWorst> Desk::heldAtMost() const
{
    const auto lifted = loadAtWorst(m_answer);
    if (!m_release || !lifted)
        return lifted;
    const auto& lowered = m_release->worst;
    return lowered && lowered->value + lowered->giveOrTake < lifted->value + lifted->giveOrTake ? lifted : lowered;
}

void Desk::forgetWhatIsMore(const std::optional<LoadAtWorst>& before)
{
    const auto now = heldAtMost();
    const bool isNoMore = before && now && now->value + now->giveOrTake <= before->value + before->giveOrTake;
    if (!isNoMore)
        std::erase_if(m_lookedOverReasons, [](const ReasonKey& key) { return key.code == GateCode::OverMaximum; });
}

void Desk::changed()
{
    const auto before = heldAtMost();
    m_release = releaseNow();
    m_answer = weighUp(m_setup, m_kit, m_marks, m_lookedOver, usualSampleCount, m_heldTo, m_release && m_release->load ? &m_release->load->bar : nullptr);
    forgetWhatIsMore(before);
    m_gate = m_lifter ? setupGate(*m_lifter, m_setup, m_answer, m_release, m_lookedOverReasons) : SetupGate{};
    m_listeners.tell();
}

}
