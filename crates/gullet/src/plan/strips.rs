//! A face that is wider than the cutter, cut in strips side by side.

use super::job::Job;
use crate::error::{Code, Problem};
use crate::operation::Operation;
use crate::quantity::{self, Kind, Length};

/// Strips of a face, all of the same width; one of the whole width where the cutter covers it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strips {
    /// How many, at every depth.
    pub count: u32,
    /// Width of each.
    pub width: Length,
}

/// Most strips of a face: more is a mistake in the job, not a plan.
const MOST_STRIPS: f64 = 1000.0;

impl Strips {
    /// The strips of a job: as few as its practice's widest strip allows.
    pub fn of(job: &Job) -> Strips {
        let width = job.radial_depth.unwrap_or(job.blank.width);
        let quotient = quotient(job);
        // No number of strips makes a width of this size right; the plan refuses it.
        let count = (quotient - 1e-9).ceil().clamp(1.0, MOST_STRIPS);
        Strips {
            count: count as u32,
            width: width / count,
        }
    }

    /// What is wrong with them.
    pub(super) fn problem(job: &Job) -> Option<Problem> {
        let quotient = quotient(job);
        (quotient > MOST_STRIPS).then(|| {
            let show = |x: Length| quantity::format(Kind::Length, x.value, job.units);
            Problem::new(
                Code::NoPlan,
                "cut.width",
                show(job.radial_depth.unwrap_or(job.blank.width)),
                format!("at most {MOST_STRIPS} strips"),
                format!(
                    "a cutter of {} is too small for this face",
                    show(job.cutter.diameter)
                ),
            )
        })
    }
}

/// Widest strips that go into the face; at most 1 where the cutter covers it.
fn quotient(job: &Job) -> f64 {
    let width = job.radial_depth.unwrap_or(job.blank.width);
    let diameter = job.cutter.diameter;
    if job.operation != Operation::FaceMilling || width.value <= diameter.value * (1.0 + 1e-12) {
        return 1.0;
    }
    (width / (job.practice.strip_width * diameter)).value
}
