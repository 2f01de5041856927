// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/keeping/keepathlete.h"

#include "core/work/keeping/fitness.h"
#include "core/work/records/codec.h"

namespace steelyard {

namespace {

std::optional<Unfit> unfitYear(const std::optional<std::chrono::year>& birthYear, std::chrono::sys_days today)
{
    constexpr std::chrono::year earliest(1900);
    if (birthYear && (*birthYear < earliest || *birthYear > std::chrono::year_month_day(today).year()))
        return Unfit::BirthYearUnlikely;
    return std::nullopt;
}

std::optional<Unfit> unfitAgreement(const std::optional<GuardianAgreement>& agreement, std::chrono::sys_days today)
{
    if (agreement && (unfitName(agreement->who) || agreement->day > today))
        return Unfit::AgreementUnfit;
    return std::nullopt;
}

std::optional<Unfit> unfitNotes(const Athlete& athlete, const Athlete& before, std::chrono::sys_days today)
{
    if (athlete.notes == before.notes || athlete.notes.empty())
        return std::nullopt;
    const auto unfit = unfitText(athlete.notes, mostNotesByteCount);
    return unfit ? unfit : unfitForMore(athlete, today);
}

std::optional<Unfit> unfitIn(const Athlete& athlete, const Athlete& before, std::chrono::sys_days today)
{
    if (auto unfit = unfitName(athlete.name))
        return unfit;
    if (auto unfit = unfitText(athlete.squad, mostNameByteCount))
        return unfit;
    if (auto unfit = unfitYear(athlete.birthYear, today))
        return unfit;
    if (auto unfit = unfitAgreement(athlete.agreement, today))
        return unfit;
    return unfitNotes(athlete, before, today);
}

/// Words are what could name somebody; numbers may be tried out.
bool wordsDiffer(const Athlete& athlete, const Athlete& before)
{
    const bool agreementDiffers = athlete.agreement && (!before.agreement || athlete.agreement->who != before.agreement->who);
    return athlete.name != before.name || athlete.notes != before.notes || athlete.squad != before.squad || agreementDiffers;
}

/// Refused where a mark cannot be written.
std::optional<Unfit> draftMarks(Drafting& drafting, const Athlete& athlete, const Athlete& before, const VaultSettings& typedIn)
{
    const Place place = athletePlace(athlete.id);
    for (const auto& [lift, marks] : athlete.marks) {
        const auto known = before.marks.find(lift);
        if (known != before.marks.end() && keptAlike(known->second, marks))
            continue;
        if (lift == LiftId{})
            return Unfit::LiftUnknown;
        const Content content = contentOf(marks, typedIn);
        if (!content)
            return Unfit::QuantityUnfit;
        drafting.set(place, field::athleteMarksNumber, content, partOf(lift));
    }
    for (const auto& known : before.marks)
        if (!athlete.marks.contains(known.first))
            drafting.set(place, field::athleteMarksNumber, std::nullopt, partOf(known.first));
    return std::nullopt;
}

}

void keepAthlete(SeasonKeeping& keeping, Athlete athlete, const WhenTold& told)
{
    const Athlete* known = keeping.book().athlete(athlete.id);
    if (!known && !athlete.id.isNone())
        return told({athlete.id, Unfit::AthleteUnknown, std::nullopt});
    const Athlete before = known ? *known : Athlete{};
    if (keeping.isSample() && wordsDiffer(athlete, before))
        return told({athlete.id, Unfit::SampleTakesNobody, std::nullopt});
    if (const auto unfit = unfitIn(athlete, before, keeping.here().day))
        return told({athlete.id, unfit, std::nullopt});
    if (!known)
        athlete.id = keeping.newId();
    Drafting drafting(keeping);
    const Place place = athletePlace(athlete.id);
    drafting.setText(place, field::athleteNameNumber, athlete.name);
    drafting.setText(place, field::athleteSquadNumber, athlete.squad);
    drafting.set(place, field::athleteBirthYearNumber, athlete.birthYear ? Content(journal::numberItem(int(*athlete.birthYear))) : std::nullopt);
    drafting.set(place, field::athleteAgreementNumber, athlete.agreement ? contentOf(*athlete.agreement) : std::nullopt);
    drafting.setText(place, field::athleteNotesNumber, athlete.notes);
    if (const auto unfit = draftMarks(drafting, athlete, before, keeping.book().settings()))
        return told({before.id, unfit, std::nullopt});
    keeping.keep(Deed::AthleteKept, athlete.id, std::move(drafting).drafts(), told);
}

void keepBodySize(SeasonKeeping& keeping, const RecordId& athlete, const BodySize& size, const WhenTold& told)
{
    const Athlete* known = keeping.book().athlete(athlete);
    const auto unfit = known ? unfitForMore(*known, keeping.here().day) : std::optional(Unfit::AthleteUnknown);
    if (unfit)
        return told({{}, unfit, std::nullopt});
    if (!size.mass && !size.height)
        return told({{}, Unfit::NothingMeasured, std::nullopt});
    const Content content = fits(size.mass) && fits(size.height) ? contentOf(size, keeping.book().settings()) : std::nullopt;
    if (!content)
        return told({{}, Unfit::QuantityUnfit, std::nullopt});
    const RecordId id = keeping.newId();
    Drafting drafting(keeping);
    drafting.add(bodySizePlace(id, athlete), size.day, *content);
    keeping.keep(Deed::BodySizeKept, id, std::move(drafting).drafts(), told);
}

}
