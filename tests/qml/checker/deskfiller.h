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
    /// A bench aid worn on a bench press and not looked over yet; a cam machine in the kit.
    Q_INVOKABLE void worn(DeskService* desk) const;
    /// Chains and bands hung alike on both sides, and in the kit a scale, weighed iron, straps and a rack.
    Q_INVOKABLE void tools(DeskService* desk) const;
    /// Isometric pulls at four heights of the path, and what is wanted: so many kilograms at the bottom and the top, level with them or not.
    Q_INVOKABLE void asked(DeskService* desk, double bottom, double top, bool level) const;
    /// Tests of the first of the people: squats over a hundred days, some refused, some with chains; chins.
    Q_INVOKABLE void tested(BookService* book) const;
    /// Release hooks in the set-up with all that is measured, and three people in the book, the first of whom has a maximum; she is cleared or
    /// not.
    Q_INVOKABLE void released(DeskService* desk, BookService* book, bool isCleared) const;
    /// So many kilograms hung last time, for whom the desk is laid out.
    Q_INVOKABLE void lastTime(DeskService* desk, double kilograms) const;
    /// A book with so many people and nothing else.
    Q_INVOKABLE void squad(BookService* book, int count) const;
    /// So many people more, beside what is in the book.
    Q_INVOKABLE void people(BookService* book, int count) const;
    /// Body sizes of three days for the first of the people, one of them put right.
    Q_INVOKABLE void sizes(BookService* book) const;
    /// Two devices said different things about the first of the people.
    Q_INVOKABLE void saidTwice(BookService* book) const;
    /// Clearances and day status of the first of the people, some in force.
    Q_INVOKABLE void cleared(BookService* book) const;
    /// The id of her clearance, or of her day status, of that place by day.
    Q_INVOKABLE QString clearanceId(BookService* book, int place) const;
    Q_INVOKABLE QString statusId(BookService* book, int place) const;
    /// The first thing of the kit measured anew.
    Q_INVOKABLE void measuredAgain(BookService* book) const;
    /// Two venues: of the kit one thing borrowed, one lent, one taken along.
    Q_INVOKABLE void venues(BookService* book) const;
    /// The first of the people, taller than when her bar marks were taken.
    Q_INVOKABLE void grown(BookService* book) const;
    /// A vault that opened with everything unusual about it that can be.
    Q_INVOKABLE void news(VaultService* vault) const;
    /// How many people, set-ups, venues, things and measurements are kept, with marks, load and what hangs on the desk, in one line.
    Q_INVOKABLE QString counts(BookService* book, DeskService* desk) const;
    /// The id of the thing of that place in the order of names.
    Q_INVOKABLE QString itemId(BookService* book, int place) const;
    /// The id of the person of that place in the order of names.
    Q_INVOKABLE QString athleteId(BookService* book, int place) const;
    /// The id of that test of the first of the people, by day.
    Q_INVOKABLE QString testId(BookService* book, int place) const;
    Q_INVOKABLE QString liftId(BookService* book, int place) const;
    /// A lift of the coach's own.
    Q_INVOKABLE void lift(BookService* book, const QString& name) const;
};
