// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/venues/venuetexts.h"

#include "mobile/text/keepingtexts.h"

#include <QCoreApplication>

using namespace steelyard;

namespace venuetexts {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("venuetexts", text); }

QString withDay(const QString& whose, const OnLoan& loan, std::chrono::sys_days today)
{
    if (!loan.backBy)
        return whose;
    const QString day = keepingtexts::day(*loan.backBy, today);
    return (backOn(loan, today) == BackState::Past ? tr("%1, was due back on %2") : tr("%1, back by %2")).arg(whose, day);
}

}

QString borrowed(const OnLoan& loan, std::chrono::sys_days today)
{
    return withDay(tr("borrowed from %1").arg(QString::fromStdString(loan.who)), loan, today);
}

QString lent(const OnLoan& loan, std::chrono::sys_days today)
{
    return withDay(tr("lent to %1").arg(QString::fromStdString(loan.who)), loan, today);
}

QString freeNow(const Pieces& pieces)
{
    if (pieces.allCount == 1)
        return pieces.freeCount() == 0 ? tr("hangs") : tr("free");
    return pieces.freeCount() == 0 ? tr("both hang") : pieces.freeCount() == 1 ? tr("one free") : tr("both free");
}

}
