"""Renderings of hole cycles and the chips of their tools; see renderings.py, which merges them."""

from __future__ import annotations

import numpy as np
from renderings import share, whole

CASES = {
    "feed_out_cycle_time": (
        {"travel": (5e-3, 0.1), "return_ratio": (0.5, 4), "dwell": (0, 2)},
        lambda v: v.dwell + v.travel * (1 + 1 / v.return_ratio) / v.feed_speed),
    "hole_depth_ratio": ({"depth": share("diameter", 0.2, 9)}, lambda v: v.depth / v.diameter),
    "feed_for_hole_chip_thickness": (
        {"point_angle": (0.5, 3.1)},
        lambda v: v.teeth * v.chip_thickness / np.sqrt((1 - np.cos(v.point_angle)) / 2)),
    "tap_chip_thickness": (
        {"drill_diameter": share("major_diameter", 0.7, 0.95), "chamfer_threads": (1, 9), "flutes": whole(2, 6)},
        lambda v: (v.major_diameter / 2 - v.drill_diameter / 2) / (v.flutes * v.chamfer_threads)),
}
