//! Reference tables.

use crate::error::Result;
use crate::quantity::*;

/// ISO 513 group.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[allow(missing_docs)]
pub enum Iso513 {
    P,
    M,
    K,
    N,
    S,
    H,
}

/// Cutter material.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[allow(missing_docs)]
pub enum ToolMaterial {
    Hss,
    HssCo,
    UncoatedCarbide,
    CoatedCarbide,
}

impl ToolMaterial {
    /// Name.
    pub fn name(self) -> &'static str {
        "HSS"
    }
}

/// Process.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[allow(missing_docs)]
pub enum Process {
    EndMilling,
    FaceMilling,
}

/// Support.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs)]
pub struct Support {
    pub row: String,
    pub source: String,
}

/// Ranged.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs)]
pub struct Ranged<T> {
    pub low: T,
    pub start: T,
    pub high: T,
    pub support: Vec<Support>,
    pub assumptions: Vec<String>,
}

/// Pair.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs)]
pub struct KienzlePair {
    pub kc11: Pressure,
    pub exponent: Ratio,
    pub source: String,
}

/// Material.
#[derive(Debug, Clone, PartialEq)]
#[allow(missing_docs)]
pub struct Material {
    pub id: String,
    pub name: String,
    pub iso513: Iso513,
    pub pairs: Vec<KienzlePair>,
}

/// Library.
pub struct Library;

#[allow(missing_docs, unused_variables)]
impl Library {
    pub fn builtin() -> &'static Library {
        &Library
    }
    pub fn material(&self, id: &str) -> Result<&Material> {
        Err(crate::error::unknown_name("material", id, []).into())
    }
    pub fn cutting_speed(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
    ) -> Result<Ranged<Velocity>> {
        Err(crate::error::unknown_name("material", "", []).into())
    }
    pub fn feed_per_tooth(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
        diameter: Length,
        axial_depth: Length,
    ) -> Result<Ranged<Length>> {
        Err(crate::error::unknown_name("material", "", []).into())
    }
    pub fn unit_power(&self, material: &Material) -> Result<Ranged<Pressure>> {
        Err(crate::error::unknown_name("material", "", []).into())
    }
}
