// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/itemeditor.h"

#include <QPointer>

/** Measuring a thing in short steps: one question a page, over the form that holds the numbers. */
class MeasureGuide : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a guide of its own kind")
    Q_PROPERTY(ItemEditor* form READ form WRITE setForm NOTIFY formChanged REQUIRED FINAL)
    Q_PROPERTY(Page page READ page NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString key READ key NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString heading READ heading NOTIFY changed FINAL)
    Q_PROPERTY(QString progress READ progress NOTIFY changed FINAL)
    Q_PROPERTY(QString how READ how NOTIFY changed FINAL)
    Q_PROPERTY(QString part READ part NOTIFY stepChanged FINAL)
    Q_PROPERTY(QString gain READ gain NOTIFY changed FINAL)
    Q_PROPERTY(QString drift READ drift NOTIFY changed FINAL)

public:
    enum class Page { Begin, Number, Result };
    Q_ENUM(Page)

    using QObject::QObject;

    [[nodiscard]] ItemEditor* form() const { return m_form; }
    void setForm(ItemEditor* form);
    [[nodiscard]] virtual Page page() const = 0;
    /// Of the number that is asked; empty where none is.
    [[nodiscard]] virtual QString key() const = 0;
    [[nodiscard]] virtual QString heading() const = 0;
    [[nodiscard]] virtual QString progress() const = 0;
    [[nodiscard]] virtual QString how() const = 0;
    /// What the drawing is about: the key without its hanging's number.
    [[nodiscard]] QString part() const { return key().section(QLatin1Char(':'), 0, 0); }
    /// What would make the measurement better.
    [[nodiscard]] virtual QString gain() const = 0;
    /// What changed since it was measured last; empty the first time.
    [[nodiscard]] QString drift() const;

    /// Goes where the form was left.
    Q_INVOKABLE virtual void resume() = 0;
    /// On to the next step; the number of this one has been kept.
    Q_INVOKABLE virtual void next() = 0;
    /// One step back; false at the first.
    Q_INVOKABLE virtual bool back() = 0;

Q_SIGNALS:
    void formChanged();
    void stepChanged();
    void changed();

protected:
    void stepped();
    [[nodiscard]] bool ready() const { return m_form && m_form->deskService(); }
    /// Enters it anew where it was measured before; what is begun already goes on.
    void begin();

private:
    QPointer<ItemEditor> m_form;
};
