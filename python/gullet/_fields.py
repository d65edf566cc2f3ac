"""Types of the attributes of records and sections; written by generate_stubs.py."""

from __future__ import annotations

from ._gullet import Quantity


class SettingsFields:
    __slots__ = ()
    wanted_speed: Quantity
    """Spindle speed that the wanted cutting speed would need."""
    spindle_speed: Quantity
    """Spindle speed the machine really has."""
    cutting_speed: Quantity
    """Cutting speed at that spindle speed."""
    chip_load: Quantity
    """Largest chip wanted."""
    feed_per_tooth: Quantity
    """Feed per tooth, after thinning and limits."""
    feed_per_rev: Quantity
    """Feed per revolution."""
    table_feed: Quantity
    """Table feed."""
    handwheel_rate: Quantity | None
    """Pace of the handwheel for that table feed; none where the table is not cranked by hand."""
    time_per_inch: Quantity
    """Time to travel one inch, or 10 mm in a metric shop, at that table feed."""
    time_per_10_mm: Quantity
    """Time to travel 10 mm at that table feed."""


class ConsequencesFields:
    __slots__ = ()
    effective_diameter: Quantity
    """Diameter that cuts at this depth."""
    entry_angle: Quantity
    """Angle of tooth immersion at entry."""
    exit_angle: Quantity
    """Angle of tooth immersion at exit."""
    max_chip_thickness: Quantity
    """Largest undeformed chip thickness."""
    mean_chip_thickness: Quantity
    """Mean undeformed chip thickness."""
    removal_rate: Quantity
    """Removal rate while the cut is at full width."""
    specific_cutting_force: Quantity
    """Specific cutting force at the mean chip, default pair, sharp edge."""
    cutting_power: Quantity
    """Power at the cutter, default pair, sharp edge."""
    motor_power: Quantity
    """Power of the motor for that."""
    torque: Quantity
    """Mean torque on the spindle, default pair, sharp edge."""
    mean_tangential_force: Quantity
    """Mean tangential force, default pair, sharp edge."""
    unit_power_cutting_power: Quantity | None
    """Power at the cutter by the unit-power method, where a unit power is known."""
    limit_power: Quantity
    """Power at the cutter that limits are checked with: the highest pair, worn edge."""
    limit_torque: Quantity
    """Torque that limits are checked with: the highest pair, worn edge."""
    peak_tangential_force: Quantity
    """Peak tangential force of the teeth in cut: the highest pair, worn edge."""
    peak_force: Quantity
    """Peak force across the cutter's axis: the highest pair, worn edge."""
    axial_force: Quantity
    """Peak force along the axis: pulls the work up and the cutter out."""
    deflection: Quantity
    """Deflection of the cutter's tip under the peak force."""
    clamping_needed: Quantity
    """Clamping force needed along the jaws and against lift, with the safety factor."""
    clamping_force: Quantity
    """Clamping force the hold gives."""
    available_power: Quantity
    """Power that is available at the cutter at this speed, within the practice's share."""
    available_torque: Quantity
    """Torque that is available at this speed, within the practice's share."""
    mean_roughness: Quantity | None
    """Theoretical mean roughness of the surface the pass leaves; none where no model applies."""
    travel: Quantity
    """Travel of the pass with approach, overtravel and clearance."""
    time: Quantity
    """Time of the pass in the cut, without return and handling."""


class MaterialFields:
    __slots__ = ()
    id: str
    """Id or trade name of a material of the tables."""
    name: str
    """Name of the shop's own material."""
    iso513: str
    """ISO 513 group: P steel and ferritic or martensitic stainless, M austenitic and duplex stainless, K cast iron, N non-ferrous, S superalloy and titanium, H hardened."""
    kc11: Quantity | None
    """Specific cutting force k_c1.1 at a chip 1 mm thick and 1 mm wide."""
    chip_exponent: float | None
    """Exponent m_c with which the specific cutting force falls as the chip grows; 0 to below 1."""
    source: str | None
    """Where the cutting force comes from."""
    like: str | None
    """Material of the tables whose speeds and feeds are used for the shop's own."""
    aliases: list[str]
    """Other names."""
    condition: str
    """Condition, such as cold drawn."""
    hardness_brinell: tuple[float, float] | None
    """Brinell hardness from lowest to highest."""
    tensile: Quantity | None
    """Tensile strength."""
    force_source: str | None
    """Id of the source of the default pair."""
    density: Quantity | None
    """Density."""
    youngs_modulus: Quantity | None
    """Young's modulus."""
    machinability: float | None
    """Machinability against its list's reference steel."""
    classes: list[str]
    """Classes the other tables hold it under, the nearest first."""
    cautions: list[str]
    """Tags of dangers."""
    sources: list[tuple[str, str]]
    """What comes from which source."""
    provenance: str
    """How the row came here."""
    note: str
    """Remark of the table."""


class BlankFields:
    __slots__ = ()
    length: Quantity
    """Size along the feed."""
    width: Quantity
    """Size across the feed."""
    height: Quantity
    """Size along the spindle axis."""


class CutterFields:
    __slots__ = ()
    name: str | None
    """What the shop calls it."""
    form: str
    """Shape of the cutting end."""
    corner_radius: Quantity | None
    """Corner radius."""
    cutting_edge_angle: Quantity | None
    """Tool cutting-edge angle kappa_r of a face mill: 90 deg less the lead angle."""
    material: str
    """What the edges are made of."""
    diameter: Quantity
    """Cutting diameter."""
    teeth: int
    """Number of teeth."""
    flute_length: Quantity
    """Length of the flutes from the tip; of a face mill the height of its edges."""
    shank_diameter: Quantity | None
    """Diameter of the shank in the holder; of a face mill that of its arbor."""
    stick_out: Quantity
    """Distance from the tip to the holder."""
    helix_angle: Quantity | None
    """Helix angle of the flutes."""
    rake_angle: Quantity | None
    """Rake angle, kept for the record."""
    centre_cutting: bool | None
    """Whether the cutter can be fed straight down."""
    maximum_speed: Quantity | None
    """Highest speed marked on the cutter or its holder."""


class MachineFields:
    __slots__ = ()
    base: str | None
    """A built-in machine to start from; its data are invented."""
    name: str | None
    """What the shop calls it."""
    speeds: tuple[Quantity, ...] | None
    """Spindle speeds of a stepped drive, rising."""
    lowest_speed: Quantity | None
    """Lowest spindle speed of a continuous drive."""
    highest_speed: Quantity | None
    """Highest spindle speed of a continuous drive."""
    motor_power: Quantity | None
    """Rated power of the spindle motor."""
    efficiency: float | None
    """Share of the motor's power that reaches the cutter."""
    base_speed: Quantity | None
    """Spindle speed below which the torque is constant instead of the power."""
    maximum_torque: Quantity | None
    """Torque at which the drive slips or trips."""
    feed: str | None
    """The table is cranked by hand."""
    feeds: tuple[Quantity, ...] | None
    """Table feeds of a feed box, rising."""
    feeds_per_rev: tuple[Quantity, ...] | None
    """Feeds per revolution of a lathe's feed box, rising."""
    lowest_feed: Quantity | None
    """Lowest table feed of a continuous drive."""
    highest_feed: Quantity | None
    """Highest table feed of a continuous drive."""
    travel_per_turn: Quantity | None
    """Travel of the table for one turn of its handwheel."""
    graduation: Quantity | None
    """Travel of one graduation of the dial."""
    readout_resolution: Quantity | None
    """Smallest step the position readout shows."""
    backlash: Quantity | None
    """Lost motion between screw and nut; 0 mm where it is taken up."""
    rapid_speed: Quantity | None
    """Rapid traverse."""
    acceleration: Quantity | None
    """Acceleration of the rapid traverse."""
    origin: str | None
    """Where the data come from."""


class HoldFields:
    __slots__ = ()
    name: str | None
    """What the shop calls it."""
    clamping_force: Quantity | None
    """Force the vise clamps with."""
    handle_torque: Quantity | None
    """Torque on the handle: force times length of the handle."""
    screw_lead: Quantity | None
    """Travel of the jaw for one turn of the screw."""
    screw_efficiency: float | None
    """Efficiency of the screw with its collar."""
    jaw_friction: float | None
    """Static friction between jaw and work."""
    jaw_height: Quantity | None
    """Height of the jaws above the bed of the vise."""
    grip_depth: Quantity
    """Height of the work that the jaws cover."""
    parallels: tuple[Quantity, ...] | None
    """Heights of the parallels at hand."""
    feed: str | None
    """Whether the cut runs along or across the jaws."""


class PracticeFields:
    __slots__ = ()
    base: str | None
    """The built-in practice to start from."""
    name: str | None
    """What the shop calls it."""
    speed_choice: str | None
    """Value of the speed table a cut starts from."""
    speed_factor: float | None
    """Factor on the table's cutting speed."""
    feed_factor: float | None
    """Factor on the table's feed per tooth."""
    thinning_cap: float | None
    """Largest factor by which radial chip thinning may raise the feed per tooth."""
    smallest_chip: Quantity | None
    """Thinnest chip, at its thickest, that still cuts instead of rubbing."""
    roughing_depth_p: float | None
    """Largest roughing depth of a pass over the diameter, steel."""
    roughing_depth_m: float | None
    """The same, stainless steel."""
    roughing_depth_k: float | None
    """The same, cast iron."""
    roughing_depth_n: float | None
    """The same, non-ferrous metal."""
    roughing_depth_s: float | None
    """The same, superalloy and titanium."""
    roughing_depth_h: float | None
    """The same, hardened material."""
    finish_allowance: Quantity | None
    """Stock left for the finishing pass."""
    smallest_depth: Quantity | None
    """Thinnest pass that still cuts instead of rubbing."""
    roughing_deflection: Quantity | None
    """Largest deflection of the tip in a roughing pass."""
    finishing_deflection: Quantity | None
    """Largest deflection of the tip in a finishing pass."""
    power_share: float | None
    """Largest share of power and torque that is used."""
    holding_safety: float | None
    """Safety factor of the clamping on the peak force."""
    wear_factor: float | None
    """Factor on forces for a worn edge."""
    radial_force_ratio: float | None
    """Radial over tangential force."""
    smallest_grip: float | None
    """Smallest grip of the jaws over the height of the part."""
    stick_out_ratio: float | None
    """Largest stick-out over the diameter."""
    handwheel_pace: Quantity | None
    """Fastest pace of a handwheel in a cut."""
    handwheel_return_pace: Quantity | None
    """Fastest pace of a handwheel on the way back."""
    clearance: Quantity | None
    """Clearance before and behind the cut."""
    handling_per_pass: Quantity | None
    """Time to set, measure and clear chips, a pass."""
    strip_width: float | None
    """Widest strip over the cutter's diameter, where a face is wider than the cutter."""
    jaw_clearance: Quantity | None
    """Distance kept between cutter and jaws."""
    setup_time: Quantity | None
    """Time to make machine and vise ready, once."""
    clamping_time: Quantity | None
    """Time to clean, seat and clamp the work, a clamping."""
    measuring_time: Quantity | None
    """Time to measure the work after a clamping."""
    deburring_time: Quantity | None
    """Time to deburr the work after a clamping."""
    roughing_direction: str | None
    """Direction of a roughing pass."""
    finishing_direction: str | None
    """Direction of a finishing pass."""
    climb_depth_with_backlash: Quantity | None
    """Largest depth of a climb cut on a table with backlash."""
    origin: str | None
    """Where the numbers come from."""
