// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/asking/pullseditor.h"

#include "core/work/keeping/athlete/keepisometric.h"
#include "core/work/keeping/putright.h"
#include "core/work/records/codec.h"
#include "mobile/asking/askingtexts.h"
#include "mobile/follow.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QPointer>

#include <algorithm>
#include <numeric>

using namespace steelyard;

namespace {

// keys of what is half entered, as records write their quantities
enum DraftKey : std::uint32_t { DraftHeight = 1, DraftPull, DraftStep };

}

void PullsEditor::setWork(DeskWork* work)
{
    if (!follow(this, m_work, work, [this] { refresh(); }))
        return;
    Q_EMIT workChanged();
    refresh();
}

RecordId PullsEditor::athlete() const
{
    return m_work && !m_work->name().isEmpty() ? RecordId::fromHex(m_work->athleteId().toStdString()).value_or(RecordId{}) : RecordId{};
}

bool PullsEditor::isNobodys() const { return athlete().isNone(); }

QString PullsEditor::who() const { return m_work ? m_work->who() : QString(); }

QString PullsEditor::counts() const { return ready() ? askingtexts::pulls(desk().pulls()) : QString(); }

QString PullsEditor::fact() const
{
    const Form now = form();
    return now.height && now.pull ? tr("%1, %2").arg(say::lengthWithUnit(*now.height), say::inMassUnit(say::entered(*now.pull))) : QString();
}

QString PullsEditor::draftKey() const { return QStringLiteral("pull:%1:%2").arg(m_work->athleteId(), m_work->lift()); }

PullsEditor::Form PullsEditor::form() const
{
    if (isNobodys() || !book())
        return m_nobodys;
    const auto bytes = book()->draft(draftKey());
    if (!bytes)
        return {};
    RecordReader reader(std::as_bytes(std::span(bytes->constData(), static_cast<std::size_t>(bytes->size()))));
    Form form;
    form.height = reader.length(DraftHeight);
    form.pull = reader.mass(DraftPull);
    form.step = reader.mass(DraftStep);
    return form;
}

void PullsEditor::setForm(const Form& form)
{
    if (isNobodys() || !book()) {
        m_nobodys = form;
    } else if (form == Form{}) {
        book()->throwDraft(draftKey());
    } else {
        const Content content = RecordWriter(book()->book().settings()).length(DraftHeight, form.height).mass(DraftPull, form.pull).mass(DraftStep, form.step).content();
        if (content)
            book()->setDraft(draftKey(), QByteArray(reinterpret_cast<const char*>(content->data()), static_cast<qsizetype>(content->size())));
    }
    refresh();
}

std::vector<FieldSpec> PullsEditor::specs() const
{
    if (!ready())
        return {};
    const Form now = form();
    return {{QStringLiteral("height"), tr("Height of the bar"), inLength(now.height), {3, 1, 10, 300}, false, tr("its middle above the floor, held still by the rack"), true},
            {QStringLiteral("pull"), tr("Greatest pull"), inMass(now.pull), {4, 1, 1, 1500}, false, tr("what the scale showed, the bar's weight among it"), true},
            {QStringLiteral("step"), tr("Step of the scale"), inMass(now.step), {2, 2, 0.01, 20}, false, tr("the smallest difference that it shows")}};
}

KeepOutcome PullsEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    Form next = form();
    if (key == QLatin1String("height"))
        next.height = keyed.length();
    else if (key == QLatin1String("pull"))
        next.pull = keyed.mass();
    else if (key == QLatin1String("step"))
        next.step = keyed.mass();
    else
        return {tr("There is no such number."), {}};
    setForm(next);
    return {};
}

bool PullsEditor::canClear(const QString& key) const
{
    const Form now = form();
    return (key == QLatin1String("height") && now.height) || (key == QLatin1String("pull") && now.pull) || (key == QLatin1String("step") && now.step);
}

bool PullsEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    Form next = form();
    if (key == QLatin1String("height"))
        next.height.reset();
    else if (key == QLatin1String("pull"))
        next.pull.reset();
    else
        next.step.reset();
    setForm(next);
    return true;
}

void PullsEditor::keep()
{
    const Form now = form();
    if (!ready() || !now.height || !now.pull)
        return;
    IsometricPull pull;
    pull.height = *now.height;
    pull.pull = *now.pull;
    pull.scaleStep = now.step;
    const Form next{{}, {}, now.step};
    if (isNobodys()) {
        auto pulls = desk().pulls();
        pulls.push_back(pull);
        setForm(next);
        desk().setPulls(std::move(pulls));
        return;
    }
    pull.day = book()->today();
    pull.lift = liftIn(m_work->lift().toStdString()).value_or(LiftId{});
    keepIsometricPull(book()->keeping(), athlete(), pull, book()->teller([self = QPointer<PullsEditor>(this), next](const RecordId&) {
        if (self)
            self->setForm(next);
    }));
}

void PullsEditor::takeOut(const QString& id)
{
    if (!ready())
        return;
    if (!isNobodys())
        return steelyard::takeOut(book()->keeping(), isometricPullPlace(RecordId::fromHex(id.toStdString()).value_or(RecordId{}), athlete()), book()->teller());
    auto pulls = desk().pulls();
    bool isPlace = false;
    const auto place = id.toUInt(&isPlace);
    if (!isPlace || place >= pulls.size())
        return;
    pulls.erase(pulls.begin() + static_cast<std::ptrdiff_t>(place));
    desk().setPulls(std::move(pulls));
}

void PullsEditor::refresh()
{
    std::vector<DatedRow> rows;
    if (ready()) {
        const auto& pulls = desk().pulls();
        std::vector<std::size_t> order(pulls.size());
        std::iota(order.begin(), order.end(), 0);
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return pulls[a].height > pulls[b].height; });
        for (const std::size_t i : order) {
            const IsometricPull& pull = pulls[i];
            const QString id = pull.id.isNone() ? QString::number(i) : QString::fromStdString(pull.id.hex());
            rows.push_back({id, say::lengthWithUnit(pull.height), isNobodys() ? QString() : keepingtexts::day(pull.day, book()->today()), say::inMassUnit(say::entered(pull.pull))});
        }
    }
    m_pulls.setRows(std::move(rows));
    FieldEditor::refresh();
}
