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
    "milling_removal_rate",
    "turning_removal_rate",
    "drilling_removal_rate",
    "plunge_removal_rate",
    "specific_cutting_force",
    "chip_section_force",
    "tangential_force",
    "specific_energy_from_force",
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
    "cutting_power",
    "power_from_force",
    "arc_mean_cutting_power",
    "unit_power_at_chip",
    "motor_power",
    "cutting_torque",
    "power_from_torque",
    "available_torque",
    "available_power",
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
    "turning_peak_to_valley",
    "turning_mean_roughness",
    "nose_radius_for_mean_roughness",
    "feed_for_mean_roughness",
    "feed_for_peak_to_valley",
    "sharp_tool_peak_to_valley",
    "feed_mark_height",
    "feed_mark_height_up",
    "feed_mark_height_down",
    "feed_mark_mean_roughness",
    "scallop_height",
    "stepover_for_scallop",
    "inside_arc_feed",
    "outside_arc_feed",
    "bore_radial_depth",
    "boss_radial_depth",
    "helix_ramp_angle",
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
    "learning_unit_time",
    "standard_time",
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
    "minimum_cost_life",
    "maximum_production_life",
    "minimum_cost_speed",
    "maximum_production_speed",
    "unit_cost",
    "unit_cost_whole_parts",
    "lot_time",
    "tap_drill_diameter",
    "thread_percent",
    "threading_passes",
    "threading_depth",
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
def milling_removal_rate(
    *,
    axial_depth: QuantityLike,
    radial_depth: QuantityLike,
    table_feed: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Removal rate of a milling cut."""
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
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Share of the tool change that falls on one part."""
def learning_unit_time(
    *,
    first_unit_time: QuantityLike,
    learning_rate: QuantityLike,
    unit: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a unit after learning on the units before it."""
def standard_time(
    *,
    normal_time: QuantityLike,
    allowance: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Standard time: the normal time with an allowance."""
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
def minimum_cost_life(
    *,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
    edge_cost: QuantityLike,
    machine_rate: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Tool life at which a part costs least."""
def maximum_production_life(
    *,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
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
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cutting speed at which a part costs least."""
def maximum_production_speed(
    *,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    change_time: QuantityLike,
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
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Cost of machining one part where an edge makes whole parts only."""
def lot_time(
    *,
    setup_time: QuantityLike,
    cycle_time: QuantityLike,
    lot_size: QuantityLike,
    on_bad_row: Literal["raise", "nan"] = "raise",
) -> Quantity:
    """Time of a lot: set-up and all its parts."""
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
