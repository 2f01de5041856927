// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>
#include <QObject>
#include <QtQml/qqmlregistration.h>

/** Asks the probe program, so that a page's number can be held against an answer worked out without any page. */
class ProbeRunner : public QObject {
    Q_OBJECT
    QML_ELEMENT

public:
    using QObject::QObject;
    /// The answer's "out"; an object with "error" when the probe refuses or cannot be run.
    Q_INVOKABLE QJsonObject ask(const QString& function, const QJsonObject& input) const;
};
