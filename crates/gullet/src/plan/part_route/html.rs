//! The cards of a part as printable sheets: the summary, then a sheet a clamping.

use super::super::card::{crowded, escape, head, sheet};
use super::PartCard;
use super::card::{Clamping, Sheet};
use super::text::{
    binding, clamping_cautions, clamping_rows, doubts, heading, rows, sources, tables,
};

/// Settings and results that are printed large.
const LARGE: &[&str] = &[
    "Spindle speed",
    "Feed",
    "Feed speed",
    "Handwheel rate",
    "Time",
];

/// Up to how many operations leave room for larger print on a sheet.
const ROOMY_TO: usize = 2;

pub(super) fn render(card: &PartCard, with_steps: bool) -> String {
    let mut out = String::with_capacity(65_536);
    head(&mut out, &card.route.title);
    out += "<body>\n<section class=\"route part\">\n";
    page(&mut out, card);
    out += "</section>\n";
    for item in &card.sheets {
        match item {
            Sheet::Clamping(clamping) => {
                let class = if clamping.work.len() <= ROOMY_TO {
                    "sheet roomy"
                } else {
                    "sheet"
                };
                out += &format!("<section class=\"{class}\">\n");
                clamping_sheet(&mut out, card, clamping, with_steps);
                out += "</section>\n";
            }
            Sheet::Block(place) => {
                let Some(clamping) = card
                    .block
                    .as_ref()
                    .and_then(|block| block.route.clampings.get(*place))
                else {
                    continue;
                };
                let class = if crowded(&clamping.card) {
                    "sheet crowded"
                } else {
                    "sheet"
                };
                out += &format!("<section class=\"{class}\">\n");
                sheet(&mut out, &clamping.card, with_steps);
                out += "</section>\n";
            }
        }
    }
    out += "</body>\n</html>\n";
    out
}

fn page(out: &mut String, card: &PartCard) {
    *out += &format!(
        "<h1>Part: {}</h1>\n<div class=\"setup\">\n",
        escape(&card.route.title)
    );
    for (label, text) in rows(card) {
        *out += &format!("<p><b>{}</b> {}</p>\n", escape(label), escape(&text));
    }
    *out += "</div>\n";
    for (title, heads, rows) in tables(card) {
        *out += &format!(
            "<h2>{}</h2>\n<table class=\"order\">\n<thead><tr>",
            escape(title)
        );
        for head in &heads {
            *out += &format!("<th scope=\"col\">{}</th>", escape(head));
        }
        *out += "</tr></thead>\n<tbody>\n";
        for row in &rows {
            *out += "<tr>";
            for cell in row {
                *out += &format!("<td>{}</td>", escape(cell));
            }
            *out += "</tr>\n";
        }
        *out += "</tbody></table>\n";
    }
    *out += "<div class=\"small columns\">\n";
    list(out, "Cautions", &card.cautions());
    list(out, "Look out (assumptions)", &card.route.assumptions);
    *out += "</div>\n";
}

fn clamping_sheet(out: &mut String, card: &PartCard, clamping: &Clamping, with_steps: bool) {
    *out += &format!(
        "<h1>Clamping {}: {}</h1>\n<div class=\"setup\">\n",
        clamping.number,
        escape(&card.route.title)
    );
    for (label, text) in clamping_rows(card, clamping) {
        *out += &format!("<p><b>{}</b> {}</p>\n", escape(label), escape(&text));
    }
    *out += "</div>\n";
    for (operation, process) in &clamping.work {
        *out += &format!("<h2>{}</h2>\n", escape(&heading(operation)));
        let mut values = process.setting_rows();
        values.extend(process.result_rows());
        let (large, rest): (Vec<_>, Vec<_>) = values
            .into_iter()
            .partition(|(label, _)| LARGE.contains(&label.as_str()));
        *out += "<table class=\"big\">\n<thead><tr>";
        for (label, _) in &large {
            *out += &format!("<th scope=\"col\">{}</th>", escape(label));
        }
        *out += "</tr></thead>\n<tbody><tr>";
        for (_, text) in &large {
            *out += &format!("<td>{}</td>", escape(text));
        }
        *out += "</tr></tbody></table>\n<div class=\"rest\">\n";
        let words = |rows: &[(String, String)]| {
            rows.iter()
                .map(|(label, text)| format!("{} {}", label.to_lowercase(), text))
                .collect::<Vec<_>>()
                .join("; ")
        };
        *out += &format!(
            "<p><b>Given</b> {}</p>\n",
            escape(&words(&process.input_rows()))
        );
        *out += &format!("<p><b>Follows</b> {}</p>\n", escape(&words(&rest)));
        *out += &format!("<p><b>{}</b></p>\n", escape(&binding(process)));
        if let Some(note) = &operation.note {
            *out += &format!("<p><b>Note</b> {}</p>\n", escape(note));
        }
        *out += "</div>\n";
    }
    *out += "<div class=\"small columns\">\n";
    list(out, "Cautions", &clamping_cautions(clamping));
    list(out, "Look out (doubts and assumptions)", &doubts(clamping));
    list(out, "Where the numbers come from", &sources(clamping));
    *out += "</div>\n";
    if with_steps {
        for (operation, process) in &clamping.work {
            *out += &format!(
                "<section class=\"steps\">\n<h2>Worked steps: {}</h2>\n<ul style=\"list-style:none;padding:0;margin:0\">\n",
                escape(&operation.name)
            );
            for step in process.step_rows() {
                *out += &format!("<li>{}</li>\n", escape(&step));
            }
            *out += "</ul>\n</section>\n";
        }
    }
}

fn list<T: AsRef<str>>(out: &mut String, title: &str, items: &[T]) {
    if items.is_empty() {
        return;
    }
    *out += &format!("<h2>{}</h2>\n<ul>\n", escape(title));
    for item in items {
        *out += &format!("<li>{}</li>\n", escape(item.as_ref()));
    }
    *out += "</ul>\n";
}
