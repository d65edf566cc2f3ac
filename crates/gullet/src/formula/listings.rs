//! The catalogue and the worked examples as listings.

use super::cases::{Case, Outcome, Verdict, read_cases};
use super::{Formula, catalogue};
use crate::listing::{Cell, Field, Form, Listing};
use crate::quantity::Kind;

const CATALOGUE: &[Field<Formula>] = &[
    Field::<Formula>::new("name", Form::Text, "Name of the formula.", |f| {
        f.name.into()
    }),
    Field::<Formula>::new("topic", Form::Text, "Topic it stands under.", |f| {
        f.topic.into()
    }),
    Field::<Formula>::new("symbol", Form::Text, "Symbol of its result.", |f| {
        f.symbol.into()
    }),
    Field::<Formula>::new("kind", Form::Text, "Kind of its result.", |f| {
        f.result.name().into()
    }),
    Field::<Formula>::new("meaning", Form::Text, "What it gives.", |f| {
        f.meaning.into()
    }),
    Field::<Formula>::new("arguments", Form::Texts, "Names of its arguments.", |f| {
        Cell::Texts(f.parameters.iter().map(|p| p.name.to_owned()).collect())
    }),
    Field::<Formula>::new("equation", Form::Text, "Equation as text.", |f| {
        f.equation.into()
    }),
    Field::<Formula>::new("latex", Form::Text, "Equation in LaTeX.", |f| {
        f.latex.into()
    }),
    Field::<Formula>::new("validity", Form::Text, "Assumptions and range.", |f| {
        f.validity.into()
    }),
    Field::<Formula>::new(
        "source",
        Form::Text,
        "Where the equation comes from.",
        |f| f.source.into(),
    ),
    Field::<Formula>::new(
        "example_arguments",
        Form::Text,
        "Arguments of its worked example.",
        |f| f.example.arguments.into(),
    ),
    Field::<Formula>::new(
        "example_expected",
        Form::Text,
        "Result of its worked example as printed.",
        |f| f.example.expected.into(),
    ),
    Field::<Formula>::new(
        "example_source",
        Form::Text,
        "Where the worked example comes from.",
        |f| f.example.source.into(),
    ),
];

type Run = (Case, Verdict);

const EXAMPLES: &[Field<Run>] = &[
    Field::<Run>::new(
        "file",
        Form::Text,
        "File the example stands in.",
        |(case, _)| (&case.file).into(),
    ),
    Field::<Run>::new("id", Form::Text, "Id, unique in its file.", |(case, _)| {
        (&case.id).into()
    }),
    Field::<Run>::new(
        "formula",
        Form::Text,
        "Formula it is an example of.",
        |(case, _)| case.formula.name.into(),
    ),
    Field::<Run>::new(
        "arguments",
        Form::Text,
        "Arguments as text.",
        |(case, _)| (&case.arguments).into(),
    ),
    Field::<Run>::new(
        "expected",
        Form::Text,
        "Result as the source prints it.",
        |(case, _)| (&case.expected).into(),
    ),
    Field::<Run>::new(
        "computed",
        Form::Text,
        "The formula's result.",
        |(_, verdict)| {
            verdict
                .computed
                .map_or(Cell::Empty, |value| value.to_string().as_str().into())
        },
    )
    .optional(),
    Field::<Run>::new(
        "relative_deviation",
        Form::Number(Kind::Ratio),
        "By how much it deviates.",
        |(_, verdict)| verdict.relative_deviation.into(),
    )
    .optional(),
    Field::<Run>::new(
        "relative_tolerance",
        Form::Number(Kind::Ratio),
        "What the printed digits allow.",
        |(case, _)| case.relative_tolerance.into(),
    ),
    Field::<Run>::new(
        "passed",
        Form::Flag,
        "Whether it agrees.",
        |(_, verdict)| (verdict.outcome == Outcome::Passed).into(),
    ),
    Field::<Run>::new(
        "missed",
        Form::Text,
        "Why it is missed, where it is known to be.",
        |(case, _)| case.missed.as_ref().into(),
    )
    .optional(),
    Field::<Run>::new("source", Form::Text, "Where it comes from.", |(case, _)| {
        (&case.source).into()
    }),
    Field::<Run>::new("note", Form::Text, "Remarks.", |(case, _)| {
        (&case.note).into()
    }),
];

/// The catalogue, a formula a row.
pub fn catalogue_listing() -> Listing {
    Listing::new("catalogue", CATALOGUE, catalogue())
}

/// The embedded worked examples, each run.
pub fn examples_listing() -> Listing {
    let run: Vec<(Case, Verdict)> = gullet_reference_data::CASES
        .iter()
        .flat_map(|(file, text)| read_cases(file, text).0)
        .map(|case| {
            let verdict = case.run();
            (case, verdict)
        })
        .collect();
    Listing::new("worked_examples", EXAMPLES, &run)
}
