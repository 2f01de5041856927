// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/pageaudit.h"
#include "mobile/text/language.h"
#include "tests/qml/checker/longerwords.h"
#include "tests/qml/checker/pagerules.h"
#include "tests/qml/checker/untranslated.h"
#include <QCoreApplication>
#include <QDir>
#include <QHashFunctions>
#include <QTest>
#include <QtQuickTest>

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

/// A number that changes when anything visible moves.
size_t shapeOf(QQuickItem *page)
{
    size_t sum = 0;
    eachVisible(page, [&sum](const QQuickItem *i) { sum = qHashMulti(sum, i->x(), i->y(), i->width(), i->height(), i->opacity()); });
    return sum;
}

}

QStringList PageAudit::findings(QQuickItem *page, qreal width, qreal height, bool wide, qreal textFactor, bool bigKeys)
{
    if (!page || !page->window())
        return {QStringLiteral("nothing to look at")};
    PageView view = lookAt(*page, QSizeF(width, height));
    view.wide = wide;
    view.textFactor = textFactor;
    view.bigKeys = bigKeys;
    return breaches(view);
}

qreal PageAudit::contrast(const QColor &a, const QColor &b)
{
    return contrastRatio(a, b);
}

bool PageAudit::settle(QQuickItem *page)
{
    if (!page || !page->window())
        return false;
    size_t before = 0;
    int still = 0;
    for (int i = 0; i < 60 && still < 2; ++i) {
        QQuickTest::qWaitForPolish(page->window(), 200);
        QTest::qWait(1);
        const size_t now = shapeOf(page);
        still = now == before ? still + 1 : 0;
        before = now;
    }
    return still == 2;
}

void PageAudit::keepPicture(QQuickItem *page, qreal width, qreal height, const QString &name)
{
    const QDir folder(QStringLiteral("pictures"));
    if (folder.exists() && page)
        lookAt(*page, QSizeF(width, height)).full.save(folder.filePath(name + QStringLiteral(".png")));
}

QStringList PageAudit::texts(QQuickItem *page)
{
    QStringList said;
    eachVisible(page, [&said](const QQuickItem *item) {
        // words, and what was typed
        if (item->inherits("QQuickText") || item->inherits("QQuickTextInput"))
            said << item->property("text").toString();
    });
    return said;
}

void PageAudit::speakLonger(bool longer)
{
    static LongerWords words;
    QCoreApplication::removeTranslator(&words);
    if (longer)
        QCoreApplication::installTranslator(&words);
}

namespace {

Untranslated &notes()
{
    static Untranslated words;
    return words;
}

}

void PageAudit::speak(const QString &code)
{
    // behind the catalogue that is put in front of it now
    language::speak({});
    QCoreApplication::removeTranslator(&notes());
    (void)notes().take();
    if (code.isEmpty())
        return;
    QCoreApplication::installTranslator(&notes());
    language::speak(code);
}

QStringList PageAudit::untranslated()
{
    return notes().take();
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
