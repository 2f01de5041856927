// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/putright/saidtexts.h"

#include "core/work/measuredkit.h"
#include "core/work/measuring/aidkit.h"
#include "core/work/measuring/machinekit.h"
#include "core/work/records/codec.h"
#include "mobile/days.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"
#include "mobile/text/tooltexts.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTimeZone>

using namespace steelyard;

namespace saidtexts {

namespace {

/// With a count the words bend to it.
QString tr(const char* text, const char* about = nullptr, int count = -1) { return QCoreApplication::translate("saidtexts", text, about, count); }

QString dayOf(const BookService& book, const journal::Held& entry)
{
    return keepingtexts::day(sysDaysOf(moment(book, entry).date()), book.today());
}

/// What stood there at first, with its day where that is another one now.
QString before(const BookService& book, const SeasonBook::Righted& righted, const QString& first)
{
    const auto day = righted.first->body.localDay;
    const QString right = dayOf(book, *righted.now);
    if (day == righted.now->body.localDay)
        return tr("%1 at first; put right on %2").arg(first, right);
    return tr("%1 on %2 at first; put right on %3").arg(first, keepingtexts::day(day, book.today()), right);
}

QString chainText(const ChainMeasurement& chain)
{
    const QString length = chain.length ? say::inLengthUnit(say::entered(*chain.length)) : tr("no length");
    if (chain.by == ChainMeasuring::Gauged)
        return tr("%1, by its links").arg(length);
    return chain.mass ? tr("%1 and %2, weighed").arg(say::inMassUnit(say::entered(*chain.mass)), length) : length;
}

QString bandText(const BandMeasurement& band)
{
    std::optional<Entered<Length>> longest = band.rest;
    int count = 0;
    for (const BandHanging& hanging : band.hangings)
        if (!hanging.leftOut && hanging.length) {
            ++count;
            longest = longest && *longest > *hanging.length ? longest : hanging.length;
        }
    const QString hangings = tr("%n hangings", nullptr, count);
    return longest ? tr("%1, to %2").arg(hangings, say::inLengthUnit(say::entered(*longest))) : hangings;
}

}

QString bodySize(const BodySize& size)
{
    QStringList parts;
    if (size.mass)
        parts << say::inMassUnit(say::entered(*size.mass));
    if (size.height)
        parts << say::inLengthUnit(say::entered(*size.height));
    return parts.join(QStringLiteral(" · "));
}

QString measured(const Measured& measured)
{
    if (const auto* chain = std::get_if<ChainMeasurement>(&measured))
        return chainText(*chain);
    if (const auto* band = std::get_if<BandMeasurement>(&measured))
        return bandText(*band);
    if (const auto* aid = std::get_if<AidMeasurement>(&measured))
        return tr("%n heights", nullptr, static_cast<int>(aidReadingsThatCount(*aid).size()));
    if (const auto* machine = std::get_if<MachineMeasurement>(&measured)) {
        const int count = static_cast<int>(machineReadingsThatCount(*machine).size());
        return machine->by == MachineMeasuring::Pull ? tr("%n places, by its pull", nullptr, count) : tr("%n angles, by its radius", nullptr, count);
    }
    return tooltexts::said(measured);
}

QString age(std::chrono::sys_days day, std::chrono::sys_days today)
{
    constexpr std::chrono::days::rep week = 7, month = 30, year = 365;
    const auto days = (today - day).count();
    if (days <= 0)
        return days == 0 ? tr("today") : tr("still to come");
    if (days == 1)
        return tr("yesterday");
    if (days < 3 * week)
        return tr("%n days old", nullptr, days);
    if (days < 3 * month)
        return tr("%n weeks old", nullptr, days / week);
    return days < 2 * year ? tr("%n months old", nullptr, days * 12 / year) : tr("%n years old", nullptr, days / year);
}

QString bodySizeBefore(const BookService& book, const RecordId& athlete, const BodySize& size)
{
    const auto righted = book.book().righted(bodySizePlace(size.id, athlete));
    const auto first = righted ? bodySizeIn(righted->first->body.content) : std::nullopt;
    return first ? before(book, *righted, bodySize(*first)) : QString();
}

QString measurementBefore(const BookService& book, const MeasurementRecord& record)
{
    const auto righted = book.book().righted(measurementPlace(record.id));
    const auto first = righted ? measurementIn(righted->first->body.content) : std::nullopt;
    return first ? before(book, *righted, measured(first->measured)) : QString();
}

QDateTime moment(const BookService& book, const journal::Held& entry)
{
    const journal::ShownTime shown = book.book().fold().shown(entry);
    const QTimeZone zone(QByteArray::fromStdString(entry.body.zone));
    return QDateTime::fromMSecsSinceEpoch(std::chrono::duration_cast<std::chrono::milliseconds>(shown.time.time_since_epoch()).count(),
                                          zone.isValid() ? zone : QTimeZone::utc());
}

QString whenAndWhere(BookService& book, const journal::Held& entry)
{
    const QString when = QLocale().toString(moment(book, entry), tr("d MMM yyyy, hh:mm"));
    const auto& deeds = book.keeping().deeds();
    if (!deeds.empty() && deeds.front().entries.front().chain.origin == entry.chain.origin)
        return tr("%1, on this device").arg(when);
    const QString device = QByteArray(reinterpret_cast<const char*>(entry.chain.origin.bytes.data()), 2).toHex().toUpper();
    return tr("%1, on device %2").arg(when, device);
}

}
