// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/bookservice.h"

#include "core/work/keeping/undo.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/language.h"
#include "mobile/text/say.h"

#include <QPointer>

using namespace steelyard;

BookService::BookService(Keeper& keeper, NewIds newIds, Here here, QObject* parent)
    : QObject(parent), m_keeper(keeper), m_keeping(m_book, keeper, std::move(newIds), std::move(here)),
      m_onSaying(language::onSaidOtherwise([this] { Q_EMIT changed(); })), m_onBook(m_book.onChanged([this] { tellChanged(); })), m_onDeeds(m_keeping.onChanged([this] { Q_EMIT changed(); }))
{
    say::setUnits(m_book.settings());
    m_undoTimer.setSingleShot(true);
    m_undoTimer.setInterval(undoShown);
    connect(&m_undoTimer, &QTimer::timeout, this, [this] { showUndo({}); });
    m_dayTold = today();
    connect(&m_dayTimer, &QTimer::timeout, this, &BookService::lookAtDay);
    m_dayTimer.start(std::chrono::seconds(30));
}

void BookService::lookAtDay()
{
    if (m_dayTold == today())
        return;
    m_dayTold = today();
    Q_EMIT changed();
}

void BookService::tellChanged()
{
    // before anybody reads a number
    say::setUnits(m_book.settings());
    Q_EMIT changed();
}

void BookService::load(const vault::Opened& opened)
{
    m_keeping.forget();
    m_keeping.setSample(opened.nature == seal::VaultNature::Sample);
    m_drafts.clear();
    for (const auto& [key, bytes] : opened.drafts)
        m_drafts[QString::fromStdString(key)] = QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
    m_book.load(opened.snapshot);
    showUndo({});
}

std::optional<QByteArray> BookService::draft(const QString& key) const
{
    const auto at = m_drafts.find(key);
    return at == m_drafts.end() ? std::nullopt : std::optional(at->second);
}

void BookService::setDraft(const QString& key, const QByteArray& bytes)
{
    if (draft(key) == bytes)
        return;
    m_drafts[key] = bytes;
    saveDraft(key);
}

void BookService::throwDraft(const QString& key)
{
    if (m_drafts.erase(key) > 0)
        saveDraft(key);
}

void BookService::saveDraft(const QString& key)
{
    std::optional<journal::ByteBuffer> bytes;
    if (const auto written = draft(key)) {
        const auto* first = reinterpret_cast<const std::byte*>(written->data());
        bytes.emplace(first, first + written->size());
    }
    m_keeper.saveDraft(key.toStdString(), std::move(bytes), [self = QPointer<BookService>(this)](const std::optional<vault::Refusal>& refusal) {
        if (self && refusal)
            self->say(keepingtexts::refusal({{}, std::nullopt, refusal}));
    });
}

WhenTold BookService::teller(std::function<void(RecordId)> kept)
{
    // the answer may come after the service has gone with its window
    return [self = QPointer<BookService>(this), kept = std::move(kept)](const Told& told) {
        if (!self)
            return;
        self->say(keepingtexts::refusal(told));
        if (!told.kept())
            return;
        if (told.reserveUsed)
            self->say(keepingtexts::reserveUsed());
        const auto& deeds = self->m_keeping.deeds();
        self->showUndo(deeds.empty() ? QString() : keepingtexts::deed(deeds.front(), self->m_book));
        if (kept)
            kept(told.id);
    };
}

WhenTold BookService::quietTeller(std::function<void(bool)> told)
{
    return [self = QPointer<BookService>(this), told = std::move(told)](const Told& how) {
        if (self && !how.kept())
            self->say(keepingtexts::refusal(how));
        told(how.kept());
    };
}

void BookService::undo(int row)
{
    steelyard::undo(m_keeping, static_cast<std::size_t>(std::max(row, 0)), [self = QPointer<BookService>(this)](const Told& told) {
        if (!self)
            return;
        self->say(keepingtexts::refusal(told));
        if (told.kept())
            self->showUndo({});
    });
}

void BookService::hush()
{
    say({});
}

void BookService::showUndo(const QString& fact)
{
    if (fact.isEmpty())
        m_undoTimer.stop();
    else
        m_undoTimer.start();
    m_undoFact = fact;
    Q_EMIT undoChanged();
}

void BookService::say(const sentences::Said& said)
{
    if (m_trouble.head == said.head && m_trouble.body == said.body)
        return;
    m_trouble = said;
    Q_EMIT troubleChanged();
}
