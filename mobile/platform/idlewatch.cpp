// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/platform/idlewatch.h"

#include <QEvent>

IdleWatch::IdleWatch(QObject& application, std::chrono::milliseconds patience, QObject* parent) : QObject(parent)
{
    m_timer.setSingleShot(true);
    m_timer.setInterval(patience);
    connect(&m_timer, &QTimer::timeout, this, &IdleWatch::idle);
    application.installEventFilter(this);
}

bool IdleWatch::eventFilter(QObject* watched, QEvent* event)
{
    switch (event->type()) {
    case QEvent::KeyPress:
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::Wheel:
    case QEvent::InputMethod:
        if (m_timer.isActive())
            m_timer.start();
        break;
    default:
        break;
    }
    return QObject::eventFilter(watched, event);
}
