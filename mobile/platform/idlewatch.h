// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>

#include <chrono>

/** Tells when nobody has touched a key or the glass for a while. */
class IdleWatch : public QObject {
    Q_OBJECT

public:
    /// Ten minutes is this project's own figure: longer than a rest between sets, shorter than a tablet forgotten on a rack.
    static constexpr std::chrono::milliseconds usual = std::chrono::minutes(10);

    /// Watches everything that the application gets; stopped at first.
    explicit IdleWatch(QObject& application, std::chrono::milliseconds patience = usual, QObject* parent = nullptr);
    void start() { m_timer.start(); }
    void stop() { m_timer.stop(); }
    [[nodiscard]] bool isRunning() const { return m_timer.isActive(); }
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    void idle();

private:
    QTimer m_timer;
};
