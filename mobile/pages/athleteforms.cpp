// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/pages/athleteforms.h"

#include "core/journal/typed.h"

#include <QCborMap>
#include <QCborValue>

using namespace steelyard;

namespace {

// numbers of this file's own form: 0 says the version
enum Key { Version, Name, Squad, BirthYear, AgreedWho, AgreedDay, Notes, MassGrams, HeightMicrometres, Id, MassTyped, MassUnit, HeightTyped, HeightUnit };
constexpr int version = 1;

/// What was typed stands beside it, for whom can read that.
template <typename Quantity>
void putQuantity(QCborMap& map, const Entered<Quantity>& entered, double ratio, Key key, Key typedKey, Key unitKey)
{
    map.insert(key, ratio);
    if (!entered.typed())
        return;
    map.insert(typedKey, QString::fromStdString(std::string(entered.typed()->decimal.text())));
    map.insert(unitKey, static_cast<int>(entered.typed()->unit));
}

template <typename Quantity>
Entered<Quantity> quantity(const QCborMap& map, Quantity quantity, Key typedKey, Key unitKey)
{
    const auto unit = journal::unitOf(static_cast<std::uint64_t>(map.value(unitKey).toInteger()));
    return unit ? Entered<Quantity>(quantity, AsTyped{map.value(typedKey).toString().toStdString(), *unit}) : Entered<Quantity>(quantity);
}

}

QByteArray bytesOf(const AthleteForm& form)
{
    const Athlete& a = form.athlete;
    QCborMap map{{Version, version}, {Name, QString::fromStdString(a.name)}, {Squad, QString::fromStdString(a.squad)}, {Notes, QString::fromStdString(a.notes)},
                 {Id, QString::fromStdString(a.id.hex())}};
    if (a.birthYear)
        map.insert(BirthYear, int(*a.birthYear));
    if (a.agreement) {
        map.insert(AgreedWho, QString::fromStdString(a.agreement->who));
        map.insert(AgreedDay, qint64(a.agreement->day.time_since_epoch().count()));
    }
    if (form.mass)
        putQuantity(map, *form.mass, inKilograms(*form.mass) * 1000, MassGrams, MassTyped, MassUnit);
    if (form.height)
        putQuantity(map, *form.height, inMetres(*form.height) * 1e6, HeightMicrometres, HeightTyped, HeightUnit);
    return map.toCborValue().toCbor();
}

std::optional<AthleteForm> formIn(const QByteArray& bytes)
{
    QCborParserError error;
    const QCborMap map = QCborValue::fromCbor(bytes, &error).toMap();
    const auto id = RecordId::fromHex(map.value(Id).toString().toStdString());
    if (error.error != QCborError::NoError || map.value(Version).toInteger() != version || !id)
        return std::nullopt;
    AthleteForm form;
    form.athlete.id = *id;
    form.athlete.name = map.value(Name).toString().toStdString();
    form.athlete.squad = map.value(Squad).toString().toStdString();
    form.athlete.notes = map.value(Notes).toString().toStdString();
    if (map.contains(qint64(BirthYear)))
        form.athlete.birthYear = std::chrono::year(static_cast<int>(map.value(BirthYear).toInteger()));
    if (map.contains(qint64(AgreedWho)))
        form.athlete.agreement = GuardianAgreement{map.value(AgreedWho).toString().toStdString(),
                                                   std::chrono::sys_days(std::chrono::days(map.value(AgreedDay).toInteger()))};
    if (map.contains(qint64(MassGrams)))
        form.mass = quantity(map, kilograms(map.value(MassGrams).toDouble() / 1000), MassTyped, MassUnit);
    if (map.contains(qint64(HeightMicrometres)))
        form.height = quantity(map, metres(map.value(HeightMicrometres).toDouble() / 1e6), HeightTyped, HeightUnit);
    return form;
}
