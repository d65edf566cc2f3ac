//! A milling cut with plain numbers, as a student redoes it: SI units, the standard library's maths.
//!
//! v_c = pi D n; v_f = f_z z n; h = f_z sin(phi); h_m = 2 f_z a_e/(D phi_s); Kienzle k_c = k_c1.1 h^-m with
//! h in mm; P = k_c Q; M = P/(2 pi n); a cantilever of two diameters with 0.8 D for the flutes; a vise that
//! holds with friction on two faces.

use core::f64::consts::PI;
use gullet::operation::Operation;

/// What is given: job, machine, practice, and the tables' values as the cut cites them.
pub struct Given {
    pub operation: Operation,
    pub finishing: bool,
    pub climb: bool,
    pub d: f64,
    pub z: f64,
    pub flutes: f64,
    pub out: f64,
    pub helix: f64,
    pub a_p: f64,
    pub a_e: f64,
    pub length: f64,
    pub table_speed: f64,
    pub speeds: [f64; 3],
    pub feeds: [f64; 3],
    pub pairs: Vec<(f64, f64)>,
    pub unit_power: f64,
    pub unit_chip: f64,
    pub modulus: f64,
    pub steps: Vec<f64>,
    pub motor: f64,
    pub eta: f64,
    pub base: Option<f64>,
    pub crank: Option<f64>,
    pub speed_factor: f64,
    pub feed_factor: f64,
    pub thinning: f64,
    pub wear: f64,
    pub radial: f64,
    pub share: f64,
    pub safety: f64,
    pub mu: f64,
    pub vise: f64,
    pub bend: f64,
    pub clearance: f64,
    pub pace: f64,
    pub fastest_feed: Option<f64>,
}

/// What comes out.
pub struct ByHand {
    pub wanted_speed: f64,
    pub n: f64,
    pub v_c: f64,
    pub f_z: f64,
    pub f: f64,
    pub table_feed: f64,
    pub crank_rate: Option<f64>,
    pub entry: f64,
    pub exit: f64,
    pub h_max: f64,
    pub h_m: f64,
    pub q: f64,
    pub k_c: f64,
    pub power: f64,
    pub motor: f64,
    pub torque: f64,
    pub mean_force: f64,
    pub unit_power: f64,
    pub limit_power: f64,
    pub limit_torque: f64,
    pub peak_tangential: f64,
    pub peak: f64,
    pub axial: f64,
    pub bend: f64,
    pub clamp: f64,
    pub vise: f64,
    pub available_power: f64,
    pub available_torque: f64,
    pub roughness: Option<f64>,
    pub travel: f64,
    pub time: f64,
    pub speeds: [f64; 3],
    pub feeds: [f64; 3],
    pub forces: [f64; 2],
    pub powers: [f64; 2],
    pub times: [f64; 3],
}

/// Loads of a feed per tooth with a pair and a worn edge.
struct Loads {
    power: f64,
    tangential: f64,
    bend: f64,
    clamp: f64,
}

fn kienzle((k, m): (f64, f64), h: f64) -> f64 {
    k * (h * 1000.0).powf(-m)
}

/// The pair with the highest force at a chip.
fn worst(pairs: &[(f64, f64)], h: f64) -> (f64, f64) {
    *pairs
        .iter()
        .max_by(|a, b| kienzle(**a, h).total_cmp(&kienzle(**b, h)))
        .unwrap()
}

/// Arc of the cut: entry, exit.
fn arc(g: &Given) -> (f64, f64) {
    match g.operation {
        Operation::SideMilling => {
            let phi = (1.0 - 2.0 * g.a_e / g.d).acos();
            if g.climb { (PI - phi, PI) } else { (0.0, phi) }
        }
        Operation::Slotting => (0.0, PI),
        // Centred.
        Operation::FaceMilling => {
            let half = (g.a_e / g.d).asin();
            (PI / 2.0 - half, PI / 2.0 + half)
        }
    }
}

fn largest_sine(g: &Given) -> f64 {
    let (entry, exit) = arc(g);
    if entry <= PI / 2.0 && exit >= PI / 2.0 {
        1.0
    } else {
        entry.sin().max(exit.sin())
    }
}

/// Peak of the tangential force over that of one tooth of a straight cutter: no more teeth than fit the
/// arc, spread over the lag of the helix.
fn peak_factor(g: &Given, m: f64) -> f64 {
    let (entry, exit) = arc(g);
    let (phi, pitch, sine) = (exit - entry, 2.0 * PI / g.z, largest_sine(g));
    let k = (phi / pitch - 1e-9).ceil();
    let together = ((k * pitch / 2.0).sin() / (pitch / 2.0).sin() / sine)
        .min(k)
        .max(1.0);
    let straight = k.powf(m) * together.powf(1.0 - m);
    let mean_over_largest = (entry.cos() - exit.cos()) / phi / sine;
    let over_a_pitch = (phi * mean_over_largest.powf(1.0 - m)).min(pitch * straight);
    let lag = 2.0 * g.a_p * g.helix.tan() / g.d;
    let whole = (lag / pitch + 1e-9).floor();
    let rest = ((lag - whole * pitch) * straight).min(over_a_pitch);
    straight.min((whole * over_a_pitch + rest) / lag)
}

fn mean_chip(g: &Given, f_z: f64) -> f64 {
    let (entry, exit) = arc(g);
    f_z * (entry.cos() - exit.cos()) / (exit - entry)
}

fn loads(g: &Given, n: f64, f_z: f64, pairs: &[(f64, f64)]) -> Loads {
    let h_max = f_z * largest_sine(g);
    let h_m = mean_chip(g, f_z);
    let power = g.wear * kienzle(worst(pairs, h_m), h_m) * g.a_p * g.a_e * f_z * g.z * n;
    let pair = worst(pairs, h_max);
    let tangential = g.wear * kienzle(pair, h_max) * h_max * g.a_p * peak_factor(g, pair.1);
    let across = tangential * (1.0 + g.radial * g.radial).sqrt();
    let lift = tangential * g.helix.tan();
    let second_moment = |d: f64| PI * d.powi(4) / 64.0;
    let bend = across / (3.0 * g.modulus)
        * (g.flutes.powi(3) / second_moment(0.8 * g.d)
            + (g.out.powi(3) - g.flutes.powi(3)) / second_moment(g.d));
    let clamp = g.safety * across.hypot(lift) / (2.0 * g.mu);
    Loads {
        power,
        tangential,
        bend,
        clamp,
    }
}

pub fn by_hand(g: &Given) -> ByHand {
    let wanted_speed = g.table_speed * g.speed_factor / (PI * g.d);
    let n = if g.steps.is_empty() {
        wanted_speed
    } else {
        g.steps
            .iter()
            .copied()
            .filter(|step| *step <= wanted_speed)
            .fold(0.0, f64::max)
    };
    let rated = g.motor * g.eta * g.share;
    let base = g.base.unwrap_or(0.0);
    let available_power = rated * (if base > 0.0 { n / base } else { 1.0 }).min(1.0);
    let available_torque = rated / (2.0 * PI * n.max(base));

    // Feed: the chip wanted, thinned in a side cut, then lowered for what does not hold.
    let sine = largest_sine(g);
    let chip = g.feeds[1] * g.feed_factor;
    let wanted = if g.operation == Operation::SideMilling {
        (chip / sine).min(chip * g.thinning)
    } else {
        chip
    };
    let mut f_z = wanted.min(g.feeds[2] / sine);
    if let Some(crank) = g.crank {
        f_z = f_z.min(crank * g.pace / (g.z * n));
    }
    if let Some(fastest) = g.fastest_feed {
        f_z = f_z.min(fastest / (g.z * n));
    }
    for pair in &g.pairs {
        let at = loads(g, n, wanted, &[*pair]);
        for share in [
            at.power / available_power,
            at.bend / g.bend,
            at.clamp / g.vise,
        ] {
            if share > 1.0 {
                f_z = f_z.min(wanted * share.powf(-1.0 / (1.0 - pair.1)));
            }
        }
    }

    let v_c = PI * g.d * n;
    let f = f_z * g.z;
    let table_feed = f * n;
    let (entry, exit) = arc(g);
    let (h_max, h_m) = (f_z * sine, mean_chip(g, f_z));
    let q = g.a_p * g.a_e * table_feed;
    let k_c = kienzle(g.pairs[0], h_m);
    let power = k_c * q;
    let all: Vec<f64> = g.pairs.iter().map(|pair| kienzle(*pair, h_m)).collect();
    let powers = [
        all.iter().copied().fold(f64::INFINITY, f64::min) * q,
        all.iter().copied().fold(0.0, f64::max) * q,
    ];
    let at = loads(g, n, f_z, &g.pairs);

    let approach = match g.operation {
        Operation::SideMilling if g.a_e < g.d / 2.0 => (g.a_e * (g.d - g.a_e)).sqrt(),
        Operation::SideMilling | Operation::Slotting => g.d / 2.0,
        Operation::FaceMilling => (g.d - (g.d * g.d - g.a_e * g.a_e).sqrt()) / 2.0,
    };
    let past = match g.operation {
        Operation::SideMilling => 0.0,
        Operation::Slotting => g.d / 2.0,
        Operation::FaceMilling if g.finishing => g.d / 2.0,
        Operation::FaceMilling => 0.0,
    };
    let travel = g.length + approach + past + 2.0 * g.clearance;
    let time_at = |end: usize| travel * PI * g.d / (g.feeds[end] * g.z * g.speeds[end]);
    ByHand {
        wanted_speed,
        n,
        v_c,
        f_z,
        f,
        table_feed,
        crank_rate: g.crank.map(|crank| table_feed / crank),
        entry,
        exit,
        h_max,
        h_m,
        q,
        k_c,
        power,
        motor: power / g.eta,
        torque: power / (2.0 * PI * n),
        mean_force: power / v_c,
        unit_power: g.unit_power * (h_m / g.unit_chip).powf(-0.2) * q,
        limit_power: at.power,
        limit_torque: at.power / (2.0 * PI * n),
        peak_tangential: at.tangential,
        peak: at.tangential * (1.0 + g.radial * g.radial).sqrt(),
        axial: at.tangential * g.helix.tan(),
        bend: at.bend,
        clamp: at.clamp,
        vise: g.vise,
        available_power,
        available_torque,
        // One tooth a revolution leaves the mark on a wall; no model under a sharp corner.
        roughness: (g.operation == Operation::SideMilling)
            .then(|| f * f / (4.0 * g.d) * 4.0 / (9.0 * 3f64.sqrt())),
        travel,
        time: travel / table_feed,
        speeds: g.speeds,
        feeds: g.feeds,
        forces: powers.map(|power| power / v_c),
        powers,
        times: [time_at(0), time_at(1), time_at(2)],
    }
}
