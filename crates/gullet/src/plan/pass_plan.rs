//! The pass plan of a job: depths in counts of the readout, where to stop, settings of each pass,
//! time.

use super::job::{Job, Stock};
use super::passes::{self, Counts};
use super::strips::Strips;
use crate::economics::Way;
use crate::error::{Code, Error, Problem, Result};
use crate::model::{Direction, Machine, PassKind};
use crate::operation::{Cut, Lowering, Milling, Operation, Pass, Setup, Warning, WarningCode};
use crate::quantity::{self, Kind, Length, Time, si};
use crate::table::Library;

/// A pass of a plan.
#[derive(Clone)]
pub struct PlannedPass {
    /// Number from 1.
    pub number: usize,
    /// Depth in counts of the readout.
    pub counts: u64,
    /// Depth.
    pub depth: Length,
    /// Stock left after the pass, in counts.
    pub left: u64,
    /// What the readout shows where the pass is set, in counts from zero; may be negative.
    pub readout_counts: i64,
    /// What the readout shows where the pass is set.
    pub readout: Length,
    /// The cut.
    pub cut: Cut,
    /// Time in the cut, to return, and to handle.
    pub time: PassTime,
}

/// Time of a pass in its parts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PassTime {
    /// In the cut, with approach and overtravel.
    pub cutting: Time,
    /// Back to the start.
    pub returning: Time,
    /// To set, measure, clear chips.
    pub handling: Time,
}

impl PassTime {
    /// All together.
    pub fn total(&self) -> Time {
        self.cutting + self.returning + self.handling
    }
}

/// The pass plan of a job.
#[derive(Clone)]
pub struct PassPlan {
    /// Smallest step of the readout or dial.
    pub resolution: Length,
    /// Stock to remove, in counts.
    pub total: u64,
    /// Stock to remove.
    pub stock: Length,
    /// Deepest roughing pass that every limit allows, and the limit that sets it.
    pub largest_roughing: (Length, String),
    /// Strips side by side at every depth of a face that is wider than the cutter.
    pub strips: Strips,
    /// The passes, in order; the last one finishes.
    pub passes: Vec<PlannedPass>,
    /// Parallel to use and the grip it gives; none where none fits or none is known.
    pub parallel: Option<(Length, Length)>,
    /// Doubts that belong to the plan rather than to one pass.
    pub warnings: Vec<Warning>,
}

/// Largest reading of a readout, either way: 100 m.
const MOST_READOUT: f64 = 100.0;

/// Resolution assumed where a machine has neither readout nor dial: 0.01 mm.
const ASSUMED_RESOLUTION: f64 = 1e-5;

impl PassPlan {
    /// Plans the passes of a job.
    ///
    /// # Errors
    /// Problems of the job; `NoPlan` where no split keeps every pass between the thinnest that
    /// cuts and the deepest that the limits allow.
    pub fn new(job: &Job, library: &Library) -> Result<PassPlan> {
        let mut warnings = Vec::new();
        check(job)?;
        let resolution = resolution(job, &mut warnings);
        let stock = stock(job)?;
        let (total, exact) = passes::counts_of(stock, resolution)?;
        if !exact {
            warnings.push(Warning {
                code: WarningCode::Rounded,
                text: format!(
                    "the stock is no whole number of counts: {} stays on, less than one count",
                    quantity::format(
                        Kind::Length,
                        stock.value - passes::length_of(total, resolution).value,
                        job.units
                    )
                ),
            });
        }
        let planner = Planner {
            job,
            milling: Milling::new(&job.setup(library)),
            resolution,
            total,
        };
        planner.plan(warnings)
    }

    /// Time of all passes, in its parts.
    pub fn time(&self) -> PassTime {
        let mut sum = PassTime {
            cutting: si(0.0),
            returning: si(0.0),
            handling: si(0.0),
        };
        for pass in &self.passes {
            sum.cutting += pass.time.cutting;
            sum.returning += pass.time.returning;
            sum.handling += pass.time.handling;
        }
        sum
    }

    /// The plan for what is left after a measurement.
    ///
    /// # Errors
    /// As [`PassPlan::new`].
    pub fn after_measurement(
        job: &Job,
        library: &Library,
        measured: Length,
        target: Length,
    ) -> Result<PassPlan> {
        let job = Job {
            stock: Stock::Measured { measured, target },
            ..job.clone()
        };
        PassPlan::new(&job, library)
    }
}

impl Job {
    /// The set-up of the job's cuts.
    pub fn setup<'a>(&'a self, library: &'a Library) -> Setup<'a> {
        Setup {
            library,
            material: &self.material,
            cutter: &self.cutter,
            machine: &self.machine,
            hold: &self.hold,
            practice: &self.practice,
            part_height: self.blank.height,
            units: self.units,
        }
    }

    /// A pass of the job at a depth.
    pub(crate) fn pass(&self, kind: PassKind, depth: Length) -> Pass {
        let blank = self.blank;
        let d = self.cutter.diameter;
        let pass = Pass {
            operation: self.operation,
            kind,
            axial_depth: self.axial_depth.unwrap_or(blank.height),
            radial_depth: match self.operation {
                Operation::Slotting => d,
                _ => Strips::of(self).width,
            },
            offset: self.offset,
            length: self.length.unwrap_or(blank.length),
            direction: Direction::Conventional,
            mean_roughness: self.mean_roughness.filter(|_| kind == PassKind::Finishing),
            spindle_speed: self.spindle_speed,
            feed_per_tooth: self.feed_per_tooth,
        }
        .with_depth(depth);
        Pass {
            direction: self
                .practice
                .direction_with_backlash(kind, depth, self.machine.backlash),
            ..pass
        }
    }
}

/// Every problem of what the shop owns and of the readout's start, before any depth is tried.
fn check(job: &Job) -> Result<()> {
    let mut problems = Vec::new();
    for (section, found) in [
        ("cutter", job.cutter.problems_in(job.units)),
        ("machine", job.machine.problems_in(job.units)),
        ("hold", job.hold.problems_in(job.units)),
        ("practice", job.practice.problems_in(job.units)),
        ("blank", job.blank.problems_in(job.units)),
    ] {
        problems.extend(found.into_iter().map(|problem| problem.within(section)));
    }
    if problems.is_empty() {
        problems.extend(Strips::problem(job));
    }
    let start = job.readout_start;
    if !start.value.is_finite() || start.value.abs() > MOST_READOUT {
        let show = |x: f64| quantity::format(Kind::Length, x, job.units);
        problems.push(Problem::new(
            if start.value.is_finite() {
                Code::OutOfRange
            } else {
                Code::NotFinite
            },
            "cut.readout_start",
            show(start.value),
            format!("between {} and {}", show(-MOST_READOUT), show(MOST_READOUT)),
            "give what the readout shows when the cutter touches the stock",
        ));
    }
    Error::unless_empty(problems, ())
}

/// The stock a job is to remove.
fn stock(job: &Job) -> Result<Length> {
    match job.stock {
        Stock::Remove(depth) => Ok(depth),
        Stock::Measured { measured, target } => {
            let left = measured - target;
            if left.value > 0.0 && target.value > 0.0 {
                return Ok(left);
            }
            let show = |x: Length| quantity::format(Kind::Length, x.value, job.units);
            Err(Problem::new(
                Code::Inconsistent,
                "cut.final",
                show(target),
                format!(
                    "above {} and below measured = {}",
                    show(si(0.0)),
                    show(measured)
                ),
                "measure again: there is nothing to remove, or too much was removed already",
            )
            .into())
        }
    }
}

/// The step that depths are planned in.
pub(super) fn step(machine: &Machine) -> Length {
    machine.resolution().unwrap_or(si(ASSUMED_RESOLUTION))
}

fn resolution(job: &Job, warnings: &mut Vec<Warning>) -> Length {
    if job.machine.resolution().is_none() {
        warnings.push(Warning {
            code: WarningCode::Assumed,
            text:
                "the machine has neither readout nor dial: depths are planned in steps of 0.01 mm"
                    .to_owned(),
        });
    }
    step(&job.machine)
}

struct Planner<'a> {
    job: &'a Job,
    milling: Milling,
    resolution: Length,
    total: u64,
}

/// What a depth search looks at: the geometry that depth changes and the loads.
const DEPTH_LIMITS: &[&str] = &[
    "power",
    "torque",
    "deflection",
    "clamping",
    "roughing_depth",
    "flute_length",
];

impl Planner<'_> {
    fn plan(&self, mut warnings: Vec<Warning>) -> Result<PassPlan> {
        let practice = &self.job.practice;
        let smallest = self.at_least_one(practice.smallest_depth);
        let finish = passes::counts_of(practice.finish_allowance, self.resolution)?.0;
        // A finishing pass may take twice its allowance before it is a roughing pass.
        let most_finish = (2 * finish).max(smallest).min(self.total.max(1));
        let (largest_finish, finish_limit) =
            self.largest(PassKind::Finishing, most_finish, smallest, &mut warnings)?;
        let (largest_rough, rough_limit) = self.largest(
            PassKind::Roughing,
            self.total.max(1),
            smallest,
            &mut warnings,
        )?;
        let split = passes::split(
            Counts {
                total: self.total,
                finish,
                smallest,
                largest_rough,
                largest_finish,
            },
            self.job.strategy,
        )
        .map_err(|error| {
            let (kind, limit, largest) = if largest_finish < smallest {
                (PassKind::Finishing, &finish_limit, largest_finish)
            } else {
                (PassKind::Roughing, &rough_limit, largest_rough)
            };
            let error = with_limit(error, limit);
            // Where not even the thinnest pass can be cut, its own error says by how much and why.
            let depth = passes::length_of(smallest, self.resolution);
            match self
                .milling
                .cut(&self.job.pass(kind, depth), Lowering::Allowed)
            {
                Err(why) if largest < smallest => error.and(why),
                _ => error,
            }
        })?;
        let mut planned = Vec::new();
        let mut left = self.total;
        let kinds = split
            .roughing
            .iter()
            .map(|counts| (PassKind::Roughing, *counts))
            .chain([(PassKind::Finishing, split.finishing)]);
        let mut last: Option<(PassKind, u64, Cut)> = None;
        for (index, (kind, counts)) in kinds.enumerate() {
            // Equal passes are the same cut: computed once.
            let cut = match &last {
                Some((same_kind, same, cut)) if *same_kind == kind && *same == counts => {
                    cut.clone()
                }
                _ => {
                    let depth = passes::length_of(counts, self.resolution);
                    self.milling
                        .cut(&self.job.pass(kind, depth), Lowering::Allowed)?
                }
            };
            last = Some((kind, counts, cut.clone()));
            left -= counts;
            planned.push(self.planned(index + 1, counts, left, cut)?);
        }
        Ok(PassPlan {
            resolution: self.resolution,
            total: self.total,
            stock: passes::length_of(self.total, self.resolution),
            largest_roughing: (
                passes::length_of(largest_rough, self.resolution),
                rough_limit,
            ),
            strips: Strips::of(self.job),
            passes: planned,
            parallel: self.job.hold.parallel_for(self.job.hold.grip_depth),
            warnings,
        })
    }

    fn at_least_one(&self, length: Length) -> u64 {
        // Upwards: a pass must not be thinner than the practice says.
        let quotient = (length / self.resolution).value;
        let near = quotient.round();
        let whole = if (quotient - near).abs() <= 1e-6 {
            near
        } else {
            quotient.ceil()
        };
        whole.clamp(1.0, 1e12) as u64
    }

    /// The deepest pass, in counts, and the limit that stops a deeper one: with the wanted feed,
    /// or with a lower feed where the wanted one leaves no pass that cuts.
    fn largest(
        &self,
        kind: PassKind,
        most: u64,
        smallest: u64,
        warnings: &mut Vec<Warning>,
    ) -> Result<(u64, String)> {
        let wanted = self.deepest(kind, most, Lowering::NotForLoads)?;
        if wanted.0 >= smallest.min(most) {
            return Ok(wanted);
        }
        let lowered = self.deepest(kind, most, Lowering::Allowed)?;
        if lowered.0 > wanted.0 {
            warnings.push(Warning {
                code: WarningCode::Lowered,
                text: format!(
                    "the wanted feed leaves no {} pass that cuts (limit {}): the feed is lowered",
                    kind.name(),
                    wanted.1
                ),
            });
        }
        Ok(lowered)
    }

    /// Bisection over whole counts: loads grow with depth.
    fn deepest(&self, kind: PassKind, most: u64, lowering: Lowering) -> Result<(u64, String)> {
        let most = most.min(self.geometric_cap()).max(1);
        let mut good = 0;
        let mut bad = match self.obstacle(kind, most, lowering)? {
            None => return Ok((most, "stock".to_owned())),
            Some(limit) => (most, limit),
        };
        while bad.0 - good > 1 {
            let middle = good + (bad.0 - good) / 2;
            match self.obstacle(kind, middle, lowering)? {
                Some(limit) => bad = (middle, limit),
                None => good = middle,
            }
        }
        Ok((good, bad.1))
    }

    /// Counts of the depth the cutter reaches: its flutes, or its diameter in side milling.
    fn geometric_cap(&self) -> u64 {
        let reach = match self.job.operation {
            Operation::SideMilling => self.job.cutter.diameter,
            _ => self.job.cutter.flute_length,
        };
        passes::counts_of(reach, self.resolution).map_or(u64::MAX, |(counts, _)| counts)
    }

    /// The limit that a pass of this depth exceeds most.
    fn obstacle(&self, kind: PassKind, counts: u64, lowering: Lowering) -> Result<Option<String>> {
        let depth = passes::length_of(counts, self.resolution);
        let cut = match self.milling.numbers(&self.job.pass(kind, depth), lowering) {
            Ok(cut) => cut,
            Err(error) if error.code() == Code::LimitExceeded => {
                return Ok(Some(error.first().parameter.clone()));
            }
            Err(error) => return Err(error),
        };
        Ok(cut
            .ledger
            .iter()
            .filter(|limit| DEPTH_LIMITS.contains(&limit.name.name()) && limit.exceeded())
            .max_by(|a, b| a.share.total_cmp(&b.share))
            .map(|limit| limit.name.name().to_owned()))
    }

    fn planned(&self, number: usize, counts: u64, left: u64, cut: Cut) -> Result<PlannedPass> {
        let job = self.job;
        let removed = (self.total - left) as i64;
        let start = job.readout_start;
        let signed = if job.readout_rises { removed } else { -removed };
        let readout: Length = start + si::<_, _>(signed as f64 * self.resolution.value);
        let start_counts = (start / self.resolution).value.round();
        let strips = f64::from(Strips::of(job).count);
        let time = PassTime {
            cutting: cut.consequences.time * strips,
            returning: self.return_time(cut.consequences.travel)? * strips,
            handling: job.practice.handling_per_pass,
        };
        Ok(PlannedPass {
            number,
            counts,
            depth: passes::length_of(counts, self.resolution),
            left,
            readout_counts: start_counts.clamp(-1e15, 1e15) as i64 + signed,
            readout,
            cut,
            time,
        })
    }

    /// Back to the start: by rapid traverse, else by hand.
    fn return_time(&self, travel: Length) -> Result<Time> {
        match Way::rapid(&self.job.machine, &self.job.practice) {
            Some(way) => Ok(way.straight(travel)?.time),
            None => Ok(si(0.0)),
        }
    }
}

/// The same error, saying which limit leaves no room.
fn with_limit(error: Error, limit: &str) -> Error {
    let problems = error
        .into_problems()
        .into_iter()
        .map(|mut problem| {
            problem.remedy = format!("{}; binding limit: {limit}", problem.remedy);
            problem
        })
        .collect();
    match Error::unless_empty(problems, ()) {
        Err(error) => error,
        Ok(()) => Problem::new(Code::NoPlan, "stock", "", "", "no plan").into(),
    }
}
