// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/walk.h"

#include "mobile/text/vaulttexts.h"
#include "mobile/typeface.h"
#include "tests/mobile/club.h"
#include "tests/mobile/laidout.h"
#include "tests/mobile/lookback.h"
#include "tests/mobile/people.h"
#include "tests/mobile/standinhouse.h"
#include "tests/tour/hand.h"
#include "tests/tour/itinerary.h"
#include "tests/tour/seasonfile.h"

#include <QApplication>
#include <QDir>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QSettings>
#include <QTemporaryDir>
#include <QThreadPool>

#include <algorithm>
#include <atomic>
#include <cstdio>

namespace {

/// How the app looks in a picture.
struct Look {
    QString name;
    int theme = 0;
    int textSize = 0;
};

QStringList& heard()
{
    static QStringList list;
    return list;
}

void noteWarning(QtMsgType type, const QMessageLogContext& context, const QString& text)
{
    if (type == QtFatalMsg)
        std::fprintf(stderr, "%s\n", qPrintable(text));
    // the machine's own affairs are not the app's
    if (type == QtDebugMsg || type == QtInfoMsg || text.contains(QStringLiteral("propagateSizeHints")) || text.startsWith(QStringLiteral("QStandardPaths")))
        return;
    heard() << QStringLiteral("%1: %2").arg(QLatin1String(context.category), text);
}

/// As most see it, then as some do.
const std::vector<Look>& looks()
{
    static const std::vector<Look> all = {{QStringLiteral("light"), 0, 0}, {QStringLiteral("dark"), 1, 0}, {QStringLiteral("sun"), 2, 0}, {QStringLiteral("largest-text"), 0, 3}};
    return all;
}

/// A page of one colour, or of hardly more, was not painted.
bool painted(const QImage& image)
{
    QSet<QRgb> colours;
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width() && colours.size() < 8; x += 3)
            colours.insert(image.pixel(x, y));
    return colours.size() >= 8;
}

/** Walks through the app and takes its pictures. */
class Tour {
public:
    Tour(QQuickWindow& window, QQmlEngine& engine, StandInHouse& house, const QDir& folder)
        : m_window(window), m_hand(window, engine), m_house(house), m_folder(folder), m_season(seasonfile::all())
    {
        for (const SeasonSetup& setup : m_season)
            m_troubles << setup.faults;
    }

    /// Every state in the first look, the main one of each page in the others too.
    void walk(const QString& form, QSize size)
    {
        m_window.resize(size);
        int number = 0;
        for (const Stop& stop : itinerary()) {
            ++number;
            const QString picture = QStringLiteral("%1-%2-%3-").arg(number, 2, 10, QLatin1Char('0')).arg(stop.name, form);
            put(looks().front());
            if (!reach(stop, picture))
                continue;
            for (const Look& look : looks()) {
                put(look);
                takeAll(picture + look.name);
                if (!stop.everywhere)
                    break;
            }
        }
    }
    void waitForPictures()
    {
        m_writers.waitForDone();
        if (m_unwritten > 0)
            m_troubles << QStringLiteral("%1 pictures cannot be written").arg(m_unwritten.load());
    }
    [[nodiscard]] const QStringList& troubles() const { return m_troubles; }
    [[nodiscard]] const QSet<QString>& seen() const { return m_seen; }
    [[nodiscard]] int pictures() const { return m_pictures; }

private:
    static steelyard::vault::Findings unusual()
    {
        steelyard::vault::Findings findings;
        findings.witness = steelyard::vault::WitnessState::DatabaseBehind;
        findings.entriesMissingCount = 12;
        findings.keyFileHealed = findings.reserveMissing = true;
        return findings;
    }
    void put(const Look& look)
    {
        m_house.preferences.setTheme(look.theme);
        m_house.preferences.setTextSize(look.textSize);
    }
    bool reach(const Stop& stop, const QString& picture)
    {
        const auto setup = std::find_if(m_season.begin(), m_season.end(), [&](const SeasonSetup& s) { return s.name == stop.season; });
        if (setup == m_season.end()) {
            m_troubles << picture + QStringLiteral(": no set-up ") + stop.season;
            return false;
        }
        m_house.door.newsRead();
        // the door forgets how far somebody got once the vault has been open
        m_house.open(stop.sample ? steelyard::seal::VaultNature::Sample : steelyard::seal::VaultNature::Own);
        if (stop.look) {
            m_house.vault.answer.reset();
            if (stop.answer)
                m_house.vault.answer = steelyard::vault::Refusal{*stop.answer, 3000000, 400000, 0};
            m_house.stand(*stop.look);
        }
        layOut(m_house.book, m_house.desk.desk(), setup->marks, setup->kit, setup->setup);
        if (stop.people > 0)
            people::fill(m_house.book, stop.people);
        if (stop.lookback) {
            lookback::sizes(m_house.book);
            lookback::measuredAgain(m_house.book);
            lookback::lift(m_house.book, "Pin squat");
            lookback::saidTwice(m_house.book);
        }
        if (stop.sample)
            m_troubles << club::keep(m_house);
        auto* flow = m_window.property("flow").value<QObject*>();
        if (!stop.look)
            QMetaObject::invokeMethod(flow, "go", Q_ARG(int, flow->property("kitPlace").toInt()));
        if (stop.news)
            m_house.door.tell(vaulttexts::found(unusual(), 2));
        m_hand.settle(1);
        for (const QString& deed : stop.deeds)
            if (const QString trouble = m_hand.perform(deed); !trouble.isEmpty()) {
                m_troubles << picture + QStringLiteral(": ") + trouble;
                return false;
            }
        if (m_hand.pageType() != stop.page) {
            m_troubles << QStringLiteral("%1: ended on %2 instead of %3").arg(picture, m_hand.pageType(), stop.page);
            return false;
        }
        m_seen.insert(stop.page);
        return true;
    }
    /// The page from its top, and as often further down as it takes to see all of it.
    void takeAll(const QString& picture)
    {
        m_hand.page()->setProperty("contentY", 0);
        m_hand.settle(1);
        if (!m_hand.page()->property("overflowing").toBool()) {
            take(picture);
            return;
        }
        int part = 0;
        do
            take(QStringLiteral("%1-%2").arg(picture).arg(++part, 2, 10, QLatin1Char('0')));
        while (m_hand.pageDown());
        if (part == 1)
            m_troubles << picture + QStringLiteral(": the page goes on, but not by the keyboard");
    }
    void take(const QString& name)
    {
        m_hand.settle();
        const QImage image = m_window.grabWindow();
        if (image.size() != m_window.size() * m_window.devicePixelRatio() || !painted(image))
            m_troubles << name + QStringLiteral(": nothing is painted");
        ++m_pictures;
        m_writers.start([this, image, path = m_folder.filePath(name + QStringLiteral(".png"))] {
            if (!image.save(path))
                ++m_unwritten;
        });
    }

    QQuickWindow& m_window;
    Hand m_hand;
    StandInHouse& m_house;
    QDir m_folder;
    std::vector<SeasonSetup> m_season;
    QSet<QString> m_seen;
    QStringList m_troubles;
    int m_pictures = 0;
    std::atomic<int> m_unwritten = 0;
    QThreadPool m_writers;
};

}

namespace walk {

void noteWarnings()
{
    qInstallMessageHandler(noteWarning);
}

QStringList warnings()
{
    return heard();
}

int through(const QDir& folder, const QString& form, QSize size)
{
    // the user's own preferences stay as they are
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QApplication::setOrganizationName(QStringLiteral("Steelyard"));
    QApplication::setApplicationName(QStringLiteral("Tour"));
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    typeface::install();

    StandInHouse house;
    house.open();
    QStringList troubles;
    {
        QQmlApplicationEngine engine;
        engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Ui/Main.qml")));
        auto* window = engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
        if (window) {
            Tour tour(*window, engine, house, folder);
            tour.walk(form, size);
            tour.waitForPictures();
            troubles = tour.troubles();
            for (const QString& page : tour.seen())
                std::printf("seen %s\n", qPrintable(page));
            std::printf("taken %d\n", tour.pictures());
        } else {
            troubles << QStringLiteral("the app's window does not open");
        }
    }
    troubles << warnings();
    for (const QString& trouble : troubles)
        std::fprintf(stderr, "%s\n", qPrintable(trouble));
    return troubles.isEmpty() ? 0 : 1;
}

}
