// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/door/secretfield.h"
#include "mobile/door/secretnote.h"
#include "mobile/typeface.h"

#include <QClipboard>
#include <QInputMethodEvent>
#include <QQuickWindow>
#include <QSignalSpy>
#include <QtTest>
#endif

using namespace steelyard;

/// What is typed arrives whole, in order and in one form, and is seen only when asked for.
class SecretFieldTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void keysArriveInOrder();
    void beyondAscii();
    void rubsOutOneCharacter();
    void shortcutsAreNotTyped();
    void enterAccepts();
    void pasted();
    void fromAnInputMethod();
    void normalForm_data();
    void normalForm();
    void tooLongIsRefusedWhole();
    void takenLeavesNothing();
    void hiddenLooksTheSameForEveryText();
    void shownLooksLikeTheText();
    void longOnesShowTheirEnd();
    void aNoteIsPainted();
    void tellsAnInputMethodNothing();

private:
    [[nodiscard]] QImage painted() { return m_window.grabWindow(); }
    void type(const QString& text);

    QQuickWindow m_window;
    SecretField* m_field = nullptr;
};

void SecretFieldTest::initTestCase()
{
    QVERIFY(typeface::install());
    m_window.resize(300, 60);
    m_window.setColor(QColor(255, 255, 255));
    m_window.show();
    m_window.requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(&m_window));
}

void SecretFieldTest::init()
{
    delete m_field;
    m_field = new SecretField(m_window.contentItem());
    m_field->setSize({300, 60});
    QFont font(QStringLiteral("Steelyard Text"));
    font.setPixelSize(20);
    m_field->setFont(font);
    m_field->setColor(QColor(0, 0, 0));
    m_field->setLines(2);
    m_field->forceActiveFocus();
}

void SecretFieldTest::type(const QString& text)
{
    for (const QChar c : text) {
        QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(c));
        QCoreApplication::sendEvent(m_field, &event);
    }
}

void SecretFieldTest::keysArriveInOrder()
{
    QSignalSpy edited(m_field, &SecretField::edited);
    for (const char key : std::string_view("Correct horse, 9"))
        QTest::keyClick(&m_window, key);
    QCOMPARE(m_field->view(), std::string_view("Correct horse, 9"));
    QCOMPARE(m_field->count(), 16);
    QCOMPARE(edited.count(), 16);
}

void SecretFieldTest::beyondAscii()
{
    QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString::fromUcs4(U"\U0001F511"));
    type(QStringLiteral("Größe € ж 力"));
    QCoreApplication::sendEvent(m_field, &event);
    QCOMPARE(m_field->view(), std::string_view("Größe € ж 力\xF0\x9F\x94\x91"));
    QCOMPARE(m_field->count(), 12);
}

void SecretFieldTest::rubsOutOneCharacter()
{
    type(QStringLiteral("abö"));
    QTest::keyClick(&m_window, Qt::Key_Backspace);
    QCOMPARE(m_field->view(), std::string_view("ab"));
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(&m_window, Qt::Key_Backspace);
    QCOMPARE(m_field->count(), 0);
}

void SecretFieldTest::shortcutsAreNotTyped()
{
    QTest::keyClick(&m_window, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClick(&m_window, Qt::Key_Escape);
    QTest::keyClick(&m_window, Qt::Key_Left);
    QCOMPARE(m_field->count(), 0);
}

void SecretFieldTest::enterAccepts()
{
    QSignalSpy accepted(m_field, &SecretField::accepted);
    QTest::keyClick(&m_window, Qt::Key_Return);
    QTest::keyClick(&m_window, Qt::Key_Enter);
    QCOMPARE(accepted.count(), 2);
    QCOMPARE(m_field->count(), 0);
}

void SecretFieldTest::pasted()
{
    QGuiApplication::clipboard()->setText(QStringLiteral("two\nlines "));
    QTest::keySequence(&m_window, QKeySequence(QKeySequence::Paste));
    QCOMPARE(m_field->view(), std::string_view("twolines "));
}

void SecretFieldTest::fromAnInputMethod()
{
    type(QStringLiteral("no"));
    QInputMethodEvent composing(QStringLiteral("half"), {});
    QCoreApplication::sendEvent(m_field, &composing);
    QCOMPARE(m_field->view(), std::string_view("no"));
    QInputMethodEvent done;
    done.setCommitString(QStringLiteral("ël"), -1, 1);
    QCoreApplication::sendEvent(m_field, &done);
    QCOMPARE(m_field->view(), std::string_view("nël"));
}

void SecretFieldTest::normalForm_data()
{
    // Unicode Standard Annex 15, figures 3 to 5: composed and decomposed forms of one text have one NFC
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QByteArray>("taken");
    QTest::newRow("plain") << QStringLiteral("plain text 1") << QByteArray("plain text 1");
    QTest::newRow("composed") << QString::fromUtf8("\u00E9") << QByteArray("\u00E9");
    QTest::newRow("decomposed") << QString::fromUtf8("e\u0301") << QByteArray("\u00E9");
    QTest::newRow("angstrom sign") << QString::fromUtf8("\u212B") << QByteArray("\u00C5");
    QTest::newRow("two marks in either order") << QString::fromUtf8("q\u0307\u0323") << QByteArray("q\u0323\u0307");
    QTest::newRow("hangul") << QString::fromUtf8("\u1112\u1161\u11AB") << QByteArray("\uD55C");
}

void SecretFieldTest::normalForm()
{
    QFETCH(QString, typed);
    QFETCH(QByteArray, taken);
    type(typed);
    const auto text = m_field->take();
    QCOMPARE(QByteArray(text.view().data(), qsizetype(text.view().size())), taken);
}

void SecretFieldTest::tooLongIsRefusedWhole()
{
    type(QString(qsizetype(seal::SecretText::largestSize), QLatin1Char('x')));
    QVERIFY(!m_field->isFull());
    type(QStringLiteral("y"));
    QVERIFY(m_field->isFull());
    QCOMPARE(m_field->count(), int(seal::SecretText::largestSize));
    QTest::keyClick(&m_window, Qt::Key_Backspace);
    QVERIFY(!m_field->isFull());
}

void SecretFieldTest::takenLeavesNothing()
{
    type(QStringLiteral("secret"));
    const auto text = m_field->take();
    QCOMPARE(text.view(), std::string_view("secret"));
    QCOMPARE(m_field->count(), 0);
    type(QStringLiteral("again"));
    m_field->wipe();
    QCOMPARE(m_field->count(), 0);
}

void SecretFieldTest::hiddenLooksTheSameForEveryText()
{
    type(QStringLiteral("iiii"));
    const QImage first = painted();
    m_field->wipe();
    const QImage empty = painted();
    type(QStringLiteral("WÖm."));
    const QImage second = painted();
    QCOMPARE(first, second);
    QVERIFY(first != empty);
}

void SecretFieldTest::shownLooksLikeTheText()
{
    type(QStringLiteral("shown"));
    const QImage hidden = painted();
    m_field->setRevealed(true);
    const QImage first = painted();
    QVERIFY(first != hidden);
    m_field->wipe();
    type(QStringLiteral("other"));
    QVERIFY(painted() != first);
    m_field->wipe();
    type(QStringLiteral("shown"));
    QCOMPARE(painted(), first);
    m_field->setRevealed(false);
    QCOMPARE(painted(), hidden);
}

void SecretFieldTest::longOnesShowTheirEnd()
{
    m_field->setRevealed(true);
    type(QString(400, QLatin1Char('m')));
    const QImage before = painted();
    QTest::keyClick(&m_window, Qt::Key_Backspace);
    QVERIFY(painted() != before);
}

void SecretFieldTest::aNoteIsPainted()
{
    delete std::exchange(m_field, nullptr);
    SecretNote note;
    auto* letters = new SecretLetters(m_window.contentItem());
    letters->setSize({300, 60});
    letters->setColor(QColor(0, 0, 0));
    letters->setNote(&note);
    const QImage before = painted();
    seal::SecretText text;
    QVERIFY(text.append("horse").ok());
    note.set(std::move(text));
    const QImage shown = painted();
    QVERIFY(shown != before);
    note.wipe();
    QCOMPARE(painted(), before);
    delete letters;
}

void SecretFieldTest::tellsAnInputMethodNothing()
{
    type(QStringLiteral("secret"));
    const auto hints = Qt::InputMethodHints(m_field->inputMethodQuery(Qt::ImHints).toInt());
    QVERIFY(hints.testFlag(Qt::ImhSensitiveData) && hints.testFlag(Qt::ImhHiddenText) && hints.testFlag(Qt::ImhNoPredictiveText));
    for (const auto query : {Qt::ImSurroundingText, Qt::ImCurrentSelection, Qt::ImTextBeforeCursor, Qt::ImTextAfterCursor})
        QVERIFY(!m_field->inputMethodQuery(query).isValid());
    QVERIFY(m_field->inputMethodQuery(Qt::ImEnabled).toBool());
}

QTEST_MAIN(SecretFieldTest)
#include "test_secretfield.moc"
