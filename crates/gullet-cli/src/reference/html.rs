//! The reference page as one document without script or network: equations as MathML.

use super::{input_range, limits, range, topics};
use gullet::formula::Formula;
use gullet::operation::process::{self, Process};
use pulldown_latex::config::{DisplayMode, RenderConfig};
use pulldown_latex::{Parser, Storage, mathml::push_mathml};
use std::collections::BTreeMap;

const STYLE: &str = "
html { color: #000; background: #fff; font: 10pt/1.35 'DejaVu Sans', 'Liberation Sans', Arial, sans-serif; }
body { margin: 0 auto; max-width: 62em; padding: 1em; }
h1 { border-bottom: 3px solid #000; }
h2 { border-bottom: 1px solid #000; margin-top: 2em; }
h3 { margin: 1.4em 0 0.2em; font-size: 1em; }
h3 code { font-size: 1.1em; }
table { border-collapse: collapse; width: 100%; margin: 0.4em 0; }
th, td { text-align: left; vertical-align: top; padding: 0.15em 0.6em; border-bottom: 1px solid #bbb; }
thead th { border-bottom: 1px solid #000; }
p { margin: 0.3em 0; }
nav ul { columns: 3; padding-left: 1.2em; }
math { font-size: 1.15em; }
section { break-inside: avoid; }
@page { margin: 12mm; }
@media print { nav { display: none; } body { max-width: none; padding: 0; } }
";

pub fn render() -> String {
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>Gullet reference</title>\n<style>{STYLE}</style>\n</head>\n<body>\n<h1>Formulas and operations</h1>\n<p>Numbers are starting values. The machine's manual, the marking on cutter and holder, the shop's rules, local codes and the responsible instructor go before anything computed.</p>\n<p>Lengths, speeds and forces stand in SI units inside; a spindle speed counts revolutions. Ranges are given in SI units or with the name of another argument.</p>\n"
    );
    let topics = topics();
    out += "<nav>\n<h2>Contents</h2>\n<ul>\n";
    for (topic, formulas) in &topics {
        out += &format!(
            "<li><a href=\"#topic-{}\">{}</a>: {}</li>\n",
            anchor(topic),
            escape(topic),
            formulas.len()
        );
    }
    out += "<li><a href=\"#operations\">operations</a></li>\n<li><a href=\"#sources\">formulas by source</a></li>\n</ul>\n</nav>\n";
    for (topic, formulas) in &topics {
        out += &format!(
            "<h2 id=\"topic-{}\">{}</h2>\n",
            anchor(topic),
            escape(topic)
        );
        for formula in formulas {
            one(&mut out, formula);
        }
    }
    out += "<h2 id=\"operations\">Operations</h2>\n";
    for process in process::ALL {
        operation(&mut out, process);
    }
    sources(&mut out);
    out += "</body>\n</html>\n";
    out
}

fn one(out: &mut String, formula: &Formula) {
    *out += &format!(
        "<section id=\"{name}\">\n<h3><code>{name}</code></h3>\n<p>{}</p>\n<p>{}</p>\n",
        escape(formula.meaning),
        mathml(formula.latex, formula.equation, DisplayMode::Block),
        name = formula.name
    );
    *out += "<table><thead><tr><th>argument</th><th></th><th>kind</th><th>meaning</th><th>admissible</th></tr></thead><tbody>\n";
    for parameter in formula.parameters {
        *out += &format!(
            "<tr><td><code>{}</code></td><td>{}</td><td>{}</td><td>{}</td><td>{}</td></tr>\n",
            parameter.name,
            escape(parameter.symbol),
            parameter.kind.name().replace('_', " "),
            escape(parameter.meaning),
            escape(&range(parameter))
        );
    }
    *out += &format!(
        "<tr><td>gives</td><td>{}</td><td>{}</td><td></td><td></td></tr>\n</tbody></table>\n",
        mathml(formula.symbol_latex, formula.symbol, DisplayMode::Inline),
        formula.result.name().replace('_', " ")
    );
    for condition in formula.conditions {
        *out += &format!("<p>Condition: {}</p>\n", escape(condition.text));
    }
    let example = &formula.example;
    *out += &format!(
        "<p>Valid for: {}.</p>\n<p>Source: {}.</p>\n<p>Example: {} gives {} ({}).</p>\n</section>\n",
        escape(formula.validity),
        escape(formula.source),
        escape(example.arguments),
        escape(example.expected),
        escape(example.source)
    );
}

fn operation(out: &mut String, process: &Process) {
    *out += &format!(
        "<section id=\"operation-{name}\">\n<h3><code>{name}</code></h3>\n<p>{}</p>\n",
        escape(process.meaning),
        name = process.name
    );
    *out += "<table><thead><tr><th>input</th><th>kind</th><th>meaning</th><th>admissible</th></tr></thead><tbody>\n";
    for input in process.inputs {
        let kind = if input.words.is_empty() {
            input.parameter.kind.name().replace('_', " ")
        } else {
            "choice".to_owned()
        };
        *out += &format!(
            "<tr><td><code>{}</code></td><td>{kind}</td><td>{}</td><td>{}</td></tr>\n",
            input.name(),
            escape(input.parameter.meaning),
            escape(&input_range(input))
        );
    }
    *out += "</tbody></table>\n<table><thead><tr><th>gives</th><th>kind</th><th>meaning</th></tr></thead><tbody>\n";
    for field in process.fields() {
        *out += &format!(
            "<tr><td><code>{}</code></td><td>{}</td><td>{}</td></tr>\n",
            field.name,
            field.kind.name().replace('_', " "),
            escape(field.meaning)
        );
    }
    *out += &format!(
        "</tbody></table>\n<p>Limits: {}.</p>\n",
        escape(&limits(process))
    );
    for caution in process.cautions {
        *out += &format!("<p>Caution: {}</p>\n", escape(caution));
    }
    *out += &format!(
        "<p>Example, an invented part: <code>gullet operate {} {} --material {} --machine {}</code></p>\n</section>\n",
        process.name,
        escape(&crate::command::operate_words(process.example.inputs)),
        process.example.material,
        process.example.machine
    );
}

/// The formulas that rest on each source.
fn sources(out: &mut String) {
    let mut by_source: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    for (_, formulas) in topics() {
        for formula in formulas {
            by_source
                .entry(formula.source)
                .or_default()
                .push(formula.name);
        }
    }
    *out += "<h2 id=\"sources\">Formulas by source</h2>\n<table><tbody>\n";
    for (source, names) in by_source {
        let links: Vec<String> = names
            .iter()
            .map(|name| format!("<a href=\"#{name}\">{name}</a>"))
            .collect();
        *out += &format!(
            "<tr><td>{}</td><td>{}</td></tr>\n",
            escape(source),
            links.join(", ")
        );
    }
    *out += "</tbody></table>\n";
}

/// LaTeX as MathML; where it cannot be read the plain equation stands in.
fn mathml(latex: &str, plain: &str, display: DisplayMode) -> String {
    let storage = Storage::new();
    let events: Result<Vec<_>, _> = Parser::new(latex, &storage).collect();
    let config = RenderConfig {
        display_mode: display,
        ..RenderConfig::default()
    };
    let mut text = String::new();
    let rendered = events.is_ok_and(|events| {
        push_mathml(
            &mut text,
            events.into_iter().map(Ok::<_, std::convert::Infallible>),
            config,
        )
        .is_ok()
    });
    if rendered && !text.is_empty() {
        text
    } else {
        format!("<code>{}</code>", escape(plain))
    }
}

fn anchor(text: &str) -> String {
    text.replace(' ', "-")
}

fn escape(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;")
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use gullet::formula::catalogue;

    #[test]
    fn every_equation_becomes_mathml() {
        for formula in catalogue() {
            for latex in [formula.latex, formula.symbol_latex] {
                let text = mathml(latex, "PLAIN", DisplayMode::Block);
                assert!(
                    text.starts_with("<math"),
                    "{}: {latex}: {text}",
                    formula.name
                );
                assert!(
                    !text.contains("<merror"),
                    "{}: {latex}: {text}",
                    formula.name
                );
            }
        }
    }

    #[test]
    fn every_formula_and_operation_stands_on_the_page_once() {
        let page = render();
        for formula in catalogue() {
            let id = format!("<section id=\"{}\">", formula.name);
            assert_eq!(page.matches(&id).count(), 1, "{}", formula.name);
        }
        for process in process::ALL {
            let id = format!("<section id=\"operation-{}\">", process.name);
            assert_eq!(page.matches(&id).count(), 1, "{}", process.name);
        }
        assert!(!page.contains("<script") && !page.contains("http://www.w3.org/1999/xhtml"));
    }
}
