// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "tests/qml/checker/pageview.h"
#include <QStringList>

/// Contrast of two opaque colours, 1 to 21. Formula: WCAG 2.1, "relative luminance" and "contrast ratio".
[[nodiscard]] qreal contrastRatio(const QColor &a, const QColor &b);

/// What breaks the rules of touch and sight; each finding begins with its rule's word and a colon.
/// Sources: WCAG 2.1 (1.4.3 text that is not available 4.5 here, 1.4.6 text 7, 2.5.5 targets), ISO 9241 for 16 minutes of arc
/// (16 dp at 400 mm, 24 dp at 600 mm); 56, 64 and 76 dp, 12:1 and 24 dp between keep and throw-away are this project's own figures.
[[nodiscard]] QStringList breaches(const PageView &view);
