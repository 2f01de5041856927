// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/walk.h"

#include <QApplication>
#include <QDir>
#include <QDirIterator>
#include <QElapsedTimer>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>

#include <algorithm>
#include <array>
#include <cstdio>

namespace {

/// Pictures of an earlier tour would pass for new ones.
void clear(QDir& folder)
{
    static const QRegularExpression ours(QStringLiteral("^\\d\\d-.*-(phone|tablet)-(light|dark|sun|largest-text)(-\\d+)?\\.png$"));
    for (const QString& file : folder.entryList(QDir::Files))
        if (ours.match(file).hasMatch())
            folder.remove(file);
}

struct Form {
    const char* name;
    QSize size;
};
constexpr std::array forms{Form{"phone", {360, 720}}, Form{"tablet", {1280, 800}}};

/// What all walks came to.
struct Outcome {
    QSet<QString> seen;
    QStringList troubles;
    int pictureCount = 0;
};

/// A walk of the whole way takes longer on a phone than on a tablet: in stretches no core waits for another.
constexpr int stretches = 2;

/// All side by side, each in a process of its own, since one process draws on one core.
Outcome walkAll(const QString& folder)
{
    std::array<QProcess, forms.size() * stretches> walks;
    for (std::size_t i = 0; i < walks.size(); ++i)
        walks[i].start(QCoreApplication::applicationFilePath(), {folder, QLatin1String(forms[i / stretches].name), QString::number(i % stretches)});
    Outcome all;
    for (QProcess& walk : walks) {
        walk.waitForFinished(-1);
        const QString said = QString::fromUtf8(walk.readAllStandardError());
        all.troubles << said.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        if (walk.exitStatus() != QProcess::NormalExit || (walk.exitCode() != 0 && said.isEmpty()))
            all.troubles << QStringLiteral("a walk broke off: ") + walk.errorString();
        for (const QByteArray& line : walk.readAllStandardOutput().split('\n')) {
            if (line.startsWith("seen "))
                all.seen << QString::fromUtf8(line.mid(5));
            if (line.startsWith("taken "))
                all.pictureCount += line.mid(6).toInt();
        }
    }
    return all;
}

/// Every page that the app has must have been in a picture.
QStringList missed(const QSet<QString>& seen)
{
    QStringList troubles;
    QDirIterator pages(QStringLiteral(":/qt/qml/Steelyard/Pages"), {QStringLiteral("*Page.qml")}, QDir::Files, QDirIterator::Subdirectories);
    if (!pages.hasNext())
        troubles << QStringLiteral("the app's pages are not to be found");
    while (pages.hasNext()) {
        pages.next();
        const QString page = pages.fileInfo().completeBaseName();
        if (!seen.contains(page))
            troubles << QStringLiteral("no picture of %1").arg(page);
    }
    return troubles;
}

}

int main(int argc, char* argv[])
{
    walk::noteWarnings();
    QApplication app(argc, argv); // Qt Charts draws with widgets
    const auto form = std::find_if(forms.begin(), forms.end(), [&](const Form& one) { return argc >= 3 && QByteArray(argv[2]) == one.name; });
    if (argc != 2 && form == forms.end()) {
        std::fputs("steelyard_tour FOLDER: writes a numbered picture of every page in its main states; earlier ones of its own go\n", stderr);
        return 2;
    }
    QDir folder(QString::fromLocal8Bit(argv[1]));
    if (!folder.mkpath(QStringLiteral("."))) {
        std::fprintf(stderr, "%s cannot be made\n", argv[1]);
        return 2;
    }
    if (form != forms.end())
        return walk::through(folder, QLatin1String(form->name), form->size, argc == 4 ? walk::Stretch{QByteArray(argv[3]).toInt(), stretches} : walk::Stretch{});
    clear(folder);
    QElapsedTimer clock;
    clock.start();
    Outcome all = walkAll(folder.path());
    all.troubles << missed(all.seen) << walk::warnings();
    for (const QString& trouble : all.troubles)
        std::fprintf(stderr, "%s\n", qPrintable(trouble));
    std::printf("%d pictures in %.1f s, %d troubles\n", all.pictureCount, static_cast<double>(clock.elapsed()) / 1000, static_cast<int>(all.troubles.size()));
    return all.troubles.isEmpty() ? 0 : 1;
}
