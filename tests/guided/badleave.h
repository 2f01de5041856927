// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/door/vaultservice.h"

#include <QByteArray>

/** The app's own way to start anew, or one of the mistakes in it that the test has to notice. */
class BadLeave {
public:
    /// "environment", "file", "process" or "stay"; the word is what gets away.
    void plan(const QByteArray& mistake, const QByteArray& word);
    [[nodiscard]] bool leave(VaultService& door) const;

private:
    QByteArray m_mistake, m_word;
};
