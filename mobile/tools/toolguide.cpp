// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/toolguide.h"

#include <algorithm>

using namespace steelyard;

QStringList ToolGuide::keys() const
{
    QStringList keys;
    if (ready())
        for (const FieldSpec& spec : form()->specs())
            if (spec.needed || spec.shown || spec.key == m_key)
                keys << spec.key;
    return keys;
}

QString ToolGuide::heading() const
{
    if (!tool())
        return {};
    return m_page == Page::Number ? tool()->question(m_key) : tool()->words().title;
}

QString ToolGuide::progress() const
{
    // how many there are is said once the way is chosen
    if (m_page == Page::Begin)
        return tr("step 1");
    const auto all = keys();
    const auto at = m_page == Page::Result ? all.size() + 2 : all.indexOf(m_key) + 2;
    return tr("step %1 of %2").arg(at).arg(all.size() + 2);
}

QString ToolGuide::how() const
{
    return tool() && m_page == Page::Number ? tool()->how(m_key) : QString();
}

QString ToolGuide::gain() const
{
    return tool() && ready() ? tool()->gain() : QString();
}

void ToolGuide::resume()
{
    if (!ready() || !form()->isDrafted())
        return go(Page::Begin);
    const auto specs = form()->specs();
    const auto missing = std::find_if(specs.begin(), specs.end(), [](const FieldSpec& spec) { return spec.needed && !spec.shown; });
    missing == specs.end() ? go(Page::Result) : go(Page::Number, missing->key);
}

void ToolGuide::choose(int choice)
{
    begin();
    if (choice >= 0)
        tool()->setChoice(choice);
    m_key.clear();
    // a list that has to have an entry begins with one
    auto all = keys();
    if (!form()->canKeep() && std::none_of(all.begin(), all.end(), [](const QString& key) { return key.contains(QLatin1Char(':')); })) {
        tool()->addEntry();
        all = keys();
    }
    all.isEmpty() ? go(Page::Result) : go(Page::Number, all.first());
}

void ToolGuide::next()
{
    if (m_page == Page::Begin)
        return choose(-1);
    const auto all = keys();
    const auto at = all.indexOf(m_key);
    m_page == Page::Result || at + 1 >= all.size() ? go(Page::Result) : go(Page::Number, all.at(at + 1));
}

bool ToolGuide::back()
{
    if (m_page == Page::Begin)
        return false;
    const auto all = keys();
    const auto at = m_page == Page::Result ? all.size() : all.indexOf(m_key);
    at > 0 ? go(Page::Number, all.at(at - 1)) : go(Page::Begin);
    return true;
}

void ToolGuide::more()
{
    const QString key = tool()->addEntry();
    if (!key.isEmpty())
        go(Page::Number, key);
}

void ToolGuide::go(Page page, const QString& key)
{
    m_page = page;
    m_key = key;
    stepped();
}
