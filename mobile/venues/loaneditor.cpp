// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/venues/loaneditor.h"

#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/venues/venuetexts.h"

#include <QCborArray>
#include <QCborValue>
#include <QPointer>

#include <array>

using namespace steelyard;

namespace {

constexpr int version = 1;
constexpr std::array<std::chrono::days, 4> daysOn{std::chrono::days{0}, std::chrono::days{1}, std::chrono::days{7}, std::chrono::days{28}};

}

LoanEditor::LoanEditor(QObject* parent)
    : QObject(parent), m_day([this] { return when() == OtherDay ? form().day : std::nullopt; },
                             [this](const TypedDay& day) {
                                 Form now = form();
                                 now.day = day;
                                 setForm(now);
                             },
                             this)
{
}

void LoanEditor::setDesk(DeskService* desk)
{
    m_desk = desk;
    m_day.setDeskService(desk);
    refresh();
}

void LoanEditor::setBook(BookService* book)
{
    if (follow(this, m_book, book, &LoanEditor::refresh))
        refresh();
}

void LoanEditor::setItemId(const QString& id)
{
    m_item = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    refresh();
}

const KitItem* LoanEditor::item() const
{
    const KitRecord* record = m_book ? m_book->book().item(m_item) : nullptr;
    return record ? &record->item : nullptr;
}

QString LoanEditor::name() const
{
    return item() ? QString::fromStdString(item()->name) : QString();
}

QString LoanEditor::state() const
{
    if (!item())
        return {};
    return item()->lent ? venuetexts::lent(*item()->lent, m_book->today()) : item()->borrowed ? venuetexts::borrowed(*item()->borrowed, m_book->today()) : QString();
}

LoanEditor::Form LoanEditor::keptForm() const
{
    Form form;
    const auto take = [&form](LoanKind kind, const std::optional<OnLoan>& loan) {
        if (!loan)
            return;
        form = {kind, QString::fromStdString(loan->who), loan->backBy ? std::optional(TypedDay::of(*loan->backBy)) : std::nullopt, false};
    };
    if (const KitItem* known = item()) {
        take(LoanKind::Borrowed, known->borrowed);
        take(LoanKind::Lent, known->lent);
    }
    return form;
}

LoanEditor::Form LoanEditor::form() const
{
    const auto bytes = m_book ? m_book->draft(draftKey()) : std::nullopt;
    const QCborArray list = bytes ? QCborValue::fromCbor(*bytes).toArray() : QCborArray();
    const auto kind = list.size() == 5 ? list.at(1).toInteger(-1) : -1;
    if (kind < 0 || kind > static_cast<int>(LoanKind::Lent) || list.at(0).toInteger() != version)
        return keptForm();
    return {static_cast<LoanKind>(kind), list.at(2).toString(), TypedDay::in(list.at(3).toByteArray()), list.at(4).toBool()};
}

void LoanEditor::setForm(const Form& form)
{
    if (!m_book || this->form() == form)
        return;
    if (form == keptForm())
        m_book->throwDraft(draftKey());
    else
        m_book->setDraft(draftKey(), QCborArray{version, static_cast<int>(form.kind), form.who, form.day ? form.day->bytes() : QByteArray(), form.other}.toCborValue().toCbor());
    m_book->hush();
    refresh();
}

void LoanEditor::refresh()
{
    if (!m_book || !m_desk)
        return;
    m_day.readAgain();
    Q_EMIT changed();
}

void LoanEditor::setKind(int kind)
{
    if (kind < 0 || kind > static_cast<int>(LoanKind::Lent))
        return;
    Form now = form();
    now.kind = static_cast<LoanKind>(kind);
    setForm(now);
}

void LoanEditor::setWho(const QString& who)
{
    Form now = form();
    now.who = who.trimmed();
    setForm(now);
}

QStringList LoanEditor::days() const
{
    return {tr("no day agreed"), tr("today"), tr("tomorrow"), tr("in a week"), tr("in 4 weeks"), tr("another day")};
}

int LoanEditor::when() const
{
    const Form now = form();
    if (now.other)
        return OtherDay;
    if (!now.day)
        return NoDay;
    for (std::size_t i = 0; m_book && i < daysOn.size(); ++i)
        if (now.day == TypedDay::of(m_book->today() + daysOn[i]))
            return Today + static_cast<int>(i);
    return OtherDay;
}

void LoanEditor::setWhen(int when)
{
    if (!m_book || when < NoDay || when > OtherDay)
        return;
    Form now = form();
    now.other = when == OtherDay;
    if (when == NoDay)
        now.day.reset();
    else if (when != OtherDay)
        now.day = TypedDay::of(m_book->today() + daysOn.at(static_cast<std::size_t>(when - Today)));
    else if (!now.day)
        now.day = TypedDay::of(m_book->today());
    setForm(now);
}

QString LoanEditor::dayText() const
{
    const Form now = form();
    if (!m_book || !now.day || now.kind == LoanKind::None)
        return {};
    const auto date = now.day->date();
    return date ? tr("Back by %1.").arg(keepingtexts::day(*date, m_book->today())) : tr("There is no such day: look at day and month.");
}

bool LoanEditor::canKeep() const
{
    const Form now = form();
    if (!item() || now == keptForm())
        return false;
    return now.kind == LoanKind::None ? keptForm().kind != LoanKind::None : (!now.who.isEmpty() && (!now.day || now.day->date()));
}

void LoanEditor::keep()
{
    if (!canKeep())
        return;
    const Form now = form();
    const OnLoan loan{now.who.toStdString(), now.day ? now.day->date() : std::nullopt};
    const auto done = [self = QPointer(this), book = QPointer(m_book), key = draftKey()](const RecordId&) {
        if (book)
            book->throwDraft(key);
        if (self) {
            self->refresh();
            Q_EMIT self->kept();
        }
    };
    keepLoan(m_book->keeping(), m_item, now.kind, loan, m_book->teller(done));
}
