// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/deskwork.h"

#include "core/work/asking/herstrength.h"
#include "core/work/keeping/acknowledge.h"
#include "core/work/keeping/keepathlete.h"
#include "core/work/keeping/keepsetup.h"
#include "core/work/keeping/keepvenue.h"
#include "core/work/records/codec.h"
#include "core/work/strength/standing.h"
#include "core/work/venues/keepvenuekit.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"

#include <QCborMap>
#include <QCborValue>
#include <QPointer>

using namespace steelyard;

namespace {

// what is remembered from one start to the next, by numbers of its own; 0 says the version
enum Key { Version, AthleteId, LiftNumber, SetupId, VenueId, LiftText };
constexpr int version = 1;
const QString draftKey = QStringLiteral("work");

RecordId idOf(const QString& hex)
{
    return RecordId::fromHex(hex.toStdString()).value_or(RecordId{});
}

}

void DeskWork::setDesk(DeskService* desk)
{
    const auto moved = [this] {
        // a desk that was laid out anew has nobody at the gates
        if (!m_desk->desk().lifter())
            layLifter();
        keepLookedOver();
        Q_EMIT changed();
    };
    if (!follow(this, m_desk, desk, moved))
        return;
    Q_EMIT sourcesChanged();
    recall();
}

void DeskWork::setBook(BookService* book)
{
    if (!follow(this, m_book, book, &DeskWork::refresh))
        return;
    Q_EMIT sourcesChanged();
    recall();
}

const Athlete* DeskWork::athlete() const
{
    return m_book ? m_book->book().athlete(m_athlete) : nullptr;
}

BarMarks DeskWork::keptMarks() const
{
    if (const Athlete* known = athlete())
        if (const auto at = known->marks.find(m_lift); at != known->marks.end())
            return at->second;
    return noMarks();
}

BarMarks DeskWork::noMarks() const
{
    BarMarks none;
    if (m_book)
        none.start = m_book->book().startOf(m_lift);
    return none;
}

QString DeskWork::lift() const
{
    return QString::fromStdString(partOf(m_lift));
}

QString DeskWork::name() const
{
    const Athlete* known = athlete();
    return known ? QString::fromStdString(known->name) : QString();
}

QString DeskWork::who() const
{
    return name().isEmpty() ? QString() : tr("%1, %2").arg(name(), keepingtexts::lift(m_lift, m_book->book()));
}

bool DeskWork::marksDiffer() const
{
    return ready() && athlete() && !keptAlike(m_desk->desk().marks(), keptMarks());
}

bool DeskWork::setupDiffers() const
{
    if (!ready() || !athlete())
        return false;
    const SavedSetup* saved = m_book->book().setup(m_setup);
    // what is kept is whole base units, so that is what is compared
    return !saved || saved->lift != m_lift || !keptAlike(saved->setup, m_desk->desk().setup());
}

QString DeskWork::lookedOn() const
{
    const SavedSetup* saved = ready() ? m_book->book().setup(m_setup) : nullptr;
    if (!saved || hungMark(saved->setup) != hungMark(m_desk->desk().setup()))
        return {};
    const auto day = lastLookedOver(m_book->book(), *saved);
    return day ? keepingtexts::day(*day, m_book->today()) : QString();
}

void DeskWork::keepLookedOver()
{
    if (!ready() || m_setup.isNone())
        return;
    const auto& cautions = m_desk->desk().answer().cautions;
    if (std::none_of(cautions.begin(), cautions.end(), [](const Caution& caution) { return caution.lookedOver; }) || setupDiffers() || !athlete())
        return;
    const RecordId mark = hungMark(m_desk->desk().setup()), setup = m_setup;
    for (const Caution& caution : std::vector(cautions)) {
        const Look look{setup, caution.code, mark, m_book->today()};
        if (!caution.lookedOver || !m_looks.insert(look).second)
            continue;
        acknowledge(m_book->keeping(), setup, caution.code, m_book->quietTeller([self = QPointer<DeskWork>(this), look](bool kept) {
            if (self && !kept)
                self->m_looks.erase(look);
        }));
    }
}

QStringList DeskWork::venues() const
{
    QStringList list{tr("everywhere")};
    if (m_book)
        for (const Venue* venue : m_book->book().venues())
            list << QString::fromStdString(venue->name);
    return list;
}

int DeskWork::venue() const
{
    if (m_book) {
        const auto all = m_book->book().venues();
        for (std::size_t i = 0; i < all.size(); ++i)
            if (all[i]->id == m_venue)
                return static_cast<int>(i) + 1;
    }
    return 0;
}

QString DeskWork::venueId() const
{
    return QString::fromStdString(whereNow().hex());
}

RecordId DeskWork::whereNow() const
{
    return m_book && m_book->book().venue(m_venue) ? m_venue : RecordId{};
}

void DeskWork::setVenue(int index)
{
    if (!m_book)
        return;
    const auto all = m_book->book().venues();
    m_venue = index > 0 && static_cast<std::size_t>(index) <= all.size() ? all[static_cast<std::size_t>(index) - 1]->id : RecordId{};
    remember();
    refresh();
}

void DeskWork::take(const QString& athleteId, const QString& lift)
{
    if (!ready())
        return;
    const RecordId next = idOf(athleteId);
    const LiftId nextLift = liftIn(lift.toStdString()).value_or(LiftId{});
    const bool nobodys = !athlete() && m_desk->desk().marks() != noMarks();
    putMarksAside();
    const bool another = next != m_athlete || m_lift != nextLift;
    if (another)
        m_setup = {};
    m_athlete = next;
    m_lift = nextLift;
    remember();
    layLifter();
    layLastTime();
    // marks that were nobody's are hers where she has none, and the lift starts as theirs did
    const bool hers = nobodys && keptMarks() == noMarks() && m_desk->desk().marks().start == noMarks().start && !marksAside();
    if (!hers)
        layMarks(marksAside().value_or(keptMarks()));
    if (another && !hers) {
        // what was wanted, and what was pulled, was another's or another lift's
        m_desk->desk().want({});
        m_desk->desk().setPulls({});
    }
    layPulls();
    layMaximum();
    Q_EMIT changed();
}

void DeskWork::layMarks(const BarMarks& marks)
{
    m_laidMarks = marks;
    m_desk->desk().setMarks(marks);
}

QString DeskWork::asideKey() const
{
    return QStringLiteral("marks:%1:%2").arg(QString::fromStdString(m_athlete.hex()), lift());
}

void DeskWork::putMarksAside()
{
    if (!m_book || !athlete())
        return;
    if (m_laidMarks && *m_laidMarks == m_desk->desk().marks())
        return;
    if (const Content typed = marksDiffer() ? contentOf(m_desk->desk().marks(), {}) : std::nullopt)
        m_book->setDraft(asideKey(), QByteArray(reinterpret_cast<const char*>(typed->data()), static_cast<qsizetype>(typed->size())));
    else if (m_laidMarks)
        m_book->throwDraft(asideKey());
}

std::optional<BarMarks> DeskWork::marksAside() const
{
    const auto bytes = m_book ? m_book->draft(asideKey()) : std::nullopt;
    return bytes ? marksIn(std::as_bytes(std::span(bytes->constData(), static_cast<std::size_t>(bytes->size())))) : std::nullopt;
}

void DeskWork::open(const QString& setupId)
{
    const SavedSetup* saved = ready() ? m_book->book().setup(idOf(setupId)) : nullptr;
    if (!saved)
        return;
    putMarksAside();
    m_athlete = saved->athlete;
    m_lift = saved->lift;
    m_setup = saved->id;
    remember();
    layLifter();
    layKit();
    // what is no longer in the kit cannot hang
    SetupRecord setup = saved->setup;
    Desk& desk = m_desk->desk();
    std::erase_if(setup.hung, [&desk](const HungRecord& hung) { return !desk.item(hung.item); });
    m_laidMarks = keptMarks();
    desk.lay(*m_laidMarks, std::move(setup));
    desk.setPulls({});
    layPulls();
    layMaximum();
    layLastTime();
    Q_EMIT changed();
}

void DeskWork::keepMarks()
{
    const Athlete* known = athlete();
    if (!known || !ready())
        return;
    Athlete next = *known;
    next.marks[m_lift] = m_desk->desk().marks();
    keepAthlete(m_book->keeping(), next, m_book->teller([self = QPointer<DeskWork>(this), key = asideKey()](const RecordId&) {
        if (!self)
            return;
        if (self->m_book)
            self->m_book->throwDraft(key);
        Q_EMIT self->marksKept();
    }));
}

void DeskWork::keepSetup()
{
    if (!ready())
        return;
    SavedSetup saved;
    // of one set-up, one lift: for another lift it is another set-up
    const SavedSetup* opened = m_book->book().setup(m_setup);
    saved.id = opened && opened->athlete == m_athlete && opened->lift == m_lift ? m_setup : RecordId{};
    saved.athlete = m_athlete;
    saved.lift = m_lift;
    saved.setup = m_desk->desk().setup();
    saved.day = m_book->today();
    steelyard::keepSetup(m_book->keeping(), saved, m_book->teller([self = QPointer<DeskWork>(this)](const RecordId& id) {
        if (!self)
            return;
        self->m_setup = id;
        self->remember();
        self->layLastTime();
        self->keepLookedOver();
        Q_EMIT self->changed();
        Q_EMIT self->setupKept();
    }));
}

void DeskWork::keepVenue(const QString& name)
{
    if (!m_book)
        return;
    Venue venue;
    venue.name = name.trimmed().toStdString();
    steelyard::keepVenue(m_book->keeping(), venue, m_book->teller([self = QPointer<DeskWork>(this)](const RecordId& id) {
        if (!self)
            return;
        self->m_venue = id;
        self->remember();
        self->refresh();
        Q_EMIT self->venueKept();
    }));
}

void DeskWork::layLastTime()
{
    if (ready())
        m_desk->desk().setLastTime(athlete() ? loadLastTime(m_book->book(), m_athlete, m_lift, m_setup) : std::nullopt);
}

void DeskWork::layLifter()
{
    if (!ready())
        return;
    m_desk->desk().holdTo({m_book->book().limits(), m_book->today()});
    m_desk->desk().setLifter(gateLifter(m_book->book(), m_athlete, m_lift, m_book->today()));
}

void DeskWork::layPulls()
{
    if (const Athlete* known = ready() ? athlete() : nullptr)
        m_desk->desk().setPulls(pullsThatCount(known->pulls, m_lift));
}

void DeskWork::layMaximum()
{
    if (ready())
        m_desk->desk().setMaximum(athlete() ? standingOn(m_book->book(), m_athlete, m_lift, m_book->today()).maximum : std::nullopt, m_book->today());
}

void DeskWork::refresh()
{
    layKit();
    layLifter();
    layLastTime();
    layPulls();
    layMaximum();
    Q_EMIT changed();
}

void DeskWork::layKit()
{
    if (!ready())
        return;
    // what hangs is at hand wherever it belongs
    std::vector<KitItem> here;
    std::set<RecordId> laid;
    const auto& hung = m_desk->desk().setup().hung;
    const SavedSetup* opened = m_book->book().setup(m_setup);
    const auto isHung = [](const std::vector<HungRecord>& list, const RecordId& id) {
        return std::any_of(list.begin(), list.end(), [&](const HungRecord& h) { return h.item == id; });
    };
    const RecordId where = whereNow();
    for (const KitRecord* record : m_book->book().kit())
        if (where.isNone() || venueNow(m_book->book(), record->item) == where || isHung(hung, record->item.id) || (opened && isHung(opened->setup.hung, record->item.id)))
            here.push_back(record->item);
    for (const KitItem& item : here)
        laid.insert(item.id);
    // what never came from the book is not the book's to take away
    for (const KitItem& item : m_desk->desk().kit())
        if (!laid.contains(item.id) && !m_laid.contains(item.id))
            here.push_back(item);
    m_laid = std::move(laid);
    m_desk->desk().setKit(std::move(here));
}

void DeskWork::remember()
{
    if (!m_book)
        return;
    const auto text = [](const RecordId& id) { return QString::fromStdString(id.hex()); };
    const QCborMap map{{Version, version}, {AthleteId, text(m_athlete)}, {LiftText, lift()}, {SetupId, text(m_setup)}, {VenueId, text(m_venue)}};
    m_book->setDraft(draftKey, map.toCborValue().toCbor());
}

void DeskWork::recall()
{
    if (!ready())
        return;
    if (const auto bytes = m_book->draft(draftKey)) {
        const QCborMap map = QCborValue::fromCbor(*bytes).toMap();
        if (map.value(Version).toInteger() == version) {
            m_athlete = idOf(map.value(AthleteId).toString());
            // a number alone was remembered before lifts could be added
            const QString text = map.contains(qint64(LiftText)) ? map.value(LiftText).toString() : QString::number(map.value(LiftNumber).toInteger());
            m_lift = liftIn(text.toStdString()).value_or(LiftId{});
            m_setup = idOf(map.value(SetupId).toString());
            m_venue = idOf(map.value(VenueId).toString());
        }
    }
    refresh();
}
