// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "core/work/desk.h"
#endif

#include <QJSEngine>
#include <QObject>
#include <QQmlEngine>
#include <QtQml/qqmlregistration.h>

/** The desk as pages reach it: nothing but the object to hand on, and word that it changed, or is shown in other units or words. */
class DeskService : public QObject {
    Q_OBJECT

public:
    /// With ids from the randomness of the system.
    explicit DeskService(QObject* parent = nullptr);
    explicit DeskService(steelyard::NewIds newIds, QObject* parent = nullptr);
    [[nodiscard]] steelyard::Desk& desk() { return m_desk; }
    [[nodiscard]] const steelyard::Desk& desk() const { return m_desk; }

Q_SIGNALS:
    void changed();

private:
    steelyard::Desk m_desk;
    steelyard::Subscription m_subscription, m_onSaying;
};

/** Shows the one desk to QML; main() or a test sets `instance` first. */
struct DeskForeign {
    Q_GADGET
    QML_FOREIGN(DeskService)
    QML_SINGLETON
    QML_NAMED_ELEMENT(TheDesk)

public:
    inline static DeskService* instance = nullptr;
    static DeskService* create(QQmlEngine*, QJSEngine*)
    {
        QJSEngine::setObjectOwnership(instance, QJSEngine::CppOwnership);
        return instance;
    }
};
