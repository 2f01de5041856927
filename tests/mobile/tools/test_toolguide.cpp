// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/tools/ironeditor.h"
#include "mobile/tools/leadeditor.h"
#include "mobile/tools/rackeditor.h"
#include "mobile/tools/scaleeditor.h"
#include "mobile/tools/toolguide.h"

#include <QtTest>
#endif

using namespace steelyard;

namespace {

using Page = MeasureGuide::Page;

/// A guide over a form of its own kind.
template <typename Editor>
struct Guided {
    DeskService desk;
    Editor form;
    ToolGuide guide;

    Guided()
    {
        form.setDeskService(&desk);
        guide.setForm(&form);
    }
    QStringList key(std::initializer_list<double> numbers)
    {
        QStringList asked;
        for (const double number : numbers) {
            asked << guide.key();
            if (!form.keepNumber(guide.key(), number).kept())
                asked << QStringLiteral("refused");
            guide.next();
        }
        return asked;
    }
};

}

/// Measuring a tool in steps: which number comes next, back and on again, and where it ends.
class ToolGuideTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void scale();
    void scaleWithOneMoreMass();
    void barAsksForNoCount();
    void plates();
    void lead();
    void rack();
    void placesForBandsOnly();
    void goesOnWhereItWas();
    void everyStepHasItsWords();
};

void ToolGuideTest::scale()
{
    Guided<ScaleEditor> it;
    QVERIFY(it.guide.page() == Page::Begin);
    QVERIFY(!it.guide.back());
    QCOMPARE(it.guide.progress(), QStringLiteral("step 1"));
    it.guide.next();
    QCOMPARE(it.guide.progress(), QStringLiteral("step 2 of 6"));
    QCOMPARE(it.key({0, 0.1, 20, 20.1}), (QStringList{"empty", "step", "known:0", "read:0"}));
    QVERIFY(it.guide.page() == Page::Result);
    QCOMPARE(it.guide.heading(), it.form.words().title);
    it.guide.next();
    QVERIFY(it.guide.page() == Page::Result);
    QVERIFY(it.guide.back());
    QCOMPARE(it.guide.key(), QStringLiteral("read:0"));
    QCOMPARE(it.guide.part(), QStringLiteral("read"));
}

void ToolGuideTest::scaleWithOneMoreMass()
{
    Guided<ScaleEditor> it;
    it.guide.next();
    it.key({0, 0.1, 20, 20.1});
    it.guide.more();
    QCOMPARE(it.guide.key(), QStringLiteral("known:1"));
    QCOMPARE(it.key({40, 40.1}), (QStringList{"known:1", "read:1"}));
    QVERIFY(it.guide.page() == Page::Result);
    QVERIFY(it.form.answer().contains(QStringLiteral("40 kg")));
}

void ToolGuideTest::barAsksForNoCount()
{
    Guided<IronEditor> it;
    it.guide.choose(0);
    QCOMPARE(it.key({20, 20.3, 0.1}), (QStringList{"marked", "read", "step"}));
    QVERIFY(it.guide.page() == Page::Result);
    QVERIFY(it.form.canKeep());
}

void ToolGuideTest::plates()
{
    Guided<IronEditor> it;
    it.guide.choose(1);
    QCOMPARE(it.key({20, 2, 40.6, 0.1}), (QStringList{"marked", "count", "read", "step"}));
    QVERIFY(it.form.answer().contains(QStringLiteral("Each weighs 20.30 ± 0.03 kg")));
}

void ToolGuideTest::lead()
{
    Guided<LeadEditor> it;
    it.guide.next();
    QCOMPARE(it.key({62, 0.35}), (QStringList{"length", "mass"}));
    QVERIFY(it.guide.page() == Page::Result);
}

void ToolGuideTest::rack()
{
    Guided<RackEditor> it;
    it.guide.choose(0);
    QCOMPARE(it.key({41.5, 5, 28}), (QStringList{"lowest", "spacing", "count"}));
    QVERIFY(it.guide.page() == Page::Result);
    QVERIFY(it.guide.gain().contains(QStringLiteral("anchored")));
    it.guide.more();
    QCOMPARE(it.key({6}), QStringList{"anchor:0"});
    QVERIFY(it.guide.page() == Page::Result);
    // one more that is not keyed after all
    it.guide.more();
    QVERIFY(it.guide.back());
    QCOMPARE(it.guide.key(), QStringLiteral("anchor:0"));
    it.guide.next();
    QVERIFY(it.guide.page() == Page::Result);
}

void ToolGuideTest::placesForBandsOnly()
{
    Guided<RackEditor> it;
    it.guide.choose(1);
    QCOMPARE(it.key({12}), QStringList{"anchor:0"});
    QVERIFY(it.guide.page() == Page::Result);
    QVERIFY(it.form.canKeep());
}

void ToolGuideTest::goesOnWhereItWas()
{
    Guided<ScaleEditor> it;
    it.guide.next();
    it.key({0, 0.1, 20});
    ToolGuide again;
    again.setForm(&it.form);
    QCOMPARE(again.key(), QStringLiteral("read:0"));
    it.form.throwDraft();
    again.resume();
    QVERIFY(again.page() == Page::Begin);
}

void ToolGuideTest::everyStepHasItsWords()
{
    const auto wordy = [](auto& it, int choice, std::initializer_list<double> numbers) {
        QVERIFY(!it.guide.heading().isEmpty() && !it.form.words().intro.isEmpty() && !it.guide.progress().isEmpty());
        it.guide.choose(choice);
        for (const double number : numbers) {
            QVERIFY2(!it.guide.heading().isEmpty() && !it.guide.how().isEmpty(), qPrintable(it.guide.key()));
            it.key({number});
        }
        QVERIFY(it.guide.page() == Page::Result && it.guide.how().isEmpty() && !it.guide.heading().isEmpty());
    };
    Guided<ScaleEditor> scale;
    wordy(scale, -1, {0, 0.1, 20, 20});
    Guided<IronEditor> iron;
    wordy(iron, 1, {20, 2, 40, 0.1});
    Guided<LeadEditor> lead;
    wordy(lead, -1, {30, 0});
    Guided<RackEditor> rack;
    wordy(rack, 0, {42, 5, 26});
}

QTEST_GUILESS_MAIN(ToolGuideTest)
#include "test_toolguide.moc"
