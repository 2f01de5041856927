// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QSet>
#include <QStringList>

#include <memory>

/// Takes pictures of every specimen, as it would stand on a long phone, each in a theme and a text size.
class Shots {
public:
    /// One look: which theme, which of the text sizes.
    struct Look {
        int theme = 0;
        double textFactor = 1;
        [[nodiscard]] QString name() const;
    };

    Shots();
    [[nodiscard]] bool ready() const { return !m_names.isEmpty(); }
    [[nodiscard]] const QStringList& names() const { return m_names; }
    [[nodiscard]] static QList<Look> looks();

    /// A specimen as painted.
    [[nodiscard]] QImage picture(int index, const Look& look);
    /// All of a look side by side, each an eighth of its size, so that one pixel is the mean of 64.
    [[nodiscard]] QImage small(const Look& look);
    [[nodiscard]] static QImage smaller(const QImage& picture);
    /// Names of the QML types that everything shown since is made of, their bases among them.
    [[nodiscard]] const QSet<QString>& seenTypes() const { return m_types; }

    static constexpr int wide = 360, high = 1600, share = 8;

private:
    void note(const QObject* object);

    QQmlEngine m_engine;
    std::unique_ptr<QQuickWindow> m_window;
    std::unique_ptr<QObject> m_specimens;
    QStringList m_names;
    QSet<QString> m_types;
};
