// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/bandguide.h"

#include "core/work/measuredkit.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/text/say.h"

using namespace steelyard;

namespace {

bool isEmpty(const BandHanging& hanging) { return !hanging.mass && !hanging.length; }

}

MeasureGuide::Page BandGuide::page() const
{
    return m_stage == Stage::Begin ? Page::Begin : m_stage == Stage::Result ? Page::Result : Page::Number;
}

QString BandGuide::key() const
{
    switch (m_stage) {
    case Stage::Rest:
        return QStringLiteral("rest");
    case Stage::Mass:
        return QStringLiteral("mass:%1").arg(m_at);
    case Stage::Length:
        return QStringLiteral("length:%1").arg(m_at);
    default:
        return {};
    }
}

QString BandGuide::heading() const
{
    switch (m_stage) {
    case Stage::Begin:
    case Stage::Result:
        break;
    case Stage::Rest:
        return tr("How long is it at rest?");
    case Stage::Mass:
        return isUnloading() ? tr("What is left on it?") : tr("What hangs on it?");
    case Stage::Length:
        return tr("How long is it now?");
    }
    return tr("Measure a band");
}

QString BandGuide::progress() const
{
    switch (m_stage) {
    case Stage::Begin:
        return tr("first look it over");
    case Stage::Rest:
        return tr("nothing on it");
    case Stage::Mass:
    case Stage::Length:
        return tr("reading %1").arg(m_at + 1);
    case Stage::Result:
        break;
    }
    return tr("readings: %1").arg(pointsOnFit(measurement()).size());
}

QString BandGuide::how() const
{
    switch (m_stage) {
    case Stage::Rest:
        return tr("Hanging loose. The tape runs from hook to hook, inside.");
    case Stage::Mass:
        if (m_at > 0 && !isUnloading())
            return tr("Stand out of the band's line.");
        return isUnloading() ? tr("Take it off piece by piece. Stand out of the band's line.") : tr("Plates of known mass, the strap with them. Stand out of the band's line.");
    case Stage::Length:
        return tr("Hook to hook, once it hangs still.");
    default:
        return {};
    }
}

QString BandGuide::gain() const
{
    if (!ready() || !bandFitFrom(measurement()))
        return {};
    const auto next = nextAdvice();
    if (!next)
        return tr("Good enough up to %1.").arg(measuretexts::aboutLength(furthest().value_or(Length{})));
    return tr("One more at about %1 would make it surer.").arg(measuretexts::aboutLength(next->length));
}

std::optional<Length> BandGuide::furthest() const
{
    const Desk& desk = form()->deskService()->desk();
    const RecordId id = RecordId::fromHex(form()->itemId().toStdString()).value_or(RecordId{});
    return measureUpTo(measurement(), longestUse(desk.setup(), desk.answer().path, id));
}

std::optional<LengthAdvice> BandGuide::nextAdvice() const
{
    const auto upTo = furthest();
    return upTo ? nextLength(measurement(), *upTo) : std::nullopt;
}

BandHanging BandGuide::hanging() const
{
    const auto all = ready() ? measurement().hangings : std::vector<BandHanging>();
    return m_at < static_cast<int>(all.size()) ? all[static_cast<std::size_t>(m_at)] : BandHanging{};
}

BandAdvice BandGuide::advice() const
{
    BandAdvice advice;
    if (!ready())
        return advice;
    const BandMeasurement now = measurement();
    advice.curve = pointsOnFit(now).size() >= fewestLengthCount && form()->canKeep();
    advice.odd = band()->oddText();
    if (const auto back = steelyard::wayBack(now))
        advice.wayBack = measuretexts::wayBack(*back);
    if (const auto fit = bandFitFrom(now); fit && fit->degreesOfFreedom() == 1)
        advice.unsure = measuretexts::oneReadingMoreThanNeeded(fit->points());
    if (m_stage != Stage::Mass || isUnloading())
        return advice;
    if (const auto next = nextAdvice()) {
        advice.head = measuretexts::goFor(*next, now);
        advice.body = measuretexts::whyThere(*next, now);
    } else if (advice.curve) {
        advice.head = tr("Good enough as it is");
    }
    return advice;
}

bool BandGuide::isUnloading() const
{
    return hanging().unloading;
}

void BandGuide::setUnloading(bool unloading)
{
    if (m_stage == Stage::Mass || m_stage == Stage::Length)
        band()->setUnloading(m_at, unloading);
}

void BandGuide::resume()
{
    m_again = false;
    if (!ready() || !form()->isDrafted())
        return go(Stage::Begin);
    if (!measurement().rest)
        return go(Stage::Rest);
    goOn();
}

void BandGuide::goOn()
{
    m_again = false;
    const auto hangings = measurement().hangings;
    for (std::size_t i = 0; i < hangings.size(); ++i)
        if (!hangings[i].mass || !hangings[i].length)
            return go(hangings[i].mass ? Stage::Length : Stage::Mass, static_cast<int>(i));
    const bool wayBack = !hangings.empty() && hangings.back().unloading;
    if (!wayBack && advice().curve && !nextAdvice())
        return go(Stage::Result);
    band()->addHanging(wayBack);
    go(Stage::Mass, count() - 1);
}

void BandGuide::next()
{
    switch (m_stage) {
    case Stage::Begin:
        begin();
        return go(Stage::Rest);
    case Stage::Rest:
        return count() > 0 ? go(Stage::Mass, 0) : goOn();
    case Stage::Mass:
        return go(Stage::Length, m_at);
    case Stage::Length:
        return !m_again && m_at + 1 < count() ? go(Stage::Mass, m_at + 1) : goOn();
    case Stage::Result:
        break;
    }
}

bool BandGuide::back()
{
    m_again = false;
    if (m_stage == Stage::Begin)
        return false;
    if (m_stage == Stage::Length)
        go(Stage::Mass, m_at);
    else if (m_stage == Stage::Rest)
        go(Stage::Begin);
    else {
        const int last = m_stage == Stage::Result ? count() : m_at;
        last > 0 ? go(Stage::Length, last - 1) : go(Stage::Rest);
    }
    return true;
}

void BandGuide::enough()
{
    dropEmpty();
    go(Stage::Result);
}

void BandGuide::more(bool unloading)
{
    dropEmpty();
    band()->addHanging(unloading);
    go(Stage::Mass, count() - 1);
}

void BandGuide::readAgain()
{
    if (const auto odd = oddHanging(measurement())) {
        go(Stage::Length, static_cast<int>(odd->index));
        m_again = true;
    }
}

void BandGuide::leaveOut()
{
    if (const auto odd = oddHanging(measurement()))
        band()->setLeftOut(static_cast<int>(odd->index), true);
}

void BandGuide::dropEmpty()
{
    const auto hangings = measurement().hangings;
    if (!hangings.empty() && isEmpty(hangings.back()))
        band()->removeHanging(count() - 1);
}

void BandGuide::go(Stage stage, int at)
{
    m_stage = stage;
    m_at = at;
    stepped();
}
