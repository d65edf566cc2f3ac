//! `gullet fit`: a law from a shop's own readings.

use super::card::library;
use crate::answer::{Answer, joined};
use crate::arguments::{Flag, Given, JSON, Spec, UNITS, read};
use crate::files;
use crate::readings::{self, Readings, Wanted};
use gullet::error::{Code, Error, Problem, Result, Warning, unknown_name};
use gullet::fit::{
    FitOptions, KienzleFit, Regression, TaylorFit, fit_extended_taylor, fit_kienzle, fit_taylor,
};
use gullet::listing::{Cell, Column, Form};
use gullet::quantity::{
    Kind, Length, LineForce, Time, UnitSystem, Velocity, format_worked, parse, si,
};
use gullet::table::{Library, Material, Overlay, ToolMaterial};
use gullet::wear::WearCriterion;
use serde_json::{Map, Value, json};
use std::fmt::Write as _;

const LAWS: &[&str] = &["taylor", "extended-taylor", "kienzle"];

const SPEC: Spec = Spec {
    flags: &[
        JSON,
        UNITS,
        Flag::with_value("--confidence", "SHARE"),
        Flag::with_value("--source", "TEXT"),
        Flag::with_value("--criterion", "TEXT"),
        Flag::with_value("--reference-feed", "LENGTH"),
        Flag::with_value("--reference-depth", "LENGTH"),
        Flag::with_value("--output", "FILE"),
        Flag::with_value("--material", "ID"),
        Flag::with_value("--tool-material", "NAME"),
        Flag::with_value("--id", "ID"),
        Flag::with_value("--overlay", "FILE").repeated(),
    ],
    operand: "taylor, extended-taylor or kienzle, and READINGS.csv",
    least: 2,
    most: 2,
};

const fn wanted(name: &'static str, kind: Kind, optional: bool) -> Wanted {
    Wanted {
        name,
        kind,
        optional,
    }
}

const TAYLOR: &[Wanted] = &[
    wanted("cutting_speed", Kind::Velocity, false),
    wanted("tool_life", Kind::Time, false),
];
const EXTENDED: &[Wanted] = &[
    wanted("cutting_speed", Kind::Velocity, false),
    wanted("tool_life", Kind::Time, false),
    wanted("feed_per_rev", Kind::Length, false),
    wanted("depth_of_cut", Kind::Length, true),
];
const KIENZLE: &[Wanted] = &[
    wanted("chip_thickness", Kind::Length, false),
    wanted("force_per_width", Kind::LineForce, false),
];

/// A law that was fitted.
enum Fitted {
    Taylor(Box<TaylorFit>),
    Kienzle(Box<KienzleFit>),
}

impl Fitted {
    fn fields(&self) -> Vec<(Column, Cell)> {
        match self {
            Fitted::Taylor(fit) => fit.fields().collect(),
            Fitted::Kienzle(fit) => fit.fields().collect(),
        }
    }

    fn regression(&self) -> &Regression {
        match self {
            Fitted::Taylor(fit) => &fit.regression,
            Fitted::Kienzle(fit) => &fit.regression,
        }
    }

    fn warnings(&self) -> &[Warning] {
        match self {
            Fitted::Taylor(fit) => &fit.warnings,
            Fitted::Kienzle(fit) => &fit.warnings,
        }
    }
}

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let [law, file] = given.operands.as_slice() else {
        return Err(Problem::new(Code::Missing, SPEC.operand, "", "", "give both").into());
    };
    let columns = match law.as_str() {
        "taylor" => TAYLOR,
        "extended-taylor" => EXTENDED,
        "kienzle" => KIENZLE,
        _ => return Err(unknown_name("law", law, LAWS.iter().copied()).into()),
    };
    let options = options(&given, file);
    let target = target(&given, law);
    let readings = readings::read(file, columns);
    let (options, target, readings) = all(options, target, readings)?;
    let fitted = fit(law, &readings, &options)?;
    if let Some(target) = &target {
        files::write(&target.file, &target.table(&fitted)?.text)?;
    }
    Ok(if given.has("--json") {
        Answer::json(&as_json(law, &fitted))
    } else {
        Answer::text(as_text(law, &fitted, &readings, options.units))
    })
}

/// Three results, or the problems of them all.
fn all<A, B, C>(a: Result<A>, b: Result<B>, c: Result<C>) -> Result<(A, B, C)> {
    let mut problems = Vec::new();
    let mut keep = |error: Error| problems.extend(error.into_problems());
    let (a, b) = (a.map_err(&mut keep), b.map_err(&mut keep));
    match (a, b, c) {
        (Ok(a), Ok(b), Ok(c)) => Ok((a, b, c)),
        (_, _, Err(error)) => Err(joined(problems, error)),
        _ => Err(Error::unless_empty(problems, ()).err().unwrap_or_else(|| {
            Problem::new(Code::Missing, SPEC.operand, "", "", "give both").into()
        })),
    }
}

fn options(given: &Given, file: &str) -> Result<FitOptions> {
    let mut problems = Vec::new();
    let mut number = |flag: &str, kind: Kind| {
        let text = given.value(flag)?;
        match parse(kind, text) {
            Ok(value) => Some(value),
            Err(error) => {
                problems.extend(error.within(flag).into_problems());
                None
            }
        }
    };
    let mut options = FitOptions {
        source: given
            .value("--source")
            .unwrap_or(files::shown(file))
            .to_owned(),
        criterion: WearCriterion::read(given.value("--criterion").unwrap_or("")),
        units: given.units().unwrap_or(UnitSystem::Metric),
        ..FitOptions::default()
    };
    if let Some(confidence) = number("--confidence", Kind::Ratio) {
        options.confidence = si(confidence);
    }
    options.reference_feed = number("--reference-feed", Kind::Length).map(si);
    options.reference_depth = number("--reference-depth", Kind::Length).map(si);
    Error::unless_empty(problems, options)
}

/// Where a shop's own table goes, and for what it is.
struct Target {
    file: String,
    library: Library,
    material: Material,
    tool: Option<ToolMaterial>,
    id: String,
}

fn target(given: &Given, law: &str) -> Result<Option<Target>> {
    let Some(file) = given.value("--output") else {
        return Ok(None);
    };
    let mut problems = Vec::new();
    let overlays: Vec<&str> = given.values("--overlay").collect();
    let library = library(&overlays)?;
    let missing = |flag: &str, remedy: &str| Problem::new(Code::Missing, flag, "", "", remedy);
    let material = match given.value("--material").map(|id| library.material(id)) {
        Some(Ok(material)) => Some(material.clone()),
        Some(Err(error)) => {
            problems.extend(error.within("--material").into_problems());
            None
        }
        None => {
            problems.push(missing(
                "--material",
                "name the material that the readings are of",
            ));
            None
        }
    };
    let known = || ToolMaterial::ALL.iter().map(|tool| tool.name());
    let tool = match given.value("--tool-material") {
        Some(text) => {
            let tool = ToolMaterial::parse(text);
            if tool.is_none() {
                problems.push(unknown_name("--tool-material", text, known()));
            }
            tool
        }
        None => {
            if law != "kienzle" {
                problems.push(missing(
                    "--tool-material",
                    "name what the edges are made of, such as HSS",
                ));
            }
            None
        }
    };
    let target = material.map(|material| Target {
        file: file.to_owned(),
        library: library.clone(),
        material,
        tool,
        id: given.value("--id").unwrap_or("own-1").to_owned(),
    });
    Error::unless_empty(problems, target)
}

impl Target {
    /// The table, which must read back.
    fn table(&self, fitted: &Fitted) -> Result<Overlay> {
        let table = match fitted {
            Fitted::Kienzle(fit) => {
                Overlay::of_materials(&self.file, &[&self.material.with_pair(fit.pair.clone())])
            }
            Fitted::Taylor(fit) => {
                let classes = [self.material.id.clone()];
                let tools: Vec<ToolMaterial> = self.tool.into_iter().collect();
                let row = fit.to_row(&self.id, &self.material.name, &classes, &tools);
                Overlay::of_tool_lives(&self.file, &[&row])
            }
        }?;
        self.library
            .with_overlay(std::slice::from_ref(&table))
            .map(|_| table)
    }
}

fn fit(law: &str, readings: &Readings, options: &FitOptions) -> Result<Fitted> {
    let column = |place: usize| readings.column(place).unwrap_or_default();
    Ok(match law {
        "kienzle" => {
            let chips: Vec<Length> = column(0).iter().copied().map(si).collect();
            let forces: Vec<LineForce> = column(1).iter().copied().map(si).collect();
            Fitted::Kienzle(Box::new(fit_kienzle(&chips, &forces, options)?))
        }
        _ => {
            let speeds: Vec<Velocity> = column(0).iter().copied().map(si).collect();
            let lives: Vec<Time> = column(1).iter().copied().map(si).collect();
            let lengths = |values: &[f64]| values.iter().copied().map(si).collect::<Vec<Length>>();
            let depths = readings.column(3).map(lengths);
            let fit = if law == "taylor" {
                fit_taylor(&speeds, &lives, options)
            } else {
                fit_extended_taylor(
                    &speeds,
                    &lengths(column(2)),
                    depths.as_deref(),
                    &lives,
                    options,
                )
            };
            Fitted::Taylor(Box::new(fit?))
        }
    })
}

fn as_json(law: &str, fitted: &Fitted) -> Value {
    let cell = |cell: &Cell| match cell {
        Cell::Text(text) => json!(text),
        Cell::Number(value) => json!(value),
        Cell::Whole(value) => json!(value),
        Cell::Range(low, high) => json!([low, high]),
        _ => Value::Null,
    };
    let mut map = Map::new();
    map.insert("law".to_owned(), json!(law));
    for (column, value) in fitted.fields() {
        map.insert(column.name.to_owned(), cell(&value));
    }
    let listing = fitted.regression().listing();
    let rows: Vec<Value> = listing
        .rows
        .iter()
        .map(|row| {
            let pairs = listing.columns.iter().zip(row);
            Value::Object(
                pairs
                    .map(|(column, value)| (column.name.to_owned(), cell(value)))
                    .collect(),
            )
        })
        .collect();
    map.insert("coefficients".to_owned(), Value::Array(rows));
    map.insert("residuals".to_owned(), json!(fitted.regression().residuals));
    let warnings = fitted.warnings().iter();
    let warnings = warnings.map(|doubt| json!({"code": doubt.code.name(), "text": doubt.text}));
    map.insert("warnings".to_owned(), warnings.collect());
    Value::Object(map)
}

fn as_text(law: &str, fitted: &Fitted, readings: &Readings, system: UnitSystem) -> String {
    let mut text = format!("{law}\n");
    // Writing into a text cannot fail.
    for (column, value) in fitted.fields() {
        let shown = match (column.form, &value) {
            (Form::Number(kind), Cell::Number(value)) => format_worked(kind, *value, system),
            (Form::Range(kind), Cell::Range(low, high)) => {
                format!(
                    "{} to {}",
                    format_worked(kind, *low, system),
                    format_worked(kind, *high, system)
                )
            }
            (_, Cell::Text(words)) if !words.is_empty() => words.clone(),
            (_, Cell::Whole(value)) => value.to_string(),
            _ => continue,
        };
        let _ = writeln!(text, "  {:<30} {shown:<32} {}", column.name, column.meaning);
    }
    let regression = fitted.regression();
    let _ = writeln!(
        text,
        "\nlogarithms of min, m/min, mm, N/mm\n  {:<16} {:>12} {:>12} {:>12} {:>12} {:>10}",
        "coefficient", "value", "error", "low", "high", "p"
    );
    for known in &regression.coefficients {
        let _ = writeln!(
            text,
            "  {:<16} {:>12.5} {:>12.5} {:>12.5} {:>12.5} {:>10.2e}",
            known.name, known.value, known.standard_error, known.low, known.high, known.p_value
        );
    }
    let residuals: Vec<String> = regression
        .residuals
        .iter()
        .map(|value| format!("{value:+.3}"))
        .collect();
    let _ = writeln!(text, "\nresiduals\n  {}", residuals.join(" "));
    for doubt in fitted.warnings() {
        let _ = writeln!(text, "doubt: {}", doubt.text);
    }
    if !readings.others.is_empty() {
        let _ = writeln!(text, "columns not used: {}", readings.others.join(", "));
    }
    if matches!(fitted, Fitted::Taylor(_)) {
        text +=
            "The law gives median lives. Numbers are starting values: test them on the machine.\n";
    }
    text
}
