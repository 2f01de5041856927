// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/deskservice.h"
#include "mobile/strength/strengthrows.h"

/** The warm-up ramp to what hangs: the same chains and bands, rising iron. */
class RampView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* steps READ steps CONSTANT FINAL)
    Q_PROPERTY(QStringList places READ places NOTIFY changed FINAL)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY changed FINAL)
    Q_PROPERTY(QString head READ head NOTIFY changed FINAL)
    Q_PROPERTY(QString least READ least NOTIFY changed FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY changed FINAL)
    Q_PROPERTY(bool hung READ isHung NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    /// The working set is the last of them.
    [[nodiscard]] QAbstractListModel* steps() { return &m_steps; }
    /// Where the pull may be read: no sticking zone where she has none.
    [[nodiscard]] QStringList places() const;
    [[nodiscard]] int place() const;
    void setPlace(int index);
    /// "Up to 112 ± 5 kg at the top".
    [[nodiscard]] QString head() const { return m_head; }
    /// The least that can be hung, and what it pulls.
    [[nodiscard]] QString least() const { return m_least; }
    /// Why there is no ramp; empty where there is one.
    [[nodiscard]] QString refusal() const { return m_refusal; }
    /// Whether anything hangs besides iron.
    [[nodiscard]] bool isHung() const { return m_desk && !m_desk->desk().setup().hung.empty(); }

    /// A share more or less.
    Q_INVOKABLE void step(int index, bool up);

Q_SIGNALS:
    void changed();

private:
    void refresh();

    DeskService* m_desk = nullptr;
    RowList<RampRow> m_steps;
    QString m_head, m_least, m_refusal;
};
