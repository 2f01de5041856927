// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gallery/shots.h"

#include <QApplication>
#include <QDirIterator>
#include <QPainter>
#include <QRegularExpression>
#include <QtTest>

Q_DECLARE_METATYPE(Shots::Look)

namespace {

/// How many pixels of the small pictures differ by more than this in a channel. On the system that the pictures were taken on nothing
/// does; another version of the toolkit may set a letter otherwise, so there only a change that anybody sees counts.
constexpr int noticed = 10, gross = 70;

int differing(const QImage& a, const QImage& b, int by)
{
    if (a.size() != b.size())
        return a.width() * a.height();
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QRgb one = a.pixel(x, y), other = b.pixel(x, y);
            const int most = qMax(qAbs(qRed(one) - qRed(other)), qMax(qAbs(qGreen(one) - qGreen(other)), qAbs(qBlue(one) - qBlue(other))));
            count += most > by ? 1 : 0;
        }
    return count;
}

}

/// The controls look as they did, in every theme and text size, and none is missing from the gallery.
class GalleryPicturesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void looksAsItDid_data();
    void looksAsItDid();
    void aChangeIsNoticed_data();
    void aChangeIsNoticed();
    void everyControlIsShown();

private:
    std::unique_ptr<Shots> m_shots;
};

void GalleryPicturesTest::initTestCase()
{
    m_shots = std::make_unique<Shots>();
    QVERIFY(m_shots->ready());
    QVERIFY(m_shots->names().size() > 20);
}

void GalleryPicturesTest::looksAsItDid_data()
{
    QTest::addColumn<Shots::Look>("look");
    for (const Shots::Look& look : Shots::looks())
        QTest::newRow(qPrintable(look.name())) << look;
}

void GalleryPicturesTest::looksAsItDid()
{
    QFETCH(const Shots::Look, look);
    const QImage kept(QStringLiteral(GALLERY_DATA "/%1.png").arg(look.name())), now = m_shots->small(look);
    QVERIFY2(!kept.isNull(), "build the target renew_gallery_pictures, look at the gallery, keep them");
    const bool same = kept.text(QStringLiteral("Qt")) == QLatin1String(qVersion());
    const int cell = Shots::wide / Shots::share;
    QCOMPARE(kept.size(), now.size());
    QStringList changed;
    for (int i = 0; i < m_shots->names().size(); ++i) {
        const QRect part(i * cell, 0, cell, kept.height());
        const int count = differing(kept.copy(part).convertToFormat(QImage::Format_RGB32), now.copy(part), same ? noticed : gross);
        if (count > (same ? 0 : part.width() * part.height() / 10))
            changed << QStringLiteral("%1 (%2 places)").arg(m_shots->names().at(i)).arg(count);
    }
    if (!changed.isEmpty())
        now.save(look.name() + QStringLiteral("-now.png"));
    QVERIFY2(changed.isEmpty(), qPrintable(changed.join(QStringLiteral(", "))));
}

void GalleryPicturesTest::aChangeIsNoticed_data()
{
    QTest::addColumn<QRect>("blot");
    QTest::newRow("nothing") << QRect();
    QTest::newRow("the edge of a key gone") << QRect(16, 160, 3, 120);
    QTest::newRow("a word gone") << QRect(30, 150, 60, 40);
    QTest::newRow("a key a little higher") << QRect(20, 1480, 320, 4);
}

void GalleryPicturesTest::aChangeIsNoticed()
{
    QFETCH(const QRect, blot);
    const QImage before = m_shots->picture(0, {});
    QImage after = before;
    QPainter painter(&after);
    // paper over it, or ink on paper
    const QColor under = before.pixelColor(0, 0);
    painter.fillRect(blot, blot.width() > 100 ? QColor(Qt::black) : under);
    painter.end();
    QCOMPARE(differing(Shots::smaller(before), Shots::smaller(after), noticed) > 0, before != after);
    QCOMPARE(before != after, !blot.isNull());
}

void GalleryPicturesTest::everyControlIsShown()
{
    for (int i = 0; i < m_shots->names().size(); ++i)
        QVERIFY(!m_shots->picture(i, {}).isNull());
    QStringList missing;
    int count = 0;
    for (const char* part : {"keys", "controls", "drawings", "charts"}) {
        QDirIterator files(QStringLiteral(QML_FOLDER "/%1").arg(QLatin1String(part)), {QStringLiteral("*.qml")}, QDir::Files);
        while (files.hasNext()) {
            QFile file(files.next());
            QVERIFY(file.open(QIODevice::ReadOnly));
            ++count;
            // a singleton is nowhere on a page
            if (!file.readAll().startsWith("// SPDX-License-Identifier: GPL-3.0-or-later\npragma Singleton") && !m_shots->seenTypes().contains(files.fileInfo().baseName()))
                missing << files.fileInfo().baseName();
        }
    }
    QVERIFY(count > 50);
    missing.sort();
    QCOMPARE(missing, QStringList());
}

int main(int argc, char** argv)
{
    QApplication app(argc, argv); // Qt Charts draws with widgets
    GalleryPicturesTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "test_pictures.moc"
