// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/journal/content.h"
#include "core/season/athlete.h"
#include "core/season/clearance.h"
#include "core/season/savedsetup.h"
#include "core/season/strengthtest.h"
#include "core/work/records/recordwriter.h"

#include <string>

namespace steelyard {

/// Values of records as content of the journal: maps with whole numbers as keys, each quantity as a whole number of mg or µm beside
/// the decimal and the unit that it was typed in. What is not known has no key. The numbers are written down for ever; old readers
/// take a value of a newer form for one they cannot read, and leave the entry as it is.
///   bar marks       1 start (1 own bottom, 2 floor) · 2 bottom · 3 blocks · 4 zone from · 5 zone to · 6 top · 7 rack
///                   8 list of those read at a hole (1 key of the mark · 2 rack · 3 hole, the lowest being 1)
///   agreement       1 who · 2 day, since 1970
///   body size       1 mass · 2 height; the day is the entry's
///   measurement     1 item · 2 chain, 3 band, 4 aid, 5 machine, 6 scale, 7 iron, 8 lead or 9 rack; from 10 on see implementcodec.h
///   chain           1 by (1 weighed, 2 gauged) · 2 length · 3 mass · 4 scale step · 5 wire · 6 pitch · 7 inner width
///                   8 accuracy of the scale
///   band            1 rest · 2 list of hangings (1 mass · 2 length · 3 true when left out · 4 true on the way back) · 3 model (1 line, 2 quadratic, 3 rubber)
///   aid             1 list of readings (1 mass · 2 height above the chest · 3 true when left out)
///   machine         1 by (1 radius, 2 pull) · 2 stack · 3 scale step · 4 list of readings (1 angle, in thousandths of a degree · 2 radius
///                   3 travel · 4 pull, as a mass)
///   scale           1 empty · 2 step · 3 list of readings (1 known · 2 read)
///   iron            1 sort (1 bar, 2 plates) · 2 marked · 3 read · 4 scale step · 5 accuracy of the scale · 6 count · 7 both ends
///   lead            1 length · 2 mass
///   rack            1 lowest hole · 2 from hole to hole · 3 count of holes · 4 list of anchors (1 height)
///   load            1 bar · 2 list of what hangs
///   bar             1 bar · 2 true when entered · 3 collars · 4 wanted · 5 plates (1 as marked, 2 unweighed)
///                   6 list of stock (1 mass by the mark · 2 diameter · 3 thickness · 4 count · 5 mass by a scale · 6 weighed)
///                   7 sleeve · 8 weighed
///   weighed         1 item · 2 standard uncertainty of one
///   what hangs      1 item · 2 on (1 both, 2 left, 3 right) · 3 chain's placing, 4 band's or 5 aid's
///   chain's placing 1 way (1 straight, 2 doubled, 3 bunched) · 2 lead · 3 lead's mass · 4 bunch
///   band's placing  1 true when doubled · 2 true when above · 3 anchor's height · 4 offset · 5 handle · 6 held by
///   aid's placing   1 chest's height, where it is not the bar's lowest
///   inspection      1 found (1 fit, 2 worn link, 3 cut, 4 other, 5 bent link, 6 hook, 7 crack, 8 sticky, 9 seam, 10 cable, 11 pin,
///                   12 zero runs away, 13 dropped, 14 collar, 15 buckle, 16 weld, 17 wire, 18 sidewall, 19 pressure, 20 leak, 21 split,
///                   22 handle; above: other) · 2 note · 3 day, since 1970
///   on loan         1 whose it is, or who has it · 2 day it is to be back, since 1970
///   kind of item    the number of its measurement's key
///   strength test   1 lift · 2 load · 3 reps · 4 reps in reserve · 5 true when one was missed · 6 true when a maximum · 7 least jump
///                   8 list of methods that hung · 9 set-up · 10 body mass · 11 note; the day is the entry's
///   clearance       1 lift · 2 method · 3 who · 4 until, since 1970 · 5 true when it approves a minor; the day is the entry's
///   day status      1 how much (1 all, 2 some, 3 none) · 2 who · 3 until, since 1970 · 4 list of methods · 5 list of groups of lifts
///                   6 list of lifts · 7 text; the day is the entry's
///   said so         1 who · 2 day, since 1970
///   method, group   their numbers
///   acknowledgement 1 set-up · 2 caution (1 chains, 2 bands below, 3 bands above, 4 bench aid
///                   5 release) · 3 mark of what hung
///   release         1 way (1 hooks, 2 partner lifts off, 3 partner adds, 4 bands let go, 5 dumbbells dropped) · 2 asked · 3 hook
///                   4 measures · 5 push, as a mass · 6 dumbbell · 7 set
///   asked           1 true when in percent · 2 up, in tenths of a percent · 3 down · 4 true when down is of the way up · 5 load down
///   hook            1 frame · 2 scale step · 3 room · 4 rating · 5 list of settings (1 length)
///   measures        1 sleeve's radius · 2 lip's drop · 3 list of reps (1 height) · 4 box · 5 margin · 6 spacing · 7 grip · 8 chest · 9 throat
///   set             1 reps · 2 reps of a cluster · 3 rest, in s · 4 tempo down, in ms · 5 put back (1 never, 2 each rep, 3 each cluster)
///                   6 by (1 nobody, 2 spotters, 3 athlete)
/// Nothing where a quantity is not finite or does not fit a whole number of the base unit.
using Content = std::optional<journal::ByteBuffer>;

/// The value as content. A quantity is written as it was typed; one that nobody typed with the fewest decimals in the unit given.
[[nodiscard]] Content contentOf(const BarMarks& marks, const WrittenIn& in);
[[nodiscard]] Content contentOf(const GuardianAgreement& agreement);
[[nodiscard]] Content contentOf(const BodySize& size, const WrittenIn& in);
[[nodiscard]] Content contentOf(const MeasurementRecord& record, const WrittenIn& in);
/// Bar and what hangs; what makes the way down heavier is a value of its own.
[[nodiscard]] Content contentOf(const SetupRecord& load, const WrittenIn& in);
[[nodiscard]] Content contentOf(const ReleasePlan& plan, const WrittenIn& in);
[[nodiscard]] Content contentOf(const Inspection& inspection);
[[nodiscard]] Content contentOf(const OnLoan& loan);
[[nodiscard]] Content contentOf(ItemKind kind);
[[nodiscard]] Content contentOf(const Acknowledgement& acknowledgement);
[[nodiscard]] Content contentOf(const StrengthTest& test, const WrittenIn& in);
[[nodiscard]] Content contentOf(const Clearance& clearance);
[[nodiscard]] Content contentOf(const DayStatus& status);
[[nodiscard]] Content contentOf(const SaidSo& saidSo);
/// The number of a lift that ships, the id of one that was added.
[[nodiscard]] Content contentOf(LiftId lift);
[[nodiscard]] Content contentOf(LiftStart start);

/// The value again, to the whole base unit; nothing where it cannot be read here. Ids, athletes and days stand in the entry.
[[nodiscard]] std::optional<BarMarks> marksIn(journal::ByteView content);
[[nodiscard]] std::optional<GuardianAgreement> agreementIn(journal::ByteView content);
[[nodiscard]] std::optional<BodySize> bodySizeIn(journal::ByteView content);
[[nodiscard]] std::optional<MeasurementRecord> measurementIn(journal::ByteView content);
[[nodiscard]] std::optional<SetupRecord> loadIn(journal::ByteView content);
[[nodiscard]] std::optional<ReleasePlan> releasePlanIn(journal::ByteView content);
[[nodiscard]] std::optional<Inspection> inspectionIn(journal::ByteView content);
[[nodiscard]] std::optional<OnLoan> onLoanIn(journal::ByteView content);
[[nodiscard]] std::optional<ItemKind> itemKindIn(journal::ByteView content);
[[nodiscard]] std::optional<Acknowledgement> acknowledgementIn(journal::ByteView content);
[[nodiscard]] std::optional<StrengthTest> strengthTestIn(journal::ByteView content);
[[nodiscard]] std::optional<Clearance> clearanceIn(journal::ByteView content);
[[nodiscard]] std::optional<DayStatus> dayStatusIn(journal::ByteView content);
[[nodiscard]] std::optional<SaidSo> saidSoIn(journal::ByteView content);
[[nodiscard]] std::optional<LiftId> liftIdIn(journal::ByteView content);
[[nodiscard]] std::optional<LiftStart> liftStartIn(journal::ByteView content);

/// Whether both would be kept as the same: to the whole mg and µm.
[[nodiscard]] bool keptAlike(const BarMarks& a, const BarMarks& b);
[[nodiscard]] bool keptAlike(const SetupRecord& a, const SetupRecord& b);
[[nodiscard]] bool keptAlike(const std::optional<ReleasePlan>& a, const std::optional<ReleasePlan>& b);

/// The lift as the part of a register, and back; nothing for another text.
[[nodiscard]] std::string partOf(LiftId lift);
[[nodiscard]] std::optional<LiftId> liftIn(const std::string& part);

/// A unit by its number in the journal.
[[nodiscard]] journal::Unit unitFor(MassUnit unit);
[[nodiscard]] journal::Unit unitFor(LengthUnit unit);

/// What a look over holds for: the first 16 bytes of BLAKE2b-256 over what hangs and how, as content, and over the release with nothing
/// asked where there is one. Another load of plates leaves it as it is.
[[nodiscard]] RecordId hungMark(const SetupRecord& load);

}
