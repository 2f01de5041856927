// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/implements/implementeditor.h"

#include "core/work/implements/implementmass.h"
#include "mobile/implements/implementform.h"
#include "mobile/text/implementtexts.h"

using namespace steelyard;
using implementform::Number;

namespace {

FieldSpec specOf(const Number& number)
{
    const FieldNumber shown = std::visit([&number]<typename Where>(const Where& where) -> FieldNumber {
        if constexpr (std::is_same_v<Where, implementform::Setting>)
            return inMass(where.place < where.list->size() ? std::optional((*where.list)[where.place]) : std::nullopt);
        else if constexpr (std::is_same_v<Where, std::optional<Entered<Mass>>*>)
            return inMass(*where);
        else if constexpr (std::is_same_v<Where, std::optional<Entered<Length>>*>)
            return number.fine ? inWire(*where) : inLength(*where);
        else if constexpr (std::is_same_v<Where, std::optional<Entered<Volume>>*>)
            return unitless(*where ? std::optional((*where)->quantity() / litre) : std::nullopt);
        else
            return unitless(*where);
    }, number.where);
    FieldSpec spec(number.key, number.label, shown, number.limits, false, number.hint, number.needed);
    if (!number.unit.isEmpty())
        spec.unit = number.unit;
    return spec;
}

void put(const Number& number, const KeyedFigure& keyed)
{
    std::visit([&]<typename Where>(const Where& where) {
        if constexpr (std::is_same_v<Where, implementform::Setting>) {
            if (where.place < where.list->size())
                (*where.list)[where.place] = keyed.mass();
            else
                where.list->push_back(keyed.mass());
        } else if constexpr (std::is_same_v<Where, std::optional<Entered<Mass>>*>) {
            *where = keyed.mass();
        } else if constexpr (std::is_same_v<Where, std::optional<Entered<Length>>*>) {
            *where = number.fine ? keyed.wire() : keyed.length();
        } else if constexpr (std::is_same_v<Where, std::optional<Entered<Volume>>*>) {
            const Volume volume = keyed.ratio * litre;
            *where = keyed.decimal.empty() ? Entered<Volume>(volume) : Entered<Volume>(volume, AsTyped{TypedDigits(keyed.decimal), Unit::Litre});
        } else {
            *where = keyed.ratio;
        }
    }, number.where);
}

/// Nobody knowing what it weighs is an answer too.
bool isSettled(const ImplementMass& found)
{
    return found.mass || found.gap == MassGap::SaidUnknown;
}

}

QString ImplementEditor::what() const
{
    return QString::fromStdString(wordOf(m_kind));
}

void ImplementEditor::setWhat(const QString& what)
{
    for (int number = static_cast<int>(ItemKind::Tyre); number <= static_cast<int>(lastItemKind); ++number) {
        const auto kind = static_cast<ItemKind>(number);
        if (kind == m_kind || !isImplement(kind) || QString::fromStdString(wordOf(kind)) != what)
            continue;
        m_kind = kind;
        Q_EMIT itemIdChanged();
        refresh();
    }
}

std::vector<FieldSpec> ImplementEditor::specs() const
{
    std::vector<FieldSpec> all;
    if (!ready())
        return all;
    Measured measured = now();
    for (const Number& number : implementform::numbersOf(measured))
        all.push_back(specOf(number));
    return all;
}

KeepOutcome ImplementEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    if (!ready())
        return {tr("There is no such entry."), {}};
    Measured measured = now();
    for (const Number& number : implementform::numbersOf(measured)) {
        if (number.key != key)
            continue;
        put(number, keyed);
        if (key == QLatin1String("step"))
            // another scale, of which nobody has said how good it is
            implementform::scaleOf(measured)->accuracy.reset();
        setMeasured(std::move(measured));
        return {};
    }
    return {tr("There is no such entry."), {}};
}

bool ImplementEditor::canClear(const QString& key) const
{
    const auto known = ready() ? spec(key) : std::nullopt;
    return known && known->shown;
}

bool ImplementEditor::clearNumber(const QString& key)
{
    if (!ready())
        return false;
    Measured measured = now();
    if (!implementform::clear(measured, key))
        return false;
    setMeasured(std::move(measured));
    return true;
}

ToolWords ImplementEditor::words() const
{
    return ready() ? implementform::wordsOf(now()) : ToolWords{};
}

int ImplementEditor::choice() const
{
    return ready() ? implementform::wayOf(now()) : -1;
}

void ImplementEditor::setChoice(int choice)
{
    if (!ready())
        return;
    Measured measured = now();
    implementform::setWay(measured, choice);
    setMeasured(std::move(measured));
}

QString ImplementEditor::question(const QString& key) const
{
    const auto known = ready() ? spec(key) : std::nullopt;
    return known ? known->label : QString();
}

QString ImplementEditor::how(const QString& key) const
{
    if (!ready())
        return {};
    Measured measured = now();
    for (const Number& number : implementform::numbersOf(measured))
        if (number.key == key)
            return number.how;
    return {};
}

QString ImplementEditor::answer() const
{
    return ready() ? implementtexts::comesTo(now()) : QString();
}

QString ImplementEditor::verdict() const
{
    const auto measured = ready() ? now() : Measured{TyreMeasurement{}};
    const auto* keg = std::get_if<KegMeasurement>(&measured);
    if (!keg || keg->sort != KegSort::Keg || mayBeLifted(keg->pressure))
        return {};
    return keg->pressure == KegPressure::Holding ? tr("It holds gas: nobody opens, drops or lifts it until whoever owns it has let it off.")
                                                 : tr("Nobody knows whether it holds gas: it is used for nothing until somebody does.");
}

bool ImplementEditor::isDoubtful() const
{
    return ready() && (!implementMass(now()).mass || !verdict().isEmpty());
}

QString ImplementEditor::trouble() const
{
    if (!ready())
        return {};
    const ImplementMass found = implementMass(now());
    return isSettled(found) ? QString() : tr("Still to do: %1").arg(implementtexts::gap(found.gap.value_or(MassGap::NotMeasured)));
}

QString ImplementEditor::addEntry()
{
    if (!ready())
        return {};
    Measured measured = now();
    QString key = implementform::addEntry(measured);
    if (!key.isEmpty())
        setMeasured(std::move(measured));
    return key;
}

void ImplementEditor::choose(const QString& key, int index)
{
    if (!ready())
        return;
    Measured measured = now();
    implementform::answer(measured, key, index);
    setMeasured(std::move(measured));
}

QString ImplementEditor::note() const
{
    const auto measured = ready() ? now() : Measured{TyreMeasurement{}};
    const auto* bell = std::get_if<BellMeasurement>(&measured);
    return bell ? QString::fromStdString(bell->note) : QString();
}

void ImplementEditor::setNote(const QString& note)
{
    Measured measured = ready() ? now() : Measured{TyreMeasurement{}};
    auto* bell = std::get_if<BellMeasurement>(&measured);
    if (!bell || note == QString::fromStdString(bell->note))
        return;
    bell->note = note.toStdString();
    setMeasured(std::move(measured));
}

std::optional<WeighedOn> ImplementEditor::weighedOn() const
{
    if (!ready())
        return std::nullopt;
    Measured measured = now();
    const WholeMass* whole = implementform::scaleOf(measured);
    return whole ? std::optional(WeighedOn{whole->step, whole->accuracy, whole->read}) : std::nullopt;
}

void ImplementEditor::weighOn(const WeighedOn& scale)
{
    if (!ready())
        return;
    Measured measured = now();
    if (WholeMass* whole = implementform::scaleOf(measured)) {
        whole->step = scale.step;
        whole->accuracy = scale.accuracy;
        setMeasured(std::move(measured));
    }
}

QString ImplementEditor::ownName(const KitItem& item) const
{
    return implementform::nameOf(item.measurement);
}

std::optional<Error> ImplementEditor::refusalOf(const Measured& measured) const
{
    const ImplementMass found = implementMass(measured);
    return isSettled(found) ? std::nullopt : std::optional(Error{Refusal::NotThere, found.what});
}

std::vector<AskedRow> ImplementEditor::askedRows() const
{
    return ready() ? implementform::askedOf(now()) : std::vector<AskedRow>{};
}
