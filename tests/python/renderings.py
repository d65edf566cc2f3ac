"""Formulas written a second time, from the textbook and by other means where there are any:
integrals by quadrature, optima by search, geometry from its definition. Nothing is taken from the
core; SI units, angles in radians, speeds in revolutions a second.

Ranges are those of a shop; a callable draws from what was drawn before it.
"""

from __future__ import annotations

import numpy as np
import renderings_studies as studies
from renderings_wear import CASES as WEAR
from scipy import integrate, optimize

PI = np.pi
NODES, WEIGHTS = np.polynomial.legendre.leggauss(60)


def mean(function, low, high):
    """Mean over an interval, row by row, by Gauss and Legendre."""
    middle, half = (low + high) / 2, (high - low) / 2
    return sum(w * function(middle + half * x) for x, w in zip(NODES, WEIGHTS)) / 2


def integral(function, low, high):
    return mean(function, low, high) * (high - low)


def per_row(function):
    """A rendering of single numbers over arrays."""

    def over(v):
        names = list(vars(v))
        table = zip(*(vars(v)[name] for name in names))
        return np.array([function(**dict(zip(names, row))) for row in table])

    return over


def share(name, low, high):
    """A share of what was drawn before."""
    return lambda random, v, count: random.uniform(low, high, count) * v[name]


def whole(low, high):
    return lambda random, v, count: random.integers(low, high + 1, count).astype(float)


RANGES = {
    "cutting_speed": (0.2, 8), "diameter": (2e-3, 0.2), "spindle_speed": (1, 300), "teeth": whole(1, 12),
    "feed_per_tooth": (1e-5, 4e-4), "table_feed": (1e-3, 0.1), "feed_per_rev": (2e-5, 5e-4),
    "radial_depth": share("diameter", 0.01, 0.99), "axial_depth": (1e-4, 2e-2), "depth_of_cut": (1e-4, 5e-3),
    "cutting_edge_angle": (0.3, PI / 2), "helix_angle": (0.05, 1.1), "engagement_angle": (0.1, PI),
    "specific_cutting_force": (5e8, 4e9), "chip_thickness": (1e-5, 5e-4), "chip_width": (1e-4, 1e-2),
    "chip_exponent": (0.1, 0.4), "cutting_power": (50, 2e4), "cutting_force": (10, 5e3), "torque": (0.1, 80),
    "modulus": (1e11, 6e11), "force": (10, 2e3), "overhang": (0.01, 0.1), "travel": (0.01, 1),
    "taylor_speed": (1, 10), "taylor_exponent": (0.1, 0.6), "tool_life": (300, 9000), "change_time": (10, 600),
    "edge_cost": (0.2, 20), "machine_rate": (0.002, 0.05), "cutting_time": (10, 900), "handling_time": (10, 300),
    "safety_factor": (1, 4), "friction": (0.05, 0.5), "clamping_force": (100, 3e4), "efficiency": (0.2, 1),
    "nose_radius": (2e-4, 3e-3), "point_angle": (0.8, 2.8), "ktc": (3e8, 3e9), "krc": (1e8, 1e9), "kac": (1e8, 1e9),
    "kte": (5e3, 5e4), "kre": (5e3, 5e4), "kae": (1e3, 2e4), "entry_angle": (0, 1.4),
    "exit_angle": lambda random, v, count: v["entry_angle"] + random.uniform(0.1, 1.6, count),
    "insert_diameter": (5e-3, 3e-2), "removal_rate": (1e-8, 1e-5), "rated_power": (100, 2e4), "base_speed": (5, 60),
    "lead": (5e-4, 8e-3), "approach": (0, 0.05), "feature_diameter": (0.03, 0.2),
    "cutter_diameter": (2e-3, 0.025), "thread_basis": (1, 1.4), "pitch": (3e-4, 3e-3), "major_diameter": (4e-3, 0.03),
    "max_chip_thickness": (1e-5, 3e-4), "peak_to_valley": (1e-7, 4e-5), "mean_roughness": (1e-7, 5e-6),
    "outer_diameter": (0.05, 0.3), "inner_diameter": share("outer_diameter", 0, 0.9), "stiffness": (1e5, 5e7),
    "damping_ratio": (0.005, 0.2), "travel_per_turn": (1e-3, 1e-2), "edge_high": share("diameter", 0.05, 0.6),
    "edge_low": share("diameter", -0.6, 0.04), "feed_speed": (1e-3, 0.1), "force_across": (10, 2e3),
    "contour_feed": (1e-3, 0.1), "load_share": (0.2, 3), "ball_diameter": (2e-3, 0.02),
    "finished_diameter": (0.04, 0.1), "thread_height": (3e-4, 2e-3), "first_depth": (5e-5, 3e-4),
    "thread_percent": (0.4, 1), "lowest": (1, 5), "highest": (20, 100), "steps": whole(2, 18),
}


def arc(v):
    return np.arccos(1 - 2 * v.radial_depth / v.diameter)


def largest_sine(angle):
    return np.where(angle < PI / 2, np.sin(angle), 1.0)


def round_edge(v):
    angle = np.arccos(np.maximum(1 - 2 * v.axial_depth / v.insert_diameter, -1))
    return largest_sine(angle)


def edges(v):
    """Immersions where the teeth of a face mill enter and leave, from the edges of the work."""
    high = np.minimum(v.edge_high, v.diameter / 2)
    low = np.maximum(v.edge_low, -v.diameter / 2)
    return np.arccos(2 * high / v.diameter), np.arccos(2 * low / v.diameter)


def tooth_mean(v, force):
    """Mean of a force of one tooth over a revolution, times the teeth."""
    return v.teeth * integral(force, v.entry_angle, v.exit_angle) / (2 * PI)


def tangential(v, angle):
    return v.axial_depth * (v.ktc * v.feed_per_tooth * np.sin(angle) + v.kte)


def radial(v, angle):
    return v.axial_depth * (v.krc * v.feed_per_tooth * np.sin(angle) + v.kre)


def area_moment(diameter):
    return PI * (diameter / 2) ** 4 / 4


def bending(v, moment, length, diameter):
    """Deflection under a load by the work of the unit load: integral of M m/(E I)."""
    return integral(lambda x: moment(x) / (v.modulus * area_moment(diameter)), 0 * length, length)


# Mean of |y - mean y| of a parabola of height 1.
PARABOLA = integrate.quad(lambda x: abs(x * x - 1 / 3), 0, 1, points=[3**-0.5])[0]


@per_row
def facing(outer_diameter, inner_diameter, cutting_speed, feed_per_rev, maximum_speed=np.inf):
    def pace(radius):
        return 1 / (feed_per_rev * min(maximum_speed, cutting_speed / (2 * PI * radius)))

    knee = cutting_speed / (2 * PI * maximum_speed)
    low, high = inner_diameter / 2, outer_diameter / 2
    knee = min(max(knee, low), high)
    return sum(integrate.quad(pace, a, b, epsabs=0, epsrel=1e-12)[0] for a, b in ((low, knee), (knee, high)) if b > a)


@per_row
def arc_power(kc11, chip_exponent, feed_per_tooth, diameter, radial_depth, axial_depth, teeth, spindle_speed,
              cutting_edge_angle):
    def force(angle):
        thickness = feed_per_tooth * np.sin(cutting_edge_angle) * np.sin(angle)
        width = axial_depth / np.sin(cutting_edge_angle)
        return kc11 * (thickness / 1e-3) ** -chip_exponent * thickness * width if thickness > 0 else 0.0

    end = np.arccos(1 - 2 * radial_depth / diameter)
    work = integrate.quad(force, 0, end, epsabs=0, epsrel=1e-11, limit=400)[0]
    return work / (2 * PI) * teeth * PI * diameter * spindle_speed


def rapid_move(distance, rapid_speed, acceleration):
    # Speeds up for as long as half the way lasts or the speed is reached.
    ramp = min(rapid_speed / acceleration, np.sqrt(distance / acceleration))
    return 2 * ramp + max(distance - acceleration * ramp**2, 0.0) / rapid_speed


def two_lives(v):
    return np.log(v.first_speed / v.second_speed) / np.log(v.second_life / v.first_life)


TWO = {"first_speed": (2, 3), "second_speed": (0.5, 1.5), "first_life": (60, 600), "second_life": (900, 9000)}

# Name: own ranges, rendering, relative tolerance where more than rounding is between the two.
CASES = {
    "spindle_speed": ({}, lambda v: v.cutting_speed / (PI * v.diameter)),
    "cutting_speed": ({}, lambda v: PI * v.diameter * v.spindle_speed),
    "rule_of_thumb_speed": (
        {"constant": (3, 4)},
        # K x ft/min over inches is rpm.
        lambda v: v.constant * (v.cutting_speed * 60 / 0.3048) / (v.diameter / 0.0254) / 60,
    ),
    "feed_per_rev": ({}, lambda v: v.feed_per_tooth * v.teeth),
    "table_feed": ({}, lambda v: v.feed_per_tooth * v.teeth * v.spindle_speed),
    "feed_per_tooth": ({}, lambda v: v.table_feed / v.spindle_speed / v.teeth),
    "spindle_speed_for_feed": ({}, lambda v: v.table_feed / v.feed_per_tooth / v.teeth),
    "feed_rate": ({}, lambda v: v.feed_per_rev * v.spindle_speed),
    "pulley_speed": (
        {"motor_speed": (5, 60), "driver_diameter": (0.05, 0.2), "driven_diameter": (0.05, 0.2)},
        lambda v: PI * v.driver_diameter * v.motor_speed / (PI * v.driven_diameter),
    ),
    "geometric_step_ratio": ({}, lambda v: np.exp(np.log(v.highest / v.lowest) / (v.steps - 1))),
    "geometric_step_speed": (
        {"index": lambda random, v, count: np.floor(random.uniform(0, 1, count) * v["steps"]) + 1},
        lambda v: np.exp(np.log(v.lowest) + (v.index - 1) / (v.steps - 1) * np.log(v.highest / v.lowest)),
    ),
    "handwheel_turns": ({}, lambda v: v.travel / v.travel_per_turn),
    "handwheel_rate": ({}, lambda v: v.table_feed / v.travel_per_turn),
    "ball_effective_diameter": (
        {"axial_depth": share("diameter", 0.01, 0.7), "tilt_angle": (0, 1)},
        lambda v: v.diameter
        * np.sin(np.minimum(v.tilt_angle + np.arccos(np.maximum(1 - 2 * v.axial_depth / v.diameter, -1)), PI / 2)),
    ),
    "corner_radius_effective_diameter": (
        {"corner_radius": share("diameter", 0.01, 0.49), "axial_depth": share("diameter", 0.001, 0.3)},
        # The chord of the corner's circle at that depth.
        lambda v: v.diameter - 2 * v.corner_radius
        + 2 * np.sqrt(v.corner_radius**2 - (v.corner_radius - np.minimum(v.axial_depth, v.corner_radius)) ** 2),
    ),
    "face_mill_outer_diameter": (
        {"tip_diameter": (0.02, 0.2)},
        lambda v: v.tip_diameter + 2 * v.axial_depth * np.cos(v.cutting_edge_angle) / np.sin(v.cutting_edge_angle),
    ),
    "turning_mean_diameter": ({}, lambda v: (v.outer_diameter + v.outer_diameter - 2 * v.depth_of_cut) / 2),
    "engagement_angle": ({}, arc),
    "up_milling_exit_angle": ({}, arc),
    "down_milling_entry_angle": ({}, lambda v: PI - arc(v)),
    "face_entry_angle": ({"edge_low": None}, lambda v: np.arccos(np.minimum(2 * v.edge_high / v.diameter, 1))),
    "face_exit_angle": ({}, lambda v: np.arccos(np.maximum(2 * v.edge_low / v.diameter, -1))),
    "face_engagement_angle": ({}, lambda v: edges(v)[1] - edges(v)[0]),
    "mean_teeth_in_cut": ({}, lambda v: v.engagement_angle / (2 * PI / v.teeth)),
    "mean_teeth_touching": (
        {},
        lambda v: np.minimum(
            v.teeth,
            (v.engagement_angle + v.axial_depth * np.tan(v.helix_angle) / (v.diameter / 2)) / (2 * PI / v.teeth),
        ),
    ),
    "max_chip_thickness": ({}, lambda v: v.feed_per_tooth * np.sin(v.cutting_edge_angle) * largest_sine(arc(v))),
    "mean_chip_thickness": (
        {},
        lambda v: mean(lambda a: v.feed_per_tooth * np.sin(v.cutting_edge_angle) * np.sin(a), 0 * v.diameter, arc(v)),
    ),
    "face_mean_chip_thickness": (
        {},
        lambda v: mean(lambda a: v.feed_per_tooth * np.sin(v.cutting_edge_angle) * np.sin(a), *edges(v)),
    ),
    "face_max_chip_thickness": (
        {"edge_high": share("diameter", 0.05, 0.45), "edge_low": share("diameter", -0.45, 0.04)},
        lambda v: v.feed_per_tooth * np.sin(v.cutting_edge_angle)
        * np.where((edges(v)[0] < PI / 2) & (edges(v)[1] > PI / 2), 1, np.maximum(*map(np.sin, edges(v)))),
    ),
    "radial_thinning_factor": ({}, lambda v: 1 / largest_sine(arc(v))),
    "feed_for_max_chip_thickness": (
        {},
        lambda v: v.max_chip_thickness / (np.sin(v.cutting_edge_angle) * largest_sine(arc(v))),
    ),
    "round_edge_max_chip_thickness": ({}, lambda v: v.feed_per_tooth * round_edge(v)),
    "round_edge_feed_for_max_chip_thickness": ({}, lambda v: v.max_chip_thickness / round_edge(v)),
    "round_edge_mean_thickness_ratio": (
        {"axial_depth": share("insert_diameter", 0.01, 0.5)},
        lambda v: mean(np.sin, 0 * v.axial_depth, np.arccos(1 - 2 * v.axial_depth / v.insert_diameter)),
    ),
    "turning_chip_thickness": ({}, lambda v: v.feed_per_rev * np.cos(PI / 2 - v.cutting_edge_angle)),
    "turning_chip_width": ({}, lambda v: v.depth_of_cut / np.cos(PI / 2 - v.cutting_edge_angle)),
    "drilling_chip_thickness": ({}, lambda v: v.feed_per_rev / 2 * np.cos(PI / 2 - v.point_angle / 2)),
    "milling_removal_rate": (
        {"radial_depth": (1e-4, 0.05)}, lambda v: v.axial_depth * v.radial_depth * v.table_feed),
    "turning_removal_rate": ({}, lambda v: v.cutting_speed * v.feed_per_rev * v.depth_of_cut),
    "drilling_removal_rate": ({}, lambda v: PI * (v.diameter / 2) ** 2 * v.feed_per_rev * v.spindle_speed),
    "plunge_removal_rate": (
        {"side_step": (1e-3, 2e-2), "radial_depth": (1e-4, 0.05)}, lambda v: v.radial_depth * v.side_step * v.table_feed),
    "specific_cutting_force": (
        {"kc11": (5e8, 3e9), "rake_angle": (-0.2, 0.3), "reference_rake": (-0.1, 0.2),
         "rake_sensitivity": (0.005, 0.02), "correction": (0.7, 1.4)},
        lambda v: v.kc11 * np.exp(-v.chip_exponent * np.log(v.chip_thickness * 1000))
        * (1 - v.rake_sensitivity * np.degrees(v.rake_angle - v.reference_rake)) * v.correction,
    ),
    "chip_section_force": ({}, lambda v: v.specific_cutting_force * v.chip_thickness * v.chip_width),
    "tangential_force": ({}, lambda v: v.cutting_power / v.cutting_speed),
    "specific_energy_from_force": ({}, lambda v: v.cutting_force / v.feed_per_rev / v.depth_of_cut),
    # Force on each lip at half the radius.
    "drilling_torque": (
        {},
        lambda v: 2 * (v.specific_cutting_force * v.feed_per_rev / 2 * v.diameter / 2) * v.diameter / 4,
    ),
    "drilling_thrust": (
        {"factor": (0.4, 1.2)},
        lambda v: v.factor * v.specific_cutting_force * v.feed_per_rev * v.diameter / 2 * np.sin(v.point_angle / 2),
    ),
    "mean_feed_force": (
        {},
        lambda v: tooth_mean(v, lambda a: -tangential(v, a) * np.cos(a) - radial(v, a) * np.sin(a)),
        1e-10,
    ),
    "mean_normal_force": (
        {},
        lambda v: tooth_mean(v, lambda a: tangential(v, a) * np.sin(a) - radial(v, a) * np.cos(a)),
        1e-10,
    ),
    "mean_axial_force": (
        {},
        lambda v: tooth_mean(v, lambda a: v.axial_depth * (v.kac * v.feed_per_tooth * np.sin(a) + v.kae)),
    ),
    "mean_milling_torque": (
        {},
        lambda v: v.teeth / (2 * PI) * integral(lambda a: tangential(v, a), 0 * v.diameter, arc(v)) * v.diameter / 2,
    ),
    "simultaneous_teeth": ({}, lambda v: np.ceil(v.engagement_angle / (2 * PI / v.teeth))),
    "peak_tangential_force": (
        {"tooth_sum_factor": (1, 4), "helix_relief": (0.2, 1)},
        lambda v: v.specific_cutting_force * v.max_chip_thickness * v.chip_width * v.tooth_sum_factor * v.helix_relief,
    ),
    "in_plane_force": (
        {"radial_force_ratio": (0, 1)},
        lambda v: np.hypot(v.cutting_force, v.radial_force_ratio * v.cutting_force),
    ),
    "helix_axial_force": ({}, lambda v: v.cutting_force * np.sin(v.helix_angle) / np.cos(v.helix_angle)),
    "cutting_power": ({}, lambda v: v.removal_rate * v.specific_cutting_force),
    "power_from_force": ({}, lambda v: v.cutting_force * v.cutting_speed),
    "arc_mean_cutting_power": ({"kc11": (5e8, 3e9)}, arc_power, 1e-8),
    "unit_power_at_chip": (
        {"unit_power": (5e8, 4e9), "table_chip_thickness": (1e-4, 4e-4), "exponent": (0.1, 0.4)},
        lambda v: v.unit_power * np.exp(v.exponent * np.log(v.table_chip_thickness / v.chip_thickness)),
    ),
    "motor_power": ({}, lambda v: v.cutting_power / v.efficiency),
    "cutting_torque": ({}, lambda v: v.cutting_power / (2 * PI * v.spindle_speed)),
    "power_from_torque": ({}, lambda v: v.torque * 2 * PI * v.spindle_speed),
    "available_torque": (
        {},
        lambda v: np.minimum(v.rated_power / (2 * PI * v.base_speed), v.rated_power / (2 * PI * v.spindle_speed)),
    ),
    "available_power": (
        {},
        lambda v: np.where(v.spindle_speed < v.base_speed, v.rated_power * v.spindle_speed / v.base_speed, v.rated_power),
    ),
    "practice_cutting_speed": (
        {"table_speed": (0.1, 8), "speed_factor": (0.3, 1.5)}, lambda v: v.table_speed * v.speed_factor),
    "practice_feed_per_tooth": (
        {"table_feed_per_tooth": (1e-5, 3e-4), "feed_factor": (0.3, 1.5)},
        lambda v: v.table_feed_per_tooth * v.feed_factor),
    "thinning_cap_feed": (
        {"wanted_chip": (1e-5, 3e-4), "thinning_cap": (1, 4)}, lambda v: v.wanted_chip * v.thinning_cap),
    "grip_for_height": (
        {"part_height": (5e-3, 0.1), "smallest_grip": (0, 1)}, lambda v: v.part_height * v.smallest_grip),
    "stick_out_cap": ({"stick_out_ratio": (1, 8)}, lambda v: v.diameter * v.stick_out_ratio),
    "practice_depth": ({"depth_ratio": (0.05, 2)}, lambda v: v.diameter * v.depth_ratio),
    "usable_power": (
        {"rated_motor_power": (100, 2e4), "power_share": (0.2, 1)},
        lambda v: v.rated_motor_power * v.efficiency * v.power_share),
    # The feed whose load, which goes with its power 1 - m, is within the limit.
    "feed_for_load_share": (
        {},
        lambda v: np.exp(np.log(v.feed_per_tooth) - np.log(v.load_share) / (1 - v.chip_exponent)),
    ),
    "feed_for_wall_roughness": ({}, lambda v: np.sqrt(4 * v.diameter * v.mean_roughness / PARABOLA)),
    "cut_travel": (
        {"cut_length": (0.01, 0.5), "overtravel": (0, 0.05), "clearance": (0, 0.01)},
        lambda v: v.cut_length + v.approach + v.overtravel + v.clearance + v.clearance),
    "depth_for_load_share": ({}, lambda v: v.axial_depth / v.load_share),
    "fluted_equivalent_diameter": ({"factor": (0.6, 1)}, lambda v: v.factor * v.diameter),
    "cantilever_deflection": (
        {"diameter": (2e-3, 0.02)},
        lambda v: bending(v, lambda x: v.force * x * x, v.overhang, v.diameter),
    ),
    "cantilever_deflection_inboard": (
        {"diameter": (2e-3, 0.02), "load_distance": share("overhang", 0.1, 1)},
        lambda v: bending(
            v, lambda x: v.force * x * (x + v.overhang - v.load_distance), v.load_distance, v.diameter),
    ),
    "stepped_cutter_deflection": (
        {"flute_length": share("overhang", 0.1, 0.9), "flute_equivalent_diameter": (2e-3, 0.015),
         "shank_diameter": (3e-3, 0.02)},
        lambda v: integral(lambda x: v.force * x * x, 0 * v.overhang, v.flute_length)
        / (v.modulus * area_moment(v.flute_equivalent_diameter))
        + integral(lambda x: v.force * x * x, v.flute_length, v.overhang)
        / (v.modulus * area_moment(v.shank_diameter)),
    ),
    # The nose as a parabola: height of the ridge at half a feed.
    "turning_peak_to_valley": (
        {"nose_radius": (4e-4, 3e-3)}, lambda v: (v.feed_per_rev / 2) ** 2 / (2 * v.nose_radius)),
    "turning_mean_roughness": (
        {"nose_radius": (4e-4, 3e-3)}, lambda v: PARABOLA * (v.feed_per_rev / 2) ** 2 / (2 * v.nose_radius)),
    "nose_radius_for_mean_roughness": (
        {"mean_roughness": share("feed_per_rev", 0.001, 0.06)},
        lambda v: PARABOLA * v.feed_per_rev**2 / (8 * v.mean_roughness)),
    "feed_for_mean_roughness": ({}, lambda v: np.sqrt(8 * v.nose_radius * v.mean_roughness / PARABOLA)),
    "feed_for_peak_to_valley": ({}, lambda v: 2 * np.sqrt(2 * v.nose_radius * v.peak_to_valley)),
    # Two straight flanks that meet: their widths fill the feed.
    "sharp_tool_peak_to_valley": (
        {"side_cutting_edge_angle": (0, 1.2), "end_cutting_edge_angle": (0.05, 1.2)},
        lambda v: v.feed_per_rev
        / (np.tan(v.side_cutting_edge_angle) + np.cos(v.end_cutting_edge_angle) / np.sin(v.end_cutting_edge_angle)),
    ),
    "feed_mark_height": ({}, lambda v: (v.feed_per_tooth / 2) ** 2 / v.diameter),
    "feed_mark_height_up": (
        {"diameter": (0.01, 0.1)},
        lambda v: (v.feed_per_tooth / 2) ** 2 / (v.diameter + 2 * v.feed_per_tooth * v.teeth / PI)),
    "feed_mark_height_down": (
        {"diameter": (0.01, 0.1)},
        lambda v: (v.feed_per_tooth / 2) ** 2 / (v.diameter - 2 * v.feed_per_tooth * v.teeth / PI)),
    "feed_mark_mean_roughness": ({"feed_mark_height": (1e-8, 1e-4)}, lambda v: PARABOLA * v.feed_mark_height),
    "scallop_height": (
        {"stepover": share("ball_diameter", 0.1, 0.95)},
        lambda v: v.ball_diameter / 2 - np.sqrt((v.ball_diameter / 2) ** 2 - (v.stepover / 2) ** 2),
    ),
    "stepover_for_scallop": (
        {"scallop_height": share("ball_diameter", 0.001, 0.4)},
        lambda v: 2 * np.sqrt((v.ball_diameter / 2) ** 2 - (v.ball_diameter / 2 - v.scallop_height) ** 2),
    ),
    "inside_arc_feed": ({}, lambda v: v.contour_feed * (v.feature_diameter / 2 - v.cutter_diameter / 2) / (v.feature_diameter / 2)),
    "outside_arc_feed": ({}, lambda v: v.contour_feed * (v.feature_diameter / 2 + v.cutter_diameter / 2) / (v.feature_diameter / 2)),
    # The ring that is cut away over the way of the cutter's centre.
    "bore_radial_depth": (
        {"start_diameter": share("finished_diameter", 0, 0.97)},
        lambda v: np.minimum(
            v.cutter_diameter,
            PI / 4 * (v.finished_diameter**2 - v.start_diameter**2) / (PI * (v.finished_diameter - v.cutter_diameter))),
    ),
    "boss_radial_depth": (
        {"start_diameter": lambda random, v, count: v["finished_diameter"] + random.uniform(1e-3, 3e-3, count)},
        lambda v: PI / 4 * (v.start_diameter**2 - v.finished_diameter**2) / (PI * (v.finished_diameter + v.cutter_diameter)),
    ),
    "helix_ramp_angle": (
        {"axial_per_turn": (1e-4, 5e-3)},
        lambda v: np.arctan2(v.axial_per_turn, PI * (v.feature_diameter - v.cutter_diameter))),
    # Centre of the cutter before the corner of the work.
    "peripheral_approach": (
        {},
        lambda v: np.sqrt((v.diameter / 2) ** 2 - (v.diameter / 2 - np.minimum(v.radial_depth, v.diameter / 2)) ** 2)),
    "face_approach_centred": (
        {}, lambda v: v.diameter / 2 - np.sqrt((v.diameter / 2) ** 2 - (v.radial_depth / 2) ** 2)),
    "drill_point_length": ({}, lambda v: v.diameter / 2 * np.cos(v.point_angle / 2) / np.sin(v.point_angle / 2)),
    "cutting_time": ({}, lambda v: v.travel / v.feed_speed),
    "facing_time_constant_speed": ({}, facing),
    "facing_time_limited_speed": ({"maximum_speed": (5, 60)}, facing),
    "tapping_time": (
        {"depth": (5e-3, 0.05), "reverse_speed": (2, 30), "reversal_time": (0, 1)},
        lambda v: (v.depth + v.approach) / v.lead * (1 / v.spindle_speed + 1 / v.reverse_speed) + 2 * v.reversal_time),
    "rapid_time": ({"distance": (1e-3, 1), "rapid_speed": (0.05, 1), "acceleration": (0.2, 10)}, per_row(rapid_move)),
    "band_saw_time": ({"area": (1e-4, 0.05), "cutting_rate": (1e-6, 1e-4)}, lambda v: v.area / v.cutting_rate),
    "standard_time": ({"normal_time": (10, 900), "allowance": (0, 0.3)}, lambda v: v.normal_time + v.allowance * v.normal_time),
    "two_face_friction_capacity": ({}, lambda v: v.friction * v.clamping_force + v.friction * v.clamping_force),
    "required_clamping_force": (
        {"force_along": (10, 2e3), "force_lift": (0, 500)},
        lambda v: v.safety_factor * np.hypot(v.force_along, v.force_lift) / (2 * v.friction)),
    "clamping_force_across": ({}, lambda v: v.force_across * v.safety_factor),
    "tipping_clamping_force": (
        {"height": (0, 0.1), "grip_height": (5e-3, 0.05), "work_width": (0.02, 0.2)},
        # Moment about the lower edge of the grip, held by friction across the width and half the grip.
        lambda v: v.safety_factor * v.force_across
        * (1 + v.height / (v.friction * v.work_width + 0.5 * v.grip_height))),
    "screw_clamping_force": (
        {"mean_diameter": (8e-3, 0.03), "thread_friction": (0.05, 0.3), "thread_half_angle": (0, 0.5),
         "collar_diameter": (0.01, 0.05), "collar_friction": (0.05, 0.3)},
        lambda v: v.torque
        / (v.mean_diameter / 2
           * np.tan(np.arctan(v.lead / (PI * v.mean_diameter))
                    + np.arctan(v.thread_friction / np.cos(v.thread_half_angle)))
           + v.collar_friction * v.collar_diameter / 2)),
    "screw_clamping_force_efficiency": ({}, lambda v: v.efficiency * v.torque * 2 * PI / v.lead),
    "tool_life": ({}, lambda v: 60 * np.exp(np.log(v.taylor_speed / v.cutting_speed) / v.taylor_exponent), 1e-10),
    "speed_for_life": ({}, lambda v: v.taylor_speed * np.exp(-v.taylor_exponent * np.log(v.tool_life / 60))),
    "taylor_exponent_from_two": (TWO, two_lives),
    "taylor_speed_from_two": (TWO, lambda v: v.second_speed * (v.second_life / 60) ** two_lives(v)),
    "feed_exponent_from_two": (
        {"first_feed": (1e-5, 1e-4), "second_feed": (2e-4, 4e-4), "first_life": (900, 9000), "second_life": (60, 600)},
        lambda v: v.taylor_exponent * np.log(v.first_life / v.second_life) / np.log(v.second_feed / v.first_feed)),
    "scaled_tool_life": (
        {"reference_life": (600, 6000), "speed_ratio": (0.8, 1.3), "feed_ratio": (0.8, 1.3), "depth_ratio": (0.8, 1.3),
         "feed_exponent": (0.2, 0.8), "depth_exponent": (0.1, 0.4)},
        lambda v: v.reference_life
        * np.exp(-(np.log(v.speed_ratio) + v.feed_exponent * np.log(v.feed_ratio)
                   + v.depth_exponent * np.log(v.depth_ratio)) / v.taylor_exponent), 1e-10),
    "tap_drill_diameter": (
        {}, lambda v: v.major_diameter - v.thread_percent * (v.thread_basis * v.pitch)),
    "thread_percent": (
        {"drill_diameter": share("major_diameter", 0.6, 0.99)},
        lambda v: (v.major_diameter - v.drill_diameter) / (v.thread_basis * v.pitch)),
    "threading_passes": ({}, lambda v: np.ceil(v.thread_height**2 / v.first_depth**2)),
    "threading_depth": (
        {"passes": whole(1, 20), "index": lambda random, v, count: np.floor(random.uniform(0, 1, count) * v["passes"]) + 1},
        # Equal areas of chip: the square of the depth grows evenly.
        lambda v: np.sqrt(v.index * (v.thread_height**2 / v.passes))),
    "stability_limit_single_mode": (
        {"cutting_coefficient": (3e8, 3e9)},
        # The real part of the mode's response is least at sqrt(1 + 2 zeta) of its frequency.
        lambda v: -1 / (2 * v.cutting_coefficient * least_real_part(v.stiffness, v.damping_ratio))),
    "stability_limit_slot_single_mode": (
        {},
        # A slot: half the teeth cut, the directional factor averages to K_rc/2 over the half turn.
        lambda v: -1 / (2 * (v.krc * v.teeth / 4) * least_real_part(v.stiffness, v.damping_ratio))),
    "best_spindle_speed": (
        {"natural_frequency": (100, 3000), "waves": whole(1, 10)}, lambda v: v.natural_frequency / v.waves / v.teeth),
}
CASES.update(WEAR)

CASES.update(studies.CASES)


def least_real_part(stiffness, damping):
    ratio = np.sqrt(1 + 2 * damping)
    return (1 / stiffness / (1 - ratio**2 + 2j * damping * ratio)).real


# Topics with a file of their own, which takes what stands above.
from renderings_holes import CASES as HOLES  # noqa: E402

CASES |= HOLES

# Bounds of our own: shown to hold, and not written twice.
BOUNDS = {"tooth_sum_factor", "helix_relief_factor"}

import renderings_mills  # noqa: E402  (rests on what stands above)

CASES |= renderings_mills.CASES
# Those of other topics, which are written with what stands above.
from renderings_turning import CASES as TURNING  # noqa: E402

CASES |= TURNING
from renderings_holes_cycles import CASES as HOLE_CYCLES  # noqa: E402

CASES |= HOLE_CYCLES
from renderings_lathe import CASES as LATHE  # noqa: E402

CASES |= LATHE


import renderings_cost  # noqa: E402  (rests on what stands above)

CASES |= renderings_cost.CASES
RANGES |= renderings_cost.RANGES | RANGES
