// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/tools/scalechoice.h"

#include "mobile/follow.h"
#include "mobile/text/tooltexts.h"

using namespace steelyard;

void ScaleChoice::setForm(ItemEditor* form)
{
    if (!follow(this, m_form, form, &ScaleChoice::changed))
        return;
    if (form)
        connect(form, &ItemEditor::deskChanged, this, &ScaleChoice::changed);
    Q_EMIT changed();
}

std::vector<KeptScale> ScaleChoice::scales() const
{
    return m_form && m_form->deskService() && m_form->weighedOn() ? scalesIn(m_form->deskService()->desk().kit()) : std::vector<KeptScale>();
}

QStringList ScaleChoice::names() const
{
    QStringList list;
    for (const KeptScale& scale : scales())
        list << QString::fromStdString(scale.name);
    if (!list.isEmpty())
        list.prepend(tr("another scale"));
    return list;
}

int ScaleChoice::chosen() const
{
    const auto all = scales();
    const auto on = m_form ? m_form->weighedOn() : std::nullopt;
    if (!on || !on->accuracy)
        return 0;
    // what is kept of it is what counts: its step and its accuracy, to the whole mg
    constexpr double milligram = 1e-6;
    const auto near = [](Mass a, Mass b) { return std::abs((a - b).si()) < milligram; };
    const auto at = std::find_if(all.begin(), all.end(), [&](const KeptScale& scale) {
        return on->step && near(*on->step, *scale.measured.step) && near(*on->accuracy, scale.check.accuracy);
    });
    return at == all.end() ? 0 : static_cast<int>(at - all.begin()) + 1;
}

void ScaleChoice::setChosen(int place)
{
    const auto all = scales();
    if (!m_form || place < 0 || static_cast<std::size_t>(place) > all.size())
        return;
    if (place == 0) {
        if (chosen() > 0)
            m_form->weighOn({});
        return;
    }
    const KeptScale& scale = all[static_cast<std::size_t>(place) - 1];
    m_form->weighOn({scale.measured.step, Entered<Mass>(scale.check.accuracy), {}});
}

QString ScaleChoice::text() const
{
    const int place = chosen();
    if (place == 0)
        return {};
    const KeptScale scale = scales()[static_cast<std::size_t>(place) - 1];
    const auto read = m_form->weighedOn()->read;
    const QString beyond = read ? tooltexts::beyond(scale.check, *read) : QString();
    const QString how = tooltexts::howToRead(scale.check);
    return beyond.isEmpty() ? how : tr("%1 %2").arg(how, beyond);
}
