// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/pageaudit.h"
#include "tests/qml/checker/longerwords.h"
#include "tests/qml/checker/pagerules.h"
#include <QCoreApplication>
#include <QDir>
#include <QHashFunctions>

namespace {

template <typename Visit>
void eachVisible(QQuickItem *item, const Visit &visit)
{
    if (!item->isVisible())
        return;
    visit(item);
    for (QQuickItem *child : item->childItems())
        eachVisible(child, visit);
}

}

QStringList PageAudit::findings(QQuickItem *page, qreal width, qreal height, bool wide, qreal textFactor)
{
    if (!page || !page->window())
        return {QStringLiteral("nothing to look at")};
    PageView view = lookAt(*page, QSizeF(width, height));
    view.wide = wide;
    view.textFactor = textFactor;
    return breaches(view);
}

qreal PageAudit::contrast(const QColor &a, const QColor &b)
{
    return contrastRatio(a, b);
}

quint32 PageAudit::shape(QQuickItem *page)
{
    size_t sum = 0;
    if (page)
        eachVisible(page, [&sum](const QQuickItem *i) { sum = qHashMulti(sum, i->x(), i->y(), i->width(), i->height(), i->opacity()); });
    return static_cast<quint32>(sum);
}

void PageAudit::keepPicture(QQuickItem *page, qreal width, qreal height, const QString &name)
{
    const QDir folder(QStringLiteral("pictures"));
    if (folder.exists() && page)
        lookAt(*page, QSizeF(width, height)).full.save(folder.filePath(name + QStringLiteral(".png")));
}

void PageAudit::speakLonger(bool longer)
{
    static LongerWords words;
    QCoreApplication::removeTranslator(&words);
    if (longer)
        QCoreApplication::installTranslator(&words);
}

bool PageAudit::scrollToEnd(QQuickItem *page)
{
    bool moved = false;
    eachVisible(page, [&moved](QQuickItem *item) {
        if (!item->inherits("QQuickFlickable"))
            return;
        const qreal end = item->property("contentHeight").toReal() - item->height();
        if (end <= 1)
            return;
        item->setProperty("contentY", end);
        moved = true;
    });
    return moved;
}
