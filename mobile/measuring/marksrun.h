// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/markseditor.h"
#include "mobile/pages/deskwork.h"

#include <QPointer>

/** Bar marks in a row at one station: bottom and top of one lifter, kept, and the next of the squad. */
class MarksRun : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(MarksEditor* form READ form WRITE setForm NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(DeskWork* work READ work WRITE setWork NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString key READ key NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString heading READ heading NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(bool zone READ isZoned WRITE setZoned NOTIFY changed FINAL)
    Q_PROPERTY(QString nextName READ nextName NOTIFY changed FINAL)
    Q_PROPERTY(QStringList alike READ alike NOTIFY changed FINAL)
    Q_PROPERTY(QString copied MEMBER m_copied NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] MarksEditor* form() const { return m_form; }
    void setForm(MarksEditor* form);
    [[nodiscard]] DeskWork* work() const { return m_work; }
    void setWork(DeskWork* work);
    /// Of the mark that is asked; empty once all are there.
    [[nodiscard]] QString key() const;
    [[nodiscard]] QString heading() const;
    /// "bottom, 3 of 12": which mark, and where the lifter stands in the squad.
    [[nodiscard]] QString progress() const;
    /// The sticking zone is asked too.
    [[nodiscard]] bool isZoned() const { return m_zoned; }
    void setZoned(bool zoned);
    /// Of the squad, in the order of names; empty after the last.
    [[nodiscard]] QString nextName() const;
    /// Lifts that the marks may be copied to, as the bar goes about the same way.
    [[nodiscard]] QStringList alike() const;

    /// From the first mark.
    Q_INVOKABLE void start();
    Q_INVOKABLE void next();
    /// One mark back; false at the first.
    Q_INVOKABLE bool back();
    /// The next lifter; what was keyed of this one has been kept.
    Q_INVOKABLE void nextLifter();
    /// The marks, as they are kept, to the lift of this place in `alike`; `copied` says what was copied.
    Q_INVOKABLE void copyTo(int place);

Q_SIGNALS:
    void stepChanged();
    void changed();

private:
    [[nodiscard]] QStringList keys() const;
    [[nodiscard]] std::vector<const steelyard::Athlete*> squad() const;
    [[nodiscard]] std::size_t place() const;
    [[nodiscard]] std::vector<steelyard::LiftId> likeLifts() const;
    void stepped();

    QPointer<MarksEditor> m_form;
    QPointer<DeskWork> m_work;
    int m_step = 0;
    bool m_zoned = false;
    QString m_copied;
};
