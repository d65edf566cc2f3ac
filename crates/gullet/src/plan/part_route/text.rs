//! The cards of a part as plain text.

use super::super::card::{Page, WIDTH, card_text};
use super::super::route::{clock, time_table};
use super::PartCard;
use super::card::{Clamping, Sheet};
use super::price::LotOfPart;
use crate::quantity::{Money, Time, si};

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
    let mut tables = vec![held(card), order(card)];
    let (heads, rows) = time_table(&card.entries, &card.totals);
    tables.push(("Time of one part (h:mm:ss)", heads, rows));
    if !card.lots.is_empty() {
        tables.push(lots(card));
    }
    tables
}

/// The clampings of the squared block as one, by their numbers, with their faces.
fn squares(card: &PartCard) -> Option<(String, String, &str)> {
    let clampings = &card.block.as_ref()?.route.clampings;
    let (first, last) = (clampings.first()?, clampings.last()?);
    let faces: Vec<&str> = clampings.iter().map(|c| c.seat.cut.name()).collect();
    let numbers = if clampings.len() == 1 {
        format!("square {}", first.number)
    } else {
        format!("square {} to {}", first.number, last.number)
    };
    Some((numbers, faces.join(", "), &first.card.job.machine.name))
}

/// The last column holds what may be long: a page breaks it below itself.
fn held(card: &PartCard) -> Table {
    let rows = card.sheets.iter().filter_map(|sheet| match sheet {
        Sheet::Clamping(clamping) => Some(vec![
            clamping.number.to_string(),
            clamping.machine(),
            clamping.held.clone(),
        ]),
        Sheet::Block(0) => squares(card).map(|(numbers, _, machine)| {
            let held = "vise, as each card says".to_owned();
            vec![numbers, machine.to_owned(), held]
        }),
        Sheet::Block(_) => None,
    });
    let rows = rows.collect();
    ("Clampings", heads(&["No", "Machine", "Held"]), rows)
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
                        clamping.number.to_string(),
                        operation.count.to_string(),
                        value("spindle_speed"),
                        value("feed_speed"),
                        operation.name.clone(),
                    ]);
                }
            }
            Sheet::Block(0) => rows.extend(squares(card).map(|(numbers, faces, _)| {
                let see = || "see cards".to_owned();
                let work = format!("Square the block: {faces}");
                vec![numbers, "1".to_owned(), see(), see(), work]
            })),
            Sheet::Block(_) => {}
        }
    }
    let heads = heads(&["No", "Times", "Speed", "Feed", "Work"]);
    ("Order of the work", heads, rows)
}

fn heads(words: &[&str]) -> Vec<String> {
    words.iter().map(|word| (*word).to_owned()).collect()
}

/// Lines with a set-up one by one; the others, which the table above tells and no lot changes, as one.
fn lots(card: &PartCard) -> Table {
    let with_cost = card.entries.iter().any(|entry| entry.rate.is_some());
    let cell = |time: Time, cost: Money| {
        if with_cost {
            format!("{}, {:.2}", clock(time), cost.value)
        } else {
            clock(time)
        }
    };
    // A row holds what is summed over the lines that belong to it.
    let row = |name: &str, belongs: &dyn Fn(usize) -> bool| {
        let mut row = vec![name.to_owned()];
        row.extend(card.lots.iter().map(|lot| {
            let (mut time, mut cost): (Time, Money) = (si(0.0), si(0.0));
            for (index, entry) in lot.entries.iter().enumerate() {
                if belongs(index) {
                    time += entry.time;
                    cost += entry.cost;
                }
            }
            cell(time, cost)
        }));
        row
    };
    let shares = |index: usize| {
        let entry = card.entries.get(index);
        entry.is_some_and(|entry| entry.time.setup.value > 0.0)
    };
    let mut heads = vec!["A part takes, in a lot of".to_owned()];
    heads.extend(card.lots.iter().map(|lot| format!("{}", lot.size.value)));
    let mut rows: Vec<Vec<String>> = Vec::new();
    for (index, entry) in card.entries.iter().enumerate() {
        if shares(index) {
            rows.push(row(&entry.name, &|other| other == index));
        }
    }
    if rows.len() < card.entries.len() {
        rows.push(row("all others", &|index| !shares(index)));
    }
    if with_cost || card.route.material_cost.value > 0.0 {
        let mut row = vec!["material".to_owned()];
        let cost = |lot: &LotOfPart| format!("{:.2}", lot.material_cost.value);
        row.extend(card.lots.iter().map(cost));
        rows.push(row);
    }
    let mut row = vec!["together".to_owned()];
    let sum = |lot: &LotOfPart| cell(lot.time_per_part, lot.cost_per_part);
    row.extend(card.lots.iter().map(sum));
    rows.push(row);
    let title =
        "Time (h:mm:ss) and cost a part, with its share of the set-up, rounded line by line";
    (title, heads, rows)
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
    page.heading("Sources");
    for source in sources(clamping) {
        page.hanging("", &source);
    }
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

/// Every source of the clamping once, with its id.
pub(super) fn sources(clamping: &Clamping) -> Vec<String> {
    let mut texts: Vec<String> = Vec::new();
    for (_, process) in &clamping.work {
        for (id, reference) in &process.sources {
            let text = format!("[{id}] {reference}");
            if !texts.contains(&text) {
                texts.push(text);
            }
        }
    }
    texts
}
