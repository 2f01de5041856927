// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/units.h"
#include "mobile/implements/implementform.h"
#include "mobile/text/tooltexts.h"

#include <QCoreApplication>

using namespace steelyard;

namespace implementform {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("implementform", text); }
/// Apart, since the tool that collects sentences names them wrongly behind a parameter of the standard library.
QString stepLabel() { return tr("Step of the scale"); }
QString numbered(const char* stem, std::size_t place) { return QLatin1String(stem) + QLatin1Char(':') + QString::number(place); }

constexpr EntryLimits onScale{3, 3, 0.05, 800}, scaleStep{1, 3, 0.001, 5}, across{3, 1, 2, 400};

constexpr std::size_t mostEdges = 2, mostSettings = 12;

void addStep(std::vector<Number>& all, WholeMass& whole, bool needed = true)
{
    all.push_back({QStringLiteral("step"), stepLabel(), tooltexts::stepHint(), tooltexts::stepAsked(), &whole.step, scaleStep, needed});
}

/// On a scale, or by its mark where nobody has weighed it.
void addWhole(std::vector<Number>& all, WholeMass& whole, const QString& label, const QString& how, bool mayBeMarked)
{
    const bool byMark = mayBeMarked && whole.marked && !whole.read;
    all.push_back({QStringLiteral("read"), label, tr("with nothing else on it"), how, &whole.read, onScale, !byMark});
    addStep(all, whole, !byMark);
    if (mayBeMarked)
        all.push_back({QStringLiteral("marked"), tr("Marked"), tr("counts where nobody has weighed it, 2 % either way"), tr("The figure on it. Weighing it is surer."), &whole.marked, onScale, false});
}

void addEnds(std::vector<Number>& all, BothEnds& ends, WholeMass& scale)
{
    const QString hook = tr("Only where the hook held further in than it rests.");
    all.push_back({QStringLiteral("first"), tr("One end"), tr("just off the ground"), tr("Lift one end a hand's breadth by the scale, the rope upright, the other end on the ground."), &ends.first, onScale});
    all.push_back({QStringLiteral("second"), tr("The other end"), tr("just off the ground"), tr("Then the other end likewise. The two add up, however the mass lies along it."), &ends.second, onScale});
    addStep(all, scale);
    all.push_back({QStringLiteral("span"), tr("From rest to rest"), tr("only where the hook held further in"), hook, &ends.span, {4, 1, 20, 1000}, false});
    all.push_back({QStringLiteral("inset:0"), tr("Hook further in, one end"), tr("from where it rests"), hook, &ends.firstInset, {3, 1, 0, 300}, false});
    all.push_back({QStringLiteral("inset:1"), tr("Hook further in, other end"), tr("from where it rests"), hook, &ends.secondInset, {3, 1, 0, 300}, false});
}

std::vector<Number> of(TyreMeasurement& m)
{
    std::vector<Number> all;
    if (m.by == TyreMeasuring::Edge) {
        if (m.edges.empty())
            m.edges.emplace_back();
        for (std::size_t i = 0; i < m.edges.size(); ++i) {
            TyreEdgeReading& edge = m.edges[i];
            const bool one = m.edges.size() == 1;
            all.push_back({numbered("shown", i), one ? tr("The scale reads") : tr("Edge %1 reads").arg(i + 1), tr("one edge just off the ground"),
                           tr("Hook under one edge, lift it a finger's breadth, the rope upright. Feet and hands clear."), &edge.shown, onScale});
            all.push_back({numbered("lift", i), one ? tr("Middle to hook") : tr("Middle to hook, edge %1").arg(i + 1), tr("level, from the middle of the tyre"),
                           tr("From the middle of the tyre to where the hook holds, level."), &edge.liftPoint, across});
            all.push_back({numbered("contact", i), one ? tr("Middle to far ring") : tr("Middle to far ring, edge %1").arg(i + 1), tr("the ring that it lies on, far side"),
                           tr("From the middle to the far side of the ring that it lies on: narrower than the tyre itself."), &edge.farContact, across});
        }
        addStep(all, m.whole);
    } else if (m.by == TyreMeasuring::Whole) {
        addWhole(all, m.whole, tr("The scale reads"), tr("Hung whole, clear of the ground, nobody under it. Never more than scale and hook are made for."), false);
    }
    all.push_back({QStringLiteral("diameter"), tr("Diameter"), tr("for the force of a flip"), tr("Across the whole tyre."), &m.diameter, across, false});
    all.push_back({QStringLiteral("width"), tr("Width"), tr("how high it lies"), tr("From the ground to its upper side."), &m.width, {3, 1, 2, 200}, false});
    return all;
}

std::vector<Number> of(LogMeasurement& m)
{
    std::vector<Number> all;
    switch (m.by) {
    case LogMeasuring::Size: {
        const QString end = m.girths ? tr("Round one end") : tr("Across one end"), other = m.girths ? tr("Round the other end") : tr("Across the other end");
        const QString how = m.girths ? tr("A tape laid round it, without bark if it comes off.") : tr("Mean of two ways across, without bark if it comes off.");
        all.push_back({QStringLiteral("length"), tr("Length"), tr("of the wood"), tr("From end to end."), &m.length, {4, 1, 20, 1000}});
        all.push_back({QStringLiteral("first"), end, {}, how, &m.firstAcross, across});
        all.push_back({QStringLiteral("second"), other, {}, how, &m.secondAcross, across});
        all.push_back({QStringLiteral("gravity"), tr("Specific gravity"), tr("of the wood; spruce 0.40, oak 0.60"), tr("Dry mass over its volume as it is now; pieces of one species differ by a tenth."), &m.gravityRatio, {1, 3, 0.1, 1.5}});
        all.back().unit = tr("× water");
        all.push_back({QStringLiteral("moisture"), tr("Moisture"), tr("in per cent of its dry mass"), tr("12 indoors, 18 under a roof. Wet or fresh wood: weigh it by both ends instead."), &m.moisturePercent, {3, 1, 0, 200}});
        all.back().unit = tr("%");
        break;
    }
    case LogMeasuring::Ends: addEnds(all, m.ends, m.whole); break;
    case LogMeasuring::Whole: addWhole(all, m.whole, tr("The scale reads"), tr("Hung level, clear of the ground."), false); break;
    case LogMeasuring::Unknown: break;
    }
    return all;
}

std::vector<Number> of(StoneMeasurement& m)
{
    std::vector<Number> all;
    if (m.by == StoneMeasuring::Ball)
        all.push_back({QStringLiteral("across"), m.girth ? tr("Round it") : tr("Across it"), tr("where it is widest"), tr("Mean of three ways. A centimetre in thirty is a tenth of its mass."), &m.across, across});
    else if (m.by == StoneMeasuring::Whole)
        addWhole(all, m.whole, tr("The scale reads"), tr("In a sling, or stood on a scale."), false);
    return all;
}

std::vector<Number> of(KegMeasurement& m)
{
    std::vector<Number> all;
    const bool bag = m.sort == KegSort::Sandbag;
    switch (m.by) {
    case KegMeasuring::Whole: addWhole(all, m.whole, tr("The scale reads"), tr("As it will be lifted, with what is in it."), false); return all;
    case KegMeasuring::Unknown: return all;
    default: break;
    }
    all.push_back({QStringLiteral("empty"), tr("Empty"), tr("weighed with nothing in it"), bag ? tr("The bag alone.") : tr("Weigh an empty one of the same make: kegs differ."), &m.empty, {3, 3, 0, 200}});
    addStep(all, m.whole, false);
    switch (m.by) {
    case KegMeasuring::Litres:
        all.push_back({QStringLiteral("content"), tr("In it"), tr("litres, as poured"), tr("Count the cans or jugs that go in, or pour it out into them."), &m.content, {3, 1, 0, 500}});
        all.back().unit = tr("L");
        break;
    case KegMeasuring::Standing:
        all.push_back({QStringLiteral("depth"), tr("How deep"), tr("standing upright"), tr("Dip a stick down to the bottom and read how far it is wet."), &m.depth, {3, 1, 0, 200}});
        all.push_back({QStringLiteral("across"), tr("Across, inside"), {}, tr("Outside less twice the wall."), &m.across, across});
        break;
    default:
        all.push_back({QStringLiteral("depth"), tr("How deep"), tr("lying, in the middle"), tr("Lying, a third of the depth is not a third of what is in it: that is worked out."), &m.depth, {3, 1, 0, 200}});
        all.push_back({QStringLiteral("across"), tr("Across, inside"), {}, tr("Outside less twice the wall."), &m.across, across});
        all.push_back({QStringLiteral("length"), tr("Length, inside"), {}, tr("From end to end inside. Where its litres are printed on it, give them instead."), &m.length, {3, 1, 2, 300}, !m.capacity.has_value()});
        all.push_back({QStringLiteral("capacity"), tr("Holds, full"), tr("litres, as printed on it"), tr("As printed on it: then no length is needed."), &m.capacity, {3, 1, 0.5, 500}, false});
        all.back().unit = tr("L");
    }
    return all;
}

std::vector<Number> of(SledMeasurement& m)
{
    std::vector<Number> all;
    addWhole(all, m.whole, tr("The scale reads"), tr("The sled alone, with its strap."), true);
    all.push_back({QStringLiteral("strap"), tr("Strap"), tr("hook to belt"), tr("Pulled straight, from the sled's hook to her belt."), &m.strap, {4, 1, 20, 2000}, false});
    all.push_back({QStringLiteral("hook"), tr("Its hook"), tr("above the ground"), tr("With her belt's height it says how steep the strap pulls."), &m.hook, {3, 1, 0, 150}, false});
    return all;
}

std::vector<Number> of(CarryMeasurement& m)
{
    std::vector<Number> all;
    addWhole(all, m.whole, m.sort == CarrySort::Handles ? tr("One of them reads") : tr("The scale reads"),
             m.sort == CarrySort::Handles ? tr("One handle with nothing on it; the other is taken for its like.") : tr("With nothing on it."), true);
    return all;
}

std::vector<Number> of(BellMeasurement& m)
{
    std::vector<Number> all;
    if (m.settings.empty())
        addWhole(all, m.whole, tr("The scale reads"), tr("Many are off their mark by more than a plate would be."), true);
    for (std::size_t i = 0; i <= m.settings.size() && i < mostSettings; ++i) {
        const bool further = i == m.settings.size();
        all.push_back({numbered("setting", i), further ? m.settings.empty() ? tr("Can be set to") : tr("and to") : tr("Set to"),
                       further ? tr("only of one with changeable masses") : tr("as marked, 2 % either way"), tr("Each mass that it can be set to, as it is marked."),
                       Setting{&m.settings, i}, {3, 2, 0.5, 120}, false});
    }
    all.push_back({QStringLiteral("handle"), tr("Handle, thick"), tr("for whoever chooses"), tr("Across the handle where the hand holds it."), &m.handle, {2, 1, 10, 90}, false, true});
    all.push_back({QStringLiteral("window"), tr("Window, wide"), tr("from horn to horn"), tr("Inside, from horn to horn."), &m.window, {3, 1, 20, 300}, false, true});
    return all;
}

template <typename Other>
std::vector<Number> of(Other&)
{
    return {};
}

}

std::vector<Number> numbersOf(Measured& measured)
{
    return std::visit([](auto& m) { return of(m); }, measured);
}

QString addEntry(Measured& measured)
{
    auto* tyre = std::get_if<TyreMeasurement>(&measured);
    if (moreOf(measured).isEmpty())
        return {};
    tyre->edges.emplace_back();
    return numbered("shown", tyre->edges.size() - 1);
}

QString moreOf(const Measured& measured)
{
    const auto* tyre = std::get_if<TyreMeasurement>(&measured);
    return tyre && tyre->by == TyreMeasuring::Edge && tyre->edges.size() < mostEdges ? tr("The opposite edge too") : QString();
}

bool clear(Measured& measured, const QString& key)
{
    if (auto* tyre = std::get_if<TyreMeasurement>(&measured); tyre && key.contains(QLatin1Char(':')) && tyre->edges.size() == mostEdges) {
        tyre->edges.erase(tyre->edges.begin() + (key.endsWith(QLatin1Char('1')) ? 1 : 0));
        return true;
    }
    for (Number& number : numbersOf(measured)) {
        if (number.key != key)
            continue;
        if (const auto* setting = std::get_if<Setting>(&number.where)) {
            if (setting->place >= setting->list->size())
                return false;
            setting->list->erase(setting->list->begin() + static_cast<std::ptrdiff_t>(setting->place));
            return true;
        }
        std::visit([](auto where) {
            if constexpr (std::is_pointer_v<decltype(where)>)
                where->reset();
        }, number.where);
        return true;
    }
    return false;
}

}
