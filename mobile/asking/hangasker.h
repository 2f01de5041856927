// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/asking/answerrow.h"
#include "mobile/asking/levelshown.h"
#include "mobile/editors/fieldeditor.h"

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
    Q_PROPERTY(QStringList best READ best NOTIFY asked FINAL)
    Q_PROPERTY(bool chains READ chains WRITE setChains NOTIFY asked FINAL)
    Q_PROPERTY(bool bands READ bands WRITE setBands NOTIFY asked FINAL)
    Q_PROPERTY(bool inPercent READ inPercent WRITE setInPercent NOTIFY asked FINAL)
    Q_PROPERTY(QStringList maximum READ maximum NOTIFY asked FINAL)
    Q_PROPERTY(bool level READ isLevel WRITE setLevel NOTIFY asked FINAL)
    Q_PROPERTY(LevelShown picture READ picture NOTIFY asked FINAL)

public:
    /// Nothing is wanted yet; looking; the best is proved; stopped before it was; it cannot be asked.
    enum State { Idle, Looking, Proved, Stopped, Refused };
    Q_ENUM(State)

    using FieldEditor::FieldEditor;
    ~HangAsker() override;

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    bool clearNumber(const QString& key) override;
    [[nodiscard]] bool canClear(const QString& key) const override;

    [[nodiscard]] QAbstractListModel* targets() { return &m_targetRows; }
    [[nodiscard]] QAbstractListModel* answers() { return &m_answerRows; }
    [[nodiscard]] State state() const { return m_state; }
    [[nodiscard]] QString head() const { return m_head; }
    [[nodiscard]] QString body() const { return m_body; }
    /// Of the best answer so far what it pulls, how far off that is, and its iron; empty where there is none.
    [[nodiscard]] QStringList best() const { return m_best; }
    [[nodiscard]] bool chains() const { return m_chains; }
    void setChains(bool chains);
    [[nodiscard]] bool bands() const { return m_bands; }
    void setBands(bool bands);
    /// In per cent of a maximum that is typed for now; what was said in kg waits meanwhile, and the other way round.
    [[nodiscard]] bool inPercent() const;
    void setInPercent(bool inPercent);
    /// As it was typed, with its unit; empty where nobody has.
    [[nodiscard]] QString oneRepMax() const;
    /// What per cent are of, and where that comes from: as it was typed; else filled in from her tests, with its day and "tests" behind. Empty
    /// where there is none.
    [[nodiscard]] QStringList maximum() const;
    /// Level with her strength.
    [[nodiscard]] bool isLevel() const;
    void setLevel(bool level);
    [[nodiscard]] const LevelShown& picture() const { return m_picture; }

    /// A target 2.5 kg, 5 lb or 2.5 % more or less.
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
    struct Found;

    [[nodiscard]] bool hasPlace(steelyard::TargetPlace place) const;
    [[nodiscard]] TargetRow rowOf(steelyard::TargetPlace place) const;
    void ask();
    void show(const std::shared_ptr<Job>& job, const Found& found);
    void say(State state, const QString& head, const QString& body = {});
    /// The same where there is no answer to show.
    void sayWithout(State state, const QString& head = {}, const QString& body = {});

    std::shared_ptr<Job> m_job;
    std::vector<steelyard::SetupRecord> m_meant;
    State m_state = Idle;
    bool m_chains = true, m_bands = true;
    QString m_head, m_body;
    QStringList m_best;
    LevelShown m_picture;
    RowList<TargetRow> m_targetRows;
    RowList<AnswerRow> m_answerRows;
};
