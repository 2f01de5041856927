// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/door/samplehouse.h"

#include "core/sample/samplevault.h"
#include "mobile/text/keepingtexts.h"

#include <QFile>
#include <QSettings>

using namespace steelyard;

namespace samplehouse {

namespace {

const QString removedKey = QStringLiteral("sample/removed");

}

bool askedFor(const QStringList& arguments)
{
    if (arguments.contains(QStringLiteral("--sample-again"))) {
        QSettings().remove(removedKey);
        return true;
    }
    return arguments.contains(QLatin1String(argument)) && !QSettings().value(removedKey).toBool();
}

void rememberRemoved()
{
    QSettings().setValue(removedKey, true);
}

sample::Season carried(std::chrono::sys_days today, QStringList& faults)
{
    sample::SeasonTexts texts;
    for (const std::string& name : sample::seasonFileNames) {
        QFile file(QStringLiteral(":/steelyard/club/") + QString::fromStdString(name));
        if (file.open(QIODevice::ReadOnly))
            texts[name] = file.readAll().toStdString();
    }
    sample::Faults found;
    sample::Season season = sample::readSeason(texts, today, found);
    for (const std::string& fault : found)
        faults << QString::fromStdString(fault);
    return season;
}

QString makeReady(const AppVault::Folders& folders, std::chrono::sys_days today)
{
    std::error_code ignored;
    if (std::filesystem::exists(folders.vault, ignored))
        return {};
    QStringList faults;
    const sample::Season season = carried(today, faults);
    if (!faults.isEmpty())
        return faults.front();
    const auto notMade = sample::makeSampleVault({folders.vault, folders.install}, season, today);
    if (!notMade)
        return {};
    const Told told = notMade->notKept ? notMade->notKept->told : Told{{}, std::nullopt, notMade->refusal};
    const QString why = keepingtexts::refusal(told).head;
    return notMade->notKept ? QString::fromStdString(notMade->notKept->what) + QStringLiteral(": ") + why : why;
}

}
