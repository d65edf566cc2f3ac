//! The cards of a part as plain text.

use super::super::card::{Page, WIDTH, card_text};
use super::super::route::time_table;
use super::PartCard;
use super::card::{Clamping, Sheet};
use crate::quantity::{Kind, format_digits};

/// A table: title, heads, rows.
pub(super) type Table = (&'static str, Vec<String>, Vec<Vec<String>>);

pub(super) fn render(card: &PartCard, with_steps: bool) -> String {
    let mut out = summary(card);
    for sheet in &card.sheets {
        out.push('\n');
        match sheet {
            Sheet::Clamping(clamping) => out += &clamping_text(card, clamping, with_steps),
            Sheet::Block(place) => {
                if let Some(clamping) = card
                    .block
                    .as_ref()
                    .and_then(|block| block.route.clampings.get(*place))
                {
                    out += &card_text(&clamping.card, with_steps);
                }
            }
        }
    }
    out
}

fn summary(card: &PartCard) -> String {
    let mut page = Page::default();
    page.line(&format!("PART  {}", card.route.title));
    page.line(&"=".repeat(WIDTH));
    for (label, text) in rows(card) {
        page.hanging(&format!("{label:<10} "), &text);
    }
    for (title, heads, rows) in tables(card) {
        page.heading(title);
        let heads: Vec<&str> = heads.iter().map(String::as_str).collect();
        page.table(&heads, &rows);
    }
    page.list("Look out (assumptions)", &card.route.assumptions);
    page.list("Cautions", &card.cautions());
    page.text()
}

/// What is made from what.
pub(super) fn rows(card: &PartCard) -> Vec<(&'static str, String)> {
    let route = &card.route;
    vec![
        (
            "Material",
            format!("{}, {}", route.material.name, route.material.condition),
        ),
        (
            "Practice",
            format!("{} ({})", route.practice.name, route.practice.origin),
        ),
        (
            "Clampings",
            format!("{}, a card each behind this page", card.sheets.len()),
        ),
    ]
}

/// Order of the work; time and cost of one part; lots.
pub(super) fn tables(card: &PartCard) -> Vec<Table> {
    let mut tables = vec![order(card)];
    let (heads, rows) = time_table(&card.entries, &card.totals);
    tables.push(("Time of one part (h:mm:ss)", heads, rows));
    if !card.lots.is_empty() {
        tables.push(lots(card));
    }
    tables
}

fn order(card: &PartCard) -> Table {
    let mut rows = Vec::new();
    for sheet in &card.sheets {
        match sheet {
            Sheet::Clamping(clamping) => {
                for (operation, process) in &clamping.work {
                    let value = |name: &str| {
                        process.cut.value(name).map_or_else(
                            || "-".to_owned(),
                            |quantity| quantity.text(card.route.units),
                        )
                    };
                    rows.push(vec![
                        format!("{}", clamping.number),
                        clamping.held.clone(),
                        operation.name.clone(),
                        operation.machine.name.clone(),
                        operation.count.to_string(),
                        value("spindle_speed"),
                        value("feed_speed"),
                    ]);
                }
            }
            Sheet::Block(place) => {
                if let Some(clamping) = card
                    .block
                    .as_ref()
                    .and_then(|block| block.route.clampings.get(*place))
                {
                    rows.push(vec![
                        format!("square {}", clamping.number),
                        "vise, see its card".to_owned(),
                        format!("{} face", clamping.seat.cut.name()),
                        clamping.card.job.machine.name.clone(),
                        "1".to_owned(),
                        "see card".to_owned(),
                        "see card".to_owned(),
                    ]);
                }
            }
        }
    }
    let heads = ["No", "Held", "Work", "Machine", "Times", "Speed", "Feed"];
    (
        "Order of the work",
        heads.iter().map(|head| (*head).to_owned()).collect(),
        rows,
    )
}

fn lots(card: &PartCard) -> Table {
    let system = card.route.units;
    let time = |si: f64| format_digits(Kind::Time, si, system, 3);
    let money = |si: f64| format!("{si:.2}");
    let with_cost = card.entries.iter().any(|entry| entry.rate.is_some());
    let mut heads = vec!["A part takes, in a lot of".to_owned()];
    heads.extend(card.lots.iter().map(|lot| format!("{}", lot.size.value)));
    let mut rows: Vec<Vec<String>> = card
        .entries
        .iter()
        .enumerate()
        .map(|(index, entry)| {
            let mut row = vec![entry.name.clone()];
            row.extend(card.lots.iter().map(|lot| {
                lot.entries.get(index).map_or_else(String::new, |price| {
                    if with_cost {
                        format!("{}, {}", time(price.time.value), money(price.cost.value))
                    } else {
                        time(price.time.value)
                    }
                })
            }));
            row
        })
        .collect();
    if with_cost {
        let mut row = vec!["material".to_owned()];
        row.extend(card.lots.iter().map(|lot| money(lot.material_cost.value)));
        rows.push(row);
    }
    let mut row = vec!["together".to_owned()];
    row.extend(card.lots.iter().map(|lot| {
        if with_cost {
            format!(
                "{}, {}",
                time(lot.time_per_part.value),
                money(lot.cost_per_part.value)
            )
        } else {
            time(lot.time_per_part.value)
        }
    }));
    rows.push(row);
    (
        "Time and cost a part, with its share of the set-up",
        heads,
        rows,
    )
}

fn clamping_text(card: &PartCard, clamping: &Clamping, with_steps: bool) -> String {
    let mut page = Page::default();
    page.line(&format!(
        "CLAMPING {}  {}: {}",
        clamping.number, card.route.title, clamping.held
    ));
    page.line(&"=".repeat(WIDTH));
    for (label, text) in clamping_rows(card, clamping) {
        page.hanging(&format!("{label:<10} "), &text);
    }
    for (operation, process) in &clamping.work {
        page.heading(&heading(operation));
        let mut rows = process.setting_rows();
        rows.extend(process.result_rows());
        for (label, text) in process.input_rows() {
            page.line(&format!("  {label:<24} {text}"));
        }
        page.line("  set and follows");
        for (label, text) in rows {
            page.line(&format!("  {label:<24} {text}"));
        }
        page.hanging("  ", &binding(process));
        if let Some(note) = &operation.note {
            page.hanging("  Note: ", note);
        }
        if with_steps {
            for step in process.step_rows() {
                page.hanging("  ", &step);
            }
        }
    }
    page.list("Look out (doubts and assumptions)", &doubts(clamping));
    page.list("Cautions", &clamping_cautions(clamping));
    page.text()
}

pub(super) fn heading(operation: &super::PartOperation) -> String {
    let process = operation.request.process();
    if operation.count > 1 {
        format!(
            "{} ({}, {} times)",
            operation.name, process.name, operation.count
        )
    } else {
        format!("{} ({})", operation.name, process.name)
    }
}

pub(super) fn clamping_rows(card: &PartCard, clamping: &Clamping) -> Vec<(&'static str, String)> {
    let mut rows = vec![
        ("Held", clamping.held.clone()),
        ("Machine", clamping.machine()),
    ];
    rows.extend(rows_of_part(card));
    rows
}

fn rows_of_part(card: &PartCard) -> Vec<(&'static str, String)> {
    rows(card)
        .into_iter()
        .filter(|(label, _)| *label != "Clampings")
        .collect()
}

/// Which limit is nearest to its bound.
pub(super) fn binding(process: &super::super::ProcessCard) -> String {
    process
        .limit_rows()
        .into_iter()
        .find(|(_, binding)| *binding)
        .map_or_else(String::new, |([name, value, bound, used, from], _)| {
            format!("Nearest limit: {name} {value}, {bound}: {used}; {from}")
        })
}

/// Every doubt of the clamping once.
pub(super) fn doubts(clamping: &Clamping) -> Vec<String> {
    let mut texts: Vec<String> = Vec::new();
    for (_, process) in &clamping.work {
        for warning in process.warnings() {
            if !texts.iter().any(|known| known == warning) {
                texts.push(warning.to_owned());
            }
        }
    }
    texts
}

/// Every caution of the clamping once.
pub(super) fn clamping_cautions(clamping: &Clamping) -> Vec<&'static str> {
    let mut texts: Vec<&'static str> = Vec::new();
    for (_, process) in &clamping.work {
        for caution in &process.cut.cautions {
            if !texts.contains(caution) {
                texts.push(caution);
            }
        }
    }
    texts
}
