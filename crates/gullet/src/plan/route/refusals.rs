//! What a route is refused with.

use super::block::SquaredBlock;
use super::face::Face;
use super::order::{Ends, seats};
use super::planned::FINISHING;
use super::vise::TIP_BELOW;
use crate::error::{Code, Error, Problem, Result};
use crate::model::Cutter;
use crate::quantity::{self, Kind, Length, si};

/// The end mill whose flutes reach over an overhanging end.
pub(super) fn side_cutter<'b>(
    block: &'b SquaredBlock,
    height: Length,
    at: &str,
) -> Result<&'b Cutter> {
    let show = |x: Length| quantity::format(Kind::Length, x.value, block.units);
    let reach: Length = height + si::<_, _>(TIP_BELOW);
    let Some(cutter) = block.side_cutter() else {
        return Err(Problem::new(
            Code::Missing,
            "end_cutter",
            "",
            format!("an end mill with flutes of at least {}", show(reach)),
            format!("{at}: an overhanging end is cut by the side of an end mill"),
        )
        .into());
    };
    if cutter.flute_length.value < reach.value * (1.0 - 1e-12) {
        let section = if block.end_cutter.is_some() {
            "end_cutter"
        } else {
            "cutter"
        };
        return Err(Problem::new(
            Code::Inconsistent,
            format!("{section}.flute_length"),
            show(cutter.flute_length),
            format!("at least {}", show(reach)),
            format!(
                "{at}: the flutes must reach over {} and below; give a longer end mill",
                show(height)
            ),
        )
        .into());
    }
    Ok(cutter)
}

/// The same error, saying in which clamping.
pub(super) fn at_clamping(error: Error, at: &str) -> Error {
    let problems = error
        .into_problems()
        .into_iter()
        .map(|mut problem| {
            problem.remedy = format!("{at}: {}", problem.remedy);
            problem
        })
        .collect();
    match Error::unless_empty(problems, ()) {
        Err(error) => error,
        Ok(()) => Problem::new(Code::NoPlan, "stock", "", "", at).into(),
    }
}

/// Each problem once, though several clampings have it.
pub(super) fn distinct(error: Error) -> Error {
    let mut kept: Vec<Problem> = Vec::new();
    let rest = |problem: &Problem| {
        problem
            .remedy
            .split_once(": ")
            .filter(|(at, _)| at.starts_with("clamping "))
            .map_or(problem.remedy.clone(), |(_, rest)| rest.to_owned())
    };
    for problem in error.into_problems() {
        let known = kept.iter().any(|known| {
            (
                known.code,
                &known.parameter,
                &known.value,
                &known.admissible,
            ) == (
                problem.code,
                &problem.parameter,
                &problem.value,
                &problem.admissible,
            ) && rest(known) == rest(&problem)
        });
        if !known {
            kept.push(problem);
        }
    }
    match Error::unless_empty(kept, ()) {
        Err(error) => error,
        Ok(()) => Problem::new(Code::NoPlan, "stock", "", "", "no plan").into(),
    }
}

/// Whether a size measured across a face can be: the part neither under size nor grown, and enough
/// left for the opposite face.
pub(super) fn check_reading(
    block: &SquaredBlock,
    readings: &[(Face, Length)],
    face: Face,
    size: Length,
) -> core::result::Result<(), Problem> {
    let seats = seats(&block.finished, &block.sawn_faces, Ends::OnEnd);
    let index = seats.iter().position(|seat| seat.cut == face);
    let finishes = index.is_some_and(|index| FINISHING.contains(&index));
    let axis = face.axis();
    let finished = axis.of(&block.finished);
    let show = |x: Length| quantity::format(Kind::Length, x.value, block.units);
    let parameter = format!("measured.{}", face.name());
    let inconsistent = |admissible: String, remedy: String| -> core::result::Result<(), Problem> {
        Err(Problem::new(
            Code::Inconsistent,
            parameter.as_str(),
            show(size),
            admissible,
            remedy,
        ))
    };
    if !size.value.is_finite() {
        return Err(Problem::new(
            Code::NotFinite,
            parameter,
            format!("{}", size.value),
            "a size",
            "measure again",
        ));
    }
    let other = readings
        .iter()
        .find(|(known, _)| *known == face.opposite())
        .filter(|_| finishes);
    let largest = other.map_or(axis.of(&block.sawn), |(_, size)| *size);
    if size.value > largest.value * (1.0 + 1e-9) {
        return inconsistent(
            format!("at most {}", show(largest)),
            "milling only takes off: measure again, or correct the size measured before".to_owned(),
        );
    }
    if size.value < (finished - block.tolerance).value * (1.0 - 1e-12) {
        return inconsistent(
            format!("at least {}", show(finished - block.tolerance)),
            format!(
                "the part is under size: {} = {} with {} either way; measure again, else choose another size or another blank",
                axis.name(),
                show(finished),
                show(block.tolerance)
            ),
        );
    }
    let least = finished + block.least_stock(face.opposite());
    if !finishes && size.value < least.value * (1.0 - 1e-12) {
        return inconsistent(
            format!("at least {}", show(least)),
            format!(
                "too little is left to clean up the {} face; measure again, else choose another size or another blank",
                face.opposite().name()
            ),
        );
    }
    Ok(())
}
