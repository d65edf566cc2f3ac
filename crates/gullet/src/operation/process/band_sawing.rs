//! Sawing through bars and tubes on a band saw.

use super::define::process;
use super::ground::Ground;
use super::limits::{Doubt, Eye, Look};
use super::pick::pick;
use super::{Loads, Operate, Start};
use crate::formula::{force, power, practice, rotation, sawing, time, turning};
use crate::operation::cut::Log;
use crate::operation::numbers::one;
use crate::operation::{LimitName, WarningCode};
use crate::quantity::math::{max, min, number, select};
use crate::quantity::{Length, Ratio, RotationalSpeed, si};
use crate::table::Process as TableProcess;

process! {
    BandSawing "band-sawing", "Band sawing";
    meaning "A bar or a tube cut off on a band saw; the machine's spindle is the wheel that drives the blade.";
    tables Some(TableProcess::Sawing);
    inputs {
        wheel_diameter D_w: Length, above 0.0, to 2.0, "diameter of the wheel that drives the blade";
        width w: Length, above 0.0, to 2.0, "width of the work along the blade: of round work its diameter";
        height H: Length, from 0.0, to 2.0, default 0.0, "way of the blade through rectangular work; 0 where it is as high as wide";
        inner_diameter d: Length, from 0.0, below width, default 0.0, "inner diameter of a round tube, 0 for a solid bar";
        teeth_per_inch z_i: Ratio, above 0.0, to 40.0, "teeth per inch of the blade; of a variable one such as 3/4 the mean, 3.5";
        kerf b: Length, above 0.0, to 0.01, default 1.6e-3, "width of the cut that the set teeth make";
        feed_per_tooth f_z: Length, above 0.0, to 1e-3, default 4e-6, "advance per tooth to start from: 0.004 mm is common practice, no source";
    }
    choices {
        section: ["round", "rectangle"], 0.0, "section of the work";
        blade: ["bimetal", "carbon"], 0.0, "what the blade is made of";
        fluid: ["yes", "no"], 0.0, "whether cutting fluid is used";
    }
    results {
        tooth_pitch: Length, "Tooth pitch of the blade.";
        teeth_in_work: Ratio, "Teeth in the work where it is widest; of a tube in one crossing of the wall.";
        teeth_in_narrowest: Ratio, "Teeth in the work where it is narrowest: of a tube in the wall itself.";
        coarsest_pitch: Length, "Tooth pitch that leaves the fewest teeth in the work.";
        finest_pitch: Length, "Tooth pitch that leaves the most teeth in the work.";
        area: Area, "Area of the section.";
        mean_width: Length, "Mean width that is sawn.";
        area_rate: AreaRate, "Area that is sawn per time.";
        removal_rate: VolumeRate, "Removal rate.";
        cutting_force: Force, "Force along the blade, default pair, sharp teeth.";
        cutting_power: Power, "Power at the blade, default pair, sharp teeth.";
        motor_power: Power, "Power of the motor for that.";
        limit_power: Power, "Power that limits are checked with.";
        limit_torque: Torque, "Torque on the wheel that limits are checked with.";
        time: Time, "Time of the cut.";
    }
    example "1018", Hss, "band-saw", "wheel_diameter=350 mm; width=100 mm; teeth_per_inch=3.5";
    limits [AreaRate, MostTeeth, FewestTeeth];
    cautions [
        "Set the blade guards just wide enough for the work; nothing of the blade beside the cut lies open.",
        "Keep hands out of the line of the blade. Push short pieces with a block, never with the hand.",
        "Support what is cut off: it drops, and a long end tips. Never reach for it before the blade stands.",
        "Clamp the work so that it cannot turn: a round bar held by hand rolls and strips the teeth.",
    ];
}

/// Speed of a dry cut over one with fluid: 30 to 50 % less (E. Oberg et al., Machinery's Handbook, 31st
/// ed., p.1245, seen).
const DRY: f64 = 0.6;
/// Speed of a carbon steel blade over a bimetal one (the same page).
const CARBON: f64 = 0.5;
/// Teeth in the work (common practice, no source).
const MOST_TEETH: f64 = 24.0;
const FEWEST_TEETH: f64 = 3.0;
/// Feed per tooth below which teeth rub (common practice, no source).
const SMALLEST_FEED: f64 = 1e-6;

/// Lengths of the work that a blade crosses.
struct Crossing {
    /// The longest single one.
    longest: Length,
    /// The shortest one that counts for the pitch.
    shortest: Length,
}

impl Own {
    #[inline(always)]
    fn is_round(&self) -> bool {
        self.section.value < 0.5
    }

    #[inline(always)]
    fn is_tube(&self) -> bool {
        self.is_round() & (self.inner_diameter.value > 0.0)
    }

    #[inline(always)]
    fn height(&self) -> Length {
        let given = !self.is_round() & (self.height.value > 0.0);
        select(given, self.height, self.width)
    }

    #[inline(always)]
    fn crossing(&self, log: &mut impl Log) -> Crossing {
        let (w, d) = (self.width, self.inner_diameter);
        let tube = self.is_tube();
        Crossing {
            longest: pick(
                log,
                tube,
                |log| sawing::tube_longest_crossing::step(log, w, d),
                |_| w,
            ),
            shortest: pick(
                log,
                tube,
                |log| turning::depth_of_cut_from_diameters::step(log, w, d),
                |_| w,
            ),
        }
    }

    /// Factors on the blade speed: stock, fluid, blade.
    #[inline(always)]
    fn factors(&self, log: &mut impl Log) -> (Ratio, Ratio, Ratio) {
        let longest = self.crossing(&mut crate::formula::NoRecord).longest;
        (
            sawing::saw_stock_factor::step(log, longest),
            select(self.fluid.value < 0.5, one(), number(DRY)),
            select(self.blade.value < 0.5, one(), number(CARBON)),
        )
    }
}

impl Operate for BandSawing {
    #[inline(always)]
    fn size(own: &Own) -> (Length, Length) {
        (own.width, own.width)
    }

    #[inline(always)]
    fn table_factor(own: &Own) -> Ratio {
        let (stock, fluid, blade) = own.factors(&mut crate::formula::NoRecord);
        let unit: crate::quantity::Velocity = si(1.0);
        sawing::saw_blade_speed::value(unit, stock, fluid, blade) / unit
    }

    #[inline(always)]
    fn start(log: &mut impl Log, own: &Own, ground: &Ground) -> Start {
        let speed =
            practice::practice_cutting_speed::step(log, ground.speed_chosen, ground.speed_factor);
        let (stock, fluid, blade) = own.factors(log);
        let cutting_speed = sawing::saw_blade_speed::step(log, speed, stock, fluid, blade);
        let pitch = sawing::saw_tooth_pitch::value(own.teeth_per_inch);
        let feed = own.feed_per_tooth;
        Start {
            diameter: own.wheel_diameter,
            cutting_speed,
            highest_speed: si(f64::INFINITY),
            feed,
            least_feed: min(si(SMALLEST_FEED), feed / 2.0),
            feeds_per_rev: sawing::saw_teeth_per_turn::step(log, own.wheel_diameter, pitch),
        }
    }

    #[inline(always)]
    fn evaluate(
        log: &mut impl Log,
        own: &Own,
        ground: &Ground,
        n: RotationalSpeed,
        f: Length,
    ) -> (Results, Loads) {
        let (w, height) = (own.width, own.height());
        let tooth_pitch = sawing::saw_tooth_pitch::step(log, own.teeth_per_inch);
        let crossing = own.crossing(log);
        let teeth_in_work = sawing::teeth_in_work::step(log, crossing.longest, tooth_pitch);
        let inner = select(own.is_tube(), own.inner_diameter, si(0.0));
        let area = pick(
            log,
            own.is_round(),
            |log| sawing::round_section_area::step(log, w, inner),
            |log| sawing::rectangular_section_area::step(log, w, height),
        );
        let mean_width = sawing::mean_sawn_width::step(log, area, height);
        let v_c = rotation::cutting_speed::value(n, own.wheel_diameter);
        let feed_speed = sawing::saw_feed_speed::step(log, v_c, f, tooth_pitch);
        let area_rate = sawing::sawing_area_rate::step(log, feed_speed, mean_width);
        let removal_rate = sawing::sawing_removal_rate::step(log, area_rate, own.kerf);
        let k = ground.own_force(log, f, one());
        let cutting_power = power::cutting_power::step(log, removal_rate, k);
        let cutting_force = force::tangential_force::step(log, cutting_power, v_c);
        let motor_power = power::motor_power::step(log, cutting_power, ground.efficiency);
        let worst = ground.worst_force(log, f, one());
        let limit_power = power::cutting_power::step(log, removal_rate, worst.k);
        let limit_torque = power::cutting_torque::step(log, limit_power, n);
        let time = time::band_saw_time::step(log, area, area_rate);
        let results = Results {
            tooth_pitch,
            teeth_in_work,
            teeth_in_narrowest: sawing::teeth_in_work::value(crossing.shortest, tooth_pitch),
            coarsest_pitch: sawing::saw_pitch_for_teeth::value(
                crossing.shortest,
                number(FEWEST_TEETH),
            ),
            finest_pitch: sawing::saw_pitch_for_teeth::value(crossing.longest, number(MOST_TEETH)),
            area,
            mean_width,
            area_rate,
            removal_rate,
            cutting_force,
            cutting_power,
            motor_power,
            limit_power,
            limit_torque,
            time,
        };
        let loads = Loads {
            limit_power,
            limit_torque,
            exponent: one() - worst.exponent,
            chip: f,
            force: cutting_force,
            power: cutting_power,
            time,
        };
        (results, loads)
    }

    #[inline(always)]
    fn limits(
        own: &Own,
        ground: &Ground,
        _feed: Length,
        results: &Results,
        _loads: &Loads,
        eye: &mut impl Eye,
    ) {
        let highest = ground.area_rate_high.value;
        let bimetal = own.blade.value < 0.5;
        eye.look(
            Look::most(LimitName::AreaRate, results.area_rate.value, highest)
                .only(bimetal & !own.is_tube() & !highest.is_nan())
                .with_feed(one())
                .from("high end of the tables, bimetal blade in solid stock; charts disagree by a factor of 2 to 3")
                .change("take a smaller feed per tooth"),
        );
        eye.look(
            Look::most(
                LimitName::MostTeeth,
                results.teeth_in_work.value,
                MOST_TEETH,
            )
            .from("common practice, no source: the gullets clog")
            .change("take a blade with fewer teeth per inch"),
        );
        eye.look(
            Look::least(
                LimitName::FewestTeeth,
                results.teeth_in_narrowest.value,
                FEWEST_TEETH,
            )
            .from("common practice, no source: the teeth strip")
            .change("take a blade with more teeth per inch"),
        );
    }

    #[inline(always)]
    fn doubts(own: &Own, _ground: &Ground, _results: &Results, doubt: &mut impl Doubt) {
        doubt.doubt(
            !own.is_round() & (own.inner_diameter.value > 0.0),
            WarningCode::Assumed,
            "an inner diameter counts for round work only: the rectangle is taken as solid",
        );
        let widest = max(own.width, own.height());
        doubt.doubt(
            widest.value > 0.5,
            WarningCode::OutsideValidity,
            "work beyond 0.5 m lies outside the sizes that blade speeds were published for",
        );
    }
}
