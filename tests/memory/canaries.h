// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QHash>
#include <QSet>

#include <vector>

/// What was seen of the canaries, and in how many bytes.
struct Sightings {
    QHash<QByteArray, int> counts;  ///< by kind
    QSet<QByteArray> seen;          ///< each canary once, however it was written
    qint64 byteCount = 0;           ///< looked at
    qint64 unreadByteCount = 0;     ///< could not be looked at, though the program can write there

    [[nodiscard]] int total() const;
    void operator+=(const Sightings& other);
    /// "name 214, notes 12" for whoever reads the test's output.
    [[nodiscard]] QByteArray text() const;
};

/** Texts and keys that are nowhere else in the world, in every way that a program may have written them down. */
class Canaries {
public:
    /// In UTF-8, UTF-16 and UTF-32 of either order, and as hexadecimal digits of either case.
    void addText(const QByteArray& kind, const QByteArray& text);
    /// As they are, and as hexadecimal digits of either case.
    void addBytes(const QByteArray& kind, const QByteArray& bytes);
    /// Everything of these bytes is looked through, wherever a canary begins.
    [[nodiscard]] Sightings findIn(QByteArrayView bytes) const;
    /// A word that nobody can guess, of capitals.
    [[nodiscard]] static QByteArray word(int letterCount);
    [[nodiscard]] static QList<QByteArray> formsOf(const QByteArray& text);

private:
    struct Form {
        QByteArray bytes, kind, canary;
    };
    void add(const Form& form);

    QHash<quint32, std::vector<Form>> m_forms; ///< by their first four bytes
    std::vector<bool> m_begins = std::vector<bool>(1 << 16, false);
};
