// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/household.h"

#include "core/seal/start.h"
#include "mobile/editors/lifteditor.h"
#include "mobile/pages/athleteeditor.h"

#include <QTemporaryDir>
#include <QtTest>
#endif

using namespace steelyard;

/// The app's own household over a real vault: what was kept and what was half typed is there again after a full lock.
class HouseholdTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keptAndHalfTypedComeBack();

private:
    static void type(SecretField& field, const char* text);
};

void HouseholdTest::type(SecretField& field, const char* text)
{
    for (const char c : std::string_view(text)) {
        QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(QLatin1Char(c)));
        QCoreApplication::sendEvent(&field, &event);
    }
}

void HouseholdTest::keptAndHalfTypedComeBack()
{
    const QTemporaryDir folder;
    const AppVault::Folders folders{folder.filePath(QStringLiteral("vault")).toStdString(), folder.filePath(QStringLiteral("install")).toStdString()};
    const char* const passphrase = "a long sentence";
    int restarts = 0;
    {
        Household house(folders, [&] { ++restarts; return true; }, seal::weakestStretch);
        house.door().look();
        QTRY_COMPARE(house.door().state(), VaultService::State::NoVault);
        seal::SecretText text;
        QVERIFY(text.append(passphrase).ok());
        auto code = seal::RecoveryCode::generate(seal::systemRandom());
        QVERIFY(code.ok());
        house.door().create(std::move(text), *std::move(code));
        QTRY_COMPARE_WITH_TIMEOUT(house.door().state(), VaultService::State::Open, 30000);
        AthleteEditor form;
        form.setDeskService(&house.desk());
        form.setBook(&house.book());
        form.setName(QStringLiteral("Ana M."));
        form.keep();
        QTRY_COMPARE(house.book().book().athletes().size(), std::size_t(1));
        QTRY_VERIFY(!form.isDrafted());
        LiftEditor lift;
        lift.setBook(&house.book());
        lift.setName(QStringLiteral("Pin squat"));
        lift.keep();
        QTRY_COMPARE(house.book().book().lifts().size(), std::size_t(1));
        form.setAthleteId({});
        form.setName(QStringLiteral("Bo, half typed"));
        BarMarks marks;
        marks.bottom = metres(0.77);
        house.desk().desk().setMarks(marks);
        house.door().lockNow();
        QTRY_COMPARE(restarts, 1);
    }
    QFile copy(folder.filePath(QStringLiteral("vault/vault.key.2")));
    char byte = 0;
    QVERIFY(copy.open(QIODevice::ReadWrite) && copy.seek(100) && copy.getChar(&byte) && copy.seek(100) && copy.putChar(static_cast<char>(~byte)));
    copy.close();
    // since it was made something has begun to carry the folder away
    QVERIFY(QDir(folder.path()).mkdir(QStringLiteral(".stfolder")));
    Household house(folders, [] { return true; }, seal::weakestStretch);
    house.door().look();
    QTRY_COMPARE(house.door().state(), VaultService::State::Locked);
    SecretField field;
    type(field, passphrase);
    house.door().unlock(&field);
    QTRY_COMPARE_WITH_TIMEOUT(house.door().state(), VaultService::State::Open, 30000);
    QCOMPARE(house.book().book().athletes().size(), std::size_t(1));
    QCOMPARE(house.book().book().athletes().front()->name, std::string("Ana M."));
    AthleteEditor form;
    form.setDeskService(&house.desk());
    form.setBook(&house.book());
    QCOMPARE(house.book().book().lifts().size(), std::size_t(1));
    QCOMPARE(house.door().news().size(), 2);
    // it opens all the same, and says which folder to leave out
    QVERIFY(house.door().news().back().toMap().value(QStringLiteral("body")).toString().endsWith(folder.filePath(QStringLiteral("vault"))));
    QCOMPARE(house.door().news().front().toMap().value(QStringLiteral("head")).toString(), QStringLiteral("One copy of the key file was damaged."));
    QCOMPARE(form.name(), QStringLiteral("Bo, half typed"));
    QVERIFY(house.desk().desk().marks().bottom.has_value());
}

QTEST_MAIN(HouseholdTest)
#include "test_household.moc"
