//! Area rates of band sawing.

use super::library::Library;
use super::rows::{Common, SawRow};
use super::select::{Attempt, Question, TableRow};
use super::types::{Material, Process, Ranged, Support, ToolMaterial};
use crate::error::{Code, Problem, Result};
use crate::quantity::{AreaRate, Length, Velocity, si};

/// Area that a band saw cuts per time, with the blade speed and the stock it belongs to.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct SawRate {
    /// The range.
    pub range: Ranged<AreaRate>,
    /// Blade speed the start value belongs to; at the same load of the teeth the rate goes with it.
    pub blade_speed: Velocity,
    /// Widths of the stock the start value was given for.
    pub stock: (Length, Length),
}

impl TableRow for SawRow {
    fn common(&self) -> &Common {
        &self.common
    }
    fn tools(&self) -> &[ToolMaterial] {
        &[ToolMaterial::Hss]
    }
    fn process(&self) -> Process {
        Process::Sawing
    }
}

impl Library {
    /// Area that a bimetal band saw cuts per time in solid stock.
    ///
    /// # Errors
    /// [`Code::NoData`] where no row applies.
    ///
    /// ```
    /// use gullet::table::Library;
    /// let library = Library::builtin();
    /// let rate = library.saw_rate(library.material("304")?)?;
    /// let in2_per_min = 0.0254 * 0.0254 / 60.0;
    /// assert!((rate.range.start.value / in2_per_min - 2.5).abs() < 1e-9);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn saw_rate(&self, material: &Material) -> Result<SawRate> {
        let attempt = Attempt {
            tool: None,
            processes: vec![Process::Sawing],
            assumptions: Vec::new(),
            cautious: false,
        };
        let found = self
            .select(material, &self.saws, &[attempt], Question::Power)
            .and_then(|selection| {
                let best = selection.hits.first()?.row;
                let (blade_speed, stock) = (best.blade_speed[1], best.stock);
                let support = selection
                    .hits
                    .iter()
                    .map(|hit| {
                        let [low, start, high] = hit.row.values;
                        Support {
                            row: hit.row.common.id.clone(),
                            source: hit.row.common.source.clone(),
                            provenance: hit.row.common.provenance,
                            low: si(low),
                            start: si(start),
                            high: si(high),
                            why: format!("{}: {}", hit.row.common.material, hit.why),
                        }
                    })
                    .collect();
                let mut assumptions = selection.assumptions;
                assumptions.push(
                    "bimetal blade in solid stock; published charts disagree by a factor of 2 to 3"
                        .to_owned(),
                );
                Some(SawRate {
                    range: Ranged::over(support, assumptions)?,
                    blade_speed: si(blade_speed),
                    stock: (si(stock.0), si(stock.1)),
                })
            });
        found.ok_or_else(|| {
            Problem::new(
                Code::NoData,
                "material",
                format!("{} ({})", material.name, material.condition),
                "a material with an area rate of band sawing",
                "give the area rate or the feed per tooth yourself, or add a row in a shop table",
            )
            .into()
        })
    }
}
