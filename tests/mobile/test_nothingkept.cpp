// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/deskservice.h"
#include "mobile/preferences.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QtTest>

using namespace steelyard;

/// The set-up page says that nothing is kept: no file of this user may hold a word or a number of the desk.
class TestNothingKept : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noFileHoldsTheDesk();
};

void TestNothingKept::noFileHoldsTheDesk()
{
    QCoreApplication::setApplicationName(QStringLiteral("Steelyard"));
    QCoreApplication::setOrganizationName(QStringLiteral("Steelyard"));
    {
        Preferences preferences;
        preferences.setTheme(2);
        DeskService service;
        BarMarks marks;
        marks.bottom = metres(0.7731);
        marks.top = metres(1.2731);
        service.desk().setMarks(marks);
        ChainMeasurement chain;
        chain.length = metres(1.5);
        chain.mass = kilograms(8.5531);
        chain.scaleStep = kilograms(0.1);
        KitItem item{{}, "Quarrystone", true, chain};
        service.desk().setDraft(item);
        service.desk().hang({service.desk().keepItem(item), HungOn::BothSides, ChainPlacing{}});
    }
    int files = 0;
    QDirIterator all(QDir::homePath(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
    while (all.hasNext()) {
        QFile file(all.next());
        QVERIFY2(file.open(QIODevice::ReadOnly), qPrintable(file.fileName()));
        const QByteArray bytes = file.readAll();
        for (const char* word : {"Quarrystone", "7731", "77.31", "2731", "8.5531"})
            QVERIFY2(!bytes.contains(word), qPrintable(file.fileName()));
        ++files;
    }
    // the look of the app is kept, so the search did look at something
    QVERIFY(files > 0);
    QVERIFY(DeskService().desk().kit().empty());
}

QTEST_GUILESS_MAIN(TestNothingKept)
#include "test_nothingkept.moc"
