//! Rows that are milling cuts, which may differ in operation, cutter and all else.

use crate::base::{CORNER_RADIUS, Defaults, FACE_MILL, lacks, needs, place_of};
use crate::choice::{Lists, Own};
use crate::found::Found;
use crate::options::Columns;
use crate::plan::NumberSource;
use crate::start::{Covered, Start};
use crate::subject::{Energy, Given, Marks, Places, Read, Subject, Values};
use crate::takes::{Number, Pick};
use gullet::error::Result;
use gullet::model::{Direction, PassKind};
use gullet::operation::Operation;
use gullet::operation::process::Process;
use gullet::quantity::si;
use gullet::study::{
    Choice, Execution, Input, MillingStudy, NONE, Quantiles, ResultField, Results, Rows,
    Uncertainty,
};
use gullet::table::LibraryRef;

pub(crate) struct Milling<'a> {
    study: MillingStudy<'a>,
    covered: Covered,
    /// Of an end mill and of a face mill.
    helix: [f64; 2],
    /// Places of the base's form and operation.
    form: usize,
    operation: usize,
    /// Shanks are as thick as the cutter.
    shank_follows: bool,
    /// The helix angle is that of the row's form.
    helix_follows: bool,
    /// Rows without a direction get that of their practice.
    direction_follows: bool,
    /// Forms with a size that neither a column nor the base gives.
    without_size: Vec<usize>,
}

impl<'a> Milling<'a> {
    /// What rows have in common, and the lists that their names pick from.
    pub(crate) fn begin(
        start: Start,
        library: &LibraryRef<'a>,
    ) -> Result<(Milling<'a>, Lists<'a>)> {
        let covered = start.covered();
        let defaults = Defaults::all()?;
        let helix = defaults.helix;
        let own = start.lay_over(defaults);
        let lists = Lists::new(
            Own {
                materials: &own.materials,
                machines: &own.machines,
                practices: &own.practices,
            },
            library.clone(),
        );
        let operation = Operation::ALL
            .iter()
            .position(|operation| *operation == own.pass.operation);
        let milling = Milling {
            covered,
            helix,
            form: place_of(own.cutter.form),
            operation: operation.unwrap_or_default(),
            shank_follows: false,
            helix_follows: false,
            direction_follows: false,
            without_size: Vec::new(),
            study: MillingStudy::over_tables(library.clone(), own),
        };
        Ok((milling, lists))
    }

    /// The form of each row.
    fn forms<'r>(&self, read: &'r Read) -> impl Fn(usize) -> usize + use<'r> {
        let (places, own) = (read.chosen(Choice::CutterForm), self.form);
        move |row| places.map_or(own, |places| places.at(row))
    }

    /// The operation of each row.
    fn operations<'r>(&self, read: &'r Read) -> impl Fn(usize) -> Operation + use<'r> {
        let (places, own) = (read.chosen(Choice::Operation), self.operation);
        move |row| {
            let place = places.map_or(own, |places| places.at(row));
            let found = Operation::ALL.get(place).copied();
            found.unwrap_or(Operation::SideMilling)
        }
    }

    /// Fills in what job files have a default for.
    fn defaults(&mut self, found: &mut Found, assumptions: &mut Vec<String>) {
        let form = found.constant(Choice::CutterForm);
        let face = form == Some(FACE_MILL as u32);
        let covered = self.covered;
        let gives = |input: Input| covered.input(input) || found.gives(input.name());
        let helix_given = gives(Input::CutterHelixAngle);
        self.shank_follows = !gives(Input::CutterShankDiameter) && !face;
        if self.shank_follows {
            assumptions.push("cutter_shank_diameter: the cutter's diameter".to_owned());
        }
        if !helix_given {
            self.helix_follows = form.is_none();
            if form.is_some() {
                let angle = NumberSource::Constant(self.helix[usize::from(face)]);
                let place = Input::CutterHelixAngle as usize;
                found.numbers.push((place, angle));
            }
            assumptions.push("cutter_helix_angle: 30 deg, of a face mill 0 deg".to_owned());
        }
        let choice = |choice: Choice| (choice.name(), covered.choice(choice));
        let friction = Input::JawFriction;
        for ((name, covered), told) in [
            ((friction.name(), covered.input(friction)), "0.15"),
            (choice(Choice::Practice), "training"),
            (choice(Choice::Pass), "roughing"),
            (choice(Choice::FeedAcrossJaws), "false"),
        ] {
            if !covered && !found.gives(name) {
                assumptions.push(format!("{name}: {told}"));
            }
        }
        let slot = Operation::ALL.get(found.constant(Choice::Operation).unwrap_or(0) as usize);
        let offset = covered.input(Input::Offset) || found.gives(Input::Offset.name());
        if !offset && slot != Some(&Operation::Slotting) {
            assumptions.push("offset: 0 mm".to_owned());
        }
    }

    /// Tells what every row needs and nobody gives.
    fn missing(&self, found: &mut Found) {
        let base = self.study.base();
        let form = found
            .constant(Choice::CutterForm)
            .map(|place| place as usize)
            .or((!found.gives(Choice::CutterForm.name())).then_some(self.form));
        let operation = match found.constant(Choice::Operation) {
            Some(place) => Operation::ALL.get(place as usize).copied(),
            None if found.gives(Choice::Operation.name()) => None,
            None => Some(base.pass.operation),
        };
        let always = |input: Input| match operation {
            // Where operations differ by row, a depth that some of them need is asked for.
            None => {
                input != Input::Offset && needs(input, Operation::SideMilling, form.unwrap_or(0))
            }
            Some(operation) => needs(input, operation, form.unwrap_or(0)),
        };
        let without_base = |input: Input| match input {
            Input::Offset | Input::CutterHelixAngle | Input::JawFriction => false,
            Input::CutterShankDiameter => !self.shank_follows,
            _ => true,
        };
        let of_own_form = form == Some(self.form);
        let none = |input: Input| {
            if self.covered.input(input) {
                lacks(base, input)
                    || (matches!(input, Input::CutterCornerRadius | Input::CutterEdgeAngle)
                        && !of_own_form)
            } else {
                without_base(input)
            }
        };
        let numbers = found.takes.numbers().to_vec();
        for (input, number) in Input::ALL.iter().zip(&numbers) {
            if none(*input) && always(*input) {
                found.missing_number(number);
            }
        }
        for choice in [
            Choice::Material,
            Choice::Machine,
            Choice::Operation,
            Choice::CutterMaterial,
            Choice::CutterForm,
        ] {
            if !self.covered.choice(choice) {
                found.missing_choice(&Pick::Of(choice));
            }
        }
    }

    /// The helix angle of each row's form.
    fn angles(&self, read: &Read) -> Values {
        let [end, face] = self.helix;
        let forms = self.forms(read);
        let angle = |row| match forms(row) {
            FACE_MILL => face,
            _ => end,
        };
        Values::Rows((0..read.count).map(angle).collect())
    }

    /// Marks the rows whose form lacks a size.
    fn lack_sizes(&self, read: &Read, marks: &mut Marks) {
        let forms = self.forms(read);
        for row in 0..read.count {
            let form = forms(row);
            if self.without_size.contains(&form) || (self.shank_follows && form == FACE_MILL) {
                marks.missing(row);
            }
        }
    }

    /// The sizes and angles that follow from the rows' forms.
    fn follow_form(&self, read: &mut Read, marks: &mut Marks) {
        self.lack_sizes(read, marks);
        if self.helix_follows {
            let place = Input::CutterHelixAngle as usize;
            read.numbers.push((place, self.angles(read)));
        }
        let diameter = read.number(Input::CutterDiameter as usize).cloned();
        if let (true, Some(diameter)) = (self.shank_follows, diameter) {
            let place = Input::CutterShankDiameter as usize;
            read.numbers.push((place, diameter));
        }
    }

    /// The direction that the practice of each row asks for on the row's machine.
    fn directions(&self, read: &Read) -> Places {
        let study = &self.study;
        let base = study.base();
        let first = Places::Constant(0);
        let kind = PassKind::ALL
            .iter()
            .position(|kind| *kind == base.pass.kind);
        let kind = Places::Constant(kind.unwrap_or(0) as u32);
        let practices = read.chosen(Choice::Practice).unwrap_or(&first);
        let machines = read.chosen(Choice::Machine).unwrap_or(&first);
        let kinds = read.chosen(Choice::Pass).unwrap_or(&kind);
        let axial = read.number(Input::AxialDepth as usize);
        let radial = read.number(Input::RadialDepth as usize);
        let operations = self.operations(read);
        let mut pass = base.pass;
        let mut direction = |row: usize| {
            let practice = study.practice(practices.at(row))?;
            let machine = study.machine(machines.at(row))?;
            let kind = PassKind::ALL.get(kinds.at(row))?;
            pass.operation = operations(row);
            if let Some(depths) = axial {
                pass.axial_depth = si(depths.at(row));
            }
            if let Some(depths) = radial {
                pass.radial_depth = si(depths.at(row));
            }
            let found = practice.direction_with_backlash(*kind, pass.depth(), machine.backlash);
            Direction::ALL
                .iter()
                .position(|direction| *direction == found)
        };
        let place = |row| direction(row).unwrap_or(0) as u32;
        Places::of((0..read.count).map(place).collect())
    }
}

/// The rows as the core takes them.
fn rows<'r>(given: &Given<'r>) -> Rows<'r> {
    let columns = given.read.columns();
    let input = |(place, column)| Some((Input::ALL.get(place).copied()?, column));
    Rows {
        count: given.read.count,
        numbers: columns.filter_map(input).collect(),
        choices: given.read.entries().collect(),
        missing: Some(given.left_out),
    }
}

impl Subject for Milling<'_> {
    fn fields(&self) -> Vec<ResultField> {
        ResultField::all()
    }

    fn usual(&self) -> Vec<&'static str> {
        Columns::USUAL.to_vec()
    }

    fn process(&self) -> Option<&'static Process> {
        None
    }

    fn energy(&self) -> Option<Energy> {
        Some(Energy {
            power: "motor_power",
            whose: "of the spindle motor at full width of cut",
        })
    }

    fn settle(&mut self, found: &mut Found, assumptions: &mut Vec<String>) {
        self.defaults(found, assumptions);
        self.missing(found);
        self.direction_follows = !found.gives(Choice::Direction.name());
        for (input, form) in [
            (Input::CutterCornerRadius, CORNER_RADIUS),
            (Input::CutterEdgeAngle, FACE_MILL),
        ] {
            if self.form != form && !found.gives(input.name()) {
                self.without_size.push(form);
            }
        }
    }

    fn absent(&self, number: &Number, row: usize, read: &Read) -> (f64, bool) {
        let stands_in = if number.optional { NONE } else { 0.0 };
        let needed = Input::ALL
            .get(number.place)
            .is_some_and(|input| needs(*input, self.operations(read)(row), self.forms(read)(row)));
        (stands_in, needed)
    }

    fn complete(&self, read: &mut Read, marks: &mut Marks) {
        self.follow_form(read, marks);
        if self.direction_follows {
            let directions = self.directions(read);
            read.choices.push((Pick::Of(Choice::Direction), directions));
        }
    }

    fn run(&self, given: &Given, wanted: &[usize], execution: Execution) -> Result<Results> {
        self.study.run(&rows(given), wanted, execution)
    }

    fn run_uncertain(
        &self,
        given: &Given,
        wanted: &[usize],
        uncertainty: &Uncertainty,
        execution: Execution,
    ) -> Result<(Results, Quantiles)> {
        self.study
            .run_uncertain(&rows(given), wanted, uncertainty, execution)
    }
}
