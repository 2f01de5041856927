// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/text/keepingtexts.h"

#include "core/work/venues/whatwasdone.h"
#include "mobile/text/liftnames.h"
#include "mobile/text/vaulttexts.h"

#include <QCoreApplication>
#include <QLocale>

using namespace steelyard;
using sentences::Said;

namespace keepingtexts {

namespace {

QString tr(const char* text, const char* about = nullptr)
{
    return QCoreApplication::translate("keepingtexts", text, about);
}

QString nameOf(const DeedDone& done, const SeasonBook& book)
{
    if (const Athlete* athlete = book.athlete(done.id))
        return QString::fromStdString(athlete->name);
    if (const Venue* venue = book.venue(done.id))
        return QString::fromStdString(venue->name);
    if (const OwnLift* lift = book.lift(done.id))
        return QString::fromStdString(lift->name);
    if (const KitRecord* kit = book.item(done.id))
        return QString::fromStdString(kit->item.name);
    if (const SavedSetup* setup = book.setup(done.id)) {
        const Athlete* athlete = book.athlete(setup->athlete);
        return tr("%1, %2").arg(athlete ? QString::fromStdString(athlete->name) : tr("somebody taken out"), lift(setup->lift, book));
    }
    return {};
}

QString named(const char* with, const char* without, const QString& name)
{
    return name.isEmpty() ? tr(without) : tr(with).arg(name);
}

/// What was said of a thing, and of which.
QString ofThing(ThingSaid said, const QString& name)
{
    switch (said) {
    case ThingSaid::OutOfUse: return named(QT_TR_NOOP("out of use, %1"), QT_TR_NOOP("out of use"), name);
    case ThingSaid::Borrowed: return named(QT_TR_NOOP("borrowed %1"), QT_TR_NOOP("borrowed it"), name);
    case ThingSaid::Lent: return named(QT_TR_NOOP("lent %1"), QT_TR_NOOP("lent it"), name);
    case ThingSaid::Back: return named(QT_TR_NOOP("back again, %1"), QT_TR_NOOP("back again"), name);
    case ThingSaid::Fit:
    case ThingSaid::Nothing: break;
    }
    return named(QT_TR_NOOP("looked over, %1"), QT_TR_NOOP("looked over"), name);
}

}

QString shipped(LiftId id)
{
    const Lift* known = shippedLift(id);
    return known ? liftnames::name(*known) : QString();
}

QString lift(LiftId id, const SeasonBook& book)
{
    if (shippedLift(id))
        return shipped(id);
    if (const OwnLift* own = book.lift(id.own))
        return QString::fromStdString(own->name);
    return id.own.isNone() ? tr("lift %1").arg(id.number) : tr("a lift taken out");
}

QString deed(const DeedDone& done, const SeasonBook& book)
{
    const QString name = nameOf(done, book);
    switch (done.deed) {
    case Deed::AthleteKept:
    case Deed::VenueKept:
    case Deed::LiftKept:
    case Deed::ItemKept:
        return named(QT_TR_NOOP("kept %1"), QT_TR_NOOP("kept"), name);
    case Deed::BodySizeKept:
        return tr("kept body mass or height");
    case Deed::IsometricPullKept:
        return tr("kept an isometric pull");
    case Deed::SetupKept:
        return named(QT_TR_NOOP("kept set-up: %1"), QT_TR_NOOP("kept a set-up"), name);
    case Deed::SettingsKept:
        return tr("changed units");
    case Deed::PutRight:
        return tr("put right");
    case Deed::TakenOut:
        return tr("taken out");
    case Deed::Settled:
        return tr("settled");
    case Deed::Inspected:
    case Deed::LoanKept:
        return ofThing(thingSaid(done), name);
    case Deed::TakenAlong:
        return named(QT_TR_NOOP("took kit along: %1"), QT_TR_NOOP("took kit along"), name);
    case Deed::ListCopied:
        return named(QT_TR_NOOP("copied a list: %1"), QT_TR_NOOP("copied a list"), name);
    case Deed::TestKept:
        return tr("kept a test of strength");
    case Deed::ClearanceKept:
        return tr("gave a clearance");
    case Deed::ClearanceTakenBack:
        return tr("took a clearance back");
    case Deed::StatusKept:
        return tr("set a day status");
    case Deed::StatusLifted:
        return tr("lifted a day status");
    case Deed::CapKept:
        return named(QT_TR_NOOP("changed what loads are held against: %1"), QT_TR_NOOP("changed what loads are held against"), name);
    case Deed::SurfaceKept:
        return tr("kept how a sled slides");
    case Deed::SledRunKept:
        return tr("kept a timed run with a sled");
    case Deed::LimitsKept:
        return tr("changed limits");
    }
    return {};
}

Said refusal(const Told& told)
{
    if (told.refusal)
        return vaulttexts::said(*told.refusal);
    if (!told.unfit)
        return {};
    switch (*told.unfit) {
    case Unfit::NameMissing:
        return {tr("A name is missing."), tr("Type one, then keep it.")};
    case Unfit::TextTooLong:
        return {tr("That text is too long."), tr("Make it shorter, then keep it.")};
    case Unfit::TextUnreadable:
        return {tr("That text cannot be read."), tr("Type it again, then keep it.")};
    case Unfit::BirthYearUnlikely:
        return {tr("That birth year cannot be right."), tr("It lies before 1900 or still to come: type it again, or leave it out.")};
    case Unfit::BirthYearFirst:
        return {tr("The birth year comes first."), tr("Without it nobody knows whether a guardian has to agree.")};
    case Unfit::AgreementFirst:
        return {tr("A guardian has to agree first."), tr("Until then only name, squad and loads are kept. Record who agreed, then keep it.")};
    case Unfit::AgreementUnfit:
        return {tr("The agreement is not complete."), tr("Say who agreed; its day cannot lie ahead.")};
    case Unfit::QuantityUnfit:
        return {tr("A number there cannot be right."), tr("Type it again, or leave it out.")};
    case Unfit::NothingMeasured:
        return {tr("Nothing was measured."), tr("Enter body mass or height, then keep it.")};
    case Unfit::ReadingsTooFew:
        return {tr("A sled has to be pulled with two different loads, or more."), tr("Pull it once more with another load.")};
    case Unfit::RepsUnfit:
        return {tr("Those reps do not go together."), tr("A missed rep leaves none in reserve, and a maximum is one rep. Count them again, then keep it.")};
    case Unfit::WhoMissing:
        return {tr("Nobody is named."), tr("Say who gave or set it, then keep it.")};
    case Unfit::UntilBeforeDay:
        return {tr("It would end before it begins."), tr("Put a later last day, or none.")};
    case Unfit::NothingNamed:
        return {tr("What may be done and what not do not go together."), tr("Some: say what not, or why. All or none: name nothing.")};
    case Unfit::LimitUnfit:
        return {tr("No limit can lie there."), tr("Put another number, or leave it to ours.")};
    case Unfit::DayAhead:
        return {tr("That day lies ahead."), tr("Put the day on which it was measured, then keep it.")};
    case Unfit::OnlyMeasurement:
        return {tr("It is the only measurement."), tr("Measure the thing again first, or take the thing itself out of the kit.")};
    case Unfit::AthleteUnknown:
        return {tr("This athlete is not in the squad any more."), tr("Add the person anew, or undo the taking out.")};
    case Unfit::VenueUnknown:
        return {tr("This venue is not there any more."), tr("Choose another venue, then keep it.")};
    case Unfit::ItemUnknown:
        return {tr("This thing is not in the kit any more."), tr("Measure it anew, or undo the taking out.")};
    case Unfit::SetupUnknown:
        return {tr("This set-up is not there any more."), tr("Keep it as a new one.")};
    case Unfit::LiftUnknown:
        return {tr("It is not said for which lift."), tr("Choose the athlete and the lift first, then keep it.")};
    case Unfit::RecordUnknown:
        return {tr("That is not there any more."), tr("Look at the list again.")};
    case Unfit::AlreadySaid:
        return {tr("That was said before."), tr("Nothing more is needed.")};
    case Unfit::SampleTakesNobody:
        return {tr("Not kept: this is the example, and everybody knows its passphrase."), tr("It takes no names or notes of yours. Start a vault of your own for your people: remove the example in Preferences.")};
    case Unfit::NothingToUndo:
        return {tr("There is nothing to undo."), tr("The list holds the last 20 of this session.")};
    case Unfit::ChangedSince:
        return {tr("Something newer stands there."), tr("Undo that first; it is further up in the list.")};
    }
    return {};
}

Said reserveUsed()
{
    return {tr("Kept, with the last space there was."), tr("This device is full. Free some space now, or the next entry cannot be kept.")};
}

QString day(std::chrono::sys_days day, std::chrono::sys_days today)
{
    const std::chrono::year_month_day date(day);
    const QDate shown(int(date.year()), int(unsigned(date.month())), int(unsigned(date.day())));
    const bool sameYear = date.year() == std::chrono::year_month_day(today).year();
    return QLocale().toString(shown, sameYear ? tr("d MMM", "a day as the language writes it: d, MMM and yyyy stand for day, month and year") : tr("d MMM yyyy"));
}

}
