// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/seal/secretmemory.h"
#endif

#include <QColor>
#include <QFont>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

/** Where a secret is painted: as dots, or glyph by glyph straight from wiped memory, so that no text object ever holds it. */
class SecretSurface : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a surface of its own kind")
    Q_PROPERTY(QFont font READ font WRITE setFont NOTIFY lookChanged FINAL)
    Q_PROPERTY(QColor color READ color WRITE setColor NOTIFY lookChanged FINAL)
    /// Rows of letters there is room for; what does not fit goes off at the start.
    Q_PROPERTY(int lines READ lines WRITE setLines NOTIFY lookChanged FINAL)

public:
    explicit SecretSurface(QQuickItem* parent = nullptr);

    [[nodiscard]] QFont font() const { return m_font; }
    void setFont(const QFont& font);
    [[nodiscard]] QColor color() const { return m_color; }
    void setColor(const QColor& color);
    [[nodiscard]] int lines() const { return m_lines; }
    void setLines(int lines);
    void paint(QPainter* painter) override;

Q_SIGNALS:
    void lookChanged();

protected:
    [[nodiscard]] virtual std::string_view secret() const = 0;
    [[nodiscard]] virtual bool isShown() const = 0;
    /// Whether a mark stands behind the last letter.
    [[nodiscard]] virtual bool isTyping() const { return false; }
    void look();

private:
    [[nodiscard]] qreal rowHeight() const;
    void paintDots(QPainter& painter, int count) const;
    void paintLetters(QPainter& painter) const;
    void paintMark(QPainter& painter, QPointF at) const;

    QFont m_font;
    QColor m_color;
    int m_lines = 1;
};
