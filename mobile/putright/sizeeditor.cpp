// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/sizeeditor.h"

#include "core/work/keeping/putright.h"
#include "core/work/records/codec.h"
#include "mobile/follow.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/text/keepingtexts.h"

#include <QCborMap>
#include <QCborValue>
#include <QPointer>

#include <algorithm>

using namespace steelyard;

namespace {

// numbers of this form's draft: 0 says the version, 1 holds what is measured in the journal's own form, with the digits as they were typed
enum Key { Version, Sizes, Day };
constexpr int version = 1;

journal::ByteBuffer bytesOf(const QByteArray& bytes)
{
    const auto* first = reinterpret_cast<const std::byte*>(bytes.data());
    return {first, first + bytes.size()};
}

}

SizeEditor::SizeEditor(QObject* parent)
    : FieldEditor(parent), m_day(
                               [this] {
                                   const auto now = form();
                                   return now ? std::optional(now->day) : std::nullopt;
                               },
                               [this](const TypedDay& day) {
                                   if (auto now = form()) {
                                       now->day = day;
                                       setForm(*now);
                                   }
                               },
                               this)
{
}

void SizeEditor::setBook(BookService* book)
{
    if (!follow(this, m_book, book, [this] { refresh(); }))
        return;
    Q_EMIT bookChanged();
    refresh();
}

void SizeEditor::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    Q_EMIT targetChanged();
    refresh();
}

void SizeEditor::setSizeId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    Q_EMIT targetChanged();
    refresh();
}

void SizeEditor::refresh()
{
    m_day.setDeskService(deskService());
    m_day.readAgain();
    FieldEditor::refresh();
}

const BodySize* SizeEditor::size() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    if (!athlete)
        return nullptr;
    const auto at = std::find_if(athlete->sizes.begin(), athlete->sizes.end(), [this](const BodySize& size) { return size.id == m_id; });
    return at == athlete->sizes.end() ? nullptr : &*at;
}

QString SizeEditor::draftKey() const
{
    return QStringLiteral("size:") + sizeId();
}

std::optional<SizeEditor::Form> SizeEditor::keptForm() const
{
    const BodySize* known = size();
    return known ? std::optional(Form{known->mass, known->height, TypedDay::of(known->day)}) : std::nullopt;
}

std::optional<SizeEditor::Form> SizeEditor::form() const
{
    const auto kept = keptForm();
    const auto bytes = kept ? m_book->draft(draftKey()) : std::nullopt;
    const QCborMap map = bytes ? QCborValue::fromCbor(*bytes).toMap() : QCborMap();
    const auto day = TypedDay::in(map.value(Day).toByteArray());
    const auto typed = bodySizeIn(bytesOf(map.value(Sizes).toByteArray()));
    if (map.value(Version).toInteger() != version || !day || !typed)
        return kept;
    return Form{typed->mass, typed->height, *day};
}

void SizeEditor::setForm(const Form& form)
{
    if (this->form() == form)
        return;
    const Content content = contentOf(BodySize{m_id, {}, form.mass, form.height}, m_book->book().settings());
    if (form == keptForm()) {
        m_book->throwDraft(draftKey());
    } else if (content) {
        const QByteArray measured(reinterpret_cast<const char*>(content->data()), static_cast<qsizetype>(content->size()));
        m_book->setDraft(draftKey(), QCborMap{{Version, version}, {Sizes, measured}, {Day, form.day.bytes()}}.toCborValue().toCbor());
    }
    m_book->hush();
    refresh();
}

QString SizeEditor::name() const
{
    const Athlete* athlete = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    return athlete ? QString::fromStdString(athlete->name) : QString();
}

QString SizeEditor::stands() const
{
    const BodySize* known = size();
    return known ? tr("%1, %2").arg(saidtexts::bodySize(*known), keepingtexts::day(known->day, m_book->today())) : QString();
}

QString SizeEditor::said() const
{
    return size() ? saidtexts::bodySizeBefore(*m_book, m_athlete, *size()) : QString();
}

QString SizeEditor::trouble() const
{
    const auto now = form();
    if (!now)
        return {};
    const auto kept = keptForm();
    if (now->day != kept->day)
        if (const QString wrong = DayEditor::trouble(now->day, m_book->today()); !wrong.isEmpty())
            return wrong;
    return !now->mass && !now->height ? tr("Nothing is left of it: take it out instead.") : QString();
}

bool SizeEditor::isDrafted() const
{
    return size() && m_book->draft(draftKey());
}

bool SizeEditor::canKeep() const
{
    return isDrafted() && trouble().isEmpty();
}

std::vector<FieldSpec> SizeEditor::specs() const
{
    const auto now = form();
    if (!now)
        return {};
    return {{QStringLiteral("mass"), tr("Body mass"), inMass(now->mass), {3, 1, 15, 300}, false, {}},
            {QStringLiteral("height"), tr("Height"), inLength(now->height), {3, 1, 80, 250}, false, {}}};
}

KeepOutcome SizeEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    auto now = form();
    if (now && key == QLatin1String("mass"))
        now->mass = keyed.mass();
    else if (now && key == QLatin1String("height"))
        now->height = keyed.length();
    else
        return {tr("There is no such number."), {}};
    setForm(*now);
    return {};
}

bool SizeEditor::canClear(const QString& key) const
{
    return key == QLatin1String("mass") || key == QLatin1String("height");
}

bool SizeEditor::clearNumber(const QString& key)
{
    auto now = form();
    if (!now || !canClear(key))
        return false;
    if (key == QLatin1String("mass"))
        now->mass.reset();
    else
        now->height.reset();
    setForm(*now);
    return true;
}

void SizeEditor::keep()
{
    if (!canKeep())
        return;
    const auto now = form();
    const auto done = [self = QPointer<SizeEditor>(this), book = QPointer<BookService>(m_book), draft = draftKey()](const RecordId&) {
        if (book)
            book->throwDraft(draft);
        if (self) {
            self->refresh();
            Q_EMIT self->kept();
        }
    };
    putBodySizeRight(m_book->keeping(), m_athlete, {m_id, *now->day.date(), now->mass, now->height}, m_book->teller(done));
}

void SizeEditor::throwDraft()
{
    if (!m_book)
        return;
    m_book->throwDraft(draftKey());
    m_book->hush();
    refresh();
}

void SizeEditor::takeOut()
{
    if (!size())
        return;
    const auto done = [self = QPointer<SizeEditor>(this), book = QPointer<BookService>(m_book), draft = draftKey()](const RecordId&) {
        if (book)
            book->throwDraft(draft);
        if (self)
            Q_EMIT self->kept();
    };
    steelyard::takeOut(m_book->keeping(), bodySizePlace(m_id, m_athlete), m_book->teller(done));
}
