//! Reads the operations of a part, in order.

use super::super::document::Node;
use super::given::Problems;
use super::operations::{PartOperation, PartStep};
use crate::error::{Code, Error};
use crate::model::{Machine, Practice};
use crate::operation::process::{self, Process, ProcessInput, Request};
use crate::quantity::{Kind, Time, UnitSystem, si};
use crate::table::ToolMaterial;

/// Keys of an operation beside its own inputs.
pub(super) const KEYS: &[&str] = &[
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

/// The step that squares the block.
pub(super) const SQUARING: &str = "squared-block";

/// Operations of a part at most.
pub(super) const MOST: usize = 100;

/// How often an operation is done on one part at most.
pub(super) const MOST_TIMES: f64 = 10_000.0;

/// The longest time of a piece of work: a thousand hours.
const LONGEST: f64 = 3.6e6;

/// Largest money per time: beyond any machine, far below overflow.
pub(super) const LARGEST_RATE: f64 = 1e4;

/// What the operations are read with.
pub(super) struct Shop<'s> {
    /// Machines that the file describes, by name.
    pub machines: &'s [(String, Machine)],
    pub practice: &'s Practice,
    pub units: UnitSystem,
}

/// Reads the operations; what they left out goes into `assumptions`.
pub(super) fn read(
    node: Option<&Node>,
    shop: &Shop<'_>,
    problems: &mut Problems,
    assumptions: &mut Vec<String>,
) -> Vec<PartStep> {
    let wanted = format!("1 to {MOST} sections [[operation]]");
    let remedy = "write a section [[operation]] for each operation, in order";
    let Some(node) = node else {
        problems.missing("operation", &wanted, remedy);
        return Vec::new();
    };
    let Some(items) = node
        .items()
        .filter(|items| (1..=MOST).contains(&items.len()))
    else {
        let code = node.items().map_or(Code::WrongType, |_| Code::OutOfRange);
        problems.add(code, "operation", node, &wanted, remedy);
        return Vec::new();
    };
    let mut steps = Vec::new();
    let mut seen: Vec<String> = Vec::new();
    let mut last_clamping = String::new();
    let mut untold: Vec<String> = Vec::new();
    for (index, node) in items.iter().enumerate() {
        let path = format!("operation[{}]", index + 1);
        let mut reading = Reading {
            path: &path,
            node,
            shop,
            problems: &mut *problems,
        };
        let Some(name) = reading.name() else {
            continue;
        };
        if name == SQUARING {
            reading.squaring(steps.contains(&PartStep::Squaring));
            steps.push(PartStep::Squaring);
            last_clamping.clear();
            continue;
        }
        let process = match process::find(&name) {
            Ok(process) => process,
            Err(error) => {
                let node = node.get("operation").unwrap_or(node);
                reading.problems.error(error.within(&path), node);
                continue;
            }
        };
        if let Some(operation) = reading.operation(process, &mut seen, &mut last_clamping) {
            if process.tables.is_some() && node.get("tool").is_none() {
                untold.push(path);
            }
            steps.push(PartStep::Operation(Box::new(operation)));
        }
    }
    if !untold.is_empty() {
        assumptions.push(format!("tool of {}: HSS assumed", untold.join(", ")));
    }
    steps
}

/// One section [[operation]] being read.
struct Reading<'r> {
    path: &'r str,
    node: &'r Node,
    shop: &'r Shop<'r>,
    problems: &'r mut Problems,
}

impl Reading<'_> {
    fn key(&self, key: &str) -> String {
        format!("{}.{key}", self.path)
    }

    /// The name of the operation.
    fn name(&mut self) -> Option<String> {
        let path = self.key("operation");
        if self.node.keys().is_none() {
            let remedy = "write a section [[operation]] for each operation";
            self.problems
                .add(Code::WrongType, self.path, self.node, "a section", remedy);
            return None;
        }
        let given = self.node.get("operation");
        if given.is_none() {
            let remedy = format!(
                "name one, such as operation = \"drilling\"; gullet list operations{}",
                self.node.place()
            );
            self.problems
                .missing(path, "the name of an operation", &remedy);
            return None;
        }
        self.problems.words(&path, given)
    }

    /// The step that squares the block says nothing else.
    fn squaring(&mut self, again: bool) {
        if again {
            let remedy = "leave this step out";
            self.problems.add(
                Code::Duplicate,
                &self.key("operation"),
                self.node.get("operation").unwrap_or(self.node),
                "one step that squares the block",
                remedy,
            );
        }
        for (key, node) in self.node.keys().into_iter().flatten() {
            if key != "operation" {
                let path = self.key(key);
                self.problems.unknown(&path, key, node, ["operation"]);
            }
        }
    }

    fn operation(
        &mut self,
        process: &'static Process,
        seen: &mut Vec<String>,
        last_clamping: &mut String,
    ) -> Option<PartOperation> {
        let before = self.problems.0.len();
        let request = self.request(process);
        let machine = self.machine(process);
        let tool = self.tool();
        let name = self
            .words("name")
            .unwrap_or_else(|| process.title.to_owned());
        let note = self.words("note");
        let clamping = self.words("clamping").unwrap_or_else(|| {
            if last_clamping.is_empty() {
                "as the operation needs".to_owned()
            } else {
                last_clamping.clone()
            }
        });
        let count = self
            .number("count", Kind::Count, MOST_TIMES)
            .map_or(1, |count| count as u32);
        let practice = self.shop.practice;
        let first_there = machine
            .as_ref()
            .is_some_and(|(name, _)| !seen.contains(name));
        let new_clamping = *last_clamping != clamping;
        let when = |holds: bool, time: Time| if holds { time } else { si(0.0) };
        let mut time =
            |key: &str, default: Time| self.number(key, Kind::Time, LONGEST).map_or(default, si);
        let setup_time = time("setup_time", when(first_there, practice.setup_time));
        let clamping_time = time("clamping_time", when(new_clamping, practice.clamping_time));
        let measuring_time = time(
            "measuring_time",
            when(new_clamping, practice.measuring_time),
        );
        let deburring_time = time(
            "deburring_time",
            when(new_clamping, practice.deburring_time),
        );
        let handling_time = time("handling_time", practice.handling_per_pass);
        let tool_change_time = time("tool_change_time", si(0.0));
        let rate = self
            .number("machine_rate", Kind::MoneyRate, LARGEST_RATE)
            .map(si);
        last_clamping.clone_from(&clamping);
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

    fn words(&mut self, key: &str) -> Option<String> {
        let path = self.key(key);
        self.problems.words(&path, self.node.get(key))
    }

    fn number(&mut self, key: &str, kind: Kind, largest: f64) -> Option<f64> {
        let path = self.key(key);
        let node = self.node.get(key)?;
        self.problems.number(kind, &path, node, largest)
    }

    /// The operation's own inputs, with every problem they have before anything is computed.
    fn request(&mut self, process: &'static Process) -> Option<Request> {
        let mut request = Request::of(process);
        let mut blamed: Vec<&str> = Vec::new();
        let mut known: Vec<&str> = Vec::new();
        for (key, node) in self.node.keys()? {
            let path = self.key(key);
            if known.contains(&key) {
                self.problems.twice(&path, node);
                continue;
            }
            known.push(key);
            if KEYS.contains(&key) {
                continue;
            }
            let Ok((_, input)) = process.input(key) else {
                let names = process.inputs.iter().map(ProcessInput::name);
                let names = names.chain(KEYS.iter().copied());
                self.problems.unknown(&path, key, node, names);
                continue;
            };
            match self.input(&request, input, &path, node) {
                Some(next) => request = next,
                None => blamed.push(key),
            }
        }
        let found = process.problems(request.values(), self.shop.units);
        let before = self.problems.0.len();
        for problem in found {
            if !blamed.contains(&problem.parameter.as_str()) {
                let node = self.node.get(&problem.parameter).unwrap_or(self.node);
                self.problems.told(problem.within(self.path), node);
            }
        }
        (blamed.is_empty() && self.problems.0.len() == before).then_some(request)
    }

    /// The request with another input.
    fn input(
        &mut self,
        request: &Request,
        input: &ProcessInput,
        path: &str,
        node: &Node,
    ) -> Option<Request> {
        let name = input.name();
        let next = match node.as_text() {
            Some(text) => request.clone().text(name, text),
            None if input.words.is_empty() => {
                let value = self.problems.plain(input.parameter.kind, path, node)?;
                request.clone().si(name, value)
            }
            None => {
                let remedy = "write one of these words in quotes";
                let words = input.words.join(", ");
                self.problems
                    .add(Code::WrongType, path, node, &words, remedy);
                return None;
            }
        };
        let told = |error: Error| self.problems.error(error.within(self.path), node);
        next.map_err(told).ok()
    }

    fn machine(&mut self, process: &Process) -> Option<(String, Machine)> {
        let given = self.node.get("machine");
        let name = match given {
            None => process.example.machine.to_owned(),
            Some(_) => self.words("machine")?,
        };
        let own = self.shop.machines.iter().find(|(own, _)| *own == name);
        if let Some((_, machine)) = own {
            return Some((name, machine.clone()));
        }
        if let Ok(machine) = Machine::builtin(&name) {
            return Some((name, machine));
        }
        let known = self.shop.machines.iter().map(|(name, _)| name.as_str());
        let known = known.chain(Machine::BUILTIN.iter().copied());
        let path = format!("{}.machine", self.path);
        let node = given.unwrap_or(self.node);
        self.problems.unknown(&path, &name, node, known);
        None
    }

    fn tool(&mut self) -> Option<ToolMaterial> {
        let Some(node) = self.node.get("tool") else {
            return Some(ToolMaterial::Hss);
        };
        let text = self.words("tool")?;
        let tool = ToolMaterial::parse(&text);
        if tool.is_none() {
            let path = self.key("tool");
            let known = ToolMaterial::ALL.iter().map(|tool| tool.name());
            self.problems.unknown(&path, &text, node, known);
        }
        tool
    }
}
