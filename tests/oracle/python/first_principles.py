"""Equations of physics told as what they follow from: heat balances, gas laws, geometry by points, turned planks.

Each answer is found by scipy or fluids (quadrature, root, least of an energy, slices, points counted), and holds none of
the closed forms that the library computes.
"""

import json
import sys
from functools import cache
from math import cos, exp, log, pi, sin, sqrt, tan

import numpy as np
from fluids.atmosphere import ATMOSPHERE_1976
from fluids.fittings import contraction_conical, diffuser_sharp
from scipy.integrate import quad, solve_ivp
from scipy.linalg import solve_banded
from scipy.optimize import brentq, curve_fit, minimize_scalar

GRAVITY = 9.80665
HEAT_OF_FREEZING = 334000.0
ICE = 2.2
SOIL = 5e-7


def barb(ratio):
    """A sharp narrowing and a sharp widening, by the fittings of fluids, upon the velocity in the pipe."""
    return (contraction_conical(1.0, ratio, l=0, method="Crane") + diffuser_sharp(ratio, 1.0)) / ratio**4


def widening(ratio):
    return diffuser_sharp(ratio, 1.0) / ratio**4


def frozen_round(bore, film, air):
    """Ice grows inwards ring by ring; its heat leaves through the ice that is there and the film."""
    outside = bore / 2

    def rate(r):
        resistance = 1 / (2 * pi * outside * film) + log(outside / r) / (2 * pi * ICE)
        return 1000 * HEAT_OF_FREEZING * 2 * pi * r * resistance / -air

    return quad(rate, 0, outside, epsrel=1e-11)[0]


def frozen_at_least(volume, conductance, air):
    """The heat of all of it carried away at a rate that no ice hinders."""

    def ended(_, left):
        return left[0]

    ended.terminal = True
    whole = volume * 1000 * HEAT_OF_FREEZING
    found = solve_ivp(lambda _t, _left: [conductance * air], (0, 1e12), [whole], events=ended, rtol=1e-10)
    return float(found.t_events[0][0])


def ice_grown(thickness, film, air):
    """Layer on layer, each through the ice above it and the film."""
    rate = lambda x: 917.0 * HEAT_OF_FREEZING * (1 / film + x / ICE) / -air
    return quad(rate, 0, thickness, epsrel=1e-11)[0]


def ground(depth, start, air, time):
    """A column of soil in slices whose surface is suddenly cold, by implicit steps."""
    slices, steps = 800, 1200
    reach = depth + 7 * sqrt(SOIL * time)
    dz, dt = reach / slices, time / steps
    r = SOIL * dt / dz**2
    bands = np.zeros((3, slices))
    bands[0, 1:], bands[1, :], bands[2, :-1] = -r, 1 + 2 * r, -r
    soil = np.full(slices, start)
    for _ in range(steps):
        right = soil.copy()
        right[0] += r * air
        right[-1] += r * start
        soil = solve_banded((1, 1), bands, right)
    return float(np.interp(depth, np.arange(slices + 1) * dz, np.concatenate([[air], soil])))


def centre(parts):
    """Of even columns one on the other: the height at which all the mass would have the same energy."""
    energy = sum(quad(lambda z: mass * z, low, high)[0] / (high - low) for mass, low, high in parts)
    return energy / sum(mass for mass, _, _ in parts)


def topples(width, height):
    """Turned about an edge, a body falls on from where the middle of its mass stands highest."""
    found = minimize_scalar(
        lambda a: -(width / 2 * sin(a) + height * cos(a)), bounds=(0, pi / 2), method="bounded", options={"xatol": 1e-12}
    )
    return found.x


def doubt(heads, flows, error, at):
    """Of a straight line through logarithms, from the covariance of its fit."""
    line = lambda x, a, b: a + b * x
    x, y = np.log(heads), np.log(flows)
    _, covariance = curve_fit(line, x, y, sigma=np.full(len(x), error), absolute_sigma=True)
    there = np.array([1.0, log(at)])
    return float(sqrt(there @ covariance @ there))


def head_at(coefficient, exponent, opening, flow):
    return brentq(lambda h: coefficient * (h - opening) ** exponent - flow, opening, opening + 1e6, xtol=1e-14)


def screen(wires, across, wire):
    """Points of one mesh that no wire covers, counted."""
    side = 4000
    places = (np.arange(side) + 0.5) / side
    open_one = np.count_nonzero(places / wires > wire)
    open_other = np.count_nonzero(places / across > wire)
    return open_one * open_other / side**2


def screened(diameter, share):
    return brentq(lambda d: share * pi * d**2 / 4 - pi * diameter**2 / 4, diameter, diameter / share)


def vessel_in_sun(absorptance, film, silhouette, wall, sun):
    """Where a vessel in steady sun, half of it seen, comes to rest."""
    heat = lambda rise: absorptance * 0.5 * sun * silhouette - film * wall * rise
    return brentq(heat, -1, 1e4, xtol=1e-12)


def rim_points(count=7200):
    return np.arange(count) * 2 * pi / count


def bowl_overflows(rim, lip):
    """Tilt at which the lowest of many points of the lip comes down to the level at the middle."""
    around = rim_points()
    lowest = lambda a: float(np.min(lip * cos(a) - rim * np.cos(around) * sin(a)))
    return brentq(lowest, 0, pi / 2, xtol=1e-13)


def rim_wet(rim, hole, holes, facing, has_spouts, pool, slope, least):
    """Points of the rim that stand deep enough under a level at the highest hole's top."""
    spouts = facing + 2 * pi * np.arange(holes) / holes
    floor_at = lambda radius, angle: -radius * np.cos(angle) * slope
    surface = np.max(floor_at(hole, spouts)) + pool
    around = spouts if has_spouts else (rim_points(200_000) + 1e-6)
    return float(np.mean(surface - floor_at(rim, around) >= least - 1e-12))


def shim(base, slope, leave):
    """Under the lower edge of a plank that turns about its upper one, until no more slope is left than may be."""

    def left(height):
        angle = brentq(lambda a: -base * sin(a) - (-base * cos(a) * slope + height), -1.2, 1.2, xtol=1e-14)
        return tan(angle) - leave

    return 0.0 if slope <= leave else brentq(left, 0, 1.01 * base * slope, xtol=1e-14)


def vapour(celsius):
    """Over water, by the fit of Buck 1981, from memory [Pa]."""
    return 611.21 * exp((18.678 - celsius / 234.5) * celsius / (257.14 + celsius))


def pushed_out(holds, start, end):
    """The most over how much air there is at first; what grows keeps to the vessel, what is pushed is water."""
    dry = 101325.0

    def pushed(air):
        moles = (dry - vapour(start)) * air / (start + 273.15)
        grown = moles * (end + 273.15) / (dry - vapour(end))
        return min(grown - air, holds - air)

    found = minimize_scalar(lambda a: -pushed(a), bounds=(0, holds), method="bounded", options={"xatol": 1e-12})
    return [-found.fun, found.x]


def sealed(bottom, level, air, withdrawn, density):
    """Boyle's air, and the water under it, added up to the bottom."""
    pressure = brentq(lambda p: p * (air + withdrawn) - 101325.0 * air, 1.0, 101325.0, xtol=1e-9)
    under = quad(lambda _: density * GRAVITY, 0, level)[0]
    return bottom + (pressure + under - 101325.0) / (density * GRAVITY)


def stalls(air, head, density):
    """Draw at which the air has thinned by the head that drives the line."""
    lack = lambda drawn: 101325.0 * (1 - air / (air + drawn)) - density * GRAVITY * head
    return brentq(lack, 0, 1e3 * air, xtol=1e-16)


def air_tube(bottom, level, foot, density):
    """Air comes in at the foot until the pressure there is the atmosphere's, or there is no water above it."""
    shut_in = 101325.0 - quad(lambda _: density * GRAVITY, 0, max(0.0, level - foot))[0]
    at_bottom = shut_in + quad(lambda _: density * GRAVITY, 0, level)[0]
    return bottom + (at_bottom - 101325.0) / (density * GRAVITY)


def open_vessel(bottom, level, density):
    return bottom + quad(lambda _: density * GRAVITY, 0, level)[0] / (density * GRAVITY)


def wind(speed):
    """Stopped air of the standard atmosphere at sea level."""
    return ATMOSPHERE_1976(0).rho * speed**2 / 2


def flow_that_holds(conductance, length, enters, leaves, air):
    """Water that cools along a pipe by the air at each place, not by a mean."""

    def end(flow):
        carried = 4.19e6 * flow
        fell = solve_ivp(lambda _, t: [-conductance * (t[0] - air) / carried], (0, length), [enters], rtol=1e-10)
        return fell.y[0][-1] - leaves

    return brentq(end, 1e-8, 1e-2, xtol=1e-16)


def heat_of_vapour(celsius):
    """From the slope of the vapour pressure (Clausius and Clapeyron), vapour a perfect gas."""
    kelvin, d = celsius + 273.15, 0.01
    slope = (log(vapour(celsius + d)) - log(vapour(celsius - d))) / (2 * d)
    return 461.52 * kelvin**2 * slope


def drying(film, dew, water):
    """Vapour carried as the moist air that carries the heat holds it, by its mixing ratio and not its pressure."""
    holds = lambda t: 0.62198 * vapour(t) / (101325.0 - vapour(t))
    carried = (film - 4.6) / 1006.0 * (holds(water) - holds(dew))
    return max(0.0, carried) * heat_of_vapour(water)


def dried(heat):
    return heat / (1000 * heat_of_vapour(30.0))


def tipping_push(mass, base, height):
    """By the work of a first small turn about the edge."""
    turn = 1e-6
    raised = base / 2 * sin(turn) + height / 3 * (cos(turn) - 1)
    return mass * GRAVITY * raised / (height * sin(turn))


@cache
def greatest_nose():
    """Bond number (r² ρ g/σ) of the widest plumb tube whose resting bubble can still stand square to the wall.

    The nose of a bubble in lengths √(σ/(ρ g)), from its tip down along its side: the pressure of the water grows with depth, so
    it bends ever less; blunter than some, it never comes to run along the wall, and water passes it.
    """

    def radius(tip):
        def bend(_, at):
            r, z, slope = at
            return [cos(slope), sin(slope), 2 / tip - z - sin(slope) / r]

        def plumb(_, at):
            return at[2] - pi / 2

        plumb.terminal = True
        start = 1e-6
        nose = solve_ivp(
            bend, (0, 10), [start, start**2 / (2 * tip), start / tip], events=plumb, rtol=1e-10, atol=1e-12
        )
        return nose.y[0, -1] if nose.t_events[0].size else 0.0

    sharp, blunt = 0.5, 1.0
    for _ in range(40):
        tip = (sharp + blunt) / 2
        sharp, blunt = (tip, blunt) if radius(tip) > 0 else (sharp, tip)
    return radius(sharp) ** 2


def bubble(celsius, density):
    """Surface tension of water by IAPWS R1-76."""
    apart = 1 - (celsius + 273.15) / 647.096
    tension = 0.2358 * apart**1.256 * (1 - 0.625 * apart)
    return 2 * sqrt(greatest_nose() * tension / (density * GRAVITY))


def drift(bore):
    """Speed and flow at which air, let into a full level pipe, comes up it: its nose at rest in a stream that loses no energy.

    The water below the air has the level's fall for its speed (Bernoulli) and the pressure and momentum of the full pipe before it.
    """
    radius = bore / 2

    def stream(half_angle):
        level = radius * cos(half_angle)
        area = radius**2 * (pi - half_angle + sin(half_angle) * cos(half_angle))
        thrust = level * area + 2 / 3 * radius**3 * sin(half_angle) ** 3
        speed = sqrt(2 * GRAVITY * (radius - level))
        return speed * area, GRAVITY * thrust + area * speed**2

    def unbalanced(half_angle):
        flow, leaves = stream(half_angle)
        full = pi * radius**2
        mean = flow / full
        return full * (GRAVITY * radius - mean**2 / 2 + mean**2) - leaves

    flow, _ = stream(brentq(unbalanced, 1, 2, xtol=1e-14))
    return [flow / (pi * radius**2), flow]


QUESTIONS = {
    "barb": barb,
    "widening": widening,
    "frozenRound": frozen_round,
    "frozenAtLeast": frozen_at_least,
    "iceGrown": ice_grown,
    "ground": ground,
    "centre": lambda *parts: centre(parts),
    "topples": topples,
    "doubt": doubt,
    "headAt": head_at,
    "screen": screen,
    "screened": screened,
    "vesselInSun": vessel_in_sun,
    "bowl": bowl_overflows,
    "rimWet": rim_wet,
    "shim": shim,
    "pushedOut": pushed_out,
    "sealed": sealed,
    "stalls": stalls,
    "airTube": air_tube,
    "openVessel": open_vessel,
    "wind": wind,
    "flowThatHolds": flow_that_holds,
    "drying": drying,
    "dried": dried,
    "tippingPush": tipping_push,
    "bubble": bubble,
    "drift": drift,
}

asked = json.load(sys.stdin)
json.dump({name: [QUESTIONS[name](*one) for one in many] for name, many in asked.items()}, sys.stdout)
