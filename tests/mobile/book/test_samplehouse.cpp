// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/door/samplehouse.h"

#include "core/seal/start.h"
#include "core/work/keeping/keepathlete.h"
#include "mobile/household.h"

#include <QSettings>
#include <QTemporaryDir>
#include <QtTest>
#endif

using namespace steelyard;

/// The sample from the files that the app carries, through the door and out again.
class SampleHouseTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void isMadeOpenedAndRemoved();
    void isAskedForUntilItWasRemoved();
};

void SampleHouseTest::initTestCase()
{
    QCoreApplication::setOrganizationName(QStringLiteral("Steelyard"));
    QCoreApplication::setApplicationName(QStringLiteral("SampleHouse"));
    QVERIFY(seal::start().ok());
}

void SampleHouseTest::isMadeOpenedAndRemoved()
{
    const QTemporaryDir folder;
    const AppVault::Folders folders{folder.filePath(QStringLiteral("sample")).toStdString(), folder.filePath(QStringLiteral("install")).toStdString()};
    constexpr std::chrono::sys_days today{std::chrono::year(2026) / 11 / 2};
    QCOMPARE(samplehouse::makeReady(folders, today), QString());
    // once it is there, it is left as it is
    QCOMPARE(samplehouse::makeReady(folders, today), QString());
    int restarts = 0;
    Household house(folders, [&] { ++restarts; return true; });
    house.door().look();
    QTRY_COMPARE(house.door().state(), VaultService::State::Locked);
    QVERIFY(house.door().isSample());
    house.door().unlockSample();
    QTRY_COMPARE_WITH_TIMEOUT(house.door().state(), VaultService::State::Open, 30000);
    QCOMPARE(house.book().book().athletes().size(), std::size_t(26));
    QVERIFY(house.door().news().isEmpty());
    Athlete real;
    real.name = "Somebody real";
    keepAthlete(house.book().keeping(), real, house.book().teller());
    QCOMPARE(house.book().book().athletes().size(), std::size_t(26));
    QVERIFY(!house.book().head().isEmpty());
    house.door().removeSample();
    QTRY_COMPARE(restarts, 1);
    QVERIFY(!std::filesystem::exists(folders.vault));
    QVERIFY(std::filesystem::is_empty(folders.install));
}

void SampleHouseTest::isAskedForUntilItWasRemoved()
{
    QSettings().clear();
    const QStringList plain{QStringLiteral("steelyard")}, asked{QStringLiteral("steelyard"), QStringLiteral("--sample")},
        again{QStringLiteral("steelyard"), QStringLiteral("--sample-again")};
    QVERIFY(!samplehouse::askedFor(plain));
    QVERIFY(samplehouse::askedFor(asked));
    samplehouse::rememberRemoved();
    QVERIFY(!samplehouse::askedFor(asked));
    QVERIFY(samplehouse::askedFor(again));
    QVERIFY(samplehouse::askedFor(asked));
    QVERIFY(AppVault::sampleFolders().vault != AppVault::usualFolders().vault);
    // neither lies within the other
    QVERIFY(AppVault::sampleFolders().vault.parent_path() == AppVault::usualFolders().vault.parent_path());
}

QTEST_MAIN(SampleHouseTest)
#include "test_samplehouse.moc"
