// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gallery/shots.h"

#include "mobile/typeface.h"

#include <QCoreApplication>
#include <QPainter>
#include <QQmlComponent>
#include <QQuickItem>

QString Shots::Look::name() const
{
    return QStringLiteral("%1-%2").arg(QStringList{QStringLiteral("light"), QStringLiteral("dark"), QStringLiteral("sun")}.at(theme)).arg(qRound(100 * textFactor));
}

QList<Shots::Look> Shots::looks()
{
    QList<Look> all;
    for (const int theme : {0, 1, 2})
        for (const double factor : {1.0, 1.25, 1.5, 2.0})
            all.append({theme, factor});
    return all;
}

Shots::Shots()
{
    typeface::install();
    m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_window = std::make_unique<QQuickWindow>();
    m_window->resize(wide, high);
    m_window->show();
    QQmlComponent component(&m_engine, QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Gallery/Specimens.qml")));
    m_specimens.reset(component.create());
    if (!m_specimens)
        return;
    for (const QVariant& entry : m_specimens->property("entries").toList())
        m_names << entry.toMap().value(QStringLiteral("name")).toString();
}

QImage Shots::picture(int index, const Look& look)
{
    auto* theme = m_specimens->property("theme").value<QObject*>();
    theme->setProperty("mode", look.theme);
    theme->setProperty("textFactor", look.textFactor);
    QMetaObject::invokeMethod(theme, "fit", Q_ARG(double, wide), Q_ARG(double, high));
    QQuickItem* page = nullptr;
    QMetaObject::invokeMethod(m_specimens.get(), "make", Q_RETURN_ARG(QQuickItem*, page), Q_ARG(int, index), Q_ARG(QQuickItem*, m_window->contentItem()), Q_ARG(double, wide), Q_ARG(double, high));
    if (!page)
        return {};
    const std::unique_ptr<QQuickItem> made(page);
    // what is laid out late, is laid out twice
    for (int i = 0; i < 6; ++i) {
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        (void)m_window->grabWindow();
    }
    note(page);
    return m_window->grabWindow().convertToFormat(QImage::Format_RGB32);
}

void Shots::note(const QObject* object)
{
    for (const QMetaObject* type = object->metaObject(); type; type = type->superClass())
        m_types.insert(QString::fromLatin1(type->className()).section(QLatin1String("_QML"), 0, 0));
    for (const QObject* child : object->children())
        note(child);
    if (const auto* item = qobject_cast<const QQuickItem*>(object))
        for (const QQuickItem* child : item->childItems())
            if (child->parent() != object)
                note(child);
}

QImage Shots::smaller(const QImage& picture)
{
    return picture.scaled(picture.width() / share, picture.height() / share, Qt::IgnoreAspectRatio, Qt::SmoothTransformation).convertToFormat(QImage::Format_RGB32);
}

QImage Shots::small(const Look& look)
{
    constexpr int cell = wide / share;
    QImage sheet(cell * static_cast<int>(m_names.size()), high / share, QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    for (int i = 0; i < m_names.size(); ++i)
        painter.drawImage(i * cell, 0, smaller(picture(i, look)));
    painter.end();
    sheet.setText(QStringLiteral("Qt"), QString::fromLatin1(qVersion()));
    return sheet;
}
