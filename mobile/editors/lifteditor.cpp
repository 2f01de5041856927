// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/lifteditor.h"

#include "core/work/keeping/fitness.h"
#include "core/work/keeping/keeplift.h"
#include "core/work/keeping/putright.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"

#include <QCborArray>
#include <QCborValue>
#include <QPointer>

#include <algorithm>

using namespace steelyard;

namespace {

constexpr int version = 1;

/// Those that ship and are done with a bar.
std::vector<LiftId> onBar()
{
    std::vector<LiftId> ids;
    for (const Lift& lift : shippedLifts())
        if (lift.onBar)
            ids.push_back(lift.id);
    return ids;
}

}

void LiftEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, &LiftEditor::changed))
        Q_EMIT changed();
}

void LiftEditor::setLift(const QString& lift)
{
    const RecordId next = RecordId::fromHex(lift.toStdString()).value_or(RecordId{});
    if (m_id == next)
        return;
    m_id = next;
    Q_EMIT liftChanged();
    Q_EMIT changed();
}

OwnLift LiftEditor::keptForm() const
{
    const OwnLift* known = m_book ? m_book->book().lift(m_id) : nullptr;
    OwnLift form = known ? *known : OwnLift{};
    form.id = m_id;
    return form;
}

OwnLift LiftEditor::form() const
{
    OwnLift form = keptForm();
    const auto bytes = m_book ? m_book->draft(draftKey()) : std::nullopt;
    const QCborArray list = bytes ? QCborValue::fromCbor(*bytes).toArray() : QCborArray();
    if (list.size() != 4 || list.at(0).toInteger() != version)
        return form;
    form.name = list.at(1).toString().toStdString();
    form.like = {static_cast<std::uint16_t>(list.at(2).toInteger())};
    form.start = list.at(3).toBool() ? LiftStart::Floor : LiftStart::OwnBottom;
    return form;
}

void LiftEditor::setForm(const OwnLift& form)
{
    if (!m_book || this->form() == form)
        return;
    if (form == keptForm())
        m_book->throwDraft(draftKey());
    else
        m_book->setDraft(draftKey(), QCborArray{version, QString::fromStdString(form.name), form.like.number, form.start == LiftStart::Floor}.toCborValue().toCbor());
    m_book->hush();
    Q_EMIT changed();
}

void LiftEditor::setName(const QString& name)
{
    OwnLift now = form();
    now.name = name.toStdString();
    setForm(now);
}

void LiftEditor::setFromFloor(bool fromFloor)
{
    OwnLift now = form();
    now.start = fromFloor ? LiftStart::Floor : LiftStart::OwnBottom;
    setForm(now);
}

QStringList LiftEditor::likes() const
{
    QStringList list{tr("none of these")};
    for (const LiftId lift : onBar())
        list << keepingtexts::shipped(lift);
    return list;
}

int LiftEditor::like() const
{
    const auto all = onBar();
    const auto at = std::find(all.begin(), all.end(), form().like);
    return at == all.end() ? 0 : static_cast<int>(at - all.begin()) + 1;
}

void LiftEditor::setLike(int index)
{
    const auto all = onBar();
    if (index < 0 || static_cast<std::size_t>(index) > all.size())
        return;
    OwnLift now = form();
    now.like = index > 0 ? all[static_cast<std::size_t>(index) - 1] : LiftId{};
    if (const Lift* like = shippedLift(now.like))
        now.start = like->start;
    setForm(now);
}

bool LiftEditor::canKeep() const
{
    return isDrafted() && !unfitName(form().name);
}

void LiftEditor::keep()
{
    if (!canKeep())
        return;
    OwnLift lift = form();
    lift.name = QString::fromStdString(lift.name).trimmed().toStdString();
    const auto done = [self = QPointer<LiftEditor>(this), book = QPointer<BookService>(m_book), draft = draftKey()](const RecordId& id) {
        if (book)
            book->throwDraft(draft);
        if (!self)
            return;
        self->setLift(QString::fromStdString(id.hex()));
        Q_EMIT self->changed();
        Q_EMIT self->kept();
    };
    keepLift(m_book->keeping(), std::move(lift), m_book->teller(done));
}

void LiftEditor::throwDraft()
{
    if (!m_book)
        return;
    m_book->throwDraft(draftKey());
    m_book->hush();
    Q_EMIT changed();
}

void LiftEditor::takeOut()
{
    if (!m_book || !m_book->book().lift(m_id))
        return;
    m_book->throwDraft(draftKey());
    steelyard::takeOut(m_book->keeping(), liftPlace(m_id), m_book->teller([self = QPointer<LiftEditor>(this)](const RecordId&) {
        if (self)
            Q_EMIT self->kept();
    }));
}
