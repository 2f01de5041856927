// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/sleds/surfaceeditor.h"

#include "core/work/implements/keepsleds.h"
#include "core/work/implements/sledwork.h"
#include "mobile/follow.h"
#include "mobile/sleds/sledtexts.h"

#include <QPointer>

#include <algorithm>

using namespace steelyard;

namespace {

/// The number of a pull behind "added:" or "pull:".
std::optional<std::size_t> placeIn(const QString& key, const char* stem)
{
    const QString start = QLatin1String(stem) + QLatin1Char(':');
    bool isNumber = false;
    const uint place = key.startsWith(start) ? key.mid(start.size()).toUInt(&isNumber) : 0;
    return isNumber ? std::optional<std::size_t>(place) : std::nullopt;
}

}

void SurfaceEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, [this] { refresh(); }))
        refresh();
}

void SurfaceEditor::setVenueId(const QString& id)
{
    m_venue = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

void SurfaceEditor::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

SurfaceForm SurfaceEditor::form() const
{
    const auto bytes = m_book ? m_book->draft(draftKey()) : std::nullopt;
    const auto read = bytes ? sledforms::surfaceIn(*bytes) : std::nullopt;
    return read.value_or(SurfaceForm{});
}

void SurfaceEditor::setForm(const SurfaceForm& form)
{
    if (!m_book || form == this->form())
        return;
    if (form == SurfaceForm{})
        m_book->throwDraft(draftKey());
    else
        m_book->setDraft(draftKey(), sledforms::bytesOf(form, m_book->book().settings()));
    refresh();
}

const SledMeasurement* SurfaceEditor::sled() const
{
    const KitRecord* known = m_book ? m_book->book().item(m_item) : nullptr;
    return known ? std::get_if<SledMeasurement>(&known->item.measurement) : nullptr;
}

SledSurface SurfaceEditor::surface() const
{
    SledSurface surface = sledforms::record(form());
    surface.venue = m_venue;
    surface.sled = m_item;
    surface.day = m_book ? m_book->today() : std::chrono::sys_days{};
    return surface;
}

QString SurfaceEditor::name() const
{
    return QString::fromStdString(form().name);
}

void SurfaceEditor::setName(const QString& name)
{
    SurfaceForm now = form();
    now.name = name.trimmed().toStdString();
    setForm(now);
}

QStringList SurfaceEditor::names() const
{
    QStringList list;
    if (m_book)
        for (const SledSurface* known : surfacesOf(m_book->book(), m_venue, m_item))
            list << QString::fromStdString(known->name);
    return list;
}

QString SurfaceEditor::answer() const
{
    const auto friction = sled() ? frictionOf(surface(), *sled()) : Result<SurfaceFriction>(Error{Refusal::NotThere, "sled"});
    return friction ? sledtexts::friction(*friction) : tr("How it slides: not known yet");
}

QString SurfaceEditor::trouble() const
{
    if (!sled())
        return tr("This sled is not there any more.");
    if (form().name.empty())
        return tr("Still to do: say which surface it is.");
    if (surface().readings.size() < 2)
        return tr("Still to do: pull it with two different loads, or more.");
    const auto friction = frictionOf(surface(), *sled());
    return friction ? QString() : sledtexts::refusal(friction.error());
}

bool SurfaceEditor::canKeep() const
{
    return m_book && trouble().isEmpty();
}

bool SurfaceEditor::isDrafted() const
{
    return m_book && m_book->draft(draftKey()).has_value();
}

std::vector<FieldSpec> SurfaceEditor::specs() const
{
    const SurfaceForm now = form();
    std::vector<FieldSpec> all;
    for (std::size_t i = 0; i <= now.pulls.size() && i < mostPulls; ++i) {
        const PullTyped pull = i < now.pulls.size() ? now.pulls[i] : PullTyped{};
        const bool needed = i < 2;
        all.push_back({QStringLiteral("added:%1").arg(i), tr("On the sled, pull %1").arg(i + 1), inMass(pull.added), {3, 2, 0, 500}, false, tr("plates on it; 0 with none"), needed});
        all.push_back({QStringLiteral("pull:%1").arg(i), tr("The scale shows, pull %1").arg(i + 1), inMass(pull.pull), {3, 2, 0.1, 400}, false, tr("at a steady walk, once it slides"), needed});
    }
    all.push_back({QStringLiteral("step"), tr("Step of the scale"), inMass(now.step), {1, 3, 0.001, 5}, false, tr("the least it shows")});
    all.push_back({QStringLiteral("belt"), tr("Upper end of the strap"), inLength(now.belt), {3, 1, 10, 200}, false, tr("above the ground; leave out when it was pulled level")});
    return all;
}

KeepOutcome SurfaceEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    SurfaceForm now = form();
    const auto added = placeIn(key, "added"), pull = placeIn(key, "pull");
    if (const auto at = added ? added : pull; at && *at <= now.pulls.size() && *at < mostPulls) {
        if (*at == now.pulls.size())
            now.pulls.emplace_back();
        (added ? now.pulls[*at].added : now.pulls[*at].pull) = keyed.mass();
    } else if (key == QLatin1String("step")) {
        now.step = keyed.mass();
        now.accuracy.reset();
    } else if (key == QLatin1String("belt")) {
        now.belt = keyed.length();
    } else {
        return {tr("There is no such number."), {}};
    }
    setForm(now);
    return {};
}

bool SurfaceEditor::canClear(const QString& key) const
{
    const auto known = spec(key);
    return known && known->shown;
}

bool SurfaceEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    SurfaceForm now = form();
    const auto added = placeIn(key, "added"), at = added ? added : placeIn(key, "pull");
    // a load without its pull says nothing, so both go
    if (at)
        now.pulls.erase(now.pulls.begin() + static_cast<std::ptrdiff_t>(*at));
    else if (key == QLatin1String("step"))
        now.step.reset();
    else
        now.belt.reset();
    setForm(now);
    return true;
}

void SurfaceEditor::keep()
{
    if (!canKeep())
        return;
    keepSurface(m_book->keeping(), surface(), m_book->teller([self = QPointer<SurfaceEditor>(this)](const RecordId&) {
        if (!self)
            return;
        self->throwDraft();
        Q_EMIT self->kept();
    }));
}

void SurfaceEditor::throwDraft()
{
    setForm({});
}
