// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/sleds/runeditor.h"

#include "core/work/implements/implementmass.h"
#include "core/work/implements/keepsleds.h"
#include "core/work/implements/sledwork.h"
#include "mobile/follow.h"
#include "mobile/sleds/sledtexts.h"

#include <QPointer>

#include <cmath>

using namespace steelyard;

void RunEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, [this] { refresh(); }))
        refresh();
}

void RunEditor::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void RunEditor::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void RunEditor::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void RunEditor::setSurface(const QString& surface)
{
    m_surface = surface;
    refresh();
}

QString RunEditor::who() const
{
    const Athlete* her = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    return her ? QString::fromStdString(her->name) : QString();
}

RunForm RunEditor::form() const
{
    const auto bytes = m_book ? m_book->draft(draftKey()) : std::nullopt;
    const auto read = bytes ? sledforms::runIn(*bytes) : std::nullopt;
    return read.value_or(RunForm{});
}

void RunEditor::setForm(const RunForm& form)
{
    if (!m_book || form == this->form())
        return;
    if (form == RunForm{})
        m_book->throwDraft(draftKey());
    else
        m_book->setDraft(draftKey(), sledforms::bytesOf(form, m_book->book().settings()));
    refresh();
}

std::optional<SledRunTimed> RunEditor::run() const
{
    RunForm now = form();
    now.surface = m_surface.toStdString();
    // the venue's lane is what is run unless another length is said
    if (const Venue* venue = m_book ? m_book->book().venue(m_venue) : nullptr; venue && !now.distance)
        now.distance = venue->lane;
    auto made = sledforms::record(now);
    if (made) {
        made->athlete = m_athlete;
        made->venue = m_venue;
        made->sled = m_item;
        made->day = m_book->today();
    }
    return made;
}

QString RunEditor::answer() const
{
    const auto made = run();
    return made ? sledtexts::speed(*made) : tr("How fast: not known yet");
}

QString RunEditor::trouble() const
{
    if (m_surface.isEmpty())
        return tr("Choose the surface first.");
    return run() ? QString() : tr("Still to do: what lay on the sled, how far, and how long it took.");
}

bool RunEditor::canKeep() const
{
    return m_book && run() && !who().isEmpty();
}

bool RunEditor::isDrafted() const
{
    return m_book && m_book->draft(draftKey()).has_value();
}

std::vector<FieldSpec> RunEditor::specs() const
{
    const RunForm now = form();
    const Venue* venue = m_book ? m_book->book().venue(m_venue) : nullptr;
    const bool byLane = !now.distance && venue && venue->lane;
    FieldSpec time(QStringLiteral("time"), tr("It took"), unitless(now.time ? std::optional(static_cast<double>(now.time->quantity().count()) / 1000) : std::nullopt), {2, 2, 0.5, 90}, false,
                   tr("by hand: 0.1 s give or take is counted in"), true);
    time.unit = tr("s");
    return {{QStringLiteral("added"), tr("On the sled"), inMass(now.added), {3, 2, 0, 500}, false, tr("plates on it; 0 with none"), true},
            {QStringLiteral("distance"), tr("How far"), inLength(byLane ? venue->lane : now.distance), {4, 0, 200, 6000}, byLane, tr("between the two marks, from a flying start"), true},
            time,
            {QStringLiteral("belt"), tr("Her belt"), inLength(now.belt), {3, 1, 50, 150}, false, tr("above the ground; leave out when the strap is level")}};
}

KeepOutcome RunEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    RunForm now = form();
    if (key == QLatin1String("added"))
        now.added = keyed.mass();
    else if (key == QLatin1String("distance"))
        now.distance = keyed.length();
    else if (key == QLatin1String("time"))
        now.time = Entered<std::chrono::milliseconds>(std::chrono::milliseconds(std::llround(keyed.ratio * 1000)));
    else if (key == QLatin1String("belt"))
        now.belt = keyed.length();
    else
        return {tr("There is no such number."), {}};
    setForm(now);
    return {};
}

bool RunEditor::canClear(const QString& key) const
{
    return key == QLatin1String("belt") && form().belt.has_value();
}

bool RunEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    RunForm now = form();
    now.belt.reset();
    setForm(now);
    return true;
}

void RunEditor::keep()
{
    if (!canKeep())
        return;
    keepSledRun(m_book->keeping(), *run(), m_book->teller([self = QPointer<RunEditor>(this)](const RecordId&) {
        if (!self)
            return;
        self->throwDraft();
        Q_EMIT self->kept();
    }));
}

void RunEditor::throwDraft()
{
    setForm({});
}
