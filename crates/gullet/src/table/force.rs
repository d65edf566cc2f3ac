//! Specific cutting force: pairs of the power law, unit power, mechanistic coefficients.

use super::library::Library;
use super::rows::{Common, LifeRow, MeasuredAt, PowerRow};
use super::select::{Attempt, Question, TableRow};
use super::types::{KienzlePair, Material, Process, Provenance, Ranged, Support, ToolMaterial};
use crate::error::{Code, Problem, Result};
use crate::formula::force;
use crate::quantity::{Angle, Length, Pressure, Ratio, si};
use core::ops::Deref;

/// One pair at a chip thickness, by the formula of the catalogue, without corrections.
fn specific_cutting_force(pair: &KienzlePair, chip_thickness: Length) -> Pressure {
    let none: Angle = si(0.0);
    let one: Ratio = si(1.0);
    force::specific_cutting_force::value(
        pair.kc11,
        pair.exponent,
        chip_thickness,
        none,
        none,
        one,
        one,
    )
}

/// The pairs of a material: the default, and the others that show how far sources disagree.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Kienzle {
    /// The pair to compute with.
    pub default: KienzlePair,
    /// Pairs of other sources.
    pub others: Vec<KienzlePair>,
    /// What was assumed.
    pub assumptions: Vec<String>,
}

/// Lowest and highest specific cutting force at one chip thickness, with the pairs that give them.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct ForceBand {
    /// Lowest.
    pub low: Pressure,
    /// By the default pair.
    pub default: Pressure,
    /// Highest.
    pub high: Pressure,
    /// Pair of the lowest.
    pub low_pair: KienzlePair,
    /// Pair of the highest.
    pub high_pair: KienzlePair,
}

impl Kienzle {
    /// Every pair at a chip thickness: lowest, default and highest specific cutting force.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a chip thickness that is not above zero.
    pub fn band(&self, chip_thickness: Length) -> Result<ForceBand> {
        if !(chip_thickness.value > 0.0 && chip_thickness.value.is_finite()) {
            return Err(Problem::new(
                Code::OutOfRange,
                "chip_thickness",
                format!("{} mm", chip_thickness.value * 1000.0),
                "above 0 mm",
                "the power law has no value without a chip",
            )
            .into());
        }
        let at = |pair: &KienzlePair| specific_cutting_force(pair, chip_thickness);
        let default = at(&self.default);
        let mut band = ForceBand {
            low: default,
            default,
            high: default,
            low_pair: self.default.clone(),
            high_pair: self.default.clone(),
        };
        for pair in &self.others {
            let value = at(pair);
            if value < band.low {
                band.low = value;
                band.low_pair = pair.clone();
            }
            if value > band.high {
                band.high = value;
                band.high_pair = pair.clone();
            }
        }
        Ok(band)
    }
}

/// Unit power of a material, with the chip thickness it belongs to and where it was measured.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct UnitPower {
    /// The range; also reached by dereferencing.
    pub range: Ranged<Pressure>,
    /// Chip thickness the value was found at; `None` where the source does not say.
    pub chip_thickness: Option<Length>,
    /// Cutter or motor.
    pub measured_at: MeasuredAt,
}

impl Deref for UnitPower {
    type Target = Ranged<Pressure>;
    fn deref(&self) -> &Ranged<Pressure> {
        &self.range
    }
}

impl TableRow for PowerRow {
    fn common(&self) -> &Common {
        &self.common
    }
    fn tools(&self) -> &[ToolMaterial] {
        &[]
    }
    fn process(&self) -> Process {
        Process::Milling
    }
}

/// Best to worst: at the cutter with a chip thickness, at the cutter, unstated, at the motor.
fn basis_rank(row: &PowerRow) -> u8 {
    match (row.measured_at, row.chip_thickness) {
        (MeasuredAt::Cutter, Some(_)) => 0,
        (MeasuredAt::Cutter, None) => 1,
        (MeasuredAt::Unstated, _) => 2,
        (MeasuredAt::Motor { .. }, _) => 3,
    }
}

impl Library {
    /// The pairs of the power law of specific cutting force.
    ///
    /// # Errors
    /// [`Code::NoData`] where the tables hold no whole pair.
    pub fn kienzle(&self, material: &Material) -> Result<Kienzle> {
        let Some((default, others)) = material.pairs.split_first() else {
            return Err(Problem::new(
                Code::NoData,
                "material",
                format!("{} ({})", material.name, material.condition),
                "a material with a pair k_c1.1 and m_c",
                "give both values yourself, or compute by unit power",
            )
            .into());
        };
        let mut assumptions = Vec::new();
        // A shop's own pair has no row among the sources and needs no publisher.
        let source = self.source(&default.source);
        if source.is_some_and(|source| source.publisher_withheld) {
            assumptions.push(format!(
                "the pair rests on {} alone, whose publisher is withheld",
                default.source
            ));
        }
        Ok(Kienzle {
            default: default.clone(),
            others: others.to_vec(),
            assumptions,
        })
    }

    /// Unit power (specific cutting energy).
    ///
    /// Values at the cutter with a chip thickness come before values at the motor, and the two are
    /// never mixed. Sharp tools; allow 1.1 to 1.6 times for wear.
    ///
    /// # Errors
    /// [`Code::NoData`] where no row applies.
    pub fn unit_power(&self, material: &Material) -> Result<UnitPower> {
        let ranks = [0, 1, 2, 3];
        let found = ranks.iter().find_map(|rank| {
            let rows = self.powers.iter().filter(|row| {
                basis_rank(row) == *rank || row.common.provenance == Provenance::Shop
            });
            let attempt = Attempt {
                tool: None,
                processes: vec![Process::Milling],
                assumptions: Vec::new(),
                cautious: false,
            };
            let selection = self.select(material, rows, &[attempt], Question::Power)?;
            let best = selection.hits.first()?;
            let (measured_at, chip) = (best.row.measured_at, best.row.chip_thickness);
            let tier = best.tier;
            let support = selection
                .hits
                .iter()
                .filter(|hit| {
                    hit.tier == tier
                        && hit.row.measured_at == measured_at
                        && hit.row.chip_thickness == chip
                })
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
            let mut assumptions: Vec<String> = selection
                .stand_in
                .into_iter()
                .chain(selection.assumptions)
                .collect();
            assumptions.push(match measured_at {
                MeasuredAt::Cutter => "power at the cutter, sharp tool".to_owned(),
                MeasuredAt::Motor {
                    efficiency: Some(x),
                } => format!("power at the motor, efficiency {x} included"),
                MeasuredAt::Motor { efficiency: None } => {
                    "power at the motor, efficiency included but not stated".to_owned()
                }
                MeasuredAt::Unstated => "not stated whether at the cutter or the motor".to_owned(),
            });
            let range = Ranged::over(support, assumptions)?;
            Some(UnitPower {
                range,
                chip_thickness: chip.map(si),
                measured_at,
            })
        });
        found.ok_or_else(|| {
            Problem::new(
                Code::NoData,
                "material",
                format!("{} ({})", material.name, material.condition),
                "a material with a row of unit power",
                "give the unit power yourself, or add a row in a shop table",
            )
            .into()
        })
    }

    /// Taylor constants for a material and a tool material, the nearest class first. Where a shop's
    /// own rows apply, they answer alone.
    ///
    /// ```
    /// use gullet::table::{Library, ToolMaterial};
    /// let library = Library::builtin();
    /// let rows = library.tool_life_for(library.material("4140 annealed")?, ToolMaterial::UncoatedCarbide)?;
    /// assert_eq!((rows[0].work.as_str(), rows[0].exponent[1]), ("AISI 4140", 0.22));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    ///
    /// # Errors
    /// [`Code::NoData`] where no row is for the two.
    pub fn tool_life_for(&self, material: &Material, tool: ToolMaterial) -> Result<Vec<&LifeRow>> {
        let near = |row: &&LifeRow| self.nearness(material, &row.classes);
        let of_tool = self.lives.iter().filter(|row| row.tools.contains(&tool));
        let mut rows: Vec<&LifeRow> = of_tool.filter(|row| near(row).is_some()).collect();
        if rows.iter().any(|row| row.provenance == Provenance::Shop) {
            rows.retain(|row| row.provenance == Provenance::Shop);
        }
        rows.sort_by_key(near);
        if rows.is_empty() {
            return Err(Problem::new(
                Code::NoData,
                "material",
                format!(
                    "{} ({}) with {}",
                    material.name,
                    material.condition,
                    tool.name()
                ),
                "a material and a tool material with Taylor constants",
                "give n and C yourself, add a row in a shop table, or fit your own readings",
            )
            .into());
        }
        Ok(rows)
    }

    /// Taylor constants for a tool material, in the order of the table, each with its work material.
    ///
    /// # Errors
    /// [`Code::NoData`] where no row is for the tool material.
    pub fn tool_life(&self, tool: ToolMaterial) -> Result<Vec<&LifeRow>> {
        let rows: Vec<_> = self
            .lives
            .iter()
            .filter(|row| row.tools.contains(&tool))
            .collect();
        if rows.is_empty() {
            return Err(Problem::new(
                Code::NoData,
                "tool_material",
                tool.name(),
                "a tool material with Taylor constants",
                "give n and C yourself, or add a row in a shop table",
            )
            .into());
        }
        Ok(rows)
    }
}
