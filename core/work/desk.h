// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/season/isometricpull.h"
#include "core/season/marks.h"
#include "core/season/recordid.h"
#include "core/season/setuprecord.h"
#include "core/work/asking/wantedpulls.h"
#include "core/work/gates/setupgate.h"
#include "core/work/strength/maxima.h"
#include "core/work/strength/setupramp.h"
#include "core/work/subscription.h"
#include "core/work/weighup.h"

#include <optional>
#include <span>
#include <utility>
#include <vector>

namespace steelyard {

/// What is on the coach's desk now: one lifter's marks, the kit measured so far and one set-up. In memory only.
class Desk {
public:
    explicit Desk(NewIds newIds);

    [[nodiscard]] const BarMarks& marks() const { return m_marks; }
    [[nodiscard]] const std::vector<KitItem>& kit() const { return m_kit; }
    [[nodiscard]] const KitItem* item(const RecordId& id) const;
    [[nodiscard]] const SetupRecord& setup() const { return m_setup; }
    /// What was on the bar last time, for whom the desk is laid out: a load far from it deserves a question.
    [[nodiscard]] const std::optional<Mass>& lastTime() const { return m_lastTime; }
    void setLastTime(const std::optional<Mass>& load) { m_lastTime = load; }
    /// What the pull should be, for whom the desk is laid out; it goes with the marks it was for, and stays while these are put right.
    [[nodiscard]] const WantedPulls& wanted() const { return m_wanted; }
    void want(WantedPulls wanted) { m_wanted = std::move(wanted); }
    /// Her isometric pulls in this lift, for whom the desk is laid out; they go when another lifter's are laid.
    [[nodiscard]] const std::vector<IsometricPull>& pulls() const { return m_pulls; }
    void setPulls(std::vector<IsometricPull> pulls);
    /// The coach's limits and the day; what is old or held too weakly goes by them.
    [[nodiscard]] const HeldTo& heldTo() const { return m_heldTo; }
    void holdTo(const HeldTo& heldTo);
    /// Who is at the gates; nobody, and no gate is asked.
    [[nodiscard]] const std::optional<GateLifter>& lifter() const { return m_lifter; }
    /// Another one, or the same of whom something else is known: what was looked over for her before is not any more.
    void setLifter(std::optional<GateLifter> lifter);
    /// Worked out with the answer.
    [[nodiscard]] const SetupGate& gate() const { return m_gate; }
    /// What the plan of a heavier way down comes to, in per cent of the lifter's plain maximum, and what it still wants; none without a plan.
    [[nodiscard]] const std::optional<ReleaseAnswer>& release() const { return m_release; }
    [[nodiscard]] ReleaseWants releaseWants() const;
    /// What answer, plan and gate come to together: the one to be shown.
    [[nodiscard]] Readiness readiness() const { return gatedReadiness(m_answer.readiness, m_gate.permission, releaseWants()); }
    /// Her maximum in this lift that counts, for whom the desk is laid out, and the day on which it does.
    [[nodiscard]] const std::optional<DayMaximum>& maximum() const { return m_maximum; }
    [[nodiscard]] std::chrono::sys_days maximumOn() const { return m_maximumOn; }
    void setMaximum(std::optional<DayMaximum> maximum, std::chrono::sys_days on);
    /// What is wanted, with the middle of her maximum as its base where nobody typed one and percent can be said of it.
    [[nodiscard]] WantedPulls wantedOfMaximum() const;
    /// The ramp up to the set-up, as it is wanted here and now.
    [[nodiscard]] const RampWanted& ramp() const { return m_ramp; }
    void setRamp(RampWanted ramp);
    /// Worked out anew at each change, once.
    [[nodiscard]] const WeighedUp& answer() const { return m_answer; }

    void setMarks(const BarMarks& marks);
    void setBar(const BarRecord& bar);
    /// Adds an item under a new id, or replaces the one with its id; what hangs keeps hanging. Its draft goes.
    RecordId keepItem(KitItem item);
    /// The kit as it is kept elsewhere, in place of the one here; what hangs keeps hanging, and drafts wait on.
    void setKit(std::vector<KitItem> kit);
    /// Takes an item out of the kit and off the bar; its entries wait as the draft of a new one, unless another waits.
    void removeItem(const RecordId& which);
    /// An item half entered: it waits here, apart from the kit, until it is kept or thrown away. A draft without an id is of
    /// a new item, one of each kind.
    void setDraft(const KitItem& item);
    [[nodiscard]] const KitItem* draft(const RecordId& id, ItemKind kind) const;
    void throwDraft(const RecordId& which, ItemKind kind);
    [[nodiscard]] const std::vector<KitItem>& drafts() const { return m_drafts; }
    void hang(const HungRecord& record);
    void rehang(std::size_t index, const HungRecord& record);
    void takeOff(std::size_t index);
    /// What makes the way down heavier; nothing takes it away. What is only asked otherwise leaves cautions looked over.
    void setRelease(std::optional<ReleasePlan> plan);
    /// The next load the plates make; nothing when there is none.
    void stepLoad(bool up);
    /// Holds until something else hangs, or hangs otherwise.
    void lookOver(CautionCode code);
    /// A reason of the gate that is a caution, by its place. A load that comes to the maximum was looked over as it was: more of it is
    /// looked over again.
    void lookOverReason(std::size_t index);
    /// Other marks and another set-up, as one change; the kit and what is half entered stay.
    void lay(const BarMarks& marks, SetupRecord setup);
    /// Another lifter, another kit: drafts and looks over of before go with them.
    void replaceAll(BarMarks marks, std::vector<KitItem> kit, SetupRecord setup);

    [[nodiscard]] Subscription onChanged(std::function<void()> told) { return m_listeners.add(std::move(told)); }
    /// Told of every change of what is half entered, which is no change of the desk's answer.
    [[nodiscard]] Subscription onDraftsChanged(std::function<void()> told) { return m_draftListeners.add(std::move(told)); }

private:
    [[nodiscard]] bool hangs(const RecordId& id) const;
    void changed();
    void hungChanged();
    [[nodiscard]] std::optional<ReleaseAnswer> releaseNow() const;
    /// On either way; nothing where one of them is not known.
    [[nodiscard]] std::optional<LoadAtWorst> heldAtMost() const;
    void forgetWhatIsMore(const std::optional<LoadAtWorst>& before);

    BarMarks m_marks;
    std::vector<KitItem> m_kit;
    SetupRecord m_setup;
    std::vector<KitItem> m_drafts;
    std::optional<Mass> m_lastTime;
    WantedPulls m_wanted;
    std::vector<IsometricPull> m_pulls;
    std::optional<DayMaximum> m_maximum;
    std::chrono::sys_days m_maximumOn{};
    RampWanted m_ramp = RampWanted::usual();
    std::vector<CautionCode> m_lookedOver;
    HeldTo m_heldTo;
    std::optional<GateLifter> m_lifter;
    std::vector<ReasonKey> m_lookedOverReasons;
    WeighedUp m_answer;
    std::optional<ReleaseAnswer> m_release;
    SetupGate m_gate;
    NewIds m_newIds;
    Listeners m_listeners, m_draftListeners;
};

}
