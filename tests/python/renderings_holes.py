"""Renderings of drilling, holes and threads; see renderings.py, which merges them."""

from __future__ import annotations

import numpy as np
from renderings import PI, integral, per_row, rapid_move, share, whole

INCH = 25.4e-3
POUND = 0.45359237 * 9.80665
ENLARGED = {"start_diameter": share("diameter", 0.05, 0.95)}
HANDBOOK = {"work_factor": (4e3, 4e4), "wear_factor": (1, 2), "diameter": (2e-3, 0.04)}
DEEP = {"depth": share("diameter", 0.5, 9)}
REAMER = {"diameter": (2.3e-3, 0.064)}
CYCLE = {
    "travel": (0.01, 0.1), "peck": (2e-3, 0.02), "rapid_speed": (0.05, 1), "acceleration": (0.2, 10), "dwell": (0, 1),
}
THREAD = {"pitch": share("major_diameter", 0.05, 0.25)}
STOP = {"stopping_time": (0.05, 1)}
# Truncations of the triangle: an eighth at the crest, a quarter in the nut, a sixth in the rounded root.
TRIANGLE = np.sin(PI / 3)


def radius_mean(v):
    """Torque as the integral of the force per width over the radius."""
    return integral(
        lambda r: v.specific_cutting_force * v.feed_per_rev * r, v.start_diameter / 2, v.diameter / 2)


def ring(v):
    return PI * ((v.diameter / 2) ** 2 - (v.start_diameter / 2) ** 2)


def stock(*steps):
    def over(v):
        edges = np.array([4.3e-3, 7.1e-3, 22e-3])
        return np.array(steps)[np.searchsorted(edges, v.diameter, side="right")] * 1e-3

    return over


@per_row
def full_retract(travel, peck, reentry_clearance, feed_speed, rapid_speed, acceleration, dwell):
    time, bottom = 0.0, 0.0
    while bottom < travel:
        start = max(bottom - reentry_clearance, 0.0)
        time += rapid_move(start, rapid_speed, acceleration)
        bottom = min(bottom + peck, travel)
        time += (bottom - start) / feed_speed + dwell + rapid_move(bottom, rapid_speed, acceleration)
    return time


@per_row
def chip_break(travel, peck, retract, feed_speed, rapid_speed, acceleration, dwell):
    time, start, bottom = 0.0, 0.0, 0.0
    while bottom < travel:
        bottom = min(bottom + peck, travel)
        time += (bottom - start) / feed_speed + dwell
        start = bottom - retract
        time += rapid_move(retract if bottom < travel else bottom, rapid_speed, acceleration)
    return time


CASES = {
    "drilling_chip_width": (
        ENLARGED, lambda v: (v.diameter / 2 - v.start_diameter / 2) / np.sin(v.point_angle / 2)),
    "hole_chip_thickness": ({}, lambda v: v.feed_per_rev / v.teeth * np.cos(PI / 2 - v.point_angle / 2)),
    "enlarging_torque": (ENLARGED, radius_mean),
    "enlarging_thrust": (
        {**ENLARGED, "factor": (0.3, 1.2)},
        lambda v: v.factor * v.specific_cutting_force * v.feed_per_rev
        * (v.diameter / 2 - v.start_diameter / 2) * np.sin(v.point_angle / 2)),
    "enlarging_removal_rate": (ENLARGED, lambda v: ring(v) * v.feed_per_rev * v.spindle_speed),
    "handbook_drilling_thrust": (
        {**HANDBOOK, "thrust_factor": (1.1, 1.6), "chisel_factor": (0.001, 0.16)},
        lambda v: POUND * v.work_factor * v.wear_factor
        * (2 * v.thrust_factor * np.exp(0.8 * np.log(v.feed_per_rev * v.diameter / INCH**2))
           + v.chisel_factor * (v.diameter / INCH) ** 2)),
    "handbook_drilling_torque": (
        {**HANDBOOK, "torque_factor": (1, 1.4)},
        lambda v: POUND * INCH * v.work_factor * v.wear_factor * v.torque_factor * (v.diameter / INCH)
        * np.exp(0.8 * np.log(v.feed_per_rev * v.diameter / INCH**2))),
    "deep_hole_speed_factor": (
        DEEP, lambda v: 1 - 0.1 * np.clip(np.floor(v.depth / v.diameter) - 2, 0, 4)),
    "deep_hole_feed_factor": (
        DEEP, lambda v: 1 - 0.1 * np.clip(np.floor((v.depth / v.diameter - 1) / 2), 0, 2)),
    "through_hole_travel": (
        {"thickness": (1e-3, 0.1), "point_length": (0, 0.01), "overtravel": (0, 5e-3)},
        lambda v: (v.overtravel + v.approach) + (v.point_length + v.thickness)),
    "blind_hole_travel": (
        {"depth": (1e-3, 0.1), "point_length": (0, 0.01)}, lambda v: v.approach + (v.point_length + v.depth)),
    "full_diameter_depth": (
        {"tip_depth": (0.01, 0.1), "point_length": share("tip_depth", 0, 0.9)}, lambda v: v.tip_depth - v.point_length),
    "peck_count": (CYCLE, lambda v: np.ceil(v.travel / v.peck)),
    "peck_cycle_time": ({**CYCLE, "reentry_clearance": share("peck", 0, 1)}, full_retract),
    "chip_break_cycle_time": ({**CYCLE, "retract": share("peck", 0, 1)}, chip_break),
    "countersink_depth": (
        {"countersink_diameter": (4e-3, 0.04), "hole_diameter": share("countersink_diameter", 0.1, 0.9),
         "included_angle": (0.8, 2.8)},
        lambda v: (v.countersink_diameter - v.hole_diameter) / 2 * np.tan(PI / 2 - v.included_angle / 2)),
    "countersink_diameter": (
        {"depth": (1e-4, 0.01), "hole_diameter": (2e-3, 0.03), "included_angle": (0.8, 2.8)},
        lambda v: v.hole_diameter + v.depth * 2 / np.tan(PI / 2 - v.included_angle / 2)),
    "smallest_reaming_stock": (REAMER, stock(0.13, 0.2, 0.25, 0.38)),
    "largest_reaming_stock": (REAMER, stock(0.25, 0.3, 0.41, 0.76)),
    "reaming_drill_diameter": ({"stock": share("diameter", 0, 0.1)}, lambda v: v.diameter - v.stock),
    "thread_triangle_height": ({}, lambda v: v.pitch * TRIANGLE),
    "internal_thread_height": ({}, lambda v: v.pitch * TRIANGLE * (1 - 1 / 8 - 1 / 4)),
    "external_thread_height": ({}, lambda v: v.pitch * TRIANGLE * (1 - 1 / 8 - 1 / 6)),
    # Half a pitch of metal and half a pitch of gap at the pitch line, halfway up the triangle.
    "thread_pitch_diameter": (THREAD, lambda v: v.major_diameter - 2 * v.pitch * TRIANGLE * (1 / 2 - 1 / 8)),
    "thread_minor_diameter": (THREAD, lambda v: v.major_diameter - 2 * v.pitch * TRIANGLE * (1 - 1 / 8 - 1 / 4)),
    "thread_root_diameter": (THREAD, lambda v: v.major_diameter - 2 * v.pitch * TRIANGLE * (1 - 1 / 8 - 1 / 6)),
    "thread_lead": ({"starts": whole(1, 6)}, lambda v: v.pitch * v.starts),
    "pitch_from_threads_per_inch": ({"threads_per_inch": (4, 80)}, lambda v: INCH / v.threads_per_inch),
    "numbered_screw_diameter": ({"size": whole(0, 12)}, lambda v: INCH * (0.06 + 0.013 * v.size)),
    "tap_drill_by_rule": (THREAD, lambda v: v.major_diameter - v.pitch),
    "form_tap_drill_diameter": (
        THREAD, lambda v: v.major_diameter - 0.0068 * (100 * v.thread_percent) * v.pitch),
    "form_thread_percent": (
        {**THREAD, "drill_diameter": share("major_diameter", 0.8, 0.99)},
        lambda v: (v.major_diameter - v.drill_diameter) / v.pitch / 0.0068 / 100),
    "tapping_hole_depth": (
        {"thread_depth": (2e-3, 0.05), "chamfer_threads": (1, 9), "clearance": (0, 5e-3)},
        lambda v: v.thread_depth + v.clearance + v.chamfer_threads * v.pitch),
    "tapping_torque": (
        {**THREAD, "factor": (1, 2.5)},
        lambda v: v.factor * v.specific_cutting_force * (v.pitch / 2) ** 2 * v.major_diameter / 2),
    # The turns as the integral of a speed that falls evenly.
    "tap_stopping_turns": (
        STOP,
        lambda v: integral(lambda t: v.spindle_speed * (1 - t / v.stopping_time), 0 * v.stopping_time, v.stopping_time)),
    "tap_stopping_travel": (
        STOP,
        lambda v: v.lead
        * integral(lambda t: v.spindle_speed * (1 - t / v.stopping_time), 0 * v.stopping_time, v.stopping_time)),
    "tapping_speed_for_stopping_travel": (
        {**STOP, "stopping_travel": (5e-4, 5e-3)}, lambda v: v.stopping_travel / v.lead / (v.stopping_time / 2)),
}
