// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/work/eccentric/release.h"
#endif
#include "mobile/asking/answerrow.h"
#include "mobile/eccentric/releaseshown.h"
#include "mobile/editors/fieldeditor.h"
#include "mobile/pages/deskwork.h"

/** Heavier on the way down: what is asked of the set-up on the desk, what to hang for it, and whether she may. */
class ReleasePlanner : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskWork* work READ work WRITE setWork NOTIFY workChanged REQUIRED FINAL)
    Q_PROPERTY(bool planned READ isPlanned NOTIFY changed FINAL)
    Q_PROPERTY(int way READ way WRITE setWay NOTIFY changed FINAL)
    Q_PROPERTY(bool inPercent READ inPercent WRITE setInPercent NOTIFY changed FINAL)
    Q_PROPERTY(bool downOfWayUp READ isDownOfWayUp WRITE setDownOfWayUp NOTIFY changed FINAL)
    Q_PROPERTY(int putBack READ putBack WRITE setPutBack NOTIFY changed FINAL)
    Q_PROPERTY(int putBackBy READ putBackBy WRITE setPutBackBy NOTIFY changed FINAL)
    Q_PROPERTY(ReleaseShown shown READ shown NOTIFY changed FINAL)
    Q_PROPERTY(ReleaseDrawn drawn READ drawn NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* asked READ asked CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* facts READ facts CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* gate READ gate CONSTANT FINAL)

public:
    using FieldEditor::FieldEditor;

    [[nodiscard]] DeskWork* work() const { return m_work; }
    void setWork(DeskWork* work);
    /// Whether the set-up has a plan; a first choice begins one.
    [[nodiscard]] bool isPlanned() const { return ready() && desk().setup().release.has_value(); }
    [[nodiscard]] int way() const { return isPlanned() ? static_cast<int>(plan().way) : -1; }
    void setWay(int way);
    [[nodiscard]] bool inPercent() const { return plan().asked.inPercent; }
    void setInPercent(bool inPercent);
    [[nodiscard]] bool isDownOfWayUp() const { return plan().asked.downOfWayUp; }
    /// What is asked stays the same load, said of another base.
    void setDownOfWayUp(bool downOfWayUp);
    [[nodiscard]] int putBack() const { return static_cast<int>(plan().set.putBack); }
    void setPutBack(int putBack);
    [[nodiscard]] int putBackBy() const { return static_cast<int>(plan().set.putBackBy); }
    void setPutBackBy(int by);
    [[nodiscard]] const ReleaseShown& shown() const { return m_shown; }
    [[nodiscard]] const ReleaseDrawn& drawn() const { return m_drawn; }
    [[nodiscard]] QAbstractListModel* asked() { return &m_asked; }
    [[nodiscard]] QAbstractListModel* facts() { return &m_facts; }
    [[nodiscard]] QAbstractListModel* gate() { return &m_gate; }

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;

    /// What is asked, 2.5 % or the next load more or less.
    Q_INVOKABLE void step(const QString& key, bool up);
    /// The bar becomes the set-up's; the plan is on it already.
    Q_INVOKABLE void hang();
    /// The way down is that of the set-up again.
    Q_INVOKABLE void throwAway();

Q_SIGNALS:
    void workChanged();

protected:
    void refresh() override;

private:
    [[nodiscard]] steelyard::ReleasePlan plan() const;
    template <typename Change>
    void change(const Change& how);
    [[nodiscard]] QString stateNow() const;

    DeskWork* m_work = nullptr;
    ReleaseShown m_shown;
    ReleaseDrawn m_drawn;
    std::optional<steelyard::Mass> m_barTotal;
    RowList<TargetRow> m_asked;
    RowList<NoticeRow> m_facts, m_gate;
};
