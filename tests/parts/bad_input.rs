//! Files of parts that are refused: every problem at once, each with its place, value and line.

use super::{EXAMPLE, FILE, edited, library, read};
use gullet::plan::{PartCard, PartRoute};
use gullet::{Code, Error, Problem};

#[track_caller]
fn refused(text: &str) -> Error {
    match read(text) {
        Ok(_) => panic!("read"),
        Err(error) => error,
    }
}

/// The line of a text, from 1.
fn line_of(text: &str, what: &str) -> usize {
    1 + text.lines().position(|line| line.contains(what)).unwrap()
}

#[track_caller]
fn one(error: &Error) -> &Problem {
    assert_eq!(error.problems().len(), 1, "{error}");
    error.first()
}

#[test]
fn every_fault_is_told_with_place_value_and_line() {
    use Code::{
        Missing, NotFinite, NotWhole, OutOfRange, UnitMissing, UnitUnknown, UnknownName, WrongType,
    };
    // What stands in the file, what in its place, code, parameter, value, part of the message.
    let rows = [
        (
            "count = 2",
            "cuont = 2",
            UnknownName,
            "operation[1].cuont",
            "cuont",
            "did you mean count?",
        ),
        (
            "count = 2",
            "flutes = 2",
            UnknownName,
            "operation[1].flutes",
            "flutes",
            "admissible: ",
        ),
        (
            "count = 2",
            "count = 0",
            OutOfRange,
            "operation[1].count",
            "0",
            "a whole number, 1 to 10000",
        ),
        (
            "count = 2",
            "count = 1.5",
            NotWhole,
            "operation[1].count",
            "1.5",
            "a whole number",
        ),
        (
            "count = 2",
            "count = 20000",
            OutOfRange,
            "operation[1].count",
            "20000",
            "1 to 10000",
        ),
        (
            "count = 2",
            "count = nan",
            NotFinite,
            "operation[1].count",
            "nan",
            "a finite number",
        ),
        (
            "count = 2",
            "count = true",
            WrongType,
            "operation[1].count",
            "true",
            "count",
        ),
        (
            "\"drilling\"",
            "\"driling\"",
            UnknownName,
            "operation[1].operation",
            "driling",
            "did you mean drilling?",
        ),
        (
            "\"drilling\"",
            "7",
            WrongType,
            "operation[1].operation",
            "7",
            "text",
        ),
        (
            "\"Drill two holes\"",
            "5",
            WrongType,
            "operation[1].name",
            "5",
            "text",
        ),
        (
            "\"vise on the mill\"",
            "\" \"",
            OutOfRange,
            "operation[1].clamping",
            " ",
            "not empty",
        ),
        (
            "\"8.5 mm\"\ndepth",
            "\"8.5 s\"\ndepth",
            UnitUnknown,
            "operation[1].diameter",
            "8.5 s",
            "mm",
        ),
        (
            "\"8.5 mm\"\ndepth",
            "\"8.5\"\ndepth",
            UnitMissing,
            "operation[1].diameter",
            "8.5",
            "mm",
        ),
        (
            "\"8.5 mm\"\ndepth",
            "8.5\ndepth",
            UnitMissing,
            "operation[1].diameter",
            "8.5",
            "with its unit in quotes",
        ),
        (
            "\"8.5 mm\"\ndepth",
            "\"-8.5 mm\"\ndepth",
            OutOfRange,
            "operation[1].diameter",
            "-8.5 mm",
            "mm",
        ),
        (
            "\"8.5 mm\"\ndepth",
            "[8.5]\ndepth",
            WrongType,
            "operation[1].diameter",
            "a list",
            "length",
        ),
        (
            "\"through\"",
            "\"trough\"",
            UnknownName,
            "operation[1].hole",
            "trough",
            "did you mean through?",
        ),
        (
            "\"through\"",
            "1",
            WrongType,
            "operation[1].hole",
            "1",
            "through, blind",
        ),
        (
            "\"20 s\"",
            "\"-20 s\"",
            OutOfRange,
            "operation[1].handling_time",
            "-20 s",
            "0 ",
        ),
        (
            "\"20 s\"",
            "20",
            UnitMissing,
            "operation[1].handling_time",
            "20",
            "with its unit",
        ),
        (
            "\"small-cnc-mill\"",
            "\"small-cnc-mil\"",
            UnknownName,
            "operation[1].machine",
            "small-cnc-mil",
            "did you mean small-cnc-mill?",
        ),
        (
            "\"HSS\"",
            "\"HSX\"",
            UnknownName,
            "operation[1].tool",
            "HSX",
            "HSS",
        ),
        (
            "\"bench\"",
            "\"bensh\"",
            UnknownName,
            "operation[2].machine",
            "bensh",
            "did you mean bench?",
        ),
        (
            "motor_power =",
            "motor_powr =",
            UnknownName,
            "machines.bench.motor_powr",
            "motor_powr",
            "did you mean motor_power?",
        ),
        (
            "\"500 W\"",
            "\"-500 W\"",
            OutOfRange,
            "machines.bench.motor_power",
            "W",
            "",
        ),
        (
            "\"drill-press\"",
            "\"drill-pres\"",
            UnknownName,
            "machines.bench.base",
            "drill-pres",
            "did you mean drill-press?",
        ),
        (
            "\"1018\"",
            "\"1018x9\"",
            UnknownName,
            "material.id",
            "1018x9",
            "",
        ),
        (
            "\"experienced\"",
            "\"experinced\"",
            UnknownName,
            "practice.base",
            "experinced",
            "did you mean experienced?",
        ),
        (
            "[1, 10]",
            "[]",
            OutOfRange,
            "rates.lots",
            "0 numbers",
            "lots = [1, 10, 100]",
        ),
        (
            "[1, 10]",
            "10",
            WrongType,
            "rates.lots",
            "10",
            "1 to 20 whole numbers",
        ),
        (
            "[1, 10]",
            "[1, 2.5]",
            NotWhole,
            "rates.lots[2]",
            "2.5",
            "a whole number",
        ),
        (
            "[1, 10]",
            "[0, 10]",
            OutOfRange,
            "rates.lots[1]",
            "0",
            "1 to ",
        ),
        (
            "\"48 money/h\"",
            "48",
            UnitMissing,
            "rates.machine_rate",
            "48",
            "with its unit",
        ),
        (
            "\"48 money/h\"",
            "\"48 mm\"",
            UnitUnknown,
            "rates.machine_rate",
            "48 mm",
            "",
        ),
        (
            "material_cost",
            "material_prise",
            UnknownName,
            "rates.material_prise",
            "material_prise",
            "material_cost",
        ),
        (
            "[rates]",
            "[ratse]",
            UnknownName,
            "ratse",
            "ratse",
            "did you mean rates?",
        ),
        (
            "title =",
            "titel =",
            UnknownName,
            "titel",
            "titel",
            "did you mean title?",
        ),
        (
            "[machines.bench]",
            "[machine.bench]",
            UnknownName,
            "machine",
            "machine",
            "did you mean machines?",
        ),
        (
            "operation = \"drilling\"\n",
            "",
            Missing,
            "operation[1].operation",
            "",
            "such as operation = \"drilling\"",
        ),
        (
            "depth = \"12 mm\"\n",
            "",
            Missing,
            "operation[1].depth",
            "",
            "",
        ),
    ];
    for (from, to, code, parameter, value, told) in rows {
        let text = edited(FILE, from, to);
        let error = refused(&text);
        let at = format!("{to}: {error}");
        let problem = error
            .problems()
            .iter()
            .find(|problem| problem.parameter == parameter)
            .unwrap_or_else(|| panic!("{at}"));
        assert_eq!(problem.code, code, "{at}");
        assert!(problem.value.contains(value), "{at}");
        assert!(problem.to_string().contains(told), "{at}");
        assert!(!problem.remedy.is_empty(), "{at}");
        assert!(
            !problem.admissible.is_empty() || code == Missing || parameter == "material.id",
            "{at}"
        );
        // A key that is left out has the line of its section.
        let place = if to.is_empty() { "[[operation]]" } else { from };
        let before = FILE.split(place).next().unwrap();
        let line = 1 + before.matches('\n').count();
        assert!(
            problem.remedy.contains(&format!("line {line})")),
            "{line} in {at}"
        );
        // A machine whose description fails is not known to the operations either; nothing else is told.
        let others = error
            .problems()
            .iter()
            .filter(|problem| problem.parameter != parameter);
        for other in others {
            assert_eq!(other.parameter, "operation[2].machine", "{at}");
            assert!(parameter.starts_with("machine"), "{at}");
        }
    }
}

#[test]
fn all_problems_come_at_once() {
    let text = edited(FILE, "depth = \"12 mm\"", "dept = \"12 mm\"");
    let text = edited(
        &text,
        "hole_diameter = \"8.5 mm\"",
        "hole_diameter = \"8.5\"",
    );
    let text = edited(&text, "[1, 10]", "[1, -10]");
    let error = refused(&text);
    let told: Vec<(Code, &str)> = error
        .problems()
        .iter()
        .map(|problem| (problem.code, problem.parameter.as_str()))
        .collect();
    assert_eq!(
        told,
        [
            (Code::OutOfRange, "rates.lots[2]"),
            (Code::UnknownName, "operation[1].dept"),
            (Code::Missing, "operation[1].depth"),
            (Code::UnitMissing, "operation[2].hole_diameter"),
        ]
    );
}

#[test]
fn a_file_without_operations_is_refused() {
    let (head, _) = FILE.split_once("[[operation]]").unwrap();
    let error = refused(head);
    let problem = one(&error);
    assert_eq!(
        (problem.code, problem.parameter.as_str()),
        (Code::Missing, "operation")
    );
    for (operations, code) in [
        ("operation = []\n", Code::OutOfRange),
        ("operation = 3\n", Code::WrongType),
        ("operation = [3]\n", Code::WrongType),
    ] {
        let error = refused(&format!("{operations}{head}"));
        assert_eq!(one(&error).code, code, "{error}");
        assert!(error.first().remedy.contains("(line 1)"), "{error}");
    }
}

#[test]
fn a_material_that_is_wrong_or_missing_is_told_once() {
    let unknown = edited(EXAMPLE, "id = \"1018\"", "id = \"nothing9\"");
    assert_eq!(one(&refused(&unknown)).parameter, "material.id");
    let missing = edited(EXAMPLE, "[material]\nid = \"1018\"\n", "");
    let error = refused(&missing);
    assert_eq!(one(&error).parameter, "material");
    assert_eq!(error.first().code, Code::Missing);
}

#[test]
fn the_squaring_and_its_step_belong_together() {
    let (steps, _) = EXAMPLE.split_once("[squaring.blank]").unwrap();
    let error = refused(steps);
    assert_eq!(
        (one(&error).code, one(&error).parameter.as_str()),
        (Code::Missing, "squaring")
    );
    assert!(error.first().remedy.contains("[squaring.blank]"), "{error}");

    let step = "[[operation]]\noperation = \"squared-block\"\n";
    let error = refused(&edited(EXAMPLE, step, ""));
    assert_eq!(
        (one(&error).code, one(&error).parameter.as_str()),
        (Code::Inconsistent, "squaring")
    );

    let error = refused(&edited(EXAMPLE, step, &format!("{step}\n{step}")));
    assert_eq!(
        (one(&error).code, one(&error).parameter.as_str()),
        (Code::Duplicate, "operation[3].operation")
    );
    let error = refused(&edited(EXAMPLE, step, &format!("{step}count = 2\n")));
    assert_eq!(one(&error).parameter, "operation[2].count");

    for (from, to, parameter) in [
        ("jaw_height =", "jaw_heigth =", "squaring.hold.jaw_heigth"),
        (
            "tolerance = \"0.1 mm\"",
            "tolerance = 0.1",
            "squaring.part.tolerance",
        ),
        (
            "\"manual-knee-mill\"",
            "\"knee-mill\"",
            "squaring.machine.base",
        ),
    ] {
        let text = edited(EXAMPLE, from, to);
        let error = refused(&text);
        let problem = error
            .problems()
            .iter()
            .find(|problem| problem.parameter == parameter)
            .unwrap_or_else(|| panic!("{error}"));
        let line = format!("line {})", line_of(&text, to));
        assert!(problem.remedy.contains(&line), "{line} in {problem}");
    }
}

/// What only computing finds is told of every operation at once too.
#[test]
fn limits_of_several_operations_are_told_together() {
    let text = edited(FILE, "depth = \"12 mm\"", "depth = \"600 mm\"");
    let text = edited(&text, "motor_power = \"500 W\"", "motor_power = \"0.5 W\"");
    let route = read(&text).unwrap_or_else(|error| panic!("{error}"));
    let error = PartCard::new(route, library()).map(|_| ()).unwrap_err();
    for operation in ["operation[1].", "operation[2]."] {
        let problem = error
            .problems()
            .iter()
            .find(|problem| problem.parameter.starts_with(operation))
            .unwrap_or_else(|| panic!("{error}"));
        assert_eq!(problem.code, Code::LimitExceeded, "{problem}");
        assert!(!problem.value.is_empty() && !problem.admissible.is_empty());
    }
    let all = "[\"8 mm\", \"12 mm\", \"18 mm\", \"24 mm\", \"30 mm\", \"36 mm\"]";
    let none = edited(EXAMPLE, all, "[\"44 mm\"]");
    let route = read(&none).unwrap_or_else(|error| panic!("{error}"));
    let error = PartCard::new(route, library()).map(|_| ()).unwrap_err();
    assert_eq!(
        error.first().parameter,
        "squaring.hold.parallels",
        "{error}"
    );
}

/// TOML cannot give a key twice; JSON can.
#[test]
fn keys_given_twice_are_refused_in_json() {
    let json: serde_json::Value = toml::from_str(FILE).unwrap();
    let json = json.to_string();
    for (from, to, parameter) in [
        (
            "\"count\":2",
            "\"count\":2,\"count\":3",
            "operation[1].count",
        ),
        ("\"lots\":[1,10]", "\"lots\":[1],\"lots\":[2]", "rates.lots"),
        ("\"title\":", "\"rates\":{},\"title\":", "rates"),
    ] {
        let error = PartRoute::from_json(&edited(&json, from, to), library()).unwrap_err();
        let problem = one(&error);
        assert_eq!(
            (problem.code, problem.parameter.as_str()),
            (Code::Duplicate, parameter)
        );
    }
}
