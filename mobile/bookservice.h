// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/keeping/seasonkeeping.h"
#include "mobile/text/sentences.h"
#endif

#include <QByteArray>
#include <QJSEngine>
#include <QObject>
#include <QQmlEngine>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <optional>

/** Everything kept, as pages reach it: the book to read, the keeping to hand on, what was done last and what went wrong. */
class BookService : public QObject {
    Q_OBJECT
    Q_PROPERTY(QString undoFact READ undoFact NOTIFY undoChanged FINAL)
    Q_PROPERTY(QString head READ head NOTIFY troubleChanged FINAL)
    Q_PROPERTY(QString body READ body NOTIFY troubleChanged FINAL)

public:
    using Here = std::function<steelyard::Here()>;
    /// Undo stands on the page so long after a deed; later it is in the list.
    static constexpr std::chrono::milliseconds undoShown = std::chrono::seconds(30);

    BookService(steelyard::Keeper& keeper, steelyard::NewIds newIds, Here here, QObject* parent = nullptr);

    [[nodiscard]] steelyard::SeasonBook& book() { return m_book; }
    [[nodiscard]] const steelyard::SeasonBook& book() const { return m_book; }
    [[nodiscard]] steelyard::SeasonKeeping& keeping() { return m_keeping; }
    [[nodiscard]] std::chrono::sys_days today() const { return m_keeping.here().day; }
    /// Whoever shows something by days is told when another has begun; looked at twice a minute.
    void lookAtDay();
    /// What the vault held when it was opened; forms half filled in come back.
    void load(const steelyard::vault::Opened& opened);
    /// For a use-case: what went wrong is shown here, `kept` is called once it is on the disk.
    [[nodiscard]] steelyard::WhenTold teller(std::function<void(steelyard::RecordId)> kept = {});

    /// For what is kept along the way and nobody undoes: only what went wrong is shown.
    [[nodiscard]] steelyard::WhenTold quietTeller(std::function<void(bool)> told);

    /// Something half done, by a key of its own: it is saved in the vault outside the journal, and is here again after the next start.
    [[nodiscard]] std::optional<QByteArray> draft(const QString& key) const;
    void setDraft(const QString& key, const QByteArray& bytes);
    void throwDraft(const QString& key);

    /// The last deed in words, for a while after it; empty when none can be undone from the page.
    [[nodiscard]] QString undoFact() const { return m_undoFact; }
    /// Why the last thing was not kept, and what to do next.
    [[nodiscard]] QString head() const { return m_trouble.head; }
    [[nodiscard]] QString body() const { return m_trouble.body; }

    /// Takes the deed of this row of the list back; the first is the last one done.
    Q_INVOKABLE void undo(int row = 0);
    Q_INVOKABLE void hush();
    /// For what else goes wrong while keeping.
    void tell(const sentences::Said& said) { say(said); }

Q_SIGNALS:
    /// Something kept has changed, or the list of deeds has.
    void changed();
    void undoChanged();
    void troubleChanged();

private:
    void tellChanged();
    void showUndo(const QString& fact);
    void say(const sentences::Said& said);

    void saveDraft(const QString& key);

    steelyard::Keeper& m_keeper;
    steelyard::SeasonBook m_book;
    steelyard::SeasonKeeping m_keeping;
    std::map<QString, QByteArray> m_drafts;
    steelyard::Subscription m_onSaying, m_onBook, m_onDeeds;
    QTimer m_undoTimer, m_dayTimer;
    std::chrono::sys_days m_dayTold;
    QString m_undoFact;
    sentences::Said m_trouble;
};

/** The book as a type, for pages and view-models that are given one. */
struct BookServiceForeign {
    Q_GADGET
    QML_FOREIGN(BookService)
    QML_NAMED_ELEMENT(BookService)
    QML_UNCREATABLE("there is one, and it is given")
};

/** The one of the app, which is a type of its own, as a type has one name in QML. */
class OneBook : public BookService {
    Q_OBJECT

public:
    using BookService::BookService;
};

/** Shows the one book to QML; main() or a test sets `instance` first. */
struct BookForeign {
    Q_GADGET
    QML_FOREIGN(OneBook)
    QML_SINGLETON
    QML_NAMED_ELEMENT(TheBook)

public:
    inline static OneBook* instance = nullptr;
    static OneBook* create(QQmlEngine*, QJSEngine*)
    {
        QJSEngine::setObjectOwnership(instance, QJSEngine::CppOwnership);
        return instance;
    }
};
