// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/editors/chaineditor.h"
#include "mobile/measuring/measureguide.h"

/** Measuring a chain in steps: by the scale or by one link. */
class ChainGuide : public MeasureGuide {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool longLink READ longLink NOTIFY changed FINAL)

public:
    using MeasureGuide::MeasureGuide;

    [[nodiscard]] Page page() const override;
    [[nodiscard]] QString key() const override;
    [[nodiscard]] QString heading() const override;
    [[nodiscard]] QString progress() const override;
    [[nodiscard]] QString how() const override;
    [[nodiscard]] QString gain() const override;
    void resume() override;
    void next() override;
    bool back() override;
    /// The link's pitch is so long that its width is read in two places.
    [[nodiscard]] bool longLink() const;
    /// By weighing it or by its links, and on.
    Q_INVOKABLE void choose(bool gauged);

private:
    [[nodiscard]] ChainEditor* chain() const { return qobject_cast<ChainEditor*>(form()); }
    [[nodiscard]] QStringList keys() const;

    int m_step = 0; ///< 0 the choice, then the numbers, then the result
};
