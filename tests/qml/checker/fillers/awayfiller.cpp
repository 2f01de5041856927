// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/fillers/awayfiller.h"

#include "tests/mobile/implements/awaypitch.h"

using namespace steelyard;

QString AwayFiller::pitch(BookService* book) const
{
    return QString::fromStdString(awaypitch::fill(*book).hex());
}

QString AwayFiller::thing(BookService* book, const QString& name) const
{
    for (const KitRecord* record : book->book().kit())
        if (QString::fromStdString(record->item.name) == name)
            return QString::fromStdString(record->item.id.hex());
    return {};
}
