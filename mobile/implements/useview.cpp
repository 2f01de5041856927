// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/useview.h"

#include "core/measure/rounding.h"
#include "core/work/records/codec.h"
#include "core/work/strength/maxima.h"
#include "core/work/venues/keepvenuekit.h"
#include "mobile/follow.h"
#include "mobile/gates/gatetexts.h"
#include "mobile/implements/usetexts.h"
#include "mobile/text/giving.h"
#include "mobile/text/implementtexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace steelyard;

void UseView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &UseView::refresh))
        refresh();
}

void UseView::setAthleteId(const QString& id)
{
    const RecordId athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    if (athlete != m_athlete)
        m_lookedOver.clear();
    m_athlete = athlete;
    refresh();
}

void UseView::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    m_lift = m_setting = 0;
    m_addedKg = 0;
    refresh();
}

const KitItem* UseView::item() const
{
    const KitRecord* known = m_book ? m_book->book().item(m_item) : nullptr;
    return known ? &known->item : nullptr;
}

QString UseView::kind() const
{
    return item() ? QString::fromStdString(wordOf(kindOf(item()->measurement))) : QString();
}

std::vector<LiftId> UseView::liftIds() const
{
    return item() ? liftsWith(item()->measurement) : std::vector<LiftId>{};
}

QStringList UseView::lifts() const
{
    QStringList list;
    for (const LiftId& lift : liftIds())
        list << keepingtexts::lift(lift, m_book->book());
    return list;
}

void UseView::setLift(int lift)
{
    if (lift < 0 || static_cast<std::size_t>(lift) >= liftIds().size())
        return;
    m_lift = lift;
    refresh();
}

QString UseView::liftId() const
{
    const auto all = liftIds();
    return static_cast<std::size_t>(m_lift) < all.size() ? QString::fromStdString(partOf(all[static_cast<std::size_t>(m_lift)])) : QString();
}

void UseView::lookOver(int code)
{
    const auto all = liftIds();
    if (code < 0 || static_cast<std::size_t>(code) >= m_shown.size() || static_cast<std::size_t>(m_lift) >= all.size())
        return;
    m_lookedOver.push_back({m_item, all[static_cast<std::size_t>(m_lift)], m_shown[static_cast<std::size_t>(code)]});
    refresh();
}

void UseView::step(bool up)
{
    if (!item())
        return;
    if (std::holds_alternative<CarryMeasurement>(item()->measurement))
        m_addedKg = std::clamp(m_addedKg + (up ? addedStepKg : -addedStepKg), 0.0, 200.0);
    else if (const auto* bell = std::get_if<BellMeasurement>(&item()->measurement); bell && !bell->settings.empty())
        m_setting = std::clamp(m_setting + (up ? 1 : -1), 0, static_cast<int>(bellSettings(*bell).size()) - 1);
    else
        return;
    // what was looked over was another load
    m_lookedOver.clear();
    refresh();
}

Result<CarryLoad> UseView::carryNow(const CarryMeasurement& carry) const
{
    return carryLoad(carry, kilograms(m_addedKg), carry.sort == CarrySort::OneHandle ? Limbs::Right : Limbs::Both);
}

std::optional<Estimate<Mass>> UseView::load() const
{
    if (const auto* bell = std::get_if<BellMeasurement>(&item()->measurement); bell && !bell->settings.empty())
        return bellSettings(*bell)[static_cast<std::size_t>(m_setting)];
    const auto* carry = std::get_if<CarryMeasurement>(&item()->measurement);
    const auto loaded = carry ? carryNow(*carry) : Result<CarryLoad>(Error{Refusal::NotThere, "carry"});
    if (!loaded)
        return std::nullopt;
    if (loaded->left && loaded->right)
        return sumOf(*loaded->left, *loaded->right);
    return loaded->whole ? loaded->whole : loaded->right;
}

QString UseView::carried(const UseFacts& facts, const CarryMeasurement& carry) const
{
    const auto held = load();
    const Athlete* her = m_book->book().athlete(m_athlete);
    if (!held || !her)
        return {};
    const Venue* venue = m_book->book().venue(venueNow(m_book->book(), *item()));
    const Length lane = venue && venue->lane ? venue->lane->quantity() : Length{};
    const auto done = carryFigures({carryKindOf(carry.sort), *carryNow(carry), {{within(lane, uTape), std::nullopt, 0}}, 0}, *her, m_book->today(), knownMaximum(m_book->book(), m_athlete, deadliftId, facts.day));
    QStringList said{tr("In her hands at once: %1.").arg(say::inMassUnit(say::withGive(roundTogether(say::shown(held->value), say::shown(held->giveOrTake()), 1))))};
    if (!done)
        return said.join(QLatin1Char(' '));
    const auto percent = [](const Estimate<double>& ratio) { return say::withGive(roundTogether(ratio.value, ratio.uncertainty.giveOrTake(), 0)); };
    if (done->bodyPercent)
        said << tr("%1 % of her body mass.").arg(percent(*done->bodyPercent));
    if (done->deadliftPercent)
        said << tr("%1 % of her lowest deadlift.").arg(percent(*done->deadliftPercent));
    if (lane > Length{})
        said << tr("One lap of the lane: %1 kg·m, which are no tonnage.").arg(say::withGive(roundTogether(done->done.all.value.si(), done->done.all.giveOrTake().si(), 0)));
    return said.join(QLatin1Char(' '));
}

QString UseView::figures(const UseFacts& facts) const
{
    if (const auto* carry = std::get_if<CarryMeasurement>(&item()->measurement))
        return carried(facts, *carry);
    const auto* tyre = std::get_if<TyreMeasurement>(&item()->measurement);
    if (!tyre)
        return {};
    const auto flip = flipFigures(*tyre, facts.maximum);
    if (!flip)
        return tr("Read its diameter and width, and what a flip takes is known.");
    const QString force = say::withGive(roundTogether(flip->start.vertical.value.si(), flip->start.vertical.giveOrTake().si(), 0));
    const QString taken = tr("Off the ground its edge takes %1 N straight up, most of the whole flip; at %2° it stands by itself.")
                              .arg(force, say::fixed(flip->flip.balance().value.radians * 180 / std::numbers::pi, 0));
    return flip->startPercent ? tr("%1 That is %2 % of her lowest deadlift, give-or-take counted in.").arg(taken, say::plain(std::ceil(*flip->startPercent), 0)) : taken;
}

QStringList UseView::flip(const UseFacts& facts) const
{
    const auto* tyre = std::get_if<TyreMeasurement>(&item()->measurement);
    const auto figures = tyre ? flipFigures(*tyre, facts.maximum) : Result<FlipFigures>(Error{Refusal::NotThere, "tyre"});
    QStringList rows;
    if (!figures)
        return rows;
    constexpr int stepDegrees = 15;
    constexpr double radians = std::numbers::pi / 180;
    for (int degrees = 0; degrees * radians < figures->flip.balance().value.radians; degrees += stepDegrees)
        if (const auto at = figures->flip.at(Angle{degrees * radians}))
            rows << tr("%1°, edge at %2: %3 N").arg(say::fixed(degrees, 0), say::lengthWithUnit(at->edge), say::withGive(roundTogether(at->vertical.value.si(), at->vertical.giveOrTake().si(), 0)));
    return rows;
}

QString UseView::heldAgainst(const UseFacts& facts) const
{
    if (methodOf(item()->measurement) == Method::Tyre)
        return {};
    return facts.cap ? tr("%1 % of her %2").arg(say::fixed(facts.cap->percent, 0), keepingtexts::lift(facts.cap->of, m_book->book())) : tr("no lift");
}

void UseView::refresh()
{
    UseWords words;
    std::vector<NoticeRow> stops;
    std::vector<CautionRow> cautions;
    m_shown.clear();
    const auto all = liftIds();
    const Athlete* her = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    if (her && static_cast<std::size_t>(m_lift) < all.size()) {
        const SeasonBook& book = m_book->book();
        const auto today = m_book->today();
        const auto facts = useFacts(book, m_athlete, all[static_cast<std::size_t>(m_lift)], today);
        const ImplementUse use = implementUse(*item(), implementMass(item()->measurement), *facts, m_lookedOver, load());
        words = {QString::fromStdString(item()->name), QString::fromStdString(her->name), implementtexts::comesTo(item()->measurement), usetexts::permission(use.permission),
                 figures(*facts), heldAgainst(*facts), flip(*facts), {}, {}, use.permission == Permission::Not, use.permission == Permission::Permitted};
        if (const auto* carry = std::get_if<CarryMeasurement>(&item()->measurement)) {
            words.setLabel = carry->sort == CarrySort::Handles ? tr("Plates on each handle") : tr("Plates on it");
            words.set = say::massWithUnit(kilograms(m_addedKg));
        } else if (const auto* bell = std::get_if<BellMeasurement>(&item()->measurement); bell && !bell->settings.empty()) {
            words.setLabel = tr("Set to");
            words.set = say::massWithUnit(load()->value);
        }
        if (use.error)
            stops.push_back({tr("Nobody knows whether she may"), sentences::refusal(*use.error), true});
        const auto add = [&](const sentences::Said& said, const QStringList& points, bool stop, bool looked, const std::variant<UseCode, ReasonKey>& what) {
            if (stop) {
                stops.push_back({said.head, said.body, true});
                return;
            }
            cautions.push_back({static_cast<int>(m_shown.size()), said.head, points, looked});
            m_shown.push_back(what);
        };
        for (const UseReason& one : use.reasons) {
            const auto said = usetexts::reason(one, book, today);
            add(said, {said.body}, one.alone == Permission::Not, one.lookedOver, one.code);
        }
        for (const Reason& one : use.gates) {
            const bool waits = one.key.code == GateCode::CautionWaits;
            const auto said = gatetexts::reason({one, {one.key.method}}, today);
            add(said, waits ? gatetexts::caution(one.key.method).points : QStringList{said.body}, one.alone == Permission::Not, one.lookedOver, one.key);
        }
    }
    m_words = words;
    m_stops.setRows(std::move(stops));
    m_cautions.setRows(std::move(cautions));
    Q_EMIT changed();
}
