// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

/** What a finger touches: down while the finger is on it, tapped when it lifts there, nothing when it slides off or along it or the
    page under it scrolls; two quick taps are two. It knows whether a key brought the keyboard here: then it wants a ring. */
class TapPlace : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool held READ isHeld NOTIFY heldChanged FINAL)
    Q_PROPERTY(bool ringed READ isRinged NOTIFY ringedChanged FINAL)

public:
    explicit TapPlace(QQuickItem* parent = nullptr);
    [[nodiscard]] bool isHeld() const { return m_held; }
    [[nodiscard]] bool isRinged() const { return m_ringed; }

Q_SIGNALS:
    void heldChanged();
    void ringedChanged();
    void tapped();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void touchEvent(QTouchEvent* event) override;
    void touchUngrabEvent() override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void itemChange(ItemChange change, const ItemChangeData& value) override;

private:
    /// How far a finger may go from where it came down and still mean a tap: as far as the least key is wide, which a glove may roll.
    static constexpr qreal farthest = 48;

    void press(QPointF at);
    [[nodiscard]] bool isOn(QPointF at) const;
    void move(QPointF at);
    void lift(QPointF at);
    void letGo();
    void setHeld(bool held);
    void setRinged(bool ringed);

    int m_finger = -1; ///< the touch point that is down here; a second finger counts for nothing
    QPointF m_pressedAt;
    bool m_held = false;
    bool m_ringed = false;
};
