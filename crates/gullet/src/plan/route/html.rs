//! The cards of a route as printable sheets: the summary, then a sheet a clamping.

use super::card::RouteCard;
use super::summary;
use crate::plan::card::{crowded, escape, head, sheet};

pub(super) fn render(card: &RouteCard, with_steps: bool) -> String {
    let mut out = String::with_capacity(65_536);
    head(&mut out, &card.route.block.title);
    out += "<body>\n<section class=\"route\">\n";
    page(&mut out, card);
    out += "</section>\n";
    for clamping in &card.route.clampings {
        let class = if crowded(&clamping.card) {
            "sheet crowded"
        } else {
            "sheet"
        };
        out += &format!("<section class=\"{class}\">\n");
        sheet(&mut out, &clamping.card, with_steps);
        out += "</section>\n";
    }
    out += "</body>\n</html>\n";
    out
}

fn page(out: &mut String, card: &RouteCard) {
    *out += &format!("<h1>Route: {}</h1>\n", escape(&card.route.block.title));
    *out += "<div class=\"setup\">\n";
    for (label, text) in summary::rows(card) {
        *out += &format!("<p><b>{}</b> {}</p>\n", escape(label), escape(&text));
    }
    *out += "</div>\n";
    list(out, "Before the first clamping", &summary::first(card));
    for table in summary::tables(card) {
        if table.rows.is_empty() {
            continue;
        }
        *out += &format!(
            "<h2>{}</h2>\n<table class=\"order\">\n<thead><tr>",
            escape(table.title)
        );
        for head in &table.heads {
            *out += &format!("<th scope=\"col\">{}</th>", escape(head));
        }
        *out += "</tr></thead>\n<tbody>\n";
        for row in &table.rows {
            *out += "<tr>";
            for cell in row {
                *out += &format!("<td>{}</td>", escape(cell));
            }
            *out += "</tr>\n";
        }
        *out += "</tbody></table>\n";
    }
    list(out, "Between clampings", &summary::between());
    *out += "<div class=\"small columns\">\n";
    list(out, "Cautions", &summary::cautions(card));
    list(
        out,
        "Look out (doubts and assumptions)",
        &summary::doubts(card),
    );
    *out += "</div>\n";
}

fn list(out: &mut String, title: &str, items: &[String]) {
    if items.is_empty() {
        return;
    }
    *out += &format!("<h2>{}</h2>\n<ul>\n", escape(title));
    for item in items {
        *out += &format!("<li>{}</li>\n", escape(item));
    }
    *out += "</ul>\n";
}
