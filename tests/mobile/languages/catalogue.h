// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

/** One sentence of a catalogue. */
struct Message {
    QString context, source;
    QStringList forms; ///< one, or one for each form of a word that bends to a count
    bool bends = false;
    bool finished = true;

    [[nodiscard]] QString key() const { return context + QLatin1Char('/') + source; }
};

/// All of a .ts file; nothing where it cannot be read.
[[nodiscard]] QList<Message> messagesIn(const QString& path);

/// What is wrong with a translation by its look alone: placeholders, capitals, spaces, full stops. One line each.
[[nodiscard]] QStringList faultsOf(const Message& message);
