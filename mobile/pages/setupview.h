// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/deskservice.h"
#include "mobile/models/rows.h"
#include "mobile/pages/setuptext.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** What the set-up page shows. */
class SetupView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY deskChanged REQUIRED FINAL)
    Q_PROPERTY(SetupAnswer answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(PullPicture picture READ picture NOTIFY changed FINAL)
    Q_PROPERTY(double readStep READ readStep NOTIFY changed FINAL)
    Q_PROPERTY(BeamText beam READ beam NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList marks READ marks NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList plates READ plates NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList strip READ strip NOTIFY changed FINAL)
    Q_PROPERTY(QVariantList elevation READ elevation NOTIFY elevationChanged FINAL)
    Q_PROPERTY(QAbstractListModel* hanging READ hanging CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* notices READ notices CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* cautions READ cautions CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    [[nodiscard]] SetupAnswer answer() const { return m_answer; }
    [[nodiscard]] PullPicture picture() const { return m_picture; }
    /// Metres from one reading of the picture to the next: five centimetres, or two inches.
    [[nodiscard]] double readStep() const;
    [[nodiscard]] BeamText beam() const { return m_beam; }
    [[nodiscard]] QVariantList marks() const { return m_marks; }
    /// Each side from the inside out: {label, diameterMm, thicknessMm, hang, change}; the strip has chain and band behind the iron.
    [[nodiscard]] QVariantList plates() const { return m_plates; }
    [[nodiscard]] QVariantList strip() const { return m_strip; }
    /// What hangs from one end, to scale: {kind, hang, lead, length, pitch, wire, bunch, anchorHeight, above}.
    [[nodiscard]] QVariantList elevation() const { return m_elevation; }
    [[nodiscard]] QAbstractListModel* hanging() { return &m_hanging; }
    [[nodiscard]] QAbstractListModel* notices() { return &m_notices; }
    [[nodiscard]] QAbstractListModel* cautions() { return &m_cautions; }

    Q_INVOKABLE void lookOver(int code);
    Q_INVOKABLE void stepLoad(bool up);
    /// "104 cm: 107 ± 4 kg", the pull at any height of the path; empty outside it.
    Q_INVOKABLE [[nodiscard]] QString readingAt(double metresUp) const;

Q_SIGNALS:
    void deskChanged();
    void changed();
    /// Apart from the rest: a step of the load leaves alone what hangs, and its drawing is the dearest.
    void elevationChanged();

private:
    void refresh();

    DeskService* m_desk = nullptr;
    SetupAnswer m_answer;
    PullPicture m_picture;
    BeamText m_beam;
    QVariantList m_marks, m_plates, m_strip, m_elevation;
    RowList<ThingRow> m_hanging;
    RowList<NoticeRow> m_notices;
    RowList<CautionRow> m_cautions;
};
