// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/contestedtexts.h"

#include "core/journal/content.h"
#include "core/work/records/codec.h"
#include "core/work/records/implementcodec.h"
#include "core/work/records/isometriccodec.h"
#include "mobile/gates/gatetexts.h"
#include "mobile/gates/limittexts.h"
#include "mobile/gates/standingtexts.h"
#include "mobile/eccentric/releasetexts.h"
#include "mobile/measuring/measuretexts.h"
#include "mobile/putright/saidtexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"
#include "mobile/venues/venuetexts.h"

#include <QCoreApplication>

using namespace steelyard;
using journal::RecordKind;
using journal::RegisterClass;
using journal::RegisterKey;

namespace contestedtexts {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("contestedtexts", text);
}

/// The name of a record, of one that was taken out too.
QString nameOf(const SeasonBook& book, const Place& place, std::uint32_t fieldNumber, const QString& unnamed)
{
    const journal::Held* said = book.said(place, fieldNumber);
    const auto name = said ? journal::textIn(said->body.content) : std::nullopt;
    return name ? QString::fromStdString(*name) : unnamed;
}

QString athleteName(const SeasonBook& book, const std::optional<RecordId>& id)
{
    return nameOf(book, athletePlace(id.value_or(RecordId{})), field::athleteNameNumber, tr("Somebody"));
}

/// The limit that a field of the settings holds.
std::optional<LimitKind> limitOf(const RegisterKey& key)
{
    const auto first = field::settingsTyrePercentNumber;
    const bool isOne = key.subject.kind == RecordKind::VaultSettings && key.holds == RegisterClass::Value && key.fieldNumber >= first && key.fieldNumber - first < allLimits.size();
    return isOne ? std::optional(allLimits[key.fieldNumber - first]) : std::nullopt;
}

/// Which of an athlete's clearances or tests it is, by what it is for now.
QString ofWhich(const SeasonBook& book, const RegisterKey& key, const QString& name)
{
    const RecordId athlete = key.athlete.value_or(RecordId{});
    if (const Clearance* clearance = key.subject.kind == RecordKind::Clearance ? book.clearance(clearancePlace(key.subject.id, athlete)) : nullptr)
        return tr("%1, %2, %3").arg(name, keepingtexts::lift(clearance->lift, book), gatetexts::method(clearance->method));
    if (const StrengthTest* test = key.subject.kind == RecordKind::StrengthTest ? book.test(strengthTestPlace(key.subject.id, athlete)) : nullptr)
        return tr("%1, %2").arg(name, keepingtexts::lift(test->lift, book));
    return name;
}

/// Whose or what it is.
QString subjectOf(const SeasonBook& book, const RegisterKey& key)
{
    const RecordId& id = key.subject.id;
    switch (key.subject.kind) {
    case RecordKind::Venue:
        return nameOf(book, venuePlace(id), field::venueNameNumber, tr("A venue"));
    case RecordKind::KitItem:
        return nameOf(book, itemPlace(id), field::itemNameNumber, tr("A thing of the kit"));
    case RecordKind::Lift:
        return nameOf(book, liftPlace(id), field::liftNameNumber, tr("A lift"));
    case RecordKind::Measurement: {
        for (const KitRecord* record : book.kit())
            for (const MeasurementRecord& measured : record->measurements)
                if (measured.id == id)
                    return QString::fromStdString(record->item.name);
        return tr("A thing of the kit");
    }
    case RecordKind::Setup: {
        const SavedSetup* setup = book.setup(id);
        const QString name = athleteName(book, key.athlete);
        return setup ? tr("%1, %2").arg(name, keepingtexts::lift(setup->lift, book)) : name;
    }
    case RecordKind::SledSurface: {
        const SledSurface* surface = book.surface(id);
        return surface ? QString::fromStdString(surface->name) : tr("A surface");
    }
    case RecordKind::VaultSettings:
        return limitOf(key) ? tr("Your limits") : tr("Units");
    default:
        return ofWhich(book, key, athleteName(book, key.athlete));
    }
}

QString athleteField(const SeasonBook& book, const RegisterKey& key)
{
    switch (key.fieldNumber) {
    case field::athleteNameNumber: return tr("name");
    case field::athleteSquadNumber: return tr("squad");
    case field::athleteBirthYearNumber: return tr("birth year");
    case field::athleteAgreementNumber: return tr("guardian's agreement");
    case field::athleteNotesNumber: return tr("notes");
    case field::athleteMarksNumber: return tr("bar marks for the %1").arg(keepingtexts::lift(liftIn(key.part).value_or(LiftId{}), book));
    case field::athleteCapNumber: return tr("what loads of the %1 are held against").arg(keepingtexts::lift(liftIn(key.part).value_or(LiftId{}), book));
    default: return tr("something a newer app keeps");
    }
}

QString otherField(const RegisterKey& key)
{
    const auto field = std::pair(key.subject.kind, key.fieldNumber);
    if (field == std::pair(RecordKind::Venue, field::venueNameNumber) || field == std::pair(RecordKind::Lift, field::liftNameNumber) || field == std::pair(RecordKind::KitItem, field::itemNameNumber))
        return tr("name");
    if (field == std::pair(RecordKind::Venue, field::venueNotesNumber))
        return tr("notes");
    if (field == std::pair(RecordKind::Venue, field::venueLaneNumber))
        return tr("length of the lane");
    if (field == std::pair(RecordKind::KitItem, field::itemPairNumber))
        return tr("one or a pair");
    if (field == std::pair(RecordKind::KitItem, field::itemVenueNumber))
        return tr("where it belongs");
    if (field == std::pair(RecordKind::KitItem, field::itemInspectionNumber))
        return tr("fit or out of use");
    if (field == std::pair(RecordKind::KitItem, field::itemBorrowedNumber))
        return tr("borrowed or not");
    if (field == std::pair(RecordKind::KitItem, field::itemLentNumber))
        return tr("lent or not");
    if (field == std::pair(RecordKind::KitItem, field::itemTakenToNumber))
        return tr("where it is for now");
    if (field == std::pair(RecordKind::Setup, field::setupLiftNumber))
        return tr("the lift");
    if (field == std::pair(RecordKind::Setup, field::setupLoadNumber))
        return tr("what hangs");
    if (field == std::pair(RecordKind::Setup, field::setupReleaseNumber))
        return tr("what makes the way down heavier");
    if (field == std::pair(RecordKind::Lift, field::liftLikeNumber))
        return tr("which lift it is like");
    if (field == std::pair(RecordKind::Lift, field::liftStartNumber))
        return tr("where it starts");
    if (field == std::pair(RecordKind::VaultSettings, field::settingsMassUnitNumber))
        return tr("of mass");
    if (field == std::pair(RecordKind::VaultSettings, field::settingsLengthUnitNumber))
        return tr("of length");
    if (field == std::pair(RecordKind::Clearance, field::clearanceTakenBackNumber))
        return tr("clearance taken back or not");
    if (field == std::pair(RecordKind::DayStatus, field::statusLiftedNumber))
        return tr("day status lifted or not");
    if (const auto limit = limitOf(key))
        return limittexts::name(*limit);
    return tr("something a newer app keeps");
}

QString aspectOf(const SeasonBook& book, const RegisterKey& key)
{
    if (key.holds == RegisterClass::Removal)
        return tr("taken out or not");
    if (key.holds == RegisterClass::Value)
        return key.subject.kind == RecordKind::Athlete ? athleteField(book, key) : otherField(key);
    switch (key.subject.kind) {
    case RecordKind::BodySize: return tr("body mass and height");
    case RecordKind::StrengthTest: return tr("a test of strength");
    case RecordKind::Clearance: return tr("a clearance");
    case RecordKind::DayStatus: return tr("day status");
    case RecordKind::IsometricPull: return tr("an isometric pull");
    case RecordKind::SledSurface: return tr("how a sled slides");
    case RecordKind::SledRun: return tr("a timed run with a sled");
    default: return tr("a measurement");
    }
}

template <typename Value, typename Say>
QString said(const std::optional<Value>& value, const Say& say)
{
    return value ? say(*value) : tr("something a newer app wrote");
}

QString marksText(const BarMarks& marks)
{
    QStringList parts;
    const auto add = [&parts](const char* with, const auto& at) {
        if (at)
            parts << tr(with).arg(say::inLengthUnit(say::entered(*at)));
    };
    if (marks.start == LiftStart::OwnBottom)
        add(QT_TR_NOOP("bottom %1"), marks.bottom);
    add(QT_TR_NOOP("sticking from %1"), marks.zoneFrom);
    add(QT_TR_NOOP("to %1"), marks.zoneTo);
    add(QT_TR_NOOP("top %1"), marks.top);
    add(QT_TR_NOOP("rack %1"), marks.rack);
    return parts.isEmpty() ? tr("none yet") : parts.join(QStringLiteral(", "));
}

QString textAnswer(journal::ByteView content)
{
    return said(journal::textIn(content), [](const std::string& text) { return QString::fromStdString(text); });
}

QString athleteAnswer(const BookService& book, std::uint32_t fieldNumber, journal::ByteView content)
{
    switch (fieldNumber) {
    case field::athleteBirthYearNumber:
        return said(journal::numberIn(content), [](std::int64_t year) { return QString::number(year); });
    case field::athleteAgreementNumber:
        return said(agreementIn(content), [&book](const GuardianAgreement& agreed) {
            return tr("%1, %2").arg(QString::fromStdString(agreed.who), keepingtexts::day(agreed.day, book.today()));
        });
    case field::athleteMarksNumber:
        return said(marksIn(content), marksText);
    case field::athleteCapNumber:
        return said(capRuleIn(content), [&book](const CapRule& rule) { return tr("%1 % of the %2").arg(rule.percent).arg(keepingtexts::lift(rule.of, book.book())); });
    default:
        return textAnswer(content);
    }
}

QString setupAnswer(const BookService& book, std::uint32_t fieldNumber, journal::ByteView content)
{
    if (fieldNumber == field::setupLiftNumber)
        return said(liftIdIn(content), [&book](LiftId lift) { return keepingtexts::lift(lift, book.book()); });
    if (fieldNumber == field::setupReleaseNumber)
        return said(releasePlanIn(content), releasetexts::asked);
    return said(loadIn(content), [](const SetupRecord& load) {
        const QString iron = say::inMassUnit(say::entered(load.bar.wanted));
        return load.hung.empty() ? tr("%1, iron alone").arg(iron) : tr("%1 and %2 hung").arg(iron).arg(load.hung.size());
    });
}

QString liftAnswer(const BookService& book, std::uint32_t fieldNumber, journal::ByteView content)
{
    if (fieldNumber == field::liftStartNumber)
        return said(liftStartIn(content), [](LiftStart start) { return start == LiftStart::Floor ? tr("with plates on the floor") : tr("from her own bottom"); });
    return fieldNumber == field::liftLikeNumber ? setupAnswer(book, field::setupLiftNumber, content) : textAnswer(content);
}

QString itemAnswer(const BookService& book, std::uint32_t fieldNumber, journal::ByteView content)
{
    if (fieldNumber == field::itemPairNumber)
        return said(journal::flagIn(content), [](bool pair) { return pair ? tr("a pair") : tr("one"); });
    if (fieldNumber == field::itemInspectionNumber)
        return said(inspectionIn(content), [&book](const Inspection& found) {
            return found.fault ? measuretexts::outOfUse(found, book.today()) : tr("fit");
        });
    if (fieldNumber == field::itemBorrowedNumber)
        return said(onLoanIn(content), [&book](const OnLoan& loan) { return venuetexts::borrowed(loan, book.today()); });
    if (fieldNumber == field::itemLentNumber)
        return said(onLoanIn(content), [&book](const OnLoan& loan) { return venuetexts::lent(loan, book.today()); });
    if (fieldNumber != field::itemVenueNumber && fieldNumber != field::itemTakenToNumber)
        return textAnswer(content);
    return said(journal::idIn(content), [&book](const RecordId& id) {
        const Venue* venue = book.book().venue(id);
        return venue ? QString::fromStdString(venue->name) : tr("a venue taken out");
    });
}

QString venueAnswer(std::uint32_t fieldNumber, journal::ByteView content)
{
    return fieldNumber == field::venueLaneNumber ? said(laneIn(content), [](const Entered<Length>& lane) { return say::inLengthUnit(say::entered(lane)); }) : textAnswer(content);
}

QString unitAnswer(journal::ByteView content)
{
    return said(journal::numberIn(content), [](std::int64_t number) {
        for (const auto& [unit, name] : {std::pair(unitFor(MassUnit::Kilogram), tr("kilograms")), std::pair(unitFor(MassUnit::Pound), tr("pounds")),
                                         std::pair(unitFor(LengthUnit::Centimetre), tr("centimetres")), std::pair(unitFor(LengthUnit::Inch), tr("inches"))})
            if (number == static_cast<std::int64_t>(unit))
                return name;
        return tr("a unit of a newer app");
    });
}

/// By whom, and on which day; none where it was not said at all.
QString saidSoAnswer(const BookService& book, journal::ByteView content)
{
    return said(saidSoIn(content), [&book](const SaidSo& by) { return standingtexts::saidSo(by, book.today()); });
}

QString limitAnswer(LimitKind kind, journal::ByteView content)
{
    return said(journal::numberIn(content), [kind](std::int64_t number) { return limittexts::value(kind, static_cast<int>(number)); });
}

QString testText(const StrengthTest& test)
{
    return tr("%1 for %2").arg(say::inMassUnit(say::entered(test.load))).arg(test.reps);
}

/// An added record, without its day.
QString recordAnswer(const BookService& book, RecordKind kind, journal::ByteView content)
{
    switch (kind) {
    case RecordKind::BodySize: return said(bodySizeIn(content), saidtexts::bodySize);
    case RecordKind::StrengthTest: return said(strengthTestIn(content), testText);
    case RecordKind::Clearance:
        return said(clearanceIn(content), [&book](const Clearance& clearance) {
            const QString what = tr("%1, by %2").arg(standingtexts::clearedFor(clearance, book.book()), QString::fromStdString(clearance.who));
            return clearance.until ? tr("%1, until %2").arg(what, keepingtexts::day(*clearance.until, book.today())) : what;
        });
    case RecordKind::DayStatus:
        return said(dayStatusIn(content), [&book](const DayStatus& status) {
            const QString what = tr("%1, by %2").arg(standingtexts::status(status, book.book()), QString::fromStdString(status.who));
            return status.until ? tr("%1, until %2").arg(what, keepingtexts::day(*status.until, book.today())) : what;
        });
    case RecordKind::IsometricPull:
        return said(isometricPullIn(content), [](const IsometricPull& pull) { return say::inMassUnit(say::entered(pull.pull)); });
    case RecordKind::SledSurface:
        return said(sledSurfaceIn(content), [](const SledSurface& surface) { return tr("%1, pulled with %2 loads").arg(QString::fromStdString(surface.name)).arg(surface.readings.size()); });
    case RecordKind::SledRun:
        return said(sledRunIn(content), [](const SledRunTimed& run) {
            return tr("%1 on the sled over %2 in %3 s").arg(say::inMassUnit(say::entered(run.added)), say::inLengthUnit(say::entered(run.distance)), say::plain(static_cast<double>(run.time.quantity().count()) / 1000, 2));
        });
    default: return said(measurementIn(content), [](const MeasurementRecord& measured) { return saidtexts::measured(measured.measured); });
    }
}

QString valueAnswer(const BookService& book, const RegisterKey& key, journal::ByteView content)
{
    const auto limit = limitOf(key);
    if (journal::isNull(content))
        return limit ? tr("as it was shipped: %1").arg(limittexts::value(*limit, ourLimitCount(*limit))) : tr("left empty");
    if (limit)
        return limitAnswer(*limit, content);
    switch (key.subject.kind) {
    case RecordKind::Athlete: return athleteAnswer(book, key.fieldNumber, content);
    case RecordKind::Setup: return setupAnswer(book, key.fieldNumber, content);
    case RecordKind::KitItem: return itemAnswer(book, key.fieldNumber, content);
    case RecordKind::Lift: return liftAnswer(book, key.fieldNumber, content);
    case RecordKind::Venue: return venueAnswer(key.fieldNumber, content);
    case RecordKind::VaultSettings: return unitAnswer(content);
    case RecordKind::Clearance:
    case RecordKind::DayStatus: return saidSoAnswer(book, content);
    default: return textAnswer(content);
    }
}

}

QString what(const BookService& book, const RegisterKey& key)
{
    return tr("%1: %2").arg(subjectOf(book.book(), key), aspectOf(book.book(), key));
}

QString answer(const BookService& book, const RegisterKey& key, const journal::Held& entry)
{
    const journal::ByteView content = entry.body.content;
    if (key.holds == RegisterClass::Removal)
        return said(journal::flagIn(content), [](bool out) { return out ? tr("taken out") : tr("still there"); });
    if (key.holds == RegisterClass::Value)
        return valueAnswer(book, key, content);
    return tr("%1, %2").arg(recordAnswer(book, key.subject.kind, content), keepingtexts::day(entry.body.localDay, book.today()));
}

}
