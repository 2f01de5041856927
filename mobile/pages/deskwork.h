// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/deskservice.h"

#include <set>
#include <tuple>

/** Whom the desk is laid out for, and the ways between desk and book: marks, set-ups, kit of a venue. */
class DeskWork : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY sourcesChanged REQUIRED FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY sourcesChanged REQUIRED FINAL)
    Q_PROPERTY(QString athleteId READ athleteId NOTIFY changed FINAL)
    Q_PROPERTY(QString lift READ lift NOTIFY changed FINAL)
    Q_PROPERTY(QString name READ name NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(bool marksDiffer READ marksDiffer NOTIFY changed FINAL)
    Q_PROPERTY(bool setupDiffers READ setupDiffers NOTIFY changed FINAL)
    Q_PROPERTY(QString lookedOn READ lookedOn NOTIFY changed FINAL)
    Q_PROPERTY(QStringList venues READ venues NOTIFY changed FINAL)
    Q_PROPERTY(QString venueId READ venueId NOTIFY changed FINAL)
    Q_PROPERTY(int venue READ venue WRITE setVenue NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString athleteId() const { return QString::fromStdString(m_athlete.hex()); }
    /// Its number, or the id of one that was added.
    [[nodiscard]] QString lift() const;
    /// Of the athlete; empty where the desk is laid out for nobody.
    [[nodiscard]] QString name() const;
    /// "Ana M., back squat".
    [[nodiscard]] QString who() const;
    /// Whether the desk says something else than the book of her marks, or of the set-up that was opened.
    [[nodiscard]] bool marksDiffer() const;
    [[nodiscard]] bool setupDiffers() const;
    /// The last day on which what hangs in the opened set-up was looked over; empty where it never was, or hangs otherwise now.
    [[nodiscard]] QString lookedOn() const;
    /// "everywhere", then each venue.
    [[nodiscard]] QStringList venues() const;
    [[nodiscard]] int venue() const;
    void setVenue(int index);
    /// Empty where none is chosen.
    [[nodiscard]] QString venueId() const;

    /// Lays the desk out for an athlete and a lift; what hangs stays.
    Q_INVOKABLE void take(const QString& athleteId, const QString& lift);
    /// Lays a kept set-up out as it was.
    Q_INVOKABLE void open(const QString& setupId);
    Q_INVOKABLE void keepMarks();
    /// Keeps what hangs: the set-up that was opened is changed, or a new one added.
    Q_INVOKABLE void keepSetup();
    Q_INVOKABLE void keepVenue(const QString& name);

Q_SIGNALS:
    void sourcesChanged();
    void changed();
    void marksKept();
    void setupKept();
    void venueKept();

private:
    void refresh();
    void layKit();
    /// The limits and the day, and who is at the gates.
    void layLifter();
    /// Her isometric pulls that count; nobody's stay as they are.
    void layPulls();
    /// Her maximum that counts; nobody has one.
    void layMaximum();
    /// What hung last time for whom the desk is laid out.
    void layLastTime();
    /// Cautions looked over on the desk are kept, once the set-up is kept as it stands there.
    void keepLookedOver();
    void remember();
    void recall();
    [[nodiscard]] bool ready() const { return m_desk && m_book; }
    [[nodiscard]] const steelyard::Athlete* athlete() const;
    /// None, too, once the venue chosen is there no more.
    [[nodiscard]] steelyard::RecordId whereNow() const;
    [[nodiscard]] steelyard::BarMarks keptMarks() const;
    [[nodiscard]] steelyard::BarMarks noMarks() const;
    void layMarks(const steelyard::BarMarks& marks);
    /// Typed and not kept: they wait for whom and for which lift they were typed.
    void putMarksAside();
    [[nodiscard]] std::optional<steelyard::BarMarks> marksAside() const;
    [[nodiscard]] QString asideKey() const;

    DeskService* m_desk = nullptr;
    BookService* m_book = nullptr;
    steelyard::RecordId m_athlete, m_setup, m_venue;
    steelyard::LiftId m_lift;
    /// A look over that was handed on to be kept: of which set-up, at what, and of what hung, on which day.
    using Look = std::tuple<steelyard::RecordId, steelyard::CautionCode, steelyard::RecordId, std::chrono::sys_days>;
    std::set<Look> m_looks;
    std::set<steelyard::RecordId> m_laid; ///< kit that came from the book
    std::optional<steelyard::BarMarks> m_laidMarks; ///< as they were put on the desk; none after a start
};
