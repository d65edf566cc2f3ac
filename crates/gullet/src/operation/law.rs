//! The laws that limits are checked with: what arc and helix make of each pair, and which is the worst.

use super::cut::Log;
use super::loads::k_c;
use super::numbers::{Geometry, Inputs, Law, Pair, Teeth, Worst};
use crate::formula::NoRecord;
use crate::formula::shared::{HelixLag, TeethSum};
use crate::quantity::math::select;
use crate::quantity::{Length, Pressure, Ratio};

/// What the laws of all pairs have in common.
#[inline(always)]
pub(crate) fn teeth(inputs: &Inputs, geometry: &Geometry) -> Teeth {
    let sum = TeethSum::of(inputs.teeth, geometry.arc, geometry.largest_sine);
    let lag = HelixLag::of(
        inputs.teeth,
        inputs.axial_depth,
        inputs.diameter,
        inputs.helix_angle,
    );
    Teeth {
        teeth: sum.teeth,
        sines: sum.sines,
        pitch: lag.pitch,
        lag: lag.lag,
        whole: lag.whole,
    }
}

/// A pair with what the arc makes of the force of one tooth under it, and the helix of that: the
/// formulas of the catalogue, from the parts that all pairs share.
#[inline(always)]
pub(crate) fn law(geometry: &Geometry, teeth: &Teeth, pair: Pair) -> Law {
    let sum = TeethSum {
        teeth: teeth.teeth,
        sines: teeth.sines,
    };
    let lag = HelixLag {
        pitch: teeth.pitch,
        lag: teeth.lag,
        whole: teeth.whole,
    };
    let tooth_sum = sum.factor(pair.exponent);
    let relief = lag.relief(geometry.arc, geometry.chip_ratio, pair.exponent, tooth_sum);
    Law {
        kc11: pair.kc11,
        exponent: pair.exponent,
        tooth_sum,
        relief,
    }
}

/// The laws that limits are checked with, the default pair's first and repeated where there are fewer.
pub(crate) fn laws(inputs: &Inputs, geometry: &Geometry) -> [Law; 4] {
    let [a, others @ ..] = inputs.pairs();
    let teeth = teeth(inputs, geometry);
    let first = law(geometry, &teeth, a);
    let [b, c, d] = others.map(|pair| {
        if pair == a {
            first
        } else {
            law(geometry, &teeth, pair)
        }
    });
    [first, b, c, d]
}

impl Law {
    #[inline(always)]
    pub(crate) fn pair(&self) -> Pair {
        Pair {
            kc11: self.kc11,
            exponent: self.exponent,
        }
    }
}

impl Worst {
    /// One law at a chip thickness, with the factor of a worn edge.
    #[inline(always)]
    pub(crate) fn of(law: &Law, h: Length, wear: Ratio) -> Worst {
        Worst {
            kc11: law.kc11,
            exponent: law.exponent,
            tooth_sum: law.tooth_sum,
            relief: law.relief,
            k: k_c(&mut NoRecord, law.pair(), h, wear),
        }
    }

    /// The other where its specific cutting force is higher.
    #[inline(always)]
    pub(crate) fn or(self, other: Worst) -> Worst {
        let higher = other.k.value > self.k.value;
        Worst {
            kc11: select(higher, other.kc11, self.kc11),
            exponent: select(higher, other.exponent, self.exponent),
            tooth_sum: select(higher, other.tooth_sum, self.tooth_sum),
            relief: select(higher, other.relief, self.relief),
            k: select(higher, other.k, self.k),
        }
    }

    /// The law with the highest specific cutting force at a chip thickness.
    pub(super) fn among(laws: &[Law; 4], h: Length, wear: Ratio) -> Worst {
        let [a, others @ ..] = laws;
        others
            .iter()
            .filter(|law| law.pair() != a.pair())
            .fold(Worst::of(a, h, wear), |worst, law| {
                worst.or(Worst::of(law, h, wear))
            })
    }

    #[inline(always)]
    pub(super) fn pair(&self) -> Pair {
        Pair {
            kc11: self.kc11,
            exponent: self.exponent,
        }
    }

    /// Its specific cutting force; computed once more where a record is kept.
    #[inline(always)]
    pub(super) fn force(&self, log: &mut impl Log, h: Length, wear: Ratio) -> Pressure {
        if log.records() {
            k_c(log, self.pair(), h, wear)
        } else {
            self.k
        }
    }
}
