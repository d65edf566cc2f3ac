//! A cut as a static page of a notebook.

use crate::quantity::escaped;
use gullet::operation::{Cut, Field, Side};
use gullet::quantity::{UnitSystem, format};

/// Limits as the rows of a page.
fn limits_html(cut: &Cut, system: UnitSystem) -> String {
    let mut html = String::from(
        "<table><thead><tr><th>limit</th><th>value</th><th>bound</th><th>share</th></tr></thead><tbody>",
    );
    for limit in &cut.ledger {
        let (open, close) = if limit.binding {
            ("<b>", "</b>")
        } else {
            ("", "")
        };
        let side = match limit.side {
            Side::AtMost => "at most",
            Side::AtLeast => "at least",
        };
        html += &format!(
            "<tr><td>{open}{}{close}</td><td>{}</td><td>{side} {}</td><td>{:.0} %</td></tr>",
            escaped(&limit.name.replace('_', " ")),
            escaped(&format(limit.kind, limit.value, system)),
            escaped(&format(limit.kind, limit.bound, system)),
            limit.share * 100.0
        );
    }
    html + "</tbody></table>"
}

fn fields_html(title: &str, fields: &[Field], system: UnitSystem) -> String {
    let mut html = format!("<table><thead><tr><th colspan=\"2\">{title}</th></tr></thead><tbody>");
    for field in fields {
        if let Some(si) = field.value {
            html += &format!(
                "<tr title=\"{}\"><td>{}</td><td>{}</td></tr>",
                escaped(field.meaning),
                field.name.replace('_', " "),
                escaped(&format(field.kind, si, system))
            );
        }
    }
    html + "</tbody></table>"
}

pub fn page(cut: &Cut, system: UnitSystem) -> String {
    let mut html = String::from("<div>");
    html += &fields_html("settings", &cut.settings.fields(), system);
    html += &fields_html("consequences", &cut.consequences.fields(), system);
    html += &limits_html(cut, system);
    for warning in &cut.warnings {
        html += &format!("<p>{}</p>", escaped(&warning.text));
    }
    html + "</div>"
}
