//! Rows that are all of one operation of [`gullet::operation::process`].

use crate::base::Defaults;
use crate::choice::{Lists, Own};
use crate::found::Found;
use crate::start::{Covered, Start};
use crate::subject::{Energy, Given, Marks, Read, Subject, Values};
use crate::takes::{Number, Pick};
use gullet::error::{Code, Problem, Result};
use gullet::operation::process::{self, ProcessInput};
use gullet::plan::Part;
use gullet::quantity::UnitSystem;
use gullet::study::{
    Choice, Execution, ProcessBase, ProcessRows, ProcessStudy, Quantiles, ResultField, Results,
    Uncertainty,
};
use gullet::table::{LibraryRef, ToolMaterial};

pub(crate) struct Process<'a> {
    study: ProcessStudy<'a>,
    covered: Covered,
    units: UnitSystem,
    /// Parts that no operation but milling takes.
    refused: Vec<&'static str>,
}

/// Settings that are written where no results are asked for, before the operation's own results.
const SETTINGS: [&str; 4] = ["spindle_speed", "cutting_speed", "feed", "feed_speed"];

impl<'a> Process<'a> {
    /// What rows have in common, and the lists that their names pick from.
    pub(crate) fn begin(
        process: &'static process::Process,
        start: Start,
        library: &LibraryRef<'a>,
        units: UnitSystem,
    ) -> Result<(Process<'a>, Lists<'a>)> {
        let covered = start.covered();
        let mut refused = Vec::new();
        let mut base = ProcessBase {
            process,
            materials: Vec::new(),
            machines: Vec::new(),
            practices: Vec::new(),
            tool: ToolMaterial::Hss,
            values: process.defaults(),
        };
        if let Some(job) = start.base {
            base.materials = job.materials;
            base.machines = job.machines;
            base.practices = job.practices;
            base.tool = job.cutter.material;
        }
        for part in start.parts {
            match part {
                Part::Material(material) => base.materials.insert(0, *material),
                Part::Machine(machine) => base.machines.insert(0, machine),
                Part::Practice(practice) => base.practices.insert(0, *practice),
                Part::Cutter(_) => refused.push("cutter"),
                Part::Hold(_) => refused.push("hold"),
                Part::Blank(_) => refused.push("blank"),
            }
        }
        if base.practices.is_empty() {
            base.practices.push(Defaults::all()?.practice.clone());
        }
        let lists = Lists::new(
            Own {
                materials: &base.materials,
                machines: &base.machines,
                practices: &base.practices,
            },
            library.clone(),
        );
        let process = Process {
            study: ProcessStudy::over_tables(library.clone(), base),
            covered,
            units,
            refused,
        };
        Ok((process, lists))
    }

    fn own(&self) -> &'static process::Process {
        self.study.base().process
    }

    /// What an input that nobody gives is taken as; none where the tables decide.
    fn assumed(&self, input: &ProcessInput) -> Option<String> {
        let default = input.parameter.default?;
        let values = &self.study.base().values;
        let below = input.parameter.lower.is_some_and(|limit| {
            let bound = (limit.value)(values);
            default < bound || (!limit.inclusive && default <= bound)
        });
        (default.is_finite() && !below)
            .then(|| format!("{}: {}", input.name(), input.text(default, self.units)))
    }
}

impl Subject for Process<'_> {
    fn fields(&self) -> Vec<ResultField> {
        ProcessStudy::fields(self.own())
    }

    fn usual(&self) -> Vec<&'static str> {
        let own = self.own().results.iter().map(|result| result.name);
        SETTINGS
            .into_iter()
            .chain(own)
            .chain(["binding_share"])
            .collect()
    }

    fn process(&self) -> Option<&'static process::Process> {
        Some(self.own())
    }

    fn energy(&self) -> Option<Energy> {
        let known = [
            ("motor_power", "of the motor at its power in the cut"),
            (
                "cutting_power",
                "at the tool at its power in the cut, without losses of drive and motor",
            ),
        ];
        let given = |name: &str| self.own().results.iter().any(|it| it.name == name);
        let found = known.into_iter().find(|(name, _)| given(name));
        found.map(|(power, whose)| Energy { power, whose })
    }

    fn settle(&mut self, found: &mut Found, assumptions: &mut Vec<String>) {
        let process = self.own();
        let takes = found.takes.clone();
        for part in &self.refused {
            let remedy = format!(
                "leave it out; {} takes {}",
                process.name,
                takes.names().collect::<Vec<&str>>().join(", ")
            );
            found.problems.push(Problem::new(
                Code::Inconsistent,
                *part,
                format!("given to {}", process.name),
                "with milling operations",
                remedy,
            ));
        }
        for number in takes.numbers().iter().filter(|number| !number.optional) {
            found.missing_number(number);
        }
        for pick in takes.picks() {
            let needed = match pick {
                Pick::Of(Choice::Practice | Choice::Operation) => false,
                Pick::Of(choice) => !self.covered.choice(*choice),
                Pick::Word(word) => word.default.is_none(),
            };
            if needed {
                found.missing_choice(pick);
            }
        }
        for input in process.inputs {
            if !found.gives(input.name()) {
                assumptions.extend(self.assumed(input));
            }
        }
        let practice = Choice::Practice;
        if !self.covered.choice(practice) && !found.gives(practice.name()) {
            assumptions.push(format!("{}: training", practice.name()));
        }
    }

    fn absent(&self, number: &Number, _: usize, _: &Read) -> (f64, bool) {
        (f64::NAN, !number.optional)
    }

    fn complete(&self, read: &mut Read, _: &mut Marks) {
        let words = read.choices.iter().filter_map(|(pick, places)| match pick {
            Pick::Word(word) => Some((word.place, places.values())),
            Pick::Of(_) => None,
        });
        let words: Vec<(usize, Values)> = words.collect();
        read.numbers.extend(words);
    }

    fn run(&self, given: &Given, wanted: &[usize], execution: Execution) -> Result<Results> {
        let rows = ProcessRows {
            count: given.read.count,
            numbers: given.read.columns().collect(),
            choices: given.read.entries().collect(),
            missing: Some(given.left_out),
        };
        self.study.run(&rows, wanted, execution)
    }

    fn run_uncertain(
        &self,
        _: &Given,
        _: &[usize],
        _: &Uncertainty,
        _: Execution,
    ) -> Result<(Results, Quantiles)> {
        Err(no_draws(self.own().name).into())
    }

    fn no_draws(&self) -> Option<Problem> {
        Some(no_draws(self.own().name))
    }
}

/// Only milling cuts are drawn.
fn no_draws(process: &str) -> Problem {
    Problem::new(
        Code::Inconsistent,
        "spreads",
        format!("given to {process}"),
        "with milling operations",
        "leave the spreads out: draws are not offered yet for this operation; speed_low to time_high among the columns tell what the ranges of the tables make of it",
    )
}
