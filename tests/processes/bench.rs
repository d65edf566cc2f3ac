//! The example of each operation, and rows drawn around it.

pub use super::random::Random;
use gullet::model::{Machine, Practice};
use gullet::operation::process::{Bench, Process, ProcessCut, Request};
use gullet::quantity::UnitSystem;
use gullet::table::{Library, Material, ToolMaterial};

/// What the example of an operation is done with.
pub struct Shop {
    pub library: &'static Library,
    pub material: Material,
    pub tool: ToolMaterial,
    pub machine: Machine,
    pub practice: Practice,
}

impl Shop {
    pub fn of(process: &Process) -> Shop {
        let library = Library::builtin();
        let example = &process.example;
        Shop {
            library,
            material: library.material(example.material).unwrap().clone(),
            tool: example.tool,
            machine: Machine::builtin(example.machine).unwrap(),
            practice: Practice::builtin("experienced").unwrap(),
        }
    }

    pub fn bench(&self) -> Bench<'_> {
        Bench {
            library: self.library,
            material: &self.material,
            tool: self.tool,
            machine: &self.machine,
            practice: &self.practice,
            units: UnitSystem::Metric,
        }
    }
}

/// The example as a request.
pub fn example(process: &'static Process) -> Request {
    Request::of(process).texts(process.example.inputs).unwrap()
}

/// The example as a cut.
pub fn cut(process: &'static Process) -> ProcessCut {
    example(process)
        .cut(&Shop::of(process).bench())
        .unwrap_or_else(|error| panic!("{}: {error}", process.name))
}

/// Values drawn around those of the example; now and then one that is not admissible.
pub fn drawn(process: &'static Process, random: &mut Random) -> Vec<f64> {
    let mut values = example(process).values().to_vec();
    for (input, value) in process.inputs.iter().zip(&mut values) {
        if !input.words.is_empty() {
            *value = random.below(input.words.len() as u64) as f64;
            continue;
        }
        if value.is_finite() && *value != 0.0 && random.below(3) == 0 {
            // Beyond a right angle most angles are none of a tool.
            let angle = input.parameter.kind == gullet::quantity::Kind::Angle;
            *value *= random.between(0.4, if angle { 1.0 } else { 2.0 });
            if input.parameter.kind == gullet::quantity::Kind::Count {
                *value = value.round().max(1.0);
            }
        }
        if random.below(100) == 0 {
            *value = [-1.0, 0.0, f64::NAN, f64::INFINITY, 1e9][random.below(5) as usize];
        }
    }
    values
}
