//! `gullet operate`: one operation described, or computed with its limits and worked steps.

use super::card::{format_of, library};
use crate::answer::Answer;
use crate::arguments::{Flag, Given, Spec, UNITS, read};
use crate::files;
use gullet::error::{Code, Error, Problem, Result};
use gullet::formula::units_of;
use gullet::model::{Machine, Practice};
use gullet::operation::process::{Bench, Process, ProcessInput, Request, find};
use gullet::plan::{Part, ProcessCard};
use gullet::quantity::UnitSystem;
use gullet::table::{Library, ToolMaterial};
use serde_json::{Value, json};

const SPEC: Spec = Spec {
    flags: &[
        Flag::with_value("--material", "ID"),
        Flag::with_value("--tool", "MATERIAL"),
        Flag::with_value("--machine", "NAME"),
        Flag::with_value("--practice", "NAME"),
        Flag::with_value("--title", "TEXT"),
        Flag::choice("--format", &["text", "json", "html"]),
        Flag::with_value("--output", "FILE"),
        Flag::with_value("--overlay", "FILE").repeated(),
        Flag::switch("--steps"),
        UNITS,
    ],
    operand: "OPERATION",
    least: 1,
    most: usize::MAX,
};

pub fn run(words: &[String]) -> Result<Answer> {
    let given = read(&SPEC, words)?;
    let (name, inputs) = given
        .operands
        .split_first()
        .map_or(("", &[][..]), |(name, inputs)| (name.as_str(), inputs));
    let process = find(name)?;
    let output = given.value("--output");
    let format = given
        .value("--format")
        .unwrap_or_else(|| format_of(output.unwrap_or_default()));
    let text = if inputs.is_empty() {
        description(process, &given, format)
    } else {
        computed(process, inputs, &given, format)?
    };
    match output {
        Some(file) => files::write(file, &text)
            .map(|()| Answer::default())
            .map_err(Error::from),
        None => Ok(Answer::text(text)),
    }
}

fn computed(
    process: &'static Process,
    inputs: &[String],
    given: &Given,
    format: &str,
) -> Result<String> {
    let units = given.units().unwrap_or_else(|| units_of(&inputs.join(" ")));
    let overlays: Vec<&str> = given.values("--overlay").collect();
    let library = library(&overlays)?;
    let mut problems = Vec::new();
    let mut keep = |error: Error| problems.extend(error.into_problems());
    let request = request(process, inputs).map_err(&mut keep).ok();
    let material = match given.value("--material") {
        Some(id) => library
            .material(id)
            .map_err(|error| keep(error.within("--material")))
            .ok(),
        None => {
            keep(
                Problem::new(
                    Code::Missing,
                    "--material",
                    "",
                    "a material of the tables",
                    "give the work material, such as --material 1018; gullet list materials",
                )
                .into(),
            );
            None
        }
    };
    let tool = tool(given.value("--tool").unwrap_or("HSS"))
        .map_err(&mut keep)
        .ok();
    let machine = machine(
        given.value("--machine").unwrap_or(process.example.machine),
        &library,
    )
    .map_err(&mut keep)
    .ok();
    let practice = Practice::builtin(given.value("--practice").unwrap_or("training"))
        .map_err(&mut keep)
        .ok();
    let (Some(request), Some(material), Some(tool), Some(machine), Some(practice)) =
        (request, material, tool, machine, practice)
    else {
        return Error::unless_empty(problems, String::new());
    };
    Error::unless_empty(problems, ())?;
    let cut = request.cut(&Bench {
        library: &library,
        material,
        tool,
        machine: &machine,
        practice: &practice,
        units,
    })?;
    let title = given
        .value("--title")
        .map_or_else(|| process.title.to_owned(), str::to_owned);
    let card = ProcessCard::new(title, cut, &library);
    Ok(match format {
        "json" => format!("{:#}\n", card.json()),
        "html" if given.has("--steps") => card.html_with_steps(),
        "html" => card.html(),
        _ => card.text(),
    })
}

/// The inputs from `NAME=VALUE` words; every problem at once.
fn request(process: &'static Process, words: &[String]) -> Result<Request> {
    let mut request = Request::of(process);
    let mut problems = Vec::new();
    // The semicolons of an example may stay where a whole example is pasted.
    for word in words.iter().flat_map(|word| word.split(';')) {
        let word = word.trim();
        match word.split_once('=') {
            Some((name, value)) => match request.clone().text(name.trim(), value.trim()) {
                Ok(next) => request = next,
                Err(error) => problems.extend(error.into_problems()),
            },
            None if word.is_empty() => {}
            None => problems.push(Problem::new(
                Code::Syntax,
                "input",
                format!("\"{word}\""),
                "NAME=VALUE",
                "put quotes round a value with blanks: diameter='1/2 in'",
            )),
        }
    }
    Error::unless_empty(problems, request)
}

fn tool(text: &str) -> Result<ToolMaterial> {
    ToolMaterial::parse(text).ok_or_else(|| {
        gullet::error::unknown_name(
            "--tool",
            text,
            ToolMaterial::ALL.iter().map(|tool| tool.name()),
        )
        .into()
    })
}

/// A built-in machine, or one of the shop's own in a JSON file with the keys of a job's machine.
fn machine(name: &str, library: &Library) -> Result<Machine> {
    if !files::has_ending(name, "json") {
        return Machine::builtin(name).map_err(|error| error.within("--machine"));
    }
    match Part::from_json("machine", &files::read(name)?, library)? {
        (Part::Machine(machine), _) => Ok(machine),
        _ => Machine::builtin(name),
    }
}

fn description(process: &Process, given: &Given, format: &str) -> String {
    let system = given.units().unwrap_or(UnitSystem::Metric);
    if format == "json" {
        return format!("{:#}\n", description_json(process));
    }
    let mut text = format!("{}: {}\n  inputs\n", process.name, process.meaning);
    for input in process.inputs {
        text += &format!("    {}\n", input_line(input, system));
    }
    text += "  gives\n";
    for field in process.fields() {
        text += &format!("    {}: {}\n", field.name, field.meaning);
    }
    let example = &process.example;
    text += &format!(
        "  example (an invented part)\n    gullet operate {} {} --material {} --tool '{}' --machine {}\n",
        process.name,
        quoted(example.inputs),
        example.material,
        example.tool.name(),
        example.machine
    );
    text
}

/// The inputs of an example as words of a command line.
pub fn quoted(inputs: &str) -> String {
    inputs
        .split(';')
        .filter_map(|pair| pair.trim().split_once('='))
        .map(|(name, value)| {
            if value.contains(' ') {
                format!("{name}='{value}'")
            } else {
                format!("{name}={value}")
            }
        })
        .collect::<Vec<_>>()
        .join(" ")
}

fn input_line(input: &ProcessInput, system: UnitSystem) -> String {
    let parameter = &input.parameter;
    let what = if input.words.is_empty() {
        parameter.kind.name().to_owned()
    } else {
        input.words.join(" | ")
    };
    let default = match input.default_text(system) {
        _ if input.required() => "must be given".to_owned(),
        None => "none without it".to_owned(),
        Some(text) => format!("{text} without it"),
    };
    format!("{}: {what}; {}; {default}", input.name(), parameter.meaning)
}

/// Everything said about an operation, as JSON.
pub fn description_json(process: &Process) -> Value {
    let inputs: Vec<Value> = process
        .inputs
        .iter()
        .map(|input| {
            json!({
                "name": input.name(),
                "symbol": input.parameter.symbol,
                "kind": input.parameter.kind.name(),
                "words": input.words,
                "meaning": input.parameter.meaning,
                "range": input.parameter.range(),
                "required": input.required(),
                "default_si": input.parameter.default.filter(|value| value.is_finite()),
            })
        })
        .collect();
    let gives: Vec<Value> = process
        .fields()
        .map(|field| {
            json!({
                "name": field.name,
                "kind": field.kind.name(),
                "meaning": field.meaning,
                "optional": field.optional,
            })
        })
        .collect();
    json!({
        "name": process.name,
        "title": process.title,
        "meaning": process.meaning,
        "inputs": inputs,
        "gives": gives,
        "limits": process.limits.iter().map(|limit| limit.name()).collect::<Vec<_>>(),
        "cautions": process.cautions,
        "example": {
            "inputs": process.example.inputs,
            "material": process.example.material,
            "tool": process.example.tool.name(),
            "machine": process.example.machine,
        },
    })
}
