// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vault/migrations/migrations.h"

#include <array>

namespace steelyard::vault {

std::span<const Migration> migrations()
{
    static const std::array all{Migration{1, layout1}};
    return all;
}

Outcome<Done> migrate(Database& database, std::span<const Migration> steps)
{
    const std::optional<std::string> answer = database.answer("PRAGMA user_version");
    if (const Outcome<Done> read = database.outcome(); !read)
        return read;
    const std::int64_t present = answer ? std::stoll(*answer) : 0;
    const std::int64_t newest = steps.back().versionNumber;
    if (present > newest)
        return Code::NewerVersionUpdateApp;
    if (present == newest)
        return Done{};
    Transaction all(database);
    for (const Migration& step : steps)
        if (step.versionNumber > present && !database.failed())
            step.apply(database);
    database.runScript("PRAGMA user_version=" + std::to_string(newest));
    const Outcome<Done> committed = all.commit();
    if (!committed && present > 0)
        return Code::MigrationStoppedOldVaultStands;
    return committed;
}

}
