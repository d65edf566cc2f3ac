//! Taylor's law with its constants, their units and the range they were found in.

use super::criterion::WearCriterion;
use crate::error::{Code, Error, Problem, Result, Warning, WarningCode};
use crate::formula::cost::whole_parts_per_edge;
use crate::formula::wear::{
    extended_speed_for_life, extended_tool_life, taylor_speed_for_criterion, taylor_speed_from_one,
};
use crate::quantity::{Kind, Length, Ratio, Time, UnitSystem, Velocity, format, si};
use crate::table::{LifeRow, Provenance, ToolMaterial};

/// Change of a feed or depth that a law without its exponent is still taken to hold for.
const SAME: f64 = 0.1;

/// What a law says of the feed, or of the depth of cut.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Influence {
    /// Exponent in `v T^n (f/f_0)^a (d/d_0)^b = C`; none where the law has none.
    pub exponent: Option<Ratio>,
    /// Feed or depth that C is for: f_0 or d_0. Where a source's equation has f in mm it is 1 mm,
    /// where in inches 1 in.
    pub reference: Option<Length>,
    /// Lowest and highest value of the tests.
    pub tested: Option<(Length, Length)>,
}

/// The life of a cutting edge by Taylor's law.
///
/// ```
/// use gullet::quantity::si;
/// use gullet::wear::ToolLife;
/// let mut law = ToolLife::new(si(400.0 / 60.0), si(0.25))?;
/// law.tested_speeds = Some((si(80.0 / 60.0), si(200.0 / 60.0)));
/// let edge = law.life(si(100.0 / 60.0), None, None)?;
/// assert!((edge.time.value / 60.0 - 256.0).abs() < 1e-9 && edge.warnings.is_empty());
/// assert_eq!(edge.parts(si(10.0 * 60.0))?, 25);
/// assert_eq!(law.life(si(300.0 / 60.0), None, None)?.warnings[0].code.name(), "outside_validity");
/// # Ok::<(), gullet::Error>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct ToolLife {
    /// C: the cutting speed for a life of one minute, at the reference feed and depth.
    pub taylor_speed: Velocity,
    /// n of `v T^n = C`, above 0 and below 1.
    pub taylor_exponent: Ratio,
    /// The feed.
    pub feed: Influence,
    /// The depth of cut.
    pub depth: Influence,
    /// When an edge counts as worn.
    pub criterion: WearCriterion,
    /// Lowest and highest cutting speed of the tests.
    pub tested_speeds: Option<(Velocity, Velocity)>,
    /// Where the constants come from.
    pub source: String,
    /// How they came here.
    pub provenance: Provenance,
    /// Units that doubts are told in.
    pub units: UnitSystem,
}

/// The life of an edge, with the doubts about it.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct EdgeLife {
    /// Time in the cut.
    pub time: Time,
    /// Doubts: a speed, feed or depth that was not tested.
    pub warnings: Vec<Warning>,
}

/// The cutting speed for a life, with the doubts about it.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct LifeSpeed {
    /// The cutting speed.
    pub speed: Velocity,
    /// Doubts: a speed, feed or depth that was not tested.
    pub warnings: Vec<Warning>,
}

impl EdgeLife {
    /// Whole parts that the edge makes.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a time in the cut a part that is not above zero, or above the life.
    pub fn parts(&self, cutting_time: Time) -> Result<u64> {
        Ok(whole_parts_per_edge(cutting_time, self.time, si(1.0))?.value as u64)
    }
}

/// Feed and depth with their references and exponents, as the formulas take them.
struct Sizes {
    feed: Length,
    depth: Length,
    exponents: (Ratio, Ratio),
    references: (Length, Length),
}

impl ToolLife {
    /// The law `v T^n = C` with C for a life of one minute, without feed and depth, range and source.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] for a speed that is not above zero, or an exponent outside 0 to 1.
    pub fn new(taylor_speed: Velocity, taylor_exponent: Ratio) -> Result<ToolLife> {
        let law = ToolLife {
            taylor_speed,
            taylor_exponent,
            feed: Influence::default(),
            depth: Influence::default(),
            criterion: WearCriterion::Unstated,
            tested_speeds: None,
            source: String::new(),
            provenance: Provenance::Shop,
            units: UnitSystem::Metric,
        };
        law.compute_life(taylor_speed, &law.sizes(None, None)?)?;
        Ok(law)
    }

    /// The law through one life at one speed: also for a C that is stated for lives in seconds
    /// (`unit_life` 1 s) or for 60 minutes.
    ///
    /// # Errors
    /// As [`ToolLife::new`].
    pub fn through(speed: Velocity, unit_life: Time, taylor_exponent: Ratio) -> Result<ToolLife> {
        let taylor_speed = taylor_speed_from_one(speed, unit_life, taylor_exponent)?;
        ToolLife::new(taylor_speed, taylor_exponent)
    }

    /// The law of a row of the tables, with its typical exponent.
    ///
    /// ```
    /// use gullet::table::{Library, ToolMaterial};
    /// use gullet::wear::ToolLife;
    /// let library = Library::builtin();
    /// let rows = library.tool_life_for(library.material("4140 annealed")?, ToolMaterial::CoatedCarbide)?;
    /// let law = ToolLife::from_row(rows[0])?;
    /// assert_eq!(law.source, "RAO");
    /// # Ok::<(), gullet::Error>(())
    /// ```
    ///
    /// # Errors
    /// [`Code::NoData`] where the row has the exponent only.
    pub fn from_row(row: &LifeRow) -> Result<ToolLife> {
        let Some(speed) = row.speed_at_one_minute else {
            return Err(Problem::new(
                Code::NoData,
                "taylor_speed",
                format!("row {} gives the exponent only", row.id),
                "a row with C",
                "give C, or one life at one speed of your own",
            )
            .into());
        };
        let [_, exponent, _] = row.exponent;
        let mut law = ToolLife::new(si(speed), si(exponent))?;
        let influence = |exponent: Option<f64>, reference: Option<f64>| Influence {
            exponent: exponent.map(si),
            reference: reference.map(si),
            tested: None,
        };
        law.feed = influence(row.feed_exponent, row.feed);
        law.depth = influence(row.depth_exponent, row.depth);
        law.criterion = WearCriterion::read(&row.criterion);
        law.tested_speeds = row.tested_speeds.map(|(low, high)| (si(low), si(high)));
        law.source.clone_from(&row.source);
        law.provenance = row.provenance;
        Ok(law)
    }

    /// The row of the tables that says the same, for work and tools in the shop's words; `classes`
    /// are classes or ids of materials by which it is found.
    pub fn to_row(
        &self,
        id: &str,
        work: &str,
        classes: &[String],
        tools: &[ToolMaterial],
    ) -> LifeRow {
        let n = self.taylor_exponent.value;
        let tested = |range: Option<(Velocity, Velocity)>| range.map(|(a, b)| (a.value, b.value));
        LifeRow {
            id: id.to_owned(),
            work: work.to_owned(),
            classes: classes.to_vec(),
            tools: tools.to_vec(),
            exponent: [n, n, n],
            speed_at_one_minute: Some(self.taylor_speed.value),
            feed: self.feed.reference.map(|v| v.value),
            depth: self.depth.reference.map(|v| v.value),
            feed_exponent: self.feed.exponent.map(|v| v.value),
            depth_exponent: self.depth.exponent.map(|v| v.value),
            tested_speeds: tested(self.tested_speeds),
            criterion: self.criterion.to_string(),
            source: self.source.clone(),
            provenance: Provenance::Shop,
            note: String::new(),
        }
    }

    /// The law for another criterion of flank wear, the wear taken as growing in proportion to time.
    ///
    /// # Errors
    /// [`Code::Inconsistent`] where one of the two criteria is no width of flank wear.
    pub fn for_criterion(&self, criterion: WearCriterion) -> Result<ToolLife> {
        let (Some(own), Some(new)) = (self.criterion.flank_wear(), criterion.flank_wear()) else {
            return Err(Problem::new(
                Code::Inconsistent,
                "criterion",
                format!("\"{}\" to \"{criterion}\"", self.criterion),
                "two widths of flank wear",
                "state the criterion the law was found with, such as VB 0.3 mm, or test anew",
            )
            .into());
        };
        let speed = taylor_speed_for_criterion(self.taylor_speed, self.taylor_exponent, own, new)?;
        Ok(ToolLife {
            taylor_speed: speed,
            criterion,
            ..self.clone()
        })
    }

    /// The life at a cutting speed, feed and depth of cut. Feed and depth are needed where the law
    /// has their exponents; given without, they are compared with those of the tests.
    ///
    /// # Errors
    /// [`Code::OutOfRange`] and [`Code::NotFinite`] by argument, [`Code::Missing`] for a feed or
    /// depth that the law needs, or for its reference.
    pub fn life(
        &self,
        cutting_speed: Velocity,
        feed: Option<Length>,
        depth: Option<Length>,
    ) -> Result<EdgeLife> {
        let sizes = self.sizes(feed, depth)?;
        Ok(EdgeLife {
            time: self.compute_life(cutting_speed, &sizes)?,
            warnings: self.doubts(cutting_speed, feed, depth),
        })
    }

    /// The cutting speed for a life, at a feed and depth of cut.
    ///
    /// # Errors
    /// As [`ToolLife::life`].
    pub fn speed(
        &self,
        tool_life: Time,
        feed: Option<Length>,
        depth: Option<Length>,
    ) -> Result<LifeSpeed> {
        let sizes = self.sizes(feed, depth)?;
        let (a, b) = sizes.exponents;
        let (f_0, d_0) = sizes.references;
        let (c, n) = (self.taylor_speed, self.taylor_exponent);
        let speed =
            extended_speed_for_life(tool_life, sizes.feed, sizes.depth, c, n, a, b, f_0, d_0)?;
        Ok(LifeSpeed {
            speed,
            warnings: self.doubts(speed, feed, depth),
        })
    }

    fn compute_life(&self, cutting_speed: Velocity, sizes: &Sizes) -> Result<Time> {
        let (a, b) = sizes.exponents;
        let (f_0, d_0) = sizes.references;
        let (c, n) = (self.taylor_speed, self.taylor_exponent);
        extended_tool_life(cutting_speed, sizes.feed, sizes.depth, c, n, a, b, f_0, d_0)
    }

    /// What the formulas take: an exponent of zero where the law has none.
    fn sizes(&self, feed: Option<Length>, depth: Option<Length>) -> Result<Sizes> {
        let mut problems = Vec::new();
        let mut part = |influence: &Influence, given: Option<Length>, name: &str, of: &str| {
            let one: Length = si(1e-3);
            let Some(exponent) = influence.exponent else {
                return (one, si(0.0), one);
            };
            let mut missing = |parameter: &str, remedy: &str| {
                problems.push(Problem::new(
                    Code::Missing,
                    parameter,
                    "",
                    "above 0 mm",
                    remedy,
                ));
                one
            };
            let reference = influence.reference.unwrap_or_else(|| {
                missing(
                    of,
                    "state what C is for: 1 mm for an equation in mm, 1 in for one in inches",
                )
            });
            let value = given.unwrap_or_else(|| missing(name, "the law has an exponent of it"));
            (value, exponent, reference)
        };
        let (feed, a, f_0) = part(&self.feed, feed, "feed_per_rev", "reference_feed");
        let (depth, b, d_0) = part(&self.depth, depth, "depth_of_cut", "reference_depth");
        let sizes = Sizes {
            feed,
            depth,
            exponents: (a, b),
            references: (f_0, d_0),
        };
        Error::unless_empty(problems, sizes)
    }

    fn doubts(&self, speed: Velocity, feed: Option<Length>, depth: Option<Length>) -> Vec<Warning> {
        let mut warnings = Vec::new();
        let tested = self
            .tested_speeds
            .map(|(low, high)| (low.value, high.value));
        let about = ("cutting speed", Kind::Velocity);
        match tested {
            Some(range) => warnings.extend(self.outside(about, speed.value, range)),
            None => warnings.push(Warning::new(
                WarningCode::Assumed,
                "the speeds tested are not stated: the law is taken to hold at this one",
            )),
        }
        let parts = [
            ("feed", &self.feed, feed),
            ("depth of cut", &self.depth, depth),
        ];
        for (name, influence, given) in parts {
            let Some(given) = given else { continue };
            let tested = influence.tested.map(|(low, high)| (low.value, high.value));
            let at = influence.reference.map(|v| (v.value, v.value));
            if influence.exponent.is_some() {
                if let Some(range) = tested {
                    warnings.extend(self.outside((name, Kind::Length), given.value, range));
                }
            } else if let Some((low, high)) = tested.or(at) {
                let near = (low * (1.0 - SAME), high * (1.0 + SAME));
                if let Some(doubt) = self.outside((name, Kind::Length), given.value, near) {
                    warnings.push(Warning::new(
                        doubt.code,
                        format!(
                            "the law has no exponent of the {name}: {} is not that of the tests, {}",
                            format(Kind::Length, given.value, self.units),
                            self.range(Kind::Length, (low, high)),
                        ),
                    ));
                }
            }
        }
        warnings
    }

    fn range(&self, kind: Kind, (low, high): (f64, f64)) -> String {
        let (low, high) = (
            format(kind, low, self.units),
            format(kind, high, self.units),
        );
        if low == high {
            low
        } else {
            format!("{low} to {high}")
        }
    }

    fn outside(
        &self,
        (name, kind): (&str, Kind),
        value: f64,
        (low, high): (f64, f64),
    ) -> Option<Warning> {
        let slack = 1e-9;
        let inside = value >= low * (1.0 - slack) && value <= high * (1.0 + slack);
        (!inside).then(|| {
            Warning::new(
                WarningCode::OutsideValidity,
                format!(
                    "the {name} {} lies outside what was tested, {}: the law may not hold there",
                    format(kind, value, self.units),
                    self.range(kind, (low, high)),
                ),
            )
        })
    }
}
