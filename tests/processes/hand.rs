//! Cuts to compute by hand: the example of an operation, its machine and material changed.

use super::bench::Shop;
use gullet::Error;
use gullet::model::{Drive, Feed};
use gullet::operation::Limit;
use gullet::operation::process::{ProcessCut, Request, find};
use gullet::quantity::si;

/// A cut of an operation with inputs as text, its shop changed.
pub fn run(name: &str, inputs: &str, change: impl FnOnce(&mut Shop)) -> Result<ProcessCut, Error> {
    let process = find(name).unwrap();
    let mut shop = Shop::of(process);
    change(&mut shop);
    Request::of(process).texts(inputs)?.cut(&shop.bench())
}

/// As [`run`], of a cut that holds.
#[track_caller]
pub fn holds(name: &str, inputs: &str, change: impl FnOnce(&mut Shop)) -> ProcessCut {
    run(name, inputs, change).unwrap_or_else(|error| panic!("{error}"))
}

/// The first limit that a cut exceeds.
#[track_caller]
pub fn exceeds(name: &str, inputs: &str, change: impl FnOnce(&mut Shop)) -> String {
    match run(name, inputs, change) {
        Ok(cut) => panic!("holds, with {:?}", cut.binding().map(|limit| limit.name)),
        Err(error) => error.first().parameter.clone(),
    }
}

/// A setting or result in SI units.
#[track_caller]
pub fn value(cut: &ProcessCut, name: &str) -> f64 {
    cut.value(name).unwrap_or_else(|| panic!("no {name}")).si
}

/// A limit of the ledger.
#[track_caller]
pub fn limit<'c>(cut: &'c ProcessCut, name: &str) -> &'c Limit {
    cut.limit(name).unwrap_or_else(|| panic!("no limit {name}"))
}

#[track_caller]
pub fn assert_near(a: f64, b: f64, relative: f64) {
    assert!(
        (a - b).abs() <= relative * a.abs().max(b.abs()),
        "{a} against {b}"
    );
}

/// A machine that has every speed and feed, and power for anything.
pub fn strong(shop: &mut Shop) {
    shop.machine.drive = Drive::Continuous {
        lowest: si(1e-3),
        highest: si(1e3),
    };
    shop.machine.feed = Feed::Continuous {
        lowest: si(0.0),
        highest: si(1.0),
    };
    shop.machine.motor_power = si(1e6);
    shop.machine.maximum_torque = None;
}

/// Work with one specific cutting force at every chip thickness, which the tables do not know.
pub fn plain_work(shop: &mut Shop, force: f64) {
    shop.material.classes.clear();
    shop.material.pairs.truncate(1);
    shop.material.pairs[0].kc11 = si(force);
    shop.material.pairs[0].exponent = si(0.0);
}
