//! The card as a printable page: no script, no network, black on white.

use super::{Card, Group};

/// One sheet, portrait: large figures for what is set and where to stop, small print for the rest.
const STYLE: &str = "
@page { margin: 9mm; }
* { box-sizing: border-box; }
html { color: #000; background: #fff; font: 9.5pt/1.25 'DejaVu Sans', 'Liberation Sans', Arial, sans-serif; }
body { margin: 0 auto; max-width: 194mm; }
h1 { font-size: 17pt; margin: 0; border-bottom: 2.5pt solid #000; padding-bottom: 1mm; }
h2 { font-size: 10.5pt; margin: 2.2mm 0 0.8mm; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.25mm 1.5mm; border-bottom: 0.4pt solid #000; }
thead th { border-bottom: 1.2pt solid #000; }
.setup th { width: 22mm; }
.setup td, .setup th { border: 0; padding: 0.1mm 1.5mm; }
.big th, .big td { font-size: 14.5pt; padding: 0.5mm 1.5mm; }
.big tr.rest th, .big tr.rest td { font-size: 9.5pt; padding: 0.15mm 1.5mm; }
.passes td { font-size: 12.5pt; padding: 0.3mm 1.5mm; }
.passes td.stop { font-weight: bold; font-size: 15pt; }
.limits { font-size: 8pt; }
.limits tr.binding { font-weight: bold; }
.small { font-size: 7.6pt; line-height: 1.2; }
.small ul { margin: 0; padding-left: 4mm; }
.columns { columns: 2; column-gap: 6mm; }
p { margin: 0.6mm 0; }
.steps { page-break-before: always; break-before: page; font-size: 8.5pt; }
.steps li { margin-bottom: 0.6mm; overflow-wrap: anywhere; }
td, li { overflow-wrap: anywhere; }
";

/// How many rows at the top of the settings are printed large.
const LARGE_ROWS: usize = 4;

pub(super) fn render(card: &Card, with_steps: bool) -> String {
    let mut out = String::with_capacity(16_384);
    let title = escape(&card.job.title);
    out += &format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>Set-up card: {title}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n<h1>Set-up card: {title}</h1>\n"
    );
    setup(&mut out, card);
    let groups = card.groups();
    settings(&mut out, card, &groups);
    passes(&mut out, card);
    limits(&mut out, card, &groups);
    doubts_and_cautions(&mut out, card);
    origins(&mut out, card, &groups);
    if with_steps {
        for group in &groups {
            steps(&mut out, card, group);
        }
    }
    out += "</body>\n</html>\n";
    out
}

fn setup(out: &mut String, card: &Card) {
    *out += "<table class=\"setup\">\n";
    for (label, text) in card.setup_rows() {
        *out += &format!(
            "<tr><th scope=\"row\">{}</th><td>{}</td></tr>\n",
            escape(label),
            escape(&text)
        );
    }
    *out += "</table>\n";
}

fn settings(out: &mut String, card: &Card, groups: &[Group]) {
    *out +=
        "<h2>Set on the machine</h2>\n<table class=\"big\">\n<thead><tr class=\"rest\"><th></th>";
    for group in groups {
        *out += &format!(
            "<th scope=\"col\">{}</th>",
            escape(&card.group_title(group))
        );
    }
    *out += "</tr></thead>\n<tbody>\n";
    let columns: Vec<_> = groups
        .iter()
        .map(|group| card.setting_rows(group))
        .collect();
    let labels: Vec<&str> = columns
        .iter()
        .max_by_key(|rows| rows.len())
        .map(|rows| rows.iter().map(|(label, _)| *label).collect())
        .unwrap_or_default();
    for (index, label) in labels.iter().enumerate() {
        let class = if index < LARGE_ROWS {
            ""
        } else {
            " class=\"rest\""
        };
        *out += &format!(
            "<tr{class}><th scope=\"row\">{}</th>",
            escape(label.trim_start())
        );
        for rows in &columns {
            let text = rows
                .iter()
                .find(|(name, _)| name == label)
                .map_or("-", |(_, text)| text.as_str());
            *out += &format!("<td>{}</td>", escape(text));
        }
        *out += "</tr>\n";
    }
    *out += "</tbody></table>\n";
}

fn passes(out: &mut String, card: &Card) {
    *out += "<h2>Passes</h2>\n<table class=\"passes\">\n<thead><tr>";
    for head in Card::PASS_HEADS {
        *out += &format!("<th scope=\"col\">{head}</th>");
    }
    *out += "</tr></thead>\n<tbody>\n";
    for row in card.pass_rows() {
        *out += "<tr>";
        for (head, cell) in Card::PASS_HEADS.iter().zip(&row) {
            let class = if *head == "Stop at" {
                " class=\"stop\""
            } else {
                ""
            };
            *out += &format!("<td{class}>{}</td>", escape(cell));
        }
        *out += "</tr>\n";
    }
    *out += "</tbody></table>\n";
    for note in card.pass_notes() {
        *out += &format!("<p>{}</p>\n", escape(&note));
    }
}

fn limits(out: &mut String, card: &Card, groups: &[Group]) {
    for group in groups {
        *out += &format!(
            "<h2>Limits, {} (the binding one in bold)</h2>\n<table class=\"limits\">\n<thead><tr>",
            escape(&card.group_title(group))
        );
        for head in Card::LIMIT_HEADS {
            *out += &format!("<th scope=\"col\">{head}</th>");
        }
        *out += "</tr></thead>\n<tbody>\n";
        for (row, binding) in card.limit_rows(group) {
            *out += if binding {
                "<tr class=\"binding\">"
            } else {
                "<tr>"
            };
            for cell in &row {
                *out += &format!("<td>{}</td>", escape(cell));
            }
            *out += "</tr>\n";
        }
        *out += "</tbody></table>\n";
    }
}

fn doubts_and_cautions(out: &mut String, card: &Card) {
    *out += "<div class=\"small columns\">\n<h2>Cautions</h2>\n<ul>\n";
    for caution in card.cautions() {
        *out += &format!("<li>{}</li>\n", escape(caution));
    }
    *out += "</ul>\n";
    let warnings = card.warnings();
    if !warnings.is_empty() {
        *out += "<h2>Look out (doubts and assumptions)</h2>\n<ul>\n";
        for warning in warnings {
            *out += &format!("<li>{}</li>\n", escape(&warning));
        }
        *out += "</ul>\n";
    }
    *out += "</div>\n";
}

fn origins(out: &mut String, card: &Card, groups: &[Group]) {
    *out += "<div class=\"small\">\n<h2>Where the numbers come from</h2>\n";
    if let Some(group) = groups.first() {
        let mut parts = Vec::new();
        for [name, value, origin] in card.data_rows(group) {
            parts.push(format!("{name} {value} ({origin})"));
        }
        *out += &format!("<p>{}.</p>\n", escape(&parts.join("; ")));
    }
    let sources: Vec<String> = card
        .sources
        .iter()
        .map(|(id, reference)| format!("[{id}] {reference}"))
        .collect();
    *out += &format!("<p>{}</p>\n</div>\n", escape(&sources.join(" ")));
}

fn steps(out: &mut String, card: &Card, group: &Group) {
    *out += &format!(
        "<section class=\"steps\">\n<h2>Worked steps, {}</h2>\n<ul style=\"list-style:none;padding:0;margin:0\">\n",
        escape(&card.group_title(group))
    );
    for step in card.step_rows(group) {
        *out += &format!("<li>{}</li>\n", escape(&step));
    }
    *out += "</ul>\n<h2>Values used</h2>\n<table class=\"limits\">\n";
    for row in card.data_rows(group) {
        *out += "<tr>";
        for cell in &row {
            *out += &format!("<td>{}</td>", escape(cell));
        }
        *out += "</tr>\n";
    }
    *out += "</table>\n</section>\n";
}

/// Text for HTML: nothing a job file says becomes markup.
fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out += "&amp;",
            '<' => out += "&lt;",
            '>' => out += "&gt;",
            '"' => out += "&quot;",
            '\'' => out += "&#39;",
            _ => out.push(c),
        }
    }
    out
}
