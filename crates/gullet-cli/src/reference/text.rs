//! The reference page as plain text.

use super::{input_range, limits, topics};
use gullet::formula;
use gullet::operation::process;

pub fn render() -> String {
    let mut out = String::from("REFERENCE\n");
    for (topic, formulas) in topics() {
        out += &format!("\n{}\n{}\n", topic.to_uppercase(), "=".repeat(topic.len()));
        for formula in formulas {
            out += "\n";
            out += &formula::description(formula);
        }
    }
    out += "\nOPERATIONS\n==========\n";
    for process in process::ALL {
        out += &format!("\n{}: {}\n  inputs\n", process.name, process.meaning);
        for input in process.inputs {
            out += &format!(
                "    {}: {}; {}; {}\n",
                input.name(),
                input.parameter.kind.name(),
                input.parameter.meaning,
                input_range(input)
            );
        }
        out += "  gives\n";
        for field in process.fields() {
            out += &format!(
                "    {}: {}; {}\n",
                field.name,
                field.kind.name(),
                field.meaning
            );
        }
        out += &format!("  limits     {}\n", limits(process));
        for caution in process.cautions {
            out += &format!("  caution    {caution}\n");
        }
        out += &format!("  example    {}\n", process.example.inputs);
    }
    out
}
