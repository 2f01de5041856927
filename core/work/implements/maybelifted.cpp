// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/implements/maybelifted.h"

#include "core/implements/cap.h"
#include "core/work/gates/methodrules.h"
#include "core/work/implements/figures.h"
#include "core/work/records/seasonbook.h"
#include "core/work/strength/maxima.h"

#include <algorithm>
#include <array>

namespace steelyard {

namespace {

constexpr LiftId swing{27}, bellClean{28}, bellPress{29}, logLift{30}, kegPress{31}, tyreFlip{32}, farmers{33}, suitcase{34}, yokeCarry{35}, frontCarry{36}, tow{38}, push{39};

bool brings(const LiftId& alike, Method method)
{
    const auto methods = methodsOf(alike);
    return std::find(methods.begin(), methods.end(), method) != methods.end();
}

/// Puts the answer for one thing and one lift together.
class Asking {
public:
    Asking(const KitItem& item, const ImplementMass& mass, const UseFacts& facts, std::span<const UseLookedOver> lookedOver, const std::optional<Estimate<Mass>>& load)
        : m_item(item), m_mass(mass), m_facts(facts), m_lookedOver(lookedOver),
          m_load(load || !mass.mass ? load : std::optional(heldAtOnce(item.measurement, *mass.mass)))
    {
        m_use.lift = facts.lift;
        m_use.method = methodOf(item.measurement);
        m_use.permission = Permission::Permitted;
    }

    [[nodiscard]] ImplementUse answer()
    {
        if (!m_load)
            against(UseCode::MassUnknown, Permission::Not).gap = m_mass.gap;
        std::visit([this](const auto& measured) { weighThing(measured); }, m_item.measurement);
        if (m_use.method != Method::Tyre)
            weighCap();
        askGates();
        std::stable_sort(m_use.reasons.begin(), m_use.reasons.end(), [](const UseReason& a, const UseReason& b) { return a.alone != b.alone ? a.alone > b.alone : a.code < b.code; });
        for (const UseReason& reason : m_use.reasons)
            if (!reason.lookedOver)
                m_use.permission = std::max(m_use.permission, reason.alone);
        return std::move(m_use);
    }

private:
    UseReason& against(UseCode code, Permission alone)
    {
        UseReason reason;
        reason.code = code;
        reason.alone = alone;
        reason.lookedOver = alone == Permission::Caution && std::any_of(m_lookedOver.begin(), m_lookedOver.end(), [&](const UseLookedOver& looked) {
            return isAbout(looked) && looked.what == std::variant<UseCode, ReasonKey>(code);
        });
        m_use.reasons.push_back(std::move(reason));
        return m_use.reasons.back();
    }
    [[nodiscard]] bool isAbout(const UseLookedOver& looked) const { return looked.item == m_item.id && looked.lift == m_facts.lift; }

    void weighThing(const TyreMeasurement&)
    {
        if (!m_item.inspection)
            against(UseCode::NotLookedOver, Permission::Caution);
        against(UseCode::ReachNotAsked, Permission::Caution);
    }
    void weighThing(const KegMeasurement& keg)
    {
        if (!mayBeLifted(keg))
            against(keg.pressure == KegPressure::Holding ? UseCode::UnderPressure : UseCode::PressureUnknown, Permission::Not);
    }
    void weighThing(const BellMeasurement& bell)
    {
        // a bell is tried in the ways of bells; carried it hangs from one hand
        switch (fitOf(bell, gripOf(m_facts.gates.alike))) {
        case HandFit::DoesNotFit: against(UseCode::HandDoesNotFit, Permission::Not); break;
        case HandFit::NotTried: against(UseCode::HandNotTried, Permission::Caution); break;
        case HandFit::Fits: break;
        }
        if (!bell.note.empty())
            against(UseCode::CoachNote, Permission::Caution).text = bell.note;
    }
    template <typename Other>
    void weighThing(const Other&)
    {
    }

    void weighCap()
    {
        if (!m_facts.cap) {
            if (m_use.method == Method::Implement)
                against(UseCode::CapNotNamed, Permission::Caution);
            return;
        }
        const CapRule& rule = *m_facts.cap;
        const auto about = [&rule, this](UseCode code) -> UseReason& {
            UseReason& reason = against(code, Permission::Not);
            reason.of = rule.of;
            reason.capPercent = rule.percent;
            return reason;
        };
        const auto& maximum = m_facts.capMaximum;
        const auto cap = maximum ? LoadCap::of(std::array{exactly(maximum->lowest)}, rule.percent / 100.0) : Result<LoadCap>(Error{Refusal::NotThere, "lift"});
        if (!cap) {
            about(UseCode::CapMaximumMissing);
            return;
        }
        if (!maximum->plain)
            about(UseCode::CapMaximumNotPlain).from = maximum->day;
        if (m_facts.day - maximum->day > m_facts.gates.limits.maximumGoodFor())
            about(UseCode::CapMaximumOld).from = maximum->day;
        const CapAnswer held = heldAgainst(*cap, m_load);
        if (held.verdict != CapVerdict::MayBeOver && held.verdict != CapVerdict::Over)
            return;
        UseReason& over = about(held.verdict == CapVerdict::Over ? UseCode::OverCap : UseCode::CapMayBeOver);
        over.from = maximum->day;
        over.percent = *held.unfavourable / maximum->lowest * 100;
        if (cap->mass() > m_load->giveOrTake())
            over.atMost = cap->mass() - m_load->giveOrTake();
    }

    void askGates()
    {
        UseQuestion question;
        question.lift = m_facts.lift;
        question.method = m_use.method;
        question.day = m_facts.day;
        question.maximum = m_facts.maximum;
        if (m_load)
            question.load = LoadAtWorst{m_load->value, m_load->giveOrTake()};
        for (const UseLookedOver& looked : m_lookedOver)
            if (const auto* key = isAbout(looked) ? std::get_if<ReasonKey>(&looked.what) : nullptr)
                question.lookedOver.push_back(*key);
        const auto answer = mayUse(question, m_facts.gates);
        if (!answer) {
            m_use.error = answer.error();
            m_use.permission = Permission::Not;
            return;
        }
        m_use.permission = answer->permission;
        m_use.gates = answer->reasons;
        // that nobody knows its mass is said with why
        if (!m_load)
            std::erase_if(m_use.gates, [](const Reason& reason) { return reason.key.code == GateCode::LoadUnknown && reason.alone == Permission::Not; });
    }

    const KitItem& m_item;
    const ImplementMass& m_mass;
    const UseFacts& m_facts;
    std::span<const UseLookedOver> m_lookedOver;
    std::optional<Estimate<Mass>> m_load;
    ImplementUse m_use;
};

}

UseRemedy remedyFor(UseCode code)
{
    switch (code) {
    case UseCode::MassUnknown: return UseRemedy::FindItsMass;
    case UseCode::PressureUnknown: return UseRemedy::AskWhoBroughtIt;
    case UseCode::UnderPressure: return UseRemedy::LetOwnerRelease;
    case UseCode::CapNotNamed: return UseRemedy::NameCap;
    case UseCode::CapMaximumMissing:
    case UseCode::CapMaximumNotPlain:
    case UseCode::CapMaximumOld: return UseRemedy::TestNamedLift;
    case UseCode::CapMayBeOver: return UseRemedy::WeighBetter;
    case UseCode::OverCap: return UseRemedy::TakeLighter;
    case UseCode::HandDoesNotFit: return UseRemedy::TakeAnother;
    case UseCode::HandNotTried: return UseRemedy::TryIt;
    case UseCode::CoachNote: return UseRemedy::Read;
    case UseCode::NotLookedOver: return UseRemedy::LookItOver;
    case UseCode::ReachNotAsked: break;
    }
    return UseRemedy::SeeHerReach;
}

std::optional<UseFacts> useFacts(const SeasonBook& book, const RecordId& athlete, const LiftId& lift, std::chrono::sys_days day)
{
    auto gates = gateFacts(book, athlete, lift);
    if (!gates)
        return std::nullopt;
    UseFacts facts{lift, day, std::move(*gates), std::nullopt, std::nullopt, std::nullopt};
    facts.maximum = knownMaximum(book, athlete, brings(facts.gates.alike, Method::Tyre) ? deadliftId : lift, day);
    const auto& caps = book.athlete(athlete)->caps;
    if (const auto rule = caps.find(lift); rule != caps.end()) {
        facts.cap = rule->second;
        facts.capMaximum = knownMaximum(book, athlete, rule->second.of, day);
    }
    return facts;
}

Method methodOf(const Measured& measured)
{
    switch (kindOf(measured)) {
    case ItemKind::Tyre: return Method::Tyre;
    case ItemKind::Sled: return Method::Sled;
    case ItemKind::Carry: return Method::Carry;
    case ItemKind::Bell: return std::get<BellMeasurement>(measured).sort == BellSort::Kettlebell ? Method::Kettlebell : Method::Carry;
    default: return Method::Implement;
    }
}

std::vector<LiftId> liftsWith(const Measured& measured)
{
    switch (kindOf(measured)) {
    case ItemKind::Tyre: return {tyreFlip};
    case ItemKind::Log: return {logLift, frontCarry};
    case ItemKind::Stone: return {frontCarry};
    case ItemKind::Keg:
        if (std::get<KegMeasurement>(measured).sort == KegSort::Sandbag)
            return {frontCarry};
        return {kegPress, frontCarry};
    case ItemKind::Sled: return {tow, push};
    case ItemKind::Carry:
        switch (std::get<CarryMeasurement>(measured).sort) {
        case CarrySort::OneHandle: return {suitcase};
        case CarrySort::Yoke:
        case CarrySort::Frame: return {yokeCarry};
        case CarrySort::Handles:
        case CarrySort::HexBar: break;
        }
        return {farmers};
    case ItemKind::Bell:
        if (std::get<BellMeasurement>(measured).sort == BellSort::Dumbbell)
            return {suitcase};
        return {swing, bellClean, bellPress};
    default: return {};
    }
}

ImplementUse implementUse(const KitItem& item, const ImplementMass& mass, const UseFacts& facts, std::span<const UseLookedOver> lookedOver,
                          const std::optional<Estimate<Mass>>& load)
{
    return Asking(item, mass, facts, lookedOver, load).answer();
}

}
