// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QColor>
#include <QImage>
#include <QList>
#include <QQuickItem>
#include <QRectF>
#include <QString>

/// Something that can be tapped or typed into, in the page's coordinates.
struct Target {
    const QQuickItem *item = nullptr;
    const QQuickItem *scroller = nullptr; ///< the nearest Flickable around it
    QString name;
    QString kind;        ///< the item's class
    int role = 0;
    QRectF box;          ///< the whole item
    QRectF seen;         ///< what clipping leaves of it
    int floor = 0;       ///< the least size its class must have
    bool keeps = false;
    bool throwsAway = false;
    bool answersLift = false; ///< big where big keys are wished
    int biggestText = 0; ///< pixel size of the largest word on it, 0 when it has none
    qreal columnWidth = 0;
};

/// A piece of text, in the page's coordinates.
struct Wording {
    const QQuickItem *item = nullptr;
    const QQuickItem *scroller = nullptr;
    const QQuickItem *within = nullptr; ///< the target it stands on
    QString text;
    QRectF ink;  ///< where its lines are painted
    QRectF seen;
    QColor colour;
    qreal opacity = 1;
    int pixels = 0;
    bool keyNumber = false;
    bool enabled = true;
    bool truncated = false;
    qreal past = 0; ///< how far the lines reach out of the item's own box
};

/// A chart or a drawing with scales, in the page's coordinates.
struct Picture {
    QString name;
    QRectF box;
    QRectF seen;
    qreal plotShare = 1;    ///< of the chart that its plot takes
    int tickCount = 0;      ///< of the fullest scale
    qreal ticksShare = 0;   ///< of a scale's length that its numbers take, each as wide as the widest
};

/// One page at one size, taken apart for the rules.
struct PageView {
    QSizeF size;
    bool wide = false;
    qreal textFactor = 1;
    bool bigKeys = false;       ///< keys that answer a lift have to be 20 mm
    QList<Picture> pictures;
    QList<Target> targets;
    QList<Wording> words;
    QStringList promisedUnseen; ///< object names that must show without scrolling and do not
    QImage full;                ///< the page as painted
    QImage bare;                ///< the same without its text
};

/// Takes the page apart and paints it twice. The window must be shown.
[[nodiscard]] PageView lookAt(QQuickItem &page, QSizeF size);
