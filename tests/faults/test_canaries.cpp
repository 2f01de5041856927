// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/faults/story.h"

#include <QDirIterator>

using namespace faults;

namespace {

constexpr int canaryCount = 50;

QByteArray canary(int number)
{
    return "Canary Marrow " + QByteArray::number(1000 + 7 * number) + " Hill";
}

/// What base64 makes of a text wherever in it the text begins, without the digits that its neighbours have a part in.
QList<QByteArray> inBase64(const QByteArray& text)
{
    QList<QByteArray> forms;
    for (int before = 0; before < 3; ++before) {
        const QByteArray digits = (QByteArray(before, 'x') + text).toBase64(QByteArray::OmitTrailingEquals);
        const int first = before == 0 ? 0 : before + 1;
        forms.append(digits.mid(first, digits.size() - first - 1));
    }
    return forms;
}

/// UTF-8, UTF-16, base64, hexadecimal digits, and back to front.
QList<QByteArray> formsOf(const QByteArray& text)
{
    const QString wide = QString::fromUtf8(text);
    QByteArray reversed = text;
    std::reverse(reversed.begin(), reversed.end());
    QList<QByteArray> forms{text, QByteArray(reinterpret_cast<const char*>(wide.utf16()), wide.size() * 2), text.toHex(), text.toHex().toUpper(), reversed};
    return forms + inBase64(text);
}

/// Looks for every form of every canary in one pass, by the few bytes that a form begins with.
class Watch {
public:
    void add(const QByteArray& text)
    {
        for (const QByteArray& form : formsOf(text))
            m_forms[form.left(4)].append(form);
    }
    /// What was found; nothing where nothing was.
    [[nodiscard]] QByteArray findIn(const QByteArray& bytes) const
    {
        for (qsizetype at = 0; at + 4 <= bytes.size(); ++at) {
            const auto forms = m_forms.constFind(QByteArray::fromRawData(bytes.constData() + at, 4));
            if (forms == m_forms.constEnd())
                continue;
            for (const QByteArray& form : *forms)
                if (QByteArrayView(bytes).sliced(at).startsWith(form))
                    return form;
        }
        return {};
    }

private:
    QHash<QByteArray, QList<QByteArray>> m_forms;
};

seal::SecretText secret(const QByteArray& text)
{
    seal::SecretText typed;
    return typed.append({text.constData(), static_cast<std::size_t>(text.size())}) ? std::move(typed) : seal::SecretText();
}

/// Keeps canaries in every place that a text can get to.
std::vector<journal::Draft> drafts()
{
    std::vector<journal::Draft> all;
    for (int number = 1; number < canaryCount - 2; ++number) {
        const std::string text = canary(number).toStdString();
        journal::Draft draft = number % 2 == 0 ? addedTo(1, static_cast<unsigned>(number), 1, text) : fieldOf(1, static_cast<std::uint32_t>(number), text);
        if (number % 3 == 0) {
            draft = fieldOf(1, 0, "");
            draft.kind = journal::Kind::TagAdded;
            draft.part = text;
            draft.content.clear();
        }
        all.push_back(draft);
    }
    return all;
}

}

/// Nothing that was typed can be read in anything that the program writes anywhere, temporary files and names of files too, at any
/// moment: every byte is looked at as it is written, and the files once more in the end.
class TestCanaries : public QObject {
    Q_OBJECT

private:
    Watch m_watch;

    template <typename T, typename Call>
    static Outcome<T> await(Place& place, std::mutex& mutex, const Call& call)
    {
        std::optional<Outcome<T>> result;
        call([&result](Outcome<T> outcome) { result.emplace(std::move(outcome)); });
        while (!result) {
            std::function<void()> work;
            {
                const std::lock_guard guard(mutex);
                if (!place.posted.empty()) {
                    work = std::move(place.posted.front());
                    place.posted.pop_front();
                }
            }
            if (work)
                work();
            else
                QTest::qSleep(1);
        }
        return *std::move(result);
    }

    /// A vault from its first to its last moment; what the program did meanwhile, all over the file system.
    static std::vector<Operation> aLife(Place& place)
    {
        std::mutex mutex;
        place.surroundings.post = [&](std::function<void()> work) {
            const std::lock_guard guard(mutex);
            place.posted.push_back(std::move(work));
        };
        std::vector<Operation> operations;
        Plan plan{"/"};
        plan.record = &operations;
        arm(plan);
        {
            VaultAccess access(place.surroundings);
            bool well = await<Opened>(place, mutex, [&](auto done) {
                access.create(place.folder(), {secret(canary(0)), *seal::RecoveryCode::generate(seededRandom(4)), seal::weakestStretch, everything()}, done);
            }).ok();
            well = well && await<Kept>(place, mutex, [&](auto done) { access.keep(drafts(), done); }).ok();
            well = well && await<Done>(place, mutex, [&](auto done) {
                access.saveDraft("desk", content(canary(canaryCount - 2).toStdString()), done);
            }).ok();
            well = well && await<Done>(place, mutex, [&](auto done) {
                access.saveDraft(canary(canaryCount - 1).toStdString(), content("x"), done);
            }).ok();
            well = well && await<Done>(place, mutex, [&](auto done) { access.lock(done); }).ok();
            well = well && !await<Opened>(place, mutex, [&](auto done) { access.unlock(place.folder(), byPassphrase(secret("a squad of ten!")), everything(), done); }).ok();
            const auto opened = await<Opened>(place, mutex, [&](auto done) { access.unlock(place.folder(), byPassphrase(secret(canary(0))), everything(), done); });
            well = well && opened.ok() && opened->snapshot.heads.size() + opened->snapshot.added.size() == canaryCount - 3;
            if (!well)
                operations.clear();
        }
        disarm();
        return operations;
    }

private Q_SLOTS:
    void initTestCase()
    {
        QVERIFY(seal::start().ok());
        for (int number = 0; number < canaryCount; ++number)
            m_watch.add(canary(number));
        const auto text = (*seal::RecoveryCode::generate(seededRandom(4))).text();
        m_watch.add(QByteArray(text->view().data(), static_cast<qsizetype>(text->view().size())));
        m_watch.add("SQLite format 3");
        m_watch.add("CREATE TABLE");
    }

    void theWatchFindsEveryForm()
    {
        for (const QByteArray& form : formsOf(canary(17)))
            QCOMPARE(m_watch.findIn("some bytes " + form + " and others"), form);
        for (int before = 0; before < 6; ++before)
            QVERIFY(!m_watch.findIn((QByteArray(before, '-') + canary(3) + "--").toBase64()).isEmpty());
        QVERIFY(m_watch.findIn("Canary Marrow 1001 Hill").isEmpty());
        QVERIFY(!m_watch.findIn("SQLite format 3").isEmpty());
    }

    void nothingThatIsWrittenCanBeRead()
    {
        Place place;
        const std::vector<Operation> operations = aLife(place);
        QVERIFY(operations.size() > 60);
        QByteArray written;
        for (const Operation& operation : operations) {
            written += QByteArray::fromStdString(operation.bytes) + '\n' + QByteArray::fromStdString(operation.name) + '\n';
            QVERIFY2(operation.name.starts_with("." + place.dir.path().toStdString().substr(1)) || operation.name.starts_with(".dev/"),
                qPrintable("written outside: " + QString::fromStdString(operation.name)));
        }
        QVERIFY(written.size() > 100'000);
        QCOMPARE(m_watch.findIn(written), QByteArray());
        QDirIterator files(place.dir.path(), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
        int count = 0;
        while (files.hasNext()) {
            QFile file(files.next());
            QVERIFY(file.open(QIODevice::ReadOnly));
            QVERIFY2(m_watch.findIn(file.readAll()).isEmpty(), qPrintable(file.fileName()));
            ++count;
        }
        QVERIFY(count >= 7);
    }
};

QTEST_APPLESS_MAIN(TestCanaries)
#include "test_canaries.moc"
