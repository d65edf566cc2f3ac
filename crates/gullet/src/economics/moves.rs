//! Time of moves: driven, with the time to gain and lose speed, or cranked by hand.

use super::worked;
use crate::error::{Code, Problem, Result};
use crate::formula::{Step, Steps};
use crate::model::{Machine, Practice};
use crate::quantity::{
    Acceleration, Kind, Length, RotationalSpeed, Time, Turns, UnitSystem, Velocity, format, si,
};

/// How a slide is moved.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Way {
    /// By a drive, at a speed that is set: a rapid or a feed.
    Driven {
        /// Speed that is set.
        speed: Velocity,
        /// Acceleration to start and to stop; without one a move takes distance over speed.
        acceleration: Option<Acceleration>,
    },
    /// By a handwheel.
    Cranked {
        /// Travel for one turn.
        travel_per_turn: Length,
        /// Turns a hand can hold.
        pace: RotationalSpeed,
    },
}

/// How several axes go together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Axes {
    /// Each at its own pace; the longest decides.
    Independent,
    /// Along a straight path at the speed that is set.
    Interpolated,
}

/// Time of a move from rest to rest.
#[derive(Clone)]
pub struct MoveTime {
    /// Time.
    pub time: Time,
    /// Turns of the handwheels together, where it is cranked.
    pub turns: Option<Turns>,
    /// Highest speed that is reached, where it is driven and the acceleration is known.
    pub peak_speed: Option<Velocity>,
    /// What is taken for granted.
    pub assumptions: Vec<&'static str>,
    /// The formulas with their numbers, in order.
    pub steps: Vec<Step>,
}

impl Way {
    /// The quickest way a machine moves outside the cut: its rapid traverse, else the handwheel at the
    /// practice's pace for returning; none where the machine has neither.
    pub fn rapid(machine: &Machine, practice: &Practice) -> Option<Way> {
        match (machine.rapid_speed, machine.travel_per_turn) {
            (Some(speed), _) => Some(Way::Driven {
                speed,
                acceleration: machine.acceleration,
            }),
            (None, Some(travel_per_turn)) => Some(Way::Cranked {
                travel_per_turn,
                pace: practice.handwheel_return_pace,
            }),
            (None, None) => None,
        }
    }

    /// Time of a straight move along one axis.
    ///
    /// # Errors
    /// A distance, speed, acceleration or pace outside its range; a result that no number can hold.
    pub fn straight(&self, distance: Length) -> Result<MoveTime> {
        self.time_of([distance, si(0.0), si(0.0)], Axes::Independent)
    }

    /// Time of a move over three axes, either way; the first two are the table's.
    ///
    /// A hand turns one wheel after the other.
    ///
    /// # Errors
    /// As [`Self::straight`]; a third axis on a cranked way, for quill and knee have levers and
    /// wheels of their own: their time belongs to handling.
    pub fn time_of(&self, travels: [Length; 3], axes: Axes) -> Result<MoveTime> {
        let mut steps = Steps::default();
        let log = &mut steps;
        let mut assumptions = Vec::new();
        let [x, y, z] = travels.map(|travel| si::<_, _>(travel.value.abs()));
        let (time, turns, peak_speed) = match *self {
            Way::Cranked {
                travel_per_turn,
                pace,
            } => {
                if z.value != 0.0 {
                    return Err(Problem::new(
                        Code::NoData,
                        "travel_z",
                        format(Kind::Length, z.value, UnitSystem::Metric),
                        format(Kind::Length, 0.0, UnitSystem::Metric),
                        "no practice gives the pace of a quill or a knee: give its time as handling",
                    )
                    .into());
                }
                let travel = x + y;
                let turns = worked!(log, rotation::handwheel_turns(travel, travel_per_turn));
                let time = worked!(log, moves::hand_cranked_time(travel, travel_per_turn, pace));
                assumptions.push("a steady hand, one wheel after the other");
                (time, Some(turns), None)
            }
            Way::Driven {
                speed,
                acceleration,
            } => {
                if acceleration.is_none() {
                    assumptions.push("the time to gain and lose speed is left out");
                }
                let ways = match axes {
                    Axes::Interpolated => vec![worked!(log, moves::path_length(x, y, z))],
                    Axes::Independent => vec![x, y, z],
                };
                let mut times: Vec<Time> = Vec::new();
                let mut peak: Option<Velocity> = None;
                for way in ways.into_iter().filter(|way| way.value != 0.0) {
                    times.push(match acceleration {
                        Some(a) => {
                            let reached = worked!(log, moves::move_peak_speed(way, speed, a));
                            peak = Some(
                                peak.map_or(reached, |p| if p < reached { reached } else { p }),
                            );
                            worked!(log, time::rapid_time(way, speed, a))
                        }
                        None => worked!(log, time::cutting_time(way, speed)),
                    });
                }
                let time = match times.as_slice() {
                    [] => si(0.0),
                    [one] => *one,
                    [first, second, rest @ ..] => worked!(
                        log,
                        moves::simultaneous_move_time(
                            *first,
                            *second,
                            rest.first().copied().unwrap_or(si(0.0)),
                        )
                    ),
                };
                (time, None, peak)
            }
        };
        Ok(MoveTime {
            time,
            turns,
            peak_speed,
            assumptions,
            steps: steps.0,
        })
    }
}
