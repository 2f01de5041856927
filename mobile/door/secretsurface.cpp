// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/secretsurface.h"

#include <QFontMetricsF>
#include <QGlyphRun>
#include <QPainter>
#include <QRawFont>

#include <algorithm>

using namespace steelyard;

namespace {

/// Room for `count` things of one kind in memory that is wiped when it goes.
template <typename T>
class SecretRoom {
public:
    explicit SecretRoom(std::size_t count) : m_block(seal::SecretBlock::make(std::max<std::size_t>(count, 1) * sizeof(T))), m_count(count) {}
    [[nodiscard]] bool ok() const { return m_block.ok(); }
    [[nodiscard]] T* data() { return reinterpret_cast<T*>((*m_block).room().data()); }
    [[nodiscard]] int count() const { return static_cast<int>(m_count); }

private:
    seal::Outcome<seal::SecretBlock> m_block;
    std::size_t m_count;
};

/// UTF-8 to UTF-16 without a text object in between; the number of units, never more than bytes.
int decode(std::string_view utf8, QChar* out)
{
    int units = 0;
    for (std::size_t i = 0; i < utf8.size();) {
        const auto lead = static_cast<unsigned char>(utf8[i]);
        const std::size_t size = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
        char32_t point = size == 1 ? lead : lead & (0x7Fu >> size);
        for (std::size_t k = 1; k < size && i + k < utf8.size(); ++k)
            point = (point << 6) | (static_cast<unsigned char>(utf8[i + k]) & 0x3Fu);
        i += size;
        if (QChar::requiresSurrogates(point)) {
            out[units++] = QChar(QChar::highSurrogate(point));
            out[units++] = QChar(QChar::lowSurrogate(point));
        } else {
            out[units++] = QChar(static_cast<char16_t>(point));
        }
    }
    return units;
}

int pointsIn(std::string_view utf8)
{
    return static_cast<int>(std::count_if(utf8.begin(), utf8.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

}

SecretSurface::SecretSurface(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    setAntialiasing(true);
}

void SecretSurface::setFont(const QFont& font)
{
    if (m_font == font)
        return;
    m_font = font;
    look();
    Q_EMIT lookChanged();
}

void SecretSurface::setColor(const QColor& color)
{
    if (m_color == color)
        return;
    m_color = color;
    look();
    Q_EMIT lookChanged();
}

void SecretSurface::setLines(int lines)
{
    if (m_lines == lines)
        return;
    m_lines = std::max(lines, 1);
    look();
    Q_EMIT lookChanged();
}

qreal SecretSurface::rowHeight() const
{
    return QFontMetricsF(m_font).lineSpacing();
}

void SecretSurface::look()
{
    setImplicitHeight(std::ceil(m_lines * rowHeight()));
    update();
}

void SecretSurface::paint(QPainter* painter)
{
    painter->setPen(m_color);
    painter->setBrush(m_color);
    if (isShown())
        paintLetters(*painter);
    else
        paintDots(*painter, pointsIn(secret()));
}

void SecretSurface::paintDots(QPainter& painter, int count) const
{
    const qreal dot = m_font.pixelSize() * 0.3, step = 2 * dot;
    const int room = std::max(1, static_cast<int>(width() / step) - 1), seen = std::min(count, room);
    painter.save();
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < seen; ++i)
        painter.drawEllipse(QRectF(i * step, (height() - dot) / 2, dot, dot));
    painter.restore();
    if (isTyping())
        paintMark(painter, {seen * step, (height() - rowHeight()) / 2});
}

void SecretSurface::paintLetters(QPainter& painter) const
{
    const std::string_view text = secret();
    const QRawFont raw = QRawFont::fromFont(m_font);
    SecretRoom<QChar> units(text.size());
    SecretRoom<quint32> glyphs(text.size());
    SecretRoom<QPointF> advances(text.size()), places(text.size());
    if (!raw.isValid() || !units.ok() || !glyphs.ok() || !advances.ok() || !places.ok())
        return;
    const int unitCount = decode(text, units.data());
    int count = glyphs.count();
    if (unitCount > 0 && !raw.glyphIndexesForChars(units.data(), unitCount, glyphs.data(), &count))
        return;
    count = unitCount > 0 ? count : 0;
    if (count > 0)
        raw.advancesForGlyphIndexes(glyphs.data(), advances.data(), count);
    // a row ends behind a space or hyphen where it can
    qreal x = 0;
    int row = 0, rowStart = 0;
    for (int i = 0; i < count; ++i) {
        if (x + advances.data()[i].x() > width() && i > rowStart) {
            int cut = i;
            if (count == unitCount)
                for (int k = i; k > rowStart; --k)
                    if (units.data()[k - 1] == QLatin1Char(' ') || units.data()[k - 1] == QLatin1Char('-')) {
                        cut = k;
                        break;
                    }
            ++row;
            x = 0;
            for (int k = cut; k < i; ++k) {
                places.data()[k] = {x, row * rowHeight()};
                x += advances.data()[k].x();
            }
            rowStart = cut;
        }
        places.data()[i] = {x, row * rowHeight()};
        x += advances.data()[i].x();
    }
    const qreal up = std::max(0, row + 1 - m_lines) * rowHeight();
    const qreal top = std::max(0.0, (height() - (row + 1) * rowHeight()) / 2);
    if (count > 0) {
        QGlyphRun run;
        run.setRawFont(raw);
        run.setRawData(glyphs.data(), places.data(), count);
        painter.drawGlyphRun({0, top - up + raw.ascent()}, run);
    }
    if (isTyping())
        paintMark(painter, {x, top - up + row * rowHeight()});
}

void SecretSurface::paintMark(QPainter& painter, QPointF at) const
{
    const qreal thick = std::max(2.0, m_font.pixelSize() / 10.0);
    painter.fillRect(QRectF(std::min(at.x() + thick, width() - thick), at.y(), thick, rowHeight()), m_color);
}
