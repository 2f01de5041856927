# SPDX-License-Identifier: GPL-3.0-or-later
"""Works out the contents of records of version 1 that test_recordcodec expects, apart from the code under test.

Run with the header that holds them, it fails where they differ; run alone, it prints the header. The keys are those written down in
core/work/records/codec.h; quantities are reckoned here in decimals, litres in mL and seconds in ms: 1 lb = 453,592.37 mg and 1 in = 25,400 µm (international yard and
pound agreement, 1959).
"""
import hashlib
import pathlib
import sys
import textwrap
from decimal import Decimal, ROUND_HALF_UP

sys.path.insert(0, str(pathlib.Path(__file__).parent.parent / "journal"))
from golden_entries import cbor  # noqa: E402

UNITS = {"kg": (1, 1_000_000), "lb": (3, Decimal("453592.37")), "cm": (12, 10_000), "mm": (13, 1_000), "in": (14, 25_400), "m": (11, 1_000_000),
         "s": (21, 1_000), "L": (41, 1_000)}


def typed(decimal, unit):
    number, base = UNITS[unit]
    return [int((Decimal(decimal) * base).to_integral_value(ROUND_HALF_UP)), decimal, number]


def record(last):
    return bytes(15) + bytes([last])


HUNG = [
    {1: record(1), 2: 1, 3: {1: 3, 2: typed("80", "cm"), 3: typed("0.4", "kg"), 4: typed("30", "cm")}},
    {1: record(2), 2: 3, 4: {1: True, 2: True, 3: typed("220", "cm"), 4: typed("-15", "cm"), 5: typed("5", "cm"), 6: typed("40", "kg")}},
]
HOOK = {1: typed("3.2", "kg"), 2: typed("0.05", "kg"), 3: typed("18", "cm"), 4: typed("60", "kg"),
        5: [{1: typed("76", "cm")}, {1: typed("80", "cm")}]}
HOOK_MEASURES = {1: typed("25", "mm"), 2: typed("12", "mm"), 3: [{1: typed(cm, "cm")} for cm in ("72.5", "71", "73.5")],
                 5: typed("5", "cm"), 6: typed("160", "cm")}
RECORDS = {
    "marks": {1: 1, 2: typed("77", "cm"), 4: typed("88", "cm"), 6: typed("127", "cm")},
    "floorMarksInInches": {1: 2, 3: typed("4", "in"), 6: typed("28", "in")},
    "agreement": {1: "her mother", 2: 20000},
    "bodySize": {1: typed("61.5", "kg"), 2: typed("172", "cm")},
    "bodySizeInPounds": {1: typed("135.5", "lb")},
    "isometricPull": {1: 1, 3: typed("92.5", "cm"), 4: typed("143.5", "kg"), 5: typed("0.5", "kg")},
    "isometricPullInOwnLift": {2: record(9), 3: typed("36", "in"), 4: typed("315", "lb")},
    "chain": {1: record(7), 2: {1: 2, 2: typed("180", "cm"), 5: typed("16", "mm"), 6: typed("45", "mm"), 7: typed("21.6", "mm")}},
    "band": {1: record(7), 3: {1: typed("100", "cm"), 2: [{1: typed("5", "kg"), 2: typed("115", "cm")}, {1: typed("7.5", "kg"), 3: True}], 3: 3}},
    "bandReadBothWays": {1: record(7), 3: {1: typed("100", "cm"), 2: [{1: typed("5", "kg"), 2: typed("115", "cm")},
                                                                      {1: typed("5", "kg"), 2: typed("118", "cm"), 4: True}]}},
    "aid": {1: record(7), 4: {1: [{1: typed("20", "kg"), 2: typed("14.5", "cm")}, {1: typed("40", "kg"), 2: typed("6", "cm"), 3: True}]}},
    "machineByRadius": {1: record(7), 5: {1: 1, 4: [{1: 0, 2: typed("92", "mm")}, {1: 37500, 2: typed("118", "mm")}]}},
    "machineByPull": {1: record(7), 5: {1: 2, 2: typed("40", "kg"), 3: typed("0.2", "kg"),
                                        4: [{3: typed("10", "cm"), 4: typed("31.4", "kg")}, {3: typed("55", "cm"), 4: typed("42", "kg")}]}},
    "scale": {1: record(7), 6: {1: typed("-0.2", "kg"), 2: typed("0.1", "kg"), 3: [{1: typed("20", "kg"), 2: typed("19.9", "kg")}]}},
    "ironPlates": {1: record(7), 7: {1: 2, 2: typed("20", "kg"), 3: typed("40.6", "kg"), 4: typed("0.1", "kg"), 5: typed("0.15", "kg"), 6: 2}},
    "ironBarInPounds": {1: record(7), 7: {1: 1, 2: typed("45", "lb"), 3: typed("44.1", "lb"), 4: typed("0.2", "lb"), 6: 1}},
    "lead": {1: record(7), 8: {1: typed("62", "cm"), 2: typed("0.35", "kg")}},
    "rack": {1: record(7), 9: {1: typed("41.5", "cm"), 2: typed("5", "cm"), 3: 28, 4: [{1: typed("6", "cm")}, {1: typed("214", "cm")}]}},
    "tyreByEdges": {1: record(7), 10: {1: 2, 2: True, 3: [{1: typed("61.5", "kg"), 2: typed("56", "cm"), 3: typed("43", "cm")},
                                                          {1: typed("63", "kg"), 2: typed("56", "cm"), 3: typed("43.5", "cm")}],
                                       4: {2: typed("0.5", "kg"), 3: typed("0.4", "kg")}, 5: typed("118", "cm"), 6: typed("36", "cm")}},
    "tyreUnknown": {1: record(7), 10: {1: 1, 3: [], 4: {}}},
    "logBySizeInInches": {1: record(7), 11: {1: 2, 2: True, 3: typed("78.5", "in"), 4: typed("36", "in"), 5: typed("30.5", "in"), 6: 405, 7: 125,
                                             8: {}, 9: {}}},
    "logByEnds": {1: record(7), 11: {1: 3, 8: {1: typed("38.5", "kg"), 2: typed("33", "kg"), 3: typed("180", "cm"), 4: typed("6", "cm")},
                                     9: {2: typed("0.5", "kg")}}},
    "stone": {1: record(7), 12: {1: 2, 3: typed("41", "cm"), 4: {1: 2600, 2: 2700}, 5: {}}},
    "kegLying": {1: record(7), 13: {1: 1, 2: 4, 3: typed("12.5", "kg"), 4: 1, 7: typed("56.7", "L"), 8: typed("38", "cm"), 10: typed("14", "cm"),
                                    11: {2: typed("0.1", "kg")}, 12: 3}},
    "sandbagInPounds": {1: record(7), 13: {1: 2, 2: 2, 3: typed("3", "lb"), 5: {1: 1450, 2: 1650}, 6: typed("18.5", "L"), 11: {2: typed("0.5", "lb")},
                                           12: 1}},
    "sled": {1: record(7), 14: {1: {1: typed("24.8", "kg"), 2: typed("0.2", "kg"), 3: typed("0.1", "kg")}, 2: typed("320", "cm"), 3: typed("18", "cm")}},
    "yoke": {1: record(7), 15: {1: 4, 2: {4: typed("60", "kg")}}},
    "kettlebellAdjustable": {1: record(7), 16: {1: 1, 2: {}, 3: [{1: typed("12", "kg")}, {1: typed("16", "kg")}], 4: typed("35", "mm"),
                                                5: typed("120", "mm"), 6: 2, 7: 3, 8: "sharp seam"}},
    "kindOfTyre": 10,
    "barByEndsInPounds": {1: record(7), 7: {1: 1, 4: typed("0.2", "lb"), 6: 1, 7: {1: typed("22.4", "lb"), 2: typed("23", "lb")}}},
    "inspectionOfATyre": {1: 17, 2: "at the bead", 3: 20003},
    "surface": {1: record(2), 2: record(7), 3: "grass, wet", 4: [{1: typed("20", "kg"), 2: typed("14.5", "kg")}, {1: typed("60", "kg"), 2: typed("26", "kg")}],
                5: typed("95", "cm"), 6: typed("0.5", "kg"), 7: typed("0.3", "kg")},
    "timedRun": {1: record(2), 2: record(7), 3: "grass, wet", 4: typed("40", "kg"), 5: typed("20", "m"), 6: typed("4.12", "s"), 7: 1,
                 8: typed("98", "cm")},
    "cap": {1: 14, 2: 60},
    "lane": typed("25", "m"),
    "loadWithAid": {1: {1: typed("20", "kg"), 3: typed("0", "kg"), 4: typed("20", "kg"), 5: 2, 6: []},
                    2: [{1: record(1), 2: 1, 5: {}}, {1: record(2), 2: 1, 5: {1: typed("31", "cm")}}]},
    "load": {1: {1: typed("20", "kg"), 2: True, 3: typed("0.5", "kg"), 4: typed("60", "kg"), 5: 1,
                 6: [{1: typed("20", "kg"), 2: typed("450", "mm"), 3: typed("40", "mm"), 4: 2}], 7: typed("42", "cm")},
             2: HUNG},
    "marksByHole": {1: 1, 2: typed("76.5", "cm"), 6: typed("126.5", "cm"), 8: [{1: 2, 2: record(5), 3: 8}, {1: 6, 2: record(5), 3: 18}]},
    "chainOnACheckedScale": {1: record(7), 2: {1: 1, 2: typed("150", "cm"), 3: typed("8.55", "kg"), 4: typed("0.1", "kg"), 8: typed("0.05", "kg")}},
    "loadOfWeighedIron": {1: {1: typed("20.3", "kg"), 2: True, 3: typed("0", "kg"), 4: typed("60.9", "kg"), 5: 2,
                              6: [{1: typed("20", "kg"), 2: typed("450", "mm"), 3: typed("40", "mm"), 4: 2, 5: typed("20.3", "kg"),
                                   6: {1: record(6), 2: typed("0.05", "kg")}}],
                              8: {1: record(5), 2: typed("0.04", "kg")}}, 2: []},
    "inspection": {1: 2, 2: "third link from the hook", 3: 20000},
    "inspectionFit": {1: 1, 3: 20001},
    "inspectionOfAScale": {1: 12, 2: "runs away by a step a minute", 3: 20002},
    "inspectionOfARack": {1: 16, 3: 20002},
    "onLoan": {1: "the school in Pell", 2: 20100},
    "onLoanWithoutDay": {1: "the rowers"},
    "kindOfBand": 3,
    "acknowledgement": {1: record(3), 2: 2, 3: record(4)},
    "acknowledgementOfAnAid": {1: record(3), 2: 4, 3: record(4)},
    "strengthTest": {1: 1, 2: typed("82.5", "kg"), 3: 5, 4: 2},
    "strengthTestOfAMaximumInPounds": {1: 6, 2: typed("225", "lb"), 3: 1, 5: True, 6: True, 7: typed("5", "lb"), 11: "with a pause"},
    "strengthTestOfAChin": {1: record(9), 2: typed("-10", "kg"), 3: 6, 4: 0, 8: [4, 6], 9: record(3), 10: typed("61.5", "kg")},
    "clearance": {1: 1, 2: 3, 3: "the physiotherapist", 4: 20200},
    "clearanceOfAMinor": {1: record(9), 2: 2, 3: "the head coach", 5: True},
    "dayStatusNone": {1: 3, 2: "the physiotherapist"},
    "dayStatusSome": {1: 2, 2: "the physiotherapist", 3: 20014, 4: [9, 16], 5: [3], 6: [record(9), 2], 7: "left shoulder"},
    "saidSo": {1: "the physiotherapist", 2: 20010},
    "lift": 14,
    "addedLift": record(9),
    "fromTheFloor": 2,
    "acknowledgementOfARelease": {1: record(3), 2: 5, 3: record(4)},
    "releaseByHooks": {1: 1, 2: {1: True, 2: 700, 3: 1100}, 3: HOOK, 4: HOOK_MEASURES,
                       7: {1: 6, 2: 2, 3: 30, 4: 3000, 5: 3, 6: 2}},
    "releaseByDumbbellsInPounds": {1: 5, 2: {2: 650, 3: 1405, 4: True, 5: typed("265", "lb")}, 3: {5: []},
                                   4: {3: [], 4: typed("15", "in"), 7: typed("32", "in"), 8: typed("14.5", "in"), 9: typed("12", "in")},
                                   5: typed("40", "lb"), 6: typed("35", "lb"), 7: {1: 1, 4: 2500, 5: 1, 6: 1}},
}


def header():
    yield """// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Contents of version 1 as golden_records.py works them out; these have to be readable for ever.
namespace recordsversion1 {
"""
    for name, value in RECORDS.items():
        lines = "\n".join(f'    "{line}"' for line in textwrap.wrap(cbor(value).hex(), 110))
        yield f"inline constexpr const char* {name} =\n{lines};"
    mark = hashlib.blake2b(cbor({2: HUNG}), digest_size=32).hexdigest()[:32]
    yield f'/// First half of BLAKE2b-256 over what hangs.\ninline constexpr const char* markOfLoad = "{mark}";'
    # nothing asked: per cent as a plan begins, 70 up and 105 down, and one rep of three seconds that nobody puts anything back after
    bare = {1: 1, 2: {1: True, 2: 700, 3: 1050}, 3: HOOK, 4: HOOK_MEASURES, 7: {1: 1, 4: 3000, 5: 1, 6: 1}}
    released = hashlib.blake2b(cbor({2: HUNG, 3: bare}), digest_size=32).hexdigest()[:32]
    yield f'/// The same with hooks that let go.\ninline constexpr const char* markOfReleasedLoad = "{released}";\n\n}}'


if __name__ == "__main__":
    text = "\n".join(header()) + "\n"
    if len(sys.argv) > 1:
        with open(sys.argv[1], encoding="utf-8") as held:
            sys.exit(0 if held.read() == text else "the header holds other bytes")
    sys.stdout.write(text)
