//! The numbers of a cut alone are those of the cut with its words.

use super::{Shop, shop};
use gullet::operation::{Lowering, Milling};
use gullet::quantity::si;
use proptest::prelude::*;

/// Whether both ways give the same numbers to the last bit, or the same error.
fn agree(shop: &Shop) -> Result<(), TestCaseError> {
    let milling = Milling::new(&shop.setup());
    for lowering in [Lowering::Allowed, Lowering::NotForLoads] {
        match (
            milling.numbers(&shop.pass, lowering),
            milling.cut(&shop.pass, lowering),
        ) {
            (Ok(numbers), Ok(cut)) => {
                prop_assert_eq!(numbers, cut.numbers());
                prop_assert_eq!(
                    numbers.binding().map(|limit| limit.name.name()),
                    cut.binding().map(|limit| limit.name)
                );
            }
            (Err(lean), Err(full)) => prop_assert_eq!(lean, full),
            (lean, full) => {
                return Err(TestCaseError::fail(format!(
                    "{:?} against {:?}",
                    lean.err(),
                    full.err()
                )));
            }
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_lean_way_gives_the_numbers_of_the_cut(shop in shop()) {
        agree(&shop)?;
    }

    #[test]
    fn sizes_beyond_reason_get_the_same_verdict(
        shop in shop(),
        which in 0usize..10,
        power in -320i32..300,
    ) {
        let mut shop = shop;
        let factor = 10f64.powi(power);
        match which {
            0 => shop.pass.axial_depth *= factor,
            1 => shop.pass.radial_depth *= factor,
            2 => shop.pass.length *= factor,
            3 => shop.pass.offset = si(factor),
            4 => shop.cutter.stick_out *= factor,
            5 => shop.machine.motor_power *= factor,
            6 => shop.pass.feed_per_tooth = Some(si(factor)),
            7 => shop.pass.spindle_speed = Some(si(factor)),
            8 => shop.pass.mean_roughness = Some(si(factor)),
            _ => {
                shop.cutter.diameter *= factor;
                shop.cutter.shank_diameter *= factor;
                shop.pass.axial_depth *= factor;
                shop.pass.radial_depth *= factor;
            }
        }
        agree(&shop)?;
    }
}
