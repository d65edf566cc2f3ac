//! Plans: job files with their passes, blocks squared on six faces, parts made by several operations;
//! their time and cost, and the cards of all.

mod card;
mod document;
mod job;
mod job_file;
mod part_route;
mod pass_plan;
pub mod passes;
mod process_card;
mod route;
mod strips;

pub use card::{Card, Instructions, cut_json};
pub use job::{Job, JobKey, Part, Stock, Strategy, job_keys, job_reference, job_schema};
pub use job_file::{JobFile, JobFileCard, JobForm};
pub use part_route::{
    EntryPrice, LotOfPart, PartCard, PartOperation, PartRoute, PartStep, part_schema,
};
pub use pass_plan::{PassPlan, PassTime, PlannedPass};
pub use process_card::ProcessCard;
pub use route::{
    Axis, BlockClamping, DoneClamping, Ends, Face, Placement, Route, RouteCard, RouteCost,
    RouteEntry, RouteTotals, Seat, Seating, SquaredBlock, TimeParts, Vise, route_reference,
    route_schema,
};
pub use strips::Strips;
