#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the implements of the sample season come to today, worked out from its files without the engine: each mass with its standard
uncertainty, the friction of each surface a sled was pulled on, the load for half of an athlete's speed on one and the load that pulls as
hard on another, and how much of the lowest deadlift a tyre is. Derivatives are taken by small steps. Writes golden_implements.csv, which
test_goldenimplements reads; run it again when sample-season/club changes, and read the difference before it is kept.
Water 994 to 1000 kg/m3 (Tanaka et al. 2001); dry sand 1500 to 1600 (handbook values, from memory). A tape to 1 cm, marks and litres to 2 %
either way, and a stopwatch to 0.1 s are this project's choices."""
import csv
import json
import math
from pathlib import Path

from golden_maxima import ROOT, counting

G, TAPE, Z95 = 9.80665, 0.01, 1.959963984540054
DENSITY = {"water": (994, 1000), "dry sand": (1500, 1600)}


def club(name):
    return json.loads((ROOT / "sample-season" / "club" / f"{name}.json").read_text(encoding="utf-8"))[name]


def half(width):
    """Standard uncertainty of a rectangle by its half-width."""
    return width / math.sqrt(3)


class Inputs(list):
    """Values with their standard uncertainties, each moved by itself while a derivative is taken."""

    def take(self, value, u):
        self.append((value, u))
        return len(self) - 1

    def values(self):
        return [value for value, _ in self]

    def result(self, formula):
        at, squares = self.values(), 0
        for i, (value, u) in enumerate(self):
            step = 1e-5 * max(1e-2, abs(value))
            up, down = at[:], at[:]
            up[i] += step
            down[i] -= step
            squares += ((formula(up) - formula(down)) / (2 * step) * u) ** 2
        return formula(at), math.sqrt(squares)


def reading(inputs, kg, scale, error):
    """A reading as its value and its own step; the scale's error is one input of all its readings."""
    i = inputs.take(kg, scale["scale_step_kg"] / math.sqrt(12))
    return lambda x: x[i] + x[error]


def scale_error(inputs, scale):
    return inputs.take(0, half(scale.get("scale_accuracy_kg", 0)))


def tape(inputs, cm):
    i = inputs.take(cm / 100, TAPE)
    return lambda x: x[i]


def tyre(m, inputs):
    if m["by"] == "unknown" or not m.get("drained"):
        return None
    error = scale_error(inputs, m)
    # levers of both edges are taken from one middle
    lift, contact = inputs.take(0, TAPE), inputs.take(0, TAPE)
    edges = [(reading(inputs, e["shown_kg"], m, error), e["lift_point_cm"] / 100, e["far_contact_cm"] / 100) for e in m["edges"]]
    return lambda x: sum(r(x) * (a + x[lift] + b + x[contact]) / (b + x[contact]) for r, a, b in edges) / len(edges)


def keg(m, inputs):
    error = scale_error(inputs, m)
    if m["by"] == "whole":
        return reading(inputs, m["read_kg"], m, error)
    empty = reading(inputs, m["empty_kg"], m, error)
    least, most = DENSITY[m["filling"]]
    rho = inputs.take((least + most) / 2, half((most - least) / 2))
    key = "content_ml" if m["by"] == "litres" else "capacity_ml"
    litres = inputs.take(m[key] / 1e6, half(0.02 * m[key] / 1e6))
    if m["by"] == "litres":
        return lambda x: empty(x) + x[litres] * x[rho]
    across, depth = tape(inputs, m["across_cm"]), tape(inputs, m["depth_cm"])

    def mass(x):
        r, h = across(x) / 2, depth(x)
        filled = r * r * math.acos((r - h) / r) - (r - h) * math.sqrt(2 * r * h - h * h)
        return empty(x) + x[litres] * filled / (math.pi * r * r) * x[rho]

    return mass


def log(m, inputs):
    """By both ends, as the last measuring of each log of the season is."""
    error = scale_error(inputs, m)
    first, second = reading(inputs, m["first_end_kg"], m, error), reading(inputs, m["second_end_kg"], m, error)
    span, inset = tape(inputs, m["span_cm"]), tape(inputs, m["first_inset_cm"])
    return lambda x: first(x) * (span(x) - inset(x)) / span(x) + second(x)


def stone(m, inputs):
    girth, least, most = tape(inputs, m["across_cm"]), m["density_least"], m["density_most"]
    rho = inputs.take((least + most) / 2, half((most - least) / 2))
    return lambda x: math.pi * (girth(x) / math.pi) ** 3 / 6 * x[rho]


def whole(m, inputs):
    """On a scale; else by its mark, of what can be set by its lightest."""
    if "read_kg" in m:
        return reading(inputs, m["read_kg"], m, scale_error(inputs, m))
    marked = m.get("marked_kg") or min(s["mass_kg"] for s in m["settings"])
    i = inputs.take(marked, half(0.02 * marked))
    return lambda x: x[i]


KINDS = {"tyre": tyre, "keg": keg, "log": log, "stone": stone, "sled": whole, "carry": whole, "bell": whole}


def loaded(inputs, sled):
    """What a sled comes to with so much on it: its own mass and the marks of its plates are out alike each time."""
    own, mark = whole(sled, inputs), inputs.take(1, half(0.02))
    return lambda x, added: own(x) + added * x[mark]


def friction(surface, sled):
    """Least squares through the origin of T cos a on Mg - T sin a, beside what its own scatter makes uncertain."""
    inputs = Inputs()
    total, error = loaded(inputs, sled), scale_error(inputs, surface)
    strap, hook, hip = (tape(inputs, cm) for cm in (sled["strap_cm"], sled["hook_cm"], surface["hip_cm"]))
    pulls = [(r["added_kg"], reading(inputs, r["pull_kg"], surface, error)) for r in surface["readings"]]

    def points(x):
        a = math.asin((hip(x) - hook(x)) / strap(x))
        return [(total(x, added) * G - pull(x) * G * math.sin(a), pull(x) * G * math.cos(a)) for added, pull in pulls]

    def slope(x):
        return sum(n * t for n, t in points(x)) / sum(n * n for n, _ in points(x))

    xy, mu = points(inputs.values()), slope(inputs.values())
    own = inputs.take(0, math.sqrt(sum((t - mu * n) ** 2 for n, t in xy) / (len(xy) - 1) / sum(n * n for n, _ in xy)))
    return inputs.result(lambda x: slope(x) + x[own])


def half_speed(runs, sled):
    """The total that costs half of the fitted free speed, and what lies on the sled then, beside what the fit's own scatter makes uncertain."""
    inputs = Inputs()
    total, lane = loaded(inputs, sled), inputs.take(runs[0]["distance_cm"] / 100, TAPE)
    times = [(r["added_kg"], inputs.take(r["time_ms"] / 1000, 0.1)) for r in runs]

    def fit(x):
        m, v = [total(x, added) for added, _ in times], [x[lane] / x[t] for _, t in times]
        mm, vm = sum(m) / len(m), sum(v) / len(v)
        s = sum((a - mm) * (b - vm) for a, b in zip(m, v)) / sum((a - mm) ** 2 for a in m)
        return vm - s * mm, s, m, v

    v0, s, m, v = fit(inputs.values())
    n, mm = len(m), sum(m) / len(m)
    variance, sxx = sum((b - v0 - s * a) ** 2 for a, b in zip(m, v)) / (n - 2), sum((a - mm) ** 2 for a in m)
    by_v0, by_s = -0.5 / s, 0.5 * v0 / (s * s)
    own = inputs.take(0, math.sqrt(variance * (by_v0 ** 2 * (1 / n + mm * mm / sxx) + by_s ** 2 / sxx - 2 * by_v0 * by_s * mm / sxx)))

    def load(x):
        return -0.5 * fit(x)[0] / fit(x)[1] + x[own]

    return inputs.result(load), inputs.result(lambda x: load(x) - total(x, 0))


def last(surfaces):
    return {s["name"]: s for s in sorted(surfaces, key=lambda s: -s["days_ago"])}


def of_sled(name, sled, surfaces, people):
    mus = {}
    for surface in sorted(last(surfaces).values(), key=lambda s: s["name"]):
        mus[surface["name"]], u = friction(surface, sled)
        yield name, "friction, " + surface["name"], mus[surface["name"]], u
    for person in people:
        runs = [r for r in person.get("runs", []) if r["surface"] == "grass, wet"]
        if len(runs) < 3:
            continue
        total, added = half_speed(runs, sled)
        yield person["name"], "half her speed, total_kg", *total
        yield person["name"], "half her speed, added_kg", *added
        a = math.asin((runs[0]["hip_cm"] - sled["hook_cm"]) / sled["strap_cm"])
        wet, dry = mus["grass, wet"], mus["grass, dry"]
        force = wet * total[0] * G / (math.cos(a) + wet * math.sin(a))
        yield person["name"], "half her speed, pull_n", force, ""
        yield person["name"], "as hard on dry grass, total_kg", force * (math.cos(a) + dry * math.sin(a)) / (dry * G), ""


def main():
    kit, people, rows, masses = club("kit"), club("squad"), [], {}
    for item in kit:
        measured = item["measured"][-1]
        kind = next((k for k in KINDS if k in measured), None)
        if kind:
            inputs = Inputs()
            formula = KINDS[kind](measured[kind], inputs)
            masses[item["name"]] = inputs.result(formula) if formula else ("", "")
            rows.append((item["name"], "mass_kg", *masses[item["name"]]))
        if "surfaces" in item:
            rows += of_sled(item["name"], measured["sled"], item["surfaces"], people)
    mass, u = masses["Tractor tyre"]
    for person in people:
        lowest = counting([t for t in person.get("tests", []) if t["lift"] == "deadlift"])
        if lowest:
            rows.append((person["name"], "tractor tyre, percent of deadlift", (mass + Z95 * u) / lowest[0][0] * 100, ""))
    with open(Path(__file__).with_name("golden_implements.csv"), "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["of", "quantity", "value", "u"])
        for of, quantity, value, uncertainty in rows:
            out.writerow([of, quantity] + [f"{x:.9g}" if x != "" else "" for x in (value, uncertainty)])


if __name__ == "__main__":
    main()
