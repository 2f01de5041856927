#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A second opinion on the engine's numbers, from NumPy and SciPy. Writes second_opinion/*.csv, which the tests read;
run it again when setups.json changes (Debian: python3-scipy). Every formula is written here anew, from its statement."""
import csv
import json
from pathlib import Path

import numpy as np
from scipy import integrate, interpolate, optimize, stats

HERE = Path(__file__).resolve().parent / "second_opinion"
G = 9.80665
MODELS = ("line", "quadratic", "rubber")


def write(name, head, rows):
    with open(HERE / name, "w", newline="", encoding="utf-8") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(head)
        out.writerows([[repr(float(v)) if isinstance(v, (float, np.floating)) else v for v in row] for row in rows])


def basis(model, stretch):
    """Columns of the model; stretch may be an array."""
    s = np.asarray(stretch, dtype=float)
    if model == "line":
        return np.stack([s - 1])
    if model == "quadratic":
        return np.stack([s - 1, (s - 1) ** 2])
    return np.stack([s - s ** -2, 1 - s ** -3])


class Fit:
    """Least squares by NumPy on one band's points."""

    def __init__(self, rest, points, model):
        lengths, pulls = np.array(points).T
        if model == "best":
            fits = [Fit(rest, points, m) for m in MODELS]
            model = min((f for f in fits if f.rises), key=lambda f: f.aicc).model
        self.model, self.rest, self.n = model, rest, len(points)
        design = basis(model, lengths / rest).T
        self.k = design.shape[1]
        self.c = np.linalg.lstsq(design, pulls, rcond=None)[0]
        rss = float(np.sum((pulls - design @ self.c) ** 2))
        free = self.n - self.k
        self.sd = np.sqrt(rss / free) if free else np.nan
        inverse = np.linalg.inv(design.T @ design)
        self.cov = inverse * self.sd ** 2 if free else np.zeros((self.k, self.k))
        p = self.k + 1
        self.aicc = self.n * np.log(rss / self.n) + 2 * p + 2 * p * (p + 1) / (self.n - p - 1) if self.n > p + 1 else np.nan
        inner = np.linspace(lengths.min() / rest, lengths.max() / rest, 500)
        self.rises = bool(np.all(np.diff(self.c @ basis(model, inner)) >= 0))
        self.known = 1.05 * lengths.max()

    def pull(self, length, c=None, rest=None):
        """c and rest stand in for the fitted ones where their error is followed."""
        c = self.c if c is None else c
        stretch = np.maximum(np.asarray(length) / (self.rest if rest is None else rest), 1.0)
        return c @ basis(self.model, stretch).reshape(self.k, -1)

    def roots(self):
        """Columns whose squares sum to the covariance."""
        values, vectors = np.linalg.eigh(self.cov)
        return vectors * np.sqrt(np.maximum(values, 0))


def clamp(x, top):
    return np.clip(x, 0.0, top)


def lead(chain, h):
    s, mass = chain["lead_m"], chain.get("lead_kg", 0.0)
    return mass * (clamp(h / s, 1.0) if s > 0 else np.where(h > 0, 1.0, 0.0))


def metres_up(chain, h):
    x, length = h - chain["lead_m"], chain["length_m"]
    if chain["hang"] == "straight":
        return clamp(x, length)
    if chain["hang"] == "doubled":
        return 2 * clamp(x, length / 2)
    return length * clamp(x / chain["bunch_m"], 1.0)


def chain_pull(chain, h, shift=0.0):
    return G * ((chain["kg_per_m"] + shift) * metres_up(chain, h) + lead(chain, h))


def chain_kinks(chain):
    moving = {"straight": chain["length_m"], "doubled": chain["length_m"] / 2, "bunched": chain.get("bunch_m")}[chain["hang"]]
    return [chain["lead_m"], chain["lead_m"] + moving]


def strands(band):
    return 2 if band["hang"] == "doubled" else 1


def whole(band, h):
    length = np.hypot(h - band["anchor_height_m"], band["offset_m"])
    return 2 * length + band.get("wrap_m", 0.0) if strands(band) == 2 else length


def band_pull(band, h, c=None, rest=None):
    h = np.atleast_1d(np.asarray(h, dtype=float))
    z = h - band["anchor_height_m"]
    length = np.hypot(z, band["offset_m"])
    share = np.divide(z, length, out=np.zeros_like(z), where=length > 0)
    return strands(band) * share * band["fit"].pull(whole(band, h), c, rest)


def band_kinks(band):
    span = (band["fit"].rest - band.get("wrap_m", 0.0)) / 2 if strands(band) == 2 else band["fit"].rest
    if span <= abs(band["offset_m"]):
        return []
    reach = np.sqrt(span ** 2 - band["offset_m"] ** 2)
    return [band["anchor_height_m"] - reach, band["anchor_height_m"] + reach]


class Errors:
    """How far each source of error has moved its quantity."""

    def __init__(self):
        self.chain, self.fit, self.rest, self.iron = {}, {}, {}, 0.0
        # of bench aids: the plates on them as a share, the tape beside them in metres
        self.plates, self.tape = {}, {}


class Aid:
    """Help by height over the chest: a monotone cubic through what rested on it; slack, and known, above a reading with nothing on it."""
    U_PLATES, U_TAPE = 0.02 / np.sqrt(3), 0.01

    def __init__(self, given):
        heights, masses = np.array(sorted(given["readings"])).T
        self.chest, self.source = given["chest_m"], given["measurement"]
        self.first, self.slack = heights[0], masses[-1] == 0
        self.last = heights[-1] + (2.0 if self.slack else 0.0)
        self.heights, self.curve = heights, interpolate.PchipInterpolator(heights, G * masses)

    def help(self, h, e=None):
        at = np.asarray(h) - self.chest
        tape = e.tape.get(self.source, 0.0) if e else 0.0
        share = e.plates.get(self.source, 0.0) if e else 0.0
        # moved by the tape, the curve goes on past its first point as it came
        inside = (1 + share) * self.curve(np.clip(at, self.first, self.heights[-1]) + tape)
        return np.where(at + tape > self.heights[-1], 0.0, inside) if self.slack else inside

    def kinks(self):
        return [*(self.chest + self.heights), self.chest + self.last]

    def knows(self, low, high):
        return low - self.chest >= self.first - 1e-12 and high - self.chest <= self.last + 1e-12


class SetUp:
    def __init__(self, given):
        self.given = given
        self.iron = given["bar_kg"] + given["collars_kg"] + given["plates_kg"]
        self.chains, self.bands = [], []
        for side in ("left", "right"):
            for i, item in enumerate(given[side]):
                if "chain" in item:
                    self.chains.append(dict(item["chain"], source=item["chain"].get("measurement", f"{side}{i}")))
                else:
                    b = item["band"]
                    self.bands.append(dict(b, source=b.get("measurement", f"{side}{i}"), name=f"{side}{i}", fit=Fit(b["rest_m"], b["points"], b["model"])))
        self.aids = [Aid(worn) for worn in given.get("worn", [])]

    def pull(self, h, e=None):
        """Total in newtons at heights h, with every source of error moved by e."""
        e = e or Errors()
        h = np.atleast_1d(np.asarray(h, dtype=float))
        total = np.full_like(h, G * (self.iron + e.iron))
        for c in self.chains:
            total += chain_pull(c, h, e.chain.get(c["source"], 0.0) * c.get("u_kg_per_m", 0.0))
        for b in self.bands:
            coefficients = b["fit"].c + e.fit.get(b["source"], 0.0)
            total += band_pull(b, h, coefficients, b["fit"].rest * (1 + e.rest.get(b["name"], 0.0)))
        for aid in self.aids:
            total -= aid.help(h, e)
        return total

    def kinks(self, low, high):
        every = [k for c in self.chains for k in chain_kinks(c)] + [k for b in self.bands for k in band_kinks(b)] + [k for a in self.aids for k in a.kinks()]
        return sorted({k for k in every if low + 1e-12 < k < high - 1e-12})

    def mean(self, low, high, e=None):
        stops = [low, *self.kinks(low, high), high]
        area = sum(integrate.quad(lambda h: float(self.pull(h, e)[0]), a, b, epsabs=1e-11, epsrel=1e-13)[0] for a, b in zip(stops, stops[1:]))
        return area / (high - low)

    def known(self, low, high):
        reached = all(np.all(whole(b, np.linspace(low, high, 2001)) <= b["fit"].known * (1 + 1e-12)) for b in self.bands)
        return reached and all(aid.knows(low, high) for aid in self.aids)

    def extremes(self, low, high):
        stops = [low, *self.kinks(low, high), high]
        found = [float(self.pull(s)[0]) for s in stops]
        for a, b in zip(stops, stops[1:]):
            for sign in (1, -1):
                turn = optimize.minimize_scalar(lambda h: sign * float(self.pull(h)[0]), bounds=(a, b), method="bounded", options={"xatol": 1e-10})
                found.append(sign * turn.fun)
        return min(found), max(found)

    def floors(self, quantity):
        """What is missing to 5 % of the pull of each band read with few points, straight within a source."""
        sums = {}
        for b in self.bands:
            fit = b["fit"]
            if fit.n >= fit.k + 3:
                continue
            alone = SetUp({"bar_kg": 0, "collars_kg": 0, "plates_kg": 0, "left": [], "right": []})
            alone.bands = [b]
            value = quantity(alone, None)
            fitted = 0.0
            for column in fit.roots().T:
                moved = Errors()
                moved.fit[b["source"]] = column
                fitted += (quantity(alone, moved) - value) ** 2
            missing = np.sign(value) * np.sqrt(max(0.0, (0.05 * value) ** 2 - fitted))
            sums[b["source"]] = sums.get(b["source"], 0.0) + missing
        return list(sums.values())

    def sources(self, quantity):
        """Effect of one standard uncertainty of each source on a quantity of the set-up, by moving it."""
        value = quantity(self, None)
        effects = []
        for source in {c["source"] for c in self.chains}:
            moved = Errors()
            moved.chain[source] = 1.0
            effects.append(quantity(self, moved) - value)
        for source in {b["source"] for b in self.bands}:
            fit = next(b["fit"] for b in self.bands if b["source"] == source)
            for column in fit.roots().T:
                moved = Errors()
                moved.fit[source] = column
                effects.append(quantity(self, moved) - value)
        for b in self.bands:
            if b.get("twin"):
                step = 1e-5
                up, down = Errors(), Errors()
                up.rest[b["name"]], down.rest[b["name"]] = step, -step
                effects.append(0.03 * (quantity(self, up) - quantity(self, down)) / (2 * step))
        for aid in self.aids:
            plates = Errors()
            plates.plates[aid.source] = Aid.U_PLATES
            effects.append(quantity(self, plates) - value)
            # the curve changes its bend at every reading, so the step is small
            step = 1e-7
            up, down = Errors(), Errors()
            up.tape[aid.source], down.tape[aid.source] = step, -step
            effects.append(Aid.U_TAPE * (quantity(self, up) - quantity(self, down)) / (2 * step))
        effects.append(G * self.given.get("u_plates_kg", 0.0))
        return effects + self.floors(quantity)

    def u_at(self, h):
        step, u = 1e-6, self.given.get("u_mark_m", 0.0)
        here, above, below = (float(self.pull(h + d)[0]) for d in (0.0, step, -step))
        slopes = [(above - here) / step, (here - below) / step]
        # away from a corner the two agree but for the curvature, and the middle is closer
        corner = abs(slopes[0] - slopes[1]) > 1e-3 * (1 + max(map(abs, slopes)))
        slope = max(map(abs, slopes)) if corner else (above - below) / (2 * step)
        effects = self.sources(lambda s, e: float(s.pull(h, e)[0]))
        return np.sqrt(sum(x * x for x in effects) + (slope * u) ** 2)

    def u_mean(self, low, high):
        step, u = 1e-5, self.given.get("u_mark_m", 0.0)
        marks = [(self.mean(low + step, high) - self.mean(low - step, high)) / (2 * step), (self.mean(low, high + step) - self.mean(low, high - step)) / (2 * step)]
        effects = self.sources(lambda s, e: s.mean(low, high, e)) + [m * u for m in marks]
        return np.sqrt(sum(x * x for x in effects))

    def answer(self):
        g = self.given
        out = {}
        low, high = g["bottom_m"], g["top_m"]
        for name, h in (("rack", g.get("rack_m")), ("bottom", low), ("top", high)):
            if h is not None and self.known(h, h):
                out[f"{name}_kg"] = float(self.pull(h)[0]) / G
                out[f"u_{name}_kg"] = self.u_at(h) / G
        if "sticking_from_m" in g and self.known(g["sticking_from_m"], g["sticking_to_m"]):
            zone = g["sticking_from_m"], g["sticking_to_m"]
            out["sticking_kg"], out["u_sticking_kg"] = self.mean(*zone) / G, self.u_mean(*zone) / G
            out["sticking_min_kg"], out["sticking_max_kg"] = (v / G for v in self.extremes(*zone))
        if self.known(low, high):
            out["mean_kg"], out["u_mean_kg"] = self.mean(low, high) / G, self.u_mean(low, high) / G
            out["work_j"] = self.mean(low, high) * (high - low)
            out["two_point_mean_kg"] = (out["bottom_kg"] + out["top_kg"]) / 2
        for name, h in (("bottom", low), ("top", high)):
            out[f"moving_mass_{name}_kg"] = self.iron + sum(float(chain_pull(c, np.array([h]))[0]) for c in self.chains) / G
        return out

    def monte_carlo(self, draws=20000):
        """Standard deviations when every source is drawn anew; nothing is taken as straight but the coefficients."""
        rng = np.random.default_rng(1795)
        g = self.given
        low, high, u = g["bottom_m"], g["top_m"], g.get("u_mark_m", 0.0)
        grid = np.linspace(0.0, 1.0, 801)
        values = np.empty((draws, 3))
        for i in range(draws):
            e = Errors()
            e.iron = g.get("u_plates_kg", 0.0) * rng.standard_normal()
            e.chain = {c["source"]: 0.0 for c in self.chains}
            e.chain = {s: rng.standard_normal() for s in e.chain}
            for source in {b["source"]: 0 for b in self.bands}:
                roots = next(b["fit"] for b in self.bands if b["source"] == source).roots()
                e.fit[source] = roots @ rng.standard_normal(roots.shape[1])
            e.rest = {b["name"]: 0.03 * rng.standard_normal() for b in self.bands if b.get("twin")}
            a, b = low + u * rng.standard_normal(), high + u * rng.standard_normal()
            f = self.pull(a + (b - a) * grid, e)
            values[i] = f[0], f[-1], np.trapz(f, grid)
        return dict(zip(("u_bottom_kg", "u_top_kg", "u_mean_kg"), values.std(axis=0, ddof=1) / G))


def band_fits():
    data = {"hung 5 to 17.5 kg": (1.0, [[1.15, 49.03325], [1.245, 73.549875], [1.37, 98.0665], [1.525, 122.583125], [1.72, 147.09975], [1.95, 171.616375]]),
            "a light band of half a metre": (0.5, [[0.62, 18.0], [0.75, 37.5], [0.91, 52.0], [1.08, 69.9], [1.27, 84.1], [1.44, 101.0], [1.58, 110.2]])}
    rows = []
    for name, (rest, points) in data.items():
        for model in MODELS:
            fit = Fit(rest, points, model)
            # the coefficients once more, by another way to the least squares
            lengths, pulls = np.array(points).T
            again = optimize.least_squares(lambda c: basis(model, lengths / rest).T @ c - pulls, np.ones(fit.k), xtol=1e-15, ftol=1e-15, gtol=1e-15).x
            assert np.allclose(again, fit.c, rtol=1e-6), (again, fit.c)
            common = [name, model, rest, json.dumps(points)]
            rows += [[*common, f"coefficient {i}", c] for i, c in enumerate(fit.c)]
            rows += [[*common, "residual sd", fit.sd], [*common, "aicc", fit.aicc]]
            for stretch in (1.1, 1.4, 1.9):
                g = basis(model, stretch)
                rows.append([*common, f"pull {stretch}", float(fit.c @ g)])
                rows.append([*common, f"u {stretch}", float(np.sqrt(g @ fit.cov @ g))])
    write("band_fits.csv", ["band", "model", "rest_m", "points", "quantity", "value"], rows)


def monotone_curves():
    data = {"rising": ([0, 0.1, 0.25, 0.3, 0.7, 1.0], [0, 3, 4, 9, 9.5, 20]), "bench aid": ([0, 0.1, 0.2, 0.35, 1.0], [300, 180, 80, 0, 0]),
            "summit and dip": ([-2, -1, 0.5, 1, 3, 3.5, 6], [1, 5, -2, -2, 0, 7, 6.5]), "two points": ([1, 4], [2, -1]), "three points": ([0, 1, 3], [0, 1, 5])}
    rows = []
    for name, (x, y) in data.items():
        curve = interpolate.PchipInterpolator(x, y)
        at = np.linspace(x[0], x[-1], 29)
        rows += [[name, json.dumps(x), json.dumps(y), "value", a, a, float(curve(a))] for a in at]
        rows += [[name, json.dumps(x), json.dumps(y), "slope", a, a, float(curve.derivative()(a))] for a in at[1:-1] if min(abs(a - np.array(x))) > 1e-9]
        rows += [[name, json.dumps(x), json.dumps(y), "integral", at[i], at[-1 - 2 * i], float(curve.integrate(at[i], at[-1 - 2 * i]))] for i in range(0, 12)]
    write("monotone_curves.csv", ["curve", "x", "y", "quantity", "from", "to", "value"], rows)


def measured_things():
    """A bench aid and two ways to read a cam machine, with what each comes to and its standard uncertainty."""
    aid = Aid({"chest_m": 0.0, "measurement": "aid", "readings": [[0.0, 62.5], [0.05, 41.0], [0.11, 22.5], [0.19, 8.5], [0.31, 0.0]]})
    rows = []
    for at in (0.0, 0.02, 0.05, 0.083, 0.15, 0.25, 0.31, 0.5, 2.3):
        help_n, slope = float(aid.help(at)), float(aid.curve.derivative()(at)) if at <= 0.31 else 0.0
        rows += [["aid", f"help {at}", help_n], ["aid", f"u help {at}", float(np.hypot(Aid.U_PLATES * help_n, Aid.U_TAPE * slope))]]
    u_radius, u_angle, u_stack, u_travel, stack = 0.002, np.pi / 180, 0.02 / np.sqrt(3), 0.01, 40.0
    angles, radii = np.radians([0.0, 20.0, 45.0, 70.0, 100.0, 120.0]), np.array([0.081, 0.096, 0.118, 0.121, 0.104, 0.088])
    cam = interpolate.PchipInterpolator(angles, radii)
    weight = stack * G
    for degrees in (0.0, 10.0, 45.0, 63.5, 119.0):
        at = np.radians(degrees)
        torque = weight * float(cam(at))
        rows += [["cam", f"torque {degrees}", torque],
                 ["cam", f"u torque {degrees}", float(np.hypot(u_stack * torque, weight * np.hypot(u_radius, u_angle * float(cam.derivative()(at)))))]]
    way = angles[-1] - angles[0]
    rise = integrate.quad(lambda a: float(cam(a)), angles[0], angles[-1], points=list(angles[1:-1]), epsabs=1e-14, limit=200)[0]
    mean, ends = weight * rise / way, weight * radii[[0, -1]]
    shared = np.hypot(u_stack * mean, weight * u_radius)
    rows += [["cam", "rise", rise], ["cam", "mean", mean], ["cam", "work", weight * rise],
             ["cam", "u mean", float(np.hypot(shared, np.hypot(mean - ends[0], ends[1] - mean) / way * u_angle))],
             ["cam", "u work", float(np.hypot(shared * way, np.hypot(*ends) * u_angle))]]
    travels, kilograms = np.array([0.0, 0.1, 0.2, 0.35, 0.5]), np.array([31.5, 36.0, 38.5, 37.0, 30.5])
    pull = interpolate.PchipInterpolator(travels, G * kilograms)
    u_scale = 0.5 / np.sqrt(12) * G
    mean, ends, way = float(pull.integrate(0.0, 0.5)) / 0.5, G * kilograms[[0, -1]], 0.5
    rows += [["pull", "mean", mean], ["pull", "work", mean * way],
             ["pull", "u mean", float(np.hypot(u_scale, np.hypot(mean - ends[0], ends[1] - mean) / way * u_travel))],
             ["pull", "u work", float(np.hypot(u_scale * way, np.hypot(*ends) * u_travel))]]
    write("measured_things.csv", ["thing", "quantity", "value"], rows)


def student():
    freedoms = [0.3, 0.5, 1, 1.3, 2, 2.78, 3, 4, 5, 6.5, 8, 10, 13.7, 20, 30, 60.2, 120, 1000, 1e6, 1e12]
    # ppf itself is good to a relative 1e-9 only, the distribution it turns round to the last digits
    quantile = lambda f: optimize.brentq(lambda t: stats.t.cdf(t, f) - 0.975, 1, 1e5, xtol=1e-13, rtol=1e-14)
    write("student.csv", ["degrees_of_freedom", "k95"], [[f, quantile(f)] for f in freedoms])


def setups():
    rows, drawn = [], []
    for entry in json.loads((HERE / "setups.json").read_text(encoding="utf-8")):
        s = SetUp(entry["in"])
        rows += [[entry["name"], quantity, float(value)] for quantity, value in s.answer().items()]
        if entry["monte_carlo"]:
            drawn += [[entry["name"], quantity, float(value)] for quantity, value in s.monte_carlo().items()]
    write("setups.csv", ["setup", "quantity", "value"], rows)
    write("monte_carlo.csv", ["setup", "quantity", "value"], drawn)


if __name__ == "__main__":
    band_fits()
    monotone_curves()
    measured_things()
    student()
    setups()
