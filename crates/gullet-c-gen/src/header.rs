//! The header, from the doc comments of the crate `gullet-c`.

use crate::Outcome;
use cbindgen::{Builder, Config, DocumentationStyle, Language, Style};
use std::path::Path;

const MANUAL: &str = include_str!("manual.txt");
const INITIALISERS: &[&str] = &[
    "gullet_pass",
    "gullet_cut",
    "gullet_limit",
    "gullet_problem",
    "gullet_plan_summary",
    "gullet_planned_pass",
    "gullet_study_batch",
    "gullet_draws",
    "gullet_study_summary",
    "gullet_edge_economics",
    "gullet_economic_speed",
    "gullet_snapping",
    "gullet_lot",
    "gullet_lot_price",
    "gullet_fit_options",
    "gullet_taylor_law",
    "gullet_kienzle_law",
    "gullet_fit_quality",
    "gullet_operation_listing",
    "gullet_operation_field",
    "gullet_operation_summary",
];

/// Longest line, where words allow it.
pub const LINE: usize = 100;

/// Files in the order of the header.
const FILES: &[&str] = &[
    "generated/status.rs",
    "version.rs",
    "report.rs",
    "memory.rs",
    "quantity.rs",
    "formula.rs",
    "model.rs",
    "generated/parts.rs",
    "cut.rs",
    "generated/records.rs",
    "plan.rs",
    "operation_list.rs",
    "operation.rs",
    "operation_cut.rs",
    "economics.rs",
    "study.rs",
    "fit.rs",
    "names.rs",
    "generated/studies.rs",
    "draws.rs",
    "table_report.rs",
    "arrow.rs",
];

/// Structs of the Arrow C interfaces, which the sources name without the word `struct`.
const ARROW: &str = include_str!("arrow.txt");
const ARROW_STRUCTS: &[&str] = &["ArrowSchema", "ArrowArray", "ArrowArrayStream"];

fn versions() -> String {
    let number = |text: &str| text.parse::<u32>().unwrap_or(0);
    let (major, minor, patch) = (
        number(env!("CARGO_PKG_VERSION_MAJOR")),
        number(env!("CARGO_PKG_VERSION_MINOR")),
        number(env!("CARGO_PKG_VERSION_PATCH")),
    );
    format!(
        r#"
/** Version of this header: its parts, as text, and as major * 1000000 + minor * 1000 + patch. */
#define GULLET_VERSION_MAJOR {major}
#define GULLET_VERSION_MINOR {minor}
#define GULLET_VERSION_PATCH {patch}
#define GULLET_VERSION "{major}.{minor}.{patch}"
#define GULLET_VERSION_NUMBER {}u

/** Whether this header is of a version or a later one. */
#define GULLET_VERSION_AT_LEAST(major, minor, patch) \
    (GULLET_VERSION_NUMBER >= (major) * 1000000u + (minor) * 1000u + (patch))

/** Length that stands for "up to the first NUL". */
#define GULLET_NUL_TERMINATED ((size_t)-1)
"#,
        major * 1_000_000 + minor * 1_000 + patch
    )
}

fn initialisers() -> String {
    let mut text = String::from("/** Structs with their size set and every other field zero. */\n");
    for name in INITIALISERS {
        text += &format!(
            "static inline {name} {name}_init(void)\n{{\n    {name} value;\n    memset(&value, 0, sizeof value);\n    value.struct_size = (uint32_t)sizeof value;\n    return value;\n}}\n\n"
        );
    }
    text
}

/// The text of the header.
pub fn text(root: &Path) -> Outcome<String> {
    let config = Config {
        language: Language::C,
        cpp_compat: true,
        no_includes: true,
        sys_includes: vec!["stddef.h".into(), "stdint.h".into(), "string.h".into()],
        style: Style::Both,
        usize_is_size_t: true,
        documentation_style: DocumentationStyle::Doxy,
        header: Some(format!(
            "/*\n{}*/\n#ifndef GULLET_H\n#define GULLET_H",
            comment(MANUAL)
        )),
        after_includes: Some(versions() + ARROW),
        // The guard of cbindgen would end before this.
        trailer: Some(initialisers() + "#endif /* GULLET_H */"),
        line_length: LINE,
        ..Config::default()
    };
    let mut builder = Builder::new().with_config(config);
    let source = root.join("src");
    let formulas = crate::formulas::rust()?;
    let formulas = formulas.iter().map(|(name, _)| format!("generated/{name}"));
    for file in FILES.iter().map(|file| (*file).to_owned()).chain(formulas) {
        builder = builder.with_src(source.join(file));
    }
    let bindings = builder.generate().map_err(|error| error.to_string())?;
    let mut bytes = Vec::new();
    bindings.write(&mut bytes);
    let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
    Ok(tidy(&with_struct(&text)))
}

/// The header with the word `struct` before the structs of the Arrow C interfaces.
fn with_struct(text: &str) -> String {
    let mut text = text.to_owned();
    for name in ARROW_STRUCTS {
        let plain = format!("{name} *");
        let whole = format!("struct {plain}");
        text = text.replace(&whole, &plain).replace(&plain, &whole);
    }
    text
}

/// The header without blanks at the ends of lines, with comments of one line in one line and
/// negative numbers in parentheses.
fn tidy(text: &str) -> String {
    let lines: Vec<&str> = text.lines().map(str::trim_end).collect();
    let mut tidied = String::new();
    let mut at = 0;
    while let Some(line) = lines.get(at) {
        let indent = line.len() - line.trim_start().len();
        let alone = match (lines.get(at + 1), lines.get(at + 2)) {
            (Some(said), Some(end)) if line.trim() == "/**" && end.trim() == "*/" => {
                said.trim_start().strip_prefix("* ")
            }
            _ => None,
        };
        if let Some(said) = alone.filter(|said| indent + said.len() + 7 <= LINE) {
            tidied += &format!("{}/** {said} */", " ".repeat(indent));
            at += 2;
        } else if let Some((name, number)) = line
            .split_once(" -")
            .filter(|_| line.starts_with("#define"))
        {
            tidied += &format!("{name} (-{number})");
        } else {
            tidied += line;
        }
        tidied.push('\n');
        at += 1;
    }
    tidied
}

fn comment(text: &str) -> String {
    text.lines()
        .map(|line| format!(" * {line}").trim_end().to_owned() + "\n")
        .collect::<String>()
        + " "
}

/// The names of the functions a header declares, sorted, a line each.
pub fn exports(header: &str) -> String {
    let mut names: Vec<&str> = header
        .lines()
        .filter(|line| !line.starts_with([' ', '/', '#', '*']) && !line.starts_with("static"))
        .filter_map(|line| line.split_once('('))
        .filter_map(|(before, _)| before.rsplit([' ', '*']).next())
        .filter(|name| name.starts_with("gullet_"))
        .collect();
    names.sort_unstable();
    names.iter().map(|name| format!("{name}\n")).collect()
}
