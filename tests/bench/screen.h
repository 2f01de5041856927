// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/mobile/standinhouse.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>

/** The app's own window, put together as the app does it, with a set-up of the sample season on the desk. */
class Screen {
public:
    /// An empty name leaves the desk empty.
    explicit Screen(const QString& seasonSetup);

    /// False when the window or the set-up is not there.
    [[nodiscard]] bool ready() const { return m_window && m_filled; }
    [[nodiscard]] QQuickWindow* window() const { return m_window; }
    [[nodiscard]] DeskService& service() { return m_house.desk; }
    /// With the sample season kept and its vault open; false where something is wrong with it.
    [[nodiscard]] bool keepClub();
    [[nodiscard]] QQmlEngine& engine() { return m_engine; }
    /// Up eight loads, down eight, and again: the set-up's own load is in the middle of neither end.
    void step(int turn);
    /// Waits until the window has drawn what waits to be drawn; false when it never does.
    bool drawn();

private:
    StandInHouse m_house;
    QQmlApplicationEngine m_engine;
    QQuickWindow* m_window = nullptr;
    bool m_filled = true;
};
