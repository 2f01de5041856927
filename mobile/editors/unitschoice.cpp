// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/editors/unitschoice.h"

#include "core/work/keeping/keepvenue.h"
#include "mobile/follow.h"

using namespace steelyard;

void UnitsChoice::setBook(BookService* book)
{
    if (follow(this, m_book, book, &UnitsChoice::changed))
        Q_EMIT changed();
}

void UnitsChoice::setMass(int mass)
{
    if (!m_book || mass < 0 || mass > 1)
        return;
    VaultSettings settings = m_book->book().settings();
    settings.mass = static_cast<MassUnit>(mass);
    keep(settings);
}

void UnitsChoice::setLength(int length)
{
    if (!m_book || length < 0 || length > 1)
        return;
    VaultSettings settings = m_book->book().settings();
    settings.length = static_cast<LengthUnit>(length);
    keep(settings);
}

void UnitsChoice::keep(const VaultSettings& settings)
{
    keepSettings(m_book->keeping(), settings, m_book->teller());
}
