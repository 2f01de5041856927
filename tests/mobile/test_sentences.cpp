// SPDX-License-Identifier: GPL-3.0-or-later
// the meta-object compiler of Qt 6.4 cannot read the standard library's concepts
#ifndef Q_MOC_RUN
#include "mobile/text/sentences.h"

#include "core/work/measuredkit.h"
#include "tests/core/work/samples.h"

#include <QLocale>
#include <QSet>
#include <QtTest>
#endif

using namespace steelyard;

namespace {

constexpr int lastWarning = static_cast<int>(SetupWarningCode::SleeveFull);
constexpr int lastRefusal = static_cast<int>(Refusal::UnknownUnit);
constexpr int lastEntryRefusal = static_cast<int>(EntryRefusal::AboveMost);
constexpr int lastCaution = static_cast<int>(CautionCode::BandsAbove);

/// What is wrong with a sentence, empty when nothing is.
QString faultOf(const QString& sentence)
{
    constexpr int most = 140;
    if (sentence.trimmed().isEmpty())
        return QStringLiteral("empty");
    if (sentence.contains(QLatin1Char('%')) && !sentence.contains(QStringLiteral(" % ")))
        return QStringLiteral("a place left open: ") + sentence;
    if (sentence.contains(QStringLiteral("  ")) || sentence != sentence.trimmed())
        return QStringLiteral("blanks astray: ") + sentence;
    if (sentence.size() > most)
        return QStringLiteral("%1 characters: %2").arg(sentence.size()).arg(sentence);
    return {};
}

bool tellsWhatToDo(const QString& sentence)
{
    return sentence.endsWith(QLatin1Char('.'));
}

Setup withBands(bool above)
{
    Setup setup;
    const auto fit = bandFitFrom(samples::band());
    BandHang hang;
    hang.above = above;
    hang.anchorHeight = metres(above ? 2.2 : 0);
    for (auto* side : {&setup.left, &setup.right})
        side->emplace_back(*HungBand::of(Band{*fit}, hang));
    return setup;
}

}

#define VERIFY_SENTENCE(text) QVERIFY2(faultOf(text).isEmpty(), qPrintable(faultOf(text)))

/// Every code has a sentence of its own that says what to do next.
class SentencesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { QLocale::setDefault(QLocale(QStringLiteral("en"))); }
    void everyWarning();
    void warningsNameSideAndHeight();
    void slackBelowAndSlackAbove();
    void weakAnchor();
    void onlyLimitsForbid();
    void everyRefusal();
    void entryNames_data();
    void entryNames();
    void everyEntryRefusal();
    void entryRefusalsNameTheLimit();
    void oneFigureIsOneFigure();
    void everyCaution();
    void numbersInTheLocalesDigits();
};

void SentencesTest::everyWarning()
{
    const Setup setup = withBands(false);
    QSet<QString> heads;
    for (int code = 0; code <= lastWarning; ++code)
        for (const Side side : {Side::Left, Side::Right, Side::Both}) {
            const auto said = sentences::warning({static_cast<SetupWarningCode>(code), side, metres(1.045)}, setup);
            VERIFY_SENTENCE(said.head);
            VERIFY_SENTENCE(said.body);
            QVERIFY2(tellsWhatToDo(said.body), qPrintable(said.body));
            if (side == Side::Left)
                heads.insert(said.head);
        }
    QCOMPARE(heads.size(), lastWarning + 1);
}

void SentencesTest::warningsNameSideAndHeight()
{
    const Setup setup = withBands(false);
    for (const SetupWarningCode code : {SetupWarningCode::FirstLinkUp, SetupWarningCode::LastLinkOff, SetupWarningCode::BandSlack, SetupWarningCode::BeyondMeasured}) {
        const auto head = [&](Side side) { return sentences::warning({code, side, metres(1.045)}, setup).head; };
        QVERIFY(head(Side::Left).contains(QStringLiteral("Left")));
        QVERIFY(head(Side::Right).contains(QStringLiteral("Right")));
        QVERIFY(!head(Side::Both).contains(QStringLiteral("Left")) && !head(Side::Both).contains(QStringLiteral("Right")));
        QVERIFY2(head(Side::Both).contains(QStringLiteral("104.5 cm")), qPrintable(head(Side::Both)));
    }
    QVERIFY(sentences::warning({SetupWarningCode::SidesUneven, Side::Left, metres(1)}, setup).head.startsWith(QStringLiteral("Left")));
    QVERIFY(sentences::warning({SetupWarningCode::SidesUneven, Side::Right, metres(1)}, setup).head.startsWith(QStringLiteral("Right")));
}

void SentencesTest::slackBelowAndSlackAbove()
{
    // one metre at rest: from the floor it is slack up to 100 cm, from 220 cm above it is slack over 120 cm
    const auto below = sentences::warning({SetupWarningCode::BandSlack, Side::Both, metres(1.0)}, withBands(false));
    QVERIFY2(below.head.contains(QStringLiteral("slack up to 100 cm")), qPrintable(below.head));
    const auto above = sentences::warning({SetupWarningCode::BandSlack, Side::Both, metres(1.2)}, withBands(true));
    QVERIFY2(above.head.contains(QStringLiteral("slack above 120 cm")), qPrintable(above.head));
    QVERIFY(below.body != above.body);
}

void SentencesTest::weakAnchor()
{
    const auto said = sentences::weakAnchor({"Wide band", kilograms(41.2), kilograms(40)});
    VERIFY_SENTENCE(said.head);
    VERIFY_SENTENCE(said.body);
    QVERIFY(said.head.contains(QStringLiteral("Wide band")));
    for (const char* part : {"Do not lift this", "42 kg", "40 kg", "1.5 times"})
        QVERIFY2(said.body.contains(QLatin1String(part)), qPrintable(said.body));
}

void SentencesTest::onlyLimitsForbid()
{
    const QSet<int> forbidden = {static_cast<int>(SetupWarningCode::BeyondMeasured), static_cast<int>(SetupWarningCode::OverCap),
                                 static_cast<int>(SetupWarningCode::OverRackRating), static_cast<int>(SetupWarningCode::OverSafetyRating),
                                 static_cast<int>(SetupWarningCode::SleeveFull)};
    for (int code = 0; code <= lastWarning; ++code)
        QCOMPARE(sentences::forbids(static_cast<SetupWarningCode>(code)), forbidden.contains(code));
    const Setup setup = withBands(false);
    for (const int code : forbidden) {
        const auto said = sentences::warning({static_cast<SetupWarningCode>(code), Side::Both, metres(1)}, setup);
        QCOMPARE(said.body.contains(QStringLiteral("Do not lift this")), code != static_cast<int>(SetupWarningCode::BeyondMeasured));
    }
}

void SentencesTest::everyRefusal()
{
    QSet<QString> all;
    for (int code = 0; code <= lastRefusal; ++code) {
        const QString said = sentences::refusal(Error{static_cast<Refusal>(code), "Long chain, 16 mm: inner width"});
        VERIFY_SENTENCE(said);
        QVERIFY2(tellsWhatToDo(said), qPrintable(said));
        all.insert(said);
    }
    QCOMPARE(all.size(), lastRefusal + 1);
}

void SentencesTest::entryNames_data()
{
    QTest::addColumn<QString>("said");
    const auto row = [](const char* name, const char* said) { QTest::newRow(name) << QString::fromLatin1(said); };
    // every name of an entry that the engine puts into an error of a set-up
    row("bottom", "bottom");
    row("top", "top");
    row("sticking zone", "sticking zone");
    row("rack mark", "rack mark");
    row("plates", "plates");
    row("plate", "plate");
    row("count of plates", "number of plates");
    row("bar", "bar");
    row("collars", "collars");
    row("sleeve", "room on the sleeve");
    row("points", "hangings");
    row("point 3", "hanging 3");
    row("length", "length");
    row("mass", "mass");
    row("scale step", "step of the scale");
    row("wire", "wire");
    row("pitch", "pitch");
    row("inner width", "inner width");
    row("rest length", "length at rest");
    row("anchor height", "height of the anchor");
    row("offset", "distance of the anchor");
    row("wrap", "thickness of the handle");
    row("lead", "lead");
    row("lead mass", "mass of the lead");
    row("bunch", "height of the bunch");
    row("mass per metre", "mass per metre");
    row("Wide band: point 3", "Wide band, hanging 3");
    row("Band: the wide one: rest length", "Band: the wide one, length at rest");
    row("item", "something that is not in the kit");
    row("Long chain", "Long chain");
}

void SentencesTest::entryNames()
{
    QFETCH(QString, said);
    QCOMPARE(sentences::entryName(QTest::currentDataTag()), said);
}

void SentencesTest::everyEntryRefusal()
{
    const EntryLimits limits{3, 2, 5, 400};
    QSet<QString> all;
    for (int code = 0; code <= lastEntryRefusal; ++code) {
        const QString said = sentences::refusal(static_cast<EntryRefusal>(code), limits, QStringLiteral("cm"));
        VERIFY_SENTENCE(said);
        QVERIFY2(tellsWhatToDo(said), qPrintable(said));
        all.insert(said);
    }
    QCOMPARE(all.size(), lastEntryRefusal + 1);
}

void SentencesTest::entryRefusalsNameTheLimit()
{
    const EntryLimits limits{3, 2, 0.1, 412.5};
    const auto said = [&](EntryRefusal refusal) { return sentences::refusal(refusal, limits, QStringLiteral("kg")); };
    QVERIFY(said(EntryRefusal::BelowLeast).contains(QStringLiteral("0.1 kg")));
    QVERIFY(said(EntryRefusal::AboveMost).contains(QStringLiteral("412.5 kg")));
    QVERIFY(said(EntryRefusal::TooManyDigits).contains(QStringLiteral("3 figures before")));
    QVERIFY(said(EntryRefusal::TooManyDecimals).contains(QStringLiteral("2 figures after")));
}

void SentencesTest::oneFigureIsOneFigure()
{
    const EntryLimits limits{1, 1, 0, 9};
    QCOMPARE(sentences::refusal(EntryRefusal::TooManyDigits, limits, {}), QStringLiteral("One figure before the point, no more."));
    QCOMPARE(sentences::refusal(EntryRefusal::TooManyDecimals, limits, {}), QStringLiteral("One figure after the point, no more."));
    QCOMPARE(sentences::refusal(EntryRefusal::TooManyDecimals, {2, 0, 0, 99}, {}), QStringLiteral("Whole numbers only."));
}

void SentencesTest::everyCaution()
{
    QSet<QString> heads;
    for (int code = 0; code <= lastCaution; ++code) {
        const auto said = sentences::caution({static_cast<CautionCode>(code), kilograms(57.4), false});
        VERIFY_SENTENCE(said.head);
        QVERIFY(said.points.size() >= 3);
        for (const QString& point : said.points) {
            VERIFY_SENTENCE(point);
            QVERIFY2(tellsWhatToDo(point), qPrintable(point));
        }
        heads.insert(said.head);
        const QString all = said.points.join(QLatin1Char(' '));
        // never too low
        QCOMPARE(all.contains(QStringLiteral("58 kg")), code != static_cast<int>(CautionCode::Chains));
        QCOMPARE(sentences::caution({static_cast<CautionCode>(code), kilograms(57), false}).points.first().contains(QStringLiteral("57 kg")),
                 code != static_cast<int>(CautionCode::Chains));
        // without a mass it says so
        const QString unknown = sentences::caution({static_cast<CautionCode>(code), std::nullopt, false}).points.first();
        VERIFY_SENTENCE(unknown);
        QCOMPARE(unknown.contains(QStringLiteral("not known")), code != static_cast<int>(CautionCode::Chains));
    }
    QCOMPARE(heads.size(), lastCaution + 1);
}

void SentencesTest::numbersInTheLocalesDigits()
{
    QLocale::setDefault(QLocale(QStringLiteral("ar")));
    const EntryLimits limits{3, 2, 5, 400};
    const QStringList said = {sentences::warning({SetupWarningCode::LastLinkOff, Side::Both, metres(1.045)}, Setup{}).head,
                              sentences::refusal(EntryRefusal::TooManyDigits, limits, QStringLiteral("cm")),
                              sentences::refusal(EntryRefusal::TooManyDecimals, limits, QStringLiteral("cm")),
                              sentences::refusal(EntryRefusal::BelowLeast, limits, QStringLiteral("cm")),
                              sentences::refusal(Error{Refusal::BelowRest, "point 3"}),
                              sentences::caution({CautionCode::BandsAbove, kilograms(57.4), false}).points.first()};
    for (const QString& sentence : said)
        QVERIFY2(!sentence.contains(QRegularExpression(QStringLiteral("[0-9]"))), qPrintable(sentence));
}

QTEST_GUILESS_MAIN(SentencesTest)
#include "test_sentences.moc"
