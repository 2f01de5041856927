// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/measuring/keptkit.h"
#endif
#include "mobile/editors/itemeditor.h"

#include <QPointer>

/** The scale that something is weighed on: another one, whose step is keyed, or a checked one of the kit with its step and accuracy. */
class ScaleChoice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ItemEditor* form READ form WRITE setForm NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY changed FINAL)
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] ItemEditor* form() const { return m_form; }
    void setForm(ItemEditor* form);
    /// "another scale", then each checked one; none where there is no checked one, or nothing is weighed.
    [[nodiscard]] QStringList names() const;
    [[nodiscard]] int chosen() const;
    void setChosen(int place);
    /// What the check of the chosen scale says about reading it; empty where another one is.
    [[nodiscard]] QString text() const;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::vector<steelyard::KeptScale> scales() const;

    QPointer<ItemEditor> m_form;
};
