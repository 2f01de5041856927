// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/itinerary.h"

std::vector<Stop> itinerary()
{
    const QString empty = QStringLiteral("1-empty-start"), iron = QStringLiteral("2-plain-iron"), low = QStringLiteral("3-short-lifter-chains"),
                  tall = QStringLiteral("4-tall-lifter-chains-and-bands"), past = QStringLiteral("5-past-the-measurement"),
                  dead = QStringLiteral("6-deadlift-with-chains"), above = QStringLiteral("7-bands-from-above"), weak = QStringLiteral("8-anchor-too-light");
    std::vector<Stop> stops;
    const auto stop = [&stops](const char* name, const QString& season, const char* page, const QStringList& deeds = {}) -> Stop& {
        return stops.emplace_back(Stop{QLatin1String(name), season, QLatin1String(page), deeds, false});
    };
    const auto deeds = [](const char* all) { return QString::fromLatin1(all).split(QStringLiteral(", ")); };

    stop("set-up-empty", empty, "SetupPage").everywhere = true;
    stop("set-up-plain-iron", iron, "SetupPage");
    stop("set-up-short-lifter-chains", low, "SetupPage");
    stop("set-up-tall-lifter-chains-and-bands", tall, "SetupPage").everywhere = true;
    stop("set-up-looked-over", tall, "SetupPage", deeds("press caution:0/accept, press caution:1/accept"));
    stop("set-up-read-at-a-height", tall, "SetupPage", deeds("press readHigher, press readHigher"));
    stop("set-up-heavier", tall, "SetupPage", deeds("press load/stepUp, press load/stepUp"));
    stop("set-up-past-the-measurement", past, "SetupPage");
    stop("set-up-deadlift", dead, "SetupPage");
    stop("set-up-bands-from-above", above, "SetupPage");
    stop("set-up-do-not-lift", weak, "SetupPage").everywhere = true;

    stop("marks-empty", empty, "MarksPage", deeds("press marks"));
    stop("marks-own-bottom", tall, "MarksPage", deeds("press marks")).everywhere = true;
    stop("marks-from-the-floor", dead, "MarksPage", deeds("press marks"));
    stop("marks-out-of-order", tall, "MarksPage", deeds("press marks, press field:top, key 50, press mainAction"));

    stop("bar-filled-in", empty, "BarPage", deeds("press barHere"));
    stop("bar-and-plates", tall, "BarPage", deeds("press barHere")).everywhere = true;

    stop("kit-empty", empty, "ThingsPage", deeds("press hangMore"));
    stop("kit", tall, "ThingsPage", deeds("press hangMore")).everywhere = true;
    stop("kit-with-a-chain-begun", tall, "ThingsPage", deeds("press hangMore, press newChain, press field:length, key 200, press mainAction, press back, press back"));

    stop("chain-new", empty, "ChainPage", deeds("press hangMore, press newChain"));
    stop("chain-weighed", tall, "ChainPage", deeds("press hangMore, press item:1/measure")).everywhere = true;
    stop("chain-gauged", low, "ChainPage", deeds("press hangMore, press item:1/measure"));

    stop("band-new", empty, "BandPage", deeds("press hangMore, press newBand"));
    stop("band-of-three-hangings", past, "BandPage", deeds("press hangMore, press item:1/measure"));
    stop("band-with-its-fit", tall, "BandPage", deeds("press hangMore, press item:2/measure"));
    stop("band-with-an-odd-hanging", tall, "BandPage", deeds("press hangMore, press item:3/measure")).everywhere = true;
    stop("band-odd-hanging-left-out", tall, "BandPage", deeds("press hangMore, press item:3/measure, press hanging:4/leaveOut"));

    stop("hangs-chain", tall, "HangPage", deeds("press hung:0")).everywhere = true;
    stop("hangs-chain-bunched", tall, "HangPage", deeds("press hung:0, choose way 2"));
    stop("hangs-band-from-the-floor", tall, "HangPage", deeds("press hung:1"));
    stop("hangs-band-in-front-of-the-bar", weak, "HangPage", deeds("press hung:0"));
    stop("hangs-band-from-above", above, "HangPage", deeds("press hung:0"));
    stop("hangs-more-than-is-here", tall, "HangPage", deeds("press hangMore, press item:2/thing"));

    stop("keypad-nothing-keyed", tall, "KeypadPage", deeds("press load/stepType"));
    stop("keypad-a-number", tall, "KeypadPage", deeds("press load/stepType, key 102.5"));
    stop("keypad-a-key-refused", tall, "KeypadPage", deeds("press load/stepType, key 62..5."));
    stop("keypad-offers", tall, "KeypadPage", deeds("press load/stepType, key 108.4, press mainAction")).everywhere = true;
    stop("keypad-out-of-range", tall, "KeypadPage", deeds("press marks, press field:top, key 350, press mainAction"));
    stop("keypad-may-be-left-out", tall, "KeypadPage", deeds("press marks, press field:rack"));
    stop("keypad-hanging", tall, "KeypadPage", deeds("press hangMore, press item:2/measure, press addHanging, key 14"));

    stop("preferences", tall, "PreferencesPage", deeds("press marks, press preferences")).everywhere = true;
    return stops;
}
