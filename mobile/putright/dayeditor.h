// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/fieldeditor.h"

// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include <chrono>
#include <functional>
#endif

/** A day as it is typed: three numbers, each on its own. */
struct TypedDay {
    int day = 1, month = 1, year = 1970;
    bool operator==(const TypedDay&) const = default;

    [[nodiscard]] static TypedDay of(std::chrono::sys_days date);
    /// Nothing where there is no such day.
    [[nodiscard]] std::optional<std::chrono::sys_days> date() const;
    /// As bytes of an own version, and back.
    [[nodiscard]] QByteArray bytes() const;
    [[nodiscard]] static std::optional<TypedDay> in(const QByteArray& bytes);
};

/** The day of a form, as numbers to tap; the form itself keeps what is typed. */
class DayEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a part of a form")

public:
    using Read = std::function<std::optional<TypedDay>()>;
    using Write = std::function<void(const TypedDay&)>;

    DayEditor(Read read, Write write, QObject* parent);

    [[nodiscard]] std::vector<FieldSpec> specs() const override;
    KeepOutcome keepNumber(const QString& key, const KeyedFigure& keyed) override;
    /// The form's day is another one now.
    void readAgain() { refresh(); }
    /// What is wrong with a day that was typed; empty where it can be kept.
    [[nodiscard]] static QString trouble(const TypedDay& day, std::chrono::sys_days today);

private:
    Read m_read;
    Write m_write;
};
