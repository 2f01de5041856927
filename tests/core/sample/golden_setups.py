#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the set-ups of the sample season come to, worked out from its files by NumPy and SciPy, without the engine: the pull and its
standard uncertainty at bottom, zone and top, and the mean. Writes golden_setups.csv, which test_goldensetups reads; run it again when
sample-season/club changes (Debian: python3-scipy), and read the difference before it is kept."""
import csv
import itertools
import json
import math
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
sys.path.insert(0, str(ROOT / "tests" / "published"))
from second_opinion import G, SetUp  # noqa: E402

CLUB = ROOT / "sample-season" / "club"
QUANTITIES = ("bottom", "sticking", "top", "mean")


def club(name):
    return json.loads((CLUB / f"{name}.json").read_text(encoding="utf-8"))[name]


def plates(stock, each_side):
    """The fewest plates that make the mass on one side, and among those the first with the heaviest ones."""
    kinds = sorted(stock, key=lambda p: -p["mass_kg"])
    ways = itertools.product(*[range(p["count"] // 2 + 1) for p in kinds])
    fits = [way for way in ways if abs(sum(n * p["mass_kg"] for n, p in zip(way, kinds)) - each_side) < 1e-9]
    best = min(fits, key=lambda way: (sum(way), [-n for n in way]))
    return [p for n, p in zip(best, kinds) for _ in range(n)]


def on_a_scale(measured):
    return math.sqrt(measured["scale_step_kg"] ** 2 / 12 + measured.get("scale_accuracy_kg", 0) ** 2 / 3)


def weighed(bar, irons):
    """The bar and its stock with what was weighed of it, and the standard uncertainty of each piece."""
    bar = dict(bar, stock=[dict(p) for p in bar["stock"]], u=0.0)
    for iron in irons:
        each, u = iron["read_kg"] / iron["count"], on_a_scale(iron) / iron["count"]
        if iron["sort"] == "bar":
            bar["mass_kg"], bar["u"] = each, u
            continue
        marked = next(p for p in bar["stock"] if p["mass_kg"] == iron["marked_kg"])
        marked["count"] -= iron["count"]
        bar["stock"].append(dict(marked, mass_kg=each, count=iron["count"], u=u))
    return bar


def chain(measured, hung, source):
    if measured["measured"] == "weighed":
        length = measured["length_cm"] / 100
        per_metre, u = measured["mass_kg"] / length, on_a_scale(measured) / length
    else:
        d, p, b = (measured[key] / 1000 for key in ("wire_mm", "pitch_mm", "inner_width_mm"))
        per_metre = 7850 * math.pi * d * d / 4 * (2 * (p - b) + math.pi * (b + d)) / p
        u = 0.03 * per_metre
    item = {"kg_per_m": per_metre, "u_kg_per_m": u, "length_m": measured["length_cm"] / 100, "hang": hung["way"],
            "lead_m": hung["lead_cm"] / 100, "lead_kg": hung.get("lead_mass_kg", 0.0), "measurement": source}
    if hung["way"] == "bunched":
        item["bunch_m"] = hung["bunch_cm"] / 100
    return {"chain": item}


def band(measured, hung, source, twin):
    points = [[h["length_cm"] / 100, h["mass_kg"] * G] for h in measured["hangings"] if not h.get("left_out") and not h.get("on_the_way_back")]
    model = "rubber" if measured["curve"] == "best" and len(points) < 5 else measured["curve"]
    item = {"rest_m": measured["rest_cm"] / 100, "points": points, "model": model, "hang": "doubled" if hung["doubled"] else "single",
            "anchor_height_m": hung["anchor_cm"] / 100, "offset_m": hung.get("offset_cm", 0.0) / 100, "measurement": source, "twin": twin}
    if hung["doubled"]:
        item["wrap_m"] = math.pi / 2 * hung.get("handle_cm", 0.0) / 100
    return {"band": item}


def answer(setup, venues, kit, people):
    bar = weighed(venues[setup["venue"]]["bar"], [kit[name]["measured"][-1]["iron"] for name in setup.get("iron_weighed", [])])
    marks = next(m for m in people[setup["athlete"]]["marks"] if m["lift"] == setup["lift"])
    iron = setup["wanted_kg"] - bar["mass_kg"] - bar["collars_kg"]
    hanging = [p for p in plates(bar["stock"], iron / 2) for _ in range(2)]
    # one scale is out by the same on all that was on it; so is one set that nobody has weighed
    scale = bar["u"] + sum(p.get("u", 0) for p in hanging)
    unweighed = 0.02 / math.sqrt(3) * sum(p["mass_kg"] for p in hanging if "u" not in p) if bar["plates"] == "unweighed" else 0.0
    given = {"bar_kg": bar["mass_kg"], "collars_kg": bar["collars_kg"], "plates_kg": iron, "u_mark_m": 0.01, "left": [], "right": [],
             "u_plates_kg": math.hypot(scale, unweighed), "top_m": marks["top_cm"] / 100}
    if marks["start"] == "floor":
        given["bottom_m"] = max(p["diameter_mm"] for p in plates(bar["stock"], iron / 2)) / 2000 + marks.get("blocks_cm", 0) / 100
    else:
        given["bottom_m"] = marks["bottom_cm"] / 100
    if "zone_from_cm" in marks:
        given["sticking_from_m"], given["sticking_to_m"] = marks["zone_from_cm"] / 100, marks["zone_to_cm"] / 100
    for hung in setup.get("hung", []):
        measured = kit[hung["item"]]["measured"][-1]
        if "aid" in hung:
            readings = [[r["above_chest_cm"] / 100, r["mass_kg"]] for r in measured["aid"]["readings"] if not r.get("left_out")]
            chest = hung["aid"]["chest_cm"] / 100 if "chest_cm" in hung["aid"] else given["bottom_m"]
            given.setdefault("worn", []).append({"readings": readings, "chest_m": chest, "measurement": hung["item"]})
            continue
        for at, side in enumerate(("left", "right") if hung["on"] == "both sides" else (hung["on"],)):
            if "chain" in hung:
                given[side].append(chain(measured["chain"], hung["chain"], hung["item"]))
            elif measured["band"]["hangings"]:
                given[side].append(band(measured["band"], hung["band"], hung["item"], at == 1))
            else:
                return {}
    return SetUp(given).answer()


def main():
    venues, kit, people = ({x["name"]: x for x in club(name)} for name in ("venues", "kit", "squad"))
    with open(Path(__file__).with_suffix(".csv"), "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["setup", "quantity", "kg", "u_kg"])
        for index, setup in enumerate(club("setups")):
            found = answer(setup, venues, kit, people)
            for quantity in QUANTITIES:
                if f"{quantity}_kg" in found:
                    value, u = float(found[f"{quantity}_kg"]), float(found[f"u_{quantity}_kg"])
                    out.writerow([index, quantity, f"{value:.12g}", f"{u:.9g}"])


if __name__ == "__main__":
    main()
