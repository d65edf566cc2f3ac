//! Routes: several clampings of one part, each with its card, and a summary of them all.
//!
//! The built-in route squares a sawn block on six faces. A summary is made of [`RouteEntry`]s, which
//! other work on the part may join.

mod block;
mod card;
mod face;
mod html;
mod json;
mod order;
mod planned;
mod read;
mod refusals;
mod sections;
mod summary;
mod text;
mod totals;
mod vise;
mod words;

#[cfg(test)]
mod tests;

pub use block::SquaredBlock;
pub use card::RouteCard;
pub use face::{Axis, Face};
pub use order::{Ends, Seat, Seating};
pub use planned::{BlockClamping, DoneClamping, Route};
pub(in crate::plan) use read::block;
pub use read::{route_reference, route_schema};
pub(in crate::plan) use summary::time_table;
pub(in crate::plan) use totals::clock;
pub use totals::{RouteCost, RouteEntry, RouteTotals, TimeParts};
pub use vise::{Placement, Vise};
