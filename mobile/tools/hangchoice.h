// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/hangeditor.h"

#include <QPointer>

/** What the kit here offers for a thing that hangs: kept straps for a chain, the rack's places for a band. */
class HangChoice : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(HangEditor* form READ form WRITE setForm NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString label READ label NOTIFY changed FINAL)
    Q_PROPERTY(QStringList names READ names NOTIFY changed FINAL)
    Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] HangEditor* form() const { return m_form; }
    void setForm(HangEditor* form);
    [[nodiscard]] QString label() const;
    [[nodiscard]] QStringList names() const;
    /// -1 where it hangs by what was typed.
    [[nodiscard]] int chosen() const;
    void setChosen(int place);

Q_SIGNALS:
    void changed();

private:
    struct Offer {
        QString name;
        steelyard::Entered<steelyard::Length> length; ///< of the strap, or the anchor's height
        steelyard::Entered<steelyard::Mass> mass;
    };
    [[nodiscard]] const steelyard::HungRecord* record() const;
    [[nodiscard]] std::vector<Offer> offers() const;

    QPointer<HangEditor> m_form;
};
