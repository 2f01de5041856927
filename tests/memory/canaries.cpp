// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/memory/canaries.h"

#include "core/seal/start.h"

#include <algorithm>
#include <cstring>
#include <numeric>
#include <span>

namespace {

quint32 firstFour(const char* bytes)
{
    quint32 value = 0;
    std::memcpy(&value, bytes, sizeof value);
    return value;
}

/// Spreads the beginnings evenly over a table of 65,536 (Knuth, The Art of Computer Programming, volume 3, section 6.4).
std::size_t placeOf(quint32 beginning)
{
    return (beginning * 2654435769U) >> 16U;
}

/// Plain letters with so many zero bytes before and behind each.
QByteArray spaced(const QByteArray& text, int before, int behind)
{
    QByteArray wide;
    for (const char letter : text)
        wide += QByteArray(before, '\0') + letter + QByteArray(behind, '\0');
    return wide;
}

}

int Sightings::total() const
{
    return std::accumulate(counts.begin(), counts.end(), 0);
}

void Sightings::operator+=(const Sightings& other)
{
    for (auto at = other.counts.begin(); at != other.counts.end(); ++at)
        counts[at.key()] += at.value();
    seen += other.seen;
    byteCount += other.byteCount;
    unreadByteCount += other.unreadByteCount;
}

QByteArray Sightings::text() const
{
    QList<QByteArray> kinds = counts.keys(), parts;
    std::sort(kinds.begin(), kinds.end());
    for (const QByteArray& kind : kinds)
        parts << kind + ' ' + QByteArray::number(counts[kind]);
    return QByteArray::number(total()) + " in " + QByteArray::number(static_cast<double>(byteCount) / 1e6, 'f', 1) + " MB"
        + (parts.isEmpty() ? QByteArray() : " (" + parts.join(", ") + ')');
}

QList<QByteArray> Canaries::formsOf(const QByteArray& text)
{
    return {text, spaced(text, 0, 1), spaced(text, 1, 0), spaced(text, 0, 3), spaced(text, 3, 0), text.toHex(), text.toHex().toUpper()};
}

void Canaries::addText(const QByteArray& kind, const QByteArray& text)
{
    for (const QByteArray& form : formsOf(text))
        add({form, kind, text});
}

void Canaries::addBytes(const QByteArray& kind, const QByteArray& bytes)
{
    for (const QByteArray& form : {bytes, bytes.toHex(), bytes.toHex().toUpper()})
        add({form, kind, bytes});
}

void Canaries::add(const Form& form)
{
    const quint32 beginning = firstFour(form.bytes.constData());
    m_begins[placeOf(beginning)] = true;
    m_forms[beginning].push_back(form);
}

Sightings Canaries::findIn(QByteArrayView bytes) const
{
    Sightings found;
    found.byteCount = bytes.size();
    for (qsizetype at = 0; at + 4 <= bytes.size(); ++at) {
        const quint32 beginning = firstFour(bytes.data() + at);
        if (!m_begins[placeOf(beginning)])
            continue;
        const auto forms = m_forms.constFind(beginning);
        if (forms == m_forms.constEnd())
            continue;
        for (const Form& form : *forms) {
            if (!bytes.sliced(at).startsWith(form.bytes))
                continue;
            ++found.counts[form.kind];
            found.seen.insert(form.canary);
        }
    }
    return found;
}

QByteArray Canaries::word(int letterCount)
{
    QByteArray word(letterCount, '\0');
    steelyard::seal::systemRandom()(std::as_writable_bytes(std::span(word.data(), static_cast<std::size_t>(word.size()))));
    for (char& letter : word)
        letter = static_cast<char>('A' + static_cast<unsigned char>(letter) % 26);
    return word;
}
