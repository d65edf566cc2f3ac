//! The chain of formulas of the bare side milling: for one row checked, for a block of rows bare.

use super::{ARGUMENTS, RESULTS};
use crate::error::Code;
use crate::formula::{Formula, NoRecord, Recorder, chip, force, power, removal, rotation};
use crate::quantity::math::{PI, max, min, number};
use crate::quantity::{
    Angle, Count, Length, Power, Pressure, Ratio, RotationalSpeed, Torque, Velocity, VolumeRate, si,
};
use core::ops::Range;

/// The arguments of a block, SI values.
pub(super) type Columns<'a, const B: usize> = [&'a [f64; B]; ARGUMENTS];

/// The arguments of one row.
#[derive(Clone, Copy)]
pub(super) struct Row {
    diameter: Length,
    teeth: Count,
    cutting_speed: Velocity,
    max_chip_thickness: Length,
    axial_depth: Length,
    radial_depth: Length,
    kc11: Pressure,
    chip_exponent: Ratio,
    lowest_speed: RotationalSpeed,
    highest_speed: RotationalSpeed,
    efficiency: Ratio,
}

/// Speeds and feeds of one row.
#[derive(Clone, Copy)]
struct Settings {
    spindle_speed: RotationalSpeed,
    cutting_speed: Velocity,
    feed_per_tooth: Length,
    table_feed: Velocity,
}

/// What the cut needs of the machine in one row.
#[derive(Clone, Copy)]
struct Load {
    removal_rate: VolumeRate,
    motor_power: Power,
    torque: Torque,
}

/// The chain of formulas in four links, each shown to a recorder.
///
/// A block is computed link by link: a loop over one link is short enough for the processor to work
/// at several rows at a time.
impl Row {
    #[inline(always)]
    pub(super) fn of<const B: usize>(columns: &Columns<B>, row: usize) -> Row {
        let [d, z, vc, h, ap, ae, kc11, mc, lowest, highest, eta] = columns;
        Row {
            diameter: si(d[row]),
            teeth: si(z[row]),
            cutting_speed: si(vc[row]),
            max_chip_thickness: si(h[row]),
            axial_depth: si(ap[row]),
            radial_depth: si(ae[row]),
            kc11: si(kc11[row]),
            chip_exponent: si(mc[row]),
            lowest_speed: si(lowest[row]),
            highest_speed: si(highest[row]),
            efficiency: si(eta[row]),
        }
    }

    #[inline(always)]
    fn settings(&self, recorder: &mut impl Recorder) -> Settings {
        let d = self.diameter;
        let wanted = rotation::spindle_speed::step(recorder, self.cutting_speed, d);
        let n = min(max(wanted, self.lowest_speed), self.highest_speed);
        let fz = chip::feed_for_max_chip_thickness::step(
            recorder,
            self.max_chip_thickness,
            d,
            self.radial_depth,
            right_angle(),
        );
        Settings {
            spindle_speed: n,
            cutting_speed: rotation::cutting_speed::step(recorder, n, d),
            feed_per_tooth: fz,
            table_feed: rotation::table_feed::step(recorder, fz, self.teeth, n),
        }
    }

    #[inline(always)]
    fn mean_chip_thickness(&self, recorder: &mut impl Recorder, feed_per_tooth: Length) -> Length {
        chip::mean_chip_thickness::step(
            recorder,
            feed_per_tooth,
            self.diameter,
            self.radial_depth,
            right_angle(),
        )
    }

    #[inline(always)]
    fn specific_cutting_force(
        &self,
        recorder: &mut impl Recorder,
        mean_chip_thickness: Length,
    ) -> Pressure {
        let (no_rake, no_sensitivity, no_correction) = (si(0.0), number(0.0), number(1.0));
        force::specific_cutting_force::step(
            recorder,
            self.kc11,
            self.chip_exponent,
            mean_chip_thickness,
            no_rake,
            no_rake,
            no_sensitivity,
            no_correction,
        )
    }

    #[inline(always)]
    fn load(
        &self,
        recorder: &mut impl Recorder,
        spindle_speed: RotationalSpeed,
        table_feed: Velocity,
        specific_cutting_force: Pressure,
    ) -> Load {
        let q = removal::milling_removal_rate::step(
            recorder,
            self.axial_depth,
            self.radial_depth,
            table_feed,
        );
        let at_cutter = power::cutting_power::step(recorder, q, specific_cutting_force);
        let p = power::motor_power::step(recorder, at_cutter, self.efficiency);
        Load {
            removal_rate: q,
            motor_power: p,
            torque: power::cutting_torque::step(recorder, p, spindle_speed),
        }
    }

    /// The row by the checked formulas: the results, or the code of the first error.
    pub(super) fn checked(&self) -> core::result::Result<[f64; RESULTS], Code> {
        let (lowest, highest) = (self.lowest_speed.value, self.highest_speed.value);
        if !lowest.is_finite() || !highest.is_finite() {
            return Err(Code::NotFinite);
        }
        if lowest <= 0.0 || highest < lowest {
            return Err(Code::OutOfRange);
        }
        let mut check = Check(None);
        let set = self.settings(&mut check);
        let hm = self.mean_chip_thickness(&mut check, set.feed_per_tooth);
        let kc = self.specific_cutting_force(&mut check, hm);
        let load = self.load(&mut check, set.spindle_speed, set.table_feed, kc);
        let results = [
            set.spindle_speed.value,
            set.cutting_speed.value,
            set.feed_per_tooth.value,
            hm.value,
            set.table_feed.value,
            load.removal_rate.value,
            kc.value,
            load.motor_power.value,
            load.torque.value,
        ];
        check.0.map_or(Ok(results), Err)
    }
}

#[inline(always)]
fn right_angle() -> Angle {
    si(PI / 2.0)
}

/// Keeps the code of the first formula that refuses its arguments or has no finite result.
struct Check(Option<Code>);

impl Recorder for Check {
    fn record(&mut self, formula: &'static Formula, arguments: &[f64], _: f64) {
        if self.0.is_none() {
            self.0 = formula.value_or_code(arguments).err();
        }
    }
}

/// Whether it is plain that the formulas admit these rows of a block and that no result leaves the
/// range of a double; where not, the formulas themselves decide.
///
/// Arguments of 1e-20 to 1e20 (depth, speed and exponent from 0) keep every result below 1e200 and the
/// chip thickness above 1e-22.
#[inline(always)]
pub(super) fn are_plain<const B: usize>(columns: &Columns<B>, rows: Range<usize>) -> bool {
    const LEAST: f64 = 1e-20;
    const MOST: f64 = 1e20;
    // Added and taken away again, it rounds to a whole number.
    const ROUNDER: f64 = 6_755_399_441_055_744.0;
    let [d, z, vc, h, ap, ae, kc11, mc, lowest, highest, eta] =
        columns.map(|column| &column[rows.clone()]);
    let mut doubts = 0;
    for row in 0..d.len() {
        // What is not a number is found by the sum and by the comparisons, not by the smallest.
        let sum = ((d[row] + z[row]) + (vc[row] + h[row])) + ((ap[row] + kc11[row]) + highest[row]);
        let positive = smaller(
            smaller(ae[row], h[row]),
            smaller(smaller(kc11[row], lowest[row]), eta[row]),
        );
        let from_zero = smaller(smaller(vc[row], ap[row]), mc[row]);
        let plain = (sum <= MOST)
            & (positive >= LEAST)
            & (from_zero >= 0.0)
            & (z[row] >= 1.0)
            & ((z[row] + ROUNDER) - ROUNDER == z[row])
            & (ae[row] <= d[row])
            & (mc[row] <= 0.999)
            & (lowest[row] <= highest[row])
            & (eta[row] <= 1.0);
        doubts |= u64::from(!plain);
    }
    doubts == 0
}

#[inline(always)]
fn smaller(a: f64, b: f64) -> f64 {
    if a < b { a } else { b }
}

/// Computes a block, a link of the chain after the other.
#[inline(always)]
pub(super) fn compute<const B: usize>(columns: &Columns<B>, results: [&mut [f64; B]; RESULTS]) {
    let [n, vc, fz, hm, vf, q, kc, p, m] = results;
    compute_settings(columns, n, vc, fz, vf);
    compute_chip(columns, fz, hm);
    compute_force(columns, hm, kc);
    compute_load(columns, (n, vf, kc), q, p, m);
}

#[inline(always)]
fn compute_settings<const B: usize>(
    columns: &Columns<B>,
    n: &mut [f64; B],
    vc: &mut [f64; B],
    fz: &mut [f64; B],
    vf: &mut [f64; B],
) {
    for row in 0..B {
        let set = Row::of(columns, row).settings(&mut NoRecord);
        n[row] = set.spindle_speed.value;
        vc[row] = set.cutting_speed.value;
        fz[row] = set.feed_per_tooth.value;
        vf[row] = set.table_feed.value;
    }
}

#[inline(always)]
fn compute_chip<const B: usize>(columns: &Columns<B>, fz: &[f64; B], hm: &mut [f64; B]) {
    for row in 0..B {
        let row_hm = Row::of(columns, row).mean_chip_thickness(&mut NoRecord, si(fz[row]));
        hm[row] = row_hm.value;
    }
}

#[inline(always)]
fn compute_force<const B: usize>(columns: &Columns<B>, hm: &[f64; B], kc: &mut [f64; B]) {
    for row in 0..B {
        let row_kc = Row::of(columns, row).specific_cutting_force(&mut NoRecord, si(hm[row]));
        kc[row] = row_kc.value;
    }
}

#[inline(always)]
fn compute_load<const B: usize>(
    columns: &Columns<B>,
    (n, vf, kc): (&[f64; B], &[f64; B], &[f64; B]),
    q: &mut [f64; B],
    p: &mut [f64; B],
    m: &mut [f64; B],
) {
    for row in 0..B {
        let load = Row::of(columns, row).load(&mut NoRecord, si(n[row]), si(vf[row]), si(kc[row]));
        q[row] = load.removal_rate.value;
        p[row] = load.motor_power.value;
        m[row] = load.torque.value;
    }
}
