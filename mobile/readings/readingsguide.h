// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/measuring/measureguide.h"
#include "mobile/readings/readingseditor.h"

/** Where to read next, and why; the odd reading; whether there are readings enough to end with. */
struct ReadingAdvice {
    Q_GADGET
    QML_VALUE_TYPE(readingAdvice)
    Q_PROPERTY(QString head MEMBER head)
    Q_PROPERTY(QString body MEMBER body)
    Q_PROPERTY(QString odd MEMBER odd)
    Q_PROPERTY(bool enough MEMBER enough)

public:
    QString head, body, odd;
    bool enough = false;
};

/** Measuring in steps what is read at several places: first what holds for all of them, then two numbers in turn, until it is enough. */
class ReadingsGuide : public MeasureGuide {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a guide of its own kind")
    Q_PROPERTY(ReadingAdvice advice READ advice NOTIFY changed FINAL)
    Q_PROPERTY(ReadingsEditor* readings READ readings NOTIFY formChanged FINAL)

public:
    using MeasureGuide::MeasureGuide;

    [[nodiscard]] Page page() const override;
    [[nodiscard]] QString key() const override;
    [[nodiscard]] QString heading() const override;
    [[nodiscard]] QString progress() const override;
    [[nodiscard]] ReadingsEditor* readings() const { return qobject_cast<ReadingsEditor*>(form()); }
    [[nodiscard]] ReadingAdvice advice() const;
    void resume() override;
    void next() override;
    bool back() override;
    /// Ends with what there is.
    Q_INVOKABLE void enough();
    /// One reading more.
    Q_INVOKABLE void more();
    /// The odd reading's second number is read again.
    Q_INVOKABLE void readAgain();
    Q_INVOKABLE void leaveOut() const;

protected:
    /// Which reading is at hand, counted from 0; −1 for a number that holds for all of them.
    [[nodiscard]] int atReading() const;
    /// Begins or goes on with the first number that is missing.
    void goOn();
    /// What the first page is called, and what a number's page asks.
    [[nodiscard]] virtual QString title() const = 0;
    [[nodiscard]] virtual QString question(const QString& part) const = 0;
    /// How far it is, at a reading and at the end.
    [[nodiscard]] virtual QString progressAt(int reading) const = 0;
    /// So many readings can be the end of it.
    [[nodiscard]] virtual int fewest() const = 0;
    /// Head and body of what to read next; an empty head where it is enough.
    [[nodiscard]] virtual std::pair<QString, QString> nextAdvice() const = 0;

private:
    [[nodiscard]] QStringList keys() const;
    void dropEmpty();
    void go(int step);

    int m_step = 0; ///< 0 the beginning, then the numbers
    bool m_ended = false;
    bool m_again = false; ///< one number is put right; then on from where it was
};
