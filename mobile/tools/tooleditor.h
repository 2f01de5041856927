// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/itemeditor.h"

/** What a form of a tool says of itself: its words, a choice that goes before its numbers, the list that may grow. */
struct ToolWords {
    Q_GADGET
    QML_VALUE_TYPE(toolWords)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString intro MEMBER intro)
    Q_PROPERTY(QString choiceLabel MEMBER choiceLabel)
    Q_PROPERTY(QStringList choices MEMBER choices)
    Q_PROPERTY(QStringList choiceFacts MEMBER choiceFacts)
    Q_PROPERTY(QString choiceAt MEMBER choiceAt)
    Q_PROPERTY(QString more MEMBER more)
    Q_PROPERTY(QString drawing MEMBER drawing)
    Q_PROPERTY(QString note MEMBER note)

public:
    bool operator==(const ToolWords&) const = default;

    QString title, intro;
    QString choiceLabel;
    QStringList choices, choiceFacts; ///< none where there is nothing to choose
    QString choiceAt;    ///< the number that it is chosen with; empty where it comes first
    QString more;        ///< what one more entry of its list is called; empty where there is none, or no room for it
    QString drawing;     ///< "scale", "bar", "plates", "lead" or "rack"; of an implement "tyre" and the like
    QString note;        ///< what is asked in words; empty where nothing is
};

/** Something that is asked besides numbers, with its answers in words; -1 where none is given yet. */
struct AskedRow {
    QString key, label;
    QStringList options;
    int current = -1;
    bool operator==(const AskedRow&) const = default;
    static std::vector<RowRole<AskedRow>> roles()
    {
        return {{"key", [](const AskedRow& r) { return r.key; }},
                {"label", [](const AskedRow& r) { return r.label; }},
                {"options", [](const AskedRow& r) { return r.options; }},
                {"current", [](const AskedRow& r) { return r.current; }}};
    }
};

/** Measuring what helps to measure and to hang: a scale, iron, a strap, a rack. All of them are numbers in a row. */
class ToolEditor : public ItemEditor {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a form of its own kind")
    Q_PROPERTY(ToolWords words READ words NOTIFY changed FINAL)
    Q_PROPERTY(int choice READ choice WRITE setChoice NOTIFY changed FINAL)
    Q_PROPERTY(bool doubtful READ isDoubtful NOTIFY changed FINAL)
    Q_PROPERTY(QString verdict READ verdict NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* asked READ asked CONSTANT FINAL)
    Q_PROPERTY(QString note READ note WRITE setNote NOTIFY changed FINAL)

public:
    using ItemEditor::ItemEditor;

    [[nodiscard]] virtual ToolWords words() const = 0;
    [[nodiscard]] virtual int choice() const { return -1; }
    virtual void setChoice(int choice) { Q_UNUSED(choice) }
    /// The question of a number, and how to read it.
    [[nodiscard]] virtual QString question(const QString& key) const = 0;
    [[nodiscard]] virtual QString how(const QString& key) const = 0;
    /// What the numbers mean, behind the answer.
    [[nodiscard]] virtual QString verdict() const { return {}; }
    /// The answer is a caution: it is not good enough to be relied on.
    [[nodiscard]] virtual bool isDoubtful() const { return false; }
    /// What would make it surer.
    [[nodiscard]] virtual QString gain() const { return {}; }
    /// One more entry of its list, with the key of its first number; empty where there is none.
    Q_INVOKABLE virtual QString addEntry() { return {}; }
    [[nodiscard]] QAbstractListModel* asked() { return &m_asked; }
    /// Answers what is asked under a key; another number or key is passed over.
    Q_INVOKABLE virtual void choose(const QString& key, int index) { Q_UNUSED(key) Q_UNUSED(index) }
    [[nodiscard]] virtual QString note() const { return {}; }
    virtual void setNote(const QString& note) { Q_UNUSED(note) }
    [[nodiscard]] bool isMeasured() const override { return ready() && !refusalOf(item().measurement); }
    [[nodiscard]] QString trouble() const override;

protected:
    /// Why the measurement comes to nothing yet.
    [[nodiscard]] virtual std::optional<steelyard::Error> refusalOf(const steelyard::Measured& measured) const = 0;
    void setMeasured(steelyard::Measured measured);
    /// The number behind a key's colon, from 0; nothing where there is none.
    [[nodiscard]] static std::optional<std::size_t> placeIn(const QString& key, const char* stem);
    [[nodiscard]] static QString keyAt(const char* stem, std::size_t place);
    [[nodiscard]] virtual std::vector<AskedRow> askedRows() const { return {}; }
    void refresh() override;

private:
    RowList<AskedRow> m_asked;
};
