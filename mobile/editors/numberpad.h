// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"

/** The keypad page's state: one number of one form being keyed. */
class NumberPad : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(FieldEditor* editor READ editor WRITE setEditor NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(QString key READ key WRITE setKey NOTIFY targetChanged REQUIRED FINAL)
    Q_PROPERTY(QString subject READ subject NOTIFY targetChanged FINAL)
    Q_PROPERTY(QString unit READ unit NOTIFY targetChanged FINAL)
    Q_PROPERTY(QString text READ text NOTIFY keyed FINAL)
    Q_PROPERTY(QString standing READ standing NOTIFY targetChanged FINAL)
    Q_PROPERTY(QString hint READ hint NOTIFY keyed FINAL)
    Q_PROPERTY(QString refusal READ refusal NOTIFY keyed FINAL)
    Q_PROPERTY(QString fact READ fact NOTIFY keyed FINAL)
    Q_PROPERTY(QStringList offers READ offers NOTIFY keyed FINAL)
    Q_PROPERTY(State state READ state NOTIFY keyed FINAL)
    Q_PROPERTY(bool canClear READ canClear NOTIFY targetChanged FINAL)

public:
    /// What a tap on the key that keeps would do: nothing yet; keep; keep although the number looks mistaken.
    enum State { Wanting, Ready, Asking };
    Q_ENUM(State)

    using QObject::QObject;

    [[nodiscard]] FieldEditor* editor() const { return m_editor; }
    void setEditor(FieldEditor* editor);
    [[nodiscard]] QString key() const { return m_key; }
    void setKey(const QString& key);
    [[nodiscard]] QString subject() const;
    [[nodiscard]] QString unit() const { return m_spec.unit; }
    [[nodiscard]] QString text() const;
    /// The number that stands there already; empty where none does.
    [[nodiscard]] QString standing() const;
    [[nodiscard]] QString hint() const;
    /// Why a key was refused, or the number was not kept; or the question whether it is meant.
    [[nodiscard]] QString refusal() const { return m_refusal; }
    /// The number that would be kept; where that cannot be, what is wanting, in a few words.
    [[nodiscard]] QString fact() const;
    [[nodiscard]] QStringList offers() const;
    [[nodiscard]] State state() const;
    /// Key of the needed number that comes after this one and is still missing.
    [[nodiscard]] Q_INVOKABLE QString next() const { return m_editor ? m_editor->nextMissing(m_key) : QString(); }
    [[nodiscard]] bool canClear() const;

    /// A digit, the locale's decimal key, a point, a comma, or "rub".
    Q_INVOKABLE void press(const QString& key);
    /// Presses what is pasted, key by key: a point or a comma once, and nothing groups digits. What is refused is said.
    Q_INVOKABLE void paste(const QString& text);
    /// What the clipboard holds is pasted.
    Q_INVOKABLE void pasteClipboard();
    /// Keeps the number; false, with the reason and any offers, when it cannot be, and with a question the first time that it looks
    /// mistaken beside last time's.
    Q_INVOKABLE bool keep();
    /// Keeps the number offered in this place.
    Q_INVOKABLE bool take(int offer);
    /// Leaves the number out.
    Q_INVOKABLE bool clear();

Q_SIGNALS:
    void targetChanged();
    void keyed();

private:
    void load();
    /// The editor has changed: its field may stand otherwise now.
    void look();
    bool keepValue(const KeyedFigure& number);
    [[nodiscard]] QString wanting() const;
    [[nodiscard]] std::optional<KeyedFigure> figure() const;
    /// "1000 kg? Last time 100 kg."; empty where there is no doubt.
    [[nodiscard]] QString question() const;

    FieldEditor* m_editor = nullptr;
    QString m_key, m_refusal;
    FieldSpec m_spec;
    steelyard::NumberEntry m_entry{{}};
    std::vector<double> m_offers;
    bool m_asking = false;
};
