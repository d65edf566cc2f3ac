//! Draws: the same whatever runs beside them, and spread as their distributions say.

use super::draw::{Drawn, Random, base};
use gullet::Code;
use gullet::formula::Column;
use gullet::study::{
    Execution, Input, InstructionSet, MillingStudy, Quantiles, ResultField, Results, Rows, Spread,
    Uncertain, Uncertainty,
};
use gullet::table::Library;

fn place(name: &str) -> usize {
    ResultField::all()
        .iter()
        .position(|field| field.name == name)
        .unwrap()
}

fn study() -> MillingStudy<'static> {
    MillingStudy::new(Library::builtin(), base())
}

fn uncertainty(spreads: &[(Uncertain, Spread)], draws: usize, quantiles: &[f64]) -> Uncertainty {
    Uncertainty {
        spreads: spreads.to_vec(),
        draws,
        seed: 42,
        quantiles: quantiles.to_vec(),
        first_row: 0,
    }
}

/// One row of the base, drawn.
fn one_row(wanted: &[usize], uncertainty: &Uncertainty) -> (Results, Quantiles) {
    let rows = Rows {
        count: 1,
        numbers: vec![(Input::AxialDepth, Column::Constant(0.004))],
        ..Rows::default()
    };
    let found = study().run_uncertain(&rows, wanted, uncertainty, Execution::default());
    let (results, quantiles) = found.unwrap();
    assert_eq!(results.status, [0]);
    (results, quantiles)
}

#[test]
fn no_spread_gives_the_row_itself_to_the_last_bit() {
    let drawn = Drawn::new(&mut Random(9), 500, false);
    // What is found before settings are held is not computed again.
    let wanted: Vec<usize> = (0..ResultField::all().len()).collect();
    let same = Spread::Uniform {
        low: 1.0,
        high: 1.0,
    };
    let spreads = [
        (Uncertain::CuttingForce, same),
        (Uncertain::Feed, same),
        (Uncertain::Input(Input::RadialDepth), same),
    ];
    let (results, quantiles) = study()
        .run_uncertain(
            &drawn.rows(),
            &wanted,
            &uncertainty(&spreads, 3, &[0.5]),
            Execution::default(),
        )
        .unwrap();
    let mut good = 0;
    for row in (0..drawn.count).filter(|row| results.status[*row] == 0) {
        good += 1;
        for ((field, nominal), median) in ResultField::all()
            .iter()
            .zip(&results.columns)
            .zip(&quantiles.columns)
        {
            assert!(
                nominal[row].to_bits() == median[row].to_bits()
                    || (nominal[row].is_nan() && median[row].is_nan()),
                "row {row}: {} {} against {}",
                field.name,
                nominal[row],
                median[row]
            );
        }
        assert_eq!(quantiles.left_out[row], 0);
    }
    assert!(good > 50, "{good}");
}

#[test]
fn a_uniform_spread_has_the_quantiles_of_its_range() {
    let shares = [0.0, 0.05, 0.25, 0.5, 0.75, 0.95, 1.0];
    let spread = Spread::Uniform {
        low: 0.9,
        high: 1.2,
    };
    let force = place("mean_tangential_force");
    let (results, quantiles) = one_row(
        &[force],
        &uncertainty(&[(Uncertain::CuttingForce, spread)], 40_000, &shares),
    );
    for (share, column) in shares.iter().zip(&quantiles.columns) {
        // The force is in proportion to the specific cutting force; the standard error of a
        // quantile of 40 000 even draws is at most 0.0025 of the range.
        let expected = results.columns[0][0] * (0.9 + 0.3 * share);
        let allowed = results.columns[0][0] * 0.3 * 0.0125;
        assert!(
            (column[0] - expected).abs() < allowed,
            "{share}: {}",
            column[0]
        );
    }
}

#[test]
fn time_goes_with_the_inverse_of_the_feed() {
    let spread = Spread::Triangular {
        low: 0.8,
        mode: 0.9,
        high: 1.1,
    };
    let (results, quantiles) = one_row(
        &[place("time")],
        &uncertainty(&[(Uncertain::Feed, spread)], 40_000, &[0.1, 0.5, 0.9]),
    );
    // Quantile of the triangular distribution (textbook form): below the mode
    // low + sqrt(u (high - low)(mode - low)), above it high - sqrt((1 - u)(high - low)(high - mode)).
    let factor = |u: f64| {
        let (low, mode, high) = (0.8, 0.9, 1.1);
        if u < (mode - low) / (high - low) {
            low + f64::sqrt(u * (high - low) * (mode - low))
        } else {
            high - f64::sqrt((1.0 - u) * (high - low) * (high - mode))
        }
    };
    for (share, column) in [0.1, 0.5, 0.9].iter().zip(&quantiles.columns) {
        let expected = results.columns[0][0] / factor(1.0 - share);
        let ratio = column[0] / expected;
        assert!((ratio - 1.0).abs() < 0.005, "{share}: {ratio}");
    }
}

#[test]
fn a_log_normal_spread_has_its_standard_deviation() {
    let (results, quantiles) = one_row(
        &[place("cutting_power")],
        &uncertainty(
            &[(Uncertain::CuttingForce, Spread::LogNormal { sigma: 0.1 })],
            40_000,
            // Standard normal quantiles -1, 0 and 1 (tables of the normal distribution).
            &[0.158_655_25, 0.5, 0.841_344_75],
        ),
    );
    for (deviations, column) in [-1.0, 0.0, 1.0].iter().zip(&quantiles.columns) {
        let found = (column[0] / results.columns[0][0]).ln() / 0.1;
        assert!((found - deviations).abs() < 0.04, "{deviations}: {found}");
    }
}

#[test]
fn neither_threads_nor_instructions_nor_batches_change_a_draw() {
    let drawn = Drawn::new(&mut Random(11), 300, true);
    let spreads = [
        (Uncertain::CuttingForce, Spread::LogNormal { sigma: 0.2 }),
        (
            Uncertain::Input(Input::RadialDepth),
            Spread::Uniform {
                low: 0.8,
                high: 2.5,
            },
        ),
    ];
    let wanted = [place("time"), place("deflection")];
    let settings = uncertainty(&spreads, 100, &[0.05, 0.95]);
    let run = |rows: &Rows, settings: &Uncertainty, execution| {
        let found = study().run_uncertain(rows, &wanted, settings, execution);
        found.unwrap().1
    };
    let bits = |quantiles: &Quantiles| -> Vec<Vec<u64>> {
        let of = |column: &Vec<f64>| column.iter().map(|x| x.to_bits()).collect();
        quantiles.columns.iter().map(of).collect()
    };
    let first = run(
        &drawn.rows(),
        &settings,
        Execution::default().with_threads(1).unwrap(),
    );
    assert!(first.left_out.iter().any(|count| *count > 0));
    for execution in InstructionSet::available()
        .into_iter()
        .map(|set| Execution::default().with_instruction_set(set))
        .chain([Execution::default().with_threads(3).unwrap()])
    {
        let other = run(&drawn.rows(), &settings, execution);
        assert_eq!(bits(&first), bits(&other));
        assert_eq!(first.left_out, other.left_out);
    }
    // The second half as a batch of its own.
    let half = Drawn {
        numbers: drawn
            .numbers
            .iter()
            .map(|(input, values)| (*input, values[150..].to_vec()))
            .collect(),
        choices: drawn
            .choices
            .iter()
            .map(|(choice, values)| (*choice, values[150..].to_vec()))
            .collect(),
        count: 150,
    };
    let later = Uncertainty {
        first_row: 150,
        ..settings.clone()
    };
    let second = run(&half.rows(), &later, Execution::default());
    for (whole, part) in bits(&first).iter().zip(bits(&second)) {
        assert_eq!(whole[150..], part);
    }
    // Another seed draws anew.
    let other_seed = Uncertainty {
        seed: 43,
        ..settings.clone()
    };
    assert_ne!(
        bits(&first),
        bits(&run(&drawn.rows(), &other_seed, Execution::default()))
    );
}

#[test]
fn spreads_that_are_none_are_refused_together() {
    let bad = Uncertainty {
        spreads: vec![
            (
                Uncertain::CuttingForce,
                Spread::Uniform {
                    low: 1.1,
                    high: 0.9,
                },
            ),
            (Uncertain::Feed, Spread::LogNormal { sigma: f64::NAN }),
            (Uncertain::Feed, Spread::LogNormal { sigma: 0.1 }),
        ],
        draws: 0,
        seed: 1,
        quantiles: vec![0.5, 1.5],
        first_row: 0,
    };
    let rows = Rows {
        count: 1,
        ..Rows::default()
    };
    let error = study()
        .run_uncertain(&rows, &[0], &bad, Execution::default())
        .unwrap_err();
    let named: Vec<(&str, Code)> = error
        .problems()
        .iter()
        .map(|problem| (problem.parameter.as_str(), problem.code))
        .collect();
    assert_eq!(
        named,
        [
            ("cutting_force", Code::OutOfRange),
            ("feed", Code::OutOfRange),
            ("feed", Code::Duplicate),
            ("draws", Code::OutOfRange),
            ("quantiles", Code::OutOfRange),
        ]
    );
    assert_eq!(
        Uncertain::named("cutter_teeth").unwrap_err().code(),
        Code::WrongType
    );
    assert_eq!(
        Uncertain::named("cuting_force").unwrap_err().code(),
        Code::UnknownName
    );
    assert_eq!(
        Uncertain::named("grip_depth").unwrap(),
        Uncertain::Input(Input::GripDepth)
    );
}
