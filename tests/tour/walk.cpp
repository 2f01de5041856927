// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/walk.h"

#include "mobile/text/vaulttexts.h"
#include "mobile/typeface.h"
#include "tests/tour/ground.h"
#include "tests/tour/hand.h"

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
#include <utility>

namespace {

/// Of a page that goes on below the window.
enum class HowMuch { All, Top };

/// How the app looks in a picture.
struct Look {
    QString name;
    int theme = 0;
    int textSize = 0;
    HowMuch howMuch = HowMuch::All;
    bool phoneOnly = false;
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

/// As most see it, then as some do. What other colours do to a page is seen at its top, and what the sun's do on a phone, which is what is held
/// up in it; that all of it can be told apart in them is the page checker's.
const std::vector<Look>& looks()
{
    static const std::vector<Look> all = {{QStringLiteral("light"), 0, 0}, {QStringLiteral("dark"), 1, 0, HowMuch::Top},
                                          {QStringLiteral("sun"), 2, 0, HowMuch::Top, true}, {QStringLiteral("largest-text"), 0, 3}};
    return all;
}

/// The first of zlib's nine levels, as Qt's PNG writer takes it.
constexpr int quickToPack = 80;

/// Of one long page: the middle of a long list looks like its beginning.
constexpr int mostParts = 10;

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
        : m_window(window), m_hand(window, engine), m_house(house), m_ground(house), m_folder(folder)
    {
        m_troubles << m_ground.faults();
    }

    /// Every state in the first look, the main one of each page in the others too.
    void walk(const QString& form, QSize size, walk::Stretch stretch)
    {
        m_window.resize(size);
        // where the walk stands, when it got there
        const Stop* last = nullptr;
        const std::vector<Stop> stops = itinerary();
        const std::size_t count = stops.size(), which = static_cast<std::size_t>(stretch.which), of = static_cast<std::size_t>(stretch.of);
        for (std::size_t at = count * which / of; at < count * (which + 1) / of; ++at) {
            const Stop& stop = stops[at];
            const QString picture = QStringLiteral("%1-%2-%3-").arg(at + 1, 2, 10, QLatin1Char('0')).arg(stop.name, form);
            if (!reach(stop, std::exchange(last, nullptr), picture))
                continue;
            last = &stop;
            for (const Look& look : looks()) {
                if (look.phoneOnly && form != QLatin1String("phone"))
                    continue;
                put(look);
                takeAll(picture + look.name, look.howMuch);
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
    /// On from the stop before where this one begins with all of its deeds, else from the first page.
    bool reach(const Stop& stop, const Stop* last, const QString& picture)
    {
        const bool further = last && Ground::alike(*last, stop) && startsAtTheKit(*last) == startsAtTheKit(stop) && stop.deeds.size() > last->deeds.size() && stop.deeds.mid(0, last->deeds.size()) == last->deeds;
        if (further) {
            put(looks().front());
            m_hand.settle(1);
        } else if (!begin(stop, picture)) {
            return false;
        }
        for (const QString& deed : stop.deeds.mid(further ? last->deeds.size() : startsAtTheKit(stop) ? 1 : 0))
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
    /// On the first page, with what lies there when nothing has been done yet.
    bool begin(const Stop& stop, const QString& picture)
    {
        // a page that is still there would follow the change of looks, and each step of the laying out
        if (!m_atTheDoor) {
            QMetaObject::invokeMethod(flow(), "clear");
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        }
        m_atTheDoor = stop.look.has_value();
        put(looks().front());
        m_house.door.newsRead();
        // the door forgets how far somebody got once the vault has been open
        m_house.open(stop.sample ? steelyard::seal::VaultNature::Sample : steelyard::seal::VaultNature::Own);
        // before the door nothing of it is seen
        if (!stop.look && !m_ground.liesFor(stop)) {
            const QStringList troubles = m_ground.layOutFor(stop);
            for (const QString& trouble : troubles)
                m_troubles << picture + QStringLiteral(": ") + trouble;
            if (!troubles.isEmpty())
                return false;
        }
        if (stop.look) {
            m_house.vault.answer.reset();
            if (stop.answer)
                m_house.vault.answer = steelyard::vault::Refusal{*stop.answer, 3000000, 400000, 0};
            m_house.stand(*stop.look);
        } else if (startsAtTheKit(stop)) {
            m_hand.showKit();
        } else if (stop.deeds.isEmpty() || !stop.deeds.first().startsWith(QStringLiteral("place "))) {
            QMetaObject::invokeMethod(flow(), "go", Q_ARG(int, flow()->property("kitPlace").toInt()));
        }
        if (stop.news)
            m_house.door.tell(vaulttexts::found(unusual(), 2));
        m_hand.settle(1);
        return true;
    }
    /// Where a way goes over the kit list and not back to the set-up, the set-up is not looked at: to build it takes longer than all else.
    static bool startsAtTheKit(const Stop& stop)
    {
        return !stop.deeds.isEmpty() && stop.deeds.first() == QStringLiteral("press hangMore") && !stop.deeds.contains(QStringLiteral("press back"))
            && !stop.deeds.contains(QStringLiteral("place 0"));
    }
    [[nodiscard]] QObject* flow() const { return m_window.property("flow").value<QObject*>(); }
    /// The page from its top, and as often further down as it takes to see all of it.
    void takeAll(const QString& picture, HowMuch howMuch)
    {
        m_hand.page()->setProperty("contentY", 0);
        m_hand.settle(1);
        if (howMuch == HowMuch::Top || !m_hand.page()->property("overflowing").toBool()) {
            take(picture);
            return;
        }
        int part = 0;
        do {
            while (part == mostParts - 1 && m_hand.pageDown()) { }
            take(QStringLiteral("%1-%2").arg(picture).arg(++part, 2, 10, QLatin1Char('0')));
        } while (m_hand.pageDown());
        if (part == 1)
            m_troubles << picture + QStringLiteral(": the page goes on, but not by the keyboard");
    }
    void take(const QString& name)
    {
        m_hand.settle(1);
        QImage image = m_window.grabWindow();
        if (image.size() != m_window.size() * m_window.devicePixelRatio() || !painted(image))
            m_troubles << name + QStringLiteral(": nothing is painted");
        ++m_pictures;
        // nothing shows through a window: a quarter less to pack
        image.reinterpretAsFormat(QImage::Format_RGB32);
        m_writers.start([this, image, path = m_folder.filePath(name + QStringLiteral(".png"))] {
            // packed lightly: packing took a fifth of the tour's time
            if (!image.save(path, nullptr, quickToPack))
                ++m_unwritten;
        });
    }

    QQuickWindow& m_window;
    Hand m_hand;
    StandInHouse& m_house;
    Ground m_ground;
    QDir m_folder;
    QSet<QString> m_seen;
    QStringList m_troubles;
    int m_pictures = 0;
    bool m_atTheDoor = false;
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

int through(const QDir& folder, const QString& form, QSize size, Stretch stretch)
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
            tour.walk(form, size, stretch);
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
