//! What rows of a study have in common: the lists that choices pick from, and what no column gives.

use crate::model::{Cutter, Hold, Machine, Practice};
use crate::operation::Pass;
use crate::plan::Job;
use crate::quantity::{Length, si};
use crate::table::Material;

/// The lists that choices pick from, and everything that no column gives.
///
/// A choice that no column gives picks the first entry of its list.
#[derive(Debug, Clone)]
pub struct Base {
    /// Materials that rows choose from.
    pub materials: Vec<Material>,
    /// Machines that rows choose from.
    pub machines: Vec<Machine>,
    /// Practices that rows choose from.
    pub practices: Vec<Practice>,
    /// The cutter.
    pub cutter: Cutter,
    /// The hold.
    pub hold: Hold,
    /// Height of the part along the spindle axis.
    pub part_height: Length,
    /// The pass.
    pub pass: Pass,
}

impl Base {
    /// Everything as a job has it: a roughing pass as deep as all the job's stock.
    pub fn of_job(job: &Job) -> Base {
        Base {
            materials: vec![job.material.clone()],
            machines: vec![job.machine.clone()],
            practices: vec![job.practice.clone()],
            cutter: job.cutter.clone(),
            hold: job.hold.clone(),
            part_height: job.blank.height,
            pass: job.pass(crate::model::PassKind::Roughing, si(f64::NAN)),
        }
    }
}
