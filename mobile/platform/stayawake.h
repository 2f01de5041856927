// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDBusConnection>
#include <QObject>

#include <optional>

/** Keeps the display from going dark by itself, by the idle inhibition service of freedesktop desktops. Where there is none, nothing
    happens and nothing is said: it is a comfort. */
class StayAwake : public QObject {
    Q_OBJECT

public:
    /// Over the session's bus, which is looked for when it is first wanted, or over another one.
    explicit StayAwake(QObject* parent = nullptr) : QObject(parent) {}
    explicit StayAwake(const QDBusConnection& bus, QObject* parent = nullptr) : QObject(parent), m_bus(bus) {}
    /// Lets the display go dark again; the service does so too when the program ends, however it ends.
    ~StayAwake() override;

    void want(bool awake);
    /// Whether the service has said that it does.
    [[nodiscard]] bool isHeld() const { return m_cookie.has_value(); }

private:
    void ask();
    void release();

    std::optional<QDBusConnection> m_bus;
    bool m_wanted = false, m_asking = false;
    std::optional<uint> m_cookie;
};
