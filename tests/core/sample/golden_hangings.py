#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What to hang for lifters of the sample season, found by trying every choice there is, by NumPy and SciPy without the engine or its
search. Writes golden_hangings.csv, which test_goldenhangings reads; run it again when sample-season/club changes (Debian:
python3-scipy), and read the difference before it is kept. A choice is a load of the venue's plates and at most three pairs: chains
straight or doubled on no strap or on a pair of straps that is there, bands from each place of the venue's racks."""
import csv
import itertools
import math
from pathlib import Path

from golden_setups import band, chain, club
from second_opinion import G, SetUp

MOST_THINGS = 3
PLACES = {"bottom": "bottom", "zone": "sticking", "top": "top", "mean": "mean"}
# athlete, lift, venue, what is wanted in kg
CASES = [
    ("Adaeze Thornbeck", "back squat", "Weight room", {"bottom": 60, "top": 80}),
    ("Adaeze Thornbeck", "back squat", "Weight room", {"bottom": 60, "zone": 66, "top": 76}),
    ("Adaeze Thornbeck", "bench press", "Weight room", {"mean": 45}),
    ("Adaeze Thornbeck", "back squat", "School hall", {"bottom": 40, "top": 52.5}),
    ("Adaeze Thornbeck", "back squat", "Far pitch", {"bottom": 55, "top": 90}),
    ("Bríd O'Callowmere", "back squat", "Far pitch", {"mean": 62.5, "top": 70}),
]


def ways_of(venue, kit, top):
    """Of each pair here a list of (what it is in words, items on either side, straps it takes)."""
    here = [k for k in kit if k["venue"] == venue and "lent" not in k]
    straps = [(None, 0.0, 0.0)] + [(k["name"], k["measured"][-1]["lead"]["length_cm"], k["measured"][-1]["lead"].get("mass_kg", 0.0))
                                   for k in here if k["pair"] and "lead" in k["measured"][-1]]
    anchors = sorted({a for k in here if "rack" in k["measured"][-1] for a in [x["height_cm"] for x in k["measured"][-1]["rack"].get("anchors", [])]})
    for k in here:
        measured = k["measured"][-1]
        if not k["pair"]:
            continue
        ways = []
        if "chain" in measured:
            for how in ("straight", "doubled"):
                for name, length, mass in straps:
                    made = chain(measured["chain"], {"way": how, "lead_cm": length, "lead_mass_kg": mass}, k["name"])
                    ways.append((f"{k['name']}: {how}, {length:g}", [made, made], {name} - {None}))
        elif "band" in measured and measured["band"]["hangings"]:
            for anchor in anchors:
                sides = [band(measured["band"], {"doubled": False, "anchor_cm": anchor}, k["name"], twin) for twin in (False, True)]
                ways.append((f"{k['name']}: {anchor:g}", sides, set()))
        if ways:
            yield ways


def loads_of(bar):
    """Every mass that plates of equal sides make, and how uncertain it is."""
    stock = bar["stock"]
    masses = {round(sum(n * p["mass_kg"] for n, p in zip(way, stock)), 9)
              for way in itertools.product(*[range(p["count"] // 2 + 1) for p in stock])}
    share = 0.02 / math.sqrt(3) if bar["plates"] == "unweighed" else 0.0
    return [(2 * each, 2 * each * share) for each in sorted(masses)]


class Choice:
    def __init__(self, bar, marks, ways):
        self.names = sorted(w[0] for w in ways)
        self.given = {"bar_kg": bar["mass_kg"], "collars_kg": bar["collars_kg"], "plates_kg": 0.0, "u_mark_m": 0.01, "bottom_m": marks["bottom_cm"] / 100,
                      "top_m": marks["top_cm"] / 100, "left": [w[1][0] for w in ways], "right": [w[1][1] for w in ways]}
        if "zone_from_cm" in marks:
            self.given["sticking_from_m"], self.given["sticking_to_m"] = marks["zone_from_cm"] / 100, marks["zone_to_cm"] / 100
        self.setup = SetUp(self.given)
        self.known = self.setup.known(self.given["bottom_m"], self.given["top_m"]) and all(
            b["anchor_height_m"] <= self.given["bottom_m"] or b["anchor_height_m"] > self.given["top_m"] for b in self.setup.bands)

    def pull(self, place):
        low, high = self.given["bottom_m"], self.given["top_m"]
        if place == "bottom" or place == "top":
            return float(self.setup.pull(low if place == "bottom" else high)[0]) / G
        return self.setup.mean(*((self.given["sticking_from_m"], self.given["sticking_to_m"]) if place == "zone" else (low, high))) / G

    def u(self, place, u_plates):
        self.setup.given["u_plates_kg"] = u_plates
        low, high = self.given["bottom_m"], self.given["top_m"]
        if place == "bottom" or place == "top":
            return self.setup.u_at(low if place == "bottom" else high) / G
        return self.setup.u_mean(*((self.given["sticking_from_m"], self.given["sticking_to_m"]) if place == "zone" else (low, high))) / G


def best_two(bar, marks, things, targets):
    """The two that cost least: what each misses and does not know, in quadrature."""
    tried = []
    for count in range(MOST_THINGS + 1):
        for some in itertools.combinations(things, count):
            for ways in itertools.product(*some):
                straps = [s for w in ways for s in w[2]]
                if len(straps) != len(set(straps)):
                    continue
                choice = Choice(bar, marks, ways)
                if not choice.known:
                    continue
                pulls = {place: choice.pull(place) for place in targets}
                for plates, u in loads_of(bar):
                    miss = math.sqrt(sum((pulls[p] + plates - kg) ** 2 for p, kg in targets.items()))
                    tried.append((miss, len(tried), choice, plates, u))
    tried.sort(key=lambda t: t[:2])
    best = []
    for miss, _, choice, plates, u in tried:
        if len(best) == 2 and miss > best[1][0]:
            break
        cost = math.sqrt(miss ** 2 + sum(choice.u(p, u) ** 2 for p in targets))
        best = sorted(best + [(cost, choice, plates)], key=lambda b: b[0])[:2]
    return best


def main():
    venues, people = ({x["name"]: x for x in club(name)} for name in ("venues", "squad"))
    with open(Path(__file__).with_suffix(".csv"), "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["athlete", "lift", "venue", "wanted", "total_kg", "hung", "cost_kg", "next_cost_kg"])
        for athlete, lift, venue, targets in CASES:
            marks = next(m for m in people[athlete]["marks"] if m["lift"] == lift)
            bar = venues[venue]["bar"]
            (cost, choice, plates), (after, _, _) = best_two(bar, marks, list(ways_of(venue, club("kit"), marks["top_cm"])), targets)
            out.writerow([athlete, lift, venue, ";".join(f"{p}={kg:g}" for p, kg in targets.items()), f"{bar['mass_kg'] + bar['collars_kg'] + plates:.6g}",
                          ";".join(choice.names), f"{cost:.9g}", f"{after:.9g}"])


if __name__ == "__main__":
    main()
