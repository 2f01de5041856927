// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/deskservice.h"

#include "core/seal/start.h"
#include "core/work/newids.h"
#include "mobile/text/language.h"

DeskService::DeskService(QObject* parent) : DeskService(steelyard::randomIds(steelyard::seal::systemRandom()), parent)
{
}

DeskService::DeskService(steelyard::NewIds newIds, QObject* parent)
    : QObject(parent), m_desk(std::move(newIds)), m_subscription(m_desk.onChanged([this] { Q_EMIT changed(); })),
      m_onSaying(language::onSaidOtherwise([this] { Q_EMIT changed(); }))
{
}
