//! Splitting stock into passes, in whole counts of the readout.

use crate::error::{Code, Problem, Result};
use crate::quantity::{self, Kind, Length, UnitSystem, si};

use super::job::Strategy;

/// The counts a split works with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Counts {
    /// Stock to remove.
    pub total: u64,
    /// Stock the finishing pass should take.
    pub finish: u64,
    /// Thinnest pass that still cuts.
    pub smallest: u64,
    /// Deepest roughing pass that every limit allows.
    pub largest_rough: u64,
    /// Deepest finishing pass that every limit allows.
    pub largest_finish: u64,
}

/// Depths of the roughing passes and of the finishing pass, in counts; together the total.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Split {
    /// Roughing passes, in order.
    pub roughing: Vec<u64>,
    /// The finishing pass.
    pub finishing: u64,
}

/// Most counts that are split: beyond any stock on any readout.
const MOST_COUNTS: u64 = 1_000_000_000_000;

/// Furthest from the wanted finishing pass that a split is looked for.
const FURTHEST: u64 = 10_000;

/// Most passes of a plan: more is a mistake in the job, not a plan.
const MOST_PASSES: u64 = 10_000;

/// Splits the stock; no pass is thinner than the smallest, none deeper than the largest.
///
/// # Errors
/// `NoPlan` where no such split exists.
pub fn split(counts: Counts, strategy: Strategy) -> Result<Split> {
    let Counts {
        total,
        finish,
        smallest,
        largest_rough,
        largest_finish,
    } = counts;
    let smallest = smallest.max(1);
    if total > MOST_COUNTS {
        return Err(no_plan(
            "stock",
            format!("{total} counts"),
            format!("at most {MOST_COUNTS} counts of the readout"),
            "check the stock and the resolution of the readout",
        ));
    }
    let (largest_rough, largest_finish) = (largest_rough.min(total), largest_finish.min(total));
    if total < smallest {
        return Err(no_plan(
            "stock",
            format!("{total} counts"),
            format!("at least {smallest} counts of the readout"),
            "a thinner pass rubs instead of cutting: leave it, or lower the practice's smallest_depth",
        ));
    }
    if largest_finish < smallest {
        return Err(no_plan(
            "finishing_depth",
            format!("{largest_finish} counts"),
            format!("at least {smallest} counts of the readout"),
            "the limits leave no finishing pass that still cuts: see the binding limit",
        ));
    }
    let finish = finish.clamp(smallest, largest_finish);
    // All in one finishing pass where what is left over could not be roughed.
    if total <= finish {
        return Ok(Split {
            roughing: Vec::new(),
            finishing: total,
        });
    }
    // Where nothing can be roughed, a deeper finishing pass may still take it all.
    let all_in_one = (total <= largest_finish).then(|| Split {
        roughing: Vec::new(),
        finishing: total,
    });
    if largest_rough < smallest {
        return all_in_one.ok_or_else(|| {
            no_plan(
                "roughing_depth",
                format!("{largest_rough} counts"),
                format!("at least {smallest} counts of the readout"),
                "the limits leave no roughing pass that still cuts: see the binding limit",
            )
        });
    }
    // The wanted allowance first, then the nearest ones that leave a whole number of good passes.
    let reach = (largest_finish - smallest).min(FURTHEST);
    (0..=reach)
        .flat_map(|away| [finish.checked_sub(away), finish.checked_add(away)])
        .flatten()
        .filter(|finishing| (smallest..=largest_finish).contains(finishing) && *finishing < total)
        .find_map(|finishing| {
            let roughing = rough(total - finishing, largest_rough, smallest, strategy)?;
            Some(Split {
                roughing,
                finishing,
            })
        })
        .or(all_in_one)
        .ok_or_else(|| {
            no_plan(
                "stock",
                format!("{total} counts"),
                format!(
                    "passes of {smallest} to {largest_rough} counts and a last one of {smallest} to {largest_finish}"
                ),
                "no whole number of passes fits between the thinnest and the deepest",
            )
        })
}

/// Roughing passes from the smallest to the largest depth; none where no number of them fits.
fn rough(stock: u64, largest: u64, smallest: u64, strategy: Strategy) -> Option<Vec<u64>> {
    let number = stock.div_ceil(largest);
    if number > MOST_PASSES || stock < number * smallest {
        return None;
    }
    let depths = match strategy {
        Strategy::Even => even(stock, number),
        Strategy::DeepestFirst => deepest_first(stock, largest, smallest),
    };
    if depths.iter().all(|depth| *depth >= smallest) {
        Some(depths)
    } else {
        Some(even(stock, number))
    }
}

/// Equal depths to one count, the deeper ones first.
fn even(rough: u64, number: u64) -> Vec<u64> {
    let depth = rough / number;
    let deeper = rough % number;
    (0..number)
        .map(|index| depth + u64::from(index < deeper))
        .collect()
}

/// Full depths first; a rest too thin to cut is made up by the pass before it.
fn deepest_first(rough: u64, largest: u64, smallest: u64) -> Vec<u64> {
    let full = rough / largest;
    let rest = rough % largest;
    let mut depths: Vec<u64> = (0..full).map(|_| largest).collect();
    if rest == 0 {
        return depths;
    }
    if rest < smallest
        && let Some(last) = depths.last_mut()
    {
        let missing = (smallest - rest).min(*last);
        *last -= missing;
        depths.push(rest + missing);
        return depths;
    }
    depths.push(rest);
    depths
}

fn no_plan(parameter: &str, value: String, admissible: String, remedy: &str) -> crate::Error {
    Problem::new(Code::NoPlan, parameter, value, admissible, remedy).into()
}

/// A length in whole counts of a resolution, downwards, and whether nothing was lost.
///
/// A quotient within 1e-6 below a whole number counts as it: 2.54 mm is 200 counts of 0.0005 in.
pub fn counts_of(length: Length, resolution: Length) -> Result<(u64, bool)> {
    let quotient = (length / resolution).value;
    if !(0.0..=1e12).contains(&quotient) {
        let code = if quotient.is_nan() || length.value.is_infinite() {
            Code::NotFinite
        } else {
            Code::OutOfRange
        };
        return Err(Problem::new(
            code,
            "stock",
            quantity::format(Kind::Length, length.value, UnitSystem::Metric),
            format!(
                "at least 0 mm, at most 1e12 counts of {}",
                quantity::format(Kind::Length, resolution.value, UnitSystem::Metric)
            ),
            "check the stock and the resolution of the readout",
        )
        .into());
    }
    let near = quotient.round();
    let whole = if (quotient - near).abs() <= 1e-6 {
        near
    } else {
        quotient.floor()
    };
    let exact = (quotient - near).abs() <= 1e-6;
    // In range: checked above.
    Ok((whole as u64, exact))
}

/// The length of whole counts.
pub fn length_of(counts: u64, resolution: Length) -> Length {
    si(counts as f64 * resolution.value)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    fn counts(total: u64) -> Counts {
        Counts {
            total,
            finish: 20,
            smallest: 10,
            largest_rough: 200,
            largest_finish: 40,
        }
    }

    #[test]
    fn even_split_adds_up_and_differs_by_one_count() {
        let split = split(counts(751), Strategy::Even).unwrap();
        assert_eq!(split.roughing, [183, 183, 183, 182]);
        assert_eq!(split.finishing, 20);
    }

    #[test]
    fn deepest_first_leaves_no_rubbing_rest() {
        let split = split(counts(20 + 205), Strategy::DeepestFirst).unwrap();
        assert_eq!(split.roughing, [195, 10]);
    }

    #[test]
    fn little_stock_is_one_pass_or_two_that_cut() {
        for strategy in [Strategy::Even, Strategy::DeepestFirst] {
            assert_eq!(split(counts(15), strategy).unwrap().finishing, 15);
            let two = split(counts(25), strategy).unwrap();
            assert_eq!((two.roughing.as_slice(), two.finishing), (&[10][..], 15));
            assert!(split(counts(9), strategy).is_err());
        }
    }

    #[test]
    fn counts_are_whole() {
        let half_thou = si(0.0005 * 0.0254);
        assert_eq!(counts_of(si(2.54e-3), half_thou).unwrap(), (200, true));
        assert_eq!(counts_of(si(2.545e-3), half_thou).unwrap(), (200, false));
        assert!(counts_of(si(-1.0), half_thou).is_err());
        assert!(counts_of(si(f64::NAN), half_thou).is_err());
    }
}
