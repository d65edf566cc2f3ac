//! The cards of a route as plain text.

use super::card::RouteCard;
use super::summary;
use crate::plan::card::{Page, WIDTH, card_text};

/// The summary page.
pub(super) fn summary(card: &RouteCard) -> String {
    let mut page = Page::default();
    page.line(&format!("ROUTE  {}", card.route.block.title));
    page.line(&"=".repeat(WIDTH));
    page.labelled(&summary::rows(card));
    page.list("Before the first clamping", &summary::first(card));
    for table in summary::tables(card) {
        if table.rows.is_empty() {
            continue;
        }
        page.heading(table.title);
        let heads: Vec<&str> = table.heads.iter().map(String::as_str).collect();
        page.table(&heads, &table.rows);
    }
    page.list("Between clampings", &summary::between());
    page.list("Look out (doubts and assumptions)", &summary::doubts(card));
    page.list("Cautions", &summary::cautions(card));
    page.text()
}

/// The summary, then each card.
pub(super) fn render(card: &RouteCard, with_steps: bool) -> String {
    let mut out = summary(card);
    for clamping in &card.route.clampings {
        out.push('\n');
        out += &card_text(&clamping.card, with_steps);
    }
    out
}
