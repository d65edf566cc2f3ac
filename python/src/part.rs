//! Parts made by several operations: summary, cards, time and cost of lots.

use crate::cut::made;
use crate::errors::raise;
use crate::job::units_name;
use crate::model::{Library, Tables};
use crate::quantity::{Quantity, escaped, scalar};
use gullet::plan::{LotOfPart, PartCard as CoreCard, PartRoute, RouteEntry, TimeParts};
use gullet::quantity::{Kind, Time};
use pyo3::prelude::*;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::sync::Arc;

/// The cards of a part made by several operations; see ``gullet.card``.
///
/// >>> import gullet
/// >>> card = gullet.card({
/// ...     "route": "part", "title": "Spacer with two holes",
/// ...     "material": {"id": "1018"}, "practice": {"base": "experienced"},
/// ...     "rates": {"machine_rate": "48 money/h", "lots": [1, 10]},
/// ...     "operation": [{"operation": "drilling", "machine": "small-cnc-mill", "count": 2,
/// ...                    "clamping": "vise on the mill", "diameter": "8.5 mm", "depth": "12 mm"}],
/// ... })
/// >>> card.title, [entry.name for entry in card.entries]
/// ('Spacer with two holes', ['Drilling'])
/// >>> card.lots[0].cost_per_part > card.lots[1].cost_per_part
/// True
#[pyclass(frozen, module = "gullet", name = "PartCard")]
pub struct PartCard {
    card: Arc<CoreCard>,
    text: String,
    toml: bool,
    tables: Tables,
}

type Times = Vec<(&'static str, Quantity)>;
type EntryRow = (String, String, Quantity, Times, Option<Quantity>);
type LotRow = (
    u64,
    Quantity,
    Quantity,
    Quantity,
    Vec<(String, Quantity, Quantity)>,
);

fn time(si: Time) -> Quantity {
    scalar(Kind::Time, si.value)
}

fn times(parts: &TimeParts) -> Times {
    let names = TimeParts::NAMES.iter().map(|(name, _)| *name);
    names.zip(parts.parts().into_iter().map(time)).collect()
}

fn entry_row(entry: &RouteEntry) -> EntryRow {
    (
        entry.name.clone(),
        entry.machine.clone(),
        time(entry.time.total()),
        times(&entry.time),
        entry.rate.map(|rate| scalar(Kind::MoneyRate, rate.value)),
    )
}

fn lot_row(lot: &LotOfPart) -> LotRow {
    let money = |si: f64| scalar(Kind::Money, si);
    (
        lot.size.value as u64,
        time(lot.time_per_part),
        money(lot.cost_per_part.value),
        money(lot.material_cost.value),
        lot.entries
            .iter()
            .map(|entry| {
                (
                    entry.name.clone(),
                    time(entry.time),
                    money(entry.cost.value),
                )
            })
            .collect(),
    )
}

#[pymethods]
impl PartCard {
    /// Title of the part.
    #[getter]
    fn title(&self) -> &str {
        &self.card.route.title
    }

    /// System its cards are printed in.
    #[getter]
    fn units(&self) -> &'static str {
        units_name(self.card.route.units)
    }

    /// What was left out and assumed.
    #[getter]
    fn assumptions(&self) -> Vec<String> {
        self.card.route.assumptions.clone()
    }

    /// Time of a single part, set-up included.
    #[getter]
    fn time(&self) -> Quantity {
        time(self.card.totals.time.total())
    }

    /// That time in its parts.
    #[getter]
    fn times<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        made(py, "_times", (times(&self.card.totals.time),))
    }

    /// The lines of the summary: operations and clampings, in order.
    #[getter]
    fn entries<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows: Vec<EntryRow> = self.card.entries.iter().map(entry_row).collect();
        made(py, "_part_entries", (rows,))
    }

    /// Time and cost of a part in lots of several sizes.
    #[getter]
    fn lots<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyAny>> {
        let rows: Vec<LotRow> = self.card.lots.iter().map(lot_row).collect();
        made(py, "_part_lots", (rows,))
    }

    /// What can hurt, every caution once.
    #[getter]
    fn cautions(&self) -> Vec<String> {
        self.card.cautions()
    }

    /// Summary and cards as text.
    #[getter]
    fn text(&self) -> String {
        self.card.text()
    }

    /// Summary and cards as text, with every worked step.
    #[getter]
    fn text_with_steps(&self) -> String {
        self.card.text_with_steps()
    }

    /// The same as printable sheets.
    #[getter]
    fn html(&self) -> String {
        self.card.html()
    }

    /// The sheets with every worked step.
    #[getter]
    fn html_with_steps(&self) -> String {
        self.card.html_with_steps()
    }

    /// Summary and cards as JSON.
    fn to_json(&self) -> String {
        self.card.json().to_string()
    }

    fn __str__(&self) -> String {
        self.card.text()
    }

    fn __repr__(&self) -> String {
        format!(
            "<PartCard {}: {} operations>",
            self.card.route.title,
            self.card.route.steps.len()
        )
    }

    fn _repr_html_(&self) -> String {
        format!("<pre>{}</pre>", escaped(&self.card.text()))
    }

    fn __eq__(&self, other: &PartCard) -> bool {
        self.card.route == other.card.route && self.tables.same(&other.tables)
    }

    fn __hash__(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        self.card.route.title.hash(&mut hasher);
        hasher.finish()
    }

    fn __reduce__(&self, py: Python<'_>) -> PyResult<(Py<PyAny>, (String, bool, Library))> {
        let make = py.import("gullet._gullet")?.getattr("_part_card")?.unbind();
        Ok((make, (self.text.clone(), self.toml, self.tables.to_py())))
    }
}

/// The cards of the part that a text describes.
#[pyfunction]
#[pyo3(signature = (text, toml, library=None))]
pub fn _part_card(
    py: Python<'_>,
    text: String,
    toml: bool,
    library: Option<&Bound<'_, Library>>,
) -> PyResult<PartCard> {
    let tables = Tables::of(library);
    let card = py.detach(|| {
        let library = tables.get();
        let route = if toml {
            PartRoute::from_toml(&text, library)?
        } else {
            PartRoute::from_json(&text, library)?
        };
        CoreCard::new(route, library)
    });
    let card = Arc::new(card.map_err(|error| raise(py, &error))?);
    Ok(PartCard {
        card,
        text,
        toml,
        tables,
    })
}
