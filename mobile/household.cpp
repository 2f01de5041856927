// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/household.h"

#include "core/seal/start.h"
#include "core/work/newids.h"

#include <QDateTime>
#include <QTimeZone>
#include <QTimer>

using namespace steelyard;

namespace {

Here systemHere()
{
    const QDate today = QDate::currentDate();
    const auto day = std::chrono::sys_days(std::chrono::days(today.toJulianDay() - QDate(1970, 1, 1).toJulianDay()));
    return {day, QTimeZone::systemTimeZoneId().toStdString()};
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
}

void Household::receive(const vault::Opened& opened)
{
    m_book.load(opened);
    // what a newer version of the app left there stays there, unread
    (void)m_drafts.begin(opened.drafts);
}
