//! The limit ledger as a card shows it.

use super::content::words;
use super::{Card, Group};
use crate::model::PassKind;
use crate::operation::{Limit, Side};
use crate::quantity::{self};

/// One limit over the groups of passes.
pub(super) struct LimitRow {
    pub name: String,
    /// Value, bound and share of each group, and whether it binds there.
    pub cells: Vec<(String, bool)>,
    pub origin: String,
    /// Largest share over the groups.
    pub share: f64,
}

impl Card {
    /// Heads of the limit ledger.
    pub(super) const LIMIT_HEADS: [&'static str; 5] =
        ["Limit", "Value", "Bound", "Used", "Bound from"];

    /// The limit ledger of a group, the most used first.
    pub(super) fn limit_rows(&self, group: &Group) -> Vec<([String; 5], bool)> {
        let mut limits: Vec<&Limit> = group.cut.ledger.iter().collect();
        limits.sort_by(|a, b| b.share.total_cmp(&a.share));
        limits
            .into_iter()
            .map(|limit| {
                let mut origin = limit.origin.clone();
                if let (true, Some(relief)) = (limit.binding, limit.relief) {
                    origin = std::format!("{origin}. To free it: {}", relief.text(self.job.units));
                }
                (
                    [
                        words(limit.name),
                        self.limit_value(limit, limit.value),
                        self.limit_bound(limit),
                        percent(limit.share),
                        origin,
                    ],
                    limit.binding,
                )
            })
            .collect()
    }

    /// The ledgers of all groups side by side, the most used first.
    pub(super) fn limit_table(&self, groups: &[Group]) -> Vec<LimitRow> {
        let mut rows: Vec<LimitRow> = Vec::new();
        for (column, group) in groups.iter().enumerate() {
            for limit in &group.cut.ledger {
                let name = words(limit.name);
                if !rows.iter().any(|row| row.name == name) {
                    rows.push(LimitRow {
                        name: name.clone(),
                        cells: vec![("-".to_owned(), false); groups.len()],
                        // What follows a semicolon stands in the row of the practice.
                        origin: limit
                            .origin
                            .split(';')
                            .next()
                            .unwrap_or_default()
                            .to_owned(),
                        share: 0.0,
                    });
                }
                let row = rows.iter_mut().find(|row| row.name == name);
                if let Some(row) = row {
                    row.share = row.share.max(limit.share);
                    if let Some(cell) = row.cells.get_mut(column) {
                        let text = std::format!(
                            "{}, {}: {}",
                            self.limit_value(limit, limit.value),
                            self.limit_bound(limit),
                            percent(limit.share)
                        );
                        *cell = (text, limit.binding);
                    }
                }
            }
        }
        rows.sort_by(|a, b| b.share.total_cmp(&a.share));
        rows
    }

    /// What binds each group, and the smallest change that would free it.
    pub(super) fn binding_notes(&self, groups: &[Group]) -> Vec<String> {
        groups
            .iter()
            .filter_map(|group| {
                let limit = group.cut.binding()?;
                let sets_depth = group.cut.pass.kind == PassKind::Roughing
                    && limit.name == self.plan.largest_roughing.1;
                let relief = match limit.relief {
                    Some(relief) => std::format!("; to free it: {}", relief.text(self.job.units)),
                    None if sets_depth => " and sets the depth of the pass".to_owned(),
                    None => " and holds nothing back".to_owned(),
                };
                Some(std::format!(
                    "{}: {} binds at {}{relief}.",
                    self.group_title(group),
                    words(limit.name),
                    percent(limit.share)
                ))
            })
            .collect()
    }

    fn limit_value(&self, limit: &Limit, si: f64) -> String {
        let print = self.print();
        match limit.name {
            "cutting_speed" => print.cutting_speed(quantity::si(si)),
            "handwheel_pace" | "table_feed" => print.feed(quantity::si(si)),
            "smallest_chip" | "largest_chip" | "deflection" => print.fine(quantity::si(si)),
            "power" | "torque" | "clamping" => print.load(limit.kind, si),
            _ => print.any(limit.kind, si),
        }
    }

    fn limit_bound(&self, limit: &Limit) -> String {
        let sign = match limit.side {
            Side::AtMost => "max",
            Side::AtLeast => "min",
        };
        std::format!("{sign} {}", self.limit_value(limit, limit.bound))
    }
}

fn percent(share: f64) -> String {
    std::format!("{:.0} %", share * 100.0)
}
