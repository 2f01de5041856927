// SPDX-License-Identifier: GPL-3.0-or-later
#ifndef Q_MOC_RUN
#include "mobile/door/vaultmaker.h"

#include "tests/mobile/door/fakevault.h"

#include <QSignalSpy>
#include <QtTest>

#include <string>
#endif

using namespace steelyard;

/// The first start: nothing is made before passphrase and recovery code have been typed as they are.
class VaultMakerTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void fiveWordsTypedBack();
    void otherWordsAreOthers();
    void wordsTypedWrongAreRefused();
    void ownIsTwelveOrMore();
    void ownTwiceTheSame();
    void theCodeTypedBackGroupByGroup();
    void aWrongGroupIsMarked();
    void anotherCodeIsNotThisOne();
    void madeWithWhatWasTyped();
    void backForgetsWhatWasTyped();

private:
    static void type(SecretField& field, std::string_view text);
    void upToTheCode();

    std::unique_ptr<FakeVault> m_vault;
    std::unique_ptr<VaultService> m_door;
    std::unique_ptr<VaultMaker> m_maker;
};

void VaultMakerTest::init()
{
    m_vault = std::make_unique<FakeVault>();
    m_door = std::make_unique<VaultService>(*m_vault, VaultService::Receive(), [] { return true; });
    m_maker = std::make_unique<VaultMaker>();
    m_maker->setVault(m_door.get());
}

void VaultMakerTest::type(SecretField& field, std::string_view text)
{
    for (const char c : text) {
        QKeyEvent event(QEvent::KeyPress, 0, Qt::NoModifier, QString(QLatin1Char(c)));
        QCoreApplication::sendEvent(&field, &event);
    }
}

void VaultMakerTest::upToTheCode()
{
    m_maker->choose(false);
    SecretField first, second;
    type(first, "a long sentence");
    type(second, "a long sentence");
    QVERIFY(m_maker->takePassphrase(&first, &second));
    QCOMPARE(m_maker->step(), VaultMaker::Step::Code);
}

void VaultMakerTest::fiveWordsTypedBack()
{
    m_maker->choose(true);
    QVERIFY(m_maker->isDrawn());
    QCOMPARE(m_maker->step(), VaultMaker::Step::Passphrase);
    const std::string words(m_maker->words()->view());
    QCOMPARE(std::count(words.begin(), words.end(), ' '), 4);
    SecretField first, second;
    type(second, words);
    QVERIFY(m_maker->takePassphrase(&first, &second));
    QCOMPARE(m_maker->step(), VaultMaker::Step::Code);
    QVERIFY(m_maker->words()->view().empty());
    QCOMPARE(m_maker->code()->view().size(), std::size_t(35));
}

void VaultMakerTest::otherWordsAreOthers()
{
    m_maker->choose(true);
    const std::string before(m_maker->words()->view());
    m_maker->drawAgain();
    QVERIFY(before != m_maker->words()->view());
}

void VaultMakerTest::wordsTypedWrongAreRefused()
{
    m_maker->choose(true);
    SecretField first, second;
    type(second, "not those five words");
    QVERIFY(!m_maker->takePassphrase(&first, &second));
    QVERIFY(!m_maker->refusal().isEmpty());
    QCOMPARE(m_maker->step(), VaultMaker::Step::Passphrase);
    QVERIFY(second.count() > 0);
    m_maker->hush();
    QVERIFY(m_maker->refusal().isEmpty());
}

void VaultMakerTest::ownIsTwelveOrMore()
{
    m_maker->choose(false);
    SecretField first, second;
    type(first, "elevenchars");
    type(second, "elevenchars");
    QVERIFY(!m_maker->takePassphrase(&first, &second));
    QVERIFY2(m_maker->refusal().contains(QStringLiteral("12")), qPrintable(m_maker->refusal()));
    type(first, "1");
    type(second, "1");
    QVERIFY(m_maker->takePassphrase(&first, &second));
    QCOMPARE(first.count() + second.count(), 0);
}

void VaultMakerTest::ownTwiceTheSame()
{
    m_maker->choose(false);
    SecretField first, second;
    type(first, "a long sentence");
    type(second, "a long Sentence");
    QVERIFY(!m_maker->takePassphrase(&first, &second));
    QVERIFY(!m_maker->refusal().isEmpty());
}

void VaultMakerTest::theCodeTypedBackGroupByGroup()
{
    upToTheCode();
    const std::string code(m_maker->code()->view());
    m_maker->codeWritten();
    SecretField typed;
    for (int group = 0; group < 5; ++group) {
        type(typed, code.substr(std::size_t(group) * 7, group == 4 ? 7 : 6));
        m_maker->compare(&typed);
        QCOMPARE(m_maker->groups()[group], 2);
        QCOMPARE(m_maker->isAgreed(), group == 4);
        if (group < 4) {
            QCOMPARE(m_maker->groups()[group + 1], 0);
            type(typed, "-");
        }
    }
}

void VaultMakerTest::aWrongGroupIsMarked()
{
    upToTheCode();
    std::string code(m_maker->code()->view());
    m_maker->codeWritten();
    code[8] = code[8] == 'A' ? 'B' : 'A';
    SecretField typed;
    type(typed, code);
    m_maker->compare(&typed);
    QCOMPARE(m_maker->groups(), QList<int>({2, 1, 2, 2, 2}));
    QVERIFY(!m_maker->isAgreed());
    QVERIFY(!m_maker->finish(&typed));
    QCOMPARE(typed.count(), int(code.size()));
}

void VaultMakerTest::anotherCodeIsNotThisOne()
{
    upToTheCode();
    const std::string before(m_maker->code()->view());
    QVERIFY(m_maker->back());
    upToTheCode();
    QVERIFY(before != m_maker->code()->view());
    m_maker->codeWritten();
    SecretField typed;
    type(typed, before);
    m_maker->compare(&typed);
    QVERIFY(!m_maker->isAgreed());
    QVERIFY(!m_maker->refusal().isEmpty());
}

void VaultMakerTest::madeWithWhatWasTyped()
{
    upToTheCode();
    const std::string code(m_maker->code()->view());
    m_maker->codeWritten();
    SecretField typed;
    type(typed, code);
    QVERIFY(m_maker->finish(&typed));
    QCOMPARE(m_vault->passphrase, std::string("a long sentence"));
    QCOMPARE(typed.count(), 0);
    QVERIFY(m_maker->code()->view().empty());
    QTRY_COMPARE(m_door->state(), VaultService::State::Open);
}

void VaultMakerTest::backForgetsWhatWasTyped()
{
    QVERIFY(!m_maker->back());
    upToTheCode();
    m_maker->codeWritten();
    QVERIFY(m_maker->back());
    QCOMPARE(m_maker->step(), VaultMaker::Step::Code);
    QVERIFY(!m_maker->code()->view().empty());
    QVERIFY(m_maker->back());
    QCOMPARE(m_maker->step(), VaultMaker::Step::Passphrase);
    QVERIFY(m_maker->code()->view().empty());
    QVERIFY(m_maker->back());
    QCOMPARE(m_maker->step(), VaultMaker::Step::Choose);
}

QTEST_MAIN(VaultMakerTest)
#include "test_vaultmaker.moc"
