// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/gates/clearanceeditor.h"

#include "core/work/gates/methodrules.h"
#include "core/work/keeping/athlete/keepclearance.h"
#include "core/work/records/codec.h"
#include "mobile/gates/gatetexts.h"
#include "mobile/text/keepingtexts.h"

#include <algorithm>

using namespace steelyard;

namespace {

// what is said, by its place in the draft
enum What : qsizetype { WhichLift, WhichMethod, Approves };

QCborArray said(const Clearance& clearance)
{
    return {QString::fromStdString(partOf(clearance.lift)), static_cast<int>(clearance.method), clearance.approvesMinor};
}

LiftId liftOf(const QCborArray& what)
{
    return liftIn(what.at(WhichLift).toString().toStdString()).value_or(LiftId{});
}

/// None where none is chosen.
std::optional<Method> methodOf(const QCborArray& what)
{
    const auto number = what.at(WhichMethod).toInteger();
    const auto method = static_cast<Method>(number);
    return number > 0 && number <= static_cast<int>(lastMethod) ? std::optional(method) : std::nullopt;
}

template <typename Value>
int placeOf(const std::vector<Value>& all, const Value& one)
{
    const auto at = std::find(all.begin(), all.end(), one);
    return at == all.end() ? -1 : static_cast<int>(at - all.begin());
}

}

const Clearance* ClearanceEditor::kept() const
{
    return book() ? book()->book().clearance(clearancePlace(record(), athlete())) : nullptr;
}

std::optional<GateForm::Form> ClearanceEditor::keptRecord() const
{
    const Clearance* known = kept();
    return known ? std::optional(formOf(known->who, known->day, known->until, said(*known))) : std::nullopt;
}

QCborArray ClearanceEditor::nothingSaid() const
{
    return {QString(), 0, false};
}

std::vector<std::chrono::days> ClearanceEditor::lengths() const
{
    return {std::chrono::weeks{2}, std::chrono::weeks{4}, std::chrono::weeks{12}};
}

LiftChoices ClearanceEditor::choices() const
{
    const LiftId chosen = liftOf(form().what);
    return book() ? liftChoices(book()->book(), athlete(), std::span(&chosen, chosen == LiftId{} ? 0 : 1)) : LiftChoices{};
}

QStringList ClearanceEditor::lifts() const
{
    return book() ? choices().names(book()->book()) : QStringList{};
}

int ClearanceEditor::lift() const
{
    return choices().placeOf(liftOf(form().what));
}

void ClearanceEditor::setLift(int index)
{
    const LiftChoices all = choices();
    if (all.has(index))
        setWhat(WhichLift, QString::fromStdString(partOf(all.ids[static_cast<std::size_t>(index)])));
}

std::vector<Method> ClearanceEditor::allMethods() const
{
    std::vector<Method> all;
    for (int number = static_cast<int>(Method::Plain); number <= static_cast<int>(lastMethod); ++number)
        all.push_back(static_cast<Method>(number));
    const CoachLimits limits = book() ? book()->book().limits() : CoachLimits{};
    std::stable_partition(all.begin(), all.end(), [&limits](Method method) {
        const MethodRules rules = rulesOf(method, limits);
        return rules.clearance || rules.minorsApproval;
    });
    return all;
}

QStringList ClearanceEditor::methods() const
{
    QStringList list;
    for (const Method one : allMethods())
        list << gatetexts::method(one);
    return list;
}

int ClearanceEditor::method() const
{
    const auto chosen = methodOf(form().what);
    return chosen ? placeOf(allMethods(), *chosen) : -1;
}

void ClearanceEditor::setMethod(int index)
{
    const auto all = allMethods();
    if (index >= 0 && static_cast<std::size_t>(index) < all.size())
        setWhat(WhichMethod, static_cast<int>(all[static_cast<std::size_t>(index)]));
}

bool ClearanceEditor::mayBeMinor() const
{
    const Athlete* known = book() ? book()->book().athlete(athlete()) : nullptr;
    return known && majorityOn(known->birthYear, book()->today(), book()->book().limits().adultFrom()) != Majority::Adult;
}

bool ClearanceEditor::approvesMinor() const
{
    return form().what.at(Approves).toBool();
}

void ClearanceEditor::setApprovesMinor(bool approves)
{
    setWhat(Approves, approves);
}

void ClearanceEditor::setWhat(qsizetype place, const QCborValue& value)
{
    Form now = form();
    now.what[place] = value;
    setForm(now);
}

QString ClearanceEditor::troubleIn(const Form& form) const
{
    if (!waits().isEmpty())
        return waits();
    if (liftOf(form.what) == LiftId{})
        return tr("Choose the lift.");
    return methodOf(form.what) ? QString() : tr("Choose the method.");
}

void ClearanceEditor::keepForm(const Form& form, const WhenTold& told)
{
    Clearance clearance;
    clearance.id = record();
    clearance.athlete = athlete();
    clearance.lift = liftOf(form.what);
    clearance.method = methodOf(form.what).value_or(Method::Plain);
    clearance.who = form.who.toStdString();
    clearance.day = form.from.date().value_or(book()->today());
    clearance.until = form.until ? form.until->date() : std::nullopt;
    clearance.approvesMinor = form.what.at(Approves).toBool();
    if (kept())
        putClearanceRight(book()->keeping(), clearance, told);
    else
        keepClearance(book()->keeping(), clearance, told);
}

void ClearanceEditor::endRecord(const SaidSo& by, const WhenTold& told)
{
    const Clearance given = *kept();
    takeClearanceBack(book()->keeping(), athlete(), given.lift, given.method, by, told);
}
