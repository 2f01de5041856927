#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the set-ups of the sample season with a heavier way down come to, worked out from its files by SciPy and by trying every way to
share the plates, without the engine. Writes golden_releases.csv, which test_goldenreleases reads; run it again when sample-season/club
changes (Debian: python3-scipy), and read the difference before it is kept."""
import csv
import itertools
import math
import statistics
from pathlib import Path

from scipy import stats

from golden_setups import G, club

U_MARK, U_HOOK, T95 = 0.01, 0.002, stats.norm.ppf(0.975)


def sides(stock, used=None):
    """Every way to hang plates on one side, and the same on the other, beside what is used of each kind."""
    used = used or [0] * len(stock)
    return itertools.product(*[range(p["count"] // 2 - n + 1) for p, n in zip(stock, used)])


def mass(stock, way):
    return sum(n * p["mass_kg"] for n, p in zip(way, stock))


def thick(stock, way):
    return sum(n * p["thickness_mm"] for n, p in zip(way, stock)) / 1000


def load(setup, bar):
    """Least miss of the bar, then of both with what is left, then fewest plates."""
    plan, stock, base = setup["release"], bar["stock"], bar["mass_kg"] + bar["collars_kg"]
    up, down, frame = setup["wanted_kg"], plan["down_kg"], plan["frame_kg"]
    on_bar = [w for w in sides(stock) if thick(stock, w) <= bar["sleeve_cm"] / 100]
    least = min(abs(base + 2 * mass(stock, w) - up) for w in on_bar)
    best = None
    for way in (w for w in on_bar if abs(abs(base + 2 * mass(stock, w) - up) - least) < 1e-9):
        concentric = base + 2 * mass(stock, way)
        for hook in sides(stock, way):
            if thick(stock, hook) > plan["hook_room_cm"] / 100 or mass(stock, hook) > plan["hook_rating_kg"]:
                continue
            eccentric = concentric + 2 * (frame + mass(stock, hook))
            key = (round(abs(eccentric - down), 9), 2 * (sum(way) + sum(hook)), concentric, eccentric)
            if best is None or key < best[0]:
                best = (key, concentric, frame + mass(stock, hook), eccentric)
    return best[1:]


def below(height, u, lowest):
    """The share of her next reps that come below a height."""
    n, mean, sd = len(lowest), statistics.mean(lowest), statistics.stdev(lowest)
    rep, other = sd * sd * (1 + 1 / n), u * u + U_MARK * U_MARK
    freedom = (rep + other) ** 2 / (rep ** 2 / (n - 1))
    return stats.t.cdf((height - mean) / math.sqrt(rep + other), freedom)


def answer(setup, venues, people):
    plan, bar = setup["release"], venues[setup["venue"]]["bar"]
    marks = next(m for m in people[setup["athlete"]]["marks"] if m["lift"] == setup["lift"])
    bottom, top = marks["bottom_cm"] / 100, marks["top_cm"] / 100
    lowest = [r["lowest_cm"] / 100 for r in plan["reps_watched"]]
    mean, margin = statistics.mean(lowest), 2 * statistics.stdev(lowest)
    radius, drop = plan["sleeve_radius_mm"] / 1000, plan["lip_drop_mm"] / 1000
    wanted = mean + margin + radius + drop
    setting = min(s["length_cm"] / 100 for s in plan["settings"] if s["length_cm"] / 100 >= wanted)
    touch, free = setting - radius, setting - radius - drop
    up, hook, down = load(setup, bar)
    tilt = plan["spacing_cm"] / 100 * math.sin(math.radians(1))
    yield "up_kg", up
    yield "each_kg", hook
    yield "down_kg", down
    yield "u_down_kg", 2 * plan["scale_step_kg"] / math.sqrt(12)
    yield "length_m", wanted
    yield "setting_m", setting
    yield "touch_m", touch
    yield "free_m", free
    yield "last_free_m", free - tilt / 2
    yield "safeties_low_m", mean - 0.05
    yield "safeties_high_m", mean - 0.02
    # plain iron pulls alike at every height; its hooks only from the top down to the touch
    yield "down_mean_kg", up + 2 * hook * (top - touch) / (top - bottom)
    yield "tipping_nm", hook * G * plan["spacing_cm"] / 200
    u_free = math.sqrt(3) * U_HOOK
    yield "released_ratio", below(free, u_free, lowest)


def main():
    venues, people = ({x["name"]: x for x in club(name)} for name in ("venues", "squad"))
    with open(Path(__file__).with_suffix(".csv"), "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["setup", "quantity", "value"])
        for index, setup in enumerate(club("setups")):
            if "release" in setup:
                for quantity, value in answer(setup, venues, people):
                    out.writerow([index, quantity, f"{float(value):.12g}"])


if __name__ == "__main__":
    main()
