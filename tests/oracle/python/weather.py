"""Cooling, ice, sunny pipe and ground by scipy's differential equations and a column of soil in slices."""

import json
import sys
from math import cos, pi, sin

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import solve_banded
from scipy.special import erf

DAY = 86400.0


def cooling(capacity, conductance, start, air, to):
    """Time at which the water comes to a temperature."""

    def cold(_, t):
        return t[0] - to

    cold.terminal = True
    rate = conductance / capacity
    found = solve_ivp(lambda _, t: [-rate * (t[0] - air)], (0, 60 / rate), [start], events=cold, rtol=1e-11, atol=1e-12)
    return float(found.t_events[0][0])


def ice(start, time, film, air):
    """Thickness of ice after a time."""
    heat = 917.0 * 334000.0
    # Time goes in parts of the whole, so that steps are of a size.
    found = solve_ivp(
        lambda _, x: [time * -air / (heat * (1 / film + x[0] / 2.2))], (0, 1), [start], rtol=1e-11, atol=1e-14
    )
    return float(found.y[0][-1])


def towards(day, at):
    """What a sunny pipe tends to."""
    since = (at - day["dawn"]) % DAY
    warmest = 2 / 3 * day["light"]
    share = since / warmest if since < warmest else 1 - (since - warmest) / (DAY - warmest)
    air = day["low"] + (day["high"] - day["low"]) * (1 - cos(pi * share)) / 2
    sun = 0 if since >= day["light"] else day["peak"] * sin(pi * since / day["light"])
    return air + day["absorptance"] * sun / (pi * day["film"])


def sunny(day, tau):
    """Water of the last of like days, so many that it has come round; each quarter of an hour."""
    days = max(4, int(4 * tau / DAY * 6) + 4)
    at = (days - 1) * DAY + np.arange(96) * 900.0
    found = solve_ivp(
        lambda t, w: [(towards(day, t) - w[0]) / tau],
        (0, days * DAY),
        [towards(day, 0)],
        t_eval=at,
        max_step=600,
        rtol=1e-8,
        atol=1e-8,
    )
    return [float(one) for one in found.y[0]]


def ground(day, depth):
    """A column of soil under the same surface for many days, in slices of 5 mm and steps of a minute and a half."""
    alpha, dz, dt = 5e-7, 0.005, 90.0
    slices = 240
    r = alpha * dt / dz**2
    bands = np.zeros((3, slices))
    bands[0, 1:] = -r / 2
    bands[1, :] = 1 + r
    bands[2, :-1] = -r / 2
    # Nothing flows through the bottom.
    bands[1, -1] = 1 + r / 2
    mean = float(np.mean([towards(day, k * 900.0) for k in range(96)]))
    soil = np.full(slices, mean)
    told = []
    days = 12
    for step in range(int(days * DAY / dt)):
        now, then = towards(day, step * dt), towards(day, (step + 1) * dt)
        if step * dt >= (days - 1) * DAY and (step * dt) % 900.0 == 0:
            told.append(float(np.interp(depth, np.arange(slices + 1) * dz, np.concatenate([[now], soil]))))
        above = np.concatenate([[now], soil[:-1]])
        below = np.concatenate([soil[1:], [soil[-1]]])
        right = soil + r / 2 * (above - 2 * soil + below)
        right[0] += r / 2 * then
        soil = solve_banded((1, 1), bands, right)
    return told


asked = json.load(sys.stdin)
json.dump(
    {
        "cooling": [cooling(*one) for one in asked["cooling"]],
        "ice": [ice(*one) for one in asked["ice"]],
        "erf": [float(erf(one)) for one in asked["erf"]],
        "sunny": [sunny(*one) for one in asked["sunny"]],
        "ground": [ground(*one) for one in asked["ground"]],
    },
    sys.stdout,
)
