//! Reads the file of a part.

use super::super::document::{Keys, Node, Presence, Reader, Section, Word, form, keys};
use super::super::job::{self, MachineKeys, MaterialKeys, PracticeKeys};
use super::super::route;
use super::PartRoute;
use super::given::Problems;
use super::operations::PartStep;
use super::steps::{self, LARGEST_RATE, SQUARING, Shop};
use crate::error::{Code, Error, Problem, Result};
use crate::model::{Machine, Practice};
use crate::quantity::{Count, Kind, Money, MoneyRate, UnitSystem, si};
use crate::table::Library;
use Presence::{Default, Optional, Required};
use form::{Choice, Text};

/// The word that a file of a part begins with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::plan) struct PartWord;

impl Word for PartWord {
    const WORDS: &'static [&'static str] = &["part"];
    fn at(index: usize) -> Option<PartWord> {
        (index == 0).then_some(PartWord)
    }
}

keys! {
    /// What the cards are headed with and printed in.
    struct HeadKeys = "", required: false, rules: [];
    _route as "route": Choice<PartWord>, Required, "part", "A part made by the operations of this file.";
    title: Text, Optional("the material"), "Valve body", "Title on the cards.";
    units: Choice<UnitSystem>, Default("metric"), "inch", "Units the cards print in; every quantity may be given in either.";
    _schema as "$schema": Text, Optional("nothing"), "part.schema.json", "Address of a schema, for editors; not read.";
}

pub(super) const SECTIONS: &[fn() -> &'static Section] = &[
    HeadKeys::section,
    MaterialKeys::section,
    PracticeKeys::section,
];

/// A machine read alone.
const MACHINE: &[fn() -> &'static Section] = &[MachineKeys::section];

/// Keys of the rates.
const RATES: &[&str] = &["machine_rate", "material_cost", "lots"];

/// Sections that are read here and not by the reader of sections.
const OWN: [&str; 4] = ["operation", "machines", "squaring", "rates"];

/// Lots at most.
pub(super) const MOST_LOTS: usize = 20;

/// Parts of a lot at most.
const LARGEST_LOT: f64 = 1e6;

/// Largest cost of the material of a part.
const LARGEST_COST: f64 = 1e9;

impl PartRoute {
    /// Reads the file of a part in TOML; `library` holds the materials.
    ///
    /// # Errors
    /// Every problem at once, each with its path and its line.
    pub fn from_toml(text: &str, library: &Library) -> Result<PartRoute> {
        part(Node::from_toml(text)?, library)
    }

    /// Reads the file of a part in JSON, with the same sections and keys as in TOML.
    ///
    /// # Errors
    /// Those of [`PartRoute::from_toml`], without lines but for faults of form.
    pub fn from_json(text: &str, library: &Library) -> Result<PartRoute> {
        part(Node::from_json(text)?, library)
    }
}

/// Reads a part.
pub(in crate::plan) fn part(mut root: Node, library: &Library) -> Result<PartRoute> {
    let mut problems = Problems::default();
    let [operations, machines, squaring, rates] = OWN.map(|key| root.take(key));
    strangers(&mut root, &mut problems);
    let mut reader = Reader::open(&root, SECTIONS)?;
    let head: HeadKeys = reader.section();
    let units = head.units.unwrap_or(UnitSystem::Metric);
    let material = job::material(&mut reader, library);
    let practice = job::practice(&mut reader, units);
    let mut assumptions = reader.close().unwrap_or_else(|error| {
        problems.0.extend(error.into_problems());
        Vec::new()
    });
    let machines = own_machines(machines.as_ref(), units, &mut problems, &mut assumptions);
    let rates = read_rates(rates.as_ref(), &mut problems);
    let practice = practice.map_or_else(|| Practice::builtin("training"), Ok)?;
    let shop = Shop {
        machines: &machines,
        practice: &practice,
        units,
    };
    let steps = steps::read(operations.as_ref(), &shop, &mut problems, &mut assumptions);
    let squares = steps.contains(&PartStep::Squaring);
    let block = match (squaring, squares) {
        (Some(node), true) => block(node, &root, library, &mut problems),
        (Some(node), false) => {
            problems.add(
                Code::Inconsistent,
                "squaring",
                &node,
                "a step [[operation]] with operation = \"squared-block\"",
                "say with such a step when the block is squared, or leave the section out",
            );
            None
        }
        (None, true) => {
            problems.missing(
                "squaring",
                "the sections of a squared block under [squaring]",
                "add [squaring.blank], [squaring.part], [squaring.cutter], [squaring.machine] and [squaring.hold]",
            );
            None
        }
        (None, false) => None,
    };
    if material.is_none() && problems.0.is_empty() {
        problems.missing("material", "", "name the work material");
    }
    let material = Error::unless_empty(problems.0, material)?;
    let unnamed = || Problem::new(Code::Missing, "material", "", "", "name the work material");
    let material = material.ok_or_else(unnamed)?;
    if let Some(block) = &block {
        let told = block.assumptions.iter();
        assumptions.extend(told.map(|text| format!("squaring.{text}")));
    }
    Ok(PartRoute {
        title: head
            .title
            .unwrap_or_else(|| format!("part of {}", material.name)),
        units,
        material,
        practice,
        steps,
        rate: rates.machine_rate,
        material_cost: rates.material_cost,
        lots: rates.lots,
        assumptions,
        block,
    })
}

/// Takes what no section of a part has out of the document, and reports it.
fn strangers(root: &mut Node, problems: &mut Problems) {
    let known: Vec<&str> = SECTIONS
        .iter()
        .map(|section| section())
        .flat_map(|section| {
            let head = section.name.is_empty();
            let fields = section.fields.iter().filter(move |_| head);
            fields
                .map(|field| field.key)
                .chain((!head).then_some(section.name))
        })
        .chain(OWN)
        .collect();
    let keys = root.keys().into_iter().flatten();
    let strange: Vec<String> = keys
        .map(|(key, _)| key)
        .filter(|key| OWN.contains(key) || !known.contains(key))
        .map(str::to_owned)
        .collect();
    for key in strange {
        let Some(node) = root.take(&key) else {
            continue;
        };
        if OWN.contains(&key.as_str()) {
            problems.twice(&key, &node);
        } else {
            problems.unknown(&key, &key, &node, known.iter().copied());
        }
    }
}

/// The block to be squared: its own sections, with the material and the practice of the part.
fn block(
    node: Node,
    root: &Node,
    library: &Library,
    problems: &mut Problems,
) -> Option<Box<route::SquaredBlock>> {
    let own = node.clone();
    let mut whole = node.with("route", &Node::of_text(SQUARING));
    const SHARED: [&str; 4] = ["title", "units", "material", "practice"];
    for key in SHARED {
        if let Some(given) = root.get(key) {
            whole = whole.with(key, given);
        }
    }
    match route::block(&whole, library) {
        Ok(block) => Some(Box::new(block)),
        Err(error) => {
            // Those of what the part says itself are told already.
            let shared = |problem: &Problem| {
                let section = problem.parameter.split('.').next().unwrap_or_default();
                SHARED.contains(&section) && own.get(section).is_none()
            };
            let found = error.into_problems().into_iter();
            let found = found.filter(|problem| !shared(problem));
            problems
                .0
                .extend(found.map(|problem| problem.within("squaring")));
            None
        }
    }
}

/// The machines that the file describes itself, by name.
fn own_machines(
    node: Option<&Node>,
    units: UnitSystem,
    problems: &mut Problems,
    assumptions: &mut Vec<String>,
) -> Vec<(String, Machine)> {
    let Some(node) = node else {
        return Vec::new();
    };
    let Some(keys) = node.keys() else {
        problems.add(
            Code::WrongType,
            "machines",
            node,
            "sections such as [machines.lathe]",
            "write a section for each machine",
        );
        return Vec::new();
    };
    let mut machines = Vec::new();
    for (name, node) in keys {
        let root = node.clone().under("machine");
        let read = || -> Result<(Machine, Vec<String>)> {
            let mut reader = Reader::open(&root, MACHINE)?;
            let machine = job::machine(&mut reader, units);
            Ok((machine, reader.close()?))
        };
        match read() {
            Ok((machine, assumed)) => {
                machines.push((name.to_owned(), machine));
                assumptions.extend(
                    assumed
                        .into_iter()
                        .map(|text| text.replacen("machine.", &format!("machines.{name}."), 1)),
                );
            }
            Err(error) => {
                let path = format!("machines.{name}");
                problems
                    .0
                    .extend(error.into_problems().into_iter().map(|mut problem| {
                        problem.parameter = problem.parameter.replacen("machine", &path, 1);
                        problem
                    }));
            }
        }
    }
    machines
}

/// What time costs, and the lots.
struct Rates {
    machine_rate: Option<MoneyRate>,
    material_cost: Money,
    lots: Vec<Count>,
}

fn read_rates(node: Option<&Node>, problems: &mut Problems) -> Rates {
    let mut rates = Rates {
        machine_rate: None,
        material_cost: si(0.0),
        lots: Vec::new(),
    };
    let Some(node) = node else {
        return rates;
    };
    let Some(keys) = node.keys() else {
        problems.add(
            Code::WrongType,
            "rates",
            node,
            "a section",
            "write a line [rates] and its keys below it",
        );
        return rates;
    };
    let mut seen = Vec::new();
    for (key, value) in keys {
        let path = format!("rates.{key}");
        if seen.contains(&key) {
            problems.twice(&path, value);
            continue;
        }
        seen.push(key);
        match key {
            "machine_rate" => {
                rates.machine_rate = problems
                    .number(Kind::MoneyRate, &path, value, LARGEST_RATE)
                    .map(si);
            }
            "material_cost" => {
                if let Some(cost) = problems.number(Kind::Money, &path, value, LARGEST_COST) {
                    rates.material_cost = si(cost);
                }
            }
            "lots" => rates.lots = lots(&path, value, problems),
            _ => problems.unknown(&path, key, value, RATES.iter().copied()),
        }
    }
    rates
}

fn lots(path: &str, node: &Node, problems: &mut Problems) -> Vec<Count> {
    let wanted = format!("1 to {MOST_LOTS} whole numbers");
    let remedy = "write lots = [1, 10, 100]";
    match node.items() {
        Some(items) if (1..=MOST_LOTS).contains(&items.len()) => items
            .iter()
            .enumerate()
            .filter_map(|(index, item)| {
                let path = format!("{path}[{}]", index + 1);
                problems.number(Kind::Count, &path, item, LARGEST_LOT)
            })
            .map(si)
            .collect(),
        Some(items) => {
            let value = format!("{} numbers", items.len());
            let problem = Problem::new(Code::OutOfRange, path, value, wanted, remedy);
            problems.told(problem, node);
            Vec::new()
        }
        None => {
            problems.add(Code::WrongType, path, node, &wanted, remedy);
            Vec::new()
        }
    }
}
