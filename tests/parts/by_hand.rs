//! Time and cost of the example, a second time in plain numbers: millimetres, seconds, hundredths.

use super::{EXAMPLE, card};
use gullet::operation::WorkedStep;
use gullet::plan::{PartCard, ProcessCard};
use std::f64::consts::PI;

/// Common practice of the training shop: approach and overtravel 0.100 in.
const CLEARANCE: f64 = 2.54;

/// A drill press has no rapids: the hand moves at 3 m/min, and reaches that at once.
const HAND: f64 = 50.0;
const AT_ONCE: f64 = 1e7;

#[track_caller]
fn near(a: f64, b: f64) {
    let bound = 1e-9 * a.abs().max(b.abs());
    assert!((a - b).abs() <= bound, "{a} against {b}");
}

/// Rapid move from rest to rest, long enough to reach the speed.
fn rapid(distance: f64) -> f64 {
    assert!(distance > HAND * HAND / AT_ONCE);
    distance / HAND + HAND / AT_ONCE
}

struct Done<'c> {
    name: &'c str,
    card: &'c ProcessCard,
    /// Spindle speed, 1/s, and feed, mm, as set.
    n: f64,
    f: f64,
}

impl Done<'_> {
    /// The result of the last worked step of a formula.
    #[track_caller]
    fn step(&self, name: &str) -> f64 {
        let found = self
            .card
            .cut
            .steps
            .iter()
            .rev()
            .find_map(|step| match step {
                WorkedStep::Formula(step) if step.formula.name == name => Some(step.result),
                _ => None,
            });
        found.unwrap_or_else(|| panic!("{}: no step {name}", self.name))
    }
}

fn done<'c>(card: &'c PartCard, name: &str) -> Done<'c> {
    let (operation, card) = card
        .cuts()
        .find(|(operation, _)| operation.name == name)
        .unwrap();
    let set = |name: &str| card.cut.value(name).unwrap().si;
    let (n, f) = (set("spindle_speed"), set("feed") * 1e3);
    Done {
        name: &operation.name,
        card,
        n,
        f,
    }
}

/// Name, how often, seconds each, of the operations beside the squaring; each time agrees with the
/// worked step that gives it.
fn times(card: &PartCard) -> Vec<(&'static str, f64, f64)> {
    let tip = |d: f64| d / 2.0 / (118.0_f64 / 2.0).to_radians().tan();
    let mut times = Vec::new();
    let mut told = |done: &Done<'_>, formula: &str, name: &'static str, count: f64, time: f64| {
        near(done.step(formula), time);
        near(done.card.cut.value("time").unwrap().si, time);
        times.push((name, count, time));
    };

    // 6 teeth an inch of band, over a wheel of 350 mm, through 36 mm.
    let saw = done(card, "Saw the blank off the bar");
    let band = PI * 350.0 * saw.n;
    let down = saw.f * band / (25.4 / 6.0);
    told(
        &saw,
        "band_saw_time",
        "Saw the blank off the bar",
        1.0,
        36.0 / down,
    );

    let drill = done(card, "Drill two holes for screws");
    let travel = 16.0 + tip(6.8) + CLEARANCE;
    near(drill.step("cutting_time"), travel / (drill.f * drill.n));
    let time = travel / (drill.f * drill.n) + rapid(travel);
    told(
        &drill,
        "chip_break_cycle_time",
        "Drill two holes for screws",
        2.0,
        time,
    );

    // At 90 degrees as deep as half of what it widens.
    let sink = done(card, "Countersink the two holes");
    let travel = (9.0 - 6.8) / 2.0 + CLEARANCE;
    let time = travel / (sink.f * sink.n) + rapid(travel);
    told(
        &sink,
        "chip_break_cycle_time",
        "Countersink the two holes",
        2.0,
        time,
    );

    // Through 30 mm in pecks of a diameter, back to 0.5 mm above the last bottom.
    let deep = done(card, "Drill for the dowel");
    let travel = 30.0 + tip(9.7) + 2.0 * CLEARANCE;
    let pecks = (travel / 9.7).ceil();
    assert_eq!(pecks, 4.0);
    near(deep.step("peck_count"), pecks);
    let mut time = (travel + (pecks - 1.0) * 0.5) / (deep.f * deep.n) + rapid(travel);
    for peck in [1.0, 2.0, 3.0] {
        time += rapid(peck * 9.7) + rapid(peck * 9.7 - 0.5);
    }
    told(&deep, "peck_cycle_time", "Drill for the dowel", 1.0, time);

    // In at feed and out at feed, with 2 mm of chamfer.
    let ream = done(card, "Ream for the dowel");
    let travel = 30.0 + 2.0 + 2.0 * CLEARANCE;
    near(ream.step("through_hole_travel") * 1e3, travel);
    let time = 2.0 * travel / (ream.f * ream.n);
    told(
        &ream,
        "feed_out_cycle_time",
        "Ream for the dowel",
        1.0,
        time,
    );

    // In and out at the lead, four threads of chamfer, two reversals of twice 0.25 s.
    let tap = done(card, "Tap two holes M8");
    near(tap.f, 1.25);
    let travel = 11.0 + 4.0 * 1.25 + CLEARANCE;
    let time = 2.0 * travel / (1.25 * tap.n) + 2.0 * 0.5;
    told(&tap, "tapping_time", "Tap two holes M8", 2.0, time);

    // Up to a shoulder: approach, no overtravel.
    let turn = done(card, "Turn the spigot");
    let travel = 18.0 + CLEARANCE;
    let time = travel / (turn.f * turn.n);
    told(&turn, "cutting_time", "Turn the spigot", 1.0, time);
    times
}

/// Seconds of set-up once, and of the rest, a line: by hand, in whole seconds a part of the time.
fn lines(card: &PartCard) -> Vec<(String, f64, Vec<f64>)> {
    // The training shop: 15 min once on each machine, 3 min to clamp, 1 min to measure and to deburr
    // in each clamping, 1 min of handling each time; 30 s for another tool where the file says so.
    let own = |name: &str| match name {
        "Saw the blank off the bar"
        | "Drill two holes for screws"
        | "Tap two holes M8"
        | "Turn the spigot" => (true, 0.0),
        _ => (false, 30.0),
    };
    let mut lines: Vec<(String, f64, Vec<f64>)> = times(card)
        .into_iter()
        .map(|(name, count, time)| {
            let (first, change) = own(name);
            let begins = |seconds: f64| if first { seconds } else { 0.0 };
            let rest = vec![
                begins(180.0),
                (count * time).round(),
                0.0,
                count * 60.0 + change,
                begins(60.0),
                begins(60.0),
            ];
            (name.to_owned(), begins(900.0), rest)
        })
        .collect();

    let block = card.block.as_ref().unwrap();
    let mut squared = vec![("set-up of the vise".to_owned(), 900.0, vec![0.0; 6])];
    for clamping in &block.route.clampings {
        let plan = &clamping.card.plan;
        let strips = f64::from(plan.strips.count);
        let (mut cut, mut back) = (0.0, 0.0);
        for pass in &plan.passes {
            let travel = pass.cut.consequences.travel.value;
            cut += strips * travel / pass.cut.settings.table_feed.value;
            // Cranked back at two turns a second of 0.200 in.
            back += strips * travel / (2.0 * 0.2 * 0.0254);
        }
        let passes = plan.passes.len() as f64;
        squared.push((
            format!(
                "square {}, {} face",
                clamping.number,
                clamping.seat.cut.name()
            ),
            0.0,
            vec![180.0, cut.round(), back.round(), 60.0 * passes, 60.0, 60.0],
        ));
    }
    lines.splice(1..1, squared);
    lines
}

#[test]
fn the_lines_and_their_sum_are_those_worked_out_by_hand() {
    let card = card(EXAMPLE);
    let lines = lines(&card);
    assert_eq!(lines.len(), 14);
    assert_eq!(card.entries.len(), 14);
    let mut sum = 0.0;
    for ((name, setup, rest), entry) in lines.iter().zip(&card.entries) {
        assert_eq!(*name, entry.name);
        let parts: Vec<f64> = entry.time.parts().iter().map(|part| part.value).collect();
        let mut wanted = vec![*setup];
        wanted.extend(rest);
        assert_eq!(parts, wanted, "{name}");
        sum += wanted.iter().sum::<f64>();
    }
    assert_eq!(card.totals.time.total().value, sum);
    assert_eq!(card.json()["time"]["si"], sum);

    // 42 an hour, each part of each line to the hundredth.
    let hundredths = |seconds: f64| (seconds * 42.0 / 36.0).round() as u64;
    let cost: u64 = lines
        .iter()
        .flat_map(|(_, setup, rest)| rest.iter().chain([setup]))
        .map(|seconds| hundredths(*seconds))
        .sum();
    assert_eq!(card.totals.cost.as_ref().unwrap().hundredths(), cost);
}

#[test]
fn lots_share_the_set_up_and_nothing_else() {
    let card = card(EXAMPLE);
    let lines = lines(&card);
    let text = card.text();
    let sizes: Vec<f64> = card.lots.iter().map(|lot| lot.size.value).collect();
    assert_eq!(sizes, [1.0, 10.0, 100.0]);
    let mut together = Vec::new();
    for lot in &card.lots {
        let size = lot.size.value;
        let (mut time, mut cost) = (0.0, 5.40);
        for ((_, setup, rest), entry) in lines.iter().zip(&lot.entries) {
            let seconds = setup / size + rest.iter().sum::<f64>();
            near(entry.time.value, seconds);
            near(entry.cost.value, seconds * 42.0 / 3600.0);
            time += seconds;
            cost += seconds * 42.0 / 3600.0;
        }
        near(lot.time_per_part.value, time);
        near(lot.cost_per_part.value, cost);
        let whole = time.round() as u64;
        together.push(format!(
            "{}:{:02}:{:02}, {cost:.2}",
            whole / 3600,
            whole / 60 % 60,
            whole % 60
        ));
    }
    let line = text
        .lines()
        .rfind(|line| line.trim_start().starts_with("together"))
        .unwrap();
    let words: Vec<&str> = line.split_whitespace().skip(1).collect();
    assert_eq!(words.join(" "), together.join(" "));
    // Set-ups of five machines are all that a larger lot saves.
    let saved = card.lots[0].time_per_part - card.lots[1].time_per_part;
    near(saved.value, 5.0 * 900.0 * 0.9);
}

#[test]
fn without_a_rate_only_the_material_costs() {
    let text = EXAMPLE.replace("machine_rate = \"42 money/h\"\n", "");
    let card = card(&text);
    assert!(card.totals.cost.is_none());
    for lot in &card.lots {
        assert_eq!(lot.cost_per_part.value, 5.4);
    }
    assert!(!card.text().contains("Cost"));
}

/// One operation with a rate of its own costs that; the others that of the part.
#[test]
fn an_operation_may_have_its_own_rate() {
    let text = super::edited(
        super::FILE,
        "count = 2",
        "count = 2\nmachine_rate = \"96 money/h\"",
    );
    let (before, after) = (card(super::FILE), card(&text));
    let cost = |card: &PartCard, line: usize| card.lots[1].entries[line].cost.value;
    near(cost(&after, 0), 2.0 * cost(&before, 0));
    near(cost(&after, 1), cost(&before, 1));
}
