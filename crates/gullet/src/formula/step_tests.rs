#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use super::*;
use crate::formula::{catalogue, find};
use core::f64::consts::{FRAC_PI_4, PI};

const METRIC: UnitSystem = UnitSystem::Metric;

fn step(name: &str, arguments: &[f64]) -> Step {
    let formula = find(name).unwrap();
    let result = formula.call(arguments).unwrap();
    Step::new(formula, arguments, result)
}

fn shown(kind: Kind, si: f64) -> String {
    quantity::format_worked(kind, si, METRIC)
}

#[test]
fn symbols_give_way_to_values_with_units() {
    let step = step("cutting_speed", &[1115.0 / 60.0, 0.0127]);
    let (n, d) = (
        shown(Kind::RotationalSpeed, 1115.0 / 60.0),
        shown(Kind::Length, 0.0127),
    );
    let v = shown(Kind::Velocity, step.result);
    assert_eq!(
        step.text(METRIC),
        format!("v_c = pi D n = pi x {d} x {n} = {v}")
    );
}

#[test]
fn a_unit_is_bracketed_under_a_power() {
    let step = step("drilling_removal_rate", &[0.01, 2e-4, 10.0]);
    let d = shown(Kind::Length, 0.01);
    assert!(
        step.text(METRIC)
            .contains(&format!("= (pi x ({d})^2/4) x "))
    );
}

#[test]
fn a_speed_is_bracketed_above_and_below_a_fraction() {
    let speed = shown(Kind::Velocity, 1.5);
    let above = step("spindle_speed", &[1.5, 0.01]).text(METRIC);
    let d = shown(Kind::Length, 0.01);
    assert!(
        above.contains(&format!("= ({speed})/(pi x {d}) = ")),
        "{above}"
    );
    let below = step("tangential_force", &[3000.0, 1.5]).text(METRIC);
    assert!(below.contains(&format!("/({speed}) = ")), "{below}");
    let last = step("rule_of_thumb_speed", &[1.5, 0.01, 4.0]).text(METRIC);
    assert!(
        last.contains(&format!("x ({speed})/(12 x {d}) = ")),
        "{last}"
    );
}

#[test]
fn a_negative_value_is_bracketed_behind_a_sign_but_not_alone() {
    let exit = step("face_exit_angle", &[0.1, -0.025]).text(METRIC);
    let y = shown(Kind::Length, -0.025);
    assert!(y.starts_with('-'));
    assert!(exit.contains(&format!("acos(2 x ({y})/")), "{exit}");
    assert!(exit.contains(&format!("max({y}, -")), "{exit}");
    let turns = step("handwheel_turns", &[-0.005, 0.0025]).text(METRIC);
    assert!(turns.starts_with(&format!("N = s/L = {}/", shown(Kind::Length, -0.005))));
}

#[test]
fn the_case_that_holds_is_shown_with_its_condition() {
    let thin = step("max_chip_thickness", &[1e-4, 0.0127, 0.00127, 0.5]).text(METRIC);
    assert!(
        thin.contains("; with s = 2 sqrt((a_e/D) (1 - a_e/D)) = 2 x sqrt("),
        "{thin}"
    );
    assert!(
        thin.ends_with(&format!("= {} (a_e < D/2)", shown(Kind::Ratio, 0.6))),
        "{thin}"
    );
    let slot = step("max_chip_thickness", &[1e-4, 0.0127, 0.0127, 0.5]).text(METRIC);
    assert!(slot.ends_with("; with s = 1 (a_e >= D/2)"), "{slot}");
}

#[test]
fn angles_stand_in_degrees_under_a_sine_and_in_radians_in_a_product() {
    let teeth = step("mean_teeth_touching", &[4.0, 1.5, 0.02, 0.02, 0.5]).text(METRIC);
    let beta = shown(Kind::Angle, 0.5);
    assert!(teeth.contains(&format!("tan({beta})")), "{teeth}");
    assert!(
        teeth.contains(&format!("4 x ({} rad + ", shown(Kind::Ratio, 1.5))),
        "{teeth}"
    );
}

#[test]
fn defaults_stand_in_the_numbers() {
    let arguments = find("specific_cutting_force")
        .unwrap()
        .read_arguments(&[
            ("kc11".to_owned(), "1800 N/mm2".to_owned()),
            ("chip_exponent".to_owned(), "25 %".to_owned()),
            ("chip_thickness".to_owned(), "0.1 mm".to_owned()),
        ])
        .unwrap();
    let text = step("specific_cutting_force", &arguments).text(METRIC);
    let zero = shown(Kind::Angle, 0.0);
    assert!(
        text.contains(&format!("(1 - 0.01 x ({zero} - {zero})/1 deg) x 1 = ")),
        "{text}"
    );
    assert!(text.contains("^(-0.25)"), "{text}");
}

#[test]
fn a_clause_in_words_is_kept() {
    let formula = find("arc_mean_cutting_power").unwrap();
    let step = step(formula.name, &formula.example_arguments().unwrap());
    let text = step.text(METRIC);
    assert!(
        text.contains("; I = integral of sin(phi)^(1 - m) dphi from 0 to "),
        "{text}"
    );
    assert!(
        text.contains(&format!(
            " x I = {}; with h = ",
            shown(Kind::Power, step.result)
        )),
        "{text}"
    );
}

#[test]
fn a_clause_may_give_the_tangent_of_its_symbol() {
    let clauses = equation::read(
        "F = T tan(lambda); tan(lambda) = L/(pi d)",
        &["T", "L", "d"],
    );
    let values = |name: &str| match name {
        "L" => Some(PI),
        "d" => Some(1.0),
        _ => None,
    };
    let [main, second] = clauses.as_slice() else {
        panic!("{clauses:?}");
    };
    assert_eq!((main.left.as_str(), main.symbol.as_str()), ("F", "F"));
    assert_eq!(
        (second.left.as_str(), second.symbol.as_str()),
        ("tan(lambda)", "lambda")
    );
    let tangent = second.case(&values).unwrap().node.value(&values).unwrap();
    assert!((second.solve(tangent) - FRAC_PI_4).abs() < 1e-15);
}

#[test]
fn products_fractions_and_signs_bind_as_written() {
    let value = |text: &str| {
        let clauses = equation::read(&format!("y = {text}"), &["a", "b"]);
        let lookup = |name: &str| match name {
            "a" => Some(3.0),
            "b" => Some(4.0),
            _ => None,
        };
        clauses[0].case(&lookup)?.node.value(&lookup)
    };
    assert_eq!(value("a - b - 1"), Some(-2.0));
    assert_eq!(value("a/b a"), Some(2.25));
    assert_eq!(value("-a^2 + b"), Some(-5.0));
    assert_eq!(value("2^a^2"), Some(512.0));
    assert_eq!(value("(a b)/(2 b)"), Some(1.5));
    assert_eq!(value("a b/2 b"), Some(24.0));
    assert_eq!(value("2 min(a, b, 1)"), Some(2.0));
    assert_eq!(value("1 min + a"), Some(63.0));
    assert_eq!(value("1 for a > b, y = 2 for a <= b"), Some(2.0));
    assert_eq!(value("1 for a > b, y = 2 else"), Some(2.0));
    for broken in ["a +", "(a", "a)", "c", "sinus(a)", "a b of c", "", "2..5"] {
        assert_eq!(value(broken), None, "{broken}");
    }
}

#[test]
fn latex_sets_units_upright_and_fractions_with_a_bar() {
    assert_eq!(latex_quantity("12.7 mm"), r"12.7\,\mathrm{mm}");
    assert_eq!(latex_quantity("-3 N/mm2"), r"-3\,\mathrm{N/mm^2}");
    assert_eq!(
        latex_quantity("90 deg = 1.571 rad"),
        r"90^\circ = 1.571\,\mathrm{rad}"
    );
    assert_eq!(latex_quantity("80 %"), r"80\,\mathrm{\%}");
    assert_eq!(latex_symbol("phi_st"), r"\varphi_\mathrm{st}");
    assert_eq!(latex_symbol("kappa_r"), r"\kappa_r");
    let step = step("spindle_speed", &[1.5, 0.01]);
    let (v, d) = (shown(Kind::Velocity, 1.5), shown(Kind::Length, 0.01));
    let n = shown(Kind::RotationalSpeed, step.result);
    assert!(step.latex(METRIC).contains(&format!(
        r"& n = \frac{{{}}}{{\pi \times {}}} = {}",
        latex_quantity(&v),
        latex_quantity(&d),
        latex_quantity(&n)
    )));
}

#[test]
fn braces_and_delimiters_of_latex_are_balanced() {
    for formula in catalogue() {
        let Ok(arguments) = formula.example_arguments() else {
            continue;
        };
        let latex = step(formula.name, &arguments).latex(METRIC);
        let mut depth = 0i32;
        for c in latex.chars() {
            depth += i32::from(c == '{') - i32::from(c == '}');
            assert!(depth >= 0, "{}: {latex}", formula.name);
        }
        assert_eq!(depth, 0, "{}: {latex}", formula.name);
        assert_eq!(
            latex.matches(r"\left").count() - latex.matches(r"\leftarrow").count(),
            latex.matches(r"\right").count(),
            "{}: {latex}",
            formula.name
        );
    }
}

#[test]
fn the_written_equation_gives_what_the_body_computes() {
    let mut compared = 0;
    for formula in catalogue() {
        let mut arguments = formula.example_arguments().unwrap();
        // Beside the example, values that are not round and not symmetrical.
        for round in 0..8 {
            let result = formula.call(&arguments);
            if let Ok(result) = result {
                let written = Step::new(formula, &arguments, result).value_of_equation();
                match written {
                    Some(written) => {
                        compared += 1;
                        assert!(
                            (written - result).abs() <= 1e-12 * result.abs(),
                            "{}: {written} against {result}",
                            formula.name
                        );
                    }
                    // An integral or a sum is written in words.
                    None => assert!(
                        [
                            "arc_mean_cutting_power",
                            "peck_cycle_time",
                            "learning_total_time_unit_curve"
                        ]
                        .contains(&formula.name),
                        "{}",
                        formula.name
                    ),
                }
            }
            for (index, (argument, parameter)) in
                arguments.iter_mut().zip(formula.parameters).enumerate()
            {
                let step = 1.0 + 0.07 * f64::from(1 + (round + index as i32 * 3) % 5);
                *argument = match parameter.kind {
                    Kind::Count => *argument + 1.0,
                    _ if (round + index as i32) % 2 == 0 => *argument * step,
                    _ => *argument / step,
                };
            }
        }
    }
    assert!(compared > 300, "only {compared} compared");
}

#[test]
fn a_description_names_every_argument_with_its_range() {
    for formula in catalogue() {
        let text = description(formula);
        for parameter in formula.parameters {
            assert!(text.contains(&format!("    {}  {} [", parameter.name, parameter.symbol)));
            assert!(text.contains(&parameter.range()));
        }
        for said in [
            formula.equation,
            formula.validity,
            formula.source,
            formula.example.expected,
        ] {
            assert!(text.contains(said), "{}: {said}", formula.name);
        }
    }
    let text = description(find("ball_effective_diameter").unwrap());
    assert!(
        text.contains("0 deg <= tilt_angle <= 90 deg; default "),
        "{text}"
    );
}

#[test]
fn symbols_of_a_formula_are_unique_and_stand_in_its_equation() {
    for formula in catalogue() {
        for (index, parameter) in formula.parameters.iter().enumerate() {
            let later = formula.parameters.iter().skip(index + 1);
            assert!(later.clone().all(|other| other.symbol != parameter.symbol));
            assert!(
                formula
                    .equation
                    .split(|c: char| !c.is_ascii_alphanumeric() && c != '_')
                    .any(|token| token == parameter.symbol),
                "{}: {}",
                formula.name,
                parameter.symbol
            );
        }
    }
}
