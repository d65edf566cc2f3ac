//! Cutting speeds.

use super::library::Library;
use super::rows::{Common, SpeedRow};
use super::select::{Question, TableRow, attempts};
use super::types::{Material, Process, Ranged, Support, ToolMaterial};
use crate::error::{Code, Error, Problem, Result};
use crate::quantity::{Velocity, si};

impl TableRow for SpeedRow {
    fn common(&self) -> &Common {
        &self.common
    }
    fn tools(&self) -> &[ToolMaterial] {
        &self.tools
    }
    fn process(&self) -> Process {
        self.process
    }
}

/// Low, start, high as a row gives them, scaled, or moved to the lower half.
pub(crate) fn adjusted([low, start, high]: [f64; 3], factor: f64, cautious: bool) -> [f64; 3] {
    let [low, start, high] = if cautious {
        [low, low, start]
    } else {
        [low, start, high]
    };
    [low * factor, start * factor, high * factor]
}

pub(crate) fn no_data(
    what: &str,
    material: &Material,
    tool: ToolMaterial,
    process: Process,
    answered: &[ToolMaterial],
) -> Error {
    let names: Vec<&str> = answered.iter().map(|tool| tool.name()).collect();
    let admissible = if names.is_empty() {
        format!("no tool material has a {what} for {process} of this material")
    } else {
        format!(
            "tool materials with a {what} for {process} of this material: {}",
            names.join(", ")
        )
    };
    Problem::new(
        Code::NoData,
        "tool_material",
        format!(
            "{tool} for {process} of {} ({})",
            material.name, material.condition
        ),
        admissible,
        if names.is_empty() {
            "give the value yourself, or add a row in a shop table"
        } else {
            "use one of these, give the value yourself, or add a row in a shop table"
        },
    )
    .into()
}

impl Library {
    /// Cutting speed for a material, tool material and process.
    ///
    /// `start` comes from the best row: the material's own class before a wider one, a value seen
    /// before one from memory, a named publisher before a withheld one, the process itself before
    /// milling in general. `low` and `high` span the rows that apply equally well. Every step from
    /// the rows to the answer that is an assumption stands in `assumptions`.
    ///
    /// # Errors
    /// [`Code::NoData`], naming the tool materials that have a value.
    ///
    /// ```
    /// use gullet::table::{Library, Process, ToolMaterial};
    /// let library = Library::builtin();
    /// let speed = library.cutting_speed(library.material("6061")?, ToolMaterial::Hss, Process::EndMilling)?;
    /// assert!((speed.start.value * 60.0 / 0.3048 - 250.0).abs() < 1e-9); // 250 ft/min
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn cutting_speed(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
    ) -> Result<Ranged<Velocity>> {
        self.speed_range(material, tool, process).ok_or_else(|| {
            let answered: Vec<ToolMaterial> = ToolMaterial::ALL
                .iter()
                .copied()
                .filter(|other| self.speed_range(material, *other, process).is_some())
                .collect();
            no_data("cutting speed", material, tool, process, &answered)
        })
    }

    fn speed_range(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
    ) -> Option<Ranged<Velocity>> {
        let selection = self.select(
            material,
            &self.speeds,
            &attempts(tool, process),
            Question::Speed,
        )?;
        let support = selection
            .hits
            .iter()
            .map(|hit| {
                let [low, start, high] =
                    adjusted(hit.row.values, selection.factor, selection.cautious);
                Support {
                    row: hit.row.common.id.clone(),
                    source: hit.row.common.source.clone(),
                    provenance: hit.row.common.provenance,
                    low: si(low),
                    start: si(start),
                    high: si(high),
                    why: format!(
                        "{}: {}, {}",
                        hit.row.common.material, hit.why, hit.row.process
                    ),
                }
            })
            .collect();
        Ranged::over(
            support,
            selection
                .stand_in
                .into_iter()
                .chain(selection.assumptions)
                .collect(),
        )
    }
}
