// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** Puts what lies at an away pitch into a book. */
class AwayFiller : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(TheAwayFiller)
    QML_SINGLETON

public:
    using QObject::QObject;
    /// Tyres, kegs, handles, a bell and a log; the venue's id.
    Q_INVOKABLE QString pitch(BookService* book) const;
    /// The id of the thing of that name; empty for none.
    Q_INVOKABLE QString thing(BookService* book, const QString& name) const;
};
