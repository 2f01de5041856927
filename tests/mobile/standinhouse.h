// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/deskservice.h"
#include "mobile/door/vaultservice.h"
#include "mobile/preferences.h"
#include "tests/core/work/memorykeeper.h"
#include "tests/mobile/door/fakevault.h"

#include <QCoreApplication>

/** What pages reach, without a disk: an open door, and a book that is kept in memory through the journal's own codec. */
struct StandInHouse {
    keeping::MemoryKeeper keeper;
    FakeVault vault;
    DeskService desk;
    std::chrono::sys_days today = keeping::day(2026, 11, 2);
    OneBook book{keeper, numberedids::counted(1000), [this] { return steelyard::Here{today, "Europe/Berlin"}; }};
    Preferences preferences;
    int restartCount = 0;
    OneVault door{vault, {}, [this] { ++restartCount; return true; }};

    /// Shows itself to QML.
    StandInHouse()
    {
        DeskForeign::instance = &desk;
        BookForeign::instance = &book;
        VaultForeign::instance = &door;
        PreferencesForeign::instance = &preferences;
    }
    /// Before the door, which looks at a vault that stands like this.
    void stand(const steelyard::vault::Look& look)
    {
        vault.standing = look;
        door.look();
        while (door.state() == VaultService::State::Looking)
            QCoreApplication::processEvents();
    }
    /// Past the door, of an own vault or of a sample.
    void open(steelyard::seal::VaultNature nature = steelyard::seal::VaultNature::Own)
    {
        if (door.state() == VaultService::State::Open && vault.standing.nature == nature)
            return;
        vault.answer.reset();
        stand({steelyard::vault::Standing::None, std::nullopt, nature});
        auto code = steelyard::seal::RecoveryCode::generate(sealing::countingRandom());
        door.create({}, *std::move(code));
        while (door.state() == VaultService::State::Working)
            QCoreApplication::processEvents();
    }
};
