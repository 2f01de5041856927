// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/asking/answerrow.h"
#include "mobile/editors/fieldeditor.h"

#ifndef Q_MOC_RUN
#include "core/work/asking/kitquestion.h"
#endif

#include <memory>

/** What to hang: the pulls that are wanted, what may hang, and the best answers, which come as they are found. */
class HangAsker : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QAbstractListModel* targets READ targets CONSTANT FINAL)
    Q_PROPERTY(QAbstractListModel* answers READ answers CONSTANT FINAL)
    Q_PROPERTY(State state READ state NOTIFY asked FINAL)
    Q_PROPERTY(QString head READ head NOTIFY asked FINAL)
    Q_PROPERTY(QString body READ body NOTIFY asked FINAL)
    Q_PROPERTY(QString best READ best NOTIFY asked FINAL)
    Q_PROPERTY(bool chains READ chains WRITE setChains NOTIFY asked FINAL)
    Q_PROPERTY(bool bands READ bands WRITE setBands NOTIFY asked FINAL)

public:
    /// Nothing is wanted yet; looking; the best is proved; stopped before it was; it cannot be asked.
    enum State { Idle, Looking, Proved, Stopped, Refused };
    Q_ENUM(State)

    using FieldEditor::FieldEditor;
    ~HangAsker() override;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override { return wanted(key).has_value(); }

    [[nodiscard]] QAbstractListModel* targets() { return &m_targetRows; }
    [[nodiscard]] QAbstractListModel* answers() { return &m_answerRows; }
    [[nodiscard]] State state() const { return m_state; }
    [[nodiscard]] QString head() const { return m_head; }
    [[nodiscard]] QString body() const { return m_body; }
    /// The load of the best answer so far; empty where there is none.
    [[nodiscard]] QString best() const { return m_best; }
    [[nodiscard]] bool chains() const { return m_allowed.chains; }
    void setChains(bool chains);
    [[nodiscard]] bool bands() const { return m_allowed.bandsBelow; }
    void setBands(bool bands);
    /// A page that shows the answers has come, or gone: it looks only while one is there. What is wanted stays.
    Q_INVOKABLE void lookOn();
    Q_INVOKABLE void lookAway();
    /// A target 2.5 kg or 5 lb more or less.
    Q_INVOKABLE void step(const QString& key, bool up);
    /// Looks no further; what was found stays.
    Q_INVOKABLE void stop();
    /// An answer becomes the set-up.
    Q_INVOKABLE void take(int index);

Q_SIGNALS:
    void asked();

protected:
    void refresh() override;

private:
    struct Job;

    [[nodiscard]] std::optional<steelyard::Entered<steelyard::Mass>> wanted(const QString& key) const;
    [[nodiscard]] bool hasPlace(steelyard::TargetPlace place) const;
    void ask();
    void show(const std::shared_ptr<Job>& job, const steelyard::HangAnswers& found, bool atAnEnd);
    void say(State state, const QString& head, const QString& body = {});
    /// The same where there is no answer to show.
    void sayWithout(State state, const QString& head = {}, const QString& body = {});
    [[nodiscard]] AnswerRow rowOf(const Job& job, const steelyard::HangAnswer& answer, const steelyard::SetupRecord& meant) const;

    steelyard::AllowedKinds m_allowed;
    std::shared_ptr<Job> m_job;
    std::vector<steelyard::SetupRecord> m_meant;
    State m_state = Idle;
    int m_lookers = 0;
    QString m_head, m_body, m_best;
    RowList<TargetRow> m_targetRows;
    RowList<AnswerRow> m_answerRows;
};
