//! A C table of all formulas, so that a test can call every typed function by its index.

use crate::Outcome;
use crate::formulas::arguments;
use gullet::formula::catalogue;

pub fn c() -> Outcome<String> {
    let mut functions = String::new();
    let mut rows = String::new();
    for formula in catalogue() {
        let name = formula.name;
        let count = arguments(formula)?.len();
        let list = |of: &str| -> String { (0..count).map(|i| format!("{of}[{i}], ")).collect() };
        functions += &format!(
            "static gullet_status one_{name}(const double *a, double *r) {{ return gullet_{name}({}r); }}\n\
             static gullet_status rows_{name}(size_t n, const double *const *a, double *r, gullet_status *s) {{ return gullet_{name}_array(n, {}r, s); }}\n",
            list("a"),
            list("a"),
        );
        rows += &format!(
            "    {{\"{name}\", \"{}\", \"{}\", \"{}\", {count}, one_{name}, rows_{name}}},\n",
            formula.result.name(),
            formula.example.arguments.replace('"', "\\\""),
            formula.example.expected.replace('"', "\\\""),
        );
    }
    Ok(format!(
        "/* Written by gullet-c-gen. */\n#include <gullet.h>\n#include \"formula_table.h\"\n{functions}\n\
        const formula_row formula_table[] = {{\n{rows}}};\nconst size_t formula_table_length = sizeof formula_table / sizeof formula_table[0];\n"
    ))
}
