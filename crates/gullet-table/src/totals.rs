//! Totals over batches that come one after the other.

use crate::run::Answer;
use crate::summary::Summary;
use arrow_array::RecordBatch;
use gullet::Problem;

/// Cells that are kept.
const MOST_KEPT: usize = 100;

/// Totals over batches that come one after the other, and some of the cells that mean nothing.
///
/// ```
/// let totals = gullet_table::Totals::default();
/// assert_eq!((totals.rows(), totals.told().len()), (0, 0));
/// ```
#[derive(Debug, Clone, Default)]
pub struct Totals {
    summary: Summary,
    told: Vec<(u64, Problem)>,
}

impl Totals {
    /// Adds up a batch and gives its rows.
    pub fn add(&mut self, answer: Answer) -> RecordBatch {
        let first = self.rows();
        let left = MOST_KEPT.saturating_sub(self.told.len());
        let told = answer.problems.into_iter().take(left);
        self.told
            .extend(told.map(|told| (first + told.row as u64, told.problem)));
        self.summary.add(&answer.summary);
        answer.batch
    }

    /// Rows of all batches: the number of the next one's first row.
    pub fn rows(&self) -> u64 {
        self.summary.rows()
    }

    /// The sums.
    pub fn summary(&self) -> &Summary {
        &self.summary
    }

    /// The first hundred cells that mean nothing, by the number of their row over all batches.
    pub fn told(&self) -> &[(u64, Problem)] {
        &self.told
    }
}
