// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/screen.h"

#include "tests/mobile/club.h"
#include "tests/mobile/laidout.h"
#include "tests/tour/seasonfile.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>

#include <algorithm>

Screen::Screen(const QString& seasonSetup)
{
    m_house.open();
    if (!seasonSetup.isEmpty()) {
        const auto season = seasonfile::all();
        const auto found = std::find_if(season.begin(), season.end(), [&](const SeasonSetup& one) { return one.name == seasonSetup; });
        m_filled = found != season.end() && found->faults.isEmpty();
        if (m_filled)
            layOut(m_house.book, m_house.desk.desk(), found->marks, found->kit, found->setup);
    }
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Ui/Main.qml")));
    if (!m_engine.rootObjects().isEmpty())
        m_window = qobject_cast<QQuickWindow*>(m_engine.rootObjects().constFirst());
}

bool Screen::keepClub()
{
    m_house.open(steelyard::seal::VaultNature::Sample);
    return club::keep(m_house).isEmpty();
}

void Screen::step(int turn)
{
    m_house.desk.desk().stepLoad(turn % 16 < 8);
}

bool Screen::drawn()
{
    QEventLoop loop;
    bool swapped = false;
    QObject::connect(m_window, &QQuickWindow::frameSwapped, &loop, [&] {
        swapped = true;
        loop.quit();
    });
    QTimer::singleShot(2000, &loop, &QEventLoop::quit);
    loop.exec();
    return swapped;
}
