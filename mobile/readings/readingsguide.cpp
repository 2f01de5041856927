// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/readings/readingsguide.h"

#include <algorithm>
#include <tuple>

QStringList ReadingsGuide::keys() const
{
    QStringList keys;
    if (ready())
        for (const FieldSpec& spec : form()->specs())
            keys << spec.key;
    return keys;
}

MeasureGuide::Page ReadingsGuide::page() const
{
    return m_ended ? Page::Result : m_step == 0 || m_step > keys().size() ? Page::Begin : Page::Number;
}

QString ReadingsGuide::key() const
{
    return page() == Page::Number ? keys().at(m_step - 1) : QString();
}

int ReadingsGuide::atReading() const
{
    const QString index = key().section(QLatin1Char(':'), 1);
    return index.isEmpty() ? -1 : index.toInt();
}

QString ReadingsGuide::heading() const
{
    return page() == Page::Number ? question(part()) : title();
}

QString ReadingsGuide::progress() const
{
    if (page() == Page::Begin)
        return tr("first look it over");
    return page() == Page::Result ? tr("readings: %1").arg(readings()->count()) : progressAt(atReading());
}

ReadingAdvice ReadingsGuide::advice() const
{
    ReadingAdvice advice;
    if (!ready())
        return advice;
    advice.odd = readings()->oddText();
    advice.enough = readings()->count() >= fewest() && form()->canKeep();
    if (page() == Page::Number && part() != readings()->parts().first)
        return advice;
    std::tie(advice.head, advice.body) = nextAdvice();
    if (advice.head.isEmpty() && advice.enough)
        advice.head = tr("Good enough as it is");
    return advice;
}

void ReadingsGuide::resume()
{
    m_again = m_ended = false;
    if (!ready() || !form()->isDrafted())
        return go(0);
    goOn();
}

void ReadingsGuide::goOn()
{
    m_again = m_ended = false;
    const auto specs = form()->specs();
    const auto missing = std::find_if(specs.begin(), specs.end(), [](const FieldSpec& spec) { return spec.needed && !spec.shown; });
    if (missing != specs.end())
        return go(static_cast<int>(missing - specs.begin()) + 1);
    const bool enoughRead = readings()->count() >= fewest() && form()->canKeep();
    if (enoughRead && nextAdvice().first.isEmpty())
        return enough();
    more();
}

void ReadingsGuide::next()
{
    if (page() == Page::Result)
        return;
    if (m_step == 0) {
        begin();
        return goOn();
    }
    m_again || m_step + 1 > keys().size() ? goOn() : go(m_step + 1);
}

bool ReadingsGuide::back()
{
    m_again = false;
    if (m_ended) {
        m_ended = false;
        go(static_cast<int>(keys().size()));
        return true;
    }
    if (m_step == 0)
        return false;
    go(m_step - 1);
    return true;
}

void ReadingsGuide::enough()
{
    dropEmpty();
    m_ended = true;
    stepped();
}

void ReadingsGuide::more()
{
    dropEmpty();
    m_ended = false;
    const QString first = readings()->addReading();
    go(static_cast<int>(keys().indexOf(first)) + 1);
}

void ReadingsGuide::readAgain()
{
    const auto odd = readings()->oddRow();
    if (!odd)
        return;
    m_ended = false;
    m_again = true;
    go(static_cast<int>(keys().indexOf(readings()->parts().second + QLatin1Char(':') + QString::number(*odd))) + 1);
}

void ReadingsGuide::leaveOut() const
{
    if (const auto odd = readings()->oddRow())
        readings()->setLeftOut(*odd, true);
}

void ReadingsGuide::dropEmpty()
{
    const auto specs = form()->specs();
    const int last = readings()->count() - 1;
    const bool hasNothing = last >= 0 && std::none_of(specs.begin(), specs.end(), [end = QLatin1Char(':') + QString::number(last)](const FieldSpec& spec) {
        return spec.key.endsWith(end) && spec.shown;
    });
    if (hasNothing)
        readings()->removeReading(last);
}

void ReadingsGuide::go(int step)
{
    m_step = step;
    stepped();
}
