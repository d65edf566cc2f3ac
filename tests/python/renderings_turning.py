"""Turning, threading, chucks and sawing written a second time; see renderings.py for the form."""

from __future__ import annotations

import numpy as np
from renderings import PI, integral, per_row, share, whole


def nose(v):
    """Angle of the nose in the cut ahead of its lowest point, and the straight edge's depth above it."""
    depth = v.nose_radius - v.nose_radius * np.cos(v.cutting_edge_angle)
    low = np.minimum(v.depth_of_cut, depth)
    angle = np.arctan2(np.sqrt(low * (2 * v.nose_radius - low)), v.nose_radius - low)
    return angle, np.maximum(v.depth_of_cut - depth, 0)


def edge_length(v):
    angle, above = nose(v)
    half_mark = v.feed_per_rev / 2
    mark = np.arctan2(half_mark, np.sqrt(v.nose_radius**2 - half_mark**2))
    return v.nose_radius * angle + v.nose_radius * mark + np.hypot(above, above / np.tan(v.cutting_edge_angle))


def chord_angle(v):
    angle, above = nose(v)
    across = v.nose_radius * np.sin(angle) + above / np.tan(v.cutting_edge_angle) + v.feed_per_rev / 2
    return np.arctan2(v.depth_of_cut, across)


@per_row
def parting(outer_diameter, inner_diameter, slow_diameter, cutting_speed, feed_per_rev, maximum_speed, feed_share):
    knee = cutting_speed / (2 * PI * maximum_speed)
    stops = sorted({inner_diameter / 2, outer_diameter / 2,
                    *(x for x in (knee, slow_diameter / 2) if inner_diameter / 2 < x < outer_diameter / 2)})

    def pace(radius, middle):
        feed = feed_per_rev * (feed_share if middle < slow_diameter / 2 else 1.0)
        return 1 / (feed * np.minimum(maximum_speed, cutting_speed / (2 * PI * radius)))

    return sum(integral(lambda x, m=(a + b) / 2: pace(x, m), a, b) for a, b in zip(stops, stops[1:]))


def propped(F, L, EI):
    """Deflection under a force at the middle of a beam held fast at one end, by superposition."""
    half = L / 2
    # The free end sinks by the force and is lifted back by the support.
    sink = F * half**2 * (3 * L - half) / (6 * EI)
    support = sink * 3 * EI / L**3
    return F * half**3 / (3 * EI) - support * half**2 * (3 * L - half) / (6 * EI)


def stiffness(v):
    return v.modulus * PI * v.diameter**4 / 64


SIZES_IN = [0.25, 0.75, 1.25, 2.5, 4, 8]
FACTORS = [1.15, 1.12, 1.10, 1.05, 1.00, 0.88]
GRIP = {"static_grip": (5e3, 8e4), "maximum_speed": (20, 100), "loss_at_maximum": (0.2, 1)}
NOSE = {"feed_per_rev": share("nose_radius", 0.05, 1.5)}
NOSE_ANGLE = {"nose_radius": (2e-4, 3e-3), "depth_of_cut": (1e-4, 5e-3), **NOSE}
HEIGHT = {"thread_height": (3e-4, 3e-3), "passes": whole(1, 20)}
TUBE = {"outer_diameter": (0.02, 0.3), "inner_diameter": share("outer_diameter", 0.1, 0.95)}
FLANK = {"tool_flat": (0, 1e-3), "flank_angle": (0.1, 0.8)}
RUN = {"acceleration": (0.5, 10)}

# Name: own ranges, rendering, relative tolerance where more than rounding is between the two.
CASES = {
    "cutting_edge_angle_of_lead_angle": ({"lead_angle": (0, 1.2)}, lambda v: np.arctan2(np.cos(v.lead_angle), np.sin(v.lead_angle))),
    "depth_of_cut_from_diameters": (
        {"larger_diameter": (0.02, 0.2), "smaller_diameter": share("larger_diameter", 0, 0.99)},
        lambda v: v.larger_diameter / 2 - v.smaller_diameter / 2, 1e-11),
    "nose_depth": ({}, lambda v: v.nose_radius * (1 - np.cos(v.cutting_edge_angle)), 1e-11),
    "turning_edge_length": (NOSE_ANGLE, edge_length, 1e-11),
    "turning_mean_chip_thickness": (
        {"edge_length": (1e-4, 1e-2)}, lambda v: v.feed_per_rev / v.edge_length * v.depth_of_cut),
    "turning_chord_angle": (NOSE_ANGLE, chord_angle, 1e-11),
    "turning_feed_force": (
        {"thrust_share": (0.3, 0.9)},
        lambda v: v.thrust_share * v.cutting_force * np.cos(PI / 2 - v.cutting_edge_angle)),
    "turning_passive_force": (
        {"thrust_share": (0.3, 0.9)},
        lambda v: v.thrust_share * v.cutting_force * np.sin(PI / 2 - v.cutting_edge_angle), 1e-11),
    "turning_torque": ({}, lambda v: v.cutting_force * (v.diameter / 2)),
    "diameter_error_of_radial_deflection": (
        {"radial_deflection": (-1e-4, 1e-4)}, lambda v: v.radial_deflection + v.radial_deflection),
    "radius_error_of_tangential_deflection": (
        {"tangential_deflection": (1e-4, 1e-3), "diameter": (5e-3, 0.05)},
        lambda v: np.hypot(v.diameter / 2, v.tangential_deflection) - v.diameter / 2, 1e-9),
    "turning_approach": (
        {"clearance": (0, 5e-3)},
        lambda v: v.clearance + v.depth_of_cut * np.cos(v.cutting_edge_angle) / np.sin(v.cutting_edge_angle)),
    "turning_travel": (
        {"length": (0.01, 1), "run_out": (0, 5e-3)}, lambda v: v.approach + (v.length + v.run_out)),
    "constant_speed_knee_diameter": (
        {"maximum_speed": (10, 100)}, lambda v: v.cutting_speed / v.maximum_speed / PI),
    "facing_time_fixed_speed": (
        {}, lambda v: (v.outer_diameter / 2 - v.inner_diameter / 2) / (v.feed_per_rev * v.spindle_speed), 1e-11),
    "parting_time": (
        {"slow_diameter": share("outer_diameter", 0, 1), "maximum_speed": (5, 100), "feed_share": (0.2, 1)}, parting, 1e-10),
    "parting_overhang_cap": (
        {"blade_width": (1e-3, 8e-3), "overhang_ratio": (4, 10)}, lambda v: v.overhang_ratio * v.blade_width),
    "turning_roughness_estimate": (
        {**NOSE, "roughness_ratio": (1, 2.5), "nose_radius": (2e-4, 3e-3)},
        # A quarter of the peak-to-valley height.
        lambda v: v.roughness_ratio * v.feed_per_rev**2 / (8 * v.nose_radius) / 4),
    "feed_for_roughness_estimate": (
        {"roughness_ratio": (1, 2.5), "mean_roughness": share("nose_radius", 1e-5, 0.1)},
        lambda v: np.sqrt(v.mean_roughness / v.roughness_ratio * 4 * 8 * v.nose_radius)),
    "work_deflection_between_centres": (
        {"length": (0.1, 1)},
        # Half the beam is a cantilever under half the force.
        lambda v: v.force / 2 * (v.length / 2) ** 3 / (3 * stiffness(v))),
    "work_deflection_chuck_and_centre": (
        {"length": (0.1, 1)}, lambda v: propped(v.force, v.length, stiffness(v)), 1e-11),
    "thread_lead": ({"starts": whole(1, 6)}, lambda v: v.starts * v.pitch),
    # Heights of the sharp triangle less its eighths and its sixth.
    "external_thread_height": ({}, lambda v: v.pitch * np.sin(PI / 3) * (1 - 1 / 8 - 1 / 6)),
    "internal_thread_height": ({}, lambda v: v.pitch * np.sin(PI / 3) * (1 - 1 / 8 - 1 / 4)),
    "compound_infeed": (
        {"compound_angle": (0.3, 0.6)}, lambda v: np.hypot(v.thread_height, v.thread_height * np.tan(v.compound_angle))),
    "threading_infeed": (
        {**HEIGHT, "index": lambda random, v, count: np.floor(random.uniform(0, 1, count) * v["passes"]) + 1},
        lambda v: v.thread_height * (np.sqrt(v.index / v.passes) - np.sqrt((v.index - 1) / v.passes)), 1e-11),
    "threading_chip_section": (
        {"depth": (3e-4, 3e-3), "previous_depth": share("depth", 0, 0.95), **FLANK},
        lambda v: integral(lambda x: v.tool_flat + 2 * x * np.tan(v.flank_angle), v.previous_depth, v.depth), 1e-11),
    "threading_edge_length": (
        {"depth": (3e-4, 3e-3), **FLANK},
        lambda v: v.tool_flat + 2 * np.hypot(v.depth, v.depth * np.tan(v.flank_angle))),
    "threading_run_in": (
        RUN,
        # Time to the speed of the carriage, at the mean of it.
        lambda v: (v.lead * v.spindle_speed / v.acceleration) * (v.lead * v.spindle_speed) / 2),
    "threading_speed_for_run_in": (
        {**RUN, "run_in": (1e-3, 0.02)}, lambda v: np.sqrt(2 * v.run_in / v.acceleration) * v.acceleration / v.lead),
    "threading_speed_for_carriage": ({"carriage_speed": (0.01, 0.5)}, lambda v: v.carriage_speed / v.lead),
    "threading_time": (
        {"length": (5e-3, 0.1), "run_in": (0, 0.01), "run_out": (0, 5e-3), "passes": whole(1, 20), "return_time": (0, 5)},
        lambda v: v.passes * v.return_time
        + v.passes * ((v.length + v.run_in + v.run_out) / v.lead) / v.spindle_speed),
    "required_chuck_grip": (
        {"feed_force": (0, 2e3), "cutting_diameter": (0.02, 0.3), "grip_diameter": (0.02, 0.3)},
        lambda v: v.safety_factor / v.friction
        * np.hypot(v.cutting_force * v.cutting_diameter / v.grip_diameter, v.feed_force)),
    "jaw_grip_at_speed": (
        {**GRIP, "spindle_speed": share("maximum_speed", 0, 0.95)},
        lambda v: v.static_grip - v.loss_at_maximum * v.static_grip * v.spindle_speed**2 / v.maximum_speed**2, 1e-11),
    "chuck_speed_for_grip": (
        {**GRIP, "required_grip": share("static_grip", 0.01, 0.99)},
        lambda v: np.minimum(
            v.maximum_speed,
            v.maximum_speed * np.sqrt((v.static_grip - v.required_grip) / (v.loss_at_maximum * v.static_grip))), 1e-11),
    "saw_tooth_pitch": ({"teeth_per_inch": (1, 32)}, lambda v: 0.0254 / v.teeth_per_inch),
    "teeth_in_work": ({"width": (1e-3, 0.3), "tooth_pitch": (1e-3, 0.02)}, lambda v: v.width / v.tooth_pitch),
    "saw_pitch_for_teeth": ({"width": (1e-3, 0.3), "teeth_in_work": (3, 24)}, lambda v: v.width / v.teeth_in_work),
    "saw_stock_factor": (
        {"width": (3e-3, 0.3)}, lambda v: np.interp(v.width / 0.0254, SIZES_IN, FACTORS), 1e-11),
    "saw_blade_speed": (
        {"table_speed": (0.3, 2), "stock_factor": (0.8, 1.2), "dry_factor": (0.5, 1), "blade_factor": (0.5, 1)},
        lambda v: v.table_speed * v.stock_factor * v.dry_factor * v.blade_factor),
    "saw_feed_speed": (
        {"blade_speed": (0.2, 3), "feed_per_tooth": (1e-7, 1e-5), "tooth_pitch": (1e-3, 0.02)},
        lambda v: v.blade_speed / v.tooth_pitch * v.feed_per_tooth),
    "saw_feed_per_tooth": (
        {"blade_speed": (0.2, 3), "tooth_pitch": (1e-3, 0.02)},
        lambda v: v.feed_speed / (v.blade_speed / v.tooth_pitch)),
    "sawing_area_rate": ({"width": (1e-3, 0.3)}, lambda v: v.width * v.feed_speed),
    "saw_feed_speed_for_area_rate": (
        {"width": (1e-3, 0.3), "area_rate": (1e-6, 1e-4)}, lambda v: v.area_rate / v.width),
    "sawing_removal_rate": ({"area_rate": (1e-6, 1e-4), "kerf": (5e-4, 4e-3)}, lambda v: v.area_rate * v.kerf),
    "round_section_area": (TUBE, lambda v: PI * ((v.outer_diameter / 2) ** 2 - (v.inner_diameter / 2) ** 2), 1e-11),
    "mean_sawn_width": ({"area": (1e-5, 1e-2), "height": (5e-3, 0.3)}, lambda v: v.area / v.height),
    "tube_crossing_length": (
        {**TUBE, "offset": share("outer_diameter", -0.6, 0.6)},
        lambda v: 2 * (np.sqrt(np.maximum((v.outer_diameter / 2) ** 2 - v.offset**2, 0))
                       - np.sqrt(np.maximum((v.inner_diameter / 2) ** 2 - v.offset**2, 0))), 1e-9),
    "tube_longest_crossing": (
        TUBE, lambda v: 2 * np.sqrt((v.outer_diameter / 2) ** 2 - (v.inner_diameter / 2) ** 2), 1e-11),
}
