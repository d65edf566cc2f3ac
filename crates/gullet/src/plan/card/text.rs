//! The card as plain text.

use super::Card;
use super::content::Row;

pub(in crate::plan) const WIDTH: usize = 100;

/// Least width of a label.
const LABEL: usize = 10;

pub(in crate::plan) fn render(card: &Card, with_steps: bool) -> String {
    let mut out = Page::default();
    out.line(&format!("SET-UP CARD  {}", card.job.title));
    out.line(&"=".repeat(WIDTH));
    out.labelled(&card.setup_rows());
    out.list("Before the cut", &card.instructions.before);
    out.heading("Set on the machine");
    let groups = card.groups();
    for group in &groups {
        out.line(&card.group_title(group));
        for (label, text) in card.setting_rows(group) {
            out.line(&format!("  {label:<18} {text}"));
        }
    }
    out.heading("Passes");
    let rows: Vec<Vec<String>> = card.pass_rows().into_iter().map(Vec::from).collect();
    out.table(&Card::PASS_HEADS, &rows);
    for note in card.pass_notes() {
        out.hanging("", &note);
    }
    out.list("After the cut", &card.instructions.after);
    out.heading("Limits (the binding one is marked with *)");
    for group in &groups {
        out.line(&card.group_title(group));
        let rows: Vec<Vec<String>> = card
            .limit_rows(group)
            .into_iter()
            .map(|(mut row, binding)| {
                if binding {
                    row[0] = format!("* {}", row[0]);
                } else {
                    row[0] = format!("  {}", row[0]);
                }
                Vec::from(row)
            })
            .collect();
        out.table(&Card::LIMIT_HEADS, &rows);
    }
    out.heading("Spread");
    for group in &groups {
        out.line(&card.group_title(group));
        let rows: Vec<Vec<String>> = card.spread_rows(group).into_iter().map(Vec::from).collect();
        out.table(&["", "low", "start", "high"], &rows);
    }
    out.list("Look out (doubts and assumptions)", &card.warnings());
    out.list("Cautions", &card.cautions());
    for group in groups.iter().filter(|_| with_steps) {
        out.heading(&format!("Worked steps, {}", card.group_title(group)));
        for step in card.step_rows(group) {
            out.hanging("", &step);
        }
        out.line("Values used:");
        let rows: Vec<Vec<String>> = card.data_rows(group).into_iter().map(Vec::from).collect();
        out.table(&["", "value", "from"], &rows);
    }
    out.heading("Sources");
    for (id, reference) in &card.sources {
        out.hanging(&format!("[{id}] "), reference);
    }
    out.text()
}

/// A page of text, line by line.
#[derive(Default)]
pub(in crate::plan) struct Page(String);

impl Page {
    /// What was written.
    pub(in crate::plan) fn text(self) -> String {
        self.0
    }

    pub(in crate::plan) fn line(&mut self, text: &str) {
        self.0.push_str(text.trim_end());
        self.0.push('\n');
    }

    pub(in crate::plan) fn heading(&mut self, text: &str) {
        self.line("");
        self.line(text);
        self.line(&"-".repeat(text.chars().count()));
    }

    pub(in crate::plan) fn list<T: AsRef<str>>(&mut self, heading: &str, items: &[T]) {
        if items.is_empty() {
            return;
        }
        self.heading(heading);
        for item in items {
            self.hanging("- ", item.as_ref());
        }
    }

    /// A text behind each label.
    pub(in crate::plan) fn labelled(&mut self, rows: &[Row]) {
        let width = rows.iter().map(|(label, _)| label.chars().count()).max();
        let width = width.unwrap_or(0).max(LABEL);
        for (label, text) in rows {
            self.hanging(&format!("{label:<width$} "), text);
        }
    }

    /// Text broken at the page's width, later lines below the first word.
    pub(in crate::plan) fn hanging(&mut self, label: &str, text: &str) {
        let indent = label.chars().count();
        let mut line = label.to_owned();
        let mut used = indent;
        let mut first = true;
        for word in text.split(' ') {
            let length = word.chars().count();
            if !first && used + 1 + length > WIDTH {
                self.line(&line);
                line = " ".repeat(indent.max(4));
                used = indent.max(4);
                first = true;
            }
            if !first {
                line.push(' ');
                used += 1;
            }
            line.push_str(word);
            used += length;
            first = false;
        }
        self.line(&line);
    }

    pub(in crate::plan) fn table(&mut self, heads: &[&str], rows: &[Vec<String>]) {
        let widths: Vec<usize> = heads
            .iter()
            .enumerate()
            .map(|(column, head)| {
                rows.iter()
                    .filter_map(|row| row.get(column))
                    .map(|cell| cell.chars().count())
                    .chain([head.chars().count()])
                    .max()
                    .unwrap_or(0)
            })
            .collect();
        let mut print = |cells: &[String]| {
            let last = cells.len().saturating_sub(1);
            let mut label = String::from("  ");
            for (cell, width) in cells.iter().zip(&widths).take(last) {
                label += &format!("{cell:<width$}  ");
            }
            self.hanging(&label, cells.last().map_or("", String::as_str));
        };
        if heads.iter().any(|head| !head.is_empty()) {
            print(
                &heads
                    .iter()
                    .map(|head| (*head).to_owned())
                    .collect::<Vec<_>>(),
            );
        }
        for row in rows {
            print(row);
        }
    }
}
