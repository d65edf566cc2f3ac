//! A cut with its words: worked steps, the ledger with the origin of each bound, doubts, sources.

use super::cut::{NamedBand, ProcessCut};
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::prepared::Prepared;
use super::settle::{self, SETTINGS, Settled};
use super::{Operate, Process};
use crate::error::{Code, Error, Problem, Result};
use crate::error::{Warning, WarningCode};
use crate::operation::cautions;
use crate::operation::cut::{Adjustment, Band, Chain, Datum, Field, Limit, Log, support_text};
use crate::operation::limits::LimitName;
use crate::operation::report::exceeded_problem;
use crate::quantity::{Kind, Length};
use crate::table::Grounds;

/// Computes a cut with its words.
#[inline(never)]
pub(crate) fn cut<P: Operate>(prepared: &Prepared) -> Result<ProcessCut> {
    let own = P::own(prepared.values);
    let mut ground = prepared.ground;
    let (diameter, depth) = P::size(&own);
    ground.read_feed(prepared.grounds, diameter.value, depth.value);
    let settled = settle::settle_one::<P>(&own, &ground, prepared.machine);
    let missing = missing_data::<P>(prepared.grounds, &own, &ground, &settled);
    Error::unless_empty(missing, ())?;

    let mut log = Chain::default();
    table_choices(prepared, &mut log, (diameter, depth), &ground);
    P::start(&mut log, &own, &ground);
    settle::speeds::<P>(&mut log, &own, &ground, &settled.start);
    log.choose(Kind::RotationalSpeed, settled.speed.value, || {
        "spindle speed the machine has at or below that, within every limit".to_owned()
    });
    let held_by = LimitName::from_lane(settled.feeding.held_by.value);
    log.choose(Kind::Length, settled.feeding.feed.value, || {
        held_by.map_or_else(
            || "feed wanted".to_owned(),
            |limit| format!("feed lowered until the limit {} holds", limit.name()),
        )
    });
    settle::settings(
        &mut log,
        &ground,
        &settled.start,
        &settled.speeds,
        settled.speed,
        settled.feeding.feed,
    );
    P::evaluate(&mut log, &own, &ground, settled.speed, settled.feeding.feed);

    let ledger = ledger::<P>(prepared, &own, &ground, &settled);
    let adjustments = adjustments(&settled);
    let mut words = Words::default();
    settle::doubts::<P>(
        &own,
        &ground,
        &settled.speeds,
        settled.first,
        settled.speed,
        &settled.feeding,
        &settled.results,
        &settled.loads,
        &mut words,
    );
    let warnings = warnings(prepared, words.0, &adjustments, (diameter, depth));
    let exceeded: Vec<Problem> = ledger
        .iter()
        .filter(|(limit, _)| limit.exceeded())
        .map(|(limit, remedy)| {
            let mut problem = exceeded_problem(limit, prepared.units);
            if !remedy.is_empty() {
                problem.remedy = (*remedy).to_owned();
            }
            problem
        })
        .collect();
    Error::unless_empty(exceeded, ())?;
    if !settled.is_sound() {
        return Err(Problem::new(
            Code::ResultOverflow,
            prepared.process.name,
            "",
            "inputs whose results a double can hold",
            "check the size of the inputs",
        )
        .into());
    }
    Ok(ProcessCut {
        process: prepared.process,
        units: prepared.units,
        setup: setup(prepared),
        inputs: prepared.values.to_vec(),
        settings: fields(SETTINGS, &settled.settings.values()),
        results: fields(prepared.process.results, &P::values(&settled.results)),
        depths: P::depths(&settled.results),
        ledger: ledger.into_iter().map(|(limit, _)| limit).collect(),
        held_by,
        adjustments,
        steps: log.0,
        spread: spread::<P>(&ground, &settled),
        data: data(prepared, &ground, (diameter, depth)),
        warnings,
        cautions: cautions_of(prepared),
    })
}

/// What the cut is made with.
fn setup(prepared: &Prepared) -> Vec<(&'static str, String)> {
    let material = prepared.material;
    vec![
        (
            "Material",
            format!(
                "{}, {} (ISO 513 group {})",
                material.name,
                material.condition,
                material.iso513.name()
            ),
        ),
        ("Tool", prepared.tool.name().to_owned()),
        ("Machine", prepared.machine.name.clone()),
        (
            "Practice",
            format!("{} ({})", prepared.practice.name, prepared.practice.origin),
        ),
    ]
}

fn fields(fields: &[Field], values: &[f64]) -> Vec<Field> {
    fields
        .iter()
        .zip(values)
        .map(|(field, value)| Field {
            value: (!value.is_nan()).then_some(*value),
            ..*field
        })
        .collect()
}

/// What the operation needs and the tables do not give.
pub(crate) fn missing_data<P: Operate>(
    grounds: &Grounds,
    own: &P::Own,
    ground: &Ground,
    settled: &Settled<P>,
) -> Vec<Problem> {
    let mut problems = Vec::new();
    let mut keep = |error: &Error| problems.extend(error.clone().into_problems());
    if settled.speeds.wanted.value.is_nan()
        && let Err(error) = grounds.speed()
    {
        keep(error);
    }
    if settled.feeding.wanted.value.is_nan()
        && P::asked(own).feed.value <= 0.0
        && let Some(error) = grounds.no_feed()
    {
        keep(error);
    }
    if ground.kc11_a.value.is_nan()
        && settled.loads.limit_power.value.is_nan()
        && let Err(error) = grounds.kienzle()
    {
        keep(error);
    }
    problems
}

/// What the tables say, before the chain begins.
fn table_choices(
    prepared: &Prepared,
    log: &mut Chain,
    (diameter, depth): (Length, Length),
    ground: &Ground,
) {
    if let Ok(speed) = prepared.grounds.speed() {
        log.choose(Kind::Velocity, ground.speed_chosen.value, || {
            format!(
                "cutting speed of the tables, {} of the range, from {}",
                match prepared.practice.speed_choice {
                    crate::model::SpeedChoice::Low => "low end",
                    crate::model::SpeedChoice::Start => "starting value",
                },
                support_text(&speed.support)
            )
        });
    }
    if let Some(feed) = feed_range(prepared, diameter, depth) {
        log.choose(Kind::Length, ground.feed_start.value, || {
            format!(
                "feed of the tables, starting value, from {}",
                support_text(&feed.support)
            )
        });
    }
}

fn feed_range(
    prepared: &Prepared,
    diameter: Length,
    depth: Length,
) -> Option<crate::table::Ranged<Length>> {
    prepared
        .grounds
        .feed
        .as_ref()
        .and_then(|reader| reader.range(diameter, depth))
}

/// Collects limits with the words of their bounds.
struct Collect<'p> {
    prepared: &'p Prepared<'p>,
    binding: f64,
    limits: Vec<(Limit, &'static str)>,
}

impl Eye for Collect<'_> {
    fn look(&mut self, look: Look) {
        let entry = look.entry;
        let Some(name) = LimitName::from_lane(entry.number).filter(|_| entry.present) else {
            return;
        };
        let origin = match look.origin {
            "machine" => format!("machine: {}", self.prepared.machine.name),
            other => other.to_owned(),
        };
        let origin = if origin.starts_with("practice") {
            format!(
                "{origin} [{}: {}]",
                self.prepared.practice.name, self.prepared.practice.origin
            )
        } else {
            origin
        };
        let binding = entry.number == self.binding;
        self.limits
            .push((Limit::new(name, &entry, origin, binding), look.remedy));
    }
}

fn ledger<P: Operate>(
    prepared: &Prepared,
    own: &P::Own,
    ground: &Ground,
    settled: &Settled<P>,
) -> Vec<(Limit, &'static str)> {
    let mut collect = Collect {
        prepared,
        binding: settled.verdict.binding.value,
        limits: Vec::new(),
    };
    settle::show::<P>(own, ground, settled, &mut collect);
    collect.limits
}

fn adjustments<P: Operate>(settled: &Settled<P>) -> Vec<Adjustment> {
    let mut adjustments = Vec::new();
    let binding =
        || LimitName::from_lane(settled.verdict.binding.value).unwrap_or(LimitName::Power);
    if settled.speed.value < settled.first.value {
        adjustments.push(Adjustment {
            limit: binding().name(),
            setting: "spindle_speed",
            kind: Kind::RotationalSpeed,
            from: settled.first.value,
            to: settled.speed.value,
        });
    }
    let feeding = &settled.feeding;
    if feeding.feed.value < feeding.wanted.value * (1.0 - 1e-9) {
        adjustments.push(Adjustment {
            limit: LimitName::from_lane(feeding.held_by.value)
                .unwrap_or_else(binding)
                .name(),
            setting: "feed",
            kind: Kind::Length,
            from: feeding.wanted.value,
            to: feeding.feed.value,
        });
    }
    adjustments
}

/// Doubts with their words.
#[derive(Default)]
struct Words(Vec<Warning>);

impl Doubt for Words {
    fn doubt(&mut self, holds: bool, code: WarningCode, text: &'static str) {
        if holds {
            self.0.push(Warning {
                code,
                text: text.to_owned(),
            });
        }
    }
}

/// The doubts, those of tables and of what was lowered in the words of each.
fn warnings(
    prepared: &Prepared,
    mut warnings: Vec<Warning>,
    adjustments: &[Adjustment],
    (diameter, depth): (Length, Length),
) -> Vec<Warning> {
    let mut replace = |code: WarningCode, texts: Vec<String>| {
        let Some(place) = warnings.iter().position(|warning| warning.code == code) else {
            return;
        };
        if texts.is_empty() {
            return;
        }
        warnings.remove(place);
        for text in texts {
            warnings.push(Warning { code, text });
        }
    };
    let mut assumed: Vec<String> = Vec::new();
    if let Ok(speed) = prepared.grounds.speed() {
        assumed.extend(speed.assumptions.iter().cloned());
    }
    if let Some(feed) = feed_range(prepared, diameter, depth) {
        assumed.extend(feed.assumptions.iter().cloned());
    }
    if let Ok(kienzle) = prepared.grounds.kienzle() {
        assumed.extend(kienzle.assumptions.iter().cloned());
    }
    assumed.dedup();
    replace(WarningCode::Assumed, assumed);
    replace(
        WarningCode::Lowered,
        adjustments
            .iter()
            .map(|adjustment| adjustment.text(prepared.units))
            .collect(),
    );
    warnings
}

fn spread<P: Operate>(ground: &Ground, settled: &Settled<P>) -> Vec<NamedBand> {
    let ends = &settled.ends;
    let band = |name, kind, low: f64, start: f64, high: f64| NamedBand {
        name,
        kind,
        band: Band { low, start, high },
    };
    [
        band(
            "cutting_speed",
            Kind::Velocity,
            ground.speed_low.value,
            ground.speed_start.value,
            ground.speed_high.value,
        ),
        band(
            "feed",
            Kind::Length,
            ground.feed_low.value,
            ground.feed_start.value,
            ground.feed_high.value,
        ),
        band(
            "force",
            Kind::Force,
            ends.force_low.value,
            settled.loads.force.value,
            ends.force_high.value,
        ),
        band(
            "power",
            Kind::Power,
            ends.power_low.value,
            settled.loads.power.value,
            ends.power_high.value,
        ),
        band(
            "time",
            Kind::Time,
            ends.time_low.value,
            settled.loads.time.value,
            ends.time_high.value,
        ),
    ]
    .into_iter()
    // The feed of a thread is its lead, whatever the tables say.
    .filter(|named| named.name != "feed" || settle::is_free(&settled.start))
    .filter(|named| named.band.start.is_finite())
    .collect()
}

/// The values that came from tables and practice.
fn data(prepared: &Prepared, ground: &Ground, (diameter, depth): (Length, Length)) -> Vec<Datum> {
    let mut data = Vec::new();
    let mut add = |name: &str, kind: Kind, value: f64, origin: String| {
        data.push(Datum {
            name: name.to_owned(),
            kind,
            value,
            origin,
        });
    };
    if let Ok(speed) = prepared.grounds.speed() {
        let origin = support_text(&speed.support);
        for (name, value) in [
            ("cutting speed, low", speed.low),
            ("cutting speed, start", speed.start),
            ("cutting speed, high", speed.high),
        ] {
            add(name, Kind::Velocity, value.value, origin.clone());
        }
    }
    if let Some(feed) = feed_range(prepared, diameter, depth) {
        let origin = support_text(&feed.support);
        for (name, value) in [
            ("feed, low", feed.low),
            ("feed, start", feed.start),
            ("feed, high", feed.high),
        ] {
            add(name, Kind::Length, value.value, origin.clone());
        }
    }
    if let Ok(kienzle) = prepared.grounds.kienzle() {
        for pair in core::iter::once(&kienzle.default).chain(&kienzle.others) {
            let origin = format!("[{}]", pair.source);
            add("k_c1.1", Kind::Pressure, pair.kc11.value, origin.clone());
            add("m_c", Kind::Ratio, pair.exponent.value, origin);
        }
    }
    add(
        "factor for a worn edge",
        Kind::Ratio,
        ground.wear_factor.value,
        prepared.practice.origin.clone(),
    );
    data
}

fn cautions_of(prepared: &Prepared) -> Vec<&'static str> {
    let Process { cautions: own, .. } = prepared.process;
    let mut cautions = cautions::common().to_vec();
    cautions.extend(own.iter());
    cautions.extend(cautions::of_work(prepared.material));
    cautions
}
