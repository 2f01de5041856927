// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QString>

#include <memory>
#include <optional>

/** What a person does to the window: scrolls to a key, taps it, types a number. Trouble is said, not thrown. */
class Hand {
public:
    Hand(QQuickWindow& window, QQmlEngine& engine);

    /// "press NAME", "press NAME/PART", "press NAM*" the first that begins so, "choose NAME 2" (the third option of a row), "key 62.5" on the keypad.
    /// "type ENTRY a_few_words" into a field for secrets, "copy words ENTRY" and "copy code ENTRY" what the page shows, "row 1" the second
    /// person of a list, "place 0" the first page of a place.
    /// Names are object names of what shows on the current page. Empty when done, else what was in the way.
    [[nodiscard]] QString perform(const QString& deed);
    /// What the item of that name, or path as for press, says; nothing where none shows.
    [[nodiscard]] std::optional<QString> textOf(const QString& path) const;
    /// The kit list as a stack's first page.
    void showKit();
    /// Pages down by the keyboard; false when the page was at its end.
    [[nodiscard]] bool pageDown();
    /// Lets every layout and picture come to rest.
    void settle(int frames = 2);
    [[nodiscard]] QQuickItem* page() const;
    /// The type of the current page, as its file is called.
    [[nodiscard]] QString pageType() const;

private:
    [[nodiscard]] QQuickItem* find(const QString& path) const;
    [[nodiscard]] QString press(const QString& path);
    [[nodiscard]] QString choose(const QString& name, int option);
    [[nodiscard]] QString type(const QString& entry, QString text, const QString& secret);
    [[nodiscard]] QString pressRow(int row);
    [[nodiscard]] QString goTo(int place);
    [[nodiscard]] QString tap(QQuickItem& item);
    /// A tap, without waiting for what it does to the page.
    [[nodiscard]] QString touch(QQuickItem& item);
    void bring(QQuickItem& item);
    void sendKey(int key);

    QQuickWindow& m_window;
    std::unique_ptr<QObject> m_guard;
};
