// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"

#ifndef Q_MOC_RUN
#include "core/season/limits.h"
#endif

/** One limit: where it is, what it would be as it was shipped, and where a step leads. */
struct LimitRow {
    QString key, label, value, hint, shipped, down, up;
    bool canDown = false, canUp = false;
    bool own = false; ///< the coach's own, not as it was shipped
    bool operator==(const LimitRow&) const = default;
    static std::vector<RowRole<LimitRow>> roles()
    {
        return {{"key", [](const LimitRow& r) { return r.key; }},         {"label", [](const LimitRow& r) { return r.label; }},
                {"value", [](const LimitRow& r) { return r.value; }},     {"hint", [](const LimitRow& r) { return r.hint; }},
                {"shipped", [](const LimitRow& r) { return r.shipped; }}, {"down", [](const LimitRow& r) { return r.down; }},
                {"up", [](const LimitRow& r) { return r.up; }},           {"canDown", [](const LimitRow& r) { return r.canDown; }},
                {"canUp", [](const LimitRow& r) { return r.canUp; }},     {"own", [](const LimitRow& r) { return r.own; }}};
    }
};

/** The coach's own limits; what is set waits as a draft until it is kept. */
class LimitsEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY bookChanged REQUIRED FINAL)
    Q_PROPERTY(QAbstractListModel* limits READ limits CONSTANT FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)
    Q_PROPERTY(QString keeps READ keeps NOTIFY changed FINAL)
    Q_PROPERTY(int ownCount READ ownCount NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QAbstractListModel* limits() { return &m_limits; }
    [[nodiscard]] bool isDrafted() const;
    /// What is changed: "tyre 60 %".
    [[nodiscard]] QString keeps() const;
    /// How many are kept that are not as they were shipped.
    [[nodiscard]] int ownCount() const;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;

    Q_INVOKABLE void step(const QString& key, bool up);
    /// As it was shipped.
    Q_INVOKABLE void asShipped(const QString& key);
    Q_INVOKABLE void keep();
    Q_INVOKABLE void throwDraft();

Q_SIGNALS:
    void bookChanged();
    void kept();

protected:
    void refresh() override;

private:
    [[nodiscard]] steelyard::CoachLimits form() const;
    void setForm(const steelyard::CoachLimits& limits);

    BookService* m_book = nullptr;
    RowList<LimitRow> m_limits;
};
