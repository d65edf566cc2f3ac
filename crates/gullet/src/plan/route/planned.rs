//! The route itself: each clamping placed and planned, and planned anew after a measurement.

use super::block::SquaredBlock;
use super::face::{Axis, Face};
use super::order::{Ends, Seat, Seating, seats};
use super::refusals::{at_clamping, check_reading, distinct, side_cutter};
use super::totals::{RouteEntry, RouteTotals, TimeParts};
use super::vise::{Placement, place};
use super::words;
use crate::error::{Error, Result};
use crate::model::{Blank, Hold};
use crate::operation::Operation;
use crate::plan::{Card, Job, PassPlan, Stock, Strategy};
use crate::quantity::{Length, si};
use crate::table::Library;

/// One clamping that is still to be done.
#[derive(Clone)]
pub struct BlockClamping {
    /// Its number, 1 to 6.
    pub number: usize,
    /// Which face is cut, which faces hold it.
    pub seat: Seat,
    /// Why this face now, and why held so.
    pub reason: String,
    /// Parallel, grip, opening.
    pub placement: Placement,
    /// Sizes of the part before the cut.
    pub before: Blank,
    /// Stock to take off.
    pub stock: Length,
    /// The size across the face after the cut.
    pub after: Length,
    /// Whether that is the finished size.
    pub finishes: bool,
    /// The job of the cut, its pass plan and its card.
    pub card: Card,
}

/// One clamping that is done.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoneClamping {
    /// Its number, 1 to 6.
    pub number: usize,
    /// The face that was cut.
    pub face: Face,
    /// The size across it: as measured, or else as planned.
    pub size: Length,
    /// Whether it was measured.
    pub measured: bool,
}

/// The route of a squared block.
#[derive(Clone)]
pub struct Route {
    /// The block.
    pub block: SquaredBlock,
    /// How the ends are cut.
    pub ends: Ends,
    /// Clampings that are done.
    pub done: Vec<DoneClamping>,
    /// Clampings that are still to be done, in order.
    pub clampings: Vec<BlockClamping>,
    readings: Vec<(Face, Length)>,
}

/// A clamping placed in the vise, before its passes are planned.
struct Placed {
    number: usize,
    seat: Seat,
    placement: Placement,
    before: Blank,
    stock: Length,
    after: Length,
    finishes: bool,
}

/// The numbers, from 0, of the clampings that bring a size to its finish.
pub(super) const FINISHING: [usize; 3] = [2, 3, 5];

/// From this clamping on, from 0, the ends are cut.
const FIRST_END: usize = 4;

impl Route {
    /// Plans the six clampings of a block, but for those that its measured sizes say are done.
    ///
    /// # Errors
    /// Every problem of the block at once; those of [`Route::measured`]; too little stock to clean up a face; no parallel at hand
    /// that keeps cutter and jaws apart and grips enough; a face without a pass plan.
    pub fn new(block: SquaredBlock, library: &Library) -> Result<Route> {
        Error::unless_empty(block.problems(), ())?;
        let mut readings = Vec::new();
        let mut problems = Vec::new();
        // In the order of the cuts, which how the ends are held does not change.
        for seat in seats(&block.finished, &block.sawn_faces, Ends::OnEnd) {
            let given = block.measured.iter().filter(|(face, _)| *face == seat.cut);
            for (face, size) in given {
                match check_reading(&block, &readings, *face, *size) {
                    Ok(()) => readings.push((*face, *size)),
                    Err(problem) => problems.push(problem),
                }
            }
        }
        Error::unless_empty(problems, ())?;
        Route::planned(block, readings, library)
    }

    /// The remaining route after the size across a face was measured, which says that this clamping
    /// and those before it are done. A face that came out over size is planned once more.
    ///
    /// # Errors
    /// `Inconsistent` where the part is under size, where nothing is left to clean up the opposite
    /// face, or where the part has grown; otherwise as [`Route::new`].
    pub fn measured(&self, face: Face, size: Length, library: &Library) -> Result<Route> {
        check_reading(&self.block, &self.readings, face, size)?;
        let mut readings = self.readings.clone();
        readings.retain(|(known, _)| *known != face);
        readings.push((face, size));
        Route::planned(self.block.clone(), readings, library)
    }

    /// The six clampings in order, done or not.
    pub fn seats(&self) -> [Seat; 6] {
        seats(&self.block.finished, &self.block.sawn_faces, self.ends)
    }

    fn planned(
        block: SquaredBlock,
        readings: Vec<(Face, Length)>,
        library: &Library,
    ) -> Result<Route> {
        let attempt = |ends: Ends| Route::attempt(&block, ends, &readings, library);
        if let Some(ends) = block.ends {
            return attempt(ends).map_err(|(error, _)| error);
        }
        match attempt(Ends::OnEnd) {
            Ok(route) => Ok(route),
            // Only the ends have no way: lying there may be one.
            Err((error, true)) => {
                attempt(Ends::Overhanging).map_err(|(other, _)| distinct(error.and(other)))
            }
            Err((error, false)) => Err(error),
        }
    }

    /// The route with its ends cut in one way; beside an error whether only the ends have it.
    fn attempt(
        block: &SquaredBlock,
        ends: Ends,
        readings: &[(Face, Length)],
        library: &Library,
    ) -> core::result::Result<Route, (Error, bool)> {
        let seats = seats(&block.finished, &block.sawn_faces, ends);
        let reading = |face: Face| {
            readings
                .iter()
                .find(|(known, _)| *known == face)
                .map(|(_, size)| *size)
        };
        let last = seats
            .iter()
            .rposition(|seat| reading(seat.cut).is_some())
            .map_or(0, |index| index + 1);
        let mut sizes = block.sawn;
        let mut done = Vec::new();
        let mut placed = Vec::new();
        let mut problems = Vec::new();
        let mut only_ends = true;
        for (index, seat) in seats.iter().enumerate() {
            let axis = seat.cut.axis();
            let finishes = FINISHING.contains(&index);
            let finished = axis.of(&block.finished);
            let after = if finishes {
                finished
            } else {
                match block.shares(axis, (seat.cut, seat.cut.opposite())) {
                    Ok((first, _)) => axis.of(&block.sawn) - first,
                    Err(problem) => return Err((problem.into(), false)),
                }
            };
            let measured = reading(seat.cut);
            let over = measured.filter(|size| {
                finishes && size.value > (finished + block.tolerance).value * (1.0 + 1e-12)
            });
            if index < last && over.is_none() {
                let size = measured.unwrap_or(after);
                axis.set(&mut sizes, size);
                done.push(DoneClamping {
                    number: index + 1,
                    face: seat.cut,
                    size,
                    measured: measured.is_some(),
                });
                continue;
            }
            if let Some(size) = over {
                axis.set(&mut sizes, size);
            }
            let stock = axis.of(&sizes) - after;
            match place(block, seat, index + 1, &sizes, stock) {
                Ok(placement) => placed.push(Placed {
                    number: index + 1,
                    seat: *seat,
                    placement,
                    before: sizes,
                    stock,
                    after,
                    finishes,
                }),
                Err(found) => {
                    problems.extend(found);
                    only_ends &= index >= FIRST_END;
                }
            }
            axis.set(&mut sizes, after);
        }
        let mut clampings = Vec::new();
        for placed in placed {
            let number = placed.number;
            match placed.clamping(block, library) {
                Ok(clamping) => clampings.push(clamping),
                Err(error) => {
                    problems.extend(error.into_problems());
                    only_ends &= number > FIRST_END;
                }
            }
        }
        Error::unless_empty(
            problems,
            Route {
                block: block.clone(),
                ends,
                done,
                clampings,
                readings: readings.to_vec(),
            },
        )
        .map_err(|error| (distinct(error), only_ends))
    }

    /// The lines of the summary: set-up, then the clampings that are still to be done.
    pub fn entries(&self) -> Vec<RouteEntry> {
        let block = &self.block;
        let practice = &block.practice;
        let entry = |name: String, time: TimeParts| RouteEntry {
            name,
            machine: block.machine.name.clone(),
            time: time.in_seconds(),
            rate: block.rate,
            cautions: Vec::new(),
        };
        let mut entries = Vec::new();
        // Once a clamping is done machine and vise are ready.
        if self.done.is_empty() {
            entries.push(entry(
                "set-up".to_owned(),
                TimeParts {
                    setup: practice.setup_time,
                    ..TimeParts::default()
                },
            ));
        }
        entries.extend(self.clampings.iter().map(|clamping| {
            let passes = TimeParts::of_passes(clamping.card.plan.time());
            entry(
                format!("{} {}", clamping.number, clamping.seat.cut.name()),
                TimeParts {
                    clamping: practice.clamping_time,
                    measuring: practice.measuring_time,
                    deburring: practice.deburring_time,
                    ..passes
                },
            )
        }));
        entries
    }

    /// Time and cost of what is still to be done; the parts add up to the total exactly.
    ///
    /// # Errors
    /// A rate that is out of range.
    pub fn totals(&self) -> Result<RouteTotals> {
        RouteTotals::of(&self.entries())
    }
}

impl Placed {
    fn clamping(self, block: &SquaredBlock, library: &Library) -> Result<BlockClamping> {
        let at = format!("clamping {} ({} face)", self.number, self.seat.cut.name());
        let job = self.job(block, &at)?;
        let plan = PassPlan::new(&job, library).map_err(|error| at_clamping(error, &at))?;
        let mut clamping = BlockClamping {
            number: self.number,
            reason: self.seat.reason(self.number, &block.sawn_faces),
            seat: self.seat,
            placement: self.placement,
            before: self.before,
            stock: self.stock,
            after: self.after,
            finishes: self.finishes,
            card: Card::of(job, plan, library),
        };
        clamping.card.instructions = words::instructions(&clamping, block);
        Ok(clamping)
    }

    fn job(&self, block: &SquaredBlock, at: &str) -> Result<Job> {
        let seat = &self.seat;
        let size = |axis: Axis| axis.of(&self.before);
        let overhanging = seat.seating == Seating::Overhanging;
        let across = size(seat.fixed.axis());
        let cut = size(seat.cut.axis());
        let (cutter, blank) = if overhanging {
            let height = size(seat.down.axis());
            let blank = Blank {
                length: across,
                width: cut,
                height,
            };
            (side_cutter(block, height, at)?, blank)
        } else {
            let blank = Blank {
                length: size(seat.along),
                width: across,
                height: cut,
            };
            (&block.cutter, blank)
        };
        Ok(Job {
            title: format!(
                "{}, clamping {} of 6: {}",
                block.title,
                self.number,
                seat.cut.name()
            ),
            units: block.units,
            material: block.material.clone(),
            blank,
            cutter: cutter.clone(),
            machine: block.machine.clone(),
            hold: Hold {
                grip_depth: self.placement.grip,
                feed_across_jaws: overhanging,
                ..block.vise.hold.clone()
            },
            practice: block.practice.clone(),
            operation: if overhanging {
                Operation::SideMilling
            } else {
                Operation::FaceMilling
            },
            stock: Stock::Measured {
                measured: cut,
                target: self.after,
            },
            axial_depth: overhanging.then_some(blank.height),
            radial_depth: None,
            offset: si(0.0),
            length: None,
            strategy: Strategy::Even,
            mean_roughness: block.mean_roughness,
            readout_start: si(0.0),
            readout_rises: true,
            spindle_speed: None,
            feed_per_tooth: None,
            assumptions: Vec::new(),
        })
    }
}
