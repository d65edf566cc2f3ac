//! What a cut tells, as plain values that the package names.

use crate::quantity::{Quantity, scalar};
use crate::step::Step;
use gullet::operation::{self as core, Band, Consequences, Field, Settings, Side, WorkedStep};
use gullet::quantity::Kind;
use pyo3::prelude::*;
use pyo3::types::PyString;

pub type Values = Vec<(&'static str, Option<Quantity>)>;

pub fn values(fields: &[Field]) -> Values {
    fields
        .iter()
        .map(|field| (field.name, field.value.map(|si| scalar(field.kind, si))))
        .collect()
}

pub type PassRow = (&'static str, &'static str, &'static str, Values);
pub type LimitRow = (
    &'static str,
    Quantity,
    Quantity,
    &'static str,
    f64,
    String,
    bool,
    bool,
    Option<(&'static str, Quantity)>,
);

pub fn pass(pass: &core::Pass) -> PassRow {
    let length = |value: f64| Some(scalar(Kind::Length, value));
    (
        pass.operation.name(),
        pass.kind.name(),
        pass.direction.name(),
        vec![
            ("axial_depth", length(pass.axial_depth.value)),
            ("radial_depth", length(pass.radial_depth.value)),
            ("offset", length(pass.offset.value)),
            ("length", length(pass.length.value)),
            (
                "mean_roughness",
                pass.mean_roughness.and_then(|v| length(v.value)),
            ),
            (
                "spindle_speed",
                pass.spindle_speed
                    .map(|v| scalar(Kind::RotationalSpeed, v.value)),
            ),
            (
                "feed_per_tooth",
                pass.feed_per_tooth.and_then(|v| length(v.value)),
            ),
        ],
    )
}

pub fn limits(ledger: &[core::Limit]) -> Vec<LimitRow> {
    let row = |limit: &core::Limit| {
        (
            limit.name,
            scalar(limit.kind, limit.value),
            scalar(limit.kind, limit.bound),
            match limit.side {
                Side::AtMost => "at_most",
                Side::AtLeast => "at_least",
            },
            limit.share,
            limit.origin.clone(),
            limit.binding,
            limit.exceeded(),
            limit
                .relief
                .map(|relief| (relief.setting, scalar(relief.kind, relief.to))),
        )
    };
    ledger.iter().map(row).collect()
}

pub fn adjustments(
    adjustments: &[core::Adjustment],
) -> Vec<(&'static str, &'static str, Quantity, Quantity)> {
    let row = |a: &core::Adjustment| {
        (
            a.limit,
            a.setting,
            scalar(a.kind, a.from),
            scalar(a.kind, a.to),
        )
    };
    adjustments.iter().map(row).collect()
}

pub fn data(data: &[core::Datum]) -> Vec<(String, Quantity, String)> {
    let row = |d: &core::Datum| (d.name.clone(), scalar(d.kind, d.value), d.origin.clone());
    data.iter().map(row).collect()
}

pub fn warnings(warnings: &[core::Warning]) -> Vec<(&'static str, String)> {
    let row = |w: &core::Warning| (w.code.name(), w.text.clone());
    warnings.iter().map(row).collect()
}

pub fn spread(spread: &core::Spread) -> Vec<(&'static str, Quantity, Quantity, Quantity)> {
    fn row<T: Copy>(
        name: &'static str,
        kind: Kind,
        band: &Band<T>,
        si: fn(T) -> f64,
    ) -> (&'static str, Quantity, Quantity, Quantity) {
        let show = |value| scalar(kind, si(value));
        (name, show(band.low), show(band.start), show(band.high))
    }
    vec![
        row(
            "cutting_speed",
            Kind::Velocity,
            &spread.cutting_speed,
            |v| v.value,
        ),
        row(
            "feed_per_tooth",
            Kind::Length,
            &spread.feed_per_tooth,
            |v| v.value,
        ),
        row("force", Kind::Force, &spread.force, |v| v.value),
        row("power", Kind::Power, &spread.power, |v| v.value),
        row("time", Kind::Time, &spread.time, |v| v.value),
    ]
}

pub fn steps<'py>(py: Python<'py>, steps: &[WorkedStep]) -> PyResult<Vec<Bound<'py, PyAny>>> {
    let step = |step: &WorkedStep| match step {
        WorkedStep::Formula(step) => Ok(Bound::new(py, Step { step: step.clone() })?.into_any()),
        WorkedStep::Choice(choice) => Ok((
            PyString::new(py, &choice.text),
            scalar(choice.kind, choice.value),
        )
            .into_pyobject(py)?
            .into_any()),
    };
    steps.iter().map(step).collect()
}

type FieldRow = (&'static str, &'static str, &'static str, bool);

/// Fields of settings and of consequences: name, kind, meaning, whether one may be missing.
#[pyfunction]
pub fn record_fields() -> (Vec<FieldRow>, Vec<FieldRow>) {
    let rows = |fields: &[Field]| -> Vec<FieldRow> {
        fields
            .iter()
            .map(|field| (field.name, field.kind.name(), field.meaning, field.optional))
            .collect()
    };
    (rows(Settings::FIELDS), rows(Consequences::FIELDS))
}
