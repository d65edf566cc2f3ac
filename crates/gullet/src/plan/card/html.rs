//! The card as a printable page: no script, no network, black on white.

use super::{Card, Group, Instructions};

/// One sheet, portrait: large figures for what is set and where to stop, small print for the rest.
const STYLE: &str = "
@page { margin: 7mm; }
* { box-sizing: border-box; }
html { color: #000; background: #fff; font: 8.5pt/1.2 'DejaVu Sans', 'Liberation Sans', Arial, sans-serif; }
body { margin: 0 auto; max-width: 196mm; }
h1 { font-size: 16pt; margin: 0 0 0.8mm; border-bottom: 2.5pt solid #000; padding-bottom: 0.6mm; }
h2 { font-size: 9.5pt; margin: 1.4mm 0 0.4mm; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.2mm 1.2mm; border-bottom: 0.4pt solid #000; }
thead th { border-bottom: 1.2pt solid #000; }
.setup { columns: 2; column-gap: 5mm; font-size: 8pt; }
.setup p { break-inside: avoid; }
.big th, .big td { font-size: 16pt; line-height: 1.1; padding: 0.3mm 1.2mm; }
.big thead th { font-size: 9pt; }
.big td { font-weight: bold; }
.beside { display: flex; gap: 5mm; }
.beside > :first-child { flex: 1 1 55%; }
.beside > :last-child { flex: 1 1 45%; }
.around { font-size: 7.6pt; line-height: 1.1; }
.around ol { margin: 0; padding-left: 4mm; }
.sheet { break-before: page; }
.route { font-size: 8.5pt; }
.route ul { margin: 0; padding-left: 4mm; }
.order td, .order th { font-size: 8.5pt; padding: 0.4mm 1mm; }
.part .order td, .part .order th { font-size: 7.4pt; line-height: 1.1; padding: 0.25mm 1mm; }
.part .small { font-size: 6.2pt; }
.passes td { font-size: 12pt; padding: 0.25mm 1.2mm; white-space: nowrap; }
.passes td.stop { font-weight: bold; font-size: 14pt; }
.dense td { font-size: 9.5pt; padding: 0 1.2mm; }
.dense td.stop { font-size: 10.5pt; }
.rest { font-size: 7.6pt; line-height: 1.1; }
.rest tbody th { white-space: nowrap; }
.limits { font-size: 7.2pt; line-height: 1.1; }
.limits td { white-space: nowrap; }
.limits td:last-child { white-space: normal; }
.limits td.binding { font-weight: bold; }
.small { font-size: 6.6pt; line-height: 1.1; }
.small ul { margin: 0; padding-left: 3.2mm; }
.small h2 { font-size: 8.5pt; margin: 1mm 0 0.3mm; break-after: avoid; }
.columns { columns: 3; column-gap: 4mm; }
p { margin: 0.4mm 0; }
.steps { break-before: page; }
.steps li { margin-bottom: 0.6mm; overflow-wrap: anywhere; }
.crowded h1 { font-size: 13pt; }
.crowded .setup, .crowded .rest { font-size: 7pt; }
.crowded .big th, .crowded .big td { font-size: 13pt; padding: 0.1mm 1.2mm; }
.crowded .big thead th { font-size: 8pt; }
.crowded .passes td { font-size: 8.5pt; line-height: 1.05; padding: 0 1.2mm; }
.crowded .passes td.stop { font-size: 9.5pt; }
.crowded .limits, .crowded .small { font-size: 6pt; }
.sheet h2 { font-size: 8.5pt; margin: 0.8mm 0 0.2mm; }
.sheet .setup, .sheet .around { font-size: 6.8pt; line-height: 1.08; }
.sheet .small h2 { font-size: 7.5pt; margin: 0.5mm 0 0.2mm; }
.sheet .big th, .sheet .big td { font-size: 12pt; padding: 0 1.2mm; }
.sheet .big thead th { font-size: 8pt; }
.sheet .passes td { font-size: 8.5pt; line-height: 1.05; padding: 0 1.2mm; }
.sheet .passes td.stop { font-size: 9.5pt; }
.sheet .rest { font-size: 6.8pt; }
.sheet .limits, .sheet .small { font-size: 5.9pt; }
.roomy .big th, .roomy .big td { font-size: 17pt; padding: 0.3mm 1.2mm; }
.roomy .big thead th { font-size: 9pt; }
.roomy .setup, .roomy .rest { font-size: 8.5pt; line-height: 1.2; }
.roomy .small { font-size: 7.4pt; line-height: 1.2; }
@media screen { body { padding: 4mm; } }
";

/// How many rows at the top of the settings are printed large.
const LARGE_ROWS: usize = 4;

/// Share below which a limit is only named.
const LOOSE_BELOW: f64 = 0.35;

/// From how many passes on their rows are printed closer.
const DENSE_FROM: usize = 8;

/// From how many passes on the whole sheet is set smaller; a line of the title counts as two.
const CROWDED_FROM: usize = 10;

/// Letters of the title that fit on a line.
const TITLE_LINE: usize = 48;

pub(super) fn render(card: &Card, with_steps: bool) -> String {
    let mut out = String::with_capacity(16_384);
    head(&mut out, &card.job.title);
    let class = if crowded(card) {
        " class=\"crowded\""
    } else {
        ""
    };
    out += &format!("<body{class}>\n");
    sheet(&mut out, card, with_steps);
    out += "</body>\n</html>\n";
    out
}

/// Everything before the body.
pub(in crate::plan) fn head(out: &mut String, title: &str) {
    let title = escape(title);
    *out += &format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>Set-up card: {title}</title>\n<style>{STYLE}</style>\n</head>\n"
    );
}

/// Whether a sheet has to be set smaller to stay one sheet.
pub(in crate::plan) fn crowded(card: &Card) -> bool {
    let further_lines = card.job.title.chars().count() / TITLE_LINE;
    let around = card.instructions.before.len() + card.instructions.after.len();
    card.plan.passes.len() + 2 * further_lines + around > CROWDED_FROM
}

/// One card without the page around it.
pub(in crate::plan) fn sheet(out: &mut String, card: &Card, with_steps: bool) {
    *out += &format!("<h1>Set-up card: {}</h1>\n", escape(&card.job.title));
    setup(out, card);
    around(out, card);
    let groups = card.groups();
    *out += "<h2>Set on the machine</h2>\n";
    setting_table(out, card, &groups, true);
    passes(out, card, &groups);
    limits(out, card, &groups);
    *out += "<div class=\"small columns\">\n";
    doubts_and_cautions(out, card);
    origins(out, card, &groups);
    *out += "</div>\n";
    if with_steps {
        for group in &groups {
            steps(out, card, group);
        }
    }
}

/// What to do before and after the cut, side by side.
fn around(out: &mut String, card: &Card) {
    let Instructions { before, after, .. } = &card.instructions;
    if before.is_empty() && after.is_empty() {
        return;
    }
    *out += "<div class=\"beside around\">\n";
    for (title, steps) in [("Before the cut", before), ("After the cut", after)] {
        *out += &format!("<div>\n<h2>{title}</h2>\n<ol>\n");
        for step in steps {
            *out += &format!("<li>{}</li>\n", escape(step));
        }
        *out += "</ol>\n</div>\n";
    }
    *out += "</div>\n";
}

fn setup(out: &mut String, card: &Card) {
    *out += "<div class=\"setup\">\n";
    for (label, text) in card.setup_rows() {
        *out += &format!("<p><b>{}</b> {}</p>\n", escape(label), escape(&text));
    }
    *out += "</div>\n";
}

/// Rows of the settings from one group to the next, by label.
fn setting_table(out: &mut String, card: &Card, groups: &[Group], large: bool) {
    let columns: Vec<_> = groups
        .iter()
        .map(|group| card.setting_rows(group))
        .collect();
    let labels = columns
        .iter()
        .max_by_key(|rows| rows.len())
        .into_iter()
        .flatten()
        .map(|(label, _)| *label)
        .enumerate()
        .filter(|(index, _)| (*index < LARGE_ROWS) == large);
    *out += if large {
        "<table class=\"big\">\n<thead><tr><th></th>"
    } else {
        "<table class=\"rest\">\n<thead><tr><th></th>"
    };
    for group in groups {
        let title = card.group_title(group);
        *out += &format!("<th scope=\"col\">{}</th>", escape(&title));
    }
    *out += "</tr></thead>\n<tbody>\n";
    for (_, label) in labels {
        *out += &format!("<tr><th scope=\"row\">{}</th>", escape(label.trim_start()));
        for rows in &columns {
            let text = rows
                .iter()
                .find(|(name, _)| *name == label)
                .map_or("-", |(_, text)| text.as_str());
            *out += &format!("<td>{}</td>", escape(text));
        }
        *out += "</tr>\n";
    }
    *out += "</tbody></table>\n";
}

/// Passes beside the lesser settings.
fn passes(out: &mut String, card: &Card, groups: &[Group]) {
    let rows = card.pass_rows();
    let class = if rows.len() > DENSE_FROM {
        "passes dense"
    } else {
        "passes"
    };
    *out += &format!(
        "<div class=\"beside\">\n<div>\n<h2>Passes</h2>\n<table class=\"{class}\">\n<thead><tr>"
    );
    for head in Card::PASS_HEADS {
        *out += &format!("<th scope=\"col\">{head}</th>");
    }
    *out += "</tr></thead>\n<tbody>\n";
    for row in rows {
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
    *out += "</div>\n<div>\n<h2>What follows</h2>\n";
    setting_table(out, card, groups, false);
    *out += "</div>\n</div>\n";
}

fn limits(out: &mut String, card: &Card, groups: &[Group]) {
    *out += "<h2>Limits: value (bound), share used; the binding ones in bold</h2>\n<table class=\"limits\">\n<thead><tr><th scope=\"col\">Limit</th>";
    for group in groups {
        *out += &format!(
            "<th scope=\"col\">{}</th>",
            escape(&card.group_title(group))
        );
    }
    *out += "<th scope=\"col\">Bound from</th></tr></thead>\n<tbody>\n";
    let (tight, loose): (Vec<_>, Vec<_>) = card
        .limit_table(groups)
        .into_iter()
        .partition(|row| row.share >= LOOSE_BELOW);
    for row in tight {
        *out += &format!("<tr><th scope=\"row\">{}</th>", escape(&row.name));
        for (cell, binding) in row.cells {
            let class = if binding { " class=\"binding\"" } else { "" };
            *out += &format!("<td{class}>{}</td>", escape(&cell));
        }
        *out += &format!("<td>{}</td></tr>\n", escape(&row.origin));
    }
    *out += "</tbody></table>\n";
    *out += "<div class=\"small\">\n";
    for note in card.binding_notes(groups) {
        *out += &format!("<p><b>{}</b></p>\n", escape(&note));
    }
    if !loose.is_empty() {
        let rest: Vec<String> = loose
            .into_iter()
            .map(|row| {
                let cells: Vec<String> = row.cells.into_iter().map(|(cell, _)| cell).collect();
                format!("{} {}", row.name, cells.join(" | "))
            })
            .collect();
        *out += &format!(
            "<p>Looked at and far from binding: {}.</p>\n",
            escape(&rest.join("; "))
        );
    }
    *out += "</div>\n";
}

fn doubts_and_cautions(out: &mut String, card: &Card) {
    *out += "<h2>Cautions</h2>\n<ul>\n";
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
}

fn origins(out: &mut String, card: &Card, groups: &[Group]) {
    *out += "<h2>Where the numbers come from</h2>\n";
    if let Some(group) = groups.first() {
        *out += &format!("<p>{}.</p>\n", escape(&card.data_text(group)));
    }
    let sources: Vec<String> = card
        .sources
        .iter()
        .map(|(id, reference)| format!("[{id}] {reference}"))
        .collect();
    *out += &format!("<p>{}</p>\n", escape(&sources.join(" ")));
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
pub(in crate::plan) fn escape(text: &str) -> String {
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
