// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/pageview.h"
#include <QAccessible>
#include <QFont>
#include <QQuickWindow>
#include <initializer_list>

namespace {

constexpr int touchFloor = 48;
constexpr int touchOrdinary = 56;
constexpr int touchRun = 64;
constexpr int touchMain = 76;

bool isOneOf(const QQuickItem *item, std::initializer_list<const char *> classes)
{
    for (const char *name : classes)
        if (item->inherits(name))
            return true;
    return false;
}

bool hasPointerHandler(const QQuickItem *item)
{
    for (const QObject *child : item->children())
        if (child->inherits("QQuickSinglePointHandler") || child->inherits("QQuickMultiPointHandler"))
            return true;
    return false;
}

bool isTarget(const QQuickItem *item)
{
    if (item->inherits("QQuickMouseArea"))
        return item->isEnabled();
    return hasPointerHandler(item)
        || isOneOf(item, {"TapPlace", "QQuickAbstractButton", "QQuickTextInput", "QQuickTextEdit", "QQuickSlider", "QQuickRangeSlider",
                          "QQuickSpinBox", "QQuickComboBox", "QQuickTumbler", "QQuickDial", "SecretField"});
}

QRectF boxOf(const QQuickItem *item, const QQuickItem *page, const QRectF &own)
{
    return item->mapRectToItem(page, own);
}

/// What of `box` is left by the page and by every clipping item between.
QRectF clipped(const QQuickItem *item, const QQuickItem *page, QRectF box, QSizeF size)
{
    for (const QQuickItem *up = item->parentItem(); up && up != page; up = up->parentItem())
        if (up->clip())
            box &= boxOf(up, page, QRectF(0, 0, up->width(), up->height()));
    return box & QRectF(QPointF(), size);
}

const QQuickItem *scrollerOf(const QQuickItem *item, const QQuickItem *page)
{
    for (const QQuickItem *up = item->parentItem(); up && up != page; up = up->parentItem())
        if (up->inherits("QQuickFlickable"))
            return up;
    return nullptr;
}

/// A key says what class it is: `main`, `repeats` (stepper and keypad) or a least size of its own (head keys).
int floorOf(const QQuickItem *owner)
{
    if (!owner)
        return touchOrdinary;
    if (owner->property("main").toBool())
        return touchMain;
    if (owner->property("repeats").toBool())
        return touchRun;
    const QVariant least = owner->property("least");
    return least.isValid() ? qBound(touchFloor, least.toInt(), touchOrdinary) : touchOrdinary;
}

/// Where the lines of a Text are, in its own coordinates.
QRectF inkOf(const QQuickItem *text)
{
    const auto real = [text](const char *name) { return text->property(name).toReal(); };
    const QRectF room = QRectF(0, 0, text->width(), text->height())
                            .adjusted(real("leftPadding"), real("topPadding"), -real("rightPadding"), -real("bottomPadding"));
    const qreal w = real("contentWidth"), h = real("contentHeight");
    const int across = text->property("effectiveHorizontalAlignment").toInt();
    const int down = text->property("verticalAlignment").toInt();
    const qreal x = across & Qt::AlignRight ? room.right() - w : across & Qt::AlignHCenter ? room.center().x() - w / 2 : room.left();
    const qreal y = down & Qt::AlignBottom ? room.bottom() - h : down & Qt::AlignVCenter ? room.center().y() - h / 2 : room.top();
    return {x, y, w, h};
}

class Walk {
public:
    Walk(QQuickItem &page, PageView &view) : m_page(page), m_view(view) { visit(page, 1, -1); }
    [[nodiscard]] const QList<QQuickItem *> &texts() const { return m_texts; }

private:
    void visit(QQuickItem &item, qreal opacity, qsizetype within)
    {
        opacity *= item.opacity();
        if (!item.isVisible() || opacity < 0.01)
            return;
        addPicture(item);
        if (isTarget(&item) && !(within >= 0 && item.inherits("QQuickMouseArea"))) {
            addTarget(item);
            within = m_view.targets.size() - 1;
        }
        if (item.inherits("QQuickText") && !item.property("text").toString().isEmpty())
            addWords(item, opacity, within);
        if (isOneOf(&item, {"QQuickTextInput", "QQuickTextEdit"}) && within >= 0)
            m_view.targets[within].biggestText = item.property("font").value<QFont>().pixelSize();
        for (QQuickItem *child : item.childItems())
            visit(*child, opacity, within);
    }

    /// A chart says where its plot is, or its frame how much of the chart that takes; its scales stand in it.
    void addPicture(QQuickItem &item)
    {
        const QVariant plot = item.property("plot"), frame = item.property("frame");
        const QAccessibleInterface *face = plot.isValid() || frame.isValid() ? QAccessible::queryAccessibleInterface(&item) : nullptr;
        if (face && face->role() == QAccessible::Graphic) {
            Picture p;
            p.name = face->text(QAccessible::Name);
            p.box = boxOf(&item, &m_page, QRectF(0, 0, item.width(), item.height()));
            p.seen = clipped(&item, &m_page, p.box, m_view.size);
            const QRectF of = plot.toRectF();
            const auto *shares = frame.value<QObject *>();
            p.plotShare = shares ? shares->property("part").toReal() : of.width() * of.height() / qMax(1.0, item.width() * item.height());
            m_view.pictures.append(p);
        }
        if (item.property("span").isValid() && item.property("chosen").isValid() && !m_view.pictures.isEmpty())
            addScale(item, m_view.pictures.last());
    }

    void addScale(const QQuickItem &scale, Picture &of) const
    {
        int count = 0;
        qreal widest = 0;
        for (const QQuickItem *tick : scale.childItems()) {
            if (tick->objectName() != QLatin1String("tick") || !tick->isVisible())
                continue;
            ++count;
            for (const QQuickItem *words : tick->childItems())
                // the unit hangs on behind the last number
                if (words->inherits("QQuickText") && !words->property("text").toString().contains(QLatin1Char(' ')))
                    widest = qMax(widest, words->property("contentWidth").toReal());
        }
        of.tickCount = qMax(of.tickCount, count);
        of.ticksShare = qMax(of.ticksShare, count * widest / qMax(1.0, scale.property("span").toReal()));
    }

    void addTarget(QQuickItem &item)
    {
        const QQuickItem *owner = item.inherits("TapPlace") ? &item : item.parentItem();
        Target t;
        t.item = &item;
        t.kind = QString::fromLatin1(item.metaObject()->className()).section(QLatin1Char('_'), 0, 0);
        t.scroller = scrollerOf(&item, &m_page);
        t.box = boxOf(&item, &m_page, QRectF(0, 0, item.width(), item.height()));
        t.seen = clipped(&item, &m_page, t.box, m_view.size);
        t.floor = floorOf(owner);
        t.keeps = owner && owner->property("main").toBool();
        t.answersLift = owner && owner->property("answersLift").toBool();
        t.throwsAway = owner && owner->property("throwsAway").toBool();
        t.columnWidth = owner && owner->parentItem() ? owner->parentItem()->width() : item.width();
        if (const QAccessibleInterface *face = QAccessible::queryAccessibleInterface(&item)) {
            t.name = face->text(QAccessible::Name);
            t.role = static_cast<int>(face->role());
        }
        m_view.targets.append(t);
    }

    void addWords(QQuickItem &item, qreal opacity, qsizetype within)
    {
        Wording w;
        const QRectF ink = inkOf(&item);
        w.item = &item;
        w.scroller = scrollerOf(&item, &m_page);
        w.within = within >= 0 ? m_view.targets[within].item : nullptr;
        w.text = item.property("text").toString().simplified();
        w.ink = boxOf(&item, &m_page, ink);
        w.seen = clipped(&item, &m_page, w.ink, m_view.size);
        w.colour = item.property("color").value<QColor>();
        w.opacity = opacity;
        w.pixels = item.property("font").value<QFont>().pixelSize();
        w.keyNumber = item.property("keyNumber").toBool();
        w.enabled = item.isEnabled();
        w.truncated = item.property("truncated").toBool();
        w.past = qMax(ink.width() - item.width(), ink.height() - item.height());
        m_view.words.append(w);
        m_texts.append(&item);
        if (within >= 0)
            m_view.targets[within].biggestText = qMax(m_view.targets[within].biggestText, w.pixels);
    }

    QQuickItem &m_page;
    PageView &m_view;
    QList<QQuickItem *> m_texts;
};

QImage grab(const QQuickItem &page, QSizeF size)
{
    const QImage window = page.window()->grabWindow();
    const qreal ratio = page.window()->effectiveDevicePixelRatio();
    const QPointF at = page.mapToScene(QPointF()) * ratio;
    return window.copy(QRectF(at, size * ratio).toRect()).convertToFormat(QImage::Format_RGB32);
}

/// Whether some item of this name stands wholly inside the page and inside everything that clips it; true when there is none.
bool isShown(const QQuickItem &page, const QString &name, QSizeF size)
{
    bool any = false;
    QList<const QQuickItem *> rest{&page};
    while (!rest.isEmpty()) {
        const QQuickItem *item = rest.takeLast();
        for (const QQuickItem *child : item->childItems())
            rest.append(child);
        if (item->objectName() != name)
            continue;
        any = true;
        const QRectF box = boxOf(item, &page, QRectF(0, 0, item->width(), item->height()));
        if (item->isVisible() && !box.isEmpty() && clipped(item, &page, box, size).adjusted(-1, -1, 1, 1).contains(box))
            return true;
    }
    return !any;
}

}

PageView lookAt(QQuickItem &page, QSizeF size)
{
    PageView view;
    view.size = size;
    const Walk walk(page, view);
    view.full = grab(page, size);
    // set from C++, so that a binding on the opacity stays in place
    QList<qreal> before;
    for (QQuickItem *text : walk.texts()) {
        before.append(text->opacity());
        text->setOpacity(0);
    }
    view.bare = grab(page, size);
    for (qsizetype i = 0; i < before.size(); ++i)
        walk.texts()[i]->setOpacity(before[i]);
    for (const QString &name : {QStringLiteral("mainAction"), QStringLiteral("keyNumber")})
        if (!isShown(page, name, size))
            view.promisedUnseen.append(name);
    return view;
}
