// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/setupview.h"

#include "mobile/follow.h"
#include "mobile/gates/gatetexts.h"
#include "mobile/pages/setuptexts.h"
#include "mobile/strength/strengthtexts.h"
#include "mobile/text/say.h"

#include <utility>

void SetupView::setDesk(DeskService* desk)
{
    if (!follow(this, m_desk, desk, &SetupView::refresh))
        return;
    Q_EMIT deskChanged();
    refresh();
}

void SetupView::lookOver(int code)
{
    if (!m_desk || code < 0)
        return;
    if (code <= static_cast<int>(steelyard::CautionCode::Release))
        m_desk->desk().lookOver(static_cast<steelyard::CautionCode>(code));
    else if (code >= gatetexts::firstCode)
        m_desk->desk().lookOverReason(static_cast<std::size_t>(code - gatetexts::firstCode));
}

void SetupView::stepLoad(bool up)
{
    if (m_desk)
        m_desk->desk().stepLoad(up);
}

double SetupView::readStep() const
{
    return steelyard::inMetres(say::units().length == steelyard::LengthUnit::Inch ? 2 * steelyard::inch : steelyard::metres(0.05));
}

QString SetupView::readingAt(double metresUp) const
{
    return m_desk ? setuptexts::readingAt(m_desk->desk().answer(), steelyard::metres(metresUp)) : QString();
}

void SetupView::refresh()
{
    if (!m_desk)
        return;
    const steelyard::Desk& desk = m_desk->desk();
    const steelyard::WeighedUp& weighed = desk.answer();
    m_answer = setuptexts::answer(desk);
    m_answer.percents = {strengthtexts::percentOnMean(weighed, desk.maximum()), strengthtexts::percents(weighed, desk.maximum(), desk.maximumOn())};
    m_picture = setuptexts::picture(weighed);
    m_beam = setuptexts::beam(desk);
    m_marks = setuptexts::marks(weighed);
    m_plates = setuptexts::plates(desk);
    m_strip = setuptexts::strip(desk);
    const QVariantList hung = std::exchange(m_elevation, setuptexts::elevation(weighed));
    m_hanging.setRows(setuptexts::hanging(desk));
    m_notices.setRows(setuptexts::notices(desk));
    m_cautions.setRows(setuptexts::cautions(desk));
    Q_EMIT changed();
    if (m_elevation != hung)
        Q_EMIT elevationChanged();
}
