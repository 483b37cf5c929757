"""Vessels and their draining by scipy's integrals, differential equations and roots, and by fluids' geometry."""

import json
import sys
from math import pi, sqrt

from fluids.constants import g
from fluids.geometry import SA_from_h, V_from_h
from scipy.integrate import quad, solve_ivp
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq


def surface(shape, level):
    """Area of the water's surface from the width of the vessel there."""
    kind = shape["kind"]
    if kind == "upright":
        return pi / 4 * shape["diameter"] ** 2
    if kind == "lying":
        return 2 * shape["length"] * sqrt(max(0, level * (shape["diameter"] - level)))
    if kind == "tapered":
        share = level / shape["height"]
        return pi / 4 * (shape["bottomDiameter"] + share * (shape["topDiameter"] - shape["bottomDiameter"])) ** 2
    if kind == "box":
        return shape["length"] * shape["width"]
    return float(PchipInterpolator(shape["levels"], shape["volumes"]).derivative()(level))


def height(shape):
    if shape["kind"] == "table":
        return shape["levels"][-1]
    return shape["diameter"] if shape["kind"] == "lying" else shape["height"]


def volume(shape, level):
    """By fluids for cylinders, by scipy's curve for tables, and as an integral for the rest."""
    kind = shape["kind"]
    if kind == "upright":
        return V_from_h(level, shape["diameter"], shape["height"], horizontal=False)
    if kind == "lying":
        return V_from_h(level, shape["diameter"], shape["length"], horizontal=True)
    if kind == "table":
        return float(PchipInterpolator(shape["levels"], shape["volumes"])(level))
    return quad(lambda h: surface(shape, h), 0, level, epsabs=0, epsrel=1e-13)[0]


def level_at(shape, wanted):
    return brentq(lambda h: volume(shape, h) - wanted, 0, height(shape), xtol=1e-15, rtol=1e-14)


def wetted(shape, level):
    if shape["kind"] == "lying":
        return SA_from_h(level, shape["diameter"], shape["length"], horizontal=True)
    return SA_from_h(level, shape["diameter"], shape["height"], horizontal=False)


def drain_by_integral(shape, area, coefficient, start, end):
    """Time as the integral of surface over outflow, with h = s^2 so that nothing is infinite at the outlet."""
    per_root = coefficient * area * sqrt(2 * g)
    return quad(lambda s: 2 * surface(shape, s * s) / per_root, sqrt(end), sqrt(start), epsabs=0, epsrel=1e-12)[0]


def drain_by_steps(shape, area, coefficient, start, end):
    """Time at which dh/dt = -outflow / surface has brought the level down."""
    per_root = coefficient * area * sqrt(2 * g)

    def reached(_, y):
        return y[0] - end

    reached.terminal = True
    most = 3 * drain_by_integral(shape, area, coefficient, start, end) + 1
    run = solve_ivp(
        lambda _, y: [-per_root * sqrt(max(y[0], 1e-12)) / max(surface(shape, y[0]), 1e-12)],
        (0, most),
        [start],
        method="DOP853",
        events=reached,
        rtol=1e-11,
        atol=1e-13,
    )
    return float(run.t_events[0][0])


question = json.load(sys.stdin)
answer = {
    "volumes": [volume(shape, level) for shape, level in question["levels"]],
    "surfaces": [surface(shape, level) for shape, level in question["levels"]],
    "levels": [level_at(shape, wanted) for shape, wanted in question["volumes"]],
    "wetted": [wetted(shape, level) for shape, level in question["wetted"]],
    "timesByIntegral": [drain_by_integral(*one) for one in question["drains"]],
    "timesBySteps": [drain_by_steps(*one) for one in question["drains"] if one[4] > 0],
}
print(json.dumps(answer))
