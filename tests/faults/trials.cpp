// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/trials.h"

#include "tests/faults/disk.h"

namespace faults {

namespace {

long operationsOf(std::uint32_t day)
{
    const QTemporaryDir dir;
    const std::string root = dir.path().toStdString();
    arm({root});
    live(root, day, [](const std::string&) {});
    return disarm();
}

QString faultOfKill(std::uint32_t day, Trouble trouble, long at)
{
    const QTemporaryDir dir;
    const std::string root = dir.path().toStdString();
    Told told;
    const bool ended = inAProcess(
        [&](const Tell& tell) {
            arm({root, trouble, at});
            live(root, day, tell);
        },
        told);
    if (ended)
        return "the process was to be killed";
    arm({root});
    const QString fault = faultOf(root, told, day, 1);
    disarm();
    return fault.isEmpty() ? fault : QString("day %1, operation %2, kind %3: %4").arg(day).arg(at).arg(static_cast<int>(trouble)).arg(fault);
}

QString faultOfImage(const Disk& disk, Disk::Lost lost, std::mt19937& engine, const Told& told, std::uint32_t day)
{
    const QTemporaryDir dir;
    const std::string root = dir.path().toStdString();
    disk.layOut(root, lost, engine);
    arm({root});
    const QString fault = faultOf(root, told, day, 1);
    disarm();
    return fault;
}

}

QString faultOfKills(int wanted, std::uint32_t firstDay)
{
    int done = 0;
    for (std::uint32_t day = firstDay; done < wanted; ++day) {
        const long count = operationsOf(day);
        if (count < 150)
            return QString("a day of %1 operations only").arg(count);
        const long stride = std::max(1L, 2 * count / wanted);
        for (long at = 1 + day % stride; at <= count && done < wanted; at += stride, done += 2)
            for (const Trouble trouble : {Trouble::Kill, Trouble::KillHalfWay})
                if (const QString fault = faultOfKill(day, trouble, at); !fault.isEmpty())
                    return fault;
    }
    return {};
}

QString faultOfPowerCuts(int wanted, std::uint32_t day)
{
    const QTemporaryDir dir;
    std::vector<Operation> operations;
    Plan plan{dir.path().toStdString()};
    plan.record = &operations;
    arm(plan);
    live(plan.root, day, recordTold);
    disarm();
    if (operations.size() < 150)
        return QString("a day of %1 operations only").arg(operations.size());

    Disk disk;
    Told told;
    std::mt19937 engine(day);
    int done = 0;
    for (std::size_t at = 0; at < operations.size(); ++at) {
        disk.apply(operations[at]);
        if (operations[at].what == Operation::What::Told)
            told.hear(operations[at].name);
        const int due = static_cast<int>(static_cast<std::size_t>(wanted) * (at + 1) / operations.size());
        for (; done < due; ++done) {
            const Disk::Lost lost = done % 5 == 0 ? Disk::Lost::Everything : done % 5 == 1 ? Disk::Lost::Nothing : Disk::Lost::ByChance;
            if (const QString fault = faultOfImage(disk, lost, engine, told, day); !fault.isEmpty())
                return QString("day %1, after operation %2, image %3: %4").arg(day).arg(at).arg(done).arg(fault);
        }
    }
    return done == wanted ? QString() : QString("only %1 images").arg(done);
}

}
