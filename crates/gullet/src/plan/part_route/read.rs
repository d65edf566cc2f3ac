//! Reads the file of a part.

use super::super::document::{Keys, Node, Presence, Reader, Section, Word, form, keys};
use super::super::job::{self, MachineKeys, MaterialKeys, PracticeKeys};
use super::super::route;
use super::PartRoute;
use super::operations::{PartOperation, PartStep};
use crate::error::{Code, Error, Problem, Result, unknown_name};
use crate::model::{Machine, Practice};
use crate::operation::process::{self, Process, Request};
use crate::quantity::{self, Kind, Time, UnitSystem, si};
use crate::table::{Library, ToolMaterial};
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

const SECTIONS: &[fn() -> &'static Section] = &[
    HeadKeys::section,
    MaterialKeys::section,
    PracticeKeys::section,
];

/// A machine read alone.
const MACHINE: &[fn() -> &'static Section] = &[MachineKeys::section];

/// Keys of an operation beside its own inputs.
const KEYS: &[&str] = &[
    "name",
    "clamping",
    "operation",
    "machine",
    "tool",
    "count",
    "handling_time",
    "tool_change_time",
    "setup_time",
    "clamping_time",
    "measuring_time",
    "deburring_time",
    "machine_rate",
    "note",
];

/// Keys of the rates.
const RATES: &[&str] = &["machine_rate", "material_cost", "lots"];

/// The step that squares the block.
const SQUARING: &str = "squared-block";

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

/// Problems gathered while reading.
#[derive(Default)]
struct Problems(Vec<Problem>);

impl Problems {
    fn add(&mut self, code: Code, path: &str, node: &Node, admissible: &str, remedy: &str) {
        self.0.push(Problem::new(
            code,
            path,
            node.as_given(),
            admissible,
            format!("{remedy}{}", node.place()),
        ));
    }

    fn error(&mut self, error: Error, node: &Node) {
        for mut problem in error.into_problems() {
            problem.remedy += &node.place();
            self.0.push(problem);
        }
    }

    fn missing(&mut self, path: String, admissible: &str, remedy: &str) {
        self.0
            .push(Problem::new(Code::Missing, path, "", admissible, remedy));
    }
}

/// Reads a part.
pub(in crate::plan) fn part(mut root: Node, library: &Library) -> Result<PartRoute> {
    let operations = root.take("operation");
    let machines = root.take("machines");
    let squaring = root.take("squaring");
    let rates = root.take("rates");
    let mut problems = Problems::default();
    let mut reader = Reader::open(&root, SECTIONS)?;
    let head: HeadKeys = reader.section();
    let units = head.units.unwrap_or(UnitSystem::Metric);
    let material = job::material(&mut reader, library);
    let practice = job::practice(&mut reader, units);
    let mut assumptions = match reader.close() {
        Ok(assumptions) => assumptions,
        Err(error) => {
            problems.0.extend(error.into_problems());
            Vec::new()
        }
    };
    let machines = own_machines(machines.as_ref(), units, &mut problems, &mut assumptions);
    let rates = read_rates(rates.as_ref(), &mut problems);
    let practice = practice.map_or_else(|| Practice::builtin("training"), Ok)?;
    let steps = read_steps(
        operations.as_ref(),
        &machines,
        &practice,
        &mut problems,
        &mut assumptions,
    );
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
                "squaring".to_owned(),
                "the sections of a squared block under [squaring]",
                "add [squaring.blank], [squaring.part], [squaring.cutter], [squaring.machine] and [squaring.hold]",
            );
            None
        }
        (None, false) => None,
    };
    let Some(material) = material else {
        problems.missing("material".to_owned(), "", "name the work material");
        return Err(Error::unless_empty(problems.0, ())
            .err()
            .unwrap_or_else(|| process::find("").err().unwrap_or_else(nothing)));
    };
    let title = head
        .title
        .unwrap_or_else(|| format!("part of {}", material.name));
    if let Some(block) = &block {
        assumptions.extend(block.assumptions.iter().cloned());
    }
    Error::unless_empty(
        problems.0,
        PartRoute {
            title,
            units,
            material,
            practice,
            steps,
            rate: rates.machine_rate,
            material_cost: rates.material_cost,
            lots: rates.lots,
            assumptions,
            block,
        },
    )
}

fn nothing() -> Error {
    Problem::new(Code::Missing, "material", "", "", "name the work material").into()
}

/// The block to be squared: its own sections, with the material and the practice of the part.
fn block(
    node: Node,
    root: &Node,
    library: &Library,
    problems: &mut Problems,
) -> Option<Box<route::SquaredBlock>> {
    let mut whole = node.with("route", &Node::of_text(SQUARING));
    for key in ["title", "units", "material", "practice"] {
        if let Some(given) = root.get(key) {
            whole = whole.with(key, given);
        }
    }
    match route::block(&whole, library) {
        Ok(block) => Some(Box::new(block)),
        Err(error) => {
            problems.0.extend(error.within("squaring").into_problems());
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
    machine_rate: Option<crate::quantity::MoneyRate>,
    material_cost: crate::quantity::Money,
    lots: Vec<crate::quantity::Count>,
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
    for (key, value) in node.keys().into_iter().flatten() {
        let path = format!("rates.{key}");
        match key {
            "machine_rate" => {
                rates.machine_rate = number(Kind::MoneyRate, &path, value, problems).map(si);
            }
            "material_cost" => {
                if let Some(cost) = number(Kind::Money, &path, value, problems) {
                    rates.material_cost = si(cost);
                }
            }
            "lots" => match value.items() {
                Some(items) if !items.is_empty() && items.len() <= 20 => {
                    for item in items {
                        if let Some(size) = number(Kind::Count, &path, item, problems) {
                            rates.lots.push(si(size));
                        }
                    }
                }
                _ => problems.add(
                    Code::WrongType,
                    &path,
                    value,
                    "1 to 20 whole numbers",
                    "write lots = [1, 10, 100]",
                ),
            },
            _ => {
                let problem = unknown_name(&path, key, RATES.iter().copied());
                problems.error(problem.into(), value);
            }
        }
    }
    rates
}

/// A number of a kind: text with its unit, or the bare number of a kind without one.
fn number(kind: Kind, path: &str, node: &Node, problems: &mut Problems) -> Option<f64> {
    let bare = matches!(kind, Kind::Count | Kind::Ratio | Kind::Money);
    let value = match (node.as_text(), node.as_number()) {
        (Some(text), _) => match quantity::parse(kind, text) {
            Ok(value) => value,
            Err(error) => {
                problems.error(error.within(path), node);
                return None;
            }
        },
        (None, Some(value)) if bare => value,
        _ => {
            problems.add(
                Code::WrongType,
                path,
                node,
                kind.name(),
                "write the number with its unit in quotes, such as \"8.5 mm\"",
            );
            return None;
        }
    };
    let whole = kind != Kind::Count || (value.fract() == 0.0 && (1.0..=1e9).contains(&value));
    if !value.is_finite() || value < 0.0 || !whole {
        problems.add(
            Code::OutOfRange,
            path,
            node,
            if kind == Kind::Count {
                "a whole number, at least 1"
            } else {
                "a finite number, at least 0"
            },
            "correct the number",
        );
        return None;
    }
    Some(value)
}

fn read_steps(
    node: Option<&Node>,
    machines: &[(String, Machine)],
    practice: &Practice,
    problems: &mut Problems,
    assumptions: &mut Vec<String>,
) -> Vec<PartStep> {
    let Some(items) = node
        .and_then(Node::items)
        .filter(|items| (1..=100).contains(&items.len()))
    else {
        problems.missing(
            "operation".to_owned(),
            "1 to 100 sections [[operation]]",
            "write a section [[operation]] for each operation, in order",
        );
        return Vec::new();
    };
    let mut steps = Vec::new();
    let mut seen: Vec<String> = Vec::new();
    let mut last_clamping = String::new();
    for (index, node) in items.iter().enumerate() {
        let path = format!("operation[{}]", index + 1);
        let name = node.get("operation").and_then(Node::as_text);
        if name == Some(SQUARING) {
            steps.push(PartStep::Squaring);
            last_clamping.clear();
            continue;
        }
        let Some(name) = name else {
            problems.missing(
                format!("{path}.operation"),
                "the name of an operation",
                &format!(
                    "name one, such as operation = \"drilling\"; gullet list operations{}",
                    node.place()
                ),
            );
            continue;
        };
        let process = match process::find(name) {
            Ok(process) => process,
            Err(error) => {
                problems.error(error.within(&path), node);
                continue;
            }
        };
        let mut read = Operation {
            path: &path,
            node,
            problems: &mut *problems,
        };
        if let Some(operation) =
            read.operation(process, machines, practice, &mut seen, &mut last_clamping)
        {
            if operation.request.process().tables.is_some() && node.get("tool").is_none() {
                assumptions.push(format!("{path}.tool: HSS assumed"));
            }
            steps.push(PartStep::Operation(Box::new(operation)));
        }
    }
    steps
}

/// One section [[operation]] being read.
struct Operation<'r> {
    path: &'r str,
    node: &'r Node,
    problems: &'r mut Problems,
}

impl Operation<'_> {
    fn operation(
        &mut self,
        process: &'static Process,
        machines: &[(String, Machine)],
        practice: &Practice,
        seen: &mut Vec<String>,
        last_clamping: &mut String,
    ) -> Option<PartOperation> {
        let before = self.problems.0.len();
        let request = self.request(process);
        let machine = self.machine(process, machines);
        let tool = self.tool();
        let text = |key: &str| {
            self.node
                .get(key)
                .and_then(Node::as_text)
                .map(str::to_owned)
        };
        let name = text("name").unwrap_or_else(|| process.title.to_owned());
        let note = text("note");
        let clamping = text("clamping").unwrap_or_else(|| {
            if last_clamping.is_empty() {
                "as the operation needs".to_owned()
            } else {
                last_clamping.clone()
            }
        });
        let count = self.count();
        let first_there = machine
            .as_ref()
            .is_some_and(|(name, _)| !seen.contains(name));
        let new_clamping = *last_clamping != clamping;
        let time = |this: &mut Self, key: &str, default: Time| {
            let Some(node) = this.node.get(key) else {
                return default;
            };
            let path = format!("{}.{key}", this.path);
            number(Kind::Time, &path, node, this.problems).map_or(default, si)
        };
        let when = |holds: bool, time: Time| if holds { time } else { si(0.0) };
        let setup_time = time(self, "setup_time", when(first_there, practice.setup_time));
        let clamping_time = time(
            self,
            "clamping_time",
            when(new_clamping, practice.clamping_time),
        );
        let measuring_time = time(
            self,
            "measuring_time",
            when(new_clamping, practice.measuring_time),
        );
        let deburring_time = time(
            self,
            "deburring_time",
            when(new_clamping, practice.deburring_time),
        );
        let handling_time = time(self, "handling_time", practice.handling_per_pass);
        let tool_change_time = time(self, "tool_change_time", si(0.0));
        let rate = self.node.get("machine_rate").and_then(|node| {
            let path = format!("{}.machine_rate", self.path);
            number(Kind::MoneyRate, &path, node, self.problems).map(si)
        });
        *last_clamping = clamping.clone();
        if let Some((name, _)) = &machine {
            seen.push(name.clone());
        }
        let (machine, request, tool) = (machine?.1, request?, tool?);
        (self.problems.0.len() == before).then_some(PartOperation {
            name,
            clamping,
            request,
            machine,
            tool,
            count,
            handling_time,
            tool_change_time,
            setup_time,
            clamping_time,
            measuring_time,
            deburring_time,
            rate,
            note,
        })
    }

    fn request(&mut self, process: &'static Process) -> Option<Request> {
        let mut request = Request::of(process);
        let before = self.problems.0.len();
        for (key, node) in self.node.keys()? {
            if KEYS.contains(&key) {
                continue;
            }
            let path = format!("{}.{key}", self.path);
            let Ok((_, input)) = process.input(key) else {
                let known = process.inputs.iter().map(process::ProcessInput::name);
                let problem = unknown_name(&path, key, known.chain(KEYS.iter().copied()));
                self.problems.error(problem.into(), node);
                continue;
            };
            let next = match node.as_text() {
                Some(text) => request
                    .clone()
                    .text(key, text)
                    .map_err(|error| error.within(self.path)),
                None => {
                    let kind = input.parameter.kind;
                    let bare = input.words.is_empty();
                    let value = if bare {
                        number(kind, &path, node, self.problems)
                    } else {
                        self.problems.add(
                            Code::WrongType,
                            &path,
                            node,
                            &input.words.join(", "),
                            "write one of these words in quotes",
                        );
                        None
                    };
                    let Some(value) = value else {
                        continue;
                    };
                    request.clone().si(key, value)
                }
            };
            match next {
                Ok(next) => request = next,
                Err(error) => self.problems.error(error, node),
            }
        }
        (self.problems.0.len() == before).then_some(request)
    }

    fn machine(
        &mut self,
        process: &Process,
        machines: &[(String, Machine)],
    ) -> Option<(String, Machine)> {
        let name = match self.node.get("machine") {
            None => process.example.machine,
            Some(node) => match node.as_text() {
                Some(name) => name,
                None => {
                    let path = format!("{}.machine", self.path);
                    self.problems.add(
                        Code::WrongType,
                        &path,
                        node,
                        "the name of a machine",
                        "name a built-in machine, or one described under [machines.NAME]",
                    );
                    return None;
                }
            },
        };
        if let Some((_, machine)) = machines.iter().find(|(own, _)| own == name) {
            return Some((name.to_owned(), machine.clone()));
        }
        match Machine::builtin(name) {
            Ok(machine) => Some((name.to_owned(), machine)),
            Err(_) => {
                let known = machines
                    .iter()
                    .map(|(name, _)| name.as_str())
                    .chain(Machine::BUILTIN.iter().copied());
                let path = format!("{}.machine", self.path);
                self.problems
                    .error(unknown_name(&path, name, known).into(), self.node);
                None
            }
        }
    }

    fn tool(&mut self) -> Option<ToolMaterial> {
        let Some(node) = self.node.get("tool") else {
            return Some(ToolMaterial::Hss);
        };
        let text = node.as_text().unwrap_or_default();
        let tool = ToolMaterial::parse(text);
        if tool.is_none() {
            let path = format!("{}.tool", self.path);
            let known = ToolMaterial::ALL.iter().map(|tool| tool.name());
            self.problems
                .error(unknown_name(&path, text, known).into(), node);
        }
        tool
    }

    fn count(&mut self) -> u32 {
        let Some(node) = self.node.get("count") else {
            return 1;
        };
        let path = format!("{}.count", self.path);
        number(Kind::Count, &path, node, self.problems)
            .filter(|count| *count <= 10_000.0)
            .map_or(1, |count| count as u32)
    }
}
