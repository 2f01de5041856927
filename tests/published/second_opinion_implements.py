#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A second opinion on implements and bookings, from NumPy and SciPy: balances of force and moment solved as equations, volumes
by integration, and uncertainties by drawing every input at random. Writes second_opinion/implements.csv, which the tests read
(Debian: python3-scipy). Every formula is written here anew."""
import numpy as np
from scipy import integrate, optimize, stats

from second_opinion import G, write

DRAWS = 400_000
ROWS = []


def rng():
    return np.random.default_rng(1795)


def say(thing, quantity, value, share=1e-8):
    """How near it is to be, as a share: an equation that was solved, or drawings with the first order of propagation beside them."""
    ROWS.append([thing, quantity, float(value), share])


def drawn_u(thing, quantity, values):
    say(thing, f"u {quantity}", np.std(values, ddof=1), 0.02)


def scale(draw, shown, step, accuracy, shared=None):
    """What hung there when a scale showed `shown`: a rectangle as wide as its step, and one of its own error."""
    own = draw.uniform(-1, 1, DRAWS) if shared is None else shared
    return shown + step * draw.uniform(-0.5, 0.5, DRAWS) + accuracy * shown * own


def tyre():
    draw = rng()
    shown, lift, contact = scale(draw, 62.0, 0.5, 0.01), draw.normal(0.70, 0.01, DRAWS), draw.normal(0.55, 0.01, DRAWS)
    # moments about the far contact: what hangs at the lift point against the weight in the middle
    moments = lambda mass, r, a, b: mass * b - r * (a + b)
    say("tyre", "mass", optimize.brentq(moments, 1, 1000, args=(62.0, 0.70, 0.55), xtol=1e-12))
    drawn_u("tyre", "mass", shown * (lift + contact) / contact)

    mass, diameter, width = draw.normal(141.0, 3.0, DRAWS), draw.normal(1.40, 0.01, DRAWS), draw.normal(0.38, 0.01, DRAWS)

    def vertical(m, d, w, degrees):
        # places of the middle and of the near lower edge, with the far lower edge at the origin
        t = np.radians(degrees)
        middle, edge = d / 2 * np.cos(t) - w / 2 * np.sin(t), d * np.cos(t)
        return m * G * middle / edge

    height = lambda t: 1.40 / 2 * np.sin(t) + 0.38 / 2 * np.cos(t)
    for degrees in (0, 20, 45, 65):
        say("tyre", f"vertical {degrees}", vertical(141.0, 1.40, 0.38, degrees))
        drawn_u("tyre", f"vertical {degrees}", vertical(mass, diameter, width, degrees))
    # it balances where its middle is highest, and the work is the rise to there
    top = optimize.minimize_scalar(lambda t: -height(t), bounds=(0.1, 1.55), method="bounded", options={"xatol": 1e-12})
    say("tyre", "work", 141.0 * G * (-top.fun - height(0)))
    rise = np.hypot(diameter, width) / 2 - width / 2
    drawn_u("tyre", "work", mass * G * rise)


def log():
    draw = rng()
    slices = np.linspace(0, 1, 201)

    def mass(length, first, second, gravity, moisture):
        radius = (np.multiply.outer(1 - slices, first) + np.multiply.outer(slices, second)) / 2
        # Simpson's rule is exact for the square of a straight line
        return integrate.simpson(np.pi * radius ** 2, x=slices, axis=0) * length * 1000 * gravity * (1 + moisture / 100)

    say("log", "mass", mass(2.2, 0.34, 0.27, 0.46, 18.0))
    few = DRAWS // 10
    drawn = mass(draw.normal(2.2, 0.01, few), draw.normal(0.34, 0.006, few), draw.normal(0.27, 0.006, few), draw.normal(0.46, 0.046, few), draw.normal(18, 4, few))
    drawn_u("log", "mass", drawn)

    # both ends on one scale, the hooks 10 cm and 15 cm inside where it rests
    shared = draw.uniform(-1, 1, DRAWS)
    first, second = scale(draw, 38.0, 0.5, 0.01, shared), scale(draw, 29.5, 0.5, 0.01, shared)

    def whole(r1, r2, in1, in2, span):
        # mass and place of its middle from two balances of moments: m (span - x) = r1 (span - in1), m x = r2 (span - in2)
        about_second, about_first = r1 * (span - in1), r2 * (span - in2)
        place = span * about_first / (about_first + about_second)
        return about_first / place

    say("ends", "mass", whole(38.0, 29.5, 0.10, 0.15, 2.2))
    drawn_u("ends", "mass", whole(first, second, draw.normal(0.10, 0.01, DRAWS), draw.normal(0.15, 0.01, DRAWS), draw.normal(2.2, 0.02, DRAWS)))


def keg():
    draw = rng()

    def content(r, length, depth):
        return length * integrate.quad(lambda y: 2 * np.sqrt(max(0.0, r * r - y * y)), -r, depth - r, epsabs=1e-15)[0]

    say("keg", "content", content(0.19, 0.5, 0.14))
    # layers of the depth that was drawn, each its chord wide
    few, layers = 20_000, np.linspace(0, 1, 400)
    r, length, depth = draw.normal(0.19, 0.002, few), draw.normal(0.5, 0.005, few), draw.normal(0.14, 0.005, few)
    y = np.multiply.outer(layers, depth) - r
    area = integrate.simpson(2 * np.sqrt(np.maximum(0, r * r - y * y)), x=layers, axis=0) * depth
    drawn_u("keg", "mass", draw.normal(12.5, 0.05, few) + 998.2 * area * length)
    say("keg", "share", content(0.19, 1, 0.14) / content(0.19, 1, 0.38))
    drawn_u("keg", "share", area / (np.pi * r * r))


def pull(mass, friction, angle, way):
    """Force along the strap and what the ground carries, from the balances along and across the ground."""
    lift = 1 if way == "tow" else -1
    a = np.array([[np.cos(angle), -friction], [lift * np.sin(angle), 1.0]])
    return np.linalg.solve(a, [0.0, mass * G])[0]


def pulls(mass, friction, angle, way):
    """The same for many at once, by Cramer's rule."""
    lift = 1 if way == "tow" else -1
    return friction * mass * G / (np.cos(angle) + friction * lift * np.sin(angle))


def sled():
    draw = rng()
    angle = np.radians(15)
    for way in ("tow", "push"):
        say("sled", f"{way}", pull(100.0, 0.45, angle, way))
        drawn_u("sled", f"{way}", pulls(draw.normal(100, 0.5, DRAWS), draw.normal(0.45, 0.02, DRAWS), draw.normal(angle, 0.02, DRAWS), way))
    masses, shown = np.array([35.0, 55.0, 75.0, 95.0]), np.array([14.9, 22.8, 31.6, 38.9])

    def friction(shown, angle):
        # best single friction for all readings by least squares, as an equation to be solved
        force = shown * G
        return optimize.least_squares(lambda mu: force * np.cos(angle) - mu[0] * (masses * G - force * np.sin(angle)), [0.3], xtol=1e-15, ftol=1e-15, gtol=1e-15)

    fit = friction(shown, angle)
    say("friction", "value", fit.x[0])
    scatter = np.sqrt(2 * fit.cost / (len(masses) - 1) / float(fit.jac.T @ fit.jac))
    shared = draw.uniform(-1, 1, 4000)
    drawn = [friction(shown + 0.2 * draw.uniform(-0.5, 0.5, 4) + 0.02 * shown * off, draw.normal(angle, 0.02)).x[0] for off in shared]
    say("friction", "u value", np.hypot(scatter, np.std(drawn, ddof=1)), 0.02)


def line():
    draw = rng()
    masses, times, way = np.array([25.0, 45.0, 65.0, 85.0]), np.array([3.05, 3.52, 4.11, 4.93]), 20.0
    speeds = way / times
    coefficients, covariance = optimize.curve_fit(lambda m, free, standstill: free * (1 - m / standstill), masses, speeds, p0=[8.0, 200.0])
    fitted = stats.linregress(masses, speeds)
    assert np.isclose(-fitted.intercept / fitted.slope, coefficients[1], rtol=1e-6)
    for loss in (0.1, 0.5):
        say("line", f"load {loss}", loss * coefficients[1])
        say("line", f"u load {loss}", loss * np.sqrt(covariance[1, 1]), 1e-5)
    drawn = way / (times + draw.normal(0, 0.1, (40_000, 4)))
    slope = (drawn * (masses - masses.mean())).sum(axis=1) / ((masses - masses.mean()) ** 2).sum()
    standstill = masses.mean() - drawn.mean(axis=1) / slope
    # of the middle, which chance outliers of a quotient do not pull about
    low, high = np.quantile(standstill, stats.norm.cdf([-1, 1]))
    say("line", "u load 0.5 with the watch", 0.5 * np.hypot(np.sqrt(covariance[1, 1]), (high - low) / 2), 0.02)


def week():
    draw = rng()
    days, u = np.array([300.0, 450.0, 0.0, 600.0, 360.0, 0.0, 690.0]), np.array([17.3, 21.7, 0.0, 26.0, 17.3, 0.0, 26.0])
    drawn = days + u * draw.standard_normal((DRAWS // 4, 7))
    monotony = lambda d: d.mean(axis=-1) / d.std(axis=-1, ddof=1)
    say("week", "monotony", monotony(days))
    say("week", "strain", monotony(days) * days.sum())
    drawn_u("week", "monotony", monotony(drawn))
    drawn_u("week", "strain", monotony(drawn) * drawn.sum(axis=1))


if __name__ == "__main__":
    for opinion in (tyre, log, keg, sled, line, week):
        opinion()
    write("implements.csv", ["thing", "quantity", "value", "share"], ROWS)
