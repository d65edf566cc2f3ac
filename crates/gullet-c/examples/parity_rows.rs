//! Writes random calls of the core with their results, for a face to repeat bit by bit.
//!
//! `parity_rows formulas N FILE`: for each formula a line of JSON (name, parameters, rows, bad)
//! followed by rows of arguments and result and code, doubles in native order.
//! `parity_rows cuts N FILE`: a line of JSON a set-up, with its settings and consequences as bits.
//! `parity_rows cut-lines N FILE`: the same set-ups with their fields behind one another, separated
//! by tabs: the six sections, operation, kind, direction, three lengths as bits, code of the error,
//! then its parameter or the bits of the result, `-` for none.
#![allow(clippy::expect_used, clippy::indexing_slicing)]

use gullet::formula::catalogue;
use gullet::model::{Direction, PassKind, Practice};
use gullet::operation::{Lowering, Operation, Pass, Setup, mill};
use gullet::plan::Part;
use gullet::quantity::{Kind, si};
use gullet::table::Library;
use std::io::{BufWriter, Write};

struct Random(u64);

impl Random {
    /// Uniform in [0, 1).
    fn next(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    fn pick<'a, T>(&mut self, all: &'a [T]) -> &'a T {
        &all[(self.next() * all.len() as f64) as usize]
    }
}

fn main() {
    let words: Vec<String> = std::env::args().collect();
    let [_, what, count, file] = words.as_slice() else {
        eprintln!("parity_rows formulas|cuts|cut-lines N FILE");
        std::process::exit(2);
    };
    let count: usize = count.parse().expect("a count");
    let mut out = BufWriter::new(std::fs::File::create(file).expect("a file to write"));
    let mut random = Random(0x9E37_79B9_7F4A_7C15);
    if what == "formulas" {
        formulas(&mut random, count, &mut out);
    } else {
        cuts(&mut random, count, what == "cut-lines", &mut out);
    }
    out.flush().expect("written");
}

/// Rows around each formula's example until `count` of them have a result.
fn formulas(random: &mut Random, count: usize, out: &mut impl Write) {
    for formula in catalogue() {
        let start = formula.example_arguments().expect("an example");
        let (mut good, mut rows) = (0, Vec::new());
        let mut total = 0_usize;
        while good < count && total < 40 * count {
            let arguments: Vec<f64> = start
                .iter()
                .zip(formula.parameters)
                .map(|(value, parameter)| {
                    let zero = if *value == 0.0 { 1e-3 } else { *value };
                    let scaled = zero * random.between(0.3, 2.0);
                    match parameter.kind {
                        Kind::Count => scaled.round().max(1.0),
                        _ => scaled,
                    }
                })
                .collect();
            let (result, code) = match formula.call(&arguments) {
                Ok(result) => (result, 0),
                Err(error) => (f64::NAN, error.code().number()),
            };
            total += 1;
            good += usize::from(code == 0);
            rows.extend(arguments);
            rows.extend([result, f64::from(code)]);
        }
        let names: Vec<_> = formula.parameters.iter().map(|p| p.name).collect();
        let head = serde_json::json!({
            "name": formula.name, "parameters": names, "rows": total, "good": good,
        });
        writeln!(out, "{head}").expect("written");
        for value in rows {
            out.write_all(&value.to_ne_bytes()).expect("written");
        }
    }
}

fn part(section: &str, keys: &serde_json::Value) -> Part {
    let read = Part::from_json(section, &keys.to_string(), Library::builtin());
    read.expect("a good section").0
}

fn cuts(random: &mut Random, count: usize, lines: bool, out: &mut impl Write) {
    let library = Library::builtin();
    for _ in 0..count {
        let diameter = *random.pick(&["1/4 in", "10 mm", "1/2 in", "16 mm", "1 in"]);
        let keys = serde_json::json!({
            "material": {"id": random.pick(&["6061", "1018cd", "s235jr"])},
            "blank": {"length": "3 in", "width": "2 in", "height": "1 in"},
            "cutter": {
                "form": "square", "material": random.pick(&["HSS", "uncoated carbide"]),
                "diameter": diameter, "teeth": random.pick(&[2, 3, 4]),
                "flute_length": "1 in", "stick_out": random.pick(&["1.2 in", "40 mm"]),
            },
            "machine": {"base": random.pick(&["manual-knee-mill", "small-cnc-mill"])},
            "hold": {"clamping_force": "15 kN", "grip_depth": "0.5 in"},
            "practice": {"base": random.pick(Practice::BUILTIN)},
        });
        let (Part::Material(material), Part::Cutter(cutter), Part::Machine(machine)) = (
            part("material", &keys["material"]),
            part("cutter", &keys["cutter"]),
            part("machine", &keys["machine"]),
        ) else {
            continue;
        };
        let (Part::Hold(hold), Part::Practice(practice), Part::Blank(blank)) = (
            part("hold", &keys["hold"]),
            part("practice", &keys["practice"]),
            part("blank", &keys["blank"]),
        ) else {
            continue;
        };
        let setup = Setup {
            units: gullet::quantity::UnitSystem::Metric,
            library,
            material: &material,
            cutter: &cutter,
            machine: &machine,
            hold: &hold,
            practice: &practice,
            part_height: blank.height,
        };
        let operation = *random.pick(Operation::ALL);
        let d = cutter.diameter.value;
        let (axial, radial) = match operation {
            Operation::SideMilling => (random.between(0.1, 1.0), random.between(0.02, 0.2)),
            Operation::Slotting => (random.between(0.02, 0.2), 1.0),
            Operation::FaceMilling => (random.between(0.02, 0.1), random.between(0.3, 0.9)),
        };
        let pass = Pass {
            operation,
            kind: *random.pick(&[PassKind::Roughing, PassKind::Finishing]),
            axial_depth: si(axial * d),
            radial_depth: si(radial * d),
            offset: si(0.0),
            length: si(random.between(0.02, 0.2)),
            direction: *random.pick(&[Direction::Conventional, Direction::Climb]),
            mean_roughness: None,
            spindle_speed: None,
            feed_per_tooth: None,
        };
        let result = match mill(&setup, &pass, Lowering::Allowed) {
            Ok(cut) => {
                let fields = [cut.settings.fields(), cut.consequences.fields()].concat();
                let bits: Vec<Option<u64>> = fields
                    .iter()
                    .map(|field| field.value.map(f64::to_bits))
                    .collect();
                serde_json::json!({"bits": bits})
            }
            Err(error) => serde_json::json!({
                "code": error.code().name(), "parameter": error.first().parameter,
            }),
        };
        let row = serde_json::json!({
            "setup": keys,
            "pass": {
                "operation": pass.operation.name(), "kind": pass.kind.name(),
                "direction": pass.direction.name(),
            },
            "lengths": {
                "axial_depth": pass.axial_depth.value.to_bits(),
                "radial_depth": pass.radial_depth.value.to_bits(),
                "length": pass.length.value.to_bits(),
            },
            "result": result,
        });
        if lines {
            writeln!(out, "{}", line(&row)).expect("written");
        } else {
            writeln!(out, "{row}").expect("written");
        }
    }
}

/// The fields of a row of cuts, separated by tabs.
fn line(row: &serde_json::Value) -> String {
    let words = |of: &serde_json::Value, names: &[&str]| -> Vec<String> {
        names
            .iter()
            .map(|name| match &of[*name] {
                serde_json::Value::String(text) => text.clone(),
                other => other.to_string(),
            })
            .collect()
    };
    let result = &row["result"];
    let mut fields = words(&row["setup"], Part::SECTIONS);
    fields.extend(words(&row["pass"], &["operation", "kind", "direction"]));
    fields.extend(words(
        &row["lengths"],
        &["axial_depth", "radial_depth", "length"],
    ));
    match result["bits"].as_array() {
        Some(bits) => {
            fields.push("ok".to_owned());
            fields.extend(bits.iter().map(|bits| match bits {
                serde_json::Value::Null => "-".to_owned(),
                other => other.to_string(),
            }));
        }
        None => fields.extend(words(result, &["code", "parameter"])),
    }
    fields.join("\t")
}
