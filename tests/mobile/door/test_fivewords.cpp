// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/door/fivewords.h"

#include <QFile>
#include <QSet>
#include <QtTest>

#include <cmath>
#endif

using namespace steelyard;

/// Five words are drawn evenly from a list whose size is what is said of it.
class FiveWordsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theListHasNoWordTwice();
    void theEntropyIsThatOfTheList();
    void fiveWordsOfTheList();
    void everyWordIsEquallyLikely();
    void aRefusedDrawIsDrawnAgain();
};

namespace {

QStringList listed()
{
    QFile file(QStringLiteral(":/steelyard/words/words.txt"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts) : QStringList();
}

/// Counts upwards in pairs of bytes, from a given number.
seal::RandomSource counting(std::size_t from)
{
    return [next = from](seal::ByteRoom room) mutable {
        room[0] = static_cast<std::byte>(next / 256 % 256);
        room[1] = static_cast<std::byte>(next % 256);
        ++next;
    };
}

QStringList drawn(const seal::RandomSource& source)
{
    const auto text = fivewords::draw(source);
    return text ? QString::fromUtf8(text->view().data(), qsizetype(text->view().size())).split(QLatin1Char(' ')) : QStringList();
}

}

void FiveWordsTest::theListHasNoWordTwice()
{
    const QStringList all = listed();
    QCOMPARE(fivewords::wordCount(), int(all.size()));
    QCOMPARE(QSet<QString>(all.begin(), all.end()).size(), all.size());
    for (const QString& word : all) {
        QVERIFY2(word.size() >= 3 && word.size() <= 9, qPrintable(word));
        for (const QChar c : word)
            QVERIFY2(c >= QLatin1Char('a') && c <= QLatin1Char('z'), qPrintable(word));
    }
}

void FiveWordsTest::theEntropyIsThatOfTheList()
{
    QVERIFY(std::abs(std::exp2(fivewords::entropyBitCount() / 5) - double(listed().size())) < 1e-6);
    // 12 characters of its own choosing are rarely worth more; NIST SP 800-63B, appendix A, on lengths and lists
    QVERIFY(fivewords::entropyBitCount() > 64);
}

void FiveWordsTest::fiveWordsOfTheList()
{
    const QStringList all = listed();
    QCOMPARE(drawn(counting(0)), QStringList({all[0], all[1], all[2], all[3], all[4]}));
}

void FiveWordsTest::everyWordIsEquallyLikely()
{
    // all 65536 draws in turn: each word comes up equally often, and the rest is drawn again
    const QStringList all = listed();
    const int each = 65536 / int(all.size());
    QHash<QString, int> seen;
    const auto source = counting(0);
    for (int i = 0; i < each * int(all.size()) / 5; ++i)
        for (const QString& word : drawn(source))
            ++seen[word];
    for (const QString& word : all)
        QVERIFY2(std::abs(seen.value(word) - each) <= 1, qPrintable(word));
}

void FiveWordsTest::aRefusedDrawIsDrawnAgain()
{
    const QStringList all = listed();
    const auto past = std::size_t(65536 - 65536 % all.size());
    QCOMPARE(drawn(counting(past - 1)).front(), all.back());
    // what is past the last whole multiple is skipped, to the end of the range and round to its start
    QCOMPARE(drawn(counting(past)).front(), all.front());
}

QTEST_GUILESS_MAIN(FiveWordsTest)
#include "test_fivewords.moc"
