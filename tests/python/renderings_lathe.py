"""What the operations of lathe and saw add to their formulas, written a second time; see renderings.py for the form."""

from __future__ import annotations

import numpy as np
from renderings import PI, per_row, share, whole


@per_row
def most_passes(thread_height, smallest_infeed):
    passes = 1
    while thread_height * (1 - np.sqrt(passes / (passes + 1))) >= smallest_infeed:
        passes += 1
    return float(passes)


CASES = {
    "turning_depth_cap": (
        {"edge_length": (3e-3, 0.02), "edge_share": (0.3, 1)},
        lambda v: v.edge_length * v.edge_share * np.cos(PI / 2 - v.cutting_edge_angle)),
    "static_grip_for_speed": (
        {"required_grip": (1e3, 5e4), "maximum_speed": (20, 100), "loss_at_maximum": (0.2, 0.9),
         "spindle_speed": share("maximum_speed", 0, 0.95)},
        lambda v: v.required_grip * v.maximum_speed**2
        / (v.maximum_speed**2 - v.loss_at_maximum * v.spindle_speed**2), 1e-11),
    "threading_pass_count": (
        {"passes": whole(1, 20), "spring_passes": whole(0, 4), "starts": whole(1, 6)},
        lambda v: v.starts * v.passes + v.starts * v.spring_passes),
    "threading_most_passes": (
        {"thread_height": (3e-4, 3e-3), "smallest_infeed": (3e-5, 2e-4)}, most_passes),
    "threading_mean_chip_thickness": (
        {"chip_section": (1e-9, 1e-6), "edge_length": (1e-4, 1e-2)}, lambda v: v.chip_section / v.edge_length),
    "rectangular_section_area": (
        {"width": (5e-3, 0.3), "height": (5e-3, 0.3)}, lambda v: v.height * v.width),
    "saw_teeth_per_turn": (
        {"wheel_diameter": (0.1, 1), "tooth_pitch": (1e-3, 0.02)},
        lambda v: 2 * PI * (v.wheel_diameter / 2) / v.tooth_pitch),
}
