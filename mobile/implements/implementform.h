// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/season/kit.h"
#endif
#include "mobile/editors/fieldeditor.h"
#include "mobile/tools/tooleditor.h"

#include <variant>

/** The forms of what is lifted, carried or dragged by itself: numbers, choices and words of each kind. */
namespace implementform {

/// One of the masses that a bell can be set to; one past the last is a new one.
struct Setting {
    std::vector<steelyard::Entered<steelyard::Mass>>* list;
    std::size_t place;
};

/// One number of a form: where it is kept, what may be keyed, and how it is read.
struct Number {
    using Where = std::variant<std::optional<steelyard::Entered<steelyard::Mass>>*, std::optional<steelyard::Entered<steelyard::Length>>*,
                               std::optional<steelyard::Entered<steelyard::Volume>>*, std::optional<double>*, Setting>;
    QString key, label, hint, how;
    Where where;
    steelyard::EntryLimits limits; ///< in kg, cm, mm or litres
    bool needed = true;            ///< the mass is not known without it
    bool fine = false;             ///< a length in mm
    QString unit{};                ///< of a bare number
};

/// The numbers of a form as it stands, in the order in which they are read; they point into it.
[[nodiscard]] std::vector<Number> numbersOf(steelyard::Measured& measured);
/// What is asked besides, each with its answer.
[[nodiscard]] std::vector<AskedRow> askedOf(const steelyard::Measured& measured);
/// Answers one of these; another number is passed over.
void answer(steelyard::Measured& measured, const QString& key, int index);

/// How it is measured, as choices: which of them, and another one. -1 where there is nothing to choose.
[[nodiscard]] int wayOf(const steelyard::Measured& measured);
void setWay(steelyard::Measured& measured, int way);

/// One more reading, with the key of its first number; empty where there is no room for one.
[[nodiscard]] QString addEntry(steelyard::Measured& measured);
/// What such an entry is called; empty where there is none.
[[nodiscard]] QString moreOf(const steelyard::Measured& measured);
/// Takes out the number, and with it the entry it belongs to.
bool clear(steelyard::Measured& measured, const QString& key);

[[nodiscard]] ToolWords wordsOf(const steelyard::Measured& measured);
/// What it is called while nobody has named it: "Tyre, 118 kg".
[[nodiscard]] QString nameOf(const steelyard::Measured& measured);
/// The scale that it is weighed on; nothing where none is asked for.
[[nodiscard]] steelyard::WholeMass* scaleOf(steelyard::Measured& measured);

}
