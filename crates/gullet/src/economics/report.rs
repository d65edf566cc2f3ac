//! The economic speed and a lot as text and as JSON.

use serde_json::{Map, Value, json};

use super::edge::{Economics, Priced, Snapped};
use super::lot::{Allowance, Learning, LotPrice};
use crate::formula::{Parameter, Step};
use crate::operation::Field;
use crate::quantity::{Kind, UnitSystem, format};

fn shown(kind: Kind, si: f64, units: UnitSystem) -> Value {
    json!({"si": si, "kind": kind.name(), "text": format(kind, si, units)})
}

fn fields_json(fields: &[Field], units: UnitSystem) -> Map<String, Value> {
    fields
        .iter()
        .filter_map(|field| {
            let value = field.value?;
            Some((field.name.to_owned(), shown(field.kind, value, units)))
        })
        .collect()
}

fn inputs_json(parameters: &[Parameter], values: &[f64], units: UnitSystem) -> Value {
    let fields: Map<String, Value> = parameters
        .iter()
        .zip(values)
        .map(|(parameter, si)| (parameter.name.to_owned(), shown(parameter.kind, *si, units)))
        .collect();
    Value::Object(fields)
}

fn steps_json(steps: &[Step], units: UnitSystem) -> Value {
    steps
        .iter()
        .map(|step| json!({"formula": step.formula.name, "text": step.text(units)}))
        .collect()
}

/// A table of text: the first column to the left, the others to the right.
fn table(rows: &[Vec<String>]) -> String {
    let columns = rows.iter().map(Vec::len).max().unwrap_or(0);
    let width = |column: usize| {
        let cells = rows.iter().filter_map(|row| row.get(column));
        cells.map(|cell| cell.chars().count()).max().unwrap_or(0)
    };
    let widths: Vec<usize> = (0..columns).map(width).collect();
    let mut text = String::new();
    for row in rows {
        let mut line = String::new();
        for (index, (cell, width)) in row.iter().zip(&widths).enumerate() {
            let pad = " ".repeat(width - cell.chars().count());
            line += &match index {
                0 => format!("  {cell}{pad}"),
                _ => format!("  {pad}{cell}"),
            };
        }
        text += line.trim_end();
        text.push('\n');
    }
    text
}

fn words(name: &str) -> String {
    name.replace('_', " ")
}

impl Priced {
    /// As JSON: every quantity with its SI value and as it is printed.
    pub fn json(&self, units: UnitSystem) -> Value {
        let mut fields = fields_json(&self.speed.fields(), units);
        if let Some(whole) = self.whole {
            let whole = fields_json(&whole.fields(), units);
            fields.insert("whole_parts".to_owned(), Value::Object(whole));
        }
        fields.insert("steps".to_owned(), steps_json(&self.steps, units));
        Value::Object(fields)
    }
}

/// Columns of speeds beside each other, a line a field.
fn speeds_text(columns: &[(&str, &Priced)], units: UnitSystem) -> String {
    let mut rows = vec![vec![String::new()]];
    rows.extend(
        super::EconomicSpeed::FIELDS
            .iter()
            .map(|field| vec![words(field.name)]),
    );
    rows.extend(
        super::WholeParts::FIELDS
            .iter()
            .map(|field| vec![format!("{}, whole parts", words(field.name))]),
    );
    for (heading, priced) in columns {
        let none = super::WholeParts::FIELDS.to_vec();
        let whole = priced.whole.map_or(none, |whole| whole.fields());
        let cells = priced.speed.fields().into_iter().chain(whole);
        let cells = cells.map(|field| {
            field
                .value
                .map_or_else(|| "-".to_owned(), |si| format(field.kind, si, units))
        });
        let column = core::iter::once((*heading).to_owned()).chain(cells);
        for (row, cell) in rows.iter_mut().zip(column) {
            row.push(cell);
        }
    }
    table(&rows)
}

impl Snapped {
    /// As JSON.
    pub fn json(&self, units: UnitSystem) -> Value {
        let maybe = |priced: &Option<Priced>| priced.as_ref().map(|priced| priced.json(units));
        json!({
            "chosen": self.chosen.json(units),
            "below": maybe(&self.below),
            "above": maybe(&self.above),
            "chosen_whole_parts": maybe(&self.chosen_whole),
            "extra_cost": shown(Kind::Money, self.extra_cost.value, units),
            "extra_cost_share": shown(Kind::Ratio, self.extra_cost_share.value, units),
            "extra_time": shown(Kind::Time, self.extra_time.value, units),
            "extra_time_share": shown(Kind::Ratio, self.extra_time_share.value, units),
            "left_out": self.left_out,
        })
    }

    fn text(&self, units: UnitSystem) -> String {
        let mut columns = vec![("wanted", &self.wanted), ("chosen", &self.chosen)];
        columns.extend(self.below.as_ref().map(|priced| ("step below", priced)));
        columns.extend(self.above.as_ref().map(|priced| ("step above", priced)));
        columns.extend(
            self.chosen_whole
                .as_ref()
                .map(|priced| ("best in whole parts", priced)),
        );
        let percent = |share: f64| format!("{:+.2} %", 100.0 * share);
        let mut text = format!("{} on this spindle\n", words(self.aim.name()));
        text += &speeds_text(&columns, units);
        text += &format!(
            "  the spindle's speed costs {} a part more ({}) and takes {} longer ({})\n",
            format(Kind::Money, self.extra_cost.value, units),
            percent(self.extra_cost_share.value),
            format(Kind::Time, self.extra_time.value, units),
            percent(self.extra_time_share.value),
        );
        if self.left_out > 0 {
            text += &format!(
                "  {} steps left out: their life is beyond what a number holds\n",
                self.left_out
            );
        }
        text
    }
}

impl Economics {
    /// As text for a terminal.
    pub fn text(&self, units: UnitSystem) -> String {
        let mut columns = vec![("least cost", &self.least_cost)];
        columns.extend(
            self.least_time
                .as_ref()
                .map(|priced| ("least time", priced)),
        );
        let mut text = String::from("ECONOMIC SPEED\n");
        text += &speeds_text(&columns, units);
        for snapped in [&self.spindle_least_cost, &self.spindle_least_time]
            .into_iter()
            .flatten()
        {
            text += "\n";
            text += &snapped.text(units);
        }
        text += "\nworked, least cost\n";
        for step in &self.least_cost.steps {
            text += &format!("  {}\n", step.text(units));
        }
        text += "\nTaylor's equation holds for one tool, work material, fluid and wear criterion, within the\nspeeds tested. Starting values: the limits of machine, cutter and hold go before them.\n";
        text
    }

    /// As JSON.
    pub fn json(&self, units: UnitSystem) -> Value {
        let spindle = |snapped: &Option<Snapped>| snapped.as_ref().map(|one| one.json(units));
        json!({
            "inputs": inputs_json(super::EdgeEconomics::PARAMETERS, &self.inputs.si(), units),
            "least_cost": self.least_cost.json(units),
            "least_time": self.least_time.as_ref().map(|priced| priced.json(units)),
            "spindle_least_cost": spindle(&self.spindle_least_cost),
            "spindle_least_time": spindle(&self.spindle_least_time),
        })
    }
}

impl LotPrice {
    /// Which allowance is in it, in words.
    pub fn allowance_text(&self, units: UnitSystem) -> String {
        let show = |share: f64| format(Kind::Ratio, share, units);
        match self.inputs.allowance() {
            Allowance::None => "none".to_owned(),
            Allowance::OfNormalTime(share) => {
                format!("{} of the normal time", show(share.value))
            }
            Allowance::OfStandardTime(share) => {
                format!("{} of the standard time", show(share.value))
            }
        }
    }

    /// How hands learn, in words.
    pub fn learning_text(&self, units: UnitSystem) -> String {
        let show = |rate: f64| format(Kind::Ratio, rate, units);
        match self.inputs.learning() {
            Learning::None => "none".to_owned(),
            Learning::Wright(rate) => {
                format!("{}, cumulative average (Wright)", show(rate.value))
            }
            Learning::Crawford(rate) => format!("{}, unit curve (Crawford)", show(rate.value)),
        }
    }

    /// As text for a terminal.
    pub fn text(&self, units: UnitSystem) -> String {
        let time = |si| format(Kind::Time, si, units);
        let money = |si| format(Kind::Money, si, units);
        let mut rows = vec![["a part", "time", "cost"].map(str::to_owned).to_vec()];
        for share in &self.shares {
            rows.push(vec![
                words(share.name),
                time(share.time.value),
                money(share.cost.value),
            ]);
        }
        rows.push(vec![
            "together".to_owned(),
            time(self.time_per_part.value),
            money(self.cost_per_part.value),
        ]);
        rows.push(vec![
            "the lot".to_owned(),
            time(self.lot_time.value),
            money(self.lot_cost.value),
        ]);
        format!(
            "LOT of {}\n{}  allowance: {}\n  learning: {}\n",
            format(Kind::Count, self.inputs.lot_size.value, units),
            table(&rows),
            self.allowance_text(units),
            self.learning_text(units),
        )
    }

    /// The worked steps, a line each.
    pub fn steps_text(&self, units: UnitSystem) -> String {
        let lines = self
            .steps
            .iter()
            .map(|step| format!("  {}\n", step.text(units)));
        format!("worked\n{}", lines.collect::<String>())
    }

    /// As JSON.
    pub fn json(&self, units: UnitSystem) -> Value {
        let shares: Vec<Value> = self
            .shares
            .iter()
            .map(|share| {
                json!({
                    "name": share.name,
                    "meaning": share.meaning,
                    "time": shown(Kind::Time, share.time.value, units),
                    "cost": shown(Kind::Money, share.cost.value, units),
                })
            })
            .collect();
        let time = |si| shown(Kind::Time, si, units);
        let money = |si| shown(Kind::Money, si, units);
        json!({
            "inputs": inputs_json(super::LotCost::PARAMETERS, &self.inputs.si(), units),
            "allowance": self.allowance_text(units),
            "learning": self.learning_text(units),
            "shares": shares,
            "normal_time": time(self.normal_time.value),
            "standard_time": time(self.standard_time.value),
            "time_per_part": time(self.time_per_part.value),
            "cost_per_part": money(self.cost_per_part.value),
            "lot_time": time(self.lot_time.value),
            "lot_cost": money(self.lot_cost.value),
            "steps": steps_json(&self.steps, units),
        })
    }
}
