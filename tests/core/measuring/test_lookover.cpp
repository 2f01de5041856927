// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/work/measuring/lookover.h"

#include <QtTest>

#include <algorithm>
#include <set>

using namespace steelyard;

/// What can be found wrong with each kind of thing.
class LookOverTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachKindHasItsOwn();
    void everyFaultBelongsToSomething();
    void noneThatItCannotHave();
};

namespace {

constexpr int kindCount = static_cast<int>(lastItemKind) + 1;

bool has(ItemKind kind, KitFault fault)
{
    const std::vector<KitFault> faults = faultsOf(kind);
    return std::find(faults.begin(), faults.end(), fault) != faults.end();
}

}

void LookOverTest::eachKindHasItsOwn()
{
    std::set<std::vector<KitFault>> lists;
    for (int kind = 0; kind < kindCount; ++kind) {
        const std::vector<KitFault> faults = faultsOf(static_cast<ItemKind>(kind));
        QVERIFY(faults.size() >= 3);
        QVERIFY(faults.back() == KitFault::Other);
        QCOMPARE(std::set<KitFault>(faults.begin(), faults.end()).size(), faults.size());
        lists.insert(faults);
    }
    QCOMPARE(lists.size(), static_cast<std::size_t>(kindCount));
}

void LookOverTest::everyFaultBelongsToSomething()
{
    for (int fault = 0; fault <= static_cast<int>(lastKitFault); ++fault) {
        bool anywhere = false;
        for (int kind = 0; kind < kindCount; ++kind)
            anywhere = anywhere || has(static_cast<ItemKind>(kind), static_cast<KitFault>(fault));
        QVERIFY2(anywhere, qPrintable(QString::number(fault)));
    }
}

void LookOverTest::noneThatItCannotHave()
{
    QVERIFY(!has(ItemKind::Chain, KitFault::Cut) && !has(ItemKind::Chain, KitFault::Sticky) && !has(ItemKind::Chain, KitFault::Cable));
    QVERIFY(!has(ItemKind::Band, KitFault::WornLink) && !has(ItemKind::Band, KitFault::Weld));
    QVERIFY(!has(ItemKind::Scale, KitFault::WornLink) && !has(ItemKind::Scale, KitFault::Cut));
    // what chain slings are put out of service for (EN 818-6, annex A): wear, bent or stretched links, a hook that has opened
    QVERIFY(has(ItemKind::Chain, KitFault::WornLink) && has(ItemKind::Chain, KitFault::BentLink) && has(ItemKind::Chain, KitFault::Hook));
}

QTEST_APPLESS_MAIN(LookOverTest)
#include "test_lookover.moc"
