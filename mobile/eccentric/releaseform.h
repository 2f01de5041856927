// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"
#include "mobile/pages/deskwork.h"

/** The numbers of a plan for a heavier way down: how the set is done, or what is measured of hook and athlete. */
class ReleaseForm : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskWork* work READ work WRITE setWork NOTIFY workChanged REQUIRED FINAL)
    Q_PROPERTY(Part part READ part WRITE setPart NOTIFY partChanged REQUIRED FINAL)

public:
    enum Part { Set, Hook, Depth, Places };
    Q_ENUM(Part)

    using FieldEditor::FieldEditor;

    [[nodiscard]] DeskWork* work() const { return m_work; }
    void setWork(DeskWork* work);
    [[nodiscard]] Part part() const { return m_part; }
    void setPart(Part part);

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

Q_SIGNALS:
    void workChanged();
    void partChanged();

private:
    [[nodiscard]] std::vector<FieldSpec> setSpecs(const steelyard::ReleasePlan& plan) const;
    [[nodiscard]] std::vector<FieldSpec> hookSpecs(const steelyard::ReleasePlan& plan) const;
    [[nodiscard]] std::vector<FieldSpec> depthSpecs(const steelyard::ReleasePlan& plan) const;
    [[nodiscard]] std::vector<FieldSpec> placeSpecs(const steelyard::ReleasePlan& plan) const;
    [[nodiscard]] bool isLyingPress() const;

    DeskWork* m_work = nullptr;
    Part m_part = Set;
};
