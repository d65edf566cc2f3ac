//! The bare side milling over columns: nine results a row, from the catalogue's formulas alone.

mod chain;
#[cfg(test)]
#[path = "bare/bare_tests.rs"]
mod tests;

use super::dispatch::{Execution, Work};
use crate::error::Result;
use crate::formula::{Column, uneven};
use chain::{Columns, Row, are_plain, compute};

/// Rows computed together; their columns stay in the nearest cache.
const BLOCK: usize = 64;

/// Rows that a thread takes at a time.
const PART: usize = 8192;

/// Number of arguments of a row.
const ARGUMENTS: usize = 11;

/// Number of results of a row.
const RESULTS: usize = 9;

/// The arguments of side cuts and slots, SI values.
#[derive(Debug, Clone, Copy)]
pub struct SideMilling<'a> {
    /// Cutter diameter, above 0 m.
    pub diameter: Column<'a>,
    /// Effective teeth, a whole number from 1.
    pub teeth: Column<'a>,
    /// Wanted cutting speed, from 0 m/s.
    pub cutting_speed: Column<'a>,
    /// Wanted largest chip thickness, above 0 m.
    pub max_chip_thickness: Column<'a>,
    /// Depth of cut along the axis, from 0 m.
    pub axial_depth: Column<'a>,
    /// Working engagement across the axis, above 0 m, at most the diameter.
    pub radial_depth: Column<'a>,
    /// Specific cutting force at a chip 1 mm thick and 1 mm wide, above 0 Pa.
    pub kc11: Column<'a>,
    /// Exponent of the chip thickness, from 0, below 1.
    pub chip_exponent: Column<'a>,
    /// Lowest spindle speed of the machine, above 0 1/s.
    pub lowest_speed: Column<'a>,
    /// Highest spindle speed of the machine, at least the lowest, in 1/s.
    pub highest_speed: Column<'a>,
    /// Efficiency of the drive, above 0, at most 1.
    pub efficiency: Column<'a>,
}

/// Where the results go, SI values; one length.
#[derive(Debug)]
pub struct SideMillingResults<'a> {
    /// Spindle speed within the machine's range, in 1/s.
    pub spindle_speed: &'a mut [f64],
    /// Cutting speed at that spindle speed, in m/s.
    pub cutting_speed: &'a mut [f64],
    /// Feed per tooth, in m.
    pub feed_per_tooth: &'a mut [f64],
    /// Mean chip thickness, in m.
    pub mean_chip_thickness: &'a mut [f64],
    /// Table feed, in m/s.
    pub table_feed: &'a mut [f64],
    /// Removal rate, in m3/s.
    pub removal_rate: &'a mut [f64],
    /// Specific cutting force at the mean chip thickness, in Pa.
    pub specific_cutting_force: &'a mut [f64],
    /// Power of the motor, in W.
    pub motor_power: &'a mut [f64],
    /// Torque of the motor's power at the spindle, in N m.
    pub torque: &'a mut [f64],
    /// 0, or the number of the [`Code`](crate::Code) for which the row cannot be computed.
    pub status: &'a mut [i32],
}

/// Computes every row of a side milling; a row that cannot be computed gets the number of its error's
/// code in `status` and keeps what the results held, the others get 0.
///
/// The chain is that of the catalogue; the code is that of the first formula that refuses its
/// arguments:
///
/// 1. [`spindle_speed`](fn@crate::formula::rotation::spindle_speed), held within the machine's range;
/// 2. [`feed_for_max_chip_thickness`](fn@crate::formula::chip::feed_for_max_chip_thickness) at a
///    cutting-edge angle of 90 deg;
/// 3. [`cutting_speed`](fn@crate::formula::rotation::cutting_speed) and
///    [`table_feed`](fn@crate::formula::rotation::table_feed);
/// 4. [`mean_chip_thickness`](fn@crate::formula::chip::mean_chip_thickness) at 90 deg;
/// 5. [`specific_cutting_force`](fn@crate::formula::force::specific_cutting_force) without rake and
///    correction;
/// 6. [`milling_removal_rate`](fn@crate::formula::removal::milling_removal_rate),
///    [`cutting_power`](fn@crate::formula::power::cutting_power),
///    [`motor_power`](fn@crate::formula::power::motor_power), and
///    [`cutting_torque`](fn@crate::formula::power::cutting_torque) of the motor's power.
///
/// Each row has the bits that these calls give, however the study is executed.
///
/// # Errors
/// `Inconsistent` for columns of different lengths; nothing is written then.
///
/// ```
/// use gullet::formula::Column;
/// use gullet::study::{Execution, SideMilling, SideMillingResults, side_milling};
/// let arguments = SideMilling {
///     diameter: Column::Values(&[0.010, 0.012]),
///     teeth: Column::Constant(4.0),
///     cutting_speed: Column::Constant(0.5),
///     max_chip_thickness: Column::Constant(5e-5),
///     axial_depth: Column::Constant(0.003),
///     radial_depth: Column::Values(&[0.002, 0.013]),
///     kc11: Column::Constant(1.8e9),
///     chip_exponent: Column::Constant(0.25),
///     lowest_speed: Column::Constant(1.0),
///     highest_speed: Column::Constant(50.0),
///     efficiency: Column::Constant(0.8),
/// };
/// let mut columns = vec![[0.0; 2]; 9];
/// let mut status = [0; 2];
/// let [n, vc, fz, hm, vf, q, kc, p, m] = columns.as_mut_slice() else { unreachable!() };
/// let results = SideMillingResults {
///     spindle_speed: n,
///     cutting_speed: vc,
///     feed_per_tooth: fz,
///     mean_chip_thickness: hm,
///     table_feed: vf,
///     removal_rate: q,
///     specific_cutting_force: kc,
///     motor_power: p,
///     torque: m,
///     status: &mut status,
/// };
/// side_milling(&arguments, results, Execution::default())?;
/// // 2 mm of a 10 mm cutter: the feed per tooth is h/(2 sqrt(0.2 x 0.8)).
/// assert!((columns[2][0] / 6.25e-5 - 1.0).abs() < 1e-15);
/// // A width beyond the diameter is refused; the rest is computed.
/// assert_eq!(status, [0, gullet::Code::OutOfRange.number()]);
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn side_milling(
    arguments: &SideMilling,
    results: SideMillingResults,
    execution: Execution,
) -> Result<()> {
    side_milling_in_blocks::<BLOCK>(arguments, results, execution, PART)
}

/// The same with other numbers of rows in a block and in a part.
fn side_milling_in_blocks<const B: usize>(
    arguments: &SideMilling,
    results: SideMillingResults,
    execution: Execution,
    part: usize,
) -> Result<()> {
    let rows = results.status.len();
    let named = arguments.named();
    for (name, column) in named {
        column.check_length(name, rows)?;
    }
    let arguments = named.map(|(_, column)| column);
    let mut rest = Some(results.columns(rows)?);
    let rows_of_part = if execution.threads() == 1 { rows } else { part };
    let mut start = 0;
    let parts = std::iter::from_fn(|| {
        let outputs = rest.take().filter(|rest| !rest.status.is_empty())?;
        let rows = rows_of_part.min(outputs.status.len());
        let (outputs, after) = outputs.split(rows);
        rest = Some(after);
        let arguments = arguments.map(|column| column.part(start, rows));
        start += rows;
        Some(Part::<B> { arguments, outputs })
    });
    execution.for_each(rows.div_ceil(rows_of_part.max(1)), parts, |part| part);
    Ok(())
}

impl<'a> SideMilling<'a> {
    fn named(&self) -> [(&'static str, Column<'a>); ARGUMENTS] {
        [
            ("diameter", self.diameter),
            ("teeth", self.teeth),
            ("cutting_speed", self.cutting_speed),
            ("max_chip_thickness", self.max_chip_thickness),
            ("axial_depth", self.axial_depth),
            ("radial_depth", self.radial_depth),
            ("kc11", self.kc11),
            ("chip_exponent", self.chip_exponent),
            ("lowest_speed", self.lowest_speed),
            ("highest_speed", self.highest_speed),
            ("efficiency", self.efficiency),
        ]
    }
}

impl<'a> SideMillingResults<'a> {
    fn columns(self, rows: usize) -> Result<Outputs<'a>> {
        let named = [
            ("spindle_speed", self.spindle_speed),
            ("cutting_speed", self.cutting_speed),
            ("feed_per_tooth", self.feed_per_tooth),
            ("mean_chip_thickness", self.mean_chip_thickness),
            ("table_feed", self.table_feed),
            ("removal_rate", self.removal_rate),
            ("specific_cutting_force", self.specific_cutting_force),
            ("motor_power", self.motor_power),
            ("torque", self.torque),
        ];
        for (name, column) in &named {
            if column.len() != rows {
                return Err(uneven(name, column.len(), rows));
            }
        }
        Ok(Outputs {
            columns: named.map(|(_, column)| column),
            status: self.status,
        })
    }
}

/// Columns of results and of codes, of one length.
struct Outputs<'a> {
    columns: [&'a mut [f64]; RESULTS],
    status: &'a mut [i32],
}

impl<'a> Outputs<'a> {
    /// The first `rows` rows and the others.
    fn split(self, rows: usize) -> (Outputs<'a>, Outputs<'a>) {
        let mut after: [&mut [f64]; RESULTS] = Default::default();
        let mut slots = after.iter_mut();
        let columns = self.columns.map(|column| {
            let (first, others) = column.split_at_mut(rows);
            if let Some(slot) = slots.next() {
                *slot = others;
            }
            first
        });
        let (status, others) = self.status.split_at_mut(rows);
        (
            Outputs { columns, status },
            Outputs {
                columns: after,
                status: others,
            },
        )
    }
}

/// Rows that one thread computes, in blocks of `B`.
struct Part<'a, const B: usize> {
    arguments: [Column<'a>; ARGUMENTS],
    outputs: Outputs<'a>,
}

impl<const B: usize> Work for Part<'_, B> {
    type Output = ();

    #[inline(always)]
    fn run(self) {
        let Part {
            arguments,
            mut outputs,
        } = self;
        // Arguments of a block that no column holds in one piece: constants, and the last rows.
        let mut held = [[1.0; B]; ARGUMENTS];
        for (held, column) in held.iter_mut().zip(arguments) {
            if let Column::Constant(value) = column {
                *held = [value; B];
            }
        }
        let mut held_results = [[0.0; B]; RESULTS];
        outputs.status.fill(0);
        let rows = outputs.status.len();
        let mut start = 0;
        while start < rows {
            let count = B.min(rows - start);
            let after = start + count;
            if count < B {
                for (held, column) in held.iter_mut().zip(arguments) {
                    if let Column::Values(values) = column {
                        held[..count].copy_from_slice(&values[start..after]);
                    }
                }
            }
            let block: Columns<B> = std::array::from_fn(|index| match arguments[index] {
                Column::Values(values) => values[start..].first_chunk().unwrap_or(&held[index]),
                Column::Constant(_) => &held[index],
            });
            let plain = count == B && are_plain(&block, 0..B);
            let mut columns = outputs.columns.iter_mut();
            let results = held_results.each_mut().map(|held| {
                let column = columns.next().filter(|_| plain);
                column
                    .and_then(|column| column[start..].first_chunk_mut())
                    .unwrap_or(held)
            });
            compute(&block, results);
            if !plain {
                outputs.take_checked(start..after, &block, &mut held_results);
            }
            start = after;
        }
    }
}

impl Outputs<'_> {
    /// Takes over the results of a block that has rows to be checked.
    #[cold]
    #[inline(never)]
    fn take_checked<const B: usize>(
        &mut self,
        rows: core::ops::Range<usize>,
        block: &Columns<B>,
        results: &mut [[f64; B]; RESULTS],
    ) {
        for (index, row) in rows.enumerate() {
            if are_plain(block, index..index + 1) {
                for (column, computed) in self.columns.iter_mut().zip(&*results) {
                    column[row] = computed[index];
                }
                continue;
            }
            match Row::of(block, index).checked() {
                Ok(checked) => {
                    for (column, value) in self.columns.iter_mut().zip(checked) {
                        column[row] = value;
                    }
                }
                Err(code) => self.status[row] = code.number(),
            }
        }
    }
}
