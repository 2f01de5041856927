#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the tests of strength of the sample season come to today, worked out from its files without the engine: of each athlete and lift the
range, the middle, its standard uncertainty, and strength by body mass. Writes golden_maxima.csv, which test_goldenmaxima reads; run it again
when sample-season/club changes, and read the difference before it is kept. Formulas as quoted on secondary pages (Epley 1985, Brzycki 1993,
Lombardi 1989, Mayhew 1992, O'Conner 1989, Wathan 1994, Lander 1985); F/M^0.67 after Jaric 2002, from memory."""
import csv
import json
import math
import statistics
from collections import defaultdict
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
FORMULAS = (
    lambda w, r: w * (1 + r / 30),
    lambda w, r: 36 * w / (37 - r),
    lambda w, r: w * r ** 0.10,
    lambda w, r: 100 * w / (52.2 + 41.9 * math.exp(-0.055 * r)),
    lambda w, r: w * (1 + 0.025 * r),
    lambda w, r: 100 * w / (48.8 + 53.8 * math.exp(-0.075 * r)),
    lambda w, r: 100 * w / (101.3 - 2.67123 * r),
)
U_OF_BODY = 1.0


def by_formulas(load, reps):
    return [load] * 7 if reps == 1 else [formula(load, reps) for formula in FORMULAS]


def maximum(test):
    """low, middle, high, u of the middle, whether tested; nothing where nothing follows."""
    load = test["load_kg"] + test.get("body_kg", 0)
    if test.get("tried_out"):
        jump = test.get("jump_kg", 2.5)
        return load, load, load + jump, jump, True
    reserve = test.get("in_reserve", 0)
    if test.get("missed") or reserve > 5 or test["reps"] + reserve > 10:
        return None
    low = min(by_formulas(load, max(test["reps"], test["reps"] + reserve - 1)))
    high = max(by_formulas(load, test["reps"] + reserve + 1))
    middle = statistics.median(by_formulas(load, test["reps"] + reserve))
    return low, middle, high, (high - low) / math.sqrt(12), False


def best(found):
    tested = [m for m in found if m[4]]
    return max(tested, key=lambda m: m[1]) if tested else max(found, key=lambda m: (m[0], m[0] - m[2]))


def counting(tests):
    """Of the last day with plain iron, else of the last under other conditions."""
    plain, other = defaultdict(list), defaultdict(list)
    for test in tests:
        if (found := maximum(test)) is not None:
            (other if test.get("hung") else plain)[test["days_ago"]].append((found, test))
    days = plain or other
    if not days:
        return None
    last = days[min(days)]
    chosen = best([found for found, _ in last])
    return next((found, test) for found, test in last if found == chosen)


def main():
    people = json.loads((ROOT / "sample-season" / "club" / "squad.json").read_text(encoding="utf-8"))["squad"]
    with open(Path(__file__).with_name("golden_maxima.csv"), "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["athlete", "lift", "days_ago", "low_kg", "middle_kg", "high_kg", "u_kg", "by_mass", "u_by_mass", "by_shape"])
        for person in people:
            lifts = dict.fromkeys(test["lift"] for test in person.get("tests", []))
            for lift in lifts:
                counts = counting([test for test in person["tests"] if test["lift"] == lift])
                if counts is None:
                    out.writerow([person["name"], lift] + 8 * [""])
                    continue
                (low, middle, high, u, _), test = counts
                weighed = [s for s in person.get("sizes", []) if "mass_kg" in s and s["days_ago"] >= test["days_ago"]]
                body = test.get("body_kg", min(weighed, key=lambda s: s["days_ago"])["mass_kg"] if weighed else None)
                scaled = 3 * [""]
                if body:
                    by_mass = middle / body
                    scaled = [f"{x:.9g}" for x in (by_mass, by_mass * math.hypot(u / middle, U_OF_BODY / body), middle / body ** 0.67)]
                out.writerow([person["name"], lift, test["days_ago"]] + [f"{x:.9g}" for x in (low, middle, high, u)] + scaled)


if __name__ == "__main__":
    main()
