// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/result.h"
#include "core/season/athlete.h"
#include "core/season/clearance.h"
#include "core/season/limits.h"

#include <tuple>
#include <vector>

namespace steelyard {

class SeasonBook;

/// A maximum as somebody estimated or tested it. Percent is of `lowest`: what is not known is not granted.
struct KnownMaximum {
    LiftId lift;
    bool plain = true;            ///< lifted with plain iron, so that it says how steady the lift itself is
    Mass lowest;                  ///< lowest end of its range
    Mass value;
    Mass u;                       ///< standard uncertainty of the value
    std::chrono::sys_days day{};  ///< of the set or test it comes from
    bool tested = false;          ///< tried out, and not estimated from several reps
    bool operator==(const KnownMaximum&) const = default;
};

/// What would be lifted, at the worst place of the path: the pull as the mass that weighs as much, and its give-or-take to either side.
struct LoadAtWorst {
    Mass value;
    Mass giveOrTake;
};

/// What stands between an athlete and a method.
enum class GateCode : std::uint8_t {
    ClearanceMissing,   ///< nobody has cleared the athlete for this lift and method
    ClearanceExpired,
    ClearanceTakenBack,
    ClearanceNotYet,
    StatusNone,         ///< does not train
    StatusNames,        ///< the day status names this method or lift, or a group that it is in
    StatusMayName,      ///< it names a group, and nobody has said which lift this one is like
    StatusText,         ///< it says something in words, which only people can read
    StatusUnread,       ///< a newer app set it, and what it forbids is not known here
    Minor,              ///< may be under age, and nobody has approved it knowing that
    AgeUnknown,         ///< no birth year: may be under age
    MaximumMissing,     ///< no maximum of the lift that counts
    MaximumNotPlain,    ///< there is one, but not with plain iron
    MaximumOld,         ///< older than the limit
    LoadUnknown,        ///< there is a cap, and nobody knows whether the load keeps to it
    OverCap,            ///< load and give-or-take come to more than the cap
    OverMaximum,        ///< they come to the lowest estimate of the maximum, or more: a maximal lift
    CautionWaits,       ///< the method's caution was not looked over
};

/// What would settle it.
enum class Remedy : std::uint8_t {
    GetClearance,   ///< somebody qualified clears the athlete for this lift and method
    WaitUntil,      ///< the day `until` comes
    AskWhoSetIt,    ///< whoever set the status lifts it
    SayWhatItIsLike,
    ReadAndLookOver,
    UpdateApp,
    GetApproval,    ///< a clearance given knowing that the athlete may be under age
    EnterBirthYear, ///< or the same
    TestPlainLift,  ///< a maximum with plain iron, tested or estimated
    TestAgain,
    MeasureLoad,
    HangLess,       ///< at most `atMost`
};
/// Each code has one.
[[nodiscard]] Remedy remedyFor(GateCode code);

/// May be done; may be done once what waits was looked over; may not.
enum class Permission : std::uint8_t { Permitted, Caution, Not };

/// What a reason is about: names it among those of one answer, and for looking it over.
struct ReasonKey {
    GateCode code = GateCode::CautionWaits;
    Method method = Method::Plain; ///< which one it stands against; a lift brings its own along
    RecordId record;               ///< the clearance or day status; none where it is none
    bool operator==(const ReasonKey&) const = default;
    auto operator<=>(const ReasonKey& other) const { return std::tie(code, method, record) <=> std::tie(other.code, other.method, other.record); }
};

/// One reason with its facts; what does not apply is absent.
struct Reason {
    ReasonKey key;
    Permission alone = Permission::Not;        ///< what it leaves by itself
    bool lookedOver = false;                   ///< said to have been; then it stands in nobody's way
    std::string who;                           ///< who gave the clearance or took it back, who set the status
    std::optional<std::chrono::sys_days> from; ///< first day of the clearance or status, day of the maximum or of the taking back
    std::optional<std::chrono::sys_days> until;///< last day of the clearance or status; of one not yet valid the first
    std::optional<LiftGroup> group;            ///< that the status names
    std::string text;                          ///< what the status says
    std::optional<double> percent;             ///< of the lowest estimate, at the unfavourable end
    std::optional<double> capPercent;
    std::optional<bool> tested;                ///< whether the maximum that it is about was tried out
    std::optional<Mass> atMost;                ///< the load that would just do, with the same give-or-take; none where no load would
    bool operator==(const Reason&) const = default;
};

/// The answer: as strict as the strictest of its reasons that was not looked over.
struct GateAnswer {
    Permission permission = Permission::Permitted;
    std::vector<Reason> reasons; ///< the strictest first, each once
};

/// What is to be done, when, with how much, and what was looked over. The lift's own methods count too: a snatch is asked about as
/// overhead however it is loaded, a tyre flip as a tyre.
struct UseQuestion {
    LiftId lift;
    Method method = Method::Plain;
    std::chrono::sys_days day{};
    std::optional<LoadAtWorst> load{};
    std::optional<KnownMaximum> maximum{}; ///< of this lift; of the deadlift for a tyre
    std::vector<ReasonKey> lookedOver{};
};

/// What is known of the athlete that the question is about.
struct GateFacts {
    std::optional<std::chrono::year> birthYear;
    std::vector<Clearance> clearances;
    std::vector<DayStatus> statuses;
    LiftId alike; ///< the lift that ships and is this one, or is like it; none where nobody has said
    CoachLimits limits;
    bool operator==(const GateFacts&) const = default;
};

/// Whether an athlete may do a method with a lift on a day, and with every reason against it. Loads are compared at the unfavourable
/// end: value + give-or-take against the lowest estimate. The rules and what of them has no source stand at `rulesOf`.
///   clearance  one that is valid on the day is needed where the method asks for it; one given before another of the same lift and
///              method was taken back does not count. Where none is asked for, one that was taken back still forbids, and one that
///              is over or to come is a caution.
///   status     none forbids all; some forbids the methods, lifts and groups it names, and its words are a caution for everything;
///              all says nothing. Each that is in force counts.
///   age        who may be under age needs a clearance that approves it knowing that, for maximal lifts, eccentric overload and tyres.
///   maximum    where it is needed its absence or age forbids, where it is wanted that is a caution.
///              Whoever was cleared for a method that only wants one has no need of it.
///   load       over the method's cap it forbids. Where the method has none, the lowest estimate of the lift's plain maximum or more is
///              a caution, and a maximal lift for status and age, whatever it is called. Where load or maximum of a barbell lift is not
///              known nobody knows whether it is one: a caution for who may be under age.
/// Refused: no lift or method (OutOfRange); a load, give-or-take or maximum that is not finite, or below what it can be, lowest above
/// value, a maximum from after the day, or limits that cannot be.
[[nodiscard]] Result<GateAnswer> mayUse(const UseQuestion& question, const GateFacts& facts);

/// The same with what the book knows of an athlete; refused too where it knows nobody of that id (NotThere).
[[nodiscard]] Result<GateAnswer> mayUse(const SeasonBook& book, const RecordId& athlete, const UseQuestion& question);

/// What a book knows for it; nothing where it knows nobody of that id.
[[nodiscard]] std::optional<GateFacts> gateFacts(const SeasonBook& book, const RecordId& athlete, const LiftId& lift);

}
