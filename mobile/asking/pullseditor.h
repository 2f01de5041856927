// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"
#include "mobile/pages/deskwork.h"
#include "mobile/putright/rightrows.h"

/** Her isometric pulls in the lift at hand: the ones that count, and the next one, which waits as a draft until it is kept. */
class PullsEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskWork* work READ work WRITE setWork NOTIFY workChanged REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* pulls READ pulls CONSTANT FINAL)
    Q_PROPERTY(QString counts READ counts NOTIFY changed FINAL)
    Q_PROPERTY(QString fact READ fact NOTIFY changed FINAL)
    Q_PROPERTY(QString who READ who NOTIFY changed FINAL)
    Q_PROPERTY(bool nobodys READ isNobodys NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] DeskWork* work() const { return m_work; }
    void setWork(DeskWork* work);
    [[nodiscard]] QAbstractListModel* pulls() { return &m_pulls; }
    /// "4 pulls at 3 heights"
    [[nodiscard]] QString counts() const;
    /// What would be kept: "92 cm, 140 kg"; empty where it cannot be yet.
    [[nodiscard]] QString fact() const;
    /// "Ana M., back squat"; empty where the desk is laid out for nobody.
    [[nodiscard]] QString who() const;
    /// They are kept for nobody, and go with the marks.
    [[nodiscard]] bool isNobodys() const;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    /// Keeps what is keyed, of today; the scale's step stays for the next one.
    Q_INVOKABLE void keep();
    /// By its id, or its place where it is nobody's; it can be undone where it was kept.
    Q_INVOKABLE void takeOut(const QString& id);

Q_SIGNALS:
    void workChanged();

protected:
    void refresh() override;

private:
    struct Form {
        std::optional<steelyard::Entered<steelyard::Height>> height;
        std::optional<steelyard::Entered<steelyard::Mass>> pull, step;
        bool operator==(const Form&) const = default;
    };
    [[nodiscard]] BookService* book() const { return m_work ? m_work->book() : nullptr; }
    [[nodiscard]] steelyard::RecordId athlete() const;
    [[nodiscard]] QString draftKey() const;
    [[nodiscard]] Form form() const;
    void setForm(const Form& form);

    DeskWork* m_work = nullptr;
    Form m_nobodys;
    RowList<DatedRow> m_pulls;
};
