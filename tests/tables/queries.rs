//! Answers: speeds, feeds, unit power, cutting force, hardness, life.

use super::*;

#[test]
fn everyday_speeds_with_high_speed_steel() {
    let al = speed("6061", ToolMaterial::Hss, Process::EndMilling);
    assert!(close(sfm(al.low), 200.0) && close(sfm(al.start), 250.0) && close(sfm(al.high), 600.0));
    assert_eq!(al.support[0].source, "SHOP");
    let mild = speed("1018", ToolMaterial::Hss, Process::EndMilling);
    assert!(
        close(sfm(mild.low), 70.0) && close(sfm(mild.start), 90.0),
        "{mild:?}"
    );
    let stainless = speed("304", ToolMaterial::Hss, Process::EndMilling);
    assert!(
        close(sfm(stainless.low), 40.0) && close(sfm(stainless.start), 50.0),
        "{stainless:?}"
    );
}

#[test]
fn everyday_speeds_have_a_seen_source_for_both_cutters() {
    for name in ["6061", "1018", "304"] {
        for tool in [
            ToolMaterial::Hss,
            ToolMaterial::UncoatedCarbide,
            ToolMaterial::CoatedCarbide,
        ] {
            let range = speed(name, tool, Process::EndMilling);
            let first = &range.support[0];
            assert_eq!(first.provenance, Provenance::Seen, "{name} {tool}");
            assert!(
                Library::builtin()
                    .source(&first.source)
                    .unwrap()
                    .publisher_named
            );
        }
    }
    let carbide = speed("6061", ToolMaterial::CoatedCarbide, Process::EndMilling);
    assert!(
        close(sfm(carbide.low), 800.0)
            && close(sfm(carbide.start), 1150.0)
            && close(sfm(carbide.high), 1500.0)
    );
}

#[test]
fn published_rows_of_other_processes_come_through() {
    // Handbook drilling speeds for 1045 at 175-225 HB: 75 ft/min; face milling 1018 with coated carbide: 730.
    assert!(close(
        sfm(speed("1045", ToolMaterial::Hss, Process::Drilling).start),
        75.0
    ));
    assert!(close(
        sfm(speed("1018", ToolMaterial::CoatedCarbide, Process::FaceMilling).start),
        730.0
    ));
    assert!(close(
        sfm(speed("D2", ToolMaterial::Hss, Process::Drilling).start),
        30.0
    ));
    let tapped = speed("6061", ToolMaterial::Hss, Process::Tapping);
    assert!(close(sfm(tapped.start), 83.0), "{tapped:?}");
    assert!(
        tapped
            .assumptions
            .iter()
            .any(|text| text.contains("no row for the grade"))
    );
}

#[test]
fn assumptions_are_stated() {
    let says =
        |range: &Ranged<Velocity>, text: &str| range.assumptions.iter().any(|a| a.contains(text));
    assert!(says(
        &speed("1018", ToolMaterial::HssCo, Process::EndMilling),
        "HSS-Co taken from HSS"
    ));
    assert!(says(
        &speed("4340qt", ToolMaterial::HssCo, Process::EndMilling),
        "nearest hardness band 275 to 325 HB taken for 330 HB"
    ));
    let bearing = speed("52100", ToolMaterial::Hss, Process::EndMilling);
    assert!(
        says(&bearing, "0.6 of annealed 4140") && close(sfm(bearing.start), 0.6 * 70.0),
        "{bearing:?}"
    );
    let uncoated = speed("1018", ToolMaterial::UncoatedCarbide, Process::FaceMilling);
    assert!(says(&uncoated, "low end is the start") && close(sfm(uncoated.start), 565.0));
    assert!(
        speed("6061", ToolMaterial::Hss, Process::EndMilling)
            .assumptions
            .is_empty()
    );
}

#[test]
fn another_family_does_not_widen_the_band() {
    let wrought = ["SHOP", "MHM"];
    for row in speed("7075", ToolMaterial::Hss, Process::EndMilling).support {
        assert!(wrought.contains(&row.source.as_str()), "{row:?}");
    }
    // Milling of soft and hard cast iron are separate rows; each material sees its own.
    let soft = speed("class 20", ToolMaterial::Hss, Process::EndMilling);
    assert!(
        !soft
            .support
            .iter()
            .any(|row| row.why.starts_with("cast iron hard"))
    );
}

#[test]
fn end_milling_is_answered_or_honestly_refused() {
    let library = Library::builtin();
    let refused = |tool: ToolMaterial| -> BTreeSet<&str> {
        library
            .materials()
            .iter()
            .filter(|material| {
                library
                    .cutting_speed(material, tool, Process::EndMilling)
                    .is_err()
            })
            .map(|material| material.id.as_str())
            .collect()
    };
    let carbide: BTreeSet<&str> = ["pom", "pa66", "x120mn12", "h60", "chilled", "whiteci"].into();
    assert_eq!(refused(ToolMaterial::CoatedCarbide), carbide);
    let hss = refused(ToolMaterial::Hss);
    for id in &hss {
        let group = library.material(id).unwrap().iso513.name();
        assert!(matches!(group, "S" | "H") || carbide.contains(id), "{id}");
    }
    assert!(hss.contains("h50") && hss.contains("in718") && !hss.contains("ti64"));
    let error = library
        .cutting_speed(find("h50"), ToolMaterial::Hss, Process::EndMilling)
        .unwrap_err();
    assert_eq!(error.code(), Code::NoData);
    assert!(
        error.first().admissible.contains("coated carbide"),
        "{error}"
    );
}

#[test]
fn ranges_are_ordered_and_queries_repeat() {
    let library = Library::builtin();
    let again = library.clone();
    for material in library.materials() {
        for tool in ToolMaterial::ALL.iter().take(5) {
            for process in Process::ALL {
                if let Ok(range) = library.cutting_speed(material, *tool, *process) {
                    assert!(
                        range.low.value > 0.0
                            && range.low <= range.start
                            && range.start <= range.high
                    );
                    assert_eq!(
                        range,
                        again.cutting_speed(material, *tool, *process).unwrap()
                    );
                }
            }
        }
        if let Ok(power) = library.unit_power(material) {
            assert!(
                power.low <= power.start && power.start <= power.high && !power.support.is_empty()
            );
        }
    }
}

#[test]
fn half_inch_feeds_lie_where_practice_has_them() {
    let library = Library::builtin();
    for name in ["6061", "1018", "304"] {
        let feed = library
            .feed_per_tooth(
                find(name),
                ToolMaterial::Hss,
                Process::EndMilling,
                inches(0.5),
                inches(0.05),
            )
            .unwrap();
        assert!(
            inch(feed.low) >= 0.001 - 1e-12 && inch(feed.high) <= 0.008,
            "{name} {feed:?}"
        );
        assert!(feed.low <= feed.start && feed.start <= feed.high);
        assert_eq!(feed.support[0].source, "SHOP");
    }
    let feed = library
        .feed_per_tooth(
            find("6061"),
            ToolMaterial::Hss,
            Process::EndMilling,
            inches(0.5),
            inches(0.05),
        )
        .unwrap();
    assert!(close(inch(feed.start), 0.005));
    let feed = library
        .feed_per_tooth(
            find("6061"),
            ToolMaterial::Hss,
            Process::EndMilling,
            inches(1.0),
            inches(0.05),
        )
        .unwrap();
    assert!(close(inch(feed.start), 0.0075));
}

#[test]
fn a_small_cutter_is_never_fed_like_a_large_one() {
    let library = Library::builtin();
    for material in library.materials() {
        for tool in [ToolMaterial::Hss, ToolMaterial::CoatedCarbide] {
            let at = |d: f64| {
                library.feed_per_tooth(material, tool, Process::EndMilling, inches(d), inches(0.05))
            };
            let (Ok(small), Ok(large)) = (at(0.125), at(0.5)) else {
                continue;
            };
            assert!(inch(small.high) <= 0.0026, "{} {small:?}", material.id);
            assert!(
                small.start.value < 0.6 * large.start.value,
                "{}",
                material.id
            );
            assert!(
                small
                    .assumptions
                    .iter()
                    .any(|text| text.contains("in proportion to the diameter")
                        || text.contains("interpolated")),
                "{}",
                material.id
            );
        }
    }
}

#[test]
fn feeds_grow_with_diameter_without_jumps() {
    let library = Library::builtin();
    for (name, tool) in [
        ("6061", ToolMaterial::Hss),
        ("1018", ToolMaterial::CoatedCarbide),
        ("1045", ToolMaterial::Hss),
    ] {
        let mut last = 0.0;
        for step in 1..=60 {
            let feed = library
                .feed_per_tooth(
                    find(name),
                    tool,
                    Process::EndMilling,
                    inches(f64::from(step) / 40.0),
                    inches(0.05),
                )
                .unwrap();
            assert!(feed.high.value >= last - 1e-15, "{name} at {step}");
            last = feed.high.value;
        }
    }
    // 1045 at 200 HB: 0.002 in for 1/2 in at 0.050 in depth and 0.001 at 0.250; 0.0015 between.
    let at = |depth: f64| {
        library
            .feed_per_tooth(
                find("1045"),
                ToolMaterial::Hss,
                Process::EndMilling,
                inches(0.5),
                inches(depth),
            )
            .unwrap()
    };
    assert!(
        close(inch(at(0.05).start), 0.002)
            && close(inch(at(0.25).start), 0.001)
            && close(inch(at(0.15).start), 0.0015)
    );
    assert!(
        at(0.4)
            .assumptions
            .iter()
            .any(|text| text.contains("largest tabulated axial depth"))
    );
}

#[test]
fn feeds_per_revolution_and_wrong_processes() {
    let library = Library::builtin();
    let drill = library
        .feed_per_revolution(
            find("1018"),
            ToolMaterial::Hss,
            Process::Drilling,
            inches(0.375),
        )
        .unwrap();
    assert!(
        inch(drill.low) >= 0.004 - 1e-12 && inch(drill.start) <= 0.007,
        "{drill:?}"
    );
    let error = library
        .feed_per_tooth(
            find("1018"),
            ToolMaterial::Hss,
            Process::Drilling,
            inches(0.5),
            inches(0.1),
        )
        .unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::Inconsistent, "process")
    );
    assert!(
        library
            .feed_per_revolution(
                find("1018"),
                ToolMaterial::Hss,
                Process::Tapping,
                inches(0.25)
            )
            .is_err()
    );
    let error = library
        .feed_per_tooth(
            find("1018"),
            ToolMaterial::Hss,
            Process::EndMilling,
            inches(0.0),
            inches(f64::NAN),
        )
        .unwrap_err();
    assert_eq!(error.problems().len(), 2);
    assert!(
        error
            .problems()
            .iter()
            .all(|problem| problem.code == Code::OutOfRange)
    );
}

#[test]
fn unit_power_says_where_it_was_measured() {
    let library = Library::builtin();
    // Machinery's Handbook: plain carbon steel 120-140 HB 1.88, 180-200 HB 2.24 J/mm3 at 0.30 mm; 4140 at 200-220 HB 1.97.
    for (name, value) in [("1018", 1.88e9), ("1045", 2.24e9), ("42crmo4a", 1.97e9)] {
        let power = library.unit_power(find(name)).unwrap();
        assert!(close(power.start.value, value), "{name} {power:?}");
        assert_eq!(power.measured_at, MeasuredAt::Cutter);
        assert!(close(power.chip_thickness.unwrap().value, 0.3e-3));
    }
    let motor = library.unit_power(find("in718")).unwrap();
    assert_eq!(
        motor.measured_at,
        MeasuredAt::Motor {
            efficiency: Some(0.8)
        }
    );
    assert!(motor.assumptions.iter().any(|text| text.contains("0.8")));
    // Titanium rules for 100-135 and over 135 ksi: 0.6 and 0.4 in3/min per hp; the grade lies between.
    let titanium = library.unit_power(find("ti64")).unwrap();
    assert!(
        (titanium.start.value / 1e9 - 2.7303 / 0.6).abs() < 0.002,
        "{titanium:?}"
    );
    assert!(
        (titanium.high.value / 1e9 - 2.7303 / 0.4).abs() < 0.002,
        "{titanium:?}"
    );
    assert_eq!(
        library.unit_power(find("pom")).unwrap_err().code(),
        Code::NoData
    );
}

#[test]
fn cutting_force_pairs_and_their_band() {
    let library = Library::builtin();
    for (name, source) in [("1018", "DT"), ("304", "TBM"), ("1045", "DT")] {
        assert_eq!(library.kienzle(find(name)).unwrap().default.source, source);
    }
    // Own arithmetic: 2220 x 0.1^-0.14 = 3064, 1500 x 0.1^-0.22 = 2489, 2220 x 0.4^-0.14 = 2524 MPa.
    let pairs = library.kienzle(find("C45E")).unwrap();
    let thin = pairs.band(si(0.1e-3)).unwrap();
    assert!(
        (thin.default.value / 1e6 - 3064.0).abs() < 1.0
            && (thin.low.value / 1e6 - 2489.0).abs() < 1.0,
        "{thin:?}"
    );
    assert_eq!(
        (
            thin.low_pair.source.as_str(),
            thin.high_pair.source.as_str()
        ),
        ("VDI3323", "CHK")
    );
    let thick = pairs.band(si(0.4e-3)).unwrap();
    assert!((thick.high.value / 1e6 - 2524.0).abs() < 1.0 && thick.high_pair.source == "DT");
    assert_eq!(pairs.band(si(0.0)).unwrap_err().code(), Code::OutOfRange);
    assert_eq!(
        library.kienzle(find("h55")).unwrap_err().code(),
        Code::NoData
    );
}

#[test]
fn hardness_converts_over_the_points() {
    let library = Library::builtin();
    for (hrc, hb) in [(50.0, 481.0), (44.0, 409.0), (20.0, 226.0), (58.0, 615.0)] {
        assert!(
            close(library.brinell(HardnessScale::RockwellC, hrc).unwrap(), hb),
            "{hrc}"
        );
    }
    let between = library.brinell(HardnessScale::RockwellC, 43.0).unwrap();
    assert!(close(between, 390.0 + (409.0 - 390.0) * 0.5), "{between}");
    assert!(close(
        library.brinell(HardnessScale::RockwellB, 82.9).unwrap(),
        156.0
    ));
    assert!(close(
        library.brinell(HardnessScale::Vickers, 150.0).unwrap(),
        143.0
    ));
    for (scale, value) in [
        (HardnessScale::RockwellC, 62.0),
        (HardnessScale::RockwellC, 10.0),
        (HardnessScale::Vickers, f64::NAN),
        (HardnessScale::Brinell, -1.0),
    ] {
        assert_eq!(
            library.brinell(scale, value).unwrap_err().code(),
            Code::OutOfRange,
            "{scale:?} {value}"
        );
    }
    let h50 = find("h50");
    assert_eq!(h50.hardness_brinell, Some((421.0, 512.0)));
    assert!(h50.assumptions[0].contains("HRC"));
    assert_eq!(find("h60").hardness_brinell, None);
}

#[test]
fn tool_life_rows_by_tool_material() {
    let library = Library::builtin();
    let hss = library.tool_life(ToolMaterial::Hss).unwrap();
    let steel = hss.iter().find(|row| row.work == "steel").unwrap();
    assert!(
        close(steel.exponent[1], 0.125) && close(steel.speed_at_one_minute.unwrap() * 60.0, 70.0)
    );
    assert!(library.tool_life(ToolMaterial::Pcd).is_err());
}

#[test]
fn sawing_has_its_speeds_and_area_rates() {
    let library = Library::builtin();
    let hss = ToolMaterial::Hss;
    let at = |name: &str| sfm(speed(name, hss, Process::Sawing).start);
    for (name, printed) in [
        ("304", 120.0),
        ("11smnpb30", 425.0),
        ("1018cd", 300.0),
        ("c45hr", 220.0),
        ("o1", 200.0),
        ("s7", 125.0),
        ("ti64", 70.0),
    ] {
        assert!((at(name) - printed).abs() < 1e-9, "{name}: {}", at(name));
    }
    // A wider class answers where the grade has no row, and says so.
    let cast = speed("ge240", hss, Process::Sawing);
    assert!(!cast.assumptions.is_empty());
    let in2_per_min = 0.0254 * 0.0254 / 60.0;
    let rate = library.saw_rate(find("416")).unwrap();
    let printed = [rate.range.low, rate.range.start, rate.range.high];
    for (value, printed) in printed.iter().zip([4.0, 5.0, 6.0]) {
        assert!((value.value / in2_per_min - printed).abs() < 1e-9);
    }
    assert!((sfm(rate.blade_speed) - 145.0).abs() < 1e-9);
    assert!((inch(rate.stock.0) - 6.0).abs() < 1e-9);
    let error = library.saw_rate(find("6061")).unwrap_err();
    assert_eq!(error.code(), Code::NoData);
}

#[test]
fn a_shops_saw_rate_answers_alone_and_a_bad_one_is_refused() {
    let file = |rows: &str| Overlay {
        file_name: "saws.csv".into(),
        text: format!(
            "id,class,stock_min_mm,vc_low_m_min,vc_high_m_min,rate_start_cm2_min,src\n{rows}\n"
        ),
    };
    let library = Library::builtin()
        .with_overlay(&[file("w1,304,80,30,40,18,shop trial")])
        .unwrap();
    let rate = library.saw_rate(find("304")).unwrap();
    assert!((rate.range.start.value * 600_000.0 - 18.0).abs() < 1e-9);
    assert!((rate.blade_speed.value * 60.0 - 35.0).abs() < 1e-9);
    for (row, column) in [
        ("w2,304,80,40,30,18,s", "vc_low_m_min"),
        ("w3,304,,30,40,18,s", "stock_min_mm"),
        ("w4,304,80,,,18,s", "vc_low_m_min"),
        ("w5,304,80,30,40,-1,s", "rate_start_cm2_min"),
    ] {
        let error = Library::builtin().with_overlay(&[file(row)]).unwrap_err();
        assert!(
            error.problems()[0].parameter.ends_with(column),
            "{row}: {error}"
        );
    }
}
