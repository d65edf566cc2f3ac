//! Hardness scales, converted over the points of the table.

use super::library::Library;
use super::rows::HardnessRow;
use crate::error::{Code, Problem, Result};

/// A hardness scale.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum HardnessScale {
    /// Brinell.
    Brinell,
    /// Vickers.
    Vickers,
    /// Rockwell C.
    RockwellC,
    /// Rockwell B.
    RockwellB,
}

impl HardnessScale {
    /// Symbol: HB, HV, HRC or HRB.
    pub fn symbol(self) -> &'static str {
        match self {
            HardnessScale::Brinell => "HB",
            HardnessScale::Vickers => "HV",
            HardnessScale::RockwellC => "HRC",
            HardnessScale::RockwellB => "HRB",
        }
    }
}

/// What a converted hardness rests on.
pub(crate) const ASSUMPTION: &str = "hardness converted over points for carbon and alloy steel, linear in HV; not valid for austenitic, cold-worked, cast iron or non-ferrous work";

/// What a converted hardness of other work rests on.
pub(crate) const FOREIGN: &str = "hardness converted over points for carbon and alloy steel, which this work is not: its Brinell value is only a guide to rows of tables";

/// Straight-line interpolation over points in any order; `None` outside them.
fn interpolate(points: &[(f64, f64)], x: f64) -> Option<f64> {
    let mut points = points.to_vec();
    points.sort_by(|a, b| a.0.total_cmp(&b.0));
    points.windows(2).find_map(|pair| match pair {
        [(x0, y0), (x1, y1)] if *x0 <= x && x <= *x1 && x1 > x0 => {
            Some(y0 + (y1 - y0) * ((x - x0) / (x1 - x0)))
        }
        _ => None,
    })
}

pub(crate) fn to_brinell(rows: &[HardnessRow], scale: HardnessScale, value: f64) -> Option<f64> {
    let points = |pick: fn(&HardnessRow) -> Option<(f64, f64)>| -> Vec<(f64, f64)> {
        rows.iter().filter_map(pick).collect()
    };
    let from_vickers = |hv: f64| interpolate(&points(|row| row.hv.zip(row.hb)), hv);
    match scale {
        HardnessScale::Brinell => Some(value),
        HardnessScale::Vickers => from_vickers(value),
        HardnessScale::RockwellC => {
            from_vickers(interpolate(&points(|row| row.hrc.zip(row.hv)), value)?)
        }
        HardnessScale::RockwellB => interpolate(&points(|row| row.hrb.zip(row.hb)), value),
    }
}

impl Library {
    /// Brinell hardness for a hardness on another scale, interpolated over the table of points.
    ///
    /// Holds for carbon and alloy steel; about 20 to 58 HRC, 66 to 99 HRB, 100 to 653 HV.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] where the points do not reach.
    pub fn brinell(&self, scale: HardnessScale, value: f64) -> Result<f64> {
        to_brinell(&self.hardness, scale, value)
            .filter(|hb| hb.is_finite() && *hb > 0.0)
            .ok_or_else(|| {
                let admissible = match scale {
                    HardnessScale::Brinell => "above 0 HB",
                    HardnessScale::Vickers => "100 to 653 HV",
                    HardnessScale::RockwellC => "20 to 58 HRC",
                    HardnessScale::RockwellB => "65.7 to 99 HRB",
                };
                Problem::new(
                    Code::OutOfRange,
                    "hardness",
                    format!("{value} {}", scale.symbol()),
                    admissible,
                    "the table of conversion points reaches no further; state the hardness in HB",
                )
                .into()
            })
    }
}
