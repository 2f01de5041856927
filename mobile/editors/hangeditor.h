// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"

/** How one thing hangs on the bar. Every change takes effect on the set-up at once. */
class HangEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int row READ row WRITE setRow NOTIFY rowChanged FINAL)
    Q_PROPERTY(QString itemId READ itemId NOTIFY changed FINAL)
    Q_PROPERTY(QString kind READ kind NOTIFY changed FINAL)
    Q_PROPERTY(QString what READ what NOTIFY changed FINAL)
    Q_PROPERTY(int sides READ sides WRITE setSides NOTIFY changed FINAL)
    Q_PROPERTY(int way READ way WRITE setWay NOTIFY changed FINAL)
    Q_PROPERTY(int anchor READ anchor WRITE setAnchor NOTIFY changed FINAL)
    Q_PROPERTY(int lean READ lean WRITE setLean NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override { return key == QLatin1String("heldBy") || key == QLatin1String("chest"); }

    [[nodiscard]] int row() const { return m_row; }
    void setRow(int row);
    [[nodiscard]] QString itemId() const;
    /// Of the thing, in one word.
    [[nodiscard]] QString kind() const;
    [[nodiscard]] QString what() const;
    /// 0 both sides, 1 left only, 2 right only.
    [[nodiscard]] int sides() const;
    void setSides(int sides);
    /// Chain: 0 straight, 1 doubled, 2 bunched. Band: 0 single, 1 doubled. An aid has one way.
    [[nodiscard]] int way() const;
    void setWay(int way);
    /// 0 below the bar, 1 above.
    [[nodiscard]] int anchor() const;
    void setAnchor(int anchor);
    /// Anchor 0 under the bar, 1 in front of it, 2 behind.
    [[nodiscard]] int lean() const { return m_lean; }
    void setLean(int lean);
    [[nodiscard]] QString trouble() const;
    /// Hangs a thing of the kit the plain way, both sides alike when two are free; its row. Where none is free the row that it hangs
    /// in already; -1 where it may not hang.
    Q_INVOKABLE int hang(const QString& itemId);
    Q_INVOKABLE void takeOff();

Q_SIGNALS:
    void rowChanged();

protected:
    void refresh() override;

private:
    [[nodiscard]] const steelyard::HungRecord* record() const;
    int hangsAlready(const steelyard::RecordId& item);
    template <typename Change>
    void change(const Change& how);

    int m_row = -1;
    int m_lean = 0;
};
