// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/measuring/chainguide.h"

#include "mobile/measuring/measuretexts.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

using namespace steelyard;

QStringList ChainGuide::keys() const
{
    QStringList keys;
    if (ready())
        for (const FieldSpec& spec : form()->specs())
            keys.append(spec.key);
    return keys;
}

MeasureGuide::Page ChainGuide::page() const
{
    return m_step == 0 ? Page::Begin : m_step > keys().size() ? Page::Result : Page::Number;
}

QString ChainGuide::key() const
{
    return page() == Page::Number ? keys().at(m_step - 1) : QString();
}

QString ChainGuide::heading() const
{
    const QString asked = key();
    if (asked == QLatin1String("length"))
        return tr("How long is it?");
    if (asked == QLatin1String("mass"))
        return tr("What does it weigh?");
    if (asked == QLatin1String("scaleStep"))
        return tr("How fine does it read?");
    if (asked == QLatin1String("wire"))
        return tr("How thick is the wire?");
    if (asked == QLatin1String("pitch"))
        return tr("How long is a link inside?");
    if (asked == QLatin1String("innerWidth"))
        return tr("How wide is a link inside?");
    return tr("Measure a chain");
}

QString ChainGuide::progress() const
{
    // how many there are is said once the way is chosen
    if (m_step == 0)
        return tr("step 1");
    return tr("step %1 of %2").arg(m_step + 1).arg(keys().size() + 2);
}

QString ChainGuide::how() const
{
    const QString asked = key();
    if (asked == QLatin1String("length"))
        return tr("Straight on the floor, first link to last.");
    if (asked == QLatin1String("mass"))
        return tr("All of it on the scale and off the floor; read when it hangs still. Not more than the scale is made for, feet clear.");
    if (asked == QLatin1String("scaleStep"))
        return tooltexts::stepAsked();
    if (asked == QLatin1String("wire"))
        return tr("Across the round of one link: its real thickness, not the trade size.");
    if (asked == QLatin1String("pitch"))
        return tr("Inside, end to end of one link.");
    if (asked == QLatin1String("innerWidth"))
        return longLink()
                   ? tr("A long link: take the middle between its least inner width and its greatest outer width less two wires.")
                   : tr("Inside, side to side of one link.");
    return {};
}

bool ChainGuide::longLink() const
{
    return ready() && isLongLink(chain()->measurement());
}

QString ChainGuide::gain() const
{
    return ready() ? measuretexts::gain(chainGain(chain()->measurement())) : QString();
}

void ChainGuide::resume()
{
    m_step = 0;
    if (ready() && form()->isDrafted()) {
        const auto specs = form()->specs();
        const auto missing = std::find_if(specs.begin(), specs.end(), [](const FieldSpec& spec) { return spec.needed && !spec.shown; });
        m_step = static_cast<int>(missing - specs.begin()) + 1;
    }
    stepped();
}

void ChainGuide::next()
{
    if (page() != Page::Result)
        ++m_step;
    stepped();
}

bool ChainGuide::back()
{
    if (m_step == 0)
        return false;
    --m_step;
    stepped();
    return true;
}

void ChainGuide::choose(bool gauged)
{
    begin();
    chain()->setGauged(gauged);
    next();
}
