//! A block to be squared: what is known before the first clamping, and how its stock is shared out.

use super::face::{Axis, Face};
use super::order::Ends;
use super::vise::Vise;
use crate::error::{Code, Problem};
use crate::model::{Blank, Check, Cutter, CutterForm, Machine, Practice};
use crate::plan::{pass_plan, passes};
use crate::quantity::{self, Kind, Length, MoneyRate, UnitSystem};
use crate::table::Material;

/// A sawn block that is to be milled square on all six faces.
#[derive(Debug, Clone, PartialEq)]
pub struct SquaredBlock {
    /// Title on the cards.
    pub title: String,
    /// Units the cards print in.
    pub units: UnitSystem,
    /// Work material.
    pub material: Material,
    /// Sizes as sawn: the largest that can be measured.
    pub sawn: Blank,
    /// The faces that a saw has left.
    pub sawn_faces: Vec<Face>,
    /// Depth of the saw's marks.
    pub saw_marks: Length,
    /// Sizes wanted.
    pub finished: Blank,
    /// Deviation allowed from each of them, both ways.
    pub tolerance: Length,
    /// Mean roughness wanted of every face, if any.
    pub mean_roughness: Option<Length>,
    /// The cutter of the faces: a face mill or an end mill.
    pub cutter: Cutter,
    /// An end mill for ends that overhang the vise; the cutter of the faces where it is one.
    pub end_cutter: Option<Cutter>,
    /// The machine.
    pub machine: Machine,
    /// The vise with what lies beside it.
    pub vise: Vise,
    /// How the ends are cut; standing where the jaws reach high enough, where not given.
    pub ends: Option<Ends>,
    /// The practice.
    pub practice: Practice,
    /// Machine and operator, money per time; no cost where not given.
    pub rate: Option<MoneyRate>,
    /// Sizes across faces as measured so far: those clampings are done.
    pub measured: Vec<(Face, Length)>,
    /// What the file left out and the reading assumed.
    pub assumptions: Vec<String>,
}

/// Largest money per time: beyond any machine, far below overflow.
const LARGEST_RATE: f64 = 1e4;

impl SquaredBlock {
    /// Every problem of what is given, before anything is planned.
    pub fn problems(&self) -> Vec<Problem> {
        let units = self.units;
        let mut problems = Vec::new();
        let sections = [
            ("cutter", self.cutter.problems_in(units)),
            ("machine", self.machine.problems_in(units)),
            ("hold", self.vise.problems_in(units)),
            ("practice", self.practice.problems_in(units)),
        ];
        for (section, found) in sections.into_iter().chain(
            self.end_cutter
                .iter()
                .map(|cutter| ("end_cutter", cutter.problems_in(units))),
        ) {
            problems.extend(found.into_iter().map(|problem| problem.within(section)));
        }
        problems.extend(self.own_problems());
        if problems.is_empty() {
            problems.extend(self.stock_problems());
        }
        problems
    }

    /// Problems of what belongs to the route alone.
    pub(super) fn own_problems(&self) -> Vec<Problem> {
        let units = self.units;
        let mut problems = Vec::new();
        for (section, sizes) in [("blank", &self.sawn), ("part", &self.finished)] {
            let found = sizes.problems_in(units).into_iter();
            problems.extend(found.map(|problem| problem.within(section)));
        }
        let mut check = Check::new(units);
        check.range(
            "blank.saw_mark_depth",
            Kind::Length,
            self.saw_marks.value,
            0.0,
            true,
            0.02,
            "feel the deepest mark with a fingernail and a rule; 0 mm where no face is sawn",
        );
        check.range(
            "part.tolerance",
            Kind::Length,
            self.tolerance.value,
            0.0,
            false,
            0.01,
            "the deviation the drawing allows, both ways",
        );
        if let Some(roughness) = self.mean_roughness {
            check.range(
                "part.mean_roughness",
                Kind::Length,
                roughness.value,
                0.0,
                false,
                1e-3,
                "leave it out where none is asked for",
            );
        }
        if let Some(rate) = self.rate {
            check.range(
                "rates.machine_rate",
                Kind::MoneyRate,
                rate.value,
                0.0,
                true,
                LARGEST_RATE,
                "money per time of machine and operator",
            );
        }
        problems.extend(check.finish());
        for (index, face) in self.sawn_faces.iter().enumerate() {
            if self.sawn_faces.iter().skip(index + 1).any(|f| f == face) {
                problems.push(Problem::new(
                    Code::Duplicate,
                    "blank.sawn",
                    face.name(),
                    "each face once",
                    "leave one of them out",
                ));
            }
        }
        problems
    }

    /// Sizes whose stock does not clean up both faces.
    pub(super) fn stock_problems(&self) -> Vec<Problem> {
        Axis::ALL
            .iter()
            .filter_map(|axis| self.shares(*axis, axis.faces()).err())
            .collect()
    }

    /// Thinnest stock that leaves a clean face: more than the saw's marks, and a pass that cuts.
    pub(super) fn least_stock(&self, face: Face) -> Length {
        let smallest = self.practice.smallest_depth;
        if self.sawn_faces.contains(&face) && self.saw_marks.value > smallest.value {
            self.saw_marks
        } else {
            smallest
        }
    }

    /// Shares the stock of a size out over its two faces, half each in whole counts of the readout;
    /// a sawn face gets at least what its marks need.
    ///
    /// # Errors
    /// The stock does not clean up both faces.
    pub(super) fn shares(
        &self,
        axis: Axis,
        (first, second): (Face, Face),
    ) -> Result<(Length, Length), Problem> {
        let (sawn, finished) = (axis.of(&self.sawn), axis.of(&self.finished));
        let show = |x: Length| quantity::format(Kind::Length, x.value, self.units);
        let (least_first, least_second) = (self.least_stock(first), self.least_stock(second));
        let least = finished + least_first + least_second;
        let step = pass_plan::step(&self.machine);
        let total = sawn - finished;
        let short = || {
            Problem::new(
                Code::Inconsistent,
                format!("blank.{}", axis.name()),
                show(sawn),
                format!("at least {}", show(least)),
                format!(
                    "part.{} = {}, then {} to clean up the {} face and {} the {} face: saw a larger blank",
                    axis.name(),
                    show(finished),
                    show(least_first),
                    first.name(),
                    show(least_second),
                    second.name()
                ),
            )
        };
        let counts = |length: Length| passes::counts_of(length, step).map(|(counts, _)| counts);
        let (Ok(all), Ok(needed)) = (counts(total), counts(least_first)) else {
            return Err(short());
        };
        // Upwards where the least is no whole number of counts.
        let needed = if passes::length_of(needed, step).value < least_first.value * (1.0 - 1e-9) {
            needed + 1
        } else {
            needed
        };
        let Ok(room) = counts(total - least_second) else {
            return Err(short());
        };
        if needed > room {
            return Err(short());
        }
        let first = passes::length_of((all / 2).clamp(needed, room), step);
        Ok((first, total - first))
    }

    /// The cutter of an end that overhangs the vise.
    pub(super) fn side_cutter(&self) -> Option<&Cutter> {
        self.end_cutter
            .as_ref()
            .or(Some(&self.cutter))
            .filter(|cutter| {
                matches!(
                    cutter.form,
                    CutterForm::Square | CutterForm::CornerRadius(_)
                )
            })
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::super::tests::block;
    use super::*;
    use crate::quantity::si;

    const COUNT: f64 = 0.0005 * 0.0254;

    fn sized(sawn: f64, finished: f64, faces: &[Face], marks: f64) -> SquaredBlock {
        let mut block = block();
        block.sawn.height = si(sawn);
        block.finished.height = si(finished);
        block.sawn_faces = faces.to_vec();
        block.saw_marks = si(marks);
        block
    }

    #[test]
    fn stock_is_halved_in_whole_counts_and_adds_up() {
        let total = 301.0 * COUNT;
        let block = sized(0.03 + total, 0.03, &[], 0.0);
        let (first, second) = block
            .shares(Axis::Height, (Face::Top, Face::Bottom))
            .unwrap();
        assert!((first.value / COUNT - 150.0).abs() < 1e-6);
        assert!((first.value + second.value - total).abs() < 1e-15);
    }

    #[test]
    fn a_sawn_face_gets_what_its_marks_need() {
        let total = 100.0 * COUNT;
        let marks = 70.0 * COUNT;
        let faces = (Face::Top, Face::Bottom);
        let top = sized(0.03 + total, 0.03, &[Face::Top], marks);
        let (first, _) = top.shares(Axis::Height, faces).unwrap();
        assert!(
            (first.value / COUNT - 70.0).abs() < 1e-6,
            "{}",
            first.value / COUNT
        );
        let bottom = sized(0.03 + total, 0.03, &[Face::Bottom], marks);
        let (first, _) = bottom.shares(Axis::Height, faces).unwrap();
        assert!(
            (first.value / COUNT - 30.0).abs() < 1e-6,
            "{}",
            first.value / COUNT
        );
    }

    #[test]
    fn too_little_stock_is_refused_with_the_blank_it_takes() {
        let both = sized(0.031, 0.03, &[Face::Top, Face::Bottom], 0.6e-3);
        let problem = both
            .shares(Axis::Height, (Face::Top, Face::Bottom))
            .unwrap_err();
        assert_eq!(problem.parameter, "blank.height");
        assert!(problem.admissible.contains("1.2283 in"), "{problem}");
        for sawn in [0.03, 0.029, f64::NAN] {
            let block = sized(sawn, 0.03, &[], 0.0);
            assert!(
                block
                    .shares(Axis::Height, (Face::Top, Face::Bottom))
                    .is_err()
            );
        }
    }
}
