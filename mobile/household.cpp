// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/household.h"

#include "core/seal/start.h"
#include "core/work/newids.h"
#include "mobile/days.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/vaulttexts.h"

#include <QDateTime>
#include <QTimeZone>
#include <QTimer>

using namespace steelyard;

namespace {

Here systemHere()
{
    return {sysDaysOf(QDate::currentDate()), QTimeZone::systemTimeZoneId().toStdString()};
}

}

Household::Household(AppVault::Folders folders, VaultService::Restart restart, std::optional<seal::StretchCost> cost)
    : m_vault(std::move(folders), cost), m_keeper(m_vault.access()), m_book(m_keeper, randomIds(seal::systemRandom()), systemHere),
      m_drafts(m_desk.desk(), m_keeper,
               [this](std::chrono::milliseconds wait, std::function<void()> then) { QTimer::singleShot(wait, &m_desk, std::move(then)); }),
      m_door(m_vault, [this](const vault::Opened& opened) { receive(opened); }, std::move(restart))
{
    QObject::connect(&m_door, &VaultService::closing, &m_desk, [this] {
        m_drafts.flush();
        m_drafts.end();
    });
    m_onTrouble = m_drafts.onTrouble([this] {
        if (const auto& trouble = m_drafts.trouble())
            m_book.tell(keepingtexts::refusal({{}, std::nullopt, trouble}));
    });
}

void Household::checkWhenQuiet()
{
    m_vault.access().checkAll([this](const vault::Outcome<vault::Done>& outcome) {
        if (!outcome)
            m_door.tell({vaulttexts::said(outcome.refusal())});
    });
}

void Household::receive(const vault::Opened& opened)
{
    m_book.load(opened);
    const auto unread = m_drafts.begin(opened.drafts);
    m_door.tell(vaulttexts::found(opened.findings, unread.size(), m_vault.folder()));
    if (opened.findings.checkDue)
        checkWhenQuiet();
}
