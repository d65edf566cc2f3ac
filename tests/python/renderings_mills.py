"""Renderings of the formulas of surfaces, chamfers, helices and thread milling, as in renderings.py:
ridges by the meeting of two circles, helices by their sides, nothing taken from the core."""

from __future__ import annotations

import numpy as np
from renderings import PI, integral, share, whole


def ridge(ball, distance):
    """Height above the lowest points at which two circles at a distance meet."""
    return 2 * ball * np.sin(np.arcsin(distance / 2 / ball) / 2) ** 2


def round_ridge(v, side):
    """Ridge on a round surface: where the balls of two passes meet, from the centre of the surface."""
    ball, rho = v.ball_diameter / 2, v.surface_radius
    turn = np.arcsin(v.stepover / 2 / rho)
    centre = rho + side * ball
    meeting = centre * np.cos(turn) - side * np.sqrt(ball**2 - (centre * np.sin(turn)) ** 2)
    return side * (meeting - rho)


def round_step(v, side):
    """Step from the law of cosines in the triangle of ball centre, ridge and centre of the surface."""
    ball, rho = v.ball_diameter / 2, v.surface_radius
    centre, meeting = rho + side * ball, rho + side * v.scallop_height
    return 2 * rho * np.sin(np.arccos((centre**2 + meeting**2 - ball**2) / (2 * centre * meeting)))


def edge_mean(v):
    """Mean of the sine of the edge's angle, by quadrature below the equator and 1 above it."""
    reach = 2 * np.arcsin(np.sqrt(v.axial_depth / v.edge_diameter))
    top = np.minimum(v.tilt_angle + reach, PI / 2)
    return (integral(np.sin, v.tilt_angle, top) + v.tilt_angle + reach - top) / reach


def turn(v):
    return np.hypot(PI * v.path_diameter, v.axial_per_turn)


CORNER = {"diameter": (8e-3, 0.05), "corner_radius": share("diameter", 0.02, 0.5)}
TILT = {"tilt_angle": (0.1, 1.5)}
BALL = {"ball_diameter": (4e-3, 0.02), "surface_radius": (0.02, 0.2)}
SLOPE = {"slope_angle": (0.1, 1.4), "stepover": (1e-4, 2e-3), "plan_step": (1e-4, 2e-3), "level_step": (1e-4, 2e-3)}
CONE = {"point_angle": (0.8, 2.4), "chamfer_width": (1e-4, 5e-3), "axial_depth": (1e-4, 5e-3)}
HELIX = {"path_diameter": (2e-3, 0.05), "axial_per_turn": (1e-4, 5e-3), "axial_depth": (1e-3, 0.03), "ramp_angle": (0.01, 0.3)}

# Name: own ranges, rendering, relative tolerance where more than rounding is between the two.
def segment(v):
    """Sector of the cutter's circle less the triangle to its chord."""
    half, beside = np.sqrt(v.radial_depth * (v.diameter - v.radial_depth)), v.diameter / 2 - v.radial_depth
    return (v.diameter / 2) ** 2 * np.arctan2(half, beside) - half * beside


CASES = {
    "first_plunge_removal_rate": (
        {"radial_depth": share("diameter", 0.02, 0.98)}, lambda v: segment(v) * v.table_feed, 1e-10),
    "tilted_corner_effective_diameter": (
        CORNER | TILT | {"axial_depth": share("diameter", 0.001, 0.3)},
        # From the axis: the corner's centre, and its rim at the top of the edge.
        lambda v: 2 * (v.diameter / 2 - v.corner_radius + v.corner_radius * np.sin(np.minimum(
            PI / 2,
            v.tilt_angle + np.arccos(np.maximum(v.corner_radius - v.axial_depth, 0) / v.corner_radius)))),
    ),
    "contact_diameter": (
        CORNER | TILT, lambda v: 2 * (v.diameter / 2 - v.corner_radius * (1 - np.sin(v.tilt_angle)))),
    # Along the normal to the axis: the corner, then what is left to the axis.
    "tilted_corner_scallop_radius": (
        CORNER | TILT, lambda v: (v.diameter / 2 - v.corner_radius * (1 - np.sin(v.tilt_angle))) / np.sin(v.tilt_angle)),
    "corner_scallop_height": (
        CORNER | {"stepover": share("diameter", 0.1, 0.99)},
        lambda v: ridge(v.corner_radius, np.maximum(v.stepover - (v.diameter - 2 * v.corner_radius), 0)),
    ),
    "corner_stepover_for_scallop": (
        CORNER | {"scallop_height": share("corner_radius", 0.01, 0.9)},
        lambda v: v.diameter - 2 * v.corner_radius
        + 2 * np.sqrt(v.corner_radius**2 - (v.corner_radius - v.scallop_height) ** 2),
    ),
    # The renderings subtract nearly equal radii.
    "convex_scallop_height": (BALL | {"stepover": share("ball_diameter", 0.1, 0.6)}, lambda v: round_ridge(v, 1), 1e-9),
    "concave_scallop_height": (BALL | {"stepover": share("ball_diameter", 0.1, 0.6)}, lambda v: round_ridge(v, -1), 1e-9),
    "convex_stepover_for_scallop": (
        BALL | {"scallop_height": share("ball_diameter", 0.001, 0.1)}, lambda v: round_step(v, 1), 1e-8),
    "concave_stepover_for_scallop": (
        BALL | {"scallop_height": share("ball_diameter", 0.001, 0.1)}, lambda v: round_step(v, -1), 1e-8),
    "stepover_of_plan_step": (SLOPE, lambda v: np.hypot(v.plan_step, v.plan_step * np.tan(v.slope_angle))),
    "plan_step_for_stepover": (SLOPE, lambda v: v.stepover * np.sin(PI / 2 - v.slope_angle)),
    "stepover_of_level_step": (SLOPE, lambda v: np.hypot(v.level_step, v.level_step / np.tan(v.slope_angle))),
    "level_step_for_stepover": (SLOPE, lambda v: v.stepover * np.cos(PI / 2 - v.slope_angle)),
    "raster_passes": (
        {"width": (1e-3, 0.1), "stepover": (1e-4, 2e-3)}, lambda v: -np.floor(-v.width / v.stepover) + 1),
    "raster_stepover": ({"width": (1e-3, 0.1), "passes": whole(2, 300)}, lambda v: v.width / (v.passes - 1)),
    "pass_count": (
        {"total": (1e-4, 0.1), "largest_step": (1e-3, 0.02)},
        lambda v: np.maximum(1, -np.floor(-v.total / v.largest_step))),
    "passes_time": (
        {"passes": whole(1, 300), "link_time": (0, 5)},
        # The last pass has no move behind it.
        lambda v: v.passes * (v.travel / v.feed_speed + v.link_time) - v.link_time),
    "cone_cutting_edge_angle": (CONE, lambda v: (PI - v.point_angle) / 2),
    "chamfer_depth": (CONE, lambda v: v.chamfer_width * np.cos(v.point_angle / 2) / np.sin(v.point_angle / 2)),
    "chamfer_width": (CONE, lambda v: v.axial_depth * np.sin(v.point_angle / 2) / np.cos(v.point_angle / 2)),
    "chamfer_outer_diameter": (
        CONE | {"tip_diameter": (0, 5e-3), "tip_clearance": (0, 3e-3)},
        # A cone that ends at the tip's height, read at the upper end of the chamfer.
        lambda v: v.tip_diameter
        + 2 * np.tan(v.point_angle / 2) * (v.tip_clearance + v.chamfer_width / np.tan(v.point_angle / 2))),
    "chamfer_removal_rate": (CONE, lambda v: 0.5 * v.axial_depth * v.chamfer_width * v.table_feed),
    "plunge_chip_thickness": ({}, lambda v: v.feed_per_tooth * np.cos(PI / 2 - v.cutting_edge_angle)),
    "inside_path_diameter": ({}, lambda v: 2 * (v.feature_diameter / 2 - v.cutter_diameter / 2)),
    "outside_path_diameter": ({}, lambda v: 2 * (v.feature_diameter / 2 + v.cutter_diameter / 2)),
    "axial_per_turn_for_ramp": (
        HELIX, lambda v: PI * v.path_diameter * np.sin(v.ramp_angle) / np.cos(v.ramp_angle)),
    "helix_turn_length": (HELIX, turn),
    "helix_turns": (HELIX, lambda v: v.axial_depth / v.axial_per_turn),
    "helix_travel": (
        HELIX | {"floor_turns": (0, 2)},
        lambda v: np.hypot(v.axial_depth, PI * v.path_diameter * v.axial_depth / v.axial_per_turn)
        + v.floor_turns * PI * v.path_diameter),
    "helix_axial_feed": (
        HELIX | {"centre_feed": (1e-3, 0.1)},
        lambda v: v.centre_feed * np.sin(np.arctan2(v.axial_per_turn, PI * v.path_diameter))),
    "half_circle_entry_length": (HELIX, lambda v: PI * (v.path_diameter / 2) / 2),
    "ramp_length": (HELIX, lambda v: v.axial_depth * np.cos(v.ramp_angle) / np.sin(v.ramp_angle)),
    "core_ramp_angle": (
        {"core_clearance": (0, 2e-3), "core_diameter": (1e-3, 0.03)},
        lambda v: np.arctan2(v.core_clearance, v.core_diameter)),
    "smallest_helix_bore": (
        {"core_diameter": share("cutter_diameter", 0, 0.9)}, lambda v: v.cutter_diameter + v.core_diameter),
    "largest_helix_bore": (
        {"corner_radius": share("cutter_diameter", 0, 0.5)}, lambda v: 4 * (v.cutter_diameter / 2 - v.corner_radius / 2)),
    "largest_plunge_step": (
        {}, lambda v: 2 * np.sqrt((v.diameter / 2) ** 2 - np.maximum(v.diameter / 2 - v.radial_depth, 0) ** 2)),
    "bore_removal_rate": (
        {"start_diameter": share("finished_diameter", 0, 0.97), "axial_feed": (1e-5, 5e-3)},
        lambda v: PI * ((v.finished_diameter / 2) ** 2 - (v.start_diameter / 2) ** 2) * v.axial_feed),
    "thread_mill_largest_diameter": ({"diameter_ratio": (0.5, 0.8)}, lambda v: v.diameter_ratio * v.major_diameter),
    "internal_thread_mill_widening": (
        {"flank_angle": (0.1, 0.8)},
        # Gain along the helix beside the deepest point less what the round cutter lacks there, at its best.
        lambda v: (v.pitch / (2 * PI)) ** 2 * v.cutter_diameter
        / (v.feature_diameter * (v.feature_diameter - v.cutter_diameter) * np.tan(v.flank_angle))),
    "thread_mill_axial_shift": (
        {"cutting_length": (5e-3, 0.03)}, lambda v: v.pitch * np.floor(v.cutting_length / v.pitch)),
    "thread_milling_travel": (
        {"turn_length": (5e-3, 0.2), "turns": (1, 12), "entry_length": (0, 0.02)},
        lambda v: v.entry_length + v.turns * v.turn_length + v.entry_length),
    "thread_milling_removal_rate": (
        {"thread_length": (5e-3, 0.03), "pitch_diameter": (4e-3, 0.03), "turn_time": (1, 30)},
        # A trapezium 3/4 P and 1/8 P wide, 5/8 of the sharp height deep; one a pitch.
        lambda v: (0.75 + 0.125) / 2 * v.pitch * (5 / 8 * np.sqrt(3) / 2 * v.pitch)
        * (v.thread_length / v.pitch) * PI * v.pitch_diameter / v.turn_time),
    "external_thread_milling_removal_rate": (
        {"thread_length": (5e-3, 0.03), "pitch_diameter": (4e-3, 0.03), "turn_time": (1, 30)},
        # A trapezium 7/8 P and P/6 wide, 17/24 of the sharp height deep; one a pitch.
        lambda v: (7 / 8 + 1 / 6) / 2 * v.pitch * (17 / 24 * np.sqrt(3) / 2 * v.pitch)
        * (v.thread_length / v.pitch) * PI * v.pitch_diameter / v.turn_time),
    "axial_depth_for_removal_rate": (
        {"removal_rate": (1e-8, 1e-6), "radial_depth": (1e-4, 0.05)},
        lambda v: v.removal_rate / v.table_feed / v.radial_depth),
    "equal_pass": ({"total": (1e-3, 0.1), "passes": whole(1, 40)}, lambda v: v.total / v.passes),
    "tilted_edge_mean_thickness_ratio": (
        {"edge_diameter": (2e-3, 0.02), "axial_depth": share("edge_diameter", 0.01, 0.5), "tilt_angle": (0, 1.5)},
        edge_mean),
}
