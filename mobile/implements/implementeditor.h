// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/tools/tooleditor.h"

/** Measuring what is lifted, carried or dragged by itself: a tyre, log, stone, keg, sled, handles, or a bell. */
class ImplementEditor : public ToolEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString what READ what WRITE setWhat NOTIFY itemIdChanged REQUIRED FINAL)

public:
    using ToolEditor::ToolEditor;

    /// The kind's one word; another word than that of an implement is passed over.
    [[nodiscard]] QString what() const;
    void setWhat(const QString& what);
    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;
    [[nodiscard]] ToolWords words() const override;
    [[nodiscard]] int choice() const override;
    void setChoice(int choice) override;
    [[nodiscard]] QString question(const QString& key) const override;
    [[nodiscard]] QString how(const QString& key) const override;
    [[nodiscard]] QString answer() const override;
    [[nodiscard]] QString verdict() const override;
    [[nodiscard]] bool isDoubtful() const override;
    [[nodiscard]] QString trouble() const override;
    QString addEntry() override;
    void choose(const QString& key, int index) override;
    [[nodiscard]] QString note() const override;
    void setNote(const QString& note) override;
    [[nodiscard]] std::optional<WeighedOn> weighedOn() const override;
    void weighOn(const WeighedOn& scale) override;

protected:
    [[nodiscard]] steelyard::ItemKind kind() const override { return m_kind; }
    [[nodiscard]] QString ownName(const steelyard::KitItem& item) const override;
    [[nodiscard]] std::optional<steelyard::Error> refusalOf(const steelyard::Measured& measured) const override;
    [[nodiscard]] std::vector<AskedRow> askedRows() const override;

private:
    [[nodiscard]] steelyard::Measured now() const { return item().measurement; }

    steelyard::ItemKind m_kind = steelyard::ItemKind::Tyre;
};
