#![allow(clippy::unwrap_used)]
//! The bare side milling against the checked calls of the formulas, bit by bit.

use super::super::InstructionSet;
use super::*;
use crate::error::Code;
use crate::formula::{chip, force, power, removal, rotation};
use crate::quantity::si;

/// The build without optimisation takes fifty times as long for a row.
const ROWS: usize = if cfg!(debug_assertions) {
    60_013
} else {
    1_000_003
};

/// Kept where a row has no result.
const UNTOUCHED: f64 = -7.5;

type Answer = core::result::Result<[f64; RESULTS], Code>;

/// The row as a person composes it from the public calls.
fn by_calls(row: [f64; ARGUMENTS]) -> Answer {
    let code = |error: crate::Error| error.code();
    let [d, z, vc, h, ap, ae, kc11, mc, lowest, highest, eta] = row;
    if !lowest.is_finite() || !highest.is_finite() {
        return Err(Code::NotFinite);
    }
    if lowest <= 0.0 || highest < lowest {
        return Err(Code::OutOfRange);
    }
    let right = si(core::f64::consts::FRAC_PI_2);
    let wanted = rotation::spindle_speed(si(vc), si(d)).map_err(code)?;
    let n = si(wanted.value.max(lowest).min(highest));
    let fz = chip::feed_for_max_chip_thickness(si(h), si(d), si(ae), right).map_err(code)?;
    let v = rotation::cutting_speed(n, si(d)).map_err(code)?;
    let vf = rotation::table_feed(fz, si(z), n).map_err(code)?;
    let hm = chip::mean_chip_thickness(fz, si(d), si(ae), right).map_err(code)?;
    let kc =
        force::specific_cutting_force(si(kc11), si(mc), hm, si(0.0), si(0.0), si(0.0), si(1.0))
            .map_err(code)?;
    let q = removal::milling_removal_rate(si(ap), si(ae), vf).map_err(code)?;
    let at_cutter = power::cutting_power(q, kc).map_err(code)?;
    let p = power::motor_power(at_cutter, si(eta)).map_err(code)?;
    let m = power::cutting_torque(p, n).map_err(code)?;
    Ok([
        n.value, v.value, fz.value, hm.value, vf.value, q.value, kc.value, p.value, m.value,
    ])
}

/// Uniform in [0, 1) (splitmix64).
struct Random(u64);

impl Random {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    /// One in `every` rows has one argument that stands out, most of them inadmissible.
    fn row(&mut self, every: f64) -> [f64; ARGUMENTS] {
        let d = self.between(0.002, 0.05);
        let mut row = [
            d,
            self.between(1.0, 9.0).floor(),
            self.between(0.3, 8.0),
            self.between(2e-5, 2e-4),
            self.between(1e-4, 0.02),
            d * self.between(0.02, 1.0),
            self.between(4e8, 3e9),
            self.between(0.15, 0.35),
            self.between(0.5, 2.0),
            self.between(50.0, 300.0),
            self.between(0.6, 1.0),
        ];
        if self.next() * every < 1.0 {
            let strange = [
                f64::NAN,
                f64::INFINITY,
                f64::NEG_INFINITY,
                0.0,
                -0.0,
                -1.0,
                0.5,
                1.0,
                2.0,
                1e-300,
                5e-324,
                1e300,
                f64::MAX,
                d,
                d * (1.0 + 5e-13),
                d / 2.0,
                1e10,
            ];
            let place = (self.next() * ARGUMENTS as f64) as usize;
            row[place] = strange[(self.next() * strange.len() as f64) as usize];
        }
        row
    }
}

struct Table {
    columns: Vec<Vec<f64>>,
    expected: Vec<Answer>,
}

fn table(rows: usize, every: f64) -> Table {
    let mut random = Random(20_240_229);
    let mut columns = vec![Vec::new(); ARGUMENTS];
    let mut expected = Vec::with_capacity(rows);
    for _ in 0..rows {
        let row = random.row(every);
        for (column, value) in columns.iter_mut().zip(row) {
            column.push(value);
        }
        expected.push(by_calls(row));
    }
    Table { columns, expected }
}

fn arguments_from<'a>(column: impl Fn(usize) -> Column<'a>) -> SideMilling<'a> {
    SideMilling {
        diameter: column(0),
        teeth: column(1),
        cutting_speed: column(2),
        max_chip_thickness: column(3),
        axial_depth: column(4),
        radial_depth: column(5),
        kc11: column(6),
        chip_exponent: column(7),
        lowest_speed: column(8),
        highest_speed: column(9),
        efficiency: column(10),
    }
}

fn results_of<'a>(
    columns: &'a mut [Vec<f64>; RESULTS],
    status: &'a mut [i32],
) -> SideMillingResults<'a> {
    let [n, vc, fz, hm, vf, q, kc, p, m] = columns;
    SideMillingResults {
        spindle_speed: n,
        cutting_speed: vc,
        feed_per_tooth: fz,
        mean_chip_thickness: hm,
        table_feed: vf,
        removal_rate: q,
        specific_cutting_force: kc,
        motor_power: p,
        torque: m,
        status,
    }
}

/// Computes the first `rows` rows in blocks of `B` and compares every bit.
fn compare<const B: usize>(table: &Table, rows: usize, execution: Execution, part: usize) {
    let arguments = arguments_from(|index| Column::Values(&table.columns[index][..rows]));
    let mut columns = [const { Vec::new() }; RESULTS];
    columns.fill(vec![UNTOUCHED; rows]);
    let mut status = vec![-1; rows];
    let results = results_of(&mut columns, &mut status);
    side_milling_in_blocks::<B>(&arguments, results, execution, part).unwrap();
    for row in 0..rows {
        let got = columns.each_ref().map(|column| column[row]);
        let (expected, code) = match table.expected[row] {
            Ok(results) => (results, 0),
            Err(code) => ([UNTOUCHED; RESULTS], code.number()),
        };
        assert_eq!(status[row], code, "{execution:?}, row {row} of {rows}");
        assert_eq!(
            got.map(f64::to_bits),
            expected.map(f64::to_bits),
            "{execution:?}, row {row} of {rows}: {got:?} for {expected:?}"
        );
    }
}

#[test]
fn every_row_has_the_bits_of_the_calls_whatever_the_execution() {
    let table = table(ROWS, 200.0);
    let good = table.expected.iter().filter(|row| row.is_ok()).count();
    assert!(
        good > ROWS - ROWS / 200 && good < ROWS - ROWS / 500,
        "{good}"
    );
    for set in InstructionSet::available() {
        for threads in [1, 2, 3] {
            let execution = Execution::default()
                .with_instruction_set(set)
                .with_threads(threads)
                .unwrap();
            compare::<BLOCK>(&table, ROWS, execution, PART);
        }
    }
}

#[test]
fn neither_blocks_nor_parts_nor_lengths_change_a_bit() {
    let table = table(3_001, 40.0);
    for set in InstructionSet::available() {
        let execution = Execution::default()
            .with_instruction_set(set)
            .with_threads(3)
            .unwrap();
        for rows in [0, 1, 2, 7, 63, 64, 65, 127, 128, 129, 1_000, 3_001] {
            for part in [1, 37, 64, 1_000] {
                compare::<1>(&table, rows, execution, part);
                compare::<8>(&table, rows, execution, part);
                compare::<64>(&table, rows, execution, part);
                compare::<100>(&table, rows, execution, part);
                compare::<256>(&table, rows, execution, part);
            }
        }
    }
}

#[test]
fn many_bad_rows_leave_the_good_ones_right() {
    let table = table(5_000, 1.5);
    let codes = |code: Code| {
        table
            .expected
            .iter()
            .filter(|row| **row == Err(code))
            .count()
    };
    for code in [
        Code::NotFinite,
        Code::NotWhole,
        Code::OutOfRange,
        Code::ResultOverflow,
    ] {
        assert!(codes(code) > 0, "no row with {}", code.name());
    }
    compare::<BLOCK>(&table, 5_000, Execution::default(), PART);
}

#[test]
fn constants_are_columns_of_one_value() {
    let mut random = Random(3);
    for every in [f64::INFINITY, 1.0] {
        for _ in 0..200 {
            let row = random.row(every);
            let widths = [row[5], row[5] / 2.0, row[5] / 3.0];
            let arguments = arguments_from(|index| match index {
                5 => Column::Values(&widths),
                _ => Column::Constant(row[index]),
            });
            let mut columns = [const { Vec::new() }; RESULTS];
            columns.fill(vec![UNTOUCHED; 3]);
            let mut status = [-1; 3];
            let results = results_of(&mut columns, &mut status);
            side_milling(&arguments, results, Execution::default()).unwrap();
            for (index, width) in widths.into_iter().enumerate() {
                let mut row = row;
                row[5] = width;
                let got = columns.each_ref().map(|column| column[index].to_bits());
                match by_calls(row) {
                    Ok(expected) => {
                        assert_eq!(status[index], 0, "{row:?}");
                        assert_eq!(got, expected.map(f64::to_bits), "{row:?}");
                    }
                    Err(code) => {
                        assert_eq!(got, [UNTOUCHED.to_bits(); RESULTS]);
                        assert_eq!(status[index], code.number());
                    }
                }
            }
        }
    }
}

#[test]
fn columns_of_other_lengths_are_refused_and_nothing_is_written() {
    let (two, three) = ([1.0; 2], [1.0; 3]);
    for wrong in 0..ARGUMENTS + RESULTS {
        let arguments =
            arguments_from(|index| Column::Values(if index == wrong { &two } else { &three }));
        let mut columns = [const { Vec::new() }; RESULTS];
        columns.fill(vec![UNTOUCHED; 3]);
        if let Some(column) = wrong.checked_sub(ARGUMENTS) {
            columns[column].pop();
        }
        let mut status = [-1; 3];
        let results = results_of(&mut columns, &mut status);
        let error = side_milling(&arguments, results, Execution::default()).unwrap_err();
        assert_eq!(error.code(), Code::Inconsistent);
        assert!(columns.iter().flatten().all(|value| *value == UNTOUCHED));
        assert_eq!(status, [-1; 3]);
    }
}
