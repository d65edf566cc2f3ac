# Written by generate_stubs.py.
from typing import Literal

from ._gullet import Quantity
from ._types import QuantityLike

__all__ = [
    "spindle_speed",
    "cutting_speed",
    "rule_of_thumb_speed",
    "feed_per_rev",
    "table_feed",
    "feed_per_tooth",
    "spindle_speed_for_feed",
    "feed_rate",
    "pulley_speed",
    "geometric_step_ratio",
    "geometric_step_speed",
    "handwheel_turns",
    "handwheel_rate",
    "ball_effective_diameter",
    "corner_radius_effective_diameter",
    "face_mill_outer_diameter",
    "turning_mean_diameter",
    "engagement_angle",
    "up_milling_exit_angle",
    "down_milling_entry_angle",
    "face_entry_angle",
    "face_exit_angle",
    "face_engagement_angle",
    "mean_teeth_in_cut",
    "mean_teeth_touching",
    "max_chip_thickness",
    "mean_chip_thickness",
    "face_mean_chip_thickness",
    "face_max_chip_thickness",
    "radial_thinning_factor",
    "feed_for_max_chip_thickness",
    "round_edge_max_chip_thickness",
    "round_edge_feed_for_max_chip_thickness",
    "round_edge_mean_thickness_ratio",
    "turning_chip_thickness",
    "turning_chip_width",
    "drilling_chip_thickness",
    "plunge_chip_thickness",
    "milling_removal_rate",
    "axial_depth_for_removal_rate",
    "turning_removal_rate",
    "drilling_removal_rate",
    "plunge_removal_rate",
    "first_plunge_removal_rate",
    "bore_removal_rate",
    "specific_cutting_force",
    "chip_section_force",
    "tangential_force",
    "specific_energy_from_force",
    "kc11_from_specific_force",
    "drilling_torque",
    "drilling_thrust",
    "mean_feed_force",
    "mean_normal_force",
    "mean_axial_force",
    "mean_milling_torque",
    "simultaneous_teeth",
    "tooth_sum_factor",
    "helix_relief_factor",
    "peak_tangential_force",
    "in_plane_force",
    "helix_axial_force",
    "drilling_chip_width",
    "hole_chip_thickness",
    "feed_for_hole_chip_thickness",
    "enlarging_torque",
    "enlarging_thrust",
    "enlarging_removal_rate",
    "handbook_drilling_thrust",
    "handbook_drilling_torque",
    "deep_hole_speed_factor",
    "deep_hole_feed_factor",
    "cutting_power",
    "power_from_force",
    "arc_mean_cutting_power",
    "unit_power_at_chip",
    "motor_power",
    "cutting_torque",
    "power_from_torque",
    "available_torque",
    "available_power",
    "cutting_energy",
    "practice_cutting_speed",
    "practice_feed_per_tooth",
    "thinning_cap_feed",
    "practice_depth",
    "grip_for_height",
    "stick_out_cap",
    "usable_power",
    "feed_for_load_share",
    "feed_for_wall_roughness",
    "cut_travel",
    "depth_for_load_share",
    "fluted_equivalent_diameter",
    "cantilever_deflection",
    "cantilever_deflection_inboard",
    "stepped_cutter_deflection",
    "work_deflection_between_centres",
    "work_deflection_chuck_and_centre",
    "turning_peak_to_valley",
    "turning_mean_roughness",
    "nose_radius_for_mean_roughness",
    "feed_for_mean_roughness",
    "turning_roughness_estimate",
    "feed_for_roughness_estimate",
    "feed_for_peak_to_valley",
    "sharp_tool_peak_to_valley",
    "feed_mark_height",
    "feed_mark_height_up",
    "feed_mark_height_down",
    "feed_mark_mean_roughness",
    "scallop_height",
    "stepover_for_scallop",
    "tilted_corner_effective_diameter",
    "tilted_edge_mean_thickness_ratio",
    "contact_diameter",
    "tilted_corner_scallop_radius",
    "corner_scallop_height",
    "corner_stepover_for_scallop",
    "convex_scallop_height",
    "concave_scallop_height",
    "convex_stepover_for_scallop",
    "concave_stepover_for_scallop",
    "stepover_of_plan_step",
    "plan_step_for_stepover",
    "stepover_of_level_step",
    "level_step_for_stepover",
    "raster_passes",
    "raster_stepover",
    "pass_count",
    "equal_pass",
    "passes_time",
    "cone_cutting_edge_angle",
    "chamfer_depth",
    "chamfer_width",
    "chamfer_outer_diameter",
    "chamfer_removal_rate",
    "inside_arc_feed",
    "outside_arc_feed",
    "bore_radial_depth",
    "boss_radial_depth",
    "helix_ramp_angle",
    "inside_path_diameter",
    "outside_path_diameter",
    "axial_per_turn_for_ramp",
    "helix_turn_length",
    "helix_turns",
    "helix_travel",
    "helix_axial_feed",
    "half_circle_entry_length",
    "ramp_length",
    "core_ramp_angle",
    "smallest_helix_bore",
    "largest_helix_bore",
    "largest_plunge_step",
    "through_hole_travel",
    "blind_hole_travel",
    "full_diameter_depth",
    "peck_count",
    "peck_cycle_time",
    "chip_break_cycle_time",
    "feed_out_cycle_time",
    "hole_depth_ratio",
    "countersink_depth",
    "countersink_diameter",
    "smallest_reaming_stock",
    "largest_reaming_stock",
    "reaming_drill_diameter",
    "peripheral_approach",
    "face_approach_centred",
    "drill_point_length",
    "cutting_time",
    "facing_time_constant_speed",
    "facing_time_limited_speed",
    "tapping_time",
    "rapid_time",
    "band_saw_time",
    "tool_change_time_per_part",
    "standard_time",
    "path_length",
    "simultaneous_move_time",
    "move_peak_speed",
    "hand_cranked_time",
    "learning_unit_time",
    "learning_total_time_unit_curve",
    "learning_average_time",
    "learning_total_time_cumulative_average",
    "mean_unit_time",
    "two_face_friction_capacity",
    "required_clamping_force",
    "clamping_force_across",
    "tipping_clamping_force",
    "screw_clamping_force",
    "screw_clamping_force_efficiency",
    "tool_life",
    "speed_for_life",
    "taylor_exponent_from_two",
    "taylor_speed_from_two",
    "feed_exponent_from_two",
    "scaled_tool_life",
    "extended_tool_life",
    "extended_speed_for_life",
    "tool_life_by_powers",
    "taylor_exponent_from_power",
    "exponent_from_power",
    "taylor_speed_from_one",
    "tool_life_for_criterion",
    "taylor_speed_for_criterion",
    "crater_depth_limit",
    "mean_from_median_life",
    "minimum_cost_life",
    "maximum_production_life",
    "minimum_cost_speed",
    "maximum_production_speed",
    "unit_cost",
    "unit_cost_whole_parts",
    "unit_time",
    "unit_time_whole_parts",
    "mean_parts_per_edge",
    "whole_parts_per_edge",
    "insert_edge_cost",
    "reground_edge_cost",
    "lot_time",
    "setup_time_per_part",
    "gauging_time_per_part",
    "change_time_per_part",
    "edge_cost_per_part",
    "normal_time_per_part",
    "standard_time_by_share_of_standard",
    "allowance_time",
    "lot_time_per_part",
    "time_cost",
    "lot_cost_per_part",
    "lot_cost",
    "tap_drill_diameter",
    "thread_percent",
    "threading_passes",
    "threading_depth",
    "thread_mill_largest_diameter",
    "internal_thread_mill_widening",
    "thread_mill_axial_shift",
    "thread_milling_travel",
    "thread_milling_removal_rate",
    "external_thread_milling_removal_rate",
    "thread_triangle_height",
    "internal_thread_height",
    "external_thread_height",
    "thread_pitch_diameter",
    "thread_minor_diameter",
    "thread_root_diameter",
    "thread_lead",
    "pitch_from_threads_per_inch",
    "numbered_screw_diameter",
    "tap_drill_by_rule",
    "form_tap_drill_diameter",
    "form_thread_percent",
    "tapping_hole_depth",
    "tap_chip_thickness",
    "tapping_torque",
    "tap_stopping_turns",
    "tap_stopping_travel",
    "tapping_speed_for_stopping_travel",
    "compound_infeed",
    "threading_infeed",
    "threading_chip_section",
    "threading_edge_length",
    "threading_mean_chip_thickness",
    "threading_run_in",
    "threading_speed_for_run_in",
    "threading_speed_for_carriage",
    "threading_most_passes",
    "threading_pass_count",
    "threading_time",
    "cutting_edge_angle_of_lead_angle",
    "depth_of_cut_from_diameters",
    "nose_depth",
    "turning_depth_cap",
    "turning_edge_length",
    "turning_mean_chip_thickness",
    "turning_chord_angle",
    "turning_feed_force",
    "turning_passive_force",
    "turning_torque",
    "diameter_error_of_radial_deflection",
    "radius_error_of_tangential_deflection",
    "turning_approach",
    "turning_travel",
    "constant_speed_knee_diameter",
    "facing_time_fixed_speed",
    "parting_time",
    "parting_overhang_cap",
    "required_chuck_grip",
    "jaw_grip_at_speed",
    "static_grip_for_speed",
    "chuck_speed_for_grip",
    "saw_tooth_pitch",
    "teeth_in_work",
    "saw_pitch_for_teeth",
    "saw_stock_factor",
    "saw_blade_speed",
    "saw_feed_speed",
    "saw_teeth_per_turn",
    "saw_feed_per_tooth",
    "sawing_area_rate",
    "saw_feed_speed_for_area_rate",
    "sawing_removal_rate",
    "round_section_area",
    "rectangular_section_area",
    "mean_sawn_width",
    "tube_crossing_length",
    "tube_longest_crossing",
    "stability_limit_single_mode",
    "stability_limit_slot_single_mode",
    "best_spindle_speed",
]

def spindle_speed(
    *,
    cutting_speed: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Spindle speed that gives a cutting speed at a diameter."""
def cutting_speed(
    *,
    spindle_speed: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed at a diameter that turns at a spindle speed."""
def rule_of_thumb_speed(
    *,
    cutting_speed: QuantityLike,
    diameter: QuantityLike,
    constant: QuantityLike = '4',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Spindle speed by the shop rule K times cutting speed in ft/min over diameter in inches."""
def feed_per_rev(
    *,
    feed_per_tooth: QuantityLike,
    teeth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per revolution of a cutter with several teeth."""
def table_feed(
    *,
    feed_per_tooth: QuantityLike,
    teeth: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Table feed of a milling cutter."""
def feed_per_tooth(
    *,
    table_feed: QuantityLike,
    teeth: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per tooth that a table feed amounts to."""
def spindle_speed_for_feed(
    *,
    table_feed: QuantityLike,
    feed_per_tooth: QuantityLike,
    teeth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Spindle speed at which a table feed gives a feed per tooth."""
def feed_rate(
    *,
    feed_per_rev: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed rate that a feed per revolution gives."""
def pulley_speed(
    *,
    motor_speed: QuantityLike,
    driver_diameter: QuantityLike,
    driven_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Spindle speed of a belt step."""
def geometric_step_ratio(
    *,
    lowest: QuantityLike,
    highest: QuantityLike,
    steps: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Ratio of neighbouring speeds in a geometric series of spindle speeds."""
def geometric_step_speed(
    *,
    lowest: QuantityLike,
    highest: QuantityLike,
    steps: QuantityLike,
    index: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """One speed of a geometric series of spindle speeds."""
def handwheel_turns(
    *,
    travel: QuantityLike,
    travel_per_turn: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Turns of a handwheel for a travel."""
def handwheel_rate(
    *,
    table_feed: QuantityLike,
    travel_per_turn: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Speed at which a handwheel is turned for a table feed."""
def ball_effective_diameter(
    *,
    diameter: QuantityLike,
    axial_depth: QuantityLike,
    tilt_angle: QuantityLike = '0 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the circle that cuts at the top of the engaged edge of a ball nose cutter."""
def corner_radius_effective_diameter(
    *,
    diameter: QuantityLike,
    corner_radius: QuantityLike,
    axial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the circle that cuts at the top of the engaged edge of a cutter with a corner radius."""
def face_mill_outer_diameter(
    *,
    tip_diameter: QuantityLike,
    axial_depth: QuantityLike,
    cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest diameter that cuts on a face mill whose edges lean outward."""
def turning_mean_diameter(
    *,
    outer_diameter: QuantityLike,
    depth_of_cut: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean diameter of a turning or boring cut."""
def engagement_angle(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Angle over which a tooth cuts in a side cut or slot."""
def up_milling_exit_angle(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Immersion at which a tooth leaves the work in up (conventional) milling."""
def down_milling_entry_angle(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Immersion at which a tooth enters the work in down (climb) milling."""
def face_entry_angle(
    *,
    diameter: QuantityLike,
    edge_high: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Immersion at which a tooth of a face mill enters the work."""
def face_exit_angle(
    *,
    diameter: QuantityLike,
    edge_low: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Immersion at which a tooth of a face mill leaves the work."""
def face_engagement_angle(
    *,
    diameter: QuantityLike,
    edge_low: QuantityLike,
    edge_high: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Angle over which a tooth of a face mill cuts."""
def mean_teeth_in_cut(
    *,
    teeth: QuantityLike,
    engagement_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean number of teeth in the arc of a cut."""
def mean_teeth_touching(
    *,
    teeth: QuantityLike,
    engagement_angle: QuantityLike,
    diameter: QuantityLike,
    axial_depth: QuantityLike,
    helix_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean number of teeth that touch the work with any part of their edge."""
def max_chip_thickness(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest undeformed chip thickness of a side cut or slot."""
def mean_chip_thickness(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean undeformed chip thickness over the arc of a side cut or slot."""
def face_mean_chip_thickness(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    edge_low: QuantityLike,
    edge_high: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean undeformed chip thickness over the arc of a face mill."""
def face_max_chip_thickness(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    edge_low: QuantityLike,
    edge_high: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest undeformed chip thickness over the arc of a face mill."""
def radial_thinning_factor(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per tooth over the largest chip thickness of a side cut at a cutting-edge angle of 90 deg."""
def feed_for_max_chip_thickness(
    *,
    max_chip_thickness: QuantityLike,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per tooth that gives a largest chip thickness in a side cut or slot."""
def round_edge_max_chip_thickness(
    *,
    feed_per_tooth: QuantityLike,
    insert_diameter: QuantityLike,
    axial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest chip thickness along a round edge: round insert, ball or corner radius."""
def round_edge_feed_for_max_chip_thickness(
    *,
    max_chip_thickness: QuantityLike,
    insert_diameter: QuantityLike,
    axial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per tooth that gives a largest chip thickness along a round edge."""
def round_edge_mean_thickness_ratio(
    *,
    insert_diameter: QuantityLike,
    axial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean chip thickness along a round edge over the feed per tooth."""
def turning_chip_thickness(
    *,
    feed_per_rev: QuantityLike,
    cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip thickness in turning."""
def turning_chip_width(
    *,
    depth_of_cut: QuantityLike,
    cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip width in turning."""
def drilling_chip_thickness(
    *,
    feed_per_rev: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip thickness of each lip of a two-lip drill."""
def plunge_chip_thickness(
    *,
    feed_per_tooth: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip thickness in plunging with the end of a mill."""
def milling_removal_rate(
    *,
    axial_depth: QuantityLike,
    radial_depth: QuantityLike,
    table_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a milling cut."""
def axial_depth_for_removal_rate(
    *,
    removal_rate: QuantityLike,
    radial_depth: QuantityLike,
    table_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Axial depth of the plain cut that removes as much as another at the same radial depth and feed."""
def turning_removal_rate(
    *,
    cutting_speed: QuantityLike,
    feed_per_rev: QuantityLike,
    depth_of_cut: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a turning cut."""
def drilling_removal_rate(
    *,
    diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a drill in solid metal."""
def plunge_removal_rate(
    *,
    radial_depth: QuantityLike,
    side_step: QuantityLike,
    table_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of plunge milling."""
def first_plunge_removal_rate(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    table_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of the first plunge of plunge milling, alone in the stock."""
def bore_removal_rate(
    *,
    finished_diameter: QuantityLike,
    start_diameter: QuantityLike,
    axial_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a helix that sinks or widens a bore."""
def specific_cutting_force(
    *,
    kc11: QuantityLike,
    chip_exponent: QuantityLike,
    chip_thickness: QuantityLike,
    rake_angle: QuantityLike = '0 deg',
    reference_rake: QuantityLike = '0 deg',
    rake_sensitivity: QuantityLike = '0.01',
    correction: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Specific cutting force at a chip thickness (Kienzle)."""
def chip_section_force(
    *,
    specific_cutting_force: QuantityLike,
    chip_thickness: QuantityLike,
    chip_width: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting force of a chip section."""
def tangential_force(
    *,
    cutting_power: QuantityLike,
    cutting_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tangential force that a power at the cutter amounts to."""
def specific_energy_from_force(
    *,
    cutting_force: QuantityLike,
    feed_per_rev: QuantityLike,
    depth_of_cut: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Specific cutting force from a measured force in turning."""
def kc11_from_specific_force(
    *,
    specific_cutting_force: QuantityLike,
    chip_exponent: QuantityLike,
    chip_thickness: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Specific cutting force at a chip 1 mm thick from that at another chip thickness."""
def drilling_torque(
    *,
    diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    specific_cutting_force: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque of a two-lip drill in solid metal."""
def drilling_thrust(
    *,
    specific_cutting_force: QuantityLike,
    diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    point_angle: QuantityLike,
    factor: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Thrust of a two-lip drill in solid metal."""
def mean_feed_force(
    *,
    ktc: QuantityLike,
    krc: QuantityLike,
    kte: QuantityLike,
    kre: QuantityLike,
    teeth: QuantityLike,
    axial_depth: QuantityLike,
    feed_per_tooth: QuantityLike,
    entry_angle: QuantityLike,
    exit_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Force on a milling cutter along the feed, mean over a revolution."""
def mean_normal_force(
    *,
    ktc: QuantityLike,
    krc: QuantityLike,
    kte: QuantityLike,
    kre: QuantityLike,
    teeth: QuantityLike,
    axial_depth: QuantityLike,
    feed_per_tooth: QuantityLike,
    entry_angle: QuantityLike,
    exit_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Force on a milling cutter square to the feed, mean over a revolution."""
def mean_axial_force(
    *,
    kac: QuantityLike,
    kae: QuantityLike,
    teeth: QuantityLike,
    axial_depth: QuantityLike,
    feed_per_tooth: QuantityLike,
    entry_angle: QuantityLike,
    exit_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Force on a milling cutter along its axis, mean over a revolution; positive pulls the tool out of the holder."""
def mean_milling_torque(
    *,
    ktc: QuantityLike,
    kte: QuantityLike,
    teeth: QuantityLike,
    axial_depth: QuantityLike,
    radial_depth: QuantityLike,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque of a milling cutter in a side cut or slot, mean over a revolution."""
def simultaneous_teeth(
    *,
    teeth: QuantityLike,
    engagement_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest number of teeth in the arc of a cut at one instant."""
def tooth_sum_factor(
    *,
    teeth: QuantityLike,
    engagement_angle: QuantityLike,
    largest_sine: QuantityLike,
    chip_exponent: QuantityLike = '0',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Bound of the sum of the tangential forces of all teeth in a cut over the largest force of one tooth."""
def helix_relief_factor(
    *,
    teeth: QuantityLike,
    engagement_angle: QuantityLike,
    chip_ratio: QuantityLike,
    chip_exponent: QuantityLike,
    tooth_sum_factor: QuantityLike,
    axial_depth: QuantityLike,
    diameter: QuantityLike,
    helix_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Bound of the tangential force of helical edges over that of straight ones."""
def peak_tangential_force(
    *,
    specific_cutting_force: QuantityLike,
    max_chip_thickness: QuantityLike,
    chip_width: QuantityLike,
    tooth_sum_factor: QuantityLike,
    helix_relief: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Upper bound of the sum of the tangential forces of a milling cutter."""
def in_plane_force(
    *,
    cutting_force: QuantityLike,
    radial_force_ratio: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Force across the tool's axis from the tangential force and the ratio of the radial to it."""
def helix_axial_force(
    *,
    cutting_force: QuantityLike,
    helix_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Upper estimate of the axial force that a helix turns out of the tangential force."""
def drilling_chip_width(
    *,
    diameter: QuantityLike,
    point_angle: QuantityLike,
    start_diameter: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip width of each lip in drilling or enlarging a hole."""
def hole_chip_thickness(
    *,
    feed_per_rev: QuantityLike,
    teeth: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip thickness of each edge of a core drill, countersink or reamer."""
def feed_for_hole_chip_thickness(
    *,
    chip_thickness: QuantityLike,
    teeth: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per revolution at which each edge of a drill, reamer or countersink takes a chip thickness."""
def enlarging_torque(
    *,
    diameter: QuantityLike,
    start_diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    specific_cutting_force: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque of a drill, core drill or countersink that enlarges a hole."""
def enlarging_thrust(
    *,
    specific_cutting_force: QuantityLike,
    diameter: QuantityLike,
    start_diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    point_angle: QuantityLike,
    factor: QuantityLike = '0.5',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Thrust of a drill, core drill or countersink that enlarges a hole."""
def enlarging_removal_rate(
    *,
    diameter: QuantityLike,
    start_diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a drill, core drill or reamer that enlarges a hole."""
def handbook_drilling_thrust(
    *,
    work_factor: QuantityLike,
    diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    wear_factor: QuantityLike = '1',
    thrust_factor: QuantityLike = '1.355',
    chisel_factor: QuantityLike = '0.03',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Thrust of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge."""
def handbook_drilling_torque(
    *,
    work_factor: QuantityLike,
    diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    wear_factor: QuantityLike = '1',
    torque_factor: QuantityLike = '1.085',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge."""
def deep_hole_speed_factor(
    *,
    depth: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Factor on the cutting speed of a twist drill in a deep hole."""
def deep_hole_feed_factor(
    *,
    depth: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Factor on the feed of a twist drill in a deep hole."""
def cutting_power(
    *,
    removal_rate: QuantityLike,
    specific_cutting_force: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power at the cutter for a removal rate."""
def power_from_force(
    *,
    cutting_force: QuantityLike,
    cutting_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power at the cutter from its tangential force."""
def arc_mean_cutting_power(
    *,
    kc11: QuantityLike,
    chip_exponent: QuantityLike,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    axial_depth: QuantityLike,
    teeth: QuantityLike,
    spindle_speed: QuantityLike,
    cutting_edge_angle: QuantityLike = '90 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power at the cutter of a side cut or slot, mean over a revolution, with the specific cutting force followed along the arc."""
def unit_power_at_chip(
    *,
    unit_power: QuantityLike,
    table_chip_thickness: QuantityLike,
    chip_thickness: QuantityLike,
    exponent: QuantityLike = '0.2',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Unit power carried from the chip thickness of its table to that of a cut."""
def motor_power(
    *,
    cutting_power: QuantityLike,
    efficiency: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power of the motor for a power at the cutter."""
def cutting_torque(
    *,
    cutting_power: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque at the spindle for a power at the cutter."""
def power_from_torque(
    *,
    torque: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power of a torque at a spindle speed."""
def available_torque(
    *,
    rated_power: QuantityLike,
    base_speed: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque that a drive has to give at a spindle speed."""
def available_power(
    *,
    rated_power: QuantityLike,
    base_speed: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power that a drive has to give at a spindle speed."""
def cutting_energy(
    *,
    power: QuantityLike,
    cutting_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Energy of a power over a time in the cut."""
def practice_cutting_speed(
    *,
    table_speed: QuantityLike,
    speed_factor: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed wanted: the table's value times the practice's factor."""
def practice_feed_per_tooth(
    *,
    table_feed_per_tooth: QuantityLike,
    feed_factor: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest chip wanted: the table's feed per tooth times the practice's factor."""
def thinning_cap_feed(
    *,
    wanted_chip: QuantityLike,
    thinning_cap: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest feed per tooth to which chip thinning may raise the wanted chip."""
def practice_depth(
    *,
    diameter: QuantityLike,
    depth_ratio: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest roughing depth of a pass that the practice allows."""
def grip_for_height(
    *,
    part_height: QuantityLike,
    smallest_grip: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Smallest height of a part that the jaws must grip."""
def stick_out_cap(
    *,
    diameter: QuantityLike,
    stick_out_ratio: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Longest stick-out of a cutter that the practice allows."""
def usable_power(
    *,
    rated_motor_power: QuantityLike,
    efficiency: QuantityLike,
    power_share: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Power at the cutter that a practice uses of a motor's rating."""
def feed_for_load_share(
    *,
    feed_per_tooth: QuantityLike,
    load_share: QuantityLike,
    chip_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per tooth at which a load that follows the power law of the chip just meets its limit."""
def feed_for_wall_roughness(
    *,
    mean_roughness: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed per revolution whose feed marks on a milled wall have a mean roughness."""
def cut_travel(
    *,
    cut_length: QuantityLike,
    approach: QuantityLike,
    overtravel: QuantityLike,
    clearance: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of a pass: the cut with approach, overtravel and clearance at both ends."""
def depth_for_load_share(
    *,
    axial_depth: QuantityLike,
    load_share: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Axial depth at which a load in proportion to it just meets its limit."""
def fluted_equivalent_diameter(
    *,
    diameter: QuantityLike,
    factor: QuantityLike = '0.8',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the solid round bar that bends like the fluted length of a cutter."""
def cantilever_deflection(
    *,
    force: QuantityLike,
    overhang: QuantityLike,
    diameter: QuantityLike,
    modulus: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Deflection of the tip of a round bar under a force at its tip."""
def cantilever_deflection_inboard(
    *,
    force: QuantityLike,
    overhang: QuantityLike,
    load_distance: QuantityLike,
    diameter: QuantityLike,
    modulus: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Deflection of the tip of a round bar under a force that acts inboard of the tip."""
def stepped_cutter_deflection(
    *,
    force: QuantityLike,
    overhang: QuantityLike,
    flute_length: QuantityLike,
    flute_equivalent_diameter: QuantityLike,
    shank_diameter: QuantityLike,
    modulus: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Deflection of the tip of a cutter whose flutes are weaker than its shank, under a force at the tip."""
def work_deflection_between_centres(
    *,
    force: QuantityLike,
    length: QuantityLike,
    diameter: QuantityLike,
    modulus: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Deflection of round work between centres under a force at its middle."""
def work_deflection_chuck_and_centre(
    *,
    force: QuantityLike,
    length: QuantityLike,
    diameter: QuantityLike,
    modulus: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Deflection of round work held in a chuck and by a centre under a force at its middle."""
def turning_peak_to_valley(
    *,
    feed_per_rev: QuantityLike,
    nose_radius: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Ideal peak-to-valley height that a nose radius leaves in turning."""
def turning_mean_roughness(
    *,
    feed_per_rev: QuantityLike,
    nose_radius: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Ideal arithmetic mean roughness that a nose radius leaves in turning."""
def nose_radius_for_mean_roughness(
    *,
    feed_per_rev: QuantityLike,
    mean_roughness: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Nose radius that leaves a wanted ideal mean roughness at a feed in turning."""
def feed_for_mean_roughness(
    *,
    mean_roughness: QuantityLike,
    nose_radius: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed that leaves a wanted ideal mean roughness with a nose radius in turning."""
def turning_roughness_estimate(
    *,
    feed_per_rev: QuantityLike,
    nose_radius: QuantityLike,
    roughness_ratio: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean roughness to expect in turning: the shop form of the ideal one times a ratio of real to ideal."""
def feed_for_roughness_estimate(
    *,
    mean_roughness: QuantityLike,
    nose_radius: QuantityLike,
    roughness_ratio: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed that leaves a wanted mean roughness in turning, with a ratio of real to ideal roughness."""
def feed_for_peak_to_valley(
    *,
    peak_to_valley: QuantityLike,
    nose_radius: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed that leaves a wanted ideal peak-to-valley height with a nose radius in turning."""
def sharp_tool_peak_to_valley(
    *,
    feed_per_rev: QuantityLike,
    side_cutting_edge_angle: QuantityLike,
    end_cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Ideal peak-to-valley height that a tool without nose radius leaves in turning."""
def feed_mark_height(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the feed marks that peripheral milling leaves."""
def feed_mark_height_up(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    teeth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the feed marks that up (conventional) peripheral milling leaves."""
def feed_mark_height_down(
    *,
    feed_per_tooth: QuantityLike,
    diameter: QuantityLike,
    teeth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the feed marks that down (climb) peripheral milling leaves."""
def feed_mark_mean_roughness(
    *,
    feed_mark_height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Arithmetic mean roughness of a profile of feed marks."""
def scallop_height(
    *,
    ball_diameter: QuantityLike,
    stepover: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the scallops that a ball-nosed cutter leaves between two passes over a flat surface."""
def stepover_for_scallop(
    *,
    ball_diameter: QuantityLike,
    scallop_height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover of a ball-nosed cutter that leaves a wanted scallop height on a flat surface."""
def tilted_corner_effective_diameter(
    *,
    diameter: QuantityLike,
    corner_radius: QuantityLike,
    axial_depth: QuantityLike,
    tilt_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the circle that cuts at the top of the engaged edge of a tilted cutter with a corner radius."""
def tilted_edge_mean_thickness_ratio(
    *,
    edge_diameter: QuantityLike,
    axial_depth: QuantityLike,
    tilt_angle: QuantityLike = '0 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean chip thickness along the engaged arc of a tilted ball or corner radius over that of an edge along the axis."""
def contact_diameter(
    *,
    diameter: QuantityLike,
    corner_radius: QuantityLike,
    tilt_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the circle on which the point that leaves the finished surface runs."""
def tilted_corner_scallop_radius(
    *,
    diameter: QuantityLike,
    corner_radius: QuantityLike,
    tilt_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Radius of the ball that leaves the same scallops as a cutter with a corner radius tilted along its path."""
def corner_scallop_height(
    *,
    diameter: QuantityLike,
    corner_radius: QuantityLike,
    stepover: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the ridges that a cutter with a corner radius leaves between two passes over a flat surface."""
def corner_stepover_for_scallop(
    *,
    diameter: QuantityLike,
    corner_radius: QuantityLike,
    scallop_height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover of a cutter with a corner radius that leaves ridges of a wanted height on a flat surface."""
def convex_scallop_height(
    *,
    ball_diameter: QuantityLike,
    surface_radius: QuantityLike,
    stepover: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the scallops that a ball-nosed cutter leaves between two passes over a convex surface."""
def concave_scallop_height(
    *,
    ball_diameter: QuantityLike,
    surface_radius: QuantityLike,
    stepover: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the scallops that a ball-nosed cutter leaves between two passes over a hollow surface."""
def convex_stepover_for_scallop(
    *,
    ball_diameter: QuantityLike,
    surface_radius: QuantityLike,
    scallop_height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover of a ball-nosed cutter that leaves a wanted scallop height on a convex surface."""
def concave_stepover_for_scallop(
    *,
    ball_diameter: QuantityLike,
    surface_radius: QuantityLike,
    scallop_height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover of a ball-nosed cutter that leaves a wanted scallop height on a hollow surface."""
def stepover_of_plan_step(
    *,
    plan_step: QuantityLike,
    slope_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover along a sloping surface of passes that are stepped sideways."""
def plan_step_for_stepover(
    *,
    stepover: QuantityLike,
    slope_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Sideways step of passes that are a stepover apart along a sloping surface."""
def stepover_of_level_step(
    *,
    level_step: QuantityLike,
    slope_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover along a sloping surface of passes that are stepped down."""
def level_step_for_stepover(
    *,
    stepover: QuantityLike,
    slope_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Step down of passes that are a stepover apart along a sloping surface."""
def raster_passes(
    *,
    width: QuantityLike,
    stepover: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Passes side by side, the first on one edge of an area and the last on the other, no further apart than a stepover."""
def raster_stepover(
    *,
    width: QuantityLike,
    passes: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Stepover of equal passes over an area, the first on one edge and the last on the other."""
def pass_count(
    *,
    total: QuantityLike,
    largest_step: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Equal passes that take a depth, length or width, none larger than a largest step."""
def equal_pass(
    *,
    total: QuantityLike,
    passes: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """What each of several equal passes takes."""
def passes_time(
    *,
    passes: QuantityLike,
    travel: QuantityLike,
    feed_speed: QuantityLike,
    link_time: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of equal passes with the moves between them."""
def cone_cutting_edge_angle(
    *,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting-edge angle of a conical cutter."""
def chamfer_depth(
    *,
    chamfer_width: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth along the axis of a chamfer whose width is measured across it."""
def chamfer_width(
    *,
    axial_depth: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Width across the axis of a chamfer of a depth along it."""
def chamfer_outer_diameter(
    *,
    tip_diameter: QuantityLike,
    chamfer_width: QuantityLike,
    tip_clearance: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest diameter that cuts on a conical cutter along an edge."""
def chamfer_removal_rate(
    *,
    axial_depth: QuantityLike,
    chamfer_width: QuantityLike,
    table_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a chamfer along an edge."""
def inside_arc_feed(
    *,
    contour_feed: QuantityLike,
    feature_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed of the cutter centre for the feed wanted at an inside contour."""
def outside_arc_feed(
    *,
    contour_feed: QuantityLike,
    feature_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed of the cutter centre for the feed wanted at an outside contour."""
def bore_radial_depth(
    *,
    finished_diameter: QuantityLike,
    start_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Radial depth on a straight wall that engages the cutter as enlarging a bore does."""
def boss_radial_depth(
    *,
    finished_diameter: QuantityLike,
    start_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Radial depth on a straight wall that engages the cutter as turning down a boss does."""
def helix_ramp_angle(
    *,
    axial_per_turn: QuantityLike,
    feature_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Ramp angle of the cutter centre on a helix into a bore."""
def inside_path_diameter(
    *,
    feature_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the circle that the cutter centre runs on inside a contour."""
def outside_path_diameter(
    *,
    feature_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter of the circle that the cutter centre runs on around a contour."""
def axial_per_turn_for_ramp(
    *,
    ramp_angle: QuantityLike,
    path_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Axial travel a turn at which the helix of the cutter centre has a ramp angle."""
def helix_turn_length(
    *,
    path_diameter: QuantityLike,
    axial_per_turn: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of the cutter centre in one turn of a helix."""
def helix_turns(
    *,
    axial_depth: QuantityLike,
    axial_per_turn: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Turns of a helix over an axial depth."""
def helix_travel(
    *,
    axial_depth: QuantityLike,
    axial_per_turn: QuantityLike,
    path_diameter: QuantityLike,
    floor_turns: QuantityLike = '1 turns',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of the cutter centre on a helix into a bore, with full circles on its floor."""
def helix_axial_feed(
    *,
    centre_feed: QuantityLike,
    path_diameter: QuantityLike,
    axial_per_turn: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Part of the cutter centre's feed on a helix that runs along the axis."""
def half_circle_entry_length(
    *,
    path_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of a half circle that leads the cutter centre from the axis of a bore onto its circular path."""
def ramp_length(
    *,
    axial_depth: QuantityLike,
    ramp_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Length along the table in which a straight ramp reaches a depth."""
def core_ramp_angle(
    *,
    core_clearance: QuantityLike,
    core_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Steepest straight ramp of a cutter that does not cut at its centre."""
def smallest_helix_bore(
    *,
    cutter_diameter: QuantityLike,
    core_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Smallest bore that a cutter which does not cut at its centre can sink into solid work."""
def largest_helix_bore(
    *,
    cutter_diameter: QuantityLike,
    corner_radius: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest bore that one helix sinks into solid work with a flat floor."""
def largest_plunge_step(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Step between two plunges at which nothing is left standing between them."""
def through_hole_travel(
    *,
    thickness: QuantityLike,
    point_length: QuantityLike,
    approach: QuantityLike,
    overtravel: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel at feed of a drill through the work."""
def blind_hole_travel(
    *,
    depth: QuantityLike,
    point_length: QuantityLike,
    approach: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel at feed of a drill into a blind hole whose depth counts at full diameter."""
def full_diameter_depth(
    *,
    tip_depth: QuantityLike,
    point_length: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth at full diameter of a blind hole whose depth counts to the tip of the drill."""
def peck_count(
    *,
    travel: QuantityLike,
    peck: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Pecks of a drill for a travel."""
def peck_cycle_time(
    *,
    travel: QuantityLike,
    peck: QuantityLike,
    reentry_clearance: QuantityLike,
    feed_speed: QuantityLike,
    rapid_speed: QuantityLike,
    acceleration: QuantityLike,
    dwell: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of drilling a hole in pecks, out of the hole after each."""
def chip_break_cycle_time(
    *,
    travel: QuantityLike,
    peck: QuantityLike,
    retract: QuantityLike,
    feed_speed: QuantityLike,
    rapid_speed: QuantityLike,
    acceleration: QuantityLike,
    dwell: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of drilling a hole in pecks with a short retract after each, that breaks the chip."""
def feed_out_cycle_time(
    *,
    travel: QuantityLike,
    feed_speed: QuantityLike,
    return_ratio: QuantityLike = '1',
    dwell: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a hole whose tool goes in at feed, dwells, and comes out at feed."""
def hole_depth_ratio(
    *,
    depth: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth of a hole over its diameter."""
def countersink_depth(
    *,
    countersink_diameter: QuantityLike,
    hole_diameter: QuantityLike,
    included_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth of feed from first contact with the hole's rim to the diameter of a countersink."""
def countersink_diameter(
    *,
    depth: QuantityLike,
    hole_diameter: QuantityLike,
    included_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter at the surface that a countersink reaches at a depth from first contact with the hole's rim."""
def smallest_reaming_stock(
    *,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Least stock on the diameter that a machine reamer needs to cut and not to rub."""
def largest_reaming_stock(
    *,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Most stock on the diameter to leave for a machine reamer."""
def reaming_drill_diameter(
    *,
    diameter: QuantityLike,
    stock: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Drill diameter that leaves a stock for the reamer."""
def peripheral_approach(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of a cutter from first contact to its full radial depth in slab, side or face milling from one edge."""
def face_approach_centred(
    *,
    diameter: QuantityLike,
    radial_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of a face mill from first contact to the full width of work that is centred on it."""
def drill_point_length(
    *,
    diameter: QuantityLike,
    point_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Length of a drill's point."""
def cutting_time(
    *,
    travel: QuantityLike,
    feed_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a travel at feed."""
def facing_time_constant_speed(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    cutting_speed: QuantityLike,
    feed_per_rev: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of facing or parting at constant cutting speed."""
def facing_time_limited_speed(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    cutting_speed: QuantityLike,
    feed_per_rev: QuantityLike,
    maximum_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of facing or parting at constant cutting speed up to a limit of the spindle speed."""
def tapping_time(
    *,
    depth: QuantityLike,
    approach: QuantityLike,
    lead: QuantityLike,
    spindle_speed: QuantityLike,
    reverse_speed: QuantityLike,
    reversal_time: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of tapping one hole: in, out, and two reversals of the spindle."""
def rapid_time(
    *,
    distance: QuantityLike,
    rapid_speed: QuantityLike,
    acceleration: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a rapid move from rest to rest."""
def band_saw_time(
    *,
    area: QuantityLike,
    cutting_rate: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of sawing through a section."""
def tool_change_time_per_part(
    *,
    cutting_time: QuantityLike,
    change_time: QuantityLike,
    tool_life: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Share of the tool change that falls on one part."""
def standard_time(
    *,
    normal_time: QuantityLike,
    allowance: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Standard time: the normal time with an allowance."""
def path_length(
    *,
    travel_x: QuantityLike,
    travel_y: QuantityLike,
    travel_z: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Length of a straight path over three axes."""
def simultaneous_move_time(
    *,
    time_x: QuantityLike,
    time_y: QuantityLike,
    time_z: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a move in which each axis goes its own way at its own pace."""
def move_peak_speed(
    *,
    distance: QuantityLike,
    set_speed: QuantityLike,
    acceleration: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Highest speed that a move from rest to rest reaches."""
def hand_cranked_time(
    *,
    travel: QuantityLike,
    travel_per_turn: QuantityLike,
    pace: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a travel that is cranked by hand."""
def learning_unit_time(
    *,
    first_unit_time: QuantityLike,
    learning_rate: QuantityLike,
    unit: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a unit after learning on the units before it."""
def learning_total_time_unit_curve(
    *,
    first_unit_time: QuantityLike,
    learning_rate: QuantityLike,
    units: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of the first units together, where the time of a unit falls by the rate at every doubling."""
def learning_average_time(
    *,
    first_unit_time: QuantityLike,
    learning_rate: QuantityLike,
    units: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean time of the first units, where that mean falls by the rate at every doubling."""
def learning_total_time_cumulative_average(
    *,
    first_unit_time: QuantityLike,
    learning_rate: QuantityLike,
    units: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of the first units together, where their mean falls by the rate at every doubling."""
def mean_unit_time(
    *,
    total_time: QuantityLike,
    units: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean time of the units of a lot."""
def two_face_friction_capacity(
    *,
    clamping_force: QuantityLike,
    friction: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest force along the jaws or upward that friction on both jaw faces can hold."""
def required_clamping_force(
    *,
    force_along: QuantityLike,
    force_lift: QuantityLike,
    friction: QuantityLike,
    safety_factor: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Clamping force that keeps the work from sliding along the jaws or lifting."""
def clamping_force_across(
    *,
    force_across: QuantityLike,
    safety_factor: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Clamping force that keeps a force across the jaws from opening the clamp."""
def tipping_clamping_force(
    *,
    force_across: QuantityLike,
    height: QuantityLike,
    grip_height: QuantityLike,
    work_width: QuantityLike,
    friction: QuantityLike,
    safety_factor: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Clamping force that keeps a force across the jaws from tipping the work about the line of the jaws."""
def screw_clamping_force(
    *,
    torque: QuantityLike,
    mean_diameter: QuantityLike,
    lead: QuantityLike,
    thread_friction: QuantityLike,
    thread_half_angle: QuantityLike = '0 deg',
    collar_diameter: QuantityLike = '0 mm',
    collar_friction: QuantityLike = '0',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Force of a screw from the torque on it, with friction in its thread and under its collar."""
def screw_clamping_force_efficiency(
    *,
    torque: QuantityLike,
    lead: QuantityLike,
    efficiency: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Force of a screw from the torque on it and its efficiency."""
def tool_life(
    *,
    cutting_speed: QuantityLike,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life at a cutting speed."""
def speed_for_life(
    *,
    tool_life: QuantityLike,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed that gives a tool life."""
def taylor_exponent_from_two(
    *,
    first_speed: QuantityLike,
    first_life: QuantityLike,
    second_speed: QuantityLike,
    second_life: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Taylor's exponent from the lives at two cutting speeds."""
def taylor_speed_from_two(
    *,
    first_speed: QuantityLike,
    first_life: QuantityLike,
    second_speed: QuantityLike,
    second_life: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed for a life of one minute from the lives at two cutting speeds."""
def feed_exponent_from_two(
    *,
    first_feed: QuantityLike,
    first_life: QuantityLike,
    second_feed: QuantityLike,
    second_life: QuantityLike,
    taylor_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Exponent of the feed in the extended Taylor equation from the lives at two feeds and one cutting speed."""
def scaled_tool_life(
    *,
    reference_life: QuantityLike,
    speed_ratio: QuantityLike,
    feed_ratio: QuantityLike,
    depth_ratio: QuantityLike,
    taylor_exponent: QuantityLike,
    feed_exponent: QuantityLike,
    depth_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life relative to a reference cut at another speed, feed and depth."""
def extended_tool_life(
    *,
    cutting_speed: QuantityLike,
    feed_per_rev: QuantityLike,
    depth_of_cut: QuantityLike,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    feed_exponent: QuantityLike,
    depth_exponent: QuantityLike,
    reference_feed: QuantityLike,
    reference_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life at a cutting speed, feed and depth of cut (extended Taylor equation)."""
def extended_speed_for_life(
    *,
    tool_life: QuantityLike,
    feed_per_rev: QuantityLike,
    depth_of_cut: QuantityLike,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    feed_exponent: QuantityLike,
    depth_exponent: QuantityLike,
    reference_feed: QuantityLike,
    reference_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed that gives a tool life at a feed and depth of cut (extended Taylor equation)."""
def tool_life_by_powers(
    *,
    reference_life: QuantityLike,
    speed_ratio: QuantityLike,
    feed_ratio: QuantityLike,
    depth_ratio: QuantityLike,
    speed_power: QuantityLike,
    feed_power: QuantityLike,
    depth_power: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life relative to a reference cut, by the powers of the equation that is solved for the life."""
def taylor_exponent_from_power(
    *,
    speed_power: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Taylor's exponent of the life from the power of the speed."""
def exponent_from_power(
    *,
    power: QuantityLike,
    taylor_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Exponent of feed or depth in v T^n f^a d^b = C from its power in the equation solved for the life."""
def taylor_speed_from_one(
    *,
    cutting_speed: QuantityLike,
    tool_life: QuantityLike,
    taylor_exponent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed for a life of one minute from the life at one cutting speed and the exponent."""
def tool_life_for_criterion(
    *,
    tool_life: QuantityLike,
    flank_wear: QuantityLike,
    new_flank_wear: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life to another width of flank wear."""
def taylor_speed_for_criterion(
    *,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    flank_wear: QuantityLike,
    new_flank_wear: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed for a life of one minute with another width of flank wear."""
def crater_depth_limit(
    *,
    feed_per_rev: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth of crater that ends the life of a carbide edge in a test."""
def mean_from_median_life(
    *,
    median_life: QuantityLike,
    log_deviation: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean tool life from the median life that a fit of logarithms gives."""
def minimum_cost_life(
    *,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
    edge_cost: QuantityLike,
    machine_rate: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life at which a part costs least."""
def maximum_production_life(
    *,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life at which a part takes least time."""
def minimum_cost_speed(
    *,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
    edge_cost: QuantityLike,
    machine_rate: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed at which a part costs least."""
def maximum_production_speed(
    *,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed at which a part takes least time."""
def unit_cost(
    *,
    handling_time: QuantityLike,
    cutting_time: QuantityLike,
    change_time: QuantityLike,
    tool_life: QuantityLike,
    edge_cost: QuantityLike,
    machine_rate: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of machining one part, with its share of edges and tool changes."""
def unit_cost_whole_parts(
    *,
    handling_time: QuantityLike,
    cutting_time: QuantityLike,
    change_time: QuantityLike,
    tool_life: QuantityLike,
    edge_cost: QuantityLike,
    machine_rate: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of machining one part where an edge makes whole parts only."""
def unit_time(
    *,
    handling_time: QuantityLike,
    cutting_time: QuantityLike,
    change_time: QuantityLike,
    tool_life: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of one part, with its share of tool changes."""
def unit_time_whole_parts(
    *,
    handling_time: QuantityLike,
    cutting_time: QuantityLike,
    change_time: QuantityLike,
    tool_life: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of one part where an edge makes whole parts only."""
def mean_parts_per_edge(
    *,
    cutting_time: QuantityLike,
    tool_life: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Parts that one edge makes, as a mean over many."""
def whole_parts_per_edge(
    *,
    cutting_time: QuantityLike,
    tool_life: QuantityLike,
    in_cut_share: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Whole parts that one edge makes."""
def insert_edge_cost(
    *,
    insert_price: QuantityLike,
    edges: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of one cutting edge of an insert."""
def reground_edge_cost(
    *,
    tool_price: QuantityLike,
    regrinds: QuantityLike,
    regrind_cost: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of one life of a tool that is reground."""
def lot_time(
    *,
    setup_time: QuantityLike,
    cycle_time: QuantityLike,
    lot_size: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a lot: set-up and all its parts."""
def setup_time_per_part(
    *,
    setup_time: QuantityLike,
    lot_size: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Share of the set-up that falls on one part of a lot."""
def gauging_time_per_part(
    *,
    gauging_time: QuantityLike,
    gauged_every: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Share of gauging that falls on one part."""
def change_time_per_part(
    *,
    change_time: QuantityLike,
    parts_per_edge: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Share of the tool change that falls on one part, from the parts an edge makes."""
def edge_cost_per_part(
    *,
    edge_cost: QuantityLike,
    parts_per_edge: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of cutting edges that falls on one part."""
def normal_time_per_part(
    *,
    handling_time: QuantityLike,
    cutting_time: QuantityLike,
    moving_time: QuantityLike = '0 s',
    change_share: QuantityLike = '0 s',
    gauging_share: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Normal time of one part: everything that recurs, before allowances."""
def standard_time_by_share_of_standard(
    *,
    normal_time: QuantityLike,
    allowance: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Standard time: the normal time with an allowance that is a share of the standard time."""
def allowance_time(
    *,
    standard_time: QuantityLike,
    normal_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Allowance in a standard time: for needs, fatigue and delays."""
def lot_time_per_part(
    *,
    setup_share: QuantityLike,
    handling_time: QuantityLike,
    cutting_time: QuantityLike,
    moving_time: QuantityLike = '0 s',
    change_share: QuantityLike = '0 s',
    gauging_share: QuantityLike = '0 s',
    allowance_time: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of one part of a lot, with its shares."""
def time_cost(
    *,
    time: QuantityLike,
    machine_rate: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of a time at the machine."""
def lot_cost_per_part(
    *,
    setup_cost: QuantityLike,
    handling_cost: QuantityLike,
    cutting_cost: QuantityLike,
    moving_cost: QuantityLike = '0',
    change_cost: QuantityLike = '0',
    gauging_cost: QuantityLike = '0',
    allowance_cost: QuantityLike = '0',
    edge_share: QuantityLike = '0',
    material_cost: QuantityLike = '0',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of one part of a lot, share by share."""
def lot_cost(
    *,
    cost_per_part: QuantityLike,
    lot_size: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of a lot."""
def tap_drill_diameter(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    thread_percent: QuantityLike,
    thread_basis: QuantityLike = '1.2990381',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Drill diameter that leaves a percentage of thread."""
def thread_percent(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    drill_diameter: QuantityLike,
    thread_basis: QuantityLike = '1.2990381',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Percentage of thread that a drill leaves."""
def threading_passes(
    *,
    thread_height: QuantityLike,
    first_depth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Single-point passes of equal chip area whose first one is not deeper than allowed."""
def threading_depth(
    *,
    thread_height: QuantityLike,
    passes: QuantityLike,
    index: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth from the crest after a pass of single-point threading at equal chip area."""
def thread_mill_largest_diameter(
    *,
    major_diameter: QuantityLike,
    diameter_ratio: QuantityLike = '0.7',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest thread mill for an internal thread."""
def internal_thread_mill_widening(
    *,
    pitch: QuantityLike,
    feature_diameter: QuantityLike,
    cutter_diameter: QuantityLike,
    flank_angle: QuantityLike = '29.999999999999997 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Axial amount by which a ringed cutter of the thread's own profile mills each flank of an internal thread too wide."""
def thread_mill_axial_shift(
    *,
    cutting_length: QuantityLike,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Axial shift between two turns of a thread mill with several rings: the whole pitches its rings cover."""
def thread_milling_travel(
    *,
    turn_length: QuantityLike,
    turns: QuantityLike,
    entry_length: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of the cutter centre at one axial position of a thread mill, or at one level of a bore: in, turns, out."""
def thread_milling_removal_rate(
    *,
    pitch: QuantityLike,
    thread_length: QuantityLike,
    pitch_diameter: QuantityLike,
    turn_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean removal rate while a thread mill cuts an internal thread of 60 deg from its minor diameter to its full depth in one turn."""
def external_thread_milling_removal_rate(
    *,
    pitch: QuantityLike,
    thread_length: QuantityLike,
    pitch_diameter: QuantityLike,
    turn_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean removal rate while a thread mill cuts an external thread of 60 deg from its major diameter to its full depth in one turn."""
def thread_triangle_height(
    *,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of the fundamental triangle of a 60 deg thread."""
def internal_thread_height(
    *,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of a full 60 deg internal thread: the basic overlap of nut and screw."""
def external_thread_height(
    *,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Height of a 60 deg external thread with a rounded root."""
def thread_pitch_diameter(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Basic pitch diameter of a 60 deg thread."""
def thread_minor_diameter(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Basic minor diameter of a 60 deg internal thread."""
def thread_root_diameter(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Root diameter of a 60 deg external thread with a rounded root."""
def thread_lead(
    *,
    pitch: QuantityLike,
    starts: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Lead of a thread: the advance of one turn."""
def pitch_from_threads_per_inch(
    *,
    threads_per_inch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Pitch of a thread that is named by its threads per inch."""
def numbered_screw_diameter(
    *,
    size: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Major diameter of a numbered machine-screw size."""
def tap_drill_by_rule(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tap drill by the rule of the workshop: major diameter less the pitch."""
def form_tap_drill_diameter(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    thread_percent: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Drill diameter for a forming tap that is to leave a percentage of thread."""
def form_thread_percent(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    drill_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Percentage of thread that a forming tap leaves in a drilled hole."""
def tapping_hole_depth(
    *,
    thread_depth: QuantityLike,
    pitch: QuantityLike,
    chamfer_threads: QuantityLike,
    clearance: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth at full diameter of the drilled hole that a tapped depth needs."""
def tap_chip_thickness(
    *,
    major_diameter: QuantityLike,
    drill_diameter: QuantityLike,
    chamfer_threads: QuantityLike,
    flutes: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Undeformed chip thickness of a tooth in the chamfer of a cutting tap."""
def tapping_torque(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    specific_cutting_force: QuantityLike,
    factor: QuantityLike = '1.5',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque of a cutting tap."""
def tap_stopping_turns(
    *,
    spindle_speed: QuantityLike,
    stopping_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Turns that a tap makes while the spindle comes to a stop."""
def tap_stopping_travel(
    *,
    lead: QuantityLike,
    spindle_speed: QuantityLike,
    stopping_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth that a tap goes on while the spindle comes to a stop."""
def tapping_speed_for_stopping_travel(
    *,
    stopping_travel: QuantityLike,
    lead: QuantityLike,
    stopping_time: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Spindle speed at which a tap stops within a length."""
def compound_infeed(
    *,
    thread_height: QuantityLike,
    compound_angle: QuantityLike = '29.499999999999996 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Infeed of a compound slide that is set near the flank of the thread."""
def threading_infeed(
    *,
    thread_height: QuantityLike,
    passes: QuantityLike,
    index: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Infeed of one pass of single-point threading at equal chip area."""
def threading_chip_section(
    *,
    depth: QuantityLike,
    previous_depth: QuantityLike,
    tool_flat: QuantityLike = '0 mm',
    flank_angle: QuantityLike = '29.999999999999997 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Section that a pass of single-point threading cuts."""
def threading_edge_length(
    *,
    depth: QuantityLike,
    tool_flat: QuantityLike = '0 mm',
    flank_angle: QuantityLike = '29.999999999999997 deg',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Length of edge in the cut of a threading tool that is fed in square to the axis."""
def threading_mean_chip_thickness(
    *,
    chip_section: QuantityLike,
    edge_length: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean undeformed chip thickness of a pass of single-point threading."""
def threading_run_in(
    *,
    lead: QuantityLike,
    spindle_speed: QuantityLike,
    acceleration: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Shortest run-in in which the carriage reaches the speed of a thread."""
def threading_speed_for_run_in(
    *,
    lead: QuantityLike,
    run_in: QuantityLike,
    acceleration: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest spindle speed at which a run-in suffices for a thread."""
def threading_speed_for_carriage(
    *,
    carriage_speed: QuantityLike,
    lead: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest spindle speed of a thread that the carriage can follow."""
def threading_most_passes(
    *,
    thread_height: QuantityLike,
    smallest_infeed: QuantityLike = '0.05 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Most passes of single-point threading at equal chip area whose last infeed still cuts."""
def threading_pass_count(
    *,
    passes: QuantityLike,
    spring_passes: QuantityLike = '1',
    starts: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Passes of single-point threading over all starts, spring passes included."""
def threading_time(
    *,
    length: QuantityLike,
    run_in: QuantityLike = '0 mm',
    run_out: QuantityLike = '0 mm',
    lead: QuantityLike,
    spindle_speed: QuantityLike,
    passes: QuantityLike,
    return_time: QuantityLike = '0 s',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of single-point threading over all passes."""
def cutting_edge_angle_of_lead_angle(
    *,
    lead_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool cutting-edge angle of a turning tool whose lead angle is given."""
def depth_of_cut_from_diameters(
    *,
    larger_diameter: QuantityLike,
    smaller_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth of cut between the diameters before and after a turning or boring pass."""
def nose_depth(
    *,
    nose_radius: QuantityLike,
    cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Depth of cut up to which the nose of a turning tool cuts alone."""
def turning_depth_cap(
    *,
    edge_length: QuantityLike,
    cutting_edge_angle: QuantityLike,
    edge_share: QuantityLike = '0.6666666666666666',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest depth of cut for the length of a turning tool's edge."""
def turning_edge_length(
    *,
    depth_of_cut: QuantityLike,
    feed_per_rev: QuantityLike,
    nose_radius: QuantityLike,
    cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Length of edge in the cut of a turning tool with a nose radius."""
def turning_mean_chip_thickness(
    *,
    depth_of_cut: QuantityLike,
    feed_per_rev: QuantityLike,
    edge_length: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean undeformed chip thickness over the edge in the cut in turning."""
def turning_chord_angle(
    *,
    depth_of_cut: QuantityLike,
    feed_per_rev: QuantityLike,
    nose_radius: QuantityLike,
    cutting_edge_angle: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting-edge angle of the chord between the ends of the edge in the cut of a tool with a nose radius."""
def turning_feed_force(
    *,
    cutting_force: QuantityLike,
    cutting_edge_angle: QuantityLike,
    thrust_share: QuantityLike = '0.6',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Feed force of a turning tool, as a rough share of the cutting force."""
def turning_passive_force(
    *,
    cutting_force: QuantityLike,
    cutting_edge_angle: QuantityLike,
    thrust_share: QuantityLike = '0.6',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Passive (radial) force of a turning tool, as a rough share of the cutting force."""
def turning_torque(
    *,
    cutting_force: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Torque of a cutting force at the work of a lathe."""
def diameter_error_of_radial_deflection(
    *,
    radial_deflection: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Error of the diameter that a radial deflection of tool or work leaves."""
def radius_error_of_tangential_deflection(
    *,
    tangential_deflection: QuantityLike,
    diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Error of the radius that a drop of the tool tip along the cutting direction leaves."""
def turning_approach(
    *,
    depth_of_cut: QuantityLike,
    cutting_edge_angle: QuantityLike,
    clearance: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of a turning tool from its clearance to the full depth of cut."""
def turning_travel(
    *,
    length: QuantityLike,
    approach: QuantityLike,
    run_out: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Travel of a turning pass with approach and run-out."""
def constant_speed_knee_diameter(
    *,
    cutting_speed: QuantityLike,
    maximum_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Diameter below which a spindle held at constant cutting speed stays at its largest speed."""
def facing_time_fixed_speed(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    feed_per_rev: QuantityLike,
    spindle_speed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of facing or parting at one spindle speed."""
def parting_time(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    slow_diameter: QuantityLike,
    cutting_speed: QuantityLike,
    feed_per_rev: QuantityLike,
    maximum_speed: QuantityLike,
    feed_share: QuantityLike = '0.5',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of parting at constant cutting speed up to a limit of the spindle speed, with less feed near the centre."""
def parting_overhang_cap(
    *,
    blade_width: QuantityLike,
    overhang_ratio: QuantityLike = '8',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Longest overhang of a parting blade for its width."""
def required_chuck_grip(
    *,
    cutting_force: QuantityLike,
    feed_force: QuantityLike = '0 N',
    cutting_diameter: QuantityLike,
    grip_diameter: QuantityLike,
    friction: QuantityLike,
    safety_factor: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Sum of the jaw forces that keeps the work from slipping in a lathe chuck."""
def jaw_grip_at_speed(
    *,
    static_grip: QuantityLike,
    spindle_speed: QuantityLike,
    maximum_speed: QuantityLike,
    loss_at_maximum: QuantityLike = '0.6666666666666666',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Grip of a lathe chuck's jaws from outside, at a spindle speed."""
def static_grip_for_speed(
    *,
    required_grip: QuantityLike,
    spindle_speed: QuantityLike,
    maximum_speed: QuantityLike,
    loss_at_maximum: QuantityLike = '0.6666666666666666',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Grip at rest of a lathe chuck whose jaws still hold with a wanted grip at a spindle speed."""
def chuck_speed_for_grip(
    *,
    static_grip: QuantityLike,
    required_grip: QuantityLike,
    maximum_speed: QuantityLike,
    loss_at_maximum: QuantityLike = '0.6666666666666666',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Largest spindle speed at which a lathe chuck's jaws keep a grip from outside."""
def saw_tooth_pitch(
    *,
    teeth_per_inch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tooth pitch of a saw blade whose teeth per inch are given."""
def teeth_in_work(
    *,
    width: QuantityLike,
    tooth_pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Teeth of a saw blade that are in the work at one time."""
def saw_pitch_for_teeth(
    *,
    width: QuantityLike,
    teeth_in_work: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tooth pitch that keeps a number of teeth in the work."""
def saw_stock_factor(
    *,
    width: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Factor on the blade speed of a bimetal blade for the width of the stock."""
def saw_blade_speed(
    *,
    table_speed: QuantityLike,
    stock_factor: QuantityLike = '1',
    dry_factor: QuantityLike = '1',
    blade_factor: QuantityLike = '1',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Blade speed of a band saw from the speed of a table."""
def saw_feed_speed(
    *,
    blade_speed: QuantityLike,
    feed_per_tooth: QuantityLike,
    tooth_pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Speed at which a saw blade sinks into the work at a feed per tooth."""
def saw_teeth_per_turn(
    *,
    wheel_diameter: QuantityLike,
    tooth_pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Teeth of a saw blade that pass while its driving wheel turns once."""
def saw_feed_per_tooth(
    *,
    feed_speed: QuantityLike,
    blade_speed: QuantityLike,
    tooth_pitch: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Advance per tooth of a saw blade that a feed speed amounts to."""
def sawing_area_rate(
    *,
    feed_speed: QuantityLike,
    width: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Area that a saw cuts per time."""
def saw_feed_speed_for_area_rate(
    *,
    area_rate: QuantityLike,
    width: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Speed at which a saw blade sinks into the work at an area per time."""
def sawing_removal_rate(
    *,
    area_rate: QuantityLike,
    kerf: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a saw."""
def round_section_area(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike = '0 mm',
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Area of a round section, solid or a tube."""
def rectangular_section_area(
    *,
    width: QuantityLike,
    height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Area of a rectangular section."""
def mean_sawn_width(
    *,
    area: QuantityLike,
    height: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Mean width of cut of a section that a blade sinks through."""
def tube_crossing_length(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    offset: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Length of wall of a round tube that a saw blade crosses at a height."""
def tube_longest_crossing(
    *,
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Longest single crossing of the wall of a round tube, where the blade touches the bore."""
def stability_limit_single_mode(
    *,
    stiffness: QuantityLike,
    damping_ratio: QuantityLike,
    cutting_coefficient: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Smallest limit width of cut of one vibration mode, over all speeds."""
def stability_limit_slot_single_mode(
    *,
    stiffness: QuantityLike,
    damping_ratio: QuantityLike,
    krc: QuantityLike,
    teeth: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Smallest limit depth of a slot with one vibration mode along or across the feed, over all speeds."""
def best_spindle_speed(
    *,
    natural_frequency: QuantityLike,
    teeth: QuantityLike,
    waves: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Spindle speed at which a whole number of vibrations falls on a tooth: the widest stable pockets."""
