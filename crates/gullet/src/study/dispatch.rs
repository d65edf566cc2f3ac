//! How a study runs: on which vector instructions and on how many threads.
//!
//! A piece of work is ordinary scalar code over blocks of rows. It is compiled once for each
//! instruction set and the set is chosen at run time; since no operation may be contracted or
//! reordered, each gives the same bits.

use crate::error::{Code, Problem, Result};
use std::num::NonZeroUsize;
use std::sync::{Mutex, OnceLock, PoisonError};
use std::thread;

/// A set of vector instructions.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum InstructionSet {
    /// What every processor of the target has: SSE2 on x86-64, NEON on 64-bit Arm.
    Baseline,
    /// AVX2 on x86-64: four doubles at a time.
    Avx2,
    /// AVX-512 (F, BW, CD, DQ, VL) on x86-64: eight doubles at a time.
    Avx512,
}

/// A piece of work that is compiled for each instruction set.
///
/// `run` and all that it calls in its loops must be `#[inline(always)]`: code that is not inlined
/// is compiled for the baseline only.
pub(crate) trait Work {
    /// What the work gives.
    type Output;

    /// Does the work.
    fn run(self) -> Self::Output;

    /// Does the work with a set of instructions, or with the widest below it that it is compiled for.
    fn on(self, set: InstructionSet) -> Self::Output
    where
        Self: Sized,
    {
        set.run(self)
    }
}

impl InstructionSet {
    /// Every set, the narrowest first.
    const ALL: [InstructionSet; 3] = [
        InstructionSet::Baseline,
        InstructionSet::Avx2,
        InstructionSet::Avx512,
    ];

    /// The widest set of this processor.
    ///
    /// ```
    /// use gullet::study::InstructionSet;
    /// assert_eq!(InstructionSet::available().last(), Some(&InstructionSet::best()));
    /// ```
    pub fn best() -> InstructionSet {
        InstructionSet::ALL
            .into_iter()
            .rfind(|set| set.is_available())
            .unwrap_or(InstructionSet::Baseline)
    }

    /// The sets of this processor, the narrowest first; never empty.
    ///
    /// ```
    /// use gullet::study::InstructionSet;
    /// assert!(InstructionSet::available().contains(&InstructionSet::Baseline));
    /// ```
    pub fn available() -> Vec<InstructionSet> {
        InstructionSet::ALL
            .into_iter()
            .filter(|set| set.is_available())
            .collect()
    }

    /// Name as the trade writes it.
    pub fn name(self) -> &'static str {
        match self {
            InstructionSet::Baseline => "baseline",
            InstructionSet::Avx2 => "AVX2",
            InstructionSet::Avx512 => "AVX-512",
        }
    }

    /// Whether this processor has the set.
    #[cfg(target_arch = "x86_64")]
    pub fn is_available(self) -> bool {
        match self {
            InstructionSet::Baseline => true,
            InstructionSet::Avx2 => pulp::x86::V3::is_available(),
            InstructionSet::Avx512 => pulp::x86::V4::is_available(),
        }
    }

    /// Whether this processor has the set.
    #[cfg(not(target_arch = "x86_64"))]
    pub fn is_available(self) -> bool {
        self == InstructionSet::Baseline
    }

    /// Does a piece of work with this set, or with the widest below it that the processor has.
    #[cfg(target_arch = "x86_64")]
    pub(crate) fn run<W: Work>(self, work: W) -> W::Output {
        if self == InstructionSet::Avx512
            && let Some(set) = pulp::x86::V4::try_new()
        {
            return set.vectorize(Call(work));
        }
        if self >= InstructionSet::Avx2
            && let Some(set) = pulp::x86::V3::try_new()
        {
            return set.vectorize(Call(work));
        }
        work.run()
    }

    /// As [`InstructionSet::run`], without the widest set: for work whose speed does not pay for a third
    /// copy of its code.
    #[cfg(target_arch = "x86_64")]
    pub(crate) fn run_narrow<W: Work>(self, work: W) -> W::Output {
        if self >= InstructionSet::Avx2
            && let Some(set) = pulp::x86::V3::try_new()
        {
            return set.vectorize(Call(work));
        }
        work.run()
    }

    /// Does a piece of work.
    #[cfg(not(target_arch = "x86_64"))]
    pub(crate) fn run_narrow<W: Work>(self, work: W) -> W::Output {
        work.run()
    }

    /// Does a piece of work.
    #[cfg(not(target_arch = "x86_64"))]
    pub(crate) fn run<W: Work>(self, work: W) -> W::Output {
        work.run()
    }
}

/// A piece of work as the call that `pulp` compiles for a set.
#[cfg(target_arch = "x86_64")]
struct Call<W>(W);

#[cfg(target_arch = "x86_64")]
impl<W: Work> pulp::NullaryFnOnce for Call<W> {
    type Output = W::Output;

    #[inline(always)]
    fn call(self) -> W::Output {
        self.0.run()
    }
}

/// How a study runs. Neither choice changes a bit of the results.
///
/// ```
/// use gullet::study::{Execution, InstructionSet};
/// let one = Execution::default().with_threads(1)?;
/// assert_eq!(one.threads(), 1);
/// assert_eq!(one.instruction_set(), InstructionSet::best());
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Execution {
    instruction_set: InstructionSet,
    threads: NonZeroUsize,
}

/// Processors that the program may use. The system is asked once, since that takes longer than a
/// thousand rows.
fn processors() -> NonZeroUsize {
    static COUNT: OnceLock<NonZeroUsize> = OnceLock::new();
    *COUNT.get_or_init(|| thread::available_parallelism().unwrap_or(NonZeroUsize::MIN))
}

impl Default for Execution {
    /// The widest set of the processor and a thread for each processor that the program may use at its
    /// first study.
    fn default() -> Execution {
        Execution {
            instruction_set: InstructionSet::best(),
            threads: processors(),
        }
    }
}

impl Execution {
    /// The same with at most this many threads, the caller's included.
    ///
    /// # Errors
    /// `OutOfRange` for 0.
    pub fn with_threads(self, threads: usize) -> Result<Execution> {
        let threads = NonZeroUsize::new(threads).ok_or_else(|| {
            Problem::new(
                Code::OutOfRange,
                "threads",
                "0",
                "at least 1",
                "give the number of threads, or leave it out to use every processor",
            )
        })?;
        Ok(Execution { threads, ..self })
    }

    /// The same with another instruction set; in place of one that the processor lacks runs the
    /// widest below it.
    pub fn with_instruction_set(self, instruction_set: InstructionSet) -> Execution {
        Execution {
            instruction_set,
            ..self
        }
    }

    /// Most threads that work at the same time, the caller's included.
    pub fn threads(self) -> usize {
        self.threads.get()
    }

    /// The vector instructions.
    pub fn instruction_set(self) -> InstructionSet {
        self.instruction_set
    }

    /// Does the work of every part, each on one of the threads; returns when all are done.
    ///
    /// `count` is how many parts there are. A thread that the system refuses is done without.
    pub(crate) fn for_each<P, W>(
        self,
        count: usize,
        parts: impl Iterator<Item = P> + Send,
        work: impl Fn(P) -> W + Sync,
    ) where
        W: Work<Output = ()>,
    {
        let parts = Mutex::new(parts);
        let next = || parts.lock().unwrap_or_else(PoisonError::into_inner).next();
        let take_parts = || {
            while let Some(part) = next() {
                work(part).on(self.instruction_set);
            }
        };
        let helpers = self.threads.get().min(count).saturating_sub(1);
        if helpers == 0 {
            return take_parts();
        }
        thread::scope(|scope| {
            for _ in 0..helpers {
                if thread::Builder::new()
                    .name("gullet-study".to_owned())
                    .spawn_scoped(scope, take_parts)
                    .is_err()
                {
                    break;
                }
            }
            take_parts();
        });
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::elementary::{asin, cos, exp, ln, pow};

    /// Every kind of operation the elementary functions are made of.
    struct Mixture<'a>(&'a [f64], &'a mut [f64]);

    impl Work for Mixture<'_> {
        type Output = ();

        #[inline(always)]
        fn run(self) {
            for (x, result) in self.0.iter().zip(self.1) {
                let share = *x / 100.0;
                *result = pow(*x, -share) * exp(share) + asin(share) / ln(1.5 + x) + cos(*x)
                    - (x * share - x.sqrt());
            }
        }
    }

    fn arguments(rows: usize) -> Vec<f64> {
        (0..rows)
            .map(|i| 100.0 * (i as f64 * 0.618_033_988_749_895).fract())
            .collect()
    }

    fn bits(results: &[f64]) -> Vec<u64> {
        results.iter().map(|result| result.to_bits()).collect()
    }

    #[test]
    fn every_instruction_set_gives_the_same_bits() {
        let arguments = arguments(10_007);
        let mut expected = vec![0.0; arguments.len()];
        for (x, result) in arguments.iter().zip(&mut expected) {
            Mixture(std::slice::from_ref(x), std::slice::from_mut(result)).run();
        }
        assert!(expected.iter().all(|result| result.is_finite()));
        for set in InstructionSet::ALL {
            let mut results = vec![0.0; arguments.len()];
            set.run(Mixture(&arguments, &mut results));
            assert_eq!(bits(&results), bits(&expected), "{}", set.name());
        }
    }

    #[test]
    fn every_part_is_done_once_on_any_number_of_threads() {
        let arguments = arguments(5_003);
        let mut expected = vec![0.0; arguments.len()];
        InstructionSet::Baseline.run(Mixture(&arguments, &mut expected));
        for threads in [1, 2, 3, 16] {
            for rows in [1, 7, 256, 5_003, 9_999] {
                let mut results = vec![f64::NAN; arguments.len()];
                let parts = arguments.chunks(rows).zip(results.chunks_mut(rows));
                Execution::default()
                    .with_threads(threads)
                    .unwrap()
                    .for_each(
                        arguments.len().div_ceil(rows),
                        parts,
                        |(arguments, results)| Mixture(arguments, results),
                    );
                assert_eq!(
                    bits(&results),
                    bits(&expected),
                    "{threads} threads, {rows} rows"
                );
            }
        }
    }

    #[test]
    fn no_threads_is_an_error_and_no_parts_is_none() {
        let error = Execution::default().with_threads(0).unwrap_err();
        assert_eq!(error.code(), Code::OutOfRange);
        Execution::default().for_each(0, std::iter::empty::<()>(), |()| Mixture(&[], &mut []));
    }

    #[test]
    fn the_sets_of_the_processor_start_with_the_baseline() {
        let sets = InstructionSet::available();
        assert_eq!(sets.first(), Some(&InstructionSet::Baseline));
        assert!(sets.is_sorted());
    }
}
