// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/measuring/measureguide.h"
#include "mobile/tools/tooleditor.h"

/** Measuring a tool in steps: the choice, if there is one, then each needed number, then the result, from where its list may grow. */
class ToolGuide : public MeasureGuide {
    Q_OBJECT
    QML_ELEMENT

public:
    using MeasureGuide::MeasureGuide;

    [[nodiscard]] Page page() const override { return m_page; }
    [[nodiscard]] QString key() const override { return m_page == Page::Number ? m_key : QString(); }
    [[nodiscard]] QString heading() const override;
    [[nodiscard]] QString progress() const override;
    [[nodiscard]] QString how() const override;
    [[nodiscard]] QString gain() const override;
    void resume() override;
    void next() override;
    bool back() override;
    /// From the beginning, as the thing that it is.
    Q_INVOKABLE void choose(int choice);
    /// One more entry of its list.
    Q_INVOKABLE void more();

private:
    [[nodiscard]] ToolEditor* tool() const { return qobject_cast<ToolEditor*>(form()); }
    /// The keys that are stepped through: the needed ones, and those of the list that are there.
    [[nodiscard]] QStringList keys() const;
    void go(Page page, const QString& key = {});

    Page m_page = Page::Begin;
    QString m_key;
};
