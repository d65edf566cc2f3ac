//! Draws of rows: the settings held, what is uncertain drawn, the outcome computed again.

use super::group::Group;
use super::lanes::{Block, Lanes};
use super::stages;
use super::uncertainty::{Uncertain, Uncertainty, quantile};
use crate::operation::lanes::LANES;

/// The place in the quantiles that a chunk fills.
pub(super) struct Draws<'r> {
    pub uncertainty: &'r Uncertainty,
    pub wanted: &'r [usize],
    /// Number of the chunk's first row.
    pub start: usize,
    pub columns: Vec<&'r mut [f64]>,
    pub left_out: &'r mut [u32],
    pub block: Box<Block>,
    /// Draws of one row, for each wanted result.
    pub drawn: Vec<Vec<f64>>,
}

impl Draws<'_> {
    /// Draws every good row of a block that was computed.
    #[inline(always)]
    pub(super) fn take(&mut self, group: &Group, places: &[usize], nominal: &Block) {
        for (lane, place) in places.iter().enumerate() {
            let good = nominal.status[lane] == 0;
            if good {
                self.draw(group, lane, *place, nominal);
            }
            self.tell(*place, good);
        }
    }

    #[inline(always)]
    fn draw(&mut self, group: &Group, lane: usize, place: usize, nominal: &Block) {
        let row = (self.start + place) as u64;
        for drawn in &mut self.drawn {
            drawn.clear();
        }
        let inputs = nominal.inputs.get(lane);
        let candidate = nominal.candidate.get(lane);
        for first in (0..self.uncertainty.draws).step_by(LANES) {
            let count = (self.uncertainty.draws - first).min(LANES);
            let block = &mut *self.block;
            block.inputs.fill(&inputs);
            block.candidate.fill(&candidate);
            block.speeds.fill(&nominal.speeds.get(lane));
            let mut force = [1.0; LANES];
            for (number, (uncertain, spread)) in self.uncertainty.spreads.iter().enumerate() {
                let lanes: &mut Lanes = match uncertain {
                    Uncertain::CuttingForce => &mut force,
                    Uncertain::WearFactor => &mut block.inputs.wear_factor,
                    Uncertain::Feed => &mut block.candidate.feed,
                    Uncertain::Speed => &mut block.candidate.speed,
                    Uncertain::Input(input) => input.lanes(&mut block.inputs),
                };
                for (index, slot) in lanes.iter_mut().enumerate() {
                    let draw = (first + index) as u64;
                    *slot *= self.uncertainty.factor(number, *spread, row, draw);
                }
            }
            stages::follow(group, &force, block);
            let results = block.results();
            for (drawn, wanted) in self.drawn.iter_mut().zip(self.wanted) {
                let lanes = results.get(*wanted).copied().into_iter().flatten();
                drawn.extend(
                    lanes
                        .zip(&block.careful)
                        .take(count)
                        .filter(|(value, careful)| **careful == 0.0 && !value.is_nan())
                        .map(|(value, _)| *value),
                );
            }
            let out = block
                .careful
                .iter()
                .take(count)
                .filter(|flag| **flag != 0.0);
            if let Some(slot) = self.left_out.get_mut(place) {
                *slot += out.count() as u32;
            }
        }
    }

    fn tell(&mut self, place: usize, good: bool) {
        let shares = &self.uncertainty.quantiles;
        let mut columns = self.columns.iter_mut();
        for drawn in &mut self.drawn {
            drawn.sort_unstable_by(f64::total_cmp);
            for share in shares {
                if let Some(slot) = columns.next().and_then(|column| column.get_mut(place)) {
                    *slot = if good {
                        quantile(drawn, *share)
                    } else {
                        f64::NAN
                    };
                }
            }
        }
    }
}
