// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/keys/tapplace.h"

TapPlace::TapPlace(QQuickItem* parent) : QQuickItem(parent)
{
    setAcceptedMouseButtons(Qt::LeftButton);
    setAcceptTouchEvents(true);
}

void TapPlace::mousePressEvent(QMouseEvent* event)
{
    event->accept();
    press(event->position());
}

void TapPlace::mouseDoubleClickEvent(QMouseEvent* event)
{
    // the press of a second click comes under this name too, and the default would swallow it
    event->accept();
    press(event->position());
}

void TapPlace::mouseMoveEvent(QMouseEvent* event)
{
    event->accept();
    move(event->position());
}

void TapPlace::mouseReleaseEvent(QMouseEvent* event)
{
    event->accept();
    lift(event->position());
}

void TapPlace::mouseUngrabEvent()
{
    letGo();
}

void TapPlace::touchEvent(QTouchEvent* event)
{
    event->accept();
    if (event->type() == QEvent::TouchCancel)
        return letGo();
    for (const QEventPoint& point : event->points()) {
        if (m_finger < 0 && point.state() == QEventPoint::Pressed) {
            m_finger = point.id();
            press(point.position());
        } else if (point.id() == m_finger && point.state() == QEventPoint::Updated) {
            move(point.position());
        } else if (point.id() == m_finger && point.state() == QEventPoint::Released) {
            m_finger = -1;
            lift(point.position());
        }
    }
}

void TapPlace::touchUngrabEvent()
{
    letGo();
}

void TapPlace::press(QPointF at)
{
    m_pressedAt = at;
    forceActiveFocus(Qt::MouseFocusReason);
    setHeld(true);
}

void TapPlace::move(QPointF at)
{
    setHeld(isOn(at));
}

void TapPlace::lift(QPointF at)
{
    const bool on = m_held && isOn(at);
    setHeld(false);
    if (on)
        Q_EMIT tapped();
}

bool TapPlace::isOn(QPointF at) const
{
    // a hand that wipes along a wide key, or flicks the page from it, has tapped nothing
    return contains(at) && QLineF(m_pressedAt, at).length() <= farthest;
}

void TapPlace::letGo()
{
    m_finger = -1;
    setHeld(false);
}

void TapPlace::focusInEvent(QFocusEvent* event)
{
    QQuickItem::focusInEvent(event);
    const auto reason = event->reason();
    setRinged(reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason || reason == Qt::ShortcutFocusReason);
}

void TapPlace::focusOutEvent(QFocusEvent* event)
{
    QQuickItem::focusOutEvent(event);
    setRinged(false);
}

void TapPlace::itemChange(ItemChange change, const ItemChangeData& value)
{
    // gone or disabled under a finger it hears of no lift, and would wait for that finger for ever
    if ((change == ItemEnabledHasChanged || change == ItemVisibleHasChanged) && !value.boolValue)
        letGo();
    QQuickItem::itemChange(change, value);
}

void TapPlace::setHeld(bool held)
{
    if (m_held == held)
        return;
    m_held = held;
    Q_EMIT heldChanged();
}

void TapPlace::setRinged(bool ringed)
{
    if (m_ringed == ringed)
        return;
    m_ringed = ringed;
    Q_EMIT ringedChanged();
}
