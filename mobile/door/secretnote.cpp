// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/secretnote.h"

void SecretLetters::setNote(SecretNote* note)
{
    if (m_note == note)
        return;
    if (m_note)
        m_note->disconnect(this);
    m_note = note;
    if (m_note)
        connect(m_note, &SecretNote::changed, this, [this] { look(); });
    look();
    Q_EMIT noteChanged();
}
