//! Operations that are described once and reach every face from there: holes, turning, sawing,
//! threads, and the milling that is no straight cut.
//!
//! An operation is a file: its inputs and results, the chain of formulas from a spindle speed and a
//! feed to what follows, and the limits it looks at. What they have in common (the speed that the
//! machine really has, the feed that every limit leaves, the ledger, the worked steps, the columns)
//! is written once beside them.

mod cut;
pub(crate) mod define;
mod describe;
pub(crate) mod ground;
mod hole;
pub(crate) mod limits;
mod mills;
pub(crate) mod pick;
pub(crate) mod prepared;
pub(crate) mod report;
pub(crate) mod request;
mod rows;
pub(crate) mod settings;
pub(crate) mod settle;

mod ball_nose_finishing;
mod band_sawing;
mod bore_milling;
mod boring;
mod chamfering;
mod corner_radius_finishing;
mod countersinking;
mod drilling;
mod facing;
mod helical_entry;
mod lathe;
mod parting;
mod plunging;
mod reaming;
mod tapping;
mod thread_milling;
mod threading;
mod turning;

pub use cut::{NamedBand, ProcessCut};
pub use describe::{Process, ProcessExample, ProcessInput};
pub use request::{Bench, Request};
pub use threading::threading_plan;

use crate::error::Result;
use crate::formula::finish::SQRT_3;
use crate::operation::cut::Log;
use crate::operation::lanes::LANES;
use crate::quantity::math::number;
use crate::quantity::{Length, Ratio, RotationalSpeed};
use ground::Ground;
use limits::{Doubt, Eye};

/// One value of each row of a block.
pub(crate) type Lanes = [f64; LANES];

/// Every operation, in the order in which lists show them.
pub static ALL: &[&Process] = &[
    &drilling::PROCESS,
    &reaming::PROCESS,
    &tapping::PROCESS,
    &countersinking::PROCESS,
    &turning::PROCESS,
    &facing::PROCESS,
    &boring::PROCESS,
    &parting::PROCESS,
    &threading::PROCESS,
    &band_sawing::PROCESS,
    &bore_milling::PROCESS,
    &helical_entry::PROCESS,
    &thread_milling::PROCESS,
    &chamfering::PROCESS,
    &plunging::PROCESS,
    &ball_nose_finishing::PROCESS,
    &corner_radius_finishing::PROCESS,
];

/// The operation of this name.
///
/// # Errors
/// `UnknownName` with the nearest right one.
///
/// ```
/// use gullet::operation::process;
/// assert_eq!(process::find("drilling")?.title, "Drilling");
/// assert!(process::find("driling").is_err());
/// # Ok::<(), gullet::Error>(())
/// ```
pub fn find(name: &str) -> Result<&'static Process> {
    ALL.iter()
        .copied()
        .find(|process| process.name == name)
        .ok_or_else(|| describe::unknown(name))
}

/// The records of an operation; written by the macro `process`.
pub(crate) trait Shape: Sized + Send + Sync + 'static {
    /// Its own inputs.
    type Own: Copy;
    type OwnBlock: Send;
    /// What it gives.
    type Results: Copy;
    type ResultsBlock: Send;

    fn process() -> &'static Process;
    fn own(values: &[f64]) -> Self::Own;
    fn asked(own: &Self::Own) -> settle::Asked;
    fn values(results: &Self::Results) -> Vec<f64>;
    fn own_block() -> Self::OwnBlock;
    fn results_block() -> Self::ResultsBlock;
    fn own_of(block: &Self::OwnBlock, lane: usize) -> Self::Own;
    fn results_of(block: &Self::ResultsBlock, lane: usize) -> Self::Results;
    fn set_results(block: &mut Self::ResultsBlock, lane: usize, results: Self::Results);
    fn input_lanes(block: &mut Self::OwnBlock, place: usize) -> Option<&mut Lanes>;
    fn result_lanes(block: &Self::ResultsBlock, place: usize) -> Option<&Lanes>;
}

crate::operation::lanes::lanes! {
    /// What speed and feed an operation starts from.
    Start, StartBlock {
        /// Diameter at which the cutting speed is meant.
        diameter: Length,
        /// Cutting speed wanted, before the spindle's own speeds are looked at.
        cutting_speed: Velocity,
        /// Highest spindle speed the operation allows; infinite where it sets none.
        highest_speed: RotationalSpeed,
        /// Feed wanted, per revolution or per tooth.
        feed: Length,
        /// The smallest feed that may be set; the wanted one where the feed is not free, as in threads.
        least_feed: Length,
        /// Feed speed of the machine over feed times spindle speed: the teeth, and what a path inside
        /// or outside of a circle makes of it.
        feeds_per_rev: Ratio,
    }
}

crate::operation::lanes::lanes! {
    /// What every operation's limits and spread are made from.
    Loads, LoadsBlock {
        /// Power and torque that limits are checked with.
        limit_power: Power,
        limit_torque: Torque,
        /// Exponent of the feed in them.
        exponent: Ratio,
        /// Chip thickness that the pairs are compared at.
        chip: Length,
        /// With the material's own pair and a sharp edge.
        force: Force,
        power: Power,
        time: Time,
    }
}

/// How an operation is computed: formulas only, no branch that depends on a number, the same for
/// scalar calls, columns and worked steps.
pub(crate) trait Operate: Shape {
    /// Diameter and depth at which the tables of feeds are read.
    fn size(own: &Self::Own) -> (Length, Length);
    /// What the operation makes of the whole range of the tables' cutting speeds.
    #[inline(always)]
    fn table_factor(_own: &Self::Own) -> Ratio {
        number(1.0)
    }
    fn start(log: &mut impl Log, own: &Self::Own, ground: &Ground) -> Start;
    fn evaluate(
        log: &mut impl Log,
        own: &Self::Own,
        ground: &Ground,
        speed: RotationalSpeed,
        feed: Length,
    ) -> (Self::Results, Loads);
    fn limits(
        own: &Self::Own,
        ground: &Ground,
        feed: Length,
        results: &Self::Results,
        loads: &Loads,
        eye: &mut impl Eye,
    );
    fn doubts(own: &Self::Own, ground: &Ground, results: &Self::Results, doubt: &mut impl Doubt);
    /// Depth after each pass, where the same way is gone over several times.
    fn depths(_results: &Self::Results) -> Vec<Length> {
        Vec::new()
    }
}
