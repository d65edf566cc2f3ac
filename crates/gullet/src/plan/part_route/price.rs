//! Time and cost a part for lots of several sizes.

use super::super::route::RouteEntry;
use crate::economics::LotCost;
use crate::error::Result;
use crate::formula::Step;
use crate::quantity::{Count, Money, MoneyRate, Time, si};

/// What one line of the summary takes and costs a part, in a lot.
#[derive(Clone)]
pub struct EntryPrice {
    /// The line.
    pub name: String,
    /// Time a part, with its share of the set-up.
    pub time: Time,
    /// Cost a part, with its share of the set-up.
    pub cost: Money,
    /// The formulas it comes from.
    pub steps: Vec<Step>,
}

/// A lot of parts.
#[derive(Clone)]
pub struct LotOfPart {
    /// Parts in the lot.
    pub size: Count,
    /// What each line takes and costs.
    pub entries: Vec<EntryPrice>,
    /// Material of one part.
    pub material_cost: Money,
    /// Time a part: the sum over the lines.
    pub time_per_part: Time,
    /// Cost a part: the sum over the lines, and the material.
    pub cost_per_part: Money,
}

impl LotOfPart {
    /// Prices a lot; an entry without a rate costs nothing.
    ///
    /// # Errors
    /// A rate or a time that is out of range.
    pub(super) fn new(
        size: Count,
        entries: &[RouteEntry],
        material_cost: Money,
    ) -> Result<LotOfPart> {
        let mut priced = Vec::new();
        let mut time: Time = si(0.0);
        let mut cost = material_cost;
        for entry in entries {
            let price = lot(size, entry)?.price()?;
            time += price.time_per_part;
            cost += price.cost_per_part;
            priced.push(EntryPrice {
                name: entry.name.clone(),
                time: price.time_per_part,
                cost: price.cost_per_part,
                steps: price.steps,
            });
        }
        Ok(LotOfPart {
            size,
            entries: priced,
            material_cost,
            time_per_part: time,
            cost_per_part: cost,
        })
    }
}

/// The times of an entry as those of a lot: set-up once, the rest a part.
fn lot(size: Count, entry: &RouteEntry) -> Result<LotCost> {
    let time = &entry.time;
    let rate: MoneyRate = entry.rate.unwrap_or(si(0.0));
    let mut lot = LotCost::from_text("lot_size=1; machine_rate=0 money/h; cutting_time=0 s")?;
    lot.lot_size = size;
    lot.machine_rate = rate;
    lot.setup_time = time.setup;
    lot.handling_time = time.clamping + time.handling + time.deburring;
    lot.cutting_time = time.cutting;
    lot.moving_time = time.returning;
    lot.gauging_time = time.measuring;
    Ok(lot)
}
