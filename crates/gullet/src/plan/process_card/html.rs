//! The card as a printable page: no script, no network, black on white.

use super::super::card::{escape, head};
use super::ProcessCard;

/// Settings that are printed large: what a person sets.
const LARGE: &[&str] = &["Spindle speed", "Feed", "Feed speed", "Handwheel rate"];

pub(super) fn render(card: &ProcessCard, with_steps: bool) -> String {
    let mut out = String::with_capacity(16_384);
    head(&mut out, &card.title);
    out += "<body>\n";
    sheet(&mut out, card, with_steps);
    out += "</body>\n</html>\n";
    out
}

/// One card without the page around it.
pub(super) fn sheet(out: &mut String, card: &ProcessCard, with_steps: bool) {
    *out += &format!("<h1>Set-up card: {}</h1>\n", escape(&card.title));
    *out += "<div class=\"setup\">\n";
    for (label, text) in card.setup_rows() {
        *out += &format!("<p><b>{}</b> {}</p>\n", escape(&label), escape(&text));
    }
    *out += "</div>\n<h2>Set on the machine</h2>\n";
    let (large, rest): (Vec<_>, Vec<_>) = card
        .setting_rows()
        .into_iter()
        .partition(|(label, _)| LARGE.contains(&label.as_str()));
    rows(out, "big", &large);
    *out += "<div class=\"beside\">\n<div>\n<h2>What follows</h2>\n";
    rows(out, "rest", &card.result_rows());
    *out += "</div>\n<div>\n<h2>Speeds and powers</h2>\n";
    rows(out, "rest", &rest);
    *out += "<h2>Spread</h2>\n<table class=\"rest\">\n<thead><tr><th></th><th scope=\"col\">low</th><th scope=\"col\">start</th><th scope=\"col\">high</th></tr></thead>\n<tbody>\n";
    for [name, low, start, high] in card.spread_rows() {
        *out += &format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{}</td></tr>\n",
            escape(&name),
            escape(&low),
            escape(&start),
            escape(&high)
        );
    }
    *out += "</tbody></table>\n</div>\n</div>\n";
    limits(out, card);
    *out += "<div class=\"small columns\">\n<h2>Cautions</h2>\n<ul>\n";
    for caution in &card.cut.cautions {
        *out += &format!("<li>{}</li>\n", escape(caution));
    }
    *out += "</ul>\n";
    let warnings = card.warnings();
    if !warnings.is_empty() {
        *out += "<h2>Look out (doubts and assumptions)</h2>\n<ul>\n";
        for warning in warnings {
            *out += &format!("<li>{}</li>\n", escape(warning));
        }
        *out += "</ul>\n";
    }
    if !card.sources.is_empty() {
        *out += "<h2>Where the numbers come from</h2>\n<p>";
        for (id, reference) in &card.sources {
            *out += &format!("[{}] {} ", escape(id), escape(reference));
        }
        *out += "</p>\n";
    }
    *out += "</div>\n";
    if with_steps {
        steps(out, card);
    }
}

fn rows(out: &mut String, class: &str, rows: &[(String, String)]) {
    *out += &format!("<table class=\"{class}\">\n<tbody>\n");
    for (label, text) in rows {
        *out += &format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td></tr>\n",
            escape(label),
            escape(text)
        );
    }
    *out += "</tbody></table>\n";
}

fn limits(out: &mut String, card: &ProcessCard) {
    *out += "<h2>Limits; the binding one in bold</h2>\n<table class=\"limits\">\n<thead><tr>";
    for name in ProcessCard::LIMIT_HEADS {
        *out += &format!("<th scope=\"col\">{name}</th>");
    }
    *out += "</tr></thead>\n<tbody>\n";
    for (row, binding) in card.limit_rows() {
        let [name, cells @ ..] = &row;
        *out += &format!("<tr><th scope=\"row\">{}</th>", escape(name));
        let class = if binding { " class=\"binding\"" } else { "" };
        for cell in cells {
            *out += &format!("<td{class}>{}</td>", escape(cell));
        }
        *out += "</tr>\n";
    }
    *out += "</tbody></table>\n";
}

fn steps(out: &mut String, card: &ProcessCard) {
    *out += "<section class=\"steps\">\n<h2>Worked steps</h2>\n<ul style=\"list-style:none;padding:0;margin:0\">\n";
    for step in card.step_rows() {
        *out += &format!("<li>{}</li>\n", escape(&step));
    }
    *out += "</ul>\n<h2>Values used</h2>\n<table class=\"limits\">\n";
    for row in card.data_rows() {
        *out += "<tr>";
        for cell in &row {
            *out += &format!("<td>{}</td>", escape(cell));
        }
        *out += "</tr>\n";
    }
    *out += "</table>\n</section>\n";
}
