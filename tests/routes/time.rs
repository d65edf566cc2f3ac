//! Time and cost of a route, added up by hand.

use super::{block, library, route};
use gullet::operation::Operation;
use gullet::plan::{Job, PassPlan, RouteCard, RouteEntry, Stock, TimeParts};
use gullet::quantity::si;

#[test]
fn the_parts_add_up_to_the_total_exactly() {
    let block = block();
    let route = route(&block);
    let entries = route.entries();
    assert_eq!(entries.len(), 7);
    let totals = route.totals().unwrap();
    // Common practice of the training shop: 15 min once, then 3, 1 and 1 min a clamping.
    assert_eq!(totals.time.setup.value, 900.0);
    assert_eq!(totals.time.clamping.value, 6.0 * 180.0);
    assert_eq!(totals.time.measuring.value, 6.0 * 60.0);
    assert_eq!(totals.time.deburring.value, 6.0 * 60.0);
    let mut handling = 0.0;
    let (mut cutting, mut returning) = (0.0, 0.0);
    for (clamping, entry) in route.clampings.iter().zip(&entries[1..]) {
        let plan = &clamping.card.plan;
        let strips = f64::from(plan.strips.count);
        let mut cut = 0.0;
        let mut back = 0.0;
        for pass in &plan.passes {
            let travel = pass.cut.consequences.travel.value;
            cut += strips * travel / pass.cut.settings.table_feed.value;
            // Cranked back at two turns a second of 0.200 in.
            back += strips * travel / (2.0 * 0.2 * 0.0254);
        }
        cutting += cut.round();
        returning += back.round();
        handling += 60.0 * plan.passes.len() as f64;
        assert!((entry.time.cutting.value - cut).abs() <= 0.5 + 1e-6);
        assert!((entry.time.returning.value - back).abs() <= 0.5 + 1e-6);
        let parts: f64 = entry.time.parts().iter().map(|part| part.value).sum();
        assert_eq!(parts, entry.time.total().value);
    }
    assert_eq!(totals.time.cutting.value, cutting);
    assert_eq!(totals.time.returning.value, returning);
    assert_eq!(totals.time.handling.value, handling);
    let parts: f64 = totals.time.parts().iter().map(|part| part.value).sum();
    let lines: f64 = entries.iter().map(|entry| entry.time.total().value).sum();
    assert_eq!(totals.time.total().value, parts);
    assert_eq!(totals.time.total().value, lines);

    // 45 an hour are 1.25 hundredths a second.
    let cost = totals.cost.unwrap();
    for (part, time) in cost.parts.iter().zip(totals.time.parts()) {
        let exact = 1.25 * time.value;
        // Each of seven lines is rounded.
        assert!((*part as f64 - exact).abs() <= 3.5, "{part} for {exact}");
    }
    let of_lines: u64 = totals
        .entries
        .iter()
        .map(|cost| cost.as_ref().unwrap().hundredths())
        .sum();
    assert_eq!(cost.hundredths(), of_lines);
    assert_eq!(cost.hundredths(), cost.parts.iter().sum::<u64>());
}

#[test]
fn other_work_joins_the_summary() {
    let route = route(&block());
    let mut entries = vec![RouteEntry {
        name: "saw blank".to_owned(),
        machine: "band saw".to_owned(),
        time: TimeParts {
            clamping: si(60.0),
            cutting: si(245.2),
            ..TimeParts::default()
        }
        .in_seconds(),
        rate: Some(si(30.0 / 3600.0)),
        cautions: vec!["Keep hands off the line of the blade.".to_owned()],
    }];
    let alone = route.totals().unwrap();
    entries.extend(route.entries());
    let card = RouteCard::with(route, entries).unwrap();
    assert_eq!(
        card.totals.time.total().value,
        alone.time.total().value + 305.0
    );
    // 60 s and 245 s at 30 an hour.
    assert_eq!(
        card.totals.cost.as_ref().unwrap().hundredths(),
        alone.cost.unwrap().hundredths() + 50 + 204
    );
    let summary = card.summary();
    assert!(summary.contains("saw blank") && summary.contains("line of the blade"));
    assert_eq!(card.json()["entries"][0]["machine"], "band saw");
}

#[test]
fn without_a_rate_there_is_no_cost() {
    let mut block = block();
    block.rate = None;
    let card = RouteCard::new(block, library()).unwrap();
    assert!(card.totals.cost.is_none());
    assert!(card.json()["cost"].is_null());
    assert!(!card.summary().contains("Cost"));
}

/// A face wider than the cutter is cut in strips, each with its own travel.
#[test]
fn a_face_wider_than_the_cutter_takes_strips() {
    let clamping = &route(&block()).clampings[0];
    let job = &clamping.card.job;
    let plan = &clamping.card.plan;
    // 2.100 in over three quarters of 3/4 in: 3.73, so four.
    assert_eq!(plan.strips.count, 4);
    let width = plan.passes[0].cut.pass.radial_depth;
    assert!((width.value - 2.1 * 0.0254 / 4.0).abs() < 1e-12);
    let one = |width: f64, operation| {
        let job = Job {
            operation,
            radial_depth: Some(si(width)),
            axial_depth: Some(si(0.005)),
            stock: Stock::Remove(si(1e-3)),
            ..job.clone()
        };
        PassPlan::new(&job, library()).unwrap().strips.count
    };
    let d = job.cutter.diameter.value;
    assert_eq!(one(d, Operation::FaceMilling), 1);
    assert_eq!(one(1.01 * d, Operation::FaceMilling), 2);
    assert_eq!(one(1.5 * d, Operation::FaceMilling), 2);
    assert_eq!(one(1.51 * d, Operation::FaceMilling), 3);
    assert_eq!(one(1.5 * d, Operation::SideMilling), 1);
    let error = PassPlan::new(
        &Job {
            radial_depth: Some(si(50.0)),
            ..job.clone()
        },
        library(),
    )
    .map(|plan| plan.strips)
    .unwrap_err();
    assert_eq!(error.first().parameter, "cut.width");
}
