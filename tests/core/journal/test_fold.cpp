// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/core/journal/folding.h"

using namespace journaling;

namespace {

using Ids = std::vector<EntryId>;

Draft value(int number)
{
    return draftOf(Kind::FieldSet, chainItem, numberItem(number));
}

}

class TestFold : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void laterValueReplaces()
    {
        Entries make;
        const Held first = make.make(value(1)), second = make.make(value(2), {first});
        QVERIFY(headIds(folded({first, second}), first) == Ids{second.id});
        QVERIFY(headIds(folded({second, first}), first) == Ids{second.id});
    }

    void valuesSideBySideAreReviewed()
    {
        Entries make;
        const Held first = make.make(value(1)), one = make.make(value(2), {first}), other = make.make(value(3), {first});
        Fold fold = folded({other, first, one});
        QVERIFY((headIds(fold, first) == Ids{other.id, one.id}));
        QVERIFY(fold.toReview() == std::vector<RegisterKey>{keyOf(first.body)});
        const Held settled = make.make(value(2), {one, other});
        QVERIFY(fold.take(settled) == keyOf(first.body));
        QVERIFY(headIds(fold, first) == Ids{settled.id});
        QVERIFY(fold.toReview().empty());
    }

    void equalValuesNeedNoReview()
    {
        Entries make;
        QVERIFY(folded({make.make(value(1)), make.make(value(1))}).toReview().empty());
    }

    void winnerByClockThenOriginThenId()
    {
        Entries make;
        Held a = make.make(value(1)), b = make.make(value(2)), c = make.make(value(3));
        a.body.stamp.clock = b.body.stamp.clock = c.body.stamp.clock = {at(5), 7};
        QVERIFY((headIds(folded({a, b, c}), a) == Ids{c.id, b.id, a.id}));
        a.chain.origin = c.chain.origin;
        QVERIFY((headIds(folded({c, b, a}), a) == Ids{c.id, a.id, b.id}));
        a.body.stamp.clock.count = 8;
        QVERIFY((headIds(folded({c, b, a}), a) == Ids{a.id, c.id, b.id}));
        b.body.stamp.clock.wall = at(6);
        QVERIFY((headIds(folded({a, c, b}), a) == Ids{b.id, a.id, c.id}));
    }

    void fieldsAndPartsStandApart()
    {
        Entries make;
        Draft other = value(2), part = value(3);
        other.fieldNumber = 1;
        part.part = "squat";
        const Held a = make.make(value(1)), b = make.make(other), c = make.make(part);
        const Fold fold = folded({a, b, c});
        QVERIFY(headIds(fold, a) == Ids{a.id} && headIds(fold, b) == Ids{b.id} && headIds(fold, c) == Ids{c.id});
        QCOMPARE(fold.registers().size(), std::size_t(3));
    }

    void idsOfOtherRegistersMeanNothing()
    {
        Entries make;
        Draft other = value(2);
        other.fieldNumber = 1;
        const Held a = make.make(value(1)), b = make.make(other, {a});
        QVERIFY(headIds(folded({a, b}), a) == Ids{a.id});
    }

    void correctionsStandBesideTheRecord()
    {
        Entries make;
        const Subject set{RecordKind::Measurement, record(1)};
        const Held added = make.make(draftOf(Kind::Added, set, numberItem(1)));
        const Held right = make.make(draftOf(Kind::PutRight, set, numberItem(2)));
        const Fold fold = folded({right, added});
        QVERIFY(fold.find(keyOf(added.body))->winner()->body.content == numberItem(1));
        QVERIFY(fold.find(keyOf(right.body))->winner()->body.content == numberItem(2));
        QVERIFY(keyOf(right.body).holds == RegisterClass::Correction);
    }

    void addedTwiceIsOneRecordToReview()
    {
        Entries make;
        const Subject set{RecordKind::Measurement, record(1)};
        const Held one = make.make(draftOf(Kind::Added, set, numberItem(1))), two = make.make(draftOf(Kind::Added, set, numberItem(2)));
        const Fold fold = folded({two, one});
        QVERIFY((headIds(fold, one) == Ids{two.id, one.id}));
        QCOMPARE(fold.toReview().size(), std::size_t(1));
    }

    void editsDoNotRevive()
    {
        Entries make;
        const Held removed = make.make(draftOf(Kind::Removed, chainItem, flagItem(true)));
        Fold fold = folded({removed, make.make(value(1))});
        QVERIFY(fold.find(keyOf(removed.body))->winner()->body.content == flagItem(true));
        fold.take(make.make(draftOf(Kind::Removed, chainItem, flagItem(false)), {removed}));
        QVERIFY(fold.find(keyOf(removed.body))->winner()->body.content == flagItem(false));
    }

    void tagsGoWithTheAddsThatWereSeen()
    {
        Entries make;
        const Draft add = draftOf(Kind::TagAdded, chainItem, nullItem(), "spring"), take = draftOf(Kind::TagRemoved, chainItem, nullItem(), "spring");
        const Held one = make.make(add), unseen = make.make(add), gone = make.make(take, {one});
        for (const std::vector<Held>& order : {std::vector{one, unseen, gone}, std::vector{gone, unseen, one}})
            QVERIFY(headIds(folded(order), one) == Ids{unseen.id});
        QVERIFY(!folded({one, gone}).find(keyOf(one.body)));
        QVERIFY(folded({one, unseen}).toReview().empty());
    }

    void erasedNeverComesBack()
    {
        Entries make;
        const RecordId who = record(1);
        Draft load = value(80);
        load.athlete = who;
        Draft other = value(70);
        other.athlete = record(2);
        const Held before = make.make(load), name = make.make(draftOf(Kind::FieldSet, {RecordKind::Athlete, who}, textItem("Ida")));
        const Held stays = make.make(other), gone = make.make(draftOf(Kind::Erased, {RecordKind::Athlete, who})), late = make.make(load);
        for (const std::vector<Held>& order : {std::vector{before, name, stays, gone, late}, std::vector{gone, late, before, stays, name}}) {
            const Fold fold = folded(order);
            QVERIFY(fold.erased() == std::set{who});
            QVERIFY(!fold.find(keyOf(before.body)) && !fold.find(keyOf(name.body)));
            QVERIFY(headIds(fold, stays) == Ids{stays.id});
            QVERIFY(headIds(fold, gone) == Ids{gone.id});
        }
        Fold fold = folded({gone});
        QVERIFY(!fold.take(late));
    }

    void erasuresToldOfAreRepeated()
    {
        const std::vector<Draft> drafts = erasuresToRepeat({record(1), record(2)}, {record(2), record(3)});
        QCOMPARE(drafts.size(), std::size_t(1));
        Entries make;
        const Held repeated = make.make(drafts[0]);
        QVERIFY(encodeBody(repeated.body));
        QVERIFY(folded({repeated}).erased() == std::set{record(1)});
    }

    void stepForTables()
    {
        Entries make;
        const Held first = make.make(value(1)), second = make.make(value(2), {first});
        const Step fresh = *stepOf(second, {});
        QVERIFY(fresh.becomesHead && fresh.supersedes == Ids{first.id} && !fresh.erases && fresh.key == keyOf(first.body));
        QVERIFY(!stepOf(first, {.superseded = true})->becomesHead);
        QVERIFY(!stepOf(first, {.athleteErased = true}));
        const Held erasure = make.make(draftOf(Kind::Erased, {RecordKind::Athlete, record(1)}));
        QVERIFY(stepOf(erasure, {.athleteErased = true})->erases == record(1));
        const Held tag = make.make(draftOf(Kind::TagRemoved, chainItem, nullItem(), "spring"), {first});
        QVERIFY(!stepOf(tag, {})->becomesHead);
    }

    void saysWhetherAnythingChanged()
    {
        Entries make;
        const Held first = make.make(value(1)), second = make.make(value(2), {first});
        Fold fold;
        QVERIFY(fold.take(second) == keyOf(first.body));
        QVERIFY(!fold.take(second));
        QVERIFY(!fold.take(first));
        const Held tag = make.make(draftOf(Kind::TagRemoved, chainItem, nullItem(), "spring"), {first});
        QVERIFY(fold.take(tag) == keyOf(tag.body)); // what it marks may come later
        QVERIFY(!fold.take(tag));
    }

    void unknownRecordsAreFolded()
    {
        Entries make;
        const Held strange = make.make(draftOf(Kind::FieldSet, {static_cast<RecordKind>(999), record(1)}, numberItem(1)));
        QVERIFY(headIds(folded({strange}), strange) == Ids{strange.id});
    }

    void digestTellsWhatIsShown()
    {
        Entries make;
        const Held first = make.make(value(1)), second = make.make(value(2), {first}), beside = make.make(value(3));
        QVERIFY(folded({first, second}).digest() == folded({second, first, second}).digest());
        QVERIFY(folded({first, second}).digest() != folded({first}).digest());
        QVERIFY(folded({first, second}).digest() != folded({first, second, beside}).digest());
        QVERIFY(Fold().digest() == folded({make.make(draftOf(Kind::TagRemoved, chainItem, nullItem(), "spring"), {first})}).digest());
        QVERIFY(Fold().digest() != folded({make.make(draftOf(Kind::Erased, {RecordKind::Athlete, record(1)}))}).digest());
    }
};

QTEST_APPLESS_MAIN(TestFold)
#include "test_fold.moc"
