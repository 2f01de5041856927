// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/seal/start.h"
#include "mobile/days.h"
#include "mobile/door/samplehouse.h"
#include "mobile/firstfonts.h"
#include "mobile/household.h"
#include "mobile/platform/idlewatch.h"
#include "mobile/platform/platformhost.h"
#include "mobile/platform/stayawake.h"
#include "mobile/preferences.h"
#include "mobile/typeface.h"

#include <QAccessible>
#include <QApplication>
#include <QLibraryInfo>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QTimer>

#include <cstdio>
#include <memory>

namespace {

/// For whoever times the start from outside.
void sayFirstFrame(QObject* root)
{
    auto* window = qobject_cast<QQuickWindow*>(root);
    QObject::connect(window, &QQuickWindow::frameSwapped, window, [] {
        std::puts("first frame");
        std::fflush(stdout);
        QCoreApplication::quit();
    });
}

/// Locks after a while without a touch, as long as the vault is open.
void lockWhenIdle(IdleWatch& idle, VaultService& door)
{
    QObject::connect(&idle, &IdleWatch::idle, &door, &VaultService::lockNow);
    QObject::connect(&door, &VaultService::changed, &idle, [&] { door.state() == VaultService::State::Open ? idle.start() : idle.stop(); });
}

/// The display stays on while the vault is open, where the coach wants that.
void stayAwakeWhileOpen(StayAwake& awake, VaultService& door, Preferences& preferences)
{
    const auto look = [&] { awake.want(door.state() == VaultService::State::Open && preferences.staysOn()); };
    QObject::connect(&door, &VaultService::changed, &awake, look);
    QObject::connect(&preferences, &Preferences::changed, &awake, look);
}

/// Lets everything go on until something is so.
template <typename Condition>
void await(Condition so)
{
    while (!so())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
}

QUrl document(const char* path)
{
    return QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/") + QLatin1String(path));
}

/// The page that the door will open with.
QUrl firstPage(const VaultService& door)
{
    switch (door.state()) {
    case VaultService::State::NoVault:
        return document("Pages/Door/WelcomePage.qml");
    case VaultService::State::Locked:
        return document("Pages/Door/UnlockPage.qml");
    default:
        return document("Pages/Door/StoppedPage.qml");
    }
}

}

int main(int argc, char* argv[])
{
    auto fonts = typeface::listing();
    QApplication app(argc, argv); // Qt Charts draws with widgets
    QApplication::setApplicationName(QStringLiteral("Steelyard"));
    QApplication::setOrganizationName(QStringLiteral("Steelyard"));
    typeface::Coming face(std::move(fonts));
    if (!steelyard::seal::start()) {
        std::fputs("this system gives no randomness, or no memory for keys\n", stderr);
        return 1;
    }
    // where it is refused, a crash may leave a core file: the vault is no less sealed
    (void)steelyard::seal::forbidCoreDumps();

    const bool sample = samplehouse::askedFor(QApplication::arguments());
    const AppVault::Folders folders = sample ? AppVault::sampleFolders() : AppVault::usualFolders();
    if (sample)
        if (const QString trouble = samplehouse::makeReady(folders, sysDaysOf(QDate::currentDate())); !trouble.isEmpty()) {
            std::fprintf(stderr, "the example cannot be made: %s\n", qPrintable(trouble));
            return 1;
        }
    // without the sample there is nothing to ask for any more
    bool removed = false;
    Household household(folders, [&removed] { return platformhost::restart(removed ? samplehouse::argument : ""); });
    QObject::connect(&household.door(), &VaultService::sampleRemoved, &app, [&removed] {
        removed = true;
        samplehouse::rememberRemoved();
    });
    household.door().look();
    Preferences preferences;
    IdleWatch idle(app);
    lockWhenIdle(idle, household.door());
    StayAwake awake;
    stayAwakeWhileOpen(awake, household.door(), preferences);
    DeskForeign::instance = &household.desk();
    BookForeign::instance = &household.book();
    VaultForeign::instance = &household.door();
    PreferencesForeign::instance = &preferences;

    QQmlEngine engine;
    // ours are all in here: each further place would be looked through for every import
    engine.setImportPathList({QStringLiteral("qrc:/qt/qml"), QLibraryInfo::path(QLibraryInfo::QmlImportsPath)});
    bool warned = false;
    QObject::connect(&engine, &QQmlEngine::warnings, &app, [&warned](const auto&) { warned = true; });
    // the engine's thread loads them meanwhile, and asks this one now and then
    QQmlComponent main(&engine, document("Ui/Main.qml"), QQmlComponent::Asynchronous);
    const QQmlComponent flow(&engine, document("Ui/DoorFlow.qml"), QQmlComponent::Asynchronous);
    // the first picture is of a page, and which one depends on the vault
    await([&] { return face.there() && household.door().state() != VaultService::State::Looking; });
    const QQmlComponent page(&engine, firstPage(household.door()), QQmlComponent::Asynchronous);
    face.wait();
    for (const QFont& font : firstfonts::all(preferences.theme(), preferences.textSize())) {
        typeface::draw(font);
        QCoreApplication::processEvents();
    }
    // as exec() does; the way to the screen reader, over the session's bus, is waited for here and not by the first page
    QAccessible::setRootObject(&app);
    await([&] { return !main.isLoading(); });
    const std::unique_ptr<QObject> window(main.createWithInitialProperties({{QStringLiteral("begun"), false}}));
    if (!window) {
        std::fputs(qPrintable(main.errorString()), stderr);
        return 1;
    }
    await([&] { return !flow.isLoading() && !page.isLoading(); });
    window->setProperty("begun", true);
    if (QApplication::arguments().contains(QStringLiteral("--first-frame")))
        sayFirstFrame(window.get());
    const bool selfTest = QApplication::arguments().contains(QStringLiteral("--self-test"));
    if (selfTest)
        QTimer::singleShot(200, &app, &QCoreApplication::quit);
    const int code = QApplication::exec();
    return selfTest && warned ? 1 : code;
}
