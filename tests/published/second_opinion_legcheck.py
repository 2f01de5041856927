#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A second opinion on the leg check, from NumPy and SciPy: analysis of variance as a regression, distributions and expectations by
integration, uncertainties by drawing every input at random, records of force worked anew. Writes second_opinion/legcheck.csv and the
sets of scores in second_opinion/repeated_days.csv, which second_opinion_legcheck.R and the tests read (Debian: python3-scipy)."""
from pathlib import Path

import numpy as np
from scipy import integrate, stats

from second_opinion import G, write
from second_opinion_implements import DRAWS, ROWS, rng, say

DATA = Path(__file__).resolve().parent / "data"


def column(name, at=-1, separator=","):
    lines = (DATA / name).read_text(encoding="utf-8").split("\n")
    numbers = [line.split(separator) for line in lines if line and (line[0].isdigit() or line[0] == "-")]
    return np.array([[float(v) for v in row] for row in numbers]) if at is None else np.array([float(row[at]) for row in numbers])


def sets():
    """Scores of athletes on repeated days: published ones, and invented ones to two decimals."""
    draw = rng()
    invented = lambda n, k, mean, between, within: np.round(mean + between * draw.standard_normal((n, 1)) + within * draw.standard_normal((n, k)), 2)
    return {"judges": column("shrout_fleiss1979_icc.csv", None)[:, 1:], "jumps": invented(8, 2, 34, 4, 1.2), "hops": invented(20, 3, 165, 12, 6),
            "alike": invented(10, 4, 50, 0, 3), "season": invented(30, 6, 1400, 220, 60)}


def reliability():
    rows = []
    for name, scores in sets().items():
        n, k = scores.shape
        rows += [[name, i + 1, j + 1, scores[i, j]] for i in range(n) for j in range(k)]

        def residual(y):
            # subjects and days as columns of ones, without the last day
            design = np.hstack([np.repeat(np.eye(n), k, axis=0), np.tile(np.eye(k)[:, :-1], (n, 1))])
            left = y.ravel() - design @ np.linalg.lstsq(design, y.ravel(), rcond=None)[0]
            return np.sum(left ** 2) / ((n - 1) * (k - 1))

        freedom = (n - 1) * (k - 1)
        error, of_logarithms = np.sqrt(residual(scores)), np.sqrt(residual(np.log(scores)))
        low, high = (np.sqrt(freedom / stats.chi2.ppf(p, freedom)) for p in (0.975, 0.025))
        between = k * np.var(scores.mean(axis=1), ddof=1)
        say(name, "typical error", error)
        say(name, "typical error low", error * low)
        say(name, "typical error high", error * high)
        say(name, "mdc95", 1.96 * np.sqrt(2) * error)
        say(name, "cv", 100 * (np.exp(of_logarithms) - 1))
        say(name, "cv low", 100 * (np.exp(of_logarithms * low) - 1))
        say(name, "cv high", 100 * (np.exp(of_logarithms * high) - 1))
        if between > error ** 2:
            say(name, "worthwhile change", 0.2 * np.sqrt((between - error ** 2) / k))
        if k == 2:
            say(name, "typical error of two days", np.std(scores[:, 1] - scores[:, 0], ddof=1) / np.sqrt(2))
    write("repeated_days.csv", ["set", "subject", "day", "score"], rows)


def distributions():
    for p, above, below in ((0.975, 5, 15), (0.975, 5, 4.786), (0.025, 29, 145), (0.5, 1, 1), (0.975, 2.5, 300), (0.975, 1, 3)):
        say("F", f"{p} {above} {below}", stats.f.ppf(p, above, below), 1e-11)
    for p, freedom in ((0.975, 1), (0.025, 1), (0.975, 7), (0.025, 40.5)):
        say("chi squared", f"{p} {freedom}", stats.chi2.ppf(p, freedom), 1e-11)
    for z in (-6, -1.96, -0.04, 0, 0.5, 3):
        say("normal", f"{z}", stats.norm.cdf(z), 1e-12)


def best_of():
    for k in range(1, 11):
        moment = lambda power: integrate.quad(lambda x: x ** power * k * stats.norm.pdf(x) * stats.norm.cdf(x) ** (k - 1), -12, 12, epsabs=1e-13, limit=200)[0]
        say("best of", f"{k}", np.sqrt(moment(2) - moment(1) ** 2), 1e-6)


def bilateral():
    draw = rng()
    both, left, right = 2050 * (1 + 0.03 * draw.standard_normal(DRAWS)), 1120 * (1 + 0.04 * draw.standard_normal(DRAWS)), 1065 * (1 + 0.035 * draw.standard_normal(DRAWS))
    index = lambda b, l, r: 100 * b / (l + r) - 100
    say("index", "percent", index(2050, 1120, 1065))
    say("index", "u", np.std(index(both, left, right), ddof=1), 0.02)
    body = 82 + 0.8 * draw.standard_normal(DRAWS)
    e2, el, er = 140 * (1 + 0.02 * draw.standard_normal(DRAWS)), 52 * (1 + 0.03 * draw.standard_normal(DRAWS)), 55 * (1 + 0.03 * draw.standard_normal(DRAWS))
    say("lifted", "percent", index(140 + 82, 52 + 82, 55 + 82))
    say("lifted", "u", np.std(index(e2 + body, el + body, er + body), ddof=1), 0.02)
    say("lifted", "u of the body alone", np.std(index(140 + body, 52 + body, 55 + body), ddof=1), 0.02)


def sides():
    draw = rng()
    tries = lambda score, cv, k: (score * (1 + cv * draw.standard_normal((DRAWS // 4, k)))).mean(axis=1)
    left, right = tries(182.0, 0.04, 3), tries(171.0, 0.03, 3)
    # signed, since the size alone folds over at 0
    say("limit", "percentage difference", 1.96 * np.std(100 * (left - right) / left, ddof=1), 0.02)
    say("limit", "two plates", 1.96 * np.std(100 * (left - right) / (left + right), ddof=1), 0.02)
    best = lambda score, cv, k: (score * (1 + cv * draw.standard_normal((DRAWS // 4, k)))).max(axis=1)
    left, right = best(182.0, 0.04, 4), best(171.0, 0.03, 4)
    say("limit", "best of four", 1.96 * np.std(100 * (left - right) / left, ddof=1), 0.05)
    for cv, k in ((0.05, 3), (0.02, 1), (0.1, 2)):
        sd = np.sqrt(2) * cv / np.sqrt(k)
        mean = lambda of: 100 * integrate.quad(lambda x: 2 * of(x) * stats.norm.pdf(x, scale=sd), 0, 12 * sd, epsabs=1e-14)[0]
        say("pure noise", f"percentage difference {cv} {k}", mean(lambda x: -np.expm1(-x)), 1e-9)
        say("pure noise", f"two plates {cv} {k}", mean(lambda x: np.tanh(x / 2)), 1e-4)
    for same, days in ((3, 3), (4, 5), (5, 7), (6, 11)):
        say("same side", f"{same} {days}", min(1.0, 2 * stats.binom.sf(same - 1, days, 0.5)), 1e-12)


def jump(name, rate, force, gravity, short=False):
    unloaded = force - force.min() <= 50
    edges = np.flatnonzero(np.diff(unloaded.astype(int))) + 1
    runs = [run for run in np.split(np.arange(len(force)), edges) if unloaded[run[0]] and run[0] > 0 and not unloaded[:run[0]].all() and len(run) >= 0.1 * rate]
    run = runs[0]
    quarter = len(run) // 4
    quiet = force[run[quarter:len(run) - quarter]]
    force = force - quiet.mean()
    threshold = max(5 * quiet.std(ddof=1), 10)
    takeoff = run[np.argmax(force[run] < threshold)]
    landed = np.flatnonzero(force[run[len(run) // 2]:] >= threshold)
    if short:
        start = int(np.argmin(unloaded))
        window = slice(start, start + round(0.1 * rate))
    else:
        windows = np.lib.stride_tricks.sliding_window_view(force[:takeoff], rate)
        loaded = ~np.lib.stride_tricks.sliding_window_view(unloaded[:takeoff], rate).any(axis=1)
        spread = np.where(loaded, windows.std(axis=1, ddof=1), np.inf)
        window = slice(int(np.argmin(spread)), int(np.argmin(spread)) + rate)
    weight, sd = force[window].mean(), force[window].std(ddof=1)
    outside = np.flatnonzero(np.abs(force[window.stop:takeoff] - weight) > max(5 * sd, 1))[0] + window.stop
    onset = outside - 1 - round(0.03 * rate)
    speed = integrate.trapezoid(force[onset:takeoff] - weight, dx=1 / rate) / (weight / gravity)
    for quantity, value in (("body", weight / gravity), ("onset", onset / rate), ("takeoff", takeoff / rate), ("takeoff speed", speed), ("impulse height", speed ** 2 / (2 * gravity))):
        say(name, quantity, value)
    if len(landed):
        landing = landed[0] + run[len(run) // 2]
        say(name, "landing", landing / rate)
        say(name, "flight height", gravity * ((landing - takeoff) / rate) ** 2 / 8)


def isometric():
    force, rate = column("synthetic_imtp_1000Hz.csv"), 1000
    weight = force[:rate].mean()
    onset = np.flatnonzero(np.abs(force - weight) > 1)[0] - 1
    for ms in (50, 100, 150, 200, 250):
        at = onset + ms
        say("pull", f"force {ms}", force[at])
        say("pull", f"rfd {ms}", (force[at] - force[onset]) / (ms / 1000))
        say("pull", f"impulse {ms}", integrate.trapezoid(force[onset:at + 1] - weight, dx=1 / rate))
    say("pull", "peak", force.max())


if __name__ == "__main__":
    for opinion in (reliability, distributions, best_of, bilateral, sides, isometric):
        opinion()
    jump("short stand", 600, column("bmc_GRFZjump.txt"), G, short=True)
    jump("step on and off", 450, column("bmc_jump1.txt", separator="\t"), G)
    jump("half sine", 1000, column("synthetic_halfsine_1000Hz.csv"), 9.81)
    write("legcheck.csv", ["thing", "quantity", "value", "share"], ROWS)
