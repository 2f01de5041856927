// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/itinerary.h"

std::vector<Stop> itinerary()
{
    const QString empty = QStringLiteral("1-empty-start"), iron = QStringLiteral("2-plain-iron"), low = QStringLiteral("3-short-lifter-chains"),
                  tall = QStringLiteral("4-tall-lifter-chains-and-bands"), past = QStringLiteral("5-past-the-measurement"),
                  dead = QStringLiteral("6-deadlift-with-chains"), above = QStringLiteral("7-bands-from-above"), weak = QStringLiteral("8-anchor-too-light");
    using steelyard::vault::Code;
    using steelyard::vault::Look;
    using steelyard::vault::Refusal;
    using steelyard::vault::Standing;
    std::vector<Stop> stops;
    const auto stop = [&stops](const char* name, const QString& season, const char* page, const QStringList& deeds = {}) -> Stop& {
        return stops.emplace_back(Stop{QLatin1String(name), season, QLatin1String(page), deeds});
    };
    const auto door = [&](const char* name, Standing standing, const char* page, const QStringList& deeds = {}) -> Stop& {
        Stop& made = stop(name, QStringLiteral("1-empty-start"), page, deeds);
        made.look = Look{standing, std::nullopt};
        return made;
    };
    const auto stopped = [&](const char* name, Code code) -> Stop& {
        Stop& made = door(name, Standing::Trouble, "StoppedPage");
        made.look->trouble = Refusal{code};
        return made;
    };
    const auto squad = [&](const char* name, const char* page, int people, const QStringList& deeds) -> Stop& {
        Stop& made = stop(name, QStringLiteral("4-tall-lifter-chains-and-bands"), page, deeds);
        made.people = people;
        return made;
    };
    const auto deeds = [](const char* all) { return QString::fromLatin1(all).split(QStringLiteral(", ")); };

    door("first-start", Standing::None, "WelcomePage").everywhere = true;
    door("first-start-five-words", Standing::None, "PassphrasePage", deeds("press mainAction")).everywhere = true;
    door("first-start-words-mistyped", Standing::None, "PassphrasePage", deeds("press mainAction, type second not_those, press mainAction"));
    door("first-start-own-passphrase", Standing::None, "PassphrasePage", deeds("press own, type first a_long_sentence, type second a_long"));
    door("first-start-recovery-code", Standing::None, "CodePage", deeds("press mainAction, copy words second, press mainAction")).everywhere = true;
    door("first-start-code-again", Standing::None, "RetypePage", deeds("press mainAction, copy words second, press mainAction, press mainAction, type entry KAMR4W-"));
    door("first-start-code-typed-back", Standing::None, "RetypePage", deeds("press mainAction, copy words second, press mainAction, press mainAction, copy code entry")).everywhere = true;
    door("first-start-disk-full", Standing::None, "WelcomePage", deeds("press mainAction, copy words second, press mainAction, press mainAction, copy code entry, press mainAction")).answer = Code::DiskFullFreeSpace;
    door("unlock", Standing::Locked, "UnlockPage", deeds("type entry correct_horse")).everywhere = true;
    door("unlock-by-recovery-code", Standing::Locked, "UnlockPage", deeds("press otherWay, type entry KAMR4W"));
    door("unlock-wrong", Standing::Locked, "UnlockPage", deeds("type entry correct_house, press mainAction")).answer = Code::WrongSecretTypeAgain;
    stopped("stopped-in-use", Code::SecondInstanceCloseOther).everywhere = true;
    stopped("stopped-damaged", Code::PageDamagedRestoreBackup);
    stopped("stopped-newer", Code::NewerVersionUpdateApp);
    stopped("stopped-empty-file", Code::DatabaseEmptyRestoreBackup);

    const auto example = [&](const char* name, const char* page, const QStringList& deeds) -> Stop& {
        Stop& made = stop(name, QStringLiteral("1-empty-start"), page, deeds);
        made.sample = made.everywhere = true;
        return made;
    };
    Stop& exampleDoor = door("example-unlock", Standing::Locked, "UnlockPage");
    exampleDoor.look->nature = steelyard::seal::VaultNature::Sample;
    exampleDoor.everywhere = true;
    example("example-squad", "SquadPage", deeds("place 0"));
    example("example-athlete-long-name", "AthletePage", deeds("place 0, row 11"));
    example("example-set-ups", "SetupsPage", deeds("place 0, row 0, press setups"));
    example("example-set-up", "SetupPage", deeds("place 0, row 3, press setups, press setup:*"));
    example("example-set-up-bench-aid", "SetupPage", deeds("place 0, row 4, press setups, press setup:*"));
    example("example-kit", "ThingsPage", deeds("press hangMore")).everywhere = false;
    example("example-chain-on-a-scale", "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 180, press mainAction, key 10.3, press mainAction, choose scales 2"));
    example("example-bar-weighed", "BarPage", deeds("press barHere, choose weighedBars 1, press weighedPlates:0"));
    example("example-marks-by-hole", "MarksPage", deeds("place 0, row 16, press lifts, press lift:1, choose readBy 1"));
    example("example-hangs-by-a-strap", "HangPage", deeds("press hangMore, press item:2/thing")).everywhere = false;
    example("example-preferences", "PreferencesPage", deeds("place 0, press preferences")).everywhere = false;
    example("example-strength", "StrengthPage", deeds("place 0, row 0, press strength"));
    example("example-strength-of-a-lift", "LiftStrengthPage", deeds("place 0, row 0, press strength, press strength:1"));
    example("example-strength-refused", "LiftStrengthPage", deeds("place 0, row 2, press strength, press strength:6")).everywhere = false;
    example("example-test-put-right", "TestPage", deeds("place 0, row 0, press strength, press strength:1, press open:1")).everywhere = false;
    example("example-test-of-a-chin-up", "TestPage", deeds("place 0, row 0, press strength, press strength:12, press mainAction, press field:load, key 10, press mainAction, choose what 1"));
    example("example-set-up-in-per-cent", "SetupPage", deeds("place 0, row 0, press setups, press setup:*"));
    example("example-what-to-hang-filled-in", "WhatToHangPage", deeds("place 0, row 0, press setups, press setup:*, press whatToHang, choose said 1, press ask:top, key 85, press mainAction"));
    example("example-warm-up", "RampPage", deeds("place 0, row 0, press setups, press setup:*, press ramp"));
    example("example-remove", "RemoveSamplePage", deeds("place 0, press preferences, press removeSample"));

    example("example-day-status", "DayStatusPage", deeds("place 0, row 9, press dayStatus"));
    example("example-cleared", "ClearancesPage", deeds("place 0, row 9, press clearances"));
    example("example-cleared-under-age", "ClearancePage", deeds("place 0, row 13, press clearances, press dated:0")).everywhere = false;

    const QString pitch = QStringLiteral("press hangMore, choose venues 1, ");
    example("example-just-arrived", "ArrivalPage", (pitch + QStringLiteral("press arrival")).split(QStringLiteral(", ")));
    example("example-what-she-may-use", "HerePage", (pitch + QStringLiteral("place 0, row 0, press here")).split(QStringLiteral(", ")));
    example("example-use-a-tyre", "UsePage", (pitch + QStringLiteral("place 0, row 0, press here, press thing:2")).split(QStringLiteral(", ")));
    example("example-use-a-keg", "UsePage", (pitch + QStringLiteral("place 0, row 0, press here, press thing:10")).split(QStringLiteral(", "))).everywhere = false;
    example("example-held-against", "CapPage", (pitch + QStringLiteral("place 0, row 0, press here, press thing:3, press against")).split(QStringLiteral(", "))).everywhere = false;
    example("example-sled", "SledPage", (pitch + QStringLiteral("place 0, row 0, press here, press thing:1, press sled")).split(QStringLiteral(", ")));
    example("example-sled-pulled", "SurfacePage", (pitch + QStringLiteral("place 0, row 0, press here, press thing:1, press sled, press pull")).split(QStringLiteral(", "))).everywhere = false;
    example("example-sled-run", "RunPage", (pitch + QStringLiteral("place 0, row 0, press here, press thing:1, press sled, press run")).split(QStringLiteral(", "))).everywhere = false;
    example("example-tyre-by-its-edge", "ToolStepsPage", deeds("press hangMore, press newOther, press kind:tyre, press choose:0, key 62, press mainAction"));
    example("example-keg-lying", "ToolStepsPage", deeds("press hangMore, press newOther, press kind:keg, press choose:3, key 12.5, press mainAction")).everywhere = false;
    example("example-bell-new", "ToolStepsPage", deeds("press hangMore, press newOther, press kind:bell")).everywhere = false;

    squad("squad-empty", "SquadPage", 0, deeds("place 0"));
    squad("squad-of-26", "SquadPage", 26, deeds("place 0")).everywhere = true;
    squad("squad-a-handful", "SquadPage", 26, deeds("place 0, choose letters 1"));
    squad("athlete-new", "AthletePage", 3, deeds("place 0, press add"));
    squad("athlete", "AthletePage", 3, deeds("place 0, row 0")).everywhere = true;
    squad("athlete-under-18", "AthletePage", 3, deeds("place 0, row 1"));
    squad("athlete-agreement", "AgreementPage", 3, deeds("place 0, row 1, press agreement")).everywhere = true;
    squad("day-status-all", "DayStatusPage", 3, deeds("place 0, row 0, press dayStatus"));
    squad("day-status-some", "StatusPage", 3, deeds("place 0, row 0, press dayStatus, press mainAction, choose fitness 1, press methods/option:8, press groups/option:2, type who the_physiotherapist, choose until 4")).everywhere = true;
    squad("day-status-of-a-minor", "StatusPage", 3, deeds("place 0, row 1, press dayStatus, press mainAction, choose fitness 1"));
    squad("day-status-lift", "EndPage", 3, deeds("place 0, row 0, press dayStatus, press mainAction, choose fitness 2, type who the_physiotherapist, press mainAction, press dated:0, press throw"));
    squad("clearances-none", "ClearancesPage", 3, deeds("place 0, row 0, press clearances"));
    squad("clearance", "ClearancePage", 3, deeds("place 0, row 0, press clearances, press mainAction, press lift, press pick:0, press method, press pick:1, type who the_head_coach, choose until 2")).everywhere = true;
    squad("clearance-which-method", "PickPage", 3, deeds("place 0, row 0, press clearances, press mainAction, press method"));
    squad("set-up-not-now", "SetupPage", 3, deeds("place 0, row 0, press dayStatus, press mainAction, choose fitness 2, type who the_physiotherapist, press mainAction, press back, press lifts, press lift:1, press mainAction")).everywhere = true;
    squad("limits", "LimitsPage", 0, deeds("place 0, press preferences, press limits, press limit0/stepDown")).everywhere = true;
    squad("athlete-take-out", "TakeOutPage", 3, deeds("place 0, row 1, press throw")).everywhere = true;
    squad("strength-none", "StrengthPage", 3, deeds("place 0, row 0, press strength"));
    squad("strength-under-18", "StrengthPage", 3, deeds("place 0, row 1, press strength"));
    squad("test-new", "TestPage", 3, deeds("place 0, row 0, press strength, press strength:1, press mainAction"));
    squad("test-of-a-set", "TestPage", 3, deeds("place 0, row 0, press strength, press strength:1, press mainAction, press field:load, key 100, press mainAction, press more, choose reserve 2")).everywhere = true;
    squad("test-refused", "TestPage", 3, deeds("place 0, row 0, press strength, press strength:1, press mainAction, press field:load, key 60, press mainAction, press more, press more, press more, press more, press more, press more, press more"));
    squad("lifts", "LiftsPage", 3, deeds("place 0, row 0, press lifts")).everywhere = true;
    squad("marks-of-a-lift", "MarksPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press field:top, key 128, press mainAction"));
    squad("marks-in-a-row", "MarksRunPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press inARow, key 78")).everywhere = true;
    squad("marks-in-a-row-kept", "MarksRunPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press inARow, key 78, press mainAction, press mainAction, choose copyTo 0")).everywhere = true;
    squad("set-up-for-her", "SetupPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press mainAction")).everywhere = true;
    squad("set-up-kept-undo", "SetupPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press mainAction, press keepSetup"));
    squad("set-ups-none", "SetupsPage", 3, deeds("place 0, row 0, press setups"));
    squad("set-ups-kept", "SetupsPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press mainAction, press keepSetup, place 0, row 0, press setups")).everywhere = true;
    squad("done-lately-nothing", "DeedsPage", 3, deeds("place 0, press deeds"));
    squad("done-lately", "DeedsPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press mainAction, press keepSetup, place 0, press deeds")).everywhere = true;
    const auto back = [&](const char* name, const char* page, const QStringList& deeds) -> Stop& {
        Stop& made = squad(name, page, 3, deeds);
        made.lookback = true;
        return made;
    };
    back("squad-something-to-settle", "SquadPage", deeds("place 0"));
    back("to-be-settled", "ReviewPage", deeds("place 0, press review")).everywhere = true;
    back("athlete-measured-by-day", "AthletePage", deeds("place 0, row 0"));
    back("measured-by-day", "SizesPage", deeds("place 0, row 0, press sizes")).everywhere = true;
    back("put-right-a-body-mass", "SizePage", deeds("place 0, row 0, press sizes, press dated:1, press field:mass, key 74.2, press mainAction")).everywhere = true;
    back("measured-on-a-thing", "MeasurementsPage", deeds("press hangMore, press item:1/measure, press form, press measurements")).everywhere = true;
    back("put-right-a-chain", "ChainPage", deeds("press hangMore, press item:1/measure, press form, press measurements, press dated:0")).everywhere = true;
    back("lifts-one-added", "LiftsPage", deeds("place 0, row 0, press lifts")).everywhere = true;
    squad("lift-of-ones-own", "LiftPage", 3, deeds("place 0, row 0, press lifts, press addLift, choose like 3")).everywhere = true;
    squad("set-up-looked-over-on", "SetupPage", 3, deeds("place 0, row 0, press lifts, press lift:1, press mainAction, press keepSetup, press caution:0/accept, press caution:1/accept, press caution:100/accept"));
    Stop& news = squad("news-of-the-vault", "NewsPage", 3, {});
    news.news = news.everywhere = true;
    squad("venue-new", "VenuePage", 0, deeds("press hangMore, press newVenue")).everywhere = true;

    const QString twoPlaces = QStringLiteral("press hangMore, press newVenue, type venue Home_gym, press mainAction, press newVenue, type venue School_hall, press mainAction");
    const auto there = [&](const QString& more) { return deeds(qPrintable(twoPlaces + more)); };
    stop("kit-of-a-venue", tall, "ThingsPage", there(QStringLiteral(", press along, press thing:0, press thing:1, press mainAction"))).everywhere = true;
    stop("take-along", tall, "AlongPage", there(QStringLiteral(", press along, press thing:0"))).everywhere = true;
    stop("copy-a-list-nothing-there", tall, "CopyListPage", there(QStringLiteral(", press copyList")));
    stop("lend", tall, "LoanPage", deeds("press hangMore, press item:1/measure, press loan, choose kind 2, type who the_rowers, choose when 3")).everywhere = true;
    stop("borrow-until-another-day", tall, "LoanPage", deeds("press hangMore, press item:1/measure, press loan, choose kind 1, type who the_school, choose when 5"));
    stop("kit-lent", tall, "ThingsPage", deeds("press hangMore, press item:1/measure, press loan, choose kind 2, type who the_rowers, choose when 3, press mainAction"));
    stop("set-up-lent", tall, "SetupPage", deeds("press hangMore, press item:1/measure, press loan, choose kind 2, type who the_rowers, press mainAction, press back"));
    stop("where-a-chains-number-comes-from", tall, "ItemOriginPage", deeds("press hangMore, press item:1/measure, press form, press origin")).everywhere = true;
    stop("where-a-bands-number-comes-from", tall, "ItemOriginPage", deeds("press hangMore, press item:2/measure, press form, press origin"));
    example("example-copy-a-list", "CopyListPage", deeds("press hangMore, choose venues 2, press copyList"));
    example("example-list-copied", "ThingsPage", deeds("press hangMore, choose venues 2, press copyList, press mainAction"));

    stop("set-up-empty", empty, "SetupPage").everywhere = true;
    stop("set-up-plain-iron", iron, "SetupPage");
    stop("set-up-short-lifter-chains", low, "SetupPage");
    stop("set-up-tall-lifter-chains-and-bands", tall, "SetupPage").everywhere = true;
    stop("set-up-looked-over", tall, "SetupPage", deeds("press caution:0/accept, press caution:1/accept"));
    stop("set-up-read-at-a-height", tall, "SetupPage", deeds("press readHigher, press readHigher"));
    stop("set-up-heavier", tall, "SetupPage", deeds("press load/stepUp, press load/stepUp"));
    stop("what-to-hang-nothing-wanted", tall, "WhatToHangPage", deeds("press whatToHang")).everywhere = true;
    stop("what-to-hang", tall, "WhatToHangPage", deeds("press whatToHang, press ask:top, key 97.5, press mainAction")).everywhere = true;
    stop("what-to-hang-not-with-this-kit", tall, "WhatToHangPage", deeds("press whatToHang, press ask:bottom, key 40, press mainAction, press ask:top, key 160, press mainAction"));
    stop("what-to-hang-in-per-cent", tall, "WhatToHangPage", deeds("press whatToHang, choose said 1, press ask:bottom, key 70, press mainAction, press ask:top, key 90, press mainAction, press maximum, key 110, press mainAction"));
    stop("what-to-hang-everywhere-wanted", tall, "WhatToHangPage", deeds("press whatToHang, press ask:bottom, key 80, press mainAction, press ask:zone, key 90, press mainAction, press ask:top, key 100, press mainAction, press ask:mean, key 90, press mainAction"));
    const QString pulls = QStringLiteral("press whatToHang, choose level 1, press pulls, press field:height, key 92, press mainAction, key 128, press mainAction, press mainAction, "
                                         "press field:height, key 115, press mainAction, key 121, press mainAction, press mainAction, "
                                         "press field:height, key 158, press mainAction, key 203, press mainAction, press mainAction");
    stop("isometric-pulls-none", tall, "PullsPage", deeds("press whatToHang, choose level 1, press pulls"));
    stop("isometric-pulls", tall, "PullsPage", pulls.split(QStringLiteral(", "))).everywhere = true;
    stop("what-to-hang-level", tall, "WhatToHangPage", (pulls + QStringLiteral(", press back, press ask:bottom, key 75, press mainAction, press ask:top, key 105, press mainAction")).split(QStringLiteral(", "))).everywhere = true;
    const QString hooks = QStringLiteral("place 0, row 0, press lifts, press lift:1, press mainAction, press release, choose way 0, choose said 1"),
                  measured = hooks + QStringLiteral(", press measures, press field:frame, key 3.2, press mainAction, key 25, press mainAction, key 12, press mainAction, "
                                                    "press field:rep:0, key 77, press mainAction, key 78.5, press mainAction, key 76, press mainAction, press field:spacing, key 160, press mainAction");
    const auto lowering = [&](const char* name, const char* page, const QString& done) -> Stop& { return squad(name, page, 3, done.split(QStringLiteral(", "))); };
    stop("way-down-nothing-planned", tall, "EccentricPage", deeds("press release")).everywhere = true;
    lowering("way-down-hooks-nothing-measured", "EccentricPage", hooks);
    lowering("way-down-hook-and-depth", "HookMeasuresPage", measured).everywhere = true;
    lowering("way-down-not-cleared", "EccentricPage", measured + QStringLiteral(", press mainAction")).everywhere = true;
    stop("set-up-hung-as-found", tall, "SetupPage", deeds("press whatToHang, press ask:top, key 97.5, press mainAction, press mainAction"));
    stop("set-up-past-the-measurement", past, "SetupPage");
    stop("set-up-deadlift", dead, "SetupPage");
    stop("set-up-bands-from-above", above, "SetupPage");
    stop("set-up-do-not-lift", weak, "SetupPage").everywhere = true;

    stop("marks-empty", empty, "MarksPage", deeds("press marks"));
    stop("marks-own-bottom", tall, "MarksPage", deeds("press marks")).everywhere = true;
    stop("marks-from-the-floor", dead, "MarksPage", deeds("press marks"));
    stop("marks-out-of-order", tall, "MarksPage", deeds("press marks, press field:top, key 50, press mainAction"));

    stop("where-it-comes-from", tall, "OriginPage", deeds("press origin")).everywhere = true;
    stop("at-each-height", tall, "HeightsPage", deeds("press heights")).everywhere = true;
    stop("at-each-height-past-the-measurement", past, "HeightsPage", deeds("press heights"));
    stop("where-it-comes-from-mean", tall, "OriginPage", deeds("press origin, choose numbers 3"));

    stop("bar-filled-in", empty, "BarPage", deeds("press barHere"));
    stop("bar-and-plates", tall, "BarPage", deeds("press barHere")).everywhere = true;

    stop("kit-empty", empty, "ThingsPage", deeds("press hangMore"));
    stop("kit", tall, "ThingsPage", deeds("press hangMore")).everywhere = true;
    stop("kit-with-a-chain-begun", tall, "ThingsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 200, press mainAction, press later"));

    stop("chain-new", empty, "ChainPage", deeds("press hangMore, press newOther, press kind:chain, press form"));
    stop("chain-weighed", tall, "ChainPage", deeds("press hangMore, press item:1/measure, press form")).everywhere = true;
    stop("chain-gauged", low, "ChainPage", deeds("press hangMore, press item:1/measure, press form"));

    stop("band-new", empty, "BandPage", deeds("press hangMore, press newOther, press kind:band, press form"));
    stop("band-of-three-hangings", past, "BandPage", deeds("press hangMore, press item:1/measure, press form"));
    stop("band-with-its-fit", tall, "BandPage", deeds("press hangMore, press item:2/measure, press form"));
    stop("band-with-an-odd-hanging", tall, "BandPage", deeds("press hangMore, press item:3/measure, press form")).everywhere = true;
    stop("band-odd-hanging-left-out", tall, "BandPage", deeds("press hangMore, press item:3/measure, press form, press hanging:4/leaveOut"));

    stop("chain-step-how", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain")).everywhere = true;
    stop("chain-step-length", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 180")).everywhere = true;
    stop("chain-step-mass", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 180, press mainAction"));
    stop("chain-step-scale", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 180, press mainAction, key 10.3, press mainAction"));
    stop("chain-step-back", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 180, press mainAction, press back"));
    stop("chain-step-result", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byWeight, key 180, press mainAction, key 10.3, press mainAction, key 0.1, press mainAction")).everywhere = true;
    stop("chain-step-wire", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byLink, key 180, press mainAction"));
    stop("chain-step-pitch", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byLink, key 180, press mainAction, key 16, press mainAction"));
    stop("chain-step-long-link", tall, "ChainStepsPage", deeds("press hangMore, press newOther, press kind:chain, press byLink, key 180, press mainAction, key 16, press mainAction, key 56, press mainAction"));
    stop("chain-step-drift", tall, "ChainStepsPage", deeds("press hangMore, press item:1/measure, press byWeight, key 120, press mainAction, key 6, press mainAction, key 0.05, press mainAction"));
    stop("kit-look-over", tall, "InspectPage", deeds("press hangMore, press item:1/measure, press inspect, choose fault 1")).everywhere = true;
    stop("kit-out-of-use", tall, "ThingsPage", deeds("press hangMore, press item:1/measure, press inspect, choose fault 1, press mainAction"));
    stop("set-up-out-of-use", tall, "SetupPage", deeds("press hangMore, press item:1/measure, press inspect, choose fault 1, press mainAction, press back"));
    stop("band-step-caution", tall, "BandStepsPage", deeds("press hangMore, press newOther, press kind:band")).everywhere = true;
    stop("band-step-rest", tall, "BandStepsPage", deeds("press hangMore, press newOther, press kind:band, press mainAction"));
    stop("band-step-first-mass", tall, "BandStepsPage", deeds("press hangMore, press newOther, press kind:band, press mainAction, key 50, press mainAction")).everywhere = true;
    stop("band-step-length", tall, "BandStepsPage", deeds("press hangMore, press newOther, press kind:band, press mainAction, key 50, press mainAction, key 5, press mainAction, key 62.5"));
    const QString three = QStringLiteral("press hangMore, press newOther, press kind:band, press mainAction, key 50, press mainAction, key 5, press mainAction, key 62.5, press mainAction, "
                                         "key 10, press mainAction, key 76, press mainAction, key 14, press mainAction, key 92, press mainAction");
    stop("band-step-where-next", tall, "BandStepsPage", deeds(qPrintable(three))).everywhere = true;
    stop("band-step-result", tall, "BandStepsPage", deeds(qPrintable(three + QStringLiteral(", press enough")))).everywhere = true;
    stop("band-step-way-back", tall, "BandStepsPage", deeds(qPrintable(three + QStringLiteral(", press enough, press comeOff"))));

    stop("measure-something-else", tall, "MeasureWhatPage", deeds("press hangMore, press newOther")).everywhere = true;
    const auto aided = [&](const char* name, const char* then) -> Stop& {
        return stop(name, tall, "AidStepsPage", deeds(qPrintable(QStringLiteral("press hangMore, press newOther, press kind:aid") + QLatin1String(then))));
    };
    const QString ends = QStringLiteral(", press mainAction, key 0, press mainAction, key 31, press mainAction, key 62.5, press mainAction, key 0, press mainAction"),
                  two = ends + QStringLiteral(", key 22.5, press mainAction, key 11, press mainAction, key 41, press mainAction, key 5, press mainAction");
    aided("aid-step-caution", "").everywhere = true;
    aided("aid-step-slack", ", press mainAction, key 0").everywhere = true;
    aided("aid-step-height", ", press mainAction, key 0, press mainAction, key 31");
    aided("aid-step-where-next", qPrintable(ends)).everywhere = true;
    aided("aid-step-odd", qPrintable(ends + QStringLiteral(", key 12, press mainAction, key 20, press mainAction, key 4, press mainAction, key 10, press mainAction")));
    aided("aid-step-result", qPrintable(two + QStringLiteral(", press enough"))).everywhere = true;
    stop("aid-on-one-page", tall, "AidPage", deeds(qPrintable(QStringLiteral("press hangMore, press newOther, press kind:aid") + two + QStringLiteral(", press enough, press form"))));
    const auto machine = [&](const char* name, const char* then, const char* page = "MachineStepsPage") -> Stop& {
        return stop(name, tall, page, deeds(qPrintable(QStringLiteral("press hangMore, press newOther, press kind:machine") + QLatin1String(then))));
    };
    const QString cam = QStringLiteral(", press byRadius, key 40, press mainAction, key 0, press mainAction, key 8.1, press mainAction, key 120, press mainAction, key 8.8, press mainAction"),
                  five = cam + QStringLiteral(", key 60, press mainAction, key 12.3, press mainAction, key 30, press mainAction, key 10.6, press mainAction, key 90, press mainAction, key 11.2, press mainAction");
    machine("machine-step-how", "").everywhere = true;
    machine("machine-step-stack", ", press byRadius, key 40");
    machine("machine-step-angle", qPrintable(cam)).everywhere = true;
    machine("machine-step-radius", qPrintable(cam + QStringLiteral(", key 60, press mainAction, key 12.3")));
    machine("machine-step-result", qPrintable(five)).everywhere = true;
    machine("machine-step-pull", ", press byPull, key 40, press mainAction, key 0.5, press mainAction, key 0, press mainAction, key 31.5");
    machine("machine-on-one-page", qPrintable(five + QStringLiteral(", press form")), "MachinePage");

    const QString scale = QStringLiteral("press hangMore, press newOther, press kind:scale"), scaleNumbers = scale + QStringLiteral(", press mainAction, key 0.1, press mainAction, key 0.1, press mainAction, key 20");
    stop("scale-step-how", tall, "ToolStepsPage", deeds(qPrintable(scale))).everywhere = true;
    stop("scale-step-empty", tall, "ToolStepsPage", deeds(qPrintable(scale + QStringLiteral(", press mainAction, key 0.1"))));
    stop("scale-step-known-mass", tall, "ToolStepsPage", deeds(qPrintable(scaleNumbers))).everywhere = true;
    stop("scale-step-good", tall, "ToolStepsPage", deeds(qPrintable(scaleNumbers + QStringLiteral(", press mainAction, key 20.2, press mainAction")))).everywhere = true;
    stop("scale-step-not-good", tall, "ToolStepsPage", deeds(qPrintable(scaleNumbers + QStringLiteral(", press mainAction, key 19.2, press mainAction"))));
    stop("scale-all-numbers", tall, "ToolPage", deeds(qPrintable(scaleNumbers + QStringLiteral(", press mainAction, key 20.2, press mainAction, press form")))).everywhere = true;
    const QString ironHow = QStringLiteral("press hangMore, press newOther, press kind:iron"), plates = ironHow + QStringLiteral(", press choose:1, key 20, press mainAction, key 2, press mainAction, key 40.6");
    stop("iron-step-how", tall, "ToolStepsPage", deeds(qPrintable(ironHow)));
    stop("iron-step-plates", tall, "ToolStepsPage", deeds(qPrintable(plates)));
    stop("iron-step-result", tall, "ToolStepsPage", deeds(qPrintable(plates + QStringLiteral(", press mainAction, key 0.1, press mainAction")))).everywhere = true;
    const QString lead = QStringLiteral("press hangMore, press newOther, press kind:lead, press mainAction, key 62");
    stop("lead-step-length", tall, "ToolStepsPage", deeds(qPrintable(lead)));
    stop("lead-step-result", tall, "ToolStepsPage", deeds(qPrintable(lead + QStringLiteral(", press mainAction, key 0.35, press mainAction"))));
    const QString rack = QStringLiteral("press hangMore, press newOther, press kind:rack, press choose:0, key 41.5, press mainAction, key 5");
    stop("rack-step-hole-to-hole", tall, "ToolStepsPage", deeds(qPrintable(rack))).everywhere = true;
    stop("rack-step-result", tall, "ToolStepsPage", deeds(qPrintable(rack + QStringLiteral(", press mainAction, key 28, press mainAction")))).everywhere = true;

    const auto made = [&](const char* name, const char* page, const QString& numbers, const char* then) -> Stop& {
        return stop(name, tall, page, deeds(qPrintable(numbers + QStringLiteral(", press mainAction, press item:4/measure, press ") + QLatin1String(then))));
    };
    const QString scaleMade = scaleNumbers + QStringLiteral(", press mainAction, key 20.2, press mainAction"), rackMade = rack + QStringLiteral(", press mainAction, key 28, press mainAction");
    made("where-a-scales-error-comes-from", "ItemOriginPage", scaleMade, "form, press origin").everywhere = true;
    made("where-a-hole-of-a-rack-comes-from", "ItemOriginPage", rackMade, "form, press origin");
    made("where-a-turning-moment-comes-from", "ItemOriginPage", QStringLiteral("press hangMore, press newOther, press kind:machine") + five, "form, press origin");
    made("scale-looked-over", "InspectPage", scaleMade, "inspect, choose fault 0");
    made("rack-looked-over", "InspectPage", rackMade, "inspect, choose fault 1");
    made("rack-lent", "LoanPage", rackMade, "loan, choose kind 2, type who the_rowers");

    stop("hangs-chain", tall, "HangPage", deeds("press hung:0")).everywhere = true;
    stop("hangs-chain-bunched", tall, "HangPage", deeds("press hung:0, choose way 2"));
    stop("hangs-band-from-the-floor", tall, "HangPage", deeds("press hung:1"));
    stop("hangs-band-in-front-of-the-bar", weak, "HangPage", deeds("press hung:0"));
    stop("hangs-band-from-above", above, "HangPage", deeds("press hung:0"));
    stop("hangs-already", tall, "HangPage", deeds("press hangMore, press item:2/thing"));

    stop("keypad-nothing-keyed", tall, "KeypadPage", deeds("press load/stepType"));
    stop("keypad-a-number", tall, "KeypadPage", deeds("press load/stepType, key 102.5"));
    stop("keypad-a-key-refused", tall, "KeypadPage", deeds("press load/stepType, key 62..5."));
    stop("keypad-offers", tall, "KeypadPage", deeds("press load/stepType, key 108.4, press mainAction")).everywhere = true;
    stop("keypad-out-of-range", tall, "KeypadPage", deeds("press marks, press field:top, key 350, press mainAction"));
    stop("keypad-may-be-left-out", tall, "KeypadPage", deeds("press marks, press field:rack"));
    stop("keypad-hanging", tall, "KeypadPage", deeds("press hangMore, press item:2/measure, press form, press addHanging, key 14"));

    stop("preferences", tall, "PreferencesPage", deeds("place 0, press preferences")).everywhere = true;
    const auto pounds = [&](const char* name, const QString& season, const char* page, const char* then) -> Stop& {
        return stop(name, season, page, deeds("place 0, press preferences, choose massUnit 1, choose lengthUnit 1, press back, place 1") + deeds(then));
    };
    stop("preferences-pounds-and-inches", tall, "PreferencesPage", deeds("place 0, press preferences, choose massUnit 1, choose lengthUnit 1"));
    pounds("set-up-in-pounds", tall, "SetupPage", "press load/stepUp").everywhere = true;
    pounds("set-up-in-pounds-do-not-lift", weak, "SetupPage", "press load/stepUp");
    pounds("marks-in-inches", tall, "MarksPage", "press marks, press field:top, key 62.25, press mainAction").everywhere = true;
    pounds("bar-and-plates-in-pounds", tall, "BarPage", "press barHere, press newPlate, key 45, press mainAction");
    pounds("chain-in-pounds", tall, "ChainPage", "press hangMore, press item:1/measure, press form");
    pounds("band-in-pounds", tall, "BandPage", "press hangMore, press item:3/measure, press form");
    pounds("keypad-in-pounds-offers", tall, "KeypadPage", "press load/stepType, key 240.5, press mainAction");
    pounds("set-up-entered-in-pounds", tall, "SetupPage",
           "press barHere, press newPlate, key 45, press mainAction, press back, press load/stepType, key 135.2, press mainAction, place 0, press preferences, choose massUnit 0, press back, place 1");
    return stops;
}
