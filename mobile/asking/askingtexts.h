// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hanging/whyhung.h"
#include "core/season/isometricpull.h"
#include "core/work/asking/kitquestion.h"
#include "mobile/asking/answerrow.h"
#include "mobile/asking/levelshown.h"

/** What is asked of the kit and what is answered, in words and points. */
namespace askingtexts {

/// Kit by its names.
class Names {
public:
    explicit Names(const std::vector<steelyard::KitItem>& kit) : m_kit(kit) {}
    [[nodiscard]] QString of(const steelyard::RecordId& id) const;

private:
    const std::vector<steelyard::KitItem>& m_kit;
};

/// "At the top"; and in the middle of a sentence.
[[nodiscard]] QString place(steelyard::TargetPlace place);
[[nodiscard]] QString atPlace(steelyard::TargetPlace place);
/// What comes first where it cannot be asked.
[[nodiscard]] QString comesFirst(const steelyard::Error& error);
/// Why things are not among the choices, in one sentence; empty where all are.
[[nodiscard]] QString leftOut(const steelyard::KitQuestion& asked, const Names& names);
/// "At the top: 2 kg more · …", and how level it is where that was asked.
[[nodiscard]] QString off(const steelyard::KitQuestion& asked, const steelyard::HangAnswer& answer);
/// That the best was not proved, and how near anything could come at most.
[[nodiscard]] QString stopped(steelyard::Force bound);
/// What hangs, and what comes off and goes on against the bar as it stands.
[[nodiscard]] QStringList hangs(const steelyard::SetupRecord& meant, const Names& names);
[[nodiscard]] QStringList changes(const steelyard::SetupRecord& now, const steelyard::SetupRecord& meant, const steelyard::KitQuestion& asked,
                                  const steelyard::HangAnswer& answer, const Names& names);
/// "Long chains give the rise: …. With Wide bands it would be 9 kg too much at the top."
[[nodiscard]] QString why(const steelyard::KitQuestion& asked, const steelyard::HangReason& reason, const Names& names);
/// "4 pulls at 3 heights"; "none yet".
[[nodiscard]] QString pulls(const std::vector<steelyard::IsometricPull>& pulls);
/// The picture of an answer that was asked to be level; without points where there is none.
[[nodiscard]] LevelShown level(const steelyard::Setup& setup, const steelyard::StrengthCurve& strength);

}
