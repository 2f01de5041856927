// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/statuseditor.h"

#include "core/work/keeping/athlete/keepstatus.h"
#include "core/work/records/codec.h"
#include "mobile/gates/gatetexts.h"

using namespace steelyard;

namespace {

// what is said, by its place in the draft
enum What : qsizetype { HowMuch, Methods, Groups, Lifts, Words };
constexpr int notSaid = 0;

template <typename Number>
QCborArray numbersOf(const std::set<Number>& set)
{
    QCborArray list;
    for (const Number one : set)
        list.append(static_cast<int>(one));
    return list;
}

template <typename Number>
std::set<Number> numbersIn(const QCborValue& value, Number last)
{
    std::set<Number> set;
    for (const auto& one : value.toArray())
        if (one.toInteger() >= 1 && one.toInteger() <= static_cast<int>(last))
            set.insert(static_cast<Number>(one.toInteger()));
    return set;
}

QCborArray written(const DayStatus& status, int howMuch)
{
    QCborArray lifts;
    for (const LiftId& lift : status.notLifts)
        lifts.append(QString::fromStdString(partOf(lift)));
    return {howMuch, numbersOf(status.notMethods), numbersOf(status.notGroups), lifts, QString::fromStdString(status.text)};
}

DayStatus read(const QCborArray& what)
{
    DayStatus status;
    const auto howMuch = what.at(HowMuch).toInteger();
    status.fitness = howMuch == static_cast<int>(Fitness::None) ? Fitness::None : howMuch == static_cast<int>(Fitness::Some) ? Fitness::Some : Fitness::All;
    status.notMethods = numbersIn(what.at(Methods), lastMethod);
    status.notGroups = numbersIn(what.at(Groups), lastLiftGroup);
    for (const auto& part : what.at(Lifts).toArray())
        if (const auto lift = liftIn(part.toString().toStdString()))
            status.notLifts.insert(*lift);
    status.text = what.at(Words).toString().toStdString();
    return status;
}

template <typename Number>
QList<int> placesOf(const std::set<Number>& set)
{
    QList<int> places;
    for (const Number one : set)
        places << static_cast<int>(one) - 1;
    return places;
}

template <typename Number>
void turn(std::set<Number>& set, int index, Number last)
{
    const auto one = static_cast<Number>(index + 1);
    if (index >= 0 && index < static_cast<int>(last) && set.erase(one) == 0)
        set.insert(one);
}

}

const DayStatus* StatusEditor::kept() const
{
    return book() ? book()->book().status(dayStatusPlace(record(), athlete())) : nullptr;
}

std::optional<GateForm::Form> StatusEditor::keptRecord() const
{
    const DayStatus* known = kept();
    return known ? std::optional(formOf(known->who, known->day, known->until, written(*known, static_cast<int>(known->fitness)))) : std::nullopt;
}

QCborArray StatusEditor::nothingSaid() const
{
    return written({}, notSaid);
}

std::vector<std::chrono::days> StatusEditor::lengths() const
{
    return {std::chrono::days{0}, std::chrono::days{3}, std::chrono::weeks{1}, std::chrono::weeks{2}};
}

DayStatus StatusEditor::said() const
{
    return read(form().what);
}

void StatusEditor::say(const DayStatus& status)
{
    Form now = form();
    now.what = written(status, static_cast<int>(status.fitness));
    setForm(now);
}

int StatusEditor::fitness() const
{
    return static_cast<int>(form().what.at(HowMuch).toInteger()) - 1;
}

void StatusEditor::setFitness(int fitness)
{
    if (fitness < 0 || fitness >= static_cast<int>(Fitness::None))
        return;
    DayStatus status = said();
    status.fitness = static_cast<Fitness>(fitness + 1);
    say(status);
}

QStringList StatusEditor::groups() const
{
    QStringList list;
    for (int number = 1; number <= static_cast<int>(lastLiftGroup); ++number)
        list << gatetexts::group(static_cast<LiftGroup>(number));
    return list;
}

QList<int> StatusEditor::notGroups() const
{
    return placesOf(said().notGroups);
}

QStringList StatusEditor::methods() const
{
    QStringList list;
    for (int number = 1; number <= static_cast<int>(lastMethod); ++number)
        list << gatetexts::method(static_cast<Method>(number));
    return list;
}

QList<int> StatusEditor::notMethods() const
{
    return placesOf(said().notMethods);
}

LiftChoices StatusEditor::choices() const
{
    const auto named = said().notLifts;
    return book() ? liftChoices(book()->book(), athlete(), std::vector(named.begin(), named.end())) : LiftChoices{};
}

QStringList StatusEditor::lifts() const
{
    return book() ? choices().names(book()->book()) : QStringList{};
}

QList<int> StatusEditor::notLifts() const
{
    const LiftChoices all = choices();
    QList<int> places;
    for (const LiftId& lift : said().notLifts)
        places << all.placeOf(lift);
    return places;
}

QString StatusEditor::text() const
{
    return QString::fromStdString(said().text);
}

void StatusEditor::setText(const QString& text)
{
    DayStatus status = said();
    Form now = form();
    status.text = text.toStdString();
    now.what = written(status, static_cast<int>(now.what.at(HowMuch).toInteger()));
    setForm(now);
}

void StatusEditor::turnGroup(int index)
{
    DayStatus status = said();
    turn(status.notGroups, index, lastLiftGroup);
    say(status);
}

void StatusEditor::turnMethod(int index)
{
    DayStatus status = said();
    turn(status.notMethods, index, lastMethod);
    say(status);
}

void StatusEditor::turnLift(int index)
{
    const LiftChoices all = choices();
    if (!all.has(index))
        return;
    DayStatus status = said();
    const LiftId& lift = all.ids[static_cast<std::size_t>(index)];
    if (status.notLifts.erase(lift) == 0)
        status.notLifts.insert(lift);
    say(status);
}

QString StatusEditor::troubleIn(const Form& form) const
{
    if (form.what.at(HowMuch).toInteger() == notSaid)
        return tr("Say how much: all, some or none.");
    const DayStatus status = read(form.what);
    if (!waits().isEmpty() && (status.fitness == Fitness::Some || !status.text.empty()))
        return waits();
    if (status.fitness != Fitness::Some)
        return {};
    const bool says = !status.notGroups.empty() || !status.notMethods.empty() || !status.notLifts.empty() || !status.text.empty();
    return says ? QString() : tr("Say what not, by the keys or in words.");
}

void StatusEditor::keepForm(const Form& form, const WhenTold& told)
{
    DayStatus status = read(form.what);
    status.id = record();
    status.athlete = athlete();
    status.who = form.who.toStdString();
    status.day = form.from.date().value_or(book()->today());
    status.until = form.until ? form.until->date() : std::nullopt;
    // what not belongs to some alone
    if (status.fitness != Fitness::Some) {
        status.notMethods.clear();
        status.notGroups.clear();
        status.notLifts.clear();
    }
    if (kept())
        putDayStatusRight(book()->keeping(), status, told);
    else
        keepDayStatus(book()->keeping(), status, told);
}

void StatusEditor::endRecord(const SaidSo& by, const WhenTold& told)
{
    liftDayStatus(book()->keeping(), athlete(), record(), by, told);
}
