"""Formulas against renderings in numpy written here from the textbook equations."""

from __future__ import annotations

import numpy as np
import pytest

import gullet
from gullet import Quantity

RANDOM = np.random.default_rng(7)
N = 20_000


def spread(low, high):
    return RANDOM.uniform(low, high, N)


CASES = {
    "spindle_speed": (
        {"cutting_speed": (0.1, 10, "m/s"), "diameter": (1e-3, 0.2, "m")},
        lambda cutting_speed, diameter: cutting_speed / (np.pi * diameter),
    ),
    "cutting_speed": (
        {"spindle_speed": (1, 300, "rev/s"), "diameter": (1e-3, 0.2, "m")},
        lambda spindle_speed, diameter: np.pi * diameter * spindle_speed,
    ),
    "engagement_angle": (
        {"diameter": (0.05, 0.1, "m"), "radial_depth": (1e-4, 0.05, "m")},
        lambda diameter, radial_depth: np.arccos(1 - 2 * radial_depth / diameter),
    ),
    "milling_removal_rate": (
        {
            "axial_depth": (1e-4, 1e-2, "m"),
            "radial_depth": (1e-4, 1e-2, "m"),
            "table_feed": (1e-3, 0.1, "m/s"),
        },
        lambda axial_depth, radial_depth, table_feed: axial_depth * radial_depth * table_feed,
    ),
    "power_from_torque": (
        {"torque": (0.1, 50, "N.m"), "spindle_speed": (1, 300, "rev/s")},
        lambda torque, spindle_speed: 2 * np.pi * torque * spindle_speed,
    ),
    "cutting_time": (
        {"travel": (0.01, 1, "m"), "feed_speed": (1e-3, 0.1, "m/s")},
        lambda travel, feed_speed: travel / feed_speed,
    ),
    "specific_cutting_force": (
        {
            "kc11": (5e8, 3e9, "Pa"),
            "chip_thickness": (1e-5, 1e-3, "m"),
            "chip_exponent": (0.1, 0.4, ""),
        },
        lambda kc11, chip_thickness, chip_exponent: kc11
        * (chip_thickness / 1e-3) ** -chip_exponent,
    ),
    "tool_life": (
        {
            "cutting_speed": (0.5, 2, "m/s"),
            "taylor_speed": (2, 8, "m/s"),
            "taylor_exponent": (0.1, 0.5, ""),
        },
        lambda cutting_speed, taylor_speed, taylor_exponent: 60
        * (taylor_speed / cutting_speed) ** (1 / taylor_exponent),
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_against_numpy(name):
    ranges, rendering = CASES[name]
    formula = getattr(gullet.formula, name)
    assert {p.name for p in formula.parameters if p.default is None} <= set(ranges)
    values = {key: spread(low, high) for key, (low, high, _) in ranges.items()}
    given = {
        key: Quantity(value, ranges[key][2]) if ranges[key][2] else value
        for key, value in values.items()
    }
    # An engagement angle near zero amplifies the rounding of 1 - 2 a/D; the rest is rounding only.
    np.testing.assert_allclose(formula(**given).si, rendering(**values), rtol=1e-11)
