// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/itemeditor.h"

#include <QPointer>

/** A thing as it is measured now, held against another of its kind: whether the two make a pair. */
class KitComparison : public QObject {
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
    /// Of the other things of the kit that are measured the same way.
    [[nodiscard]] QStringList names() const;
    [[nodiscard]] int chosen() const;
    void setChosen(int place);
    /// How they differ; empty until one is chosen.
    [[nodiscard]] QString text() const;

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] std::vector<const steelyard::KitItem*> others() const;

    QPointer<ItemEditor> m_form;
    steelyard::RecordId m_other;
};
