// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/qml/checker/pagerules.h"
#include "tests/qml/checker/visions.h"
#include <QAccessible>
#include <QHash>
#include <cmath>

namespace {

constexpr qreal slack = 0.5;

QString nameOf(const Target &t)
{
    return t.name.isEmpty() ? t.kind : t.name.left(40);
}

QString nameOf(const Wording &w)
{
    return QLatin1Char('"') + w.text.left(40) + QLatin1Char('"');
}

qreal linear(qreal channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

qreal luminance(const QColor &c)
{
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

/// A picture that can be tapped is read, not acted on: its words are labels.
bool isPicture(const Target &t)
{
    return t.role == QAccessible::Graphic || t.role == QAccessible::Chart || t.role == QAccessible::Canvas;
}

/// Free space between two boxes; negative when they overlap.
qreal between(const QRectF &a, const QRectF &b)
{
    const qreal dx = qMax(a.left() - b.right(), b.left() - a.right());
    const qreal dy = qMax(a.top() - b.bottom(), b.top() - a.bottom());
    return qMax(dx, dy);
}

/// Whole boxes where both scroll together, otherwise what is seen of them.
qreal gapOf(const Target &a, const Target &b)
{
    if (a.scroller == b.scroller)
        return between(a.box, b.box);
    return a.seen.isEmpty() || b.seen.isEmpty() ? HUGE_VAL : between(a.seen, b.seen);
}

bool isOrHolds(const QQuickItem *outer, const QQuickItem *inner)
{
    return outer == inner || outer->isAncestorOf(inner);
}

/// 20 mm; less where a phone lies on its side and has no room for it.
int bigKeyOf(const PageView &view)
{
    return !view.wide && view.size.width() > view.size.height() && view.size.height() < 480 ? 84 : 126;
}

void sizes(const PageView &view, QStringList &out)
{
    for (const Target &t : view.targets) {
        if (t.box.width() < t.floor - slack || t.box.height() < t.floor - slack)
            out << QStringLiteral("small: %1 is %2 x %3, its class needs %4")
                       .arg(nameOf(t)).arg(qRound(t.box.width())).arg(qRound(t.box.height())).arg(t.floor);
        if (t.answersLift && view.bigKeys && t.box.height() < bigKeyOf(view) - slack)
            out << QStringLiteral("small: %1 is %2 high, a big key is %3").arg(nameOf(t)).arg(qRound(t.box.height())).arg(bigKeyOf(view));
        if (t.keeps && t.box.width() < 0.95 * t.columnWidth)
            out << QStringLiteral("small: %1 does not fill its column").arg(nameOf(t));
    }
}

void gaps(const PageView &view, QStringList &out)
{
    for (qsizetype i = 0; i < view.targets.size(); ++i)
        for (qsizetype j = i + 1; j < view.targets.size(); ++j) {
            const Target &a = view.targets[i], &b = view.targets[j];
            if (a.item->isAncestorOf(b.item))
                continue;
            const qreal gap = gapOf(a, b);
            if (gap < 8 - slack)
                out << QStringLiteral("gap: %1 between %2 and %3").arg(gap, 0, 'f', 1).arg(nameOf(a), nameOf(b));
            else if (gap < 24 - slack && ((a.keeps && b.throwsAway) || (b.keeps && a.throwsAway)))
                out << QStringLiteral("keep beside throw-away: %1 between %2 and %3").arg(gap, 0, 'f', 1).arg(nameOf(a), nameOf(b));
        }
}

void edges(const PageView &view, QStringList &out)
{
    const QRectF inner(16 - slack, 24 - slack, view.size.width() - 32 + 2 * slack, view.size.height() - 40 + 2 * slack);
    for (const Target &t : view.targets)
        if (!t.seen.isEmpty() && !inner.contains(t.seen))
            out << QStringLiteral("edge: %1 at %2,%3 to %4,%5").arg(nameOf(t)).arg(qRound(t.seen.left())).arg(qRound(t.seen.top()))
                       .arg(qRound(t.seen.right())).arg(qRound(t.seen.bottom()));
}

/// Whether scrolling can bring the whole box into sight; without a scroller it must be in sight already.
bool isReachable(const QQuickItem *scroller, const QQuickItem *item, const QRectF &own, const QRectF &box, const QRectF &seen)
{
    if (!scroller)
        return seen.adjusted(-1, -1, 1, 1).contains(box);
    const auto *content = scroller->property("contentItem").value<QQuickItem *>();
    const qreal width = qMax(scroller->width(), scroller->property("contentWidth").toReal());
    const qreal height = qMax(scroller->height(), scroller->property("contentHeight").toReal());
    return QRectF(-1, -1, width + 2, height + 2).contains(item->mapRectToItem(content, own));
}

void reach(const PageView &view, QStringList &out)
{
    for (const Target &t : view.targets)
        if (!isReachable(t.scroller, t.item, QRectF(0, 0, t.item->width(), t.item->height()), t.box, t.seen))
            out << QStringLiteral("off the page: %1").arg(nameOf(t));
    for (const Wording &w : view.words) {
        // a line box has room above and below its letters that may go
        const QRectF ink = w.ink.adjusted(0, 0.2 * w.pixels, 0, -0.2 * w.pixels);
        const QRectF box(0, 0.2 * w.pixels, w.item->width(), qMax(0.0, w.item->height() - 0.4 * w.pixels));
        if (!isReachable(w.scroller, w.item, box, ink, w.seen.adjusted(-1, -1, 1, 1)))
            out << QStringLiteral("off the page: %1").arg(nameOf(w));
    }
}

void names(const PageView &view, QStringList &out)
{
    for (const Target &t : view.targets) {
        if (t.name.isEmpty())
            out << QStringLiteral("nameless: %1 at %2,%3").arg(t.kind).arg(qRound(t.box.x())).arg(qRound(t.box.y()));
        if (t.role == QAccessible::NoRole || t.role == QAccessible::Client)
            out << QStringLiteral("roleless: %1").arg(nameOf(t));
        for (const char *dial : {"QQuickSlider", "QQuickRangeSlider", "QQuickSpinBox", "QQuickTumbler", "QQuickDial"})
            if (t.item->inherits(dial))
                out << QStringLiteral("slider: %1 is set by dragging").arg(nameOf(t));
    }
}

void textSizes(const PageView &view, QStringList &out)
{
    for (const Wording &w : view.words) {
        if (w.pixels < 16)
            out << QStringLiteral("tiny text: %1 at %2").arg(nameOf(w)).arg(w.pixels);
        if (w.keyNumber && w.pixels < (view.wide ? 76 : 48))
            out << QStringLiteral("key number: %1 at %2").arg(nameOf(w)).arg(w.pixels);
    }
    for (const Target &t : view.targets)
        if (view.wide && !isPicture(t) && t.biggestText > 0 && t.biggestText < 24)
            out << QStringLiteral("act text: %1 at %2 on a tablet").arg(nameOf(t)).arg(t.biggestText);
}

void cuts(const PageView &view, QStringList &out)
{
    for (const Wording &w : view.words) {
        if (w.truncated)
            out << QStringLiteral("cut: %1").arg(nameOf(w));
        else if (w.past > 1)
            out << QStringLiteral("past its box: %1 by %2").arg(nameOf(w)).arg(qRound(w.past));
        for (const Target &t : view.targets)
            if (t.item == w.within && !t.box.adjusted(-2, -2, 2, 2).contains(w.ink.adjusted(0, 0.2 * w.pixels, 0, -0.2 * w.pixels)))
                out << QStringLiteral("past its box: %1 on %2").arg(nameOf(w), nameOf(t));
    }
}

void overlaps(const PageView &view, QStringList &out)
{
    const auto tight = [](const Wording &w) { return w.seen.adjusted(1, 0.18 * w.pixels, -1, -0.18 * w.pixels); };
    for (qsizetype i = 0; i < view.words.size(); ++i) {
        const QRectF a = tight(view.words[i]);
        if (a.width() <= 0 || a.height() <= 0)
            continue;
        for (qsizetype j = i + 1; j < view.words.size(); ++j)
            if (a.intersects(tight(view.words[j])))
                out << QStringLiteral("overlap: %1 and %2").arg(nameOf(view.words[i]), nameOf(view.words[j]));
        for (const Target &t : view.targets)
            if (!isPicture(t) && !isOrHolds(t.item, view.words[i].item) && !view.words[i].item->isAncestorOf(t.item) && a.intersects(t.seen.adjusted(1, 1, -1, -1))
                && view.words[i].within != t.item)
                out << QStringLiteral("overlap: %1 and %2").arg(nameOf(view.words[i]), nameOf(t));
    }
}

QColor over(const QColor &front, qreal opacity, const QColor &back)
{
    const qreal a = front.alphaF() * opacity;
    return QColor::fromRgbF(float(front.redF() * a + back.redF() * (1 - a)), float(front.greenF() * a + back.greenF() * (1 - a)),
                            float(front.blueF() * a + back.blueF() * (1 - a)));
}

/// The colours under the letters: where the page with its text differs from the page without.
QHash<QRgb, int> coloursBehind(const PageView &view, const QRectF &where, int &total)
{
    QHash<QRgb, int> found;
    const qreal ratio = view.full.width() / view.size.width();
    const QRect area = QRectF(where.topLeft() * ratio, where.size() * ratio).toAlignedRect() & view.full.rect() & view.bare.rect();
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x) {
            const QRgb with = view.full.pixel(x, y), without = view.bare.pixel(x, y);
            const int change = qMax(qAbs(qRed(with) - qRed(without)),
                                    qMax(qAbs(qGreen(with) - qGreen(without)), qAbs(qBlue(with) - qBlue(without))));
            if (change < 2)
                continue;
            ++found[without];
            ++total;
        }
    return found;
}

void contrasts(const PageView &view, QStringList &out)
{
    for (const Wording &w : view.words) {
        if (w.seen.width() < 4 || w.seen.height() < 0.6 * w.pixels)
            continue;
        int total = 0;
        qreal worst = 21;
        const QHash<QRgb, int> behind = coloursBehind(view, w.seen, total);
        for (auto it = behind.begin(); it != behind.end(); ++it)
            if (it.value() >= qMax(3, total / 25)) {
                const QColor back = QColor::fromRgb(it.key());
                worst = qMin(worst, contrastRatio(over(w.colour, w.opacity, back), back));
            }
        const qreal least = !w.enabled ? 4.5 : w.keyNumber ? 12 : 7;
        if (total == 0)
            out << QStringLiteral("contrast: %1 cannot be seen").arg(nameOf(w));
        else if (worst < least - 0.05)
            out << QStringLiteral("contrast: %1 of %2 needed, %3").arg(worst, 0, 'f', 1).arg(least).arg(nameOf(w));
    }
}

void charts(const PageView &view, QStringList &out)
{
    for (const Picture &p : view.pictures) {
        if (view.textFactor >= 2 && p.plotShare < 0.45 - 1e-6)
            out << QStringLiteral("plot: %1 % of the chart %2").arg(qRound(100 * p.plotShare)).arg(p.name.left(40));
        if (p.tickCount > 5)
            out << QStringLiteral("ticks: %1 on a scale of %2").arg(p.tickCount).arg(p.name.left(40));
        if (p.ticksShare > 0.9 + 1e-6)
            out << QStringLiteral("ticks: their numbers take %1 % of a scale of %2").arg(qRound(100 * p.ticksShare)).arg(p.name.left(40));
    }
}

/// What a chart says by colour is seen by everybody: no edge goes in grey, nor for those who see two colours.
void colours(const PageView &view, QStringList &out)
{
    const qreal ratio = view.full.width() / view.size.width();
    for (const Picture &p : view.pictures) {
        const QImage part = view.full.copy(QRectF(p.seen.topLeft() * ratio, p.seen.size() * ratio).toAlignedRect() & view.full.rect());
        if (part.isNull())
            continue;
        for (const visions::Kind kind : visions::all)
            if (const int lost = visions::edgesLost(part, kind); lost > 0)
                out << QStringLiteral("colour alone: edges go %2 in %1 places of %3").arg(lost).arg(kind == visions::Kind::Grey ? QStringLiteral("in grey") : visions::name(kind), p.name.left(40));
    }
}

void promises(const PageView &view, QStringList &out)
{
    if (view.textFactor > 1.5)
        return;
    for (const QString &name : view.promisedUnseen)
        out << QStringLiteral("must scroll: %1 is not in sight").arg(name);
}

}

qreal contrastRatio(const QColor &a, const QColor &b)
{
    const qreal x = luminance(a), y = luminance(b);
    return (qMax(x, y) + 0.05) / (qMin(x, y) + 0.05);
}

QStringList breaches(const PageView &view)
{
    QStringList out;
    for (const auto rule : {sizes, gaps, edges, reach, names, textSizes, cuts, overlaps, contrasts, charts, colours, promises})
        rule(view, out);
    return out;
}
