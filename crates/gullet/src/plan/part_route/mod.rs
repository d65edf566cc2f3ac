//! The route of a part over several machines: operations in order, each in a clamping, with a block
//! squared in between where the file asks for it, a card a clamping, and a summary with time and cost.

mod card;
mod given;
mod html;
mod json;
mod operations;
mod price;
mod read;
mod schema;
mod steps;
mod text;

pub use card::PartCard;
pub use operations::{PartOperation, PartStep};
pub use price::{EntryPrice, LotOfPart};

use super::route::SquaredBlock;
use crate::model::Practice;
use crate::quantity::{Count, Money, MoneyRate, UnitSystem};
use crate::table::Material;

pub(in crate::plan) use read::part;
pub use schema::part_schema;

/// A part made by several operations.
///
/// ```
/// use gullet::plan::{PartCard, PartRoute};
/// use gullet::table::Library;
/// let file = r#"
///     route = "part"
///     title = "Spacer with two holes"
///     material.id = "1018"
///     practice.base = "experienced"
///     rates = { machine_rate = "48 money/h", lots = [1, 10] }
///     [[operation]]
///     name = "Drill two holes"
///     clamping = "vise on the mill"
///     operation = "drilling"
///     machine = "small-cnc-mill"
///     count = 2
///     diameter = "8.5 mm"
///     depth = "12 mm"
/// "#;
/// let library = Library::builtin();
/// let card = PartCard::new(PartRoute::from_toml(file, library)?, library)?;
/// assert_eq!(card.lots.len(), 2);
/// assert!(card.lots[0].cost_per_part.value > card.lots[1].cost_per_part.value);
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct PartRoute {
    /// Title on the cards.
    pub title: String,
    /// Units the cards print in.
    pub units: UnitSystem,
    /// The work material.
    pub material: Material,
    /// The practice.
    pub practice: Practice,
    /// What is done, in order.
    pub steps: Vec<PartStep>,
    /// Machine and operator, money per time, where an operation names no rate of its own.
    pub rate: Option<MoneyRate>,
    /// Material of one part.
    pub material_cost: Money,
    /// Lots to tell time and cost for.
    pub lots: Vec<Count>,
    /// What was assumed, for the card.
    pub assumptions: Vec<String>,
    /// The block that is squared, where a step asks for it.
    pub block: Option<Box<SquaredBlock>>,
}
