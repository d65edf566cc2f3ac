//! The full study that is timed: a job, and the results that a table of a study holds.

use gullet::plan::Job;
use gullet::study::ResultField;
use gullet::table::Library;

const JOB: &str = include_str!("../crates/gullet-cli/jobs/bearing_bracket.toml");

const WANTED: [&str; 26] = [
    "spindle_speed",
    "cutting_speed",
    "feed_per_tooth",
    "table_feed",
    "handwheel_rate",
    "max_chip_thickness",
    "mean_chip_thickness",
    "removal_rate",
    "specific_cutting_force",
    "cutting_power",
    "motor_power",
    "torque",
    "mean_tangential_force",
    "limit_power",
    "limit_torque",
    "peak_force",
    "deflection",
    "clamping_needed",
    "available_power",
    "available_torque",
    "mean_roughness",
    "travel",
    "time",
    "time_low",
    "time_high",
    "binding_share",
];

/// What no column gives.
pub fn job(library: &Library) -> gullet::Result<Job> {
    Job::from_toml(JOB, library)
}

/// Places of the results; none where one is unknown.
pub fn wanted() -> Option<Vec<usize>> {
    let fields = ResultField::all();
    let place = |name: &&str| fields.iter().position(|field| field.name == *name);
    WANTED.iter().map(place).collect()
}
