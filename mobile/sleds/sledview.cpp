// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/sleds/sledview.h"

#include "core/work/records/seasonbook.h"
#include "mobile/follow.h"
#include "mobile/sleds/sledtexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <algorithm>
#include <numbers>

using namespace steelyard;

namespace {

constexpr double degree = std::numbers::pi / 180;
/// Standard uncertainty of an angle that was looked at and not measured (our choice).
constexpr double uPushDegrees = 2;

}

void SledView::setBook(BookService* book)
{
    if (follow(this, m_book, book, &SledView::refresh))
        refresh();
}

void SledView::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void SledView::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void SledView::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

const SledMeasurement* SledView::sled() const
{
    const KitRecord* known = m_book ? m_book->book().item(m_item) : nullptr;
    return known ? std::get_if<SledMeasurement>(&known->item.measurement) : nullptr;
}

std::vector<const SledSurface*> SledView::known() const
{
    return m_book ? surfacesOf(m_book->book(), m_venue, m_item) : std::vector<const SledSurface*>{};
}

QStringList SledView::surfaces() const
{
    QStringList list;
    for (const SledSurface* one : known())
        list << QString::fromStdString(one->name);
    return list;
}

void SledView::setSurface(int surface)
{
    if (surface < 0 || static_cast<std::size_t>(surface) >= known().size())
        return;
    m_surface = surface;
    refresh();
}

void SledView::stepAdded(bool up)
{
    m_addedKg = std::clamp(m_addedKg + (up ? addedStepKg : -addedStepKg), 0.0, 400.0);
    refresh();
}

void SledView::stepLoss(bool up)
{
    m_lossPercent = std::clamp(m_lossPercent + (up ? lossStepPercent : -lossStepPercent), lossStepPercent, 90.0);
    refresh();
}

void SledView::stepPush(bool up)
{
    m_pushDegrees = std::clamp(m_pushDegrees + (up ? pushStepDegrees : -pushStepDegrees), 0.0, 60.0);
    refresh();
}

void SledView::readSurface(SledWords& words, const SledSurface& surface) const
{
    const auto friction = frictionOf(surface, *sled());
    if (!friction) {
        words.friction = sledtexts::refusal(friction.error());
        return;
    }
    words.friction = tr("%1. Pulled on %2.").arg(sledtexts::friction(*friction), keepingtexts::day(surface.day, m_book->today()));
    words.added = say::massWithUnit(kilograms(m_addedKg));
    const auto haul = haulOn(*friction, *sled(), surface.hip);
    const auto pull = haul ? sledPullAt(*sled(), kilograms(m_addedKg), *friction, *haul) : Result<SledPull>(haul.error());
    words.pull = !pull                  ? sledtexts::refusal(pull.error())
                 : pull->isNearReadings ? sledtexts::pull(pull->pull)
                                        : tr("%1; outside the loads it was pulled with, so less sure than it looks").arg(sledtexts::pull(pull->pull));
    words.pushAngle = tr("%1° down").arg(say::fixed(m_pushDegrees, 0));
    const auto push = sledPullAt(*sled(), kilograms(m_addedKg), *friction, pushOn(*friction, within(Angle{m_pushDegrees * degree}, Angle{uPushDegrees * degree})));
    words.push = push ? tr("Pushed: %1").arg(sledtexts::pull(push->pull)) : sledtexts::refusal(push.error());
}

void SledView::readRuns(SledWords& words, const SledSurface& surface, std::vector<RunRow>& rows) const
{
    const SeasonBook& book = m_book->book();
    const auto all = book.runsOf(m_athlete);
    const auto runs = runsThatCount(all, {m_item, m_venue, surface.name, SledWay::Tow}, m_book->today());
    for (const SledRunTimed& run : runs)
        rows.push_back({tr("%1 on it").arg(say::massWithUnit(run.added)), sledtexts::speed(run)});
    words.loss = tr("%1 %").arg(say::fixed(m_lossPercent, 0));
    const auto line = speedLineOf(runs, *sled());
    if (!line) {
        words.line = sledtexts::refusal(line.error());
        return;
    }
    words.line = tr("Free she runs %1 by her own line.").arg(sledtexts::speed(line->freeSpeed()));
    const auto load = loadForSpeedLoss(*line, *sled(), m_lossPercent / 100);
    if (!load) {
        words.load = load.error().what == "sled" ? tr("The empty sled costs more than that.") : sledtexts::refusal(load.error());
        return;
    }
    words.load = load->isBetweenRuns ? tr("Put on %1.").arg(sledtexts::mass(load->added)) : tr("Put on %1: past her runs, so guessed.").arg(sledtexts::mass(load->added));
    const auto friction = frictionOf(surface, *sled());
    const auto here = friction ? haulOn(*friction, *sled(), surface.hip) : Result<Haul>(friction.error());
    for (const SledSurface* other : known()) {
        if (other->name == surface.name || !here)
            continue;
        const auto slides = frictionOf(*other, *sled());
        const auto there = slides ? haulOn(*slides, *sled(), other->hip) : Result<Haul>(slides.error());
        const auto same = there ? carriedTo(*load, *here, *there, *sled()) : Result<SledLoad>(there.error());
        words.elsewhere << (same ? tr("On %1 %2 pull as hard.").arg(QString::fromStdString(other->name), sledtexts::mass(same->added))
                                 : tr("On %1: %2").arg(QString::fromStdString(other->name), sledtexts::refusal(same.error())));
    }
}

void SledView::refresh()
{
    SledWords words;
    std::vector<RunRow> rows;
    if (sled()) {
        words.thing = QString::fromStdString(m_book->book().item(m_item)->item.name);
        if (const Athlete* her = m_book->book().athlete(m_athlete))
            words.who = QString::fromStdString(her->name);
        const auto all = known();
        m_surface = all.empty() ? 0 : std::clamp(m_surface, 0, static_cast<int>(all.size()) - 1);
        if (all.empty()) {
            words.friction = tr("It was not pulled here yet: friction is another on every ground, and in the wet.");
        } else {
            readSurface(words, *all[static_cast<std::size_t>(m_surface)]);
            if (!words.who.isEmpty())
                readRuns(words, *all[static_cast<std::size_t>(m_surface)], rows);
        }
    }
    m_words = words;
    m_runs.setRows(std::move(rows));
    Q_EMIT changed();
}
