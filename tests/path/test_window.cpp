// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "tests/mobile/standinhouse.h"
#include "tests/mobile/people.h"
#endif

#include <QApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QtTest>

namespace {

QQuickItem* named(QQuickItem* item, const QString& name)
{
    if (!item->isVisible())
        return nullptr;
    if (item->objectName() == name)
        return item;
    for (QQuickItem* child : item->childItems())
        if (QQuickItem* found = named(child, name))
            return found;
    return nullptr;
}

}

/// The app's window on a desktop: as large as a phone, turned, over all of the display and back.
class WindowTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void opensAsAPhone();
    void f11FillsTheDisplayAndBack();
    void turningLosesNothing();
    void growsIntoATablet();
    void backAndEscAreTheArrow();
    void closedOverAFormItIsThereAgain();

private:
    void open();
    QQuickItem* part(const QString& name);
    void press(const QString& name);

    std::unique_ptr<StandInHouse> m_house;
    std::unique_ptr<QQmlApplicationEngine> m_engine;
    QQuickWindow* m_window = nullptr;
};

void WindowTest::init()
{
    m_house = std::make_unique<StandInHouse>();
    m_house->open();
    open();
}

void WindowTest::open()
{
    m_engine = std::make_unique<QQmlApplicationEngine>();
    m_engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    m_engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Steelyard/Ui/Main.qml")));
    QVERIFY(!m_engine->rootObjects().isEmpty());
    m_window = qobject_cast<QQuickWindow*>(m_engine->rootObjects().constFirst());
    QVERIFY(QTest::qWaitForWindowExposed(m_window));
}

void WindowTest::cleanup()
{
    m_engine.reset();
    m_house.reset();
}

QQuickItem* WindowTest::part(const QString& name)
{
    QQuickItem* found = nullptr;
    (void)QTest::qWaitFor([&] { return (found = named(m_window->contentItem(), name)) != nullptr; }, 5000);
    return found;
}

void WindowTest::press(const QString& name)
{
    QQuickItem* item = part(name);
    QVERIFY2(item, qPrintable(name));
    QVERIFY(QMetaObject::invokeMethod(item, "click"));
    QCoreApplication::processEvents();
}

void WindowTest::opensAsAPhone()
{
    QCOMPARE(m_window->visibility(), QWindow::Windowed);
    QVERIFY(m_window->width() >= 360 && m_window->width() <= 480);
    QVERIFY(m_window->height() > 1.5 * m_window->width() && m_window->height() <= 1000);
    // keys in a row below the page, as on a phone
    QVERIFY(part(QStringLiteral("stepUp")));
}

void WindowTest::f11FillsTheDisplayAndBack()
{
    QTest::keyClick(m_window, Qt::Key_F11);
    QTRY_COMPARE(m_window->visibility(), QWindow::FullScreen);
    QTest::keyClick(m_window, Qt::Key_F11);
    QTRY_COMPARE(m_window->visibility(), QWindow::Windowed);
}

/// Half a number is on the keypad while the phone is turned on its side, and when it is turned back.
void WindowTest::turningLosesNothing()
{
    press(QStringLiteral("stepType"));
    for (const char* key : {"key 1", "key 0", "key 7"})
        press(QLatin1String(key));
    const auto keyed = [&] { return part(QStringLiteral("keyNumber"))->property("text").toString(); };
    QCOMPARE(keyed(), QStringLiteral("107"));
    const QSize upright = m_window->size();
    for (const QSize& size : {upright.transposed(), upright, QSize(1280, 800), upright}) {
        m_window->resize(size);
        QTRY_COMPARE(m_window->contentItem()->width(), qreal(size.width()));
        QTest::qWait(20);
        QCOMPARE(keyed(), QStringLiteral("107"));
        QVERIFY(part(QStringLiteral("mainAction")) && part(QStringLiteral("key 5")));
    }
    press(QStringLiteral("key point"));
    press(QStringLiteral("key 5"));
    press(QStringLiteral("mainAction"));
    QCOMPARE(m_house->desk.desk().setup().bar.wanted.si(), 107.5);
}

void WindowTest::growsIntoATablet()
{
    m_window->resize(1280, 800);
    QTRY_COMPARE(m_window->contentItem()->width(), 1280.0);
    QTest::qWait(20);
    QQuickItem* place = part(QStringLiteral("load"));
    QVERIFY(place);
    // two columns: the load stands in the right one, and no more under the thumb
    QVERIFY(place->mapToScene(QPointF(0, 0)).x() > 400);
}

/// Nothing was touched but keys on the page: whatever is shown hears Back and Esc.
void WindowTest::backAndEscAreTheArrow()
{
    press(QStringLiteral("barHere"));
    QVERIFY(part(QStringLiteral("field:bar")));
    press(QStringLiteral("field:bar"));
    QVERIFY(part(QStringLiteral("key 5")));
    QTest::keyClick(m_window, Qt::Key_Back);
    QTRY_VERIFY(!named(m_window->contentItem(), QStringLiteral("key 5")));
    QVERIFY(part(QStringLiteral("field:bar")));
    QTest::keyClick(m_window, Qt::Key_Escape);
    QTRY_VERIFY(!named(m_window->contentItem(), QStringLiteral("field:bar")));
    QVERIFY(part(QStringLiteral("stepUp")));
    // from the first page it goes nowhere, and closes nothing
    QTest::keyClick(m_window, Qt::Key_Back);
    QTest::qWait(50);
    QVERIFY(m_window->isVisible() && part(QStringLiteral("stepUp")));
}

/// The window is closed in the middle of a name; nothing was kept, and it stands there when the app is opened again.
void WindowTest::closedOverAFormItIsThereAgain()
{
    const auto toTheForm = [this] {
        auto* flow = m_window->property("flow").value<QQuickItem*>();
        QVERIFY(flow && QMetaObject::invokeMethod(flow, "go", Q_ARG(int, 0)));
        QVERIFY(part(QStringLiteral("add")));
        press(QStringLiteral("add"));
    };
    toTheForm();
    QQuickItem* name = part(QStringLiteral("name"));
    QVERIFY(name);
    auto* field = name->property("field").value<QQuickItem*>();
    QVERIFY(field);
    field->forceActiveFocus();
    for (const char key : {'Z', 'e', 'd'})
        QTest::keyClick(m_window, key);
    QVERIFY(m_window->close());
    QVERIFY(m_house->book.book().athletes().empty());
    open();
    toTheForm();
    QCOMPARE(part(QStringLiteral("name"))->property("text").toString(), QStringLiteral("Zed"));
}

int main(int argc, char** argv)
{
    QApplication app(argc, argv); // Qt Charts draws with widgets
    WindowTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "test_window.moc"
