"""Formulas of wear written a second time."""

from __future__ import annotations

import numpy as np

RATIOS = {"speed_ratio": (0.8, 1.3), "feed_ratio": (0.8, 1.3), "depth_ratio": (0.8, 1.3)}
EXTENDED = {
    "feed_exponent": (0.2, 0.8), "depth_exponent": (0.1, 0.4), "reference_feed": (5e-5, 1e-3), "reference_depth": (5e-4, 5e-3),
}


def log_law(v):
    """Logarithm of C over the part of feed and depth."""
    return (np.log(v.taylor_speed) - v.feed_exponent * np.log(v.feed_per_rev / v.reference_feed)
            - v.depth_exponent * np.log(v.depth_of_cut / v.reference_depth))


CASES = {
    "extended_tool_life": (
        EXTENDED, lambda v: 60 * np.exp((log_law(v) - np.log(v.cutting_speed)) / v.taylor_exponent), 1e-10),
    "extended_speed_for_life": (
        EXTENDED, lambda v: np.exp(log_law(v) - v.taylor_exponent * np.log(v.tool_life / 60)), 1e-12),
    "tool_life_by_powers": (
        {"reference_life": (600, 6000), **RATIOS, "speed_power": (1.5, 10), "feed_power": (0.2, 5), "depth_power": (0.1, 2)},
        lambda v: v.reference_life / (v.speed_ratio**v.speed_power * v.feed_ratio**v.feed_power * v.depth_ratio**v.depth_power)),
    "taylor_exponent_from_power": ({"speed_power": (1.5, 12)}, lambda v: v.speed_power**-1.0),
    "exponent_from_power": ({"power": (0.1, 5)}, lambda v: v.power / (1 / v.taylor_exponent)),
    "taylor_speed_from_one": (
        {}, lambda v: np.exp(np.log(v.cutting_speed) + v.taylor_exponent * np.log(v.tool_life / 60))),
    "tool_life_for_criterion": (
        {"flank_wear": (1e-4, 4e-4), "new_flank_wear": (1e-4, 8e-4)},
        # Wear at a constant rate.
        lambda v: v.new_flank_wear / (v.flank_wear / v.tool_life)),
    "taylor_speed_for_criterion": (
        {"flank_wear": (1e-4, 4e-4), "new_flank_wear": (1e-4, 8e-4)},
        # The life at C becomes VB_2/VB_1 minutes: the speed of one minute follows by Taylor.
        lambda v: np.exp(np.log(v.taylor_speed) + v.taylor_exponent * np.log(v.new_flank_wear / v.flank_wear))),
    "crater_depth_limit": ({}, lambda v: (0.06 + 0.3 * v.feed_per_rev * 1000) / 1000),
    "mean_from_median_life": (
        {"median_life": (60, 6000), "log_deviation": (0, 0.8)},
        # Mean of the log-normal distribution by Gauss and Hermite.
        lambda v: sum(w * v.median_life * np.exp(v.log_deviation * x) for x, w in zip(*np.polynomial.hermite_e.hermegauss(40)))
        / np.sqrt(2 * np.pi), 1e-10),
    "kc11_from_specific_force": ({}, lambda v: v.specific_cutting_force * np.exp(v.chip_exponent * np.log(1000 * v.chip_thickness))),
}
