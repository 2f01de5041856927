// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QSet>
#include <QStringList>

/// A desktop's service that keeps the display on, as freedesktop's idle inhibition has it.
class FakeDesktop : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.ScreenSaver")

public:
    QSet<uint> held;
    QStringList whos, whys;

public Q_SLOTS:
    uint Inhibit(const QString& who, const QString& why)
    {
        whos << who;
        whys << why;
        held.insert(++m_last);
        return m_last;
    }
    void UnInhibit(uint cookie) { held.remove(cookie); }

private:
    uint m_last = 40;
};
