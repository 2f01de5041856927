// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QColor>
#include <QObject>
#include <QQuickItem>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

/// Hands the rules of touch and sight to QML tests.
class PageAudit : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    [[nodiscard]] Q_INVOKABLE static QStringList findings(QQuickItem *page, qreal width, qreal height, bool wide, qreal textFactor, bool bigKeys = false);
    [[nodiscard]] Q_INVOKABLE static qreal contrast(const QColor &a, const QColor &b);
    /// Waits until every layout has been worked out and nothing moves any more; false when the page never comes to rest.
    Q_INVOKABLE static bool settle(QQuickItem *page);
    /// Saves the page as painted into the folder "pictures" of the working folder; when there is none, nothing is saved.
    Q_INVOKABLE static void keepPicture(QQuickItem *page, qreal width, qreal height, const QString &name);
    /// What is to be read on an item and below, in the order of its parts.
    [[nodiscard]] Q_INVOKABLE static QStringList texts(QQuickItem *page);
    /// From here on pages are made in a language with longer words, or in English again.
    Q_INVOKABLE static void speakLonger(bool longer);
    /// From here on pages are made in a language by its code; empty: the device's, as at first.
    Q_INVOKABLE static void speak(const QString &code);
    /// What was shown in English since it was asked last because no catalogue knew it.
    Q_INVOKABLE static QStringList untranslated();
    /// Everything that scrolls goes to its end; false when nothing does.
    Q_INVOKABLE static bool scrollToEnd(QQuickItem *page);
};
