// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/journal/vectors/chains.h"
#include "tests/core/journal/journaling.h"

using namespace journaling;

namespace {

const ChainId north{origin(1), 1}, south{origin(2), 1};

/// A row of headers behind `before`; the commitment tells branches apart.
std::vector<Header> row(const ChainId& chain, std::uint64_t count, unsigned branch = 0, const Header* before = nullptr)
{
    std::vector<Header> headers;
    ChainEnd end = before ? endAt(*before) : ChainEnd{chain, 0, {}};
    for (std::uint64_t i = 0; i < count; ++i) {
        Header header{chain, end.sequenceNumber + 1, end.id, {}};
        header.commitment.fill(static_cast<std::byte>(branch));
        headers.push_back(header);
        end = endAt(header);
    }
    return headers;
}

Chains chainsOf(std::initializer_list<std::vector<Header>> rows)
{
    Chains chains;
    for (const std::vector<Header>& headers : rows) {
        for (const Header& header : headers)
            chains.admit(header);
    }
    return chains;
}

std::vector<EntryId> idsOf(const std::vector<Header>& headers)
{
    std::vector<EntryId> ids;
    for (const Header& header : headers)
        ids.push_back(idOf(header));
    return ids;
}

}

class TestChains : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void wholeFromTheBeginning()
    {
        const std::vector<Header> headers = row(north, 3);
        Chains chains;
        QCOMPARE(static_cast<int>(chains.admit(headers[1])), static_cast<int>(Admission::Gap));
        QVERIFY(chains.vector().empty());
        QCOMPARE(static_cast<int>(chains.admit(headers[0])), static_cast<int>(Admission::Taken));
        QCOMPARE(static_cast<int>(chains.admit(headers[0])), static_cast<int>(Admission::Known));
        QCOMPARE(static_cast<int>(chains.admit(headers[2])), static_cast<int>(Admission::Gap));
        QCOMPARE(static_cast<int>(chains.admit(headers[1])), static_cast<int>(Admission::Taken));
        QVERIFY((chains.vector() == VersionVector{{north, {{2, idOf(headers[1])}}}}));
    }

    void previousHasToBeTheOneBefore()
    {
        const std::vector<Header> headers = row(north, 3);
        Header skipping = headers[2];
        skipping.previous = idOf(headers[0]);
        Header elsewhere = row(south, 2)[1];
        elsewhere.previous = idOf(headers[0]);
        Chains chains = chainsOf({{headers[0], headers[1]}});
        QCOMPARE(static_cast<int>(chains.admit(skipping)), static_cast<int>(Admission::Gap));
        QCOMPARE(static_cast<int>(chains.admit(elsewhere)), static_cast<int>(Admission::Gap));
    }

    void standings()
    {
        const std::vector<Header> headers = row(north, 4);
        const Chains four = chainsOf({headers}), two = chainsOf({{headers[0], headers[1]}});
        const auto standing = [](const Chains& ours, const Chains& theirs) { return static_cast<int>(ours.compare(north, theirs.vector())); };
        QCOMPARE(standing(four, four), static_cast<int>(Standing::Equal));
        QCOMPARE(standing(four, two), static_cast<int>(Standing::Ahead));
        QCOMPARE(standing(two, four), static_cast<int>(Standing::Behind));
        QCOMPARE(standing(four, {}), static_cast<int>(Standing::Ahead));
        QCOMPARE(standing({}, four), static_cast<int>(Standing::Behind));
        QCOMPARE(standing({}, {}), static_cast<int>(Standing::Equal));
    }

    // A device was copied after its second entry, and both wrote on: by numbers alone the two look equal.
    void branchesOfACopyNeverLookEqual()
    {
        const std::vector<Header> common = row(north, 2);
        const std::vector<Header> one = row(north, 2, 1, &common[1]), other = row(north, 2, 2, &common[1]);
        Chains ours = chainsOf({common, one}), theirs = chainsOf({common, other});
        QCOMPARE(static_cast<int>(ours.compare(north, theirs.vector())), static_cast<int>(Standing::Forked));
        const std::vector<EntryId> sent = ours.toSend(theirs.vector());
        QVERIFY((sent == idsOf({common[0], common[1], one[0], one[1]})));
        for (const Header& header : one)
            QCOMPARE(static_cast<int>(theirs.admit(header)), static_cast<int>(Admission::Taken));
        for (const Header& header : other)
            ours.admit(header);
        QCOMPARE(static_cast<int>(ours.compare(north, theirs.vector())), static_cast<int>(Standing::Equal));
        QVERIFY(ours.vector() == theirs.vector());
        QCOMPARE(ours.vector().at(north).size(), std::size_t(2));
        QVERIFY(ours.forked() == std::vector<ChainId>{north});
        QVERIFY(ours.toSend(theirs.vector()).empty());
        QCOMPARE(ours.idsAt(north, 3).size(), std::size_t(2));
    }

    // The shorter branch sees only that the other is further on; the longer one sees the fork, and sends all it takes.
    void longerBranchSeesTheFork()
    {
        const std::vector<Header> common = row(north, 1);
        const std::vector<Header> longer = row(north, 3, 1, &common[0]), shorter = row(north, 1, 2, &common[0]);
        Chains ours = chainsOf({common, longer}), theirs = chainsOf({common, shorter});
        QCOMPARE(static_cast<int>(theirs.compare(north, ours.vector())), static_cast<int>(Standing::Behind));
        QVERIFY(theirs.toSend(ours.vector()).empty());
        QCOMPARE(static_cast<int>(ours.compare(north, theirs.vector())), static_cast<int>(Standing::Forked));
        QVERIFY((ours.toSend(theirs.vector()) == idsOf({common[0], longer[0], longer[1], longer[2]})));
    }

    // They have a branch that goes further than ours, and have not got to the end of ours.
    void behindOnOneBranchAheadOnTheOther()
    {
        const std::vector<Header> common = row(north, 1);
        const std::vector<Header> ours = row(north, 3, 1, &common[0]), further = row(north, 5, 2, &common[0]);
        const Chains here = chainsOf({common, ours}), there = chainsOf({common, {ours[0]}, further});
        QCOMPARE(static_cast<int>(here.compare(north, there.vector())), static_cast<int>(Standing::Behind));
        QVERIFY((here.toSend(there.vector()) == idsOf({ours[1], ours[2]})));
    }

    void onlyWhatTheyLack()
    {
        const std::vector<Header> headers = row(north, 4), others = row(south, 2);
        const Chains ours = chainsOf({headers, others}), theirs = chainsOf({{headers[0], headers[1]}});
        QVERIFY((ours.toSend(theirs.vector()) == idsOf({headers[2], headers[3], others[0], others[1]})));
        QVERIFY(ours.toSend(ours.vector()).empty());
        QVERIFY(theirs.toSend(ours.vector()).empty());
    }

    void missingStretches()
    {
        const VersionVector ours{{north, {{811, entryId(1)}}}, {south, {{5, entryId(2)}}}};
        const VersionVector theirs{{north, {{3, entryId(3)}, {840, entryId(4)}}}, {south, {{5, entryId(2)}}}, {{origin(3), 2}, {{2, entryId(5)}}}};
        QVERIFY((missing(ours, theirs) == std::vector<Stretch>{{north, 812, 840}, {{origin(3), 2}, 1, 2}}));
        QVERIFY(missing(theirs, ours).empty());
    }

    void incarnationsStandApart()
    {
        const Chains chains = chainsOf({row(north, 2), row({origin(1), 2}, 1)});
        QCOMPARE(chains.vector().size(), std::size_t(2));
        QVERIFY(chains.forked().empty());
    }
};

QTEST_APPLESS_MAIN(TestChains)
#include "test_chains.moc"
