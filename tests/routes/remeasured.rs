//! What follows is planned anew from what was measured.

use super::{block, close, inch, library, route};
use gullet::plan::{Face, Route};
use gullet::quantity::{Kind, Length, parse, si};
use gullet::{Code, Error};

fn measured(route: &Route, face: Face, size: Length) -> Route {
    route
        .measured(face, size, library())
        .unwrap_or_else(|error| panic!("{error}"))
}

fn refused(route: &Route, face: Face, size: Length) -> Error {
    match route.measured(face, size, library()) {
        Ok(_) => panic!("planned"),
        Err(error) => error,
    }
}

fn stock_of(route: &Route, face: Face) -> Length {
    route
        .clampings
        .iter()
        .find(|clamping| clamping.seat.cut == face)
        .unwrap()
        .stock
}

#[test]
fn the_opposite_face_takes_the_rest() {
    let whole = route(&block());
    // Planned 1.100 in; ten thou more were left, then five less.
    let more = measured(&whole, Face::Top, inch(1.11));
    assert_eq!(more.clampings.len(), 5);
    assert_eq!(more.done.len(), 1);
    assert!(close(stock_of(&more, Face::Bottom), 0.06));
    let less = measured(&more, Face::Top, inch(1.095));
    assert_eq!(less.done.len(), 1);
    assert!(close(stock_of(&less, Face::Bottom), 0.045));
    // What lies between the jaws next is what was measured.
    let front = &less.clampings[0];
    assert_eq!(front.seat.cut, Face::Front);
    assert!(close(front.card.job.blank.width, 1.095));
    // Other sizes stay as they were.
    assert!(close(stock_of(&less, Face::Back), 0.05));
    assert_eq!(less.entries().len(), 5, "the machine is set up already");
}

#[test]
fn a_measurement_says_that_what_came_before_is_done() {
    let rest = measured(&route(&block()), Face::Back, inch(1.999));
    let done: Vec<(Face, bool)> = rest.done.iter().map(|d| (d.face, d.measured)).collect();
    assert_eq!(
        done,
        [(Face::Top, false), (Face::Front, false), (Face::Back, true)]
    );
    let left: Vec<usize> = rest.clampings.iter().map(|c| c.number).collect();
    assert_eq!(left, [4, 5, 6]);
    assert!(close(rest.clampings[1].before.width, 1.999));
}

#[test]
fn a_face_over_size_is_cut_once_more() {
    let whole = route(&block());
    let rest = measured(&whole, Face::Back, inch(2.012));
    let again = &rest.clampings[0];
    assert_eq!((again.number, again.seat.cut), (3, Face::Back));
    assert!(close(again.stock, 0.012) && close(again.after, 2.0));
    let good = measured(&rest, Face::Back, inch(2.0));
    assert_eq!(good.clampings[0].number, 4);
    // Over size by less than a pass that cuts: said, not planned.
    let error = refused(&whole, Face::Back, inch(2.0045));
    assert_eq!(error.code(), Code::NoPlan, "{error}");
}

#[test]
fn a_part_under_size_is_said_so() {
    let whole = route(&block());
    for (face, size) in [
        (Face::Top, 1.045),
        (Face::Back, 1.9955),
        (Face::Right, 3.19),
    ] {
        let error = refused(&whole, face, inch(size));
        let problem = error.first();
        assert_eq!(problem.code, Code::Inconsistent);
        assert_eq!(problem.parameter, format!("measured.{}", face.name()));
        assert!(problem.remedy.contains("under size"), "{problem}");
    }
    // At the edge of the tolerance it still passes.
    assert!(whole.measured(Face::Back, inch(1.996), library()).is_ok());
    // Not under size yet, but nothing to clean up the other face with.
    let error = refused(&whole, Face::Top, inch(1.052));
    assert!(
        error.first().remedy.contains("clean up the bottom face"),
        "{error}"
    );
    let error = refused(&whole, Face::Left, inch(3.215));
    assert!(error.first().admissible.contains("3.22 in"), "{error}");
}

#[test]
fn a_part_does_not_grow() {
    let whole = route(&block());
    let error = refused(&whole, Face::Top, inch(1.16));
    assert!(error.first().remedy.contains("only takes off"), "{error}");
    let rest = measured(&whole, Face::Top, inch(1.1));
    let error = refused(&rest, Face::Bottom, inch(1.12));
    assert!(error.first().admissible.contains("1.1 in"), "{error}");
    for size in [f64::NAN, f64::INFINITY, -1.0, 0.0] {
        assert!(whole.measured(Face::Top, si(size), library()).is_err());
    }
}

#[test]
fn after_the_last_face_nothing_is_left() {
    let done = measured(&route(&block()), Face::Right, inch(3.2));
    assert!(done.clampings.is_empty() && done.entries().is_empty());
    let totals = done.totals().unwrap();
    assert_eq!(totals.time.total().value, 0.0);
    let card = gullet::plan::RouteCard::of(done).unwrap();
    assert!(card.text().contains("6 right: length 3.2000 in, measured"));
    assert!(card.json()["clampings"].as_array().unwrap().is_empty());
    assert!(card.html().contains("</html>"));
}

#[test]
fn a_file_carries_what_was_measured() {
    let mut file = super::FILE.to_owned();
    file += "[measured]\nfront = \"2.045 in\"\ntop = \"1.11 in\"\n";
    let from_file = route(&super::read(&file).unwrap());
    // The same bits as the file's text.
    let text = |text: &str| si(parse(Kind::Length, text).unwrap());
    let by_call = measured(&route(&block()), Face::Top, text("1.11 in"));
    let by_call = measured(&by_call, Face::Front, text("2.045 in"));
    assert_eq!(from_file.done, by_call.done);
    for (a, b) in from_file.clampings.iter().zip(&by_call.clampings) {
        assert_eq!((a.number, a.stock, a.before), (b.number, b.stock, b.before));
    }
    // Goes on from there.
    assert_eq!(
        measured(&from_file, Face::Back, inch(2.0)).clampings.len(),
        3
    );

    // Every size that cannot be is told at once.
    file += "left = \"3.1 in\"\nbottom = \"1.12 in\"\n";
    let error = match Route::new(super::read(&file).unwrap(), library()) {
        Ok(_) => panic!("planned"),
        Err(error) => error,
    };
    let named: Vec<&str> = error
        .problems()
        .iter()
        .map(|p| p.parameter.as_str())
        .collect();
    assert_eq!(named, ["measured.bottom", "measured.left"], "{error}");
}
