"""Water in tilted pans and rings, column by column: scipy's quadrature, and sums over a polar grid of a tapered pan."""

import json
import sys
from math import pi, sqrt

import numpy
from scipy.integrate import quad


def over_floor(radius, depth, slope):
    """Columns over a round floor."""
    dry = -depth / slope if slope > 0 else -radius
    start = min(radius, max(-radius, dry))
    return quad(
        lambda x: 2 * sqrt(max(0.0, radius**2 - x**2)) * max(0.0, depth + x * slope),
        start,
        radius,
        epsabs=1e-15,
        epsrel=1e-12,
        limit=400,
    )[0]


def tapered(floor, rim, depth, slope, rings=1200, rays=1200):
    """Columns from the wall or floor up to the surface that touches the lowest lip."""
    radius = (numpy.arange(rings) + 0.5) / rings * rim
    ray = (numpy.arange(rays) + 0.5) / rays * pi
    wall = numpy.maximum(0.0, (radius - floor) / (rim - floor)) * depth
    surface = depth - (rim - radius[:, None] * numpy.cos(ray)[None, :]) * slope
    column = numpy.maximum(0.0, surface - wall[:, None])
    return float(2 * (column * radius[:, None]).sum() * (rim / rings) * (pi / rays))


question = json.load(sys.stdin)
print(
    json.dumps(
        {
            "floors": [over_floor(*one) for one in question["floors"]],
            "tapers": [tapered(*one) for one in question["tapers"]],
        }
    )
)
