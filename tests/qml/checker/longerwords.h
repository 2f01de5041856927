// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTranslator>

/// A made-up language with longer words, twice the length up to 10 letters and 1.4 times above 20, so that a page shows what will not fit.
class LongerWords : public QTranslator {
    Q_OBJECT

public:
    using QTranslator::QTranslator;

    [[nodiscard]] bool isEmpty() const override;
    [[nodiscard]] QString translate(const char *context, const char *source, const char *note, int count) const override;
};
