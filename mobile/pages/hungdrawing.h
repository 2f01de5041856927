// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/hangeditor.h"

#include <QPointer>
#include <QVariantList>

/** One thing as it hangs, alone on the bar, for the page that says how. Empty where nothing of it can be drawn: what is worn, or entered wrongly. */
class HungDrawing : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(HangEditor* form READ form WRITE setForm NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QVariantList items READ items NOTIFY changed FINAL)
    Q_PROPERTY(double barHeight READ barHeight NOTIFY changed FINAL)
    Q_PROPERTY(double reach READ reach NOTIFY changed FINAL)
    Q_PROPERTY(QString caption READ caption NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] HangEditor* form() const { return m_form; }
    void setForm(HangEditor* form);
    /// As the side elevation takes it.
    [[nodiscard]] QVariantList items() const { return m_items; }
    /// Half way up the lift, in metres; how high the drawing has to reach, an anchor above her included.
    [[nodiscard]] double barHeight() const { return m_barHeight; }
    [[nodiscard]] double reach() const { return m_reach; }
    /// "one loop, anchored on the floor; the bar half way, at 119 cm".
    [[nodiscard]] QString caption() const { return m_caption; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    QPointer<HangEditor> m_form;
    QVariantList m_items;
    double m_barHeight = 0, m_reach = 1;
    QString m_caption;
};
