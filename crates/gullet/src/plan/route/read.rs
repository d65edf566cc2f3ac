//! Reads a route file.

use super::block::SquaredBlock;
use super::face::Face;
use super::sections::{
    EndCutterKeys, MeasuredKeys, PartKeys, RateKeys, RouteKeys, SECTIONS, SawnKeys, ViseKeys,
};
use super::vise::Vise;
use crate::error::{Code, Problem, Result};
use crate::model::Blank;
use crate::plan::document::{self, Node, Reader};
use crate::plan::job::{self, CutterKeys};
use crate::quantity::{Length, UnitSystem, si};
use crate::table::Library;

impl SquaredBlock {
    /// Reads a route file in TOML; `library` holds the materials.
    ///
    /// # Errors
    /// As [`Job::from_toml`](crate::plan::Job::from_toml): every problem at once, each with its path
    /// and its line.
    ///
    /// ```
    /// use gullet::{plan::{Face, Route, SquaredBlock}, quantity::si, table::Library};
    /// let file = r#"
    ///     route = "squared-block"
    ///     material.id = "1018cd"
    ///     machine.base = "manual-knee-mill"
    ///     blank = { length = "84 mm", width = "53 mm", height = "29 mm", sawn = ["left", "right"] }
    ///     part = { length = "80 mm", width = "50 mm", height = "26 mm", tolerance = "0.1 mm" }
    ///     [cutter]
    ///     form = "square"
    ///     material = "HSS"
    ///     diameter = "20 mm"
    ///     teeth = 4
    ///     flute_length = "38 mm"
    ///     stick_out = "45 mm"
    ///     [hold]
    ///     clamping_force = "14 kN"
    ///     jaw_height = "40 mm"
    ///     parallels = ["10 mm", "18 mm", "22 mm", "26 mm"]
    ///     round_bar = "12 mm"
    /// "#;
    /// let library = Library::builtin();
    /// let route = Route::new(SquaredBlock::from_toml(file, library)?, library)?;
    /// let order: Vec<_> = route.clampings.iter().map(|c| c.seat.cut.name()).collect();
    /// assert_eq!(order, ["top", "front", "back", "bottom", "left", "right"]);
    ///
    /// // The top came out lower than planned: the bottom takes less.
    /// let rest = route.measured(Face::Top, si(0.0272), library)?;
    /// assert_eq!(rest.clampings.len(), 5);
    /// assert!((rest.clampings[2].stock.value - 0.0012).abs() < 1e-12);
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn from_toml(text: &str, library: &Library) -> Result<SquaredBlock> {
        block(&Node::from_toml(text)?, library)
    }

    /// Reads a route file in JSON, with the same sections and keys as in TOML.
    ///
    /// # Errors
    /// Those of [`SquaredBlock::from_toml`], without lines but for faults of form.
    pub fn from_json(text: &str, library: &Library) -> Result<SquaredBlock> {
        block(&Node::from_json(text)?, library)
    }
}

/// The JSON Schema (draft 2020-12) of a route file, as text that ends in a line break.
pub fn route_schema() -> String {
    let sections: Vec<_> = SECTIONS.iter().map(|section| section()).collect();
    let schema = document::schema("urn:gullet:route", "Route file of gullet", &sections);
    format!("{schema:#}\n")
}

/// Every key of a route file with its meaning, as Markdown.
pub fn route_reference() -> String {
    let sections: Vec<_> = SECTIONS.iter().map(|section| section()).collect();
    document::reference(&sections)
}

/// Reads a block to be squared.
pub(in crate::plan) fn block(root: &Node, library: &Library) -> Result<SquaredBlock> {
    let mut reader = Reader::open(root, SECTIONS)?;
    let head: RouteKeys = reader.section();
    let units = head.units.unwrap_or(UnitSystem::Metric);
    let material = job::material(&mut reader, library);
    let sawn_keys: SawnKeys = reader.section();
    let part: PartKeys = reader.section();
    let cutter_keys: CutterKeys = reader.section();
    let cutter = job::cutter_of(&mut reader, units, "cutter", cutter_keys);
    let end_cutter = reader.gives("end_cutter").then(|| {
        let keys: EndCutterKeys = reader.section();
        job::cutter_of(&mut reader, units, "end_cutter", keys.0)
    });
    let machine = job::machine(&mut reader, units);
    let vise: ViseKeys = reader.section();
    let practice = job::practice(&mut reader, units);
    let rates: RateKeys = reader.section();
    let measured: MeasuredKeys = reader.section();

    let ends = vise.own.ends;
    let vise = Vise {
        hold: job::hold_of(&mut reader, units, vise.hold),
        jaw_opening: vise.own.jaw_opening,
        jaw_width: vise.own.jaw_width,
        round_bar: vise.own.round_bar,
    };
    let title = head.title.unwrap_or_else(|| {
        let material = material.as_ref().map_or("", |material| &material.name);
        format!("squared block of {material}")
    });
    // Where a size is missing that was reported; the stand-ins agree with one another.
    let size = |given: Option<Length>, stand_in: f64| given.unwrap_or(si(stand_in));
    let sawn = Blank {
        length: size(sawn_keys.length, 1.0),
        width: size(sawn_keys.width, 1.0),
        height: size(sawn_keys.height, 1.0),
    };
    let finished = Blank {
        length: size(part.length, 0.5),
        width: size(part.width, 0.5),
        height: size(part.height, 0.5),
    };
    let complete = [
        sawn_keys.length,
        sawn_keys.width,
        sawn_keys.height,
        part.length,
        part.width,
        part.height,
        part.tolerance,
    ]
    .iter()
    .all(Option::is_some);
    let (Some(material), Some(practice)) = (material, practice) else {
        return reader.close().and(Err(Problem::new(
            Code::Missing,
            "material",
            "",
            "",
            "name the work material",
        )
        .into()));
    };
    let block = SquaredBlock {
        title,
        units,
        material,
        sawn,
        sawn_faces: sawn_keys.sawn.unwrap_or_default(),
        saw_marks: sawn_keys.saw_mark_depth.unwrap_or(si(0.0)),
        finished,
        tolerance: part.tolerance.unwrap_or(si(1e-4)),
        mean_roughness: part.mean_roughness,
        cutter,
        end_cutter,
        machine,
        vise,
        ends,
        practice,
        rate: rates.machine_rate,
        measured: [
            (Face::Left, measured.left),
            (Face::Right, measured.right),
            (Face::Front, measured.front),
            (Face::Back, measured.back),
            (Face::Top, measured.top),
            (Face::Bottom, measured.bottom),
        ]
        .into_iter()
        .filter_map(|(face, size)| Some((face, size?)))
        .collect(),
        assumptions: Vec::new(),
    };
    reader.within("hold", block.vise.problems_in(units));
    let mut problems = block.own_problems();
    if complete && problems.is_empty() {
        problems = block.stock_problems();
    }
    for problem in problems {
        if !reader.blamed(&problem.parameter) {
            reader.problem(problem);
        }
    }
    let mut assumptions = reader.close()?;
    if block.sawn_faces.is_empty() {
        assumptions.retain(|text| !text.starts_with("blank.saw_mark_depth"));
    }
    Ok(SquaredBlock {
        assumptions,
        ..block
    })
}
