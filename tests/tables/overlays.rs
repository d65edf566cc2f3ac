//! A shop's own tables over the embedded ones, good and bad.

use super::*;

fn shop(text: &str) -> Overlay {
    Overlay {
        file_name: "shop.csv".into(),
        text: text.into(),
    }
}

const SPEED: &str = "id,class,tool_material,process,sfm_low,sfm_start,sfm_high,src\n";

#[test]
fn a_shop_row_answers_alone() {
    let text = format!("{SPEED}s1,6061,HSS,end milling,180,220,260,shop log 2024\n");
    let library = Library::builtin().with_overlay(&[shop(&text)]).unwrap();
    let range = library
        .cutting_speed(
            library.material("6061").unwrap(),
            ToolMaterial::Hss,
            Process::EndMilling,
        )
        .unwrap();
    assert!(
        close(sfm(range.low), 180.0)
            && close(sfm(range.start), 220.0)
            && close(sfm(range.high), 260.0)
    );
    assert_eq!(range.support[0].provenance, Provenance::Shop);
    assert_eq!(
        library.source("shop log 2024").unwrap().provenance,
        Provenance::Shop
    );
    // Other materials, other tools and the library it was laid over keep their answers.
    let other = library
        .cutting_speed(
            library.material("7075").unwrap(),
            ToolMaterial::Hss,
            Process::EndMilling,
        )
        .unwrap();
    assert!(close(sfm(other.start), 250.0));
    assert!(close(
        sfm(speed("6061", ToolMaterial::Hss, Process::EndMilling).start),
        250.0
    ));
}

#[test]
fn columns_in_any_order_crlf_bom_quotes_and_either_unit() {
    let text = "\u{feff}src,vc_start_m_min,process,tool_material,class,id\r\n\"ours, 2024\",60,end mill,hss,1018,x\r\n\r\n";
    let library = Library::builtin().with_overlay(&[shop(text)]).unwrap();
    let range = library
        .cutting_speed(
            library.material("1018").unwrap(),
            ToolMaterial::Hss,
            Process::EndMilling,
        )
        .unwrap();
    assert!(close(range.start.value, 1.0) && range.low == range.start);
    assert!(
        Library::builtin().with_overlay(&[shop(SPEED)]).is_ok(),
        "a header alone adds nothing"
    );
    let two = "id,class,tool_material,process,vc_start_m_min,sfm_start,printed_in\na,1018,HSS,end mill,27.4,90,ft/min\n";
    let library = Library::builtin().with_overlay(&[shop(two)]).unwrap();
    let range = library
        .cutting_speed(
            library.material("1018").unwrap(),
            ToolMaterial::Hss,
            Process::EndMilling,
        )
        .unwrap();
    assert!(close(sfm(range.start), 90.0));
}

#[test]
fn a_row_of_a_known_id_replaces_it() {
    let text = format!("{SPEED}cs443,aluminium-wrought,HSS,end milling,210,240,280,ours\n");
    let library = Library::builtin().with_overlay(&[shop(&text)]).unwrap();
    let range = library
        .cutting_speed(
            library.material("6061").unwrap(),
            ToolMaterial::Hss,
            Process::EndMilling,
        )
        .unwrap();
    assert_eq!(
        (range.support.len(), range.support[0].row.as_str()),
        (1, "cs443")
    );
}

#[test]
fn a_shop_material_and_rows_for_it() {
    let material = "id,name,iso513,classes,hardness_min,hardness_max,hardness_scale,kc11_mpa,mc,aliases\nourbar,Our bar,P,alloy-4140,28,32,HRC,1800,0.25,bar;6061\n";
    let row = format!("{SPEED}r1,ourbar,HSS,end milling,40,45,50,\n");
    let files = [
        Overlay {
            file_name: "speeds.csv".into(),
            text: row,
        },
        Overlay {
            file_name: "materials.csv".into(),
            text: material.into(),
        },
    ];
    let library = Library::builtin().with_overlay(&files).unwrap();
    let bar = library.material("Bar").unwrap();
    let (low, high) = bar.hardness_brinell.unwrap();
    assert!(close(low, 271.0) && close(high, 301.0));
    assert!(close(
        library.kienzle(bar).unwrap().default.kc11.value,
        1800e6
    ));
    let range = library
        .cutting_speed(bar, ToolMaterial::Hss, Process::EndMilling)
        .unwrap();
    assert!(close(sfm(range.start), 45.0) && range.support[0].source == "shop file speeds.csv");
    // The class gives the rest, at the material's hardness.
    let face = library
        .cutting_speed(bar, ToolMaterial::CoatedCarbide, Process::FaceMilling)
        .unwrap();
    assert!(close(sfm(face.start), 485.0), "{face:?}");
    assert!(
        library
            .material("6061")
            .is_ok_and(|found| found.id == "6061"),
        "an id outranks an alias"
    );
}

#[test]
fn other_kinds_of_table() {
    let files = [
        "id,class,tool_material,process,dia_min_in,feed_start_in\nf1,6061,HSS,end milling,0.5,0.0035\n",
        "id,class,u_start_hp_min_in3,measured_at,efficiency\nu1,6061,0.33,motor,0.75\n",
        "id,work,tool_material,n,c_m_min\nt1,6061,HSS,0.15,120\n",
        "id,title,publisher\nLOG,shop log,named\n",
        "id,hv,hb\nh1,700,650\n",
    ]
    .map(shop);
    let library = Library::builtin().with_overlay(&files).unwrap();
    let bar = library.material("6061").unwrap();
    let feed = library
        .feed_per_tooth(
            bar,
            ToolMaterial::Hss,
            Process::EndMilling,
            inches(0.5),
            inches(0.1),
        )
        .unwrap();
    assert!(close(inch(feed.start), 0.0035));
    let power = library.unit_power(bar).unwrap();
    // 1 hp.min/in3 = 396 000 psi.
    assert!((power.start.value / (0.33 * 396_000.0 * 6_894.757_293_168_361) - 1.0).abs() < 1e-12);
    assert_eq!(
        power.measured_at,
        MeasuredAt::Motor {
            efficiency: Some(0.75)
        }
    );
    assert!(
        library
            .tool_life(ToolMaterial::Hss)
            .unwrap()
            .iter()
            .any(|row| row.id == "t1")
    );
    assert!(library.source("LOG").is_some());
    assert!(library.brinell(HardnessScale::RockwellC, 59.0).is_ok());
}

/// Bad text, and the places that must be named, in order.
const BAD: &[(&str, &[&str])] = &[
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,0\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,-5\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,fast\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,NaN\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,inf\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,250 ft/min\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,\"2,5\"\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,25000\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_low,sfm_start,sfm_high\na,6061,HSS,end milling,300,250,400\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_low,sfm_start,sfm_high\na,6061,HSS,end milling,200,250,240\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,vc_start_m_min,sfm_start\na,6061,HSS,end milling,100,250\n",
        &["2:sfm_start"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6O61,HSS,end milling,250\n",
        &["2:class"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,4140,HSS,end milling,60\n",
        &["2:class"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,,HSS,end milling,60\n",
        &["2:class"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSSS,end milling,250\n",
        &["2:tool_material"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,hopping,250\n",
        &["2:process"],
    ),
    (
        "id,class,tool_material,process,sfm_start\n,6061,HSS,end milling,250\n",
        &["2:id"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,250\na,7075,HSS,end milling,250\n",
        &["3:id"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling\n",
        &["2:fields"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,end milling,250,7\n",
        &["2:fields"],
    ),
    (
        "id,class,tool_material,process,sfm_start\na,6061,HSS,\"end milling,250\nb,6061,HSS,drill,200\n",
        &["2:fields"],
    ),
    (
        "id,class,tool_material,process,sfm_strat\na,6061,HSS,end milling,250\n",
        &["1:sfm_strat", "1:vc_start_m_min"],
    ),
    (
        "id,class,tool_material,process,sfm_start,sfm_start\na,6061,HSS,end milling,250,250\n",
        &["1:sfm_start"],
    ),
    (
        "id,tool_material,process,sfm_start\na,HSS,end milling,250\n",
        &["1:class"],
    ),
    (
        "id,class,tool_material,process,hb_min,hb_max,sfm_start\na,1018,HSS,end milling,200,100,90\n",
        &["2:hb_min"],
    ),
    ("", &["1:header"]),
    ("colour,taste\nred,sweet\n", &["1:header"]),
    ("id,name,iso513\nx,X,Q\n", &["2:iso513"]),
    ("id,name,iso513\nx,,P\n", &["2:name"]),
    (
        "id,name,iso513,kc11_mpa,mc\nx,X,P,2.2,0.25\n",
        &["2:kc11_mpa"],
    ),
    ("id,name,iso513,kc11_mpa,mc\nx,X,P,2200,1\n", &["2:mc"]),
    ("id,name,iso513,kc11_mpa,mc\nx,X,P,2200,-0.1\n", &["2:mc"]),
    ("id,name,iso513,kc11_mpa,mc\nx,X,P,2200,\n", &["2:mc"]),
    ("id,name,iso513,kc11_mpa,mc\nx,X,P,,0.25\n", &["2:kc11_mpa"]),
    ("id,name,iso513,classes\nx,X,P,lowcarbon\n", &["2:classes"]),
    (
        "id,name,iso513,hardness_min,hardness_max,hardness_scale\nx,X,P,200,180,HB\n",
        &["2:hardness_min"],
    ),
    (
        "id,name,iso513,hardness_min,hardness_max,hardness_scale\nx,X,P,180,200,Shore\n",
        &["2:hardness_scale"],
    ),
    (
        "id,class,tool_material,process,dia_min_mm,feed_start_mm\nf,6061,HSS,end milling,12,50\n",
        &["2:feed_start_mm"],
    ),
    (
        "id,class,tool_material,process,dia_min_mm,dia_max_mm,feed_start_mm\nf,6061,HSS,end milling,12,6,0.05\n",
        &["2:dia_min_mm"],
    ),
    (
        "id,class,tool_material,process,per,feed_start_mm\nf,6061,HSS,end milling,minute,0.05\n",
        &["2:per"],
    ),
    (
        "id,class,u_start_j_mm3,measured_at,efficiency\nu,6061,0.8,motor,80\n",
        &["2:efficiency"],
    ),
    (
        "id,class,u_start_j_mm3,measured_at\nu,6061,0.8,spindle\n",
        &["2:measured_at"],
    ),
    ("id,class,u_start_j_mm3\nu,6061,800\n", &["2:u_start_j_mm3"]),
    ("id,work,tool_material,n\nt,steel,HSS,1.2\n", &["2:n"]),
    ("id,work,tool_material,n\nt,steel,HSS,\n", &["2:n"]),
    ("id,hrc,hb\nh,15,200\n", &["2:hrc"]),
    ("id,hrc,hb\nh,30,\n", &["2:hv"]),
    ("id,title,publisher\ns,,named\n", &["2:title"]),
    ("id,title,publisher\ns,Log,secret\n", &["2:publisher"]),
];

#[test]
fn bad_tables_are_refused_with_code_and_place() {
    assert!(BAD.len() >= 25);
    for (text, places) in BAD {
        let error = Library::builtin().with_overlay(&[shop(text)]).unwrap_err();
        let found: Vec<&str> = error
            .problems()
            .iter()
            .map(|problem| problem.parameter.as_str())
            .collect();
        let wanted: Vec<String> = places
            .iter()
            .map(|place| format!("shop.csv:{place}"))
            .collect();
        assert_eq!(found, wanted, "{text}\n{error}");
        for problem in error.problems() {
            assert_eq!(problem.code, Code::BadRow, "{text}");
            assert!(
                !problem.admissible.is_empty() && !problem.remedy.is_empty(),
                "{text}\n{problem}"
            );
        }
    }
}

#[test]
fn nearest_names_are_suggested() {
    for (text, name) in [
        (
            "id,class,tool_material,process,sfm_strat\na,6061,HSS,end milling,250\n",
            "sfm_start",
        ),
        (
            "id,class,tool_material,process,sfm_start\na,aluminum,HSS,end milling,250\n",
            "aluminium",
        ),
        (
            "id,class,tool_material,process,sfm_start\na,6061,HSSS,end milling,250\n",
            "HSS",
        ),
        (
            "id,class,tool_material,process,sfm_start\na,6061,HSS,end miling,250\n",
            "end milling",
        ),
    ] {
        let error = Library::builtin().with_overlay(&[shop(text)]).unwrap_err();
        assert!(
            error
                .problems()
                .iter()
                .any(|problem| problem.remedy.contains(name)),
            "{name}\n{error}"
        );
    }
}

#[test]
fn all_problems_of_all_files_come_at_once() {
    let one = format!(
        "{SPEED}a,6061,HSS,end milling,0,x,5,\nb,6061,HSS,end milling,180,220,260,ok\nc,nonsense,HSS,end milling,1,2,3,\n"
    );
    let two = "id,name,iso513\nm,,Z\n";
    let files = [
        Overlay {
            file_name: "a.csv".into(),
            text: one,
        },
        Overlay {
            file_name: "b.csv".into(),
            text: two.into(),
        },
    ];
    let error = Library::builtin().with_overlay(&files).unwrap_err();
    let found: BTreeSet<&str> = error
        .problems()
        .iter()
        .map(|problem| problem.parameter.as_str())
        .collect();
    assert_eq!(
        found,
        [
            "a.csv:2:sfm_low",
            "a.csv:2:sfm_start",
            "a.csv:4:class",
            "b.csv:2:iso513",
            "b.csv:2:name"
        ]
        .into()
    );
}

#[test]
fn bytes_that_are_not_utf8_name_the_line() {
    let error = Overlay::from_bytes("x.csv", b"id,class\na,6061\nb,\xff\n").unwrap_err();
    assert_eq!(
        (error.code(), error.first().parameter.as_str()),
        (Code::BadRow, "x.csv:3:bytes")
    );
    assert!(Overlay::from_bytes("x.csv", "id,class\n".as_bytes()).is_ok());
}

#[test]
fn a_large_file_takes_linear_time() {
    let build = |count: usize, value: &str| {
        let mut text = SPEED.to_owned();
        for index in 0..count {
            text.push_str(&format!(
                "big{index},6061,HSS,end milling,100,{value},300,log\n"
            ));
        }
        shop(&text)
    };
    let library = Library::builtin()
        .with_overlay(&[build(40_000, "200")])
        .unwrap();
    let range = library
        .cutting_speed(
            library.material("6061").unwrap(),
            ToolMaterial::Hss,
            Process::EndMilling,
        )
        .unwrap();
    assert_eq!(range.support.len(), 40_000);
    let error = Library::builtin()
        .with_overlay(&[build(40_000, "0")])
        .unwrap_err();
    assert_eq!(error.problems().len(), 40_000);
}

proptest::proptest! {
    #[test]
    fn any_text_is_read_or_refused(text in "(id|class|process|tool_material|sfm_start|hv|title|,|\n|\"|6061|HSS|0|-|\\PC){0,60}") {
        if let Err(error) = Library::builtin().with_overlay(&[shop(&text)]) {
            for problem in error.problems() {
                proptest::prop_assert_eq!(problem.code, Code::BadRow);
                proptest::prop_assert!(problem.parameter.starts_with("shop.csv:"));
            }
        }
    }
}
