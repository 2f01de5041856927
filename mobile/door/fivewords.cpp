// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/fivewords.h"

#include <QFile>

#include <cmath>
#include <vector>

using namespace steelyard;

namespace fivewords {

namespace {

/// The whole list, one word a line; read when words are first wanted.
const QByteArray& listText()
{
    static const QByteArray text = [] {
        QFile file(QStringLiteral(":/steelyard/words/words.txt"));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }();
    return text;
}

const std::vector<std::string_view>& words()
{
    static const std::vector<std::string_view> all = [] {
        std::vector<std::string_view> list;
        const std::string_view text(listText().constData(), static_cast<std::size_t>(listText().size()));
        for (std::size_t from = 0; from < text.size();) {
            const std::size_t to = std::min(text.find('\n', from), text.size());
            if (to > from)
                list.push_back(text.substr(from, to - from));
            from = to + 1;
        }
        return list;
    }();
    return all;
}

/// Even odds: what lies past the last whole multiple is drawn again.
std::size_t drawBelow(std::size_t count, const seal::RandomSource& random)
{
    const std::size_t whole = 65536 - 65536 % count;
    for (;;) {
        seal::ByteArray<2> bytes{};
        random(bytes);
        const std::size_t drawn = std::to_integer<std::size_t>(bytes[0]) * 256 + std::to_integer<std::size_t>(bytes[1]);
        bytes = {};
        if (drawn < whole)
            return drawn % count;
    }
}

}

int wordCount()
{
    return static_cast<int>(words().size());
}

double entropyBitCount()
{
    return drawnCount * std::log2(wordCount());
}

seal::Outcome<seal::SecretText> draw(const seal::RandomSource& random)
{
    seal::SecretText text;
    for (int i = 0; i < drawnCount; ++i) {
        if (i > 0)
            if (const auto done = text.append(" "); !done)
                return done.code();
        if (const auto done = text.append(words()[drawBelow(words().size(), random)]); !done)
            return done.code();
    }
    return text;
}

}
