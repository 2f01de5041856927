// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/secretnote.h"

#include "mobile/follow.h"

void SecretLetters::setNote(SecretNote* note)
{
    if (!follow(this, m_note, note, [this] { look(); }))
        return;
    look();
    Q_EMIT noteChanged();
}
