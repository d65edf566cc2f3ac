//! The card as plain text.

use super::super::card::{Page, WIDTH};
use super::ProcessCard;

pub(super) fn render(card: &ProcessCard) -> String {
    let mut out = Page::default();
    out.line(&format!("SET-UP CARD  {}", card.title));
    out.line(&"=".repeat(WIDTH));
    for (label, text) in card.setup_rows() {
        out.hanging(&format!("{label:<24} "), &text);
    }
    out.heading("Set on the machine");
    for (label, text) in card.setting_rows() {
        out.line(&format!("  {label:<24} {text}"));
    }
    out.heading("What follows");
    for (label, text) in card.result_rows() {
        out.line(&format!("  {label:<24} {text}"));
    }
    out.heading("Limits (the binding one is marked with *)");
    let rows: Vec<Vec<String>> = card
        .limit_rows()
        .into_iter()
        .map(|(mut row, binding)| {
            let mark = if binding { "*" } else { " " };
            row[0] = format!("{mark} {}", row[0]);
            Vec::from(row)
        })
        .collect();
    out.table(&ProcessCard::LIMIT_HEADS, &rows);
    out.heading("Spread");
    let rows: Vec<Vec<String>> = card.spread_rows().into_iter().map(Vec::from).collect();
    out.table(&["", "low", "start", "high"], &rows);
    out.list("Look out (doubts and assumptions)", &card.warnings());
    out.list("Cautions", &card.cut.cautions);
    out.heading("Worked steps");
    for step in card.step_rows() {
        out.hanging("", &step);
    }
    out.line("Values used:");
    let rows: Vec<Vec<String>> = card.data_rows().into_iter().map(Vec::from).collect();
    out.table(&["", "value", "from"], &rows);
    if !card.sources.is_empty() {
        out.heading("Sources");
        for (id, reference) in &card.sources {
            out.hanging(&format!("[{id}] "), reference);
        }
    }
    out.text()
}
