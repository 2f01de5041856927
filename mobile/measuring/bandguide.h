// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/measuring/bandlengths.h"
#endif
#include "mobile/editors/bandeditor.h"
#include "mobile/measuring/measureguide.h"

/** Where to read a band next, and why; the odd hanging; how it pulls on the way back. */
struct BandAdvice {
    Q_GADGET
    QML_VALUE_TYPE(bandAdvice)
    Q_PROPERTY(QString head MEMBER head)
    Q_PROPERTY(QString body MEMBER body)
    Q_PROPERTY(QString odd MEMBER odd)
    Q_PROPERTY(QString wayBack MEMBER wayBack)
    Q_PROPERTY(QString unsure MEMBER unsure)
    Q_PROPERTY(bool curve MEMBER curve)

public:
    QString head, body, odd, wayBack;
    QString unsure; ///< why the give-or-take is wide; empty where it is not for want of readings
    bool curve = false; ///< there are readings enough to end with
};

/** Measuring a band in steps: its rest, then a mass and a length in turn, until the curve is good enough. */
class BandGuide : public MeasureGuide {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BandAdvice advice READ advice NOTIFY changed FINAL)
    Q_PROPERTY(bool unloading READ isUnloading WRITE setUnloading NOTIFY changed FINAL)

public:
    using MeasureGuide::MeasureGuide;

    [[nodiscard]] Page page() const override;
    [[nodiscard]] QString key() const override;
    [[nodiscard]] QString heading() const override;
    [[nodiscard]] QString progress() const override;
    [[nodiscard]] QString how() const override;
    [[nodiscard]] QString gain() const override;
    void resume() override;
    void next() override;
    bool back() override;
    [[nodiscard]] BandAdvice advice() const;
    /// Whether the hanging at hand is read while the load comes off again.
    [[nodiscard]] bool isUnloading() const;
    void setUnloading(bool unloading);
    /// Ends with what there is.
    Q_INVOKABLE void enough();
    /// One more hanging, or the readings on the way back.
    Q_INVOKABLE void more(bool unloading);
    /// The odd hanging's length is read again.
    Q_INVOKABLE void readAgain();
    Q_INVOKABLE void leaveOut();

private:
    enum class Stage { Begin, Rest, Mass, Length, Result };

    [[nodiscard]] BandEditor* band() const { return qobject_cast<BandEditor*>(form()); }
    [[nodiscard]] steelyard::BandMeasurement measurement() const { return band()->measurement(); }
    [[nodiscard]] int count() const { return static_cast<int>(measurement().hangings.size()); }
    [[nodiscard]] std::optional<steelyard::Length> furthest() const;
    [[nodiscard]] std::optional<steelyard::LengthAdvice> nextAdvice() const;
    [[nodiscard]] steelyard::BandHanging hanging() const;
    /// The first hanging that lacks a number, or one more, or the result.
    void goOn();
    void dropEmpty();
    void go(Stage stage, int at = 0);

    Stage m_stage = Stage::Begin;
    int m_at = 0;
    bool m_again = false; ///< one number is put right; then on from where it was
};
