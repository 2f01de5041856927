// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/hand.h"

#include "mobile/door/vaultmaker.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QQmlComponent>
#include <QThreadPool>
#include <QTimer>

#include <algorithm>
#include <functional>

namespace {

/// The item of that name that shows, nearest to the root.
QQuickItem* shown(QQuickItem* root, const QString& name)
{
    if (!root || !root->isVisible())
        return nullptr;
    const bool named = name.endsWith(QLatin1Char('*')) ? root->objectName().startsWith(name.chopped(1)) : root->objectName() == name;
    if (named && root->width() > 0 && root->height() > 0)
        return root;
    for (QQuickItem* child : root->childItems())
        if (QQuickItem* found = shown(child, name))
            return found;
    return nullptr;
}

void collectOptions(QQuickItem* root, QList<QQuickItem*>& options)
{
    if (!root->isVisible())
        return;
    if (root->property("markable").toBool())
        options << root;
    else
        for (QQuickItem* child : root->childItems())
            collectOptions(child, options);
}

}

Hand::Hand(QQuickWindow& window, QQmlEngine& engine) : m_window(window)
{
    QQmlComponent component(&engine);
    component.setData("import QtQuick\nimport Steelyard.Keys\nQtObject { function forget() { TapGuard.forget() } }", {});
    m_guard.reset(component.create());
}

QQuickItem* Hand::page() const
{
    const auto* flow = m_window.property("flow").value<QQuickItem*>();
    return flow ? flow->property("currentItem").value<QQuickItem*>() : nullptr;
}

QString Hand::pageType() const
{
    const QQuickItem* item = page();
    const QString type = item ? QString::fromLatin1(item->metaObject()->className()) : QString();
    return type.left(type.indexOf(QStringLiteral("_QMLTYPE_")));
}

void Hand::settle(int frames)
{
    // what a page has set off beside it comes first
    QThreadPool::globalInstance()->waitForDone();
    QCoreApplication::sendPostedEvents();
    for (int i = 0; i < frames; ++i) {
        QEventLoop loop;
        const auto swapped = QObject::connect(&m_window, &QQuickWindow::frameSwapped, &loop, &QEventLoop::quit);
        QTimer::singleShot(2000, &loop, [&] { loop.exit(1); });
        m_window.update();
        if (loop.exec() != 0)
            qWarning("no frame came within two seconds");
        QObject::disconnect(swapped);
        QCoreApplication::sendPostedEvents();
    }
}

QString Hand::perform(const QString& deed)
{
    const QStringList words = deed.split(QLatin1Char(' '));
    if (words.size() == 2 && words[0] == QStringLiteral("press"))
        return press(words[1]);
    if (words.size() == 3 && words[0] == QStringLiteral("choose"))
        return choose(words[1], words[2].toInt());
    if (words.size() == 3 && (words[0] == QStringLiteral("type") || words[0] == QStringLiteral("copy")))
        return type(words[0] == QStringLiteral("type") ? words[1] : words[2], words[0] == QStringLiteral("type") ? words[2] : QString(), words[1]);
    if (words.size() == 2 && words[0] == QStringLiteral("row"))
        return pressRow(words[1].toInt());
    if (words.size() == 2 && words[0] == QStringLiteral("place"))
        return goTo(words[1].toInt());
    if (words.size() != 2 || words[0] != QStringLiteral("key"))
        return QStringLiteral("no such deed: ") + deed;
    for (const QChar key : words[1]) {
        QQuickItem* found = shown(page(), QStringLiteral("key ") + (key == QLatin1Char('.') ? QStringLiteral("point") : QString(key)));
        if (!found)
            return QStringLiteral("no key ") + key;
        if (const QString trouble = touch(*found); !trouble.isEmpty())
            return trouble;
    }
    settle(1);
    return {};
}

QString Hand::press(const QString& path)
{
    QQuickItem* item = find(path);
    return item ? tap(*item) : QStringLiteral("%1 does not show on %2").arg(path, pageType());
}

QQuickItem* Hand::find(const QString& path) const
{
    QQuickItem* item = page();
    for (const QString& name : path.split(QLatin1Char('/')))
        item = shown(item, name);
    return item;
}

std::optional<QString> Hand::textOf(const QString& path) const
{
    const QQuickItem* item = find(path);
    return item ? std::optional(item->property("text").toString()) : std::nullopt;
}

QString Hand::type(const QString& entry, QString text, const QString& secret)
{
    QQuickItem* item = shown(page(), entry);
    // a secret, or a name
    auto* field = item ? item->property("field").value<QQuickItem*>() : nullptr;
    auto* maker = page() ? page()->property("maker").value<VaultMaker*>() : nullptr;
    if (!field || (text.isEmpty() && (!maker || !qobject_cast<SecretField*>(field))))
        return QStringLiteral("%1 takes no words on %2").arg(entry, pageType());
    if (text.isEmpty()) {
        const std::string_view shown = (secret == QStringLiteral("words") ? maker->words() : maker->code())->view();
        text = QString::fromUtf8(shown.data(), static_cast<qsizetype>(shown.size()));
    }
    field->forceActiveFocus();
    for (const QChar c : text) {
        QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, c == QLatin1Char('_') ? QStringLiteral(" ") : QString(c));
        QCoreApplication::sendEvent(field, &event);
    }
    settle(1);
    return {};
}

QString Hand::pressRow(int row)
{
    QList<QQuickItem*> rows;
    const std::function<void(QQuickItem*)> look = [&](QQuickItem* item) {
        if (item->isVisible() && item->objectName().startsWith(QStringLiteral("athlete:")))
            rows << item;
        for (QQuickItem* child : item->childItems())
            look(child);
    };
    look(page());
    return row < rows.size() ? tap(*rows[row]) : QStringLiteral("no row %1 on %2").arg(row).arg(pageType());
}

QString Hand::goTo(int place)
{
    auto* flow = m_window.property("flow").value<QObject*>();
    QMetaObject::invokeMethod(flow, "go", Q_ARG(int, place));
    settle(1);
    return {};
}

void Hand::showKit()
{
    auto* flow = m_window.property("flow").value<QObject*>();
    for (const QObject* pages : flow->children())
        if (auto* things = pages->property("things").value<QQmlComponent*>())
            QMetaObject::invokeMethod(flow, "show", Q_ARG(QQmlComponent*, things), Q_ARG(QVariant, QVariant()));
    page()->forceActiveFocus();
    settle(1);
}

QString Hand::choose(const QString& name, int option)
{
    QQuickItem* row = shown(page(), name);
    QList<QQuickItem*> options;
    if (row)
        collectOptions(row, options);
    if (option < 0 || option >= options.size())
        return QStringLiteral("%1 has no option %2 on %3").arg(name).arg(option).arg(pageType());
    return tap(*options[option]);
}

QString Hand::tap(QQuickItem& item)
{
    const QString trouble = touch(item);
    if (trouble.isEmpty())
        settle(1);
    return trouble;
}

QString Hand::touch(QQuickItem& item)
{
    bring(item);
    const QPointF at = item.mapToScene(QPointF(item.width() / 2, item.height() / 2));
    if (!QRectF(QPointF(), QSizeF(m_window.size())).contains(at))
        return QStringLiteral("%1 is out of reach on %2").arg(item.objectName(), pageType());
    // a hand waits between two taps; the tour does not
    if (m_guard)
        QMetaObject::invokeMethod(m_guard.get(), "forget");
    for (const auto& [type, buttons] : {std::pair(QEvent::MouseButtonPress, Qt::LeftButton), {QEvent::MouseButtonRelease, Qt::NoButton}}) {
        QMouseEvent event(type, at, m_window.mapToGlobal(at), Qt::LeftButton, buttons, Qt::NoModifier);
        QCoreApplication::sendEvent(&m_window, &event);
    }
    return {};
}

void Hand::bring(QQuickItem& item)
{
    for (QQuickItem* up = item.parentItem(); up; up = up->parentItem()) {
        auto* content = up->property("contentItem").value<QQuickItem*>();
        const qreal most = up->property("contentHeight").toReal() - up->height();
        if (!up->inherits("QQuickFlickable") || !content || most <= 0)
            continue;
        const qreal top = item.mapToItem(content, QPointF()).y();
        up->setProperty("contentY", std::clamp(top - (up->height() - item.height()) / 2, 0.0, most));
    }
}

bool Hand::pageDown()
{
    const qreal before = page()->property("contentY").toReal();
    sendKey(Qt::Key_PageDown);
    return page()->property("contentY").toReal() > before;
}

void Hand::sendKey(int key)
{
    for (const QEvent::Type type : {QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, key, Qt::NoModifier);
        QCoreApplication::sendEvent(&m_window, &event);
    }
}
