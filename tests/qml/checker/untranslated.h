// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QStringList>
#include <QTranslator>

/// Stands behind the catalogues and notes what none of them knew: a sentence that would be shown in English.
class Untranslated : public QTranslator {
    Q_OBJECT

public:
    using QTranslator::QTranslator;

    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char *context, const char *source, const char *disambiguation, int n) const override;
    /// What was asked for since the last time, "context/source".
    [[nodiscard]] QStringList take();

private:
    mutable QStringList m_asked;
};
