// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/content.h"
#include "tests/core/journal/journaling.h"

#include <random>

using namespace journaling;

namespace {

Body said(Kind kind, unsigned athlete, std::int64_t days, const std::string& text)
{
    Draft draft;
    draft.kind = kind;
    draft.subject = {RecordKind::Measurement, record(athlete)};
    draft.athlete = record(athlete + 1);
    draft.localDay = day(static_cast<int>(days));
    draft.zone = "Europe/Berlin";
    draft.content = textItem(text);
    return finished(draft, Stamp{{at(days * 86'400'000), 3}, false, std::nullopt});
}

seal::RandomSource seeded(unsigned seed)
{
    return [engine = std::make_shared<std::mt19937>(seed)](seal::ByteRoom room) {
        for (std::byte& b : room)
            b = static_cast<std::byte>((*engine)());
    };
}

ByteBuffer headerOf(const Body& body, const seal::RandomSource& random)
{
    const ByteArray<Header::size> bytes = encodeHeader(nextEntry({{origin(1), 1}, 0, {}}, body, random)->header);
    return {bytes.begin(), bytes.end()};
}

constexpr std::size_t commitmentAt = 64;

}

class TestHeaderSilence : public QObject {
    Q_OBJECT

private Q_SLOTS:
    // Person, kind, date and content may be what they like: up to the commitment the header is the same.
    void onlyTheCommitmentDepends()
    {
        const ByteBuffer one = headerOf(said(Kind::Added, 1, 20'000, "Ida"), countingRandom());
        for (const Body& body : {said(Kind::PutRight, 1, 20'000, "Ida"), said(Kind::Added, 7, 20'000, "Ida"), said(Kind::Added, 1, -9, "Ida"),
                 said(Kind::Added, 1, 20'000, std::string(9'000, 'x'))}) {
            const ByteBuffer other = headerOf(body, countingRandom());
            QVERIFY(std::equal(one.begin(), one.begin() + commitmentAt, other.begin()));
            QVERIFY(!std::equal(one.begin() + commitmentAt, one.end(), other.begin() + commitmentAt));
        }
    }

    // Saying the same twice does not show: the salt sees to it.
    void sameBodyOtherCommitment()
    {
        const Body body = said(Kind::Added, 1, 20'000, "Ida");
        const auto random = seeded(1795);
        QVERIFY(headerOf(body, random) != headerOf(body, random));
    }

    // Each bit of the commitment is as often set for one half of bodies as for the other: bounds of 5 standard deviations of a
    // binomial count (sd = sqrt(n)/2) for 256 bits, of which one outside is expected in 7,000 runs; the seed is fixed.
    void commitmentsLookRandom()
    {
        constexpr int count = 2'000;
        for (const Kind kind : {Kind::Added, Kind::PutRight}) {
            std::array<int, 256> set{};
            const auto random = seeded(static_cast<unsigned>(kind));
            for (int i = 0; i < count; ++i) {
                const ByteBuffer header = headerOf(said(kind, 1, 20'000, "Ida"), random);
                for (std::size_t bit = 0; bit < set.size(); ++bit)
                    set[bit] += std::to_integer<int>(header[commitmentAt + bit / 8] >> bit % 8 & std::byte{1});
            }
            const double far = 5 * std::sqrt(count) / 2;
            for (const int times : set)
                QVERIFY(std::abs(times - count / 2) < far);
        }
    }

    // Nobody who holds the header alone can try out bodies: without the salt the right one does not show.
    void bodyCannotBeTriedOut()
    {
        const Body body = said(Kind::Added, 1, 20'000, "Ida");
        const Entry entry = *nextEntry({{origin(1), 1}, 0, {}}, body, seeded(5));
        QVERIFY(commitmentTo({{}, *encodeBody(body)}) != entry.header.commitment);
        QVERIFY(seal::hash(*encodeBody(body)) != entry.header.commitment);
        QVERIFY(commitmentTo(*entry.payload) == entry.header.commitment);
    }
};

QTEST_APPLESS_MAIN(TestHeaderSilence)
#include "test_headersilence.moc"
