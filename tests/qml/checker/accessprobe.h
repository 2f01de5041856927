// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QtQml/qqmlregistration.h>

/// What a screen reader would be told about an item, and when the next tab stop comes.
class AccessProbe : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    [[nodiscard]] Q_INVOKABLE static QString name(QObject *item);
    [[nodiscard]] Q_INVOKABLE static QString description(QObject *item);
    /// The number of the role as in Accessible.Button etc.; 0 when the item has none.
    [[nodiscard]] Q_INVOKABLE static int role(QObject *item);
    [[nodiscard]] Q_INVOKABLE static bool isChecked(QObject *item);
    /// Does what a screen reader's "press" does; false when the item offers no such action.
    Q_INVOKABLE static bool press(QObject *item);
};
