// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/door/vaultservice.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** Puts a desk into the states that pages have to be looked at in. */
class DeskFiller : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(TheDeskFiller)
    QML_SINGLETON

public:
    using QObject::QObject;
    /// As the app starts: no marks, no kit, the usual plates, a bare bar.
    Q_INVOKABLE void empty(DeskService* desk) const;
    /// Everything known, every caution waiting, and an anchor that might lift: a stop.
    Q_INVOKABLE void stopped(DeskService* desk) const;
    /// Chains and bands on one side, the other side and past what was measured.
    Q_INVOKABLE void full(DeskService* desk) const;
    /// A book with so many people and nothing else.
    Q_INVOKABLE void squad(BookService* book, int count) const;
    /// So many people more, beside what is in the book.
    Q_INVOKABLE void people(BookService* book, int count) const;
    /// A vault that opened with everything unusual about it that can be.
    Q_INVOKABLE void news(VaultService* vault) const;
    /// The id of the thing of that place in the order of names.
    Q_INVOKABLE QString itemId(BookService* book, int place) const;
    /// The id of the person of that place in the order of names.
    Q_INVOKABLE QString athleteId(BookService* book, int place) const;
};
