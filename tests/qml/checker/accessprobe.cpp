// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/accessprobe.h"
#include <QAccessible>

namespace {

QString textOf(QObject *item, QAccessible::Text kind)
{
    const QAccessibleInterface *face = QAccessible::queryAccessibleInterface(item);
    return face ? face->text(kind) : QString();
}

}

QString AccessProbe::name(QObject *item)
{
    return textOf(item, QAccessible::Name);
}

QString AccessProbe::description(QObject *item)
{
    return textOf(item, QAccessible::Description);
}

int AccessProbe::role(QObject *item)
{
    const QAccessibleInterface *face = QAccessible::queryAccessibleInterface(item);
    return face ? static_cast<int>(face->role()) : 0;
}

bool AccessProbe::isChecked(QObject *item)
{
    const QAccessibleInterface *face = QAccessible::queryAccessibleInterface(item);
    return face && face->state().checked;
}

bool AccessProbe::press(QObject *item)
{
    QAccessibleInterface *face = QAccessible::queryAccessibleInterface(item);
    QAccessibleActionInterface *action = face ? face->actionInterface() : nullptr;
    if (!action || !action->actionNames().contains(QAccessibleActionInterface::pressAction()))
        return false;
    action->doAction(QAccessibleActionInterface::pressAction());
    return true;
}
