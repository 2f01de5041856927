// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/deskservice.h"

DeskService::DeskService(QObject* parent)
    : QObject(parent), m_subscription(m_desk.onChanged([this] { Q_EMIT changed(); }))
{
}
