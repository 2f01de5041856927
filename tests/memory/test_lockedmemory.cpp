// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/seal/keyfolder.h"
#include "core/seal/start.h"
#include "tests/guided/heldapp.h"
#include "tests/memory/processes.h"

#include <QDirIterator>
#include <QTemporaryDir>

#include <functional>
#include <memory>

using namespace steelyard;

/// What was seen once the app had been locked and showed its unlock page.
struct Behind {
    Sightings memory, startedWith, files;
    int processCount = 0;
};

/// A locked app is a fresh process: nothing of the squad, of a secret or of a key is left in its memory, in that of anything it has
/// started, in what it was started with, or in a file. Whether the search can see at all is looked at while the vault is open, and
/// four mistakes in the way to lock have to be noticed. Takes root, which alone may look into other processes.
class LockedMemoryTest : public QObject {
    Q_OBJECT

public:
    explicit LockedMemoryTest(QString program) : m_program(std::move(program)) {}

private Q_SLOTS:
    void init();
    void cleanup();
    void everyFormIsFound();
    void nothingIsLeft();
    void mistakesAreNoticed_data();
    void mistakesAreNoticed();

private:
    struct Person {
        QByteArray name, squad, notes;
    };
    static constexpr int peopleCount = 50, squadCount = 5, openedCount = 5;

    [[nodiscard]] Sightings memory() const;
    void makeVault();
    void learnKeys();
    void keepSquad();
    void unlock(const QByteArray& kind, const QByteArray& secret);
    void seeAll();
    void seeNothing();
    [[nodiscard]] Behind lock();
    [[nodiscard]] Sightings files() const;

    QString m_program;
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<HeldApp> m_app;
    Canaries m_canaries;
    QByteArray m_passphrase, m_code, m_typed;
    std::vector<Person> m_people;
};

void LockedMemoryTest::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    m_canaries = {};
    m_passphrase = Canaries::word(14) + '-' + Canaries::word(14);
    for (const QByteArray& part : m_passphrase.split('-'))
        m_canaries.addText("passphrase", part);
    m_typed = Canaries::word(16);
    m_canaries.addText("typed", m_typed);
    QByteArrayList squads;
    for (int i = 0; i < squadCount; ++i) {
        squads << Canaries::word(16);
        m_canaries.addText("squad", squads.back());
    }
    m_people.clear();
    for (int i = 0; i < peopleCount; ++i) {
        m_people.push_back({Canaries::word(16), squads[i % squadCount], Canaries::word(16)});
        m_canaries.addText("name", m_people.back().name);
        m_canaries.addText("notes", m_people.back().notes);
    }
    m_app = std::make_unique<HeldApp>(m_program, m_folder->path());
}

void LockedMemoryTest::cleanup()
{
    m_app.reset();
    m_folder.reset();
}

Sightings LockedMemoryTest::memory() const
{
    Sightings found;
    for (const qint64 process : processes::inSession(m_app->process()))
        found += processes::memory(process, m_canaries);
    return found;
}

Sightings LockedMemoryTest::files() const
{
    Sightings found;
    QDirIterator all(m_folder->path(), QDir::Files | QDir::Hidden | QDir::System, QDirIterator::Subdirectories);
    while (all.hasNext()) {
        const QString path = all.next();
        QFile file(path);
        found += m_canaries.findIn(path.toUtf8());
        if (file.open(QIODevice::ReadOnly))
            found += m_canaries.findIn(file.readAll());
        else
            found.unreadByteCount += file.size();
    }
    return found;
}

/// By the pages of the first start; each secret has to be seen while it is there.
void LockedMemoryTest::makeVault()
{
    m_app->awaitPage("WelcomePage");
    m_app->perform("press own");
    m_app->perform("type first " + m_passphrase);
    m_app->perform("type second " + m_passphrase);
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
    const Sightings typed = memory();
    QVERIFY2(typed.counts.value("passphrase") > 0, typed.text());
    m_app->perform("press mainAction");
    m_app->awaitPage("CodePage");
    m_code = m_app->recoveryCode();
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
    m_canaries.addText("recovery code", m_code);
    // as a person may type it, and as it is stretched: without the hyphens, and without the last sign of each group
    m_canaries.addText("recovery code", QByteArray(m_code).replace('-', ""));
    m_canaries.addText("recovery code", m_code.toLower());
    QByteArray symbols;
    for (const QByteArray& group : m_code.split('-'))
        symbols += group.chopped(1);
    QCOMPARE(symbols.size(), qsizetype(seal::RecoveryCode::symbolCount));
    m_canaries.addText("recovery code", symbols);
    const Sightings shown = memory();
    QVERIFY2(shown.counts.value("recovery code") > 0, shown.text());
    m_app->perform("press mainAction");
    m_app->perform("copy code entry");
    m_app->perform("press mainAction");
    m_app->awaitPage("SetupPage");
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
}

/// The keys themselves, out of the key file by the passphrase.
void LockedMemoryTest::learnKeys()
{
    QDirIterator found(m_folder->path(), {QStringLiteral("vault.key")}, QDir::Files, QDirIterator::Subdirectories);
    QVERIFY(found.hasNext());
    const auto copies = seal::KeyFolder(QFileInfo(found.next()).path().toStdString()).read();
    QVERIFY(copies.ok());
    seal::SecretText passphrase;
    QVERIFY(passphrase.append(m_passphrase.toStdString()).ok());
    const auto ring = seal::unlock(copies->candidates.front(), passphrase);
    QVERIFY(ring.ok());
    const seal::Slot* slot = ring->file().slot(seal::SlotKind::Passphrase);
    QVERIFY(slot);
    const auto wrapping = seal::stretch(seal::bytesOf(passphrase.view()), slot->salt, slot->cost);
    QVERIFY(wrapping.ok());
    const auto bytes = [](seal::ByteView key) { return QByteArray(reinterpret_cast<const char*>(key.data()), static_cast<qsizetype>(key.size())); };
    m_canaries.addBytes("vault key", bytes(ring->vaultKey().view()));
    m_canaries.addBytes("data key", bytes(ring->dataKey().view()));
    m_canaries.addBytes("wrapping key", bytes(wrapping->view()));
}

/// Fifty people in the vault, their list drawn, some of them opened, and one put right by hand without keeping it.
void LockedMemoryTest::keepSquad()
{
    for (const Person& person : m_people)
        m_app->perform("keep " + person.name + ' ' + person.squad + ' ' + person.notes);
    m_app->perform("place 0");
    for (int row = 0; row < openedCount; ++row) {
        m_app->perform("row " + QByteArray::number(row * (peopleCount / openedCount)));
        m_app->awaitPage("AthletePage");
        m_app->perform("write notes " + m_typed);
        m_app->perform("press back");
    }
    m_app->awaitPage("SquadPage");
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
}

Behind LockedMemoryTest::lock()
{
    m_app->send("press lock");
    m_app->awaitPage("UnlockPage");
    Behind behind;
    for (const qint64 process : processes::inSession(m_app->process())) {
        ++behind.processCount;
        behind.memory += processes::memory(process, m_canaries);
        behind.startedWith += processes::startedWith(process, m_canaries);
    }
    behind.files = files();
    return behind;
}

void LockedMemoryTest::everyFormIsFound()
{
    const QByteArray word = m_people.front().name;
    for (const QByteArray& form : Canaries::formsOf(word))
        QCOMPARE(m_canaries.findIn("something " + form + " else").counts.value("name"), 1);
    QCOMPARE(m_canaries.findIn(word.chopped(1) + '?').total(), 0);
}

/// The whole squad and the keys have to be seen while the vault is open.
void LockedMemoryTest::seeAll()
{
    const Sightings open = memory();
    qInfo("open: %s", open.text().constData());
    QCOMPARE(open.unreadByteCount, qint64(0));
    for (const Person& person : m_people)
        QVERIFY2(open.seen.contains(person.name) && open.seen.contains(person.squad) && open.seen.contains(person.notes), open.text());
    for (const char* kind : {"typed", "vault key", "data key"})
        QVERIFY2(open.counts.value(kind) > 0, kind);
}

/// A whole app is looked through, what it was started with, and a vault of fifty people; and nothing is seen.
void LockedMemoryTest::seeNothing()
{
    const Behind behind = lock();
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
    qInfo("locked: %s; files: %s", behind.memory.text().constData(), behind.files.text().constData());
    QCOMPARE(behind.processCount, 1);
    QCOMPARE(behind.memory.unreadByteCount, qint64(0));
    QCOMPARE(behind.files.unreadByteCount, qint64(0));
    QVERIFY(behind.memory.byteCount > 20'000'000);
    QVERIFY(behind.startedWith.byteCount > 100);
    QVERIFY(behind.files.byteCount > 50'000);
    QVERIFY2(behind.memory.total() == 0, behind.memory.text());
    QVERIFY2(behind.startedWith.total() == 0, behind.startedWith.text());
    QVERIFY2(behind.files.total() == 0, behind.files.text());
}

/// From the unlock page, where the secret has to be seen as long as it stands in the field, to the list of the squad.
void LockedMemoryTest::unlock(const QByteArray& kind, const QByteArray& secret)
{
    m_app->perform("type entry " + secret);
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
    const Sightings typed = memory();
    QVERIFY2(typed.counts.value(kind) > 0, typed.text());
    m_app->perform("press mainAction");
    m_app->awaitPage("SetupPage");
    m_app->perform("place 0");
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
}

/// After the vault was made, after it was unlocked by the passphrase, and by the recovery code.
void LockedMemoryTest::nothingIsLeft()
{
    makeVault();
    const std::vector<std::function<void()>> rest = {
        [this] { learnKeys(); },
        [this] { keepSquad(); },
        [this] { seeAll(); },
        [this] { seeNothing(); },
        [this] { unlock("passphrase", m_passphrase); },
        [this] { seeAll(); },
        [this] { seeNothing(); },
        [this] { m_app->perform("press otherWay"); },
        [this] { unlock("recovery code", m_code); },
        [this] { seeAll(); },
        [this] { seeNothing(); },
    };
    for (const auto& step : rest)
        if (!QTest::currentTestFailed())
            step();
}

void LockedMemoryTest::mistakesAreNoticed_data()
{
    QTest::addColumn<bool>("inMemory");
    QTest::addColumn<bool>("inStart");
    QTest::addColumn<bool>("inFiles");
    QTest::addColumn<int>("processCount");
    QTest::newRow("environment") << true << true << false << 1;
    QTest::newRow("file") << false << false << true << 1;
    QTest::newRow("process") << true << false << false << 2;
    QTest::newRow("stay") << true << false << false << 1;
}

void LockedMemoryTest::mistakesAreNoticed()
{
    QFETCH(const bool, inMemory);
    QFETCH(const bool, inStart);
    QFETCH(const bool, inFiles);
    QFETCH(const int, processCount);
    makeVault();
    if (!QTest::currentTestFailed())
        keepSquad();
    if (QTest::currentTestFailed())
        return;
    m_app->perform(QByteArray("plant ") + QTest::currentDataTag() + ' ' + m_people.back().name);
    const Behind behind = lock();
    QVERIFY2(m_app->trouble().isEmpty(), qPrintable(m_app->trouble()));
    qInfo("locked: %s; files: %s", behind.memory.text().constData(), behind.files.text().constData());
    QCOMPARE(behind.processCount, processCount);
    QCOMPARE(behind.memory.total() > 0, inMemory);
    QCOMPARE(behind.startedWith.total() > 0, inStart);
    QCOMPARE(behind.files.total() > 0, inFiles);
}

int main(int argc, char* argv[])
{
    QCoreApplication app(argc, argv);
    if (!seal::start() || argc < 2)
        return 2;
    LockedMemoryTest test(QString::fromLocal8Bit(argv[1]));
    // the program's name is ours, the rest is the framework's
    argv[1] = argv[0];
    return QTest::qExec(&test, argc - 1, argv + 1);
}
#include "test_lockedmemory.moc"
