// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/hungdrawing.h"

#include "core/work/weighup.h"
#include "mobile/follow.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/text/say.h"

#include <algorithm>

using namespace steelyard;

void HungDrawing::setForm(HangEditor* form)
{
    // a form that is gone already has nothing to say, and its page goes with it
    if (follow(this, m_form, form, &HungDrawing::refresh))
        refresh();
}

void HungDrawing::refresh()
{
    m_items.clear();
    m_caption.clear();
    const Desk* desk = m_form && m_form->deskService() ? &m_form->deskService()->desk() : nullptr;
    const int row = m_form ? m_form->row() : -1;
    if (desk && row >= 0 && static_cast<std::size_t>(row) < desk->setup().hung.size()) {
        SetupRecord alone = desk->setup();
        alone.hung = {desk->setup().hung[static_cast<std::size_t>(row)]};
        const WeighedUp weighed = weighUp(alone, desk->kit(), desk->marks(), {}, 0);
        m_items = setuptexts::elevation(weighed);
        if (!m_items.isEmpty() && weighed.path) {
            const Height half = weighed.path->bottom + (weighed.path->top - weighed.path->bottom) / 2;
            const auto* band = std::get_if<BandPlacing>(&alone.hung.front().placing);
            m_barHeight = inMetres(half);
            m_reach = std::max(m_barHeight + 0.3, band && band->above ? inMetres(band->anchorHeight) + 0.1 : 0.0);
            m_caption = tr("%1; the bar half way, at %2").arg(setuptexts::howItHangs(alone.hung.front()), say::lengthWithUnit(half));
        }
    }
    Q_EMIT changed();
}
