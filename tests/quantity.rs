//! The contract of quantities as a user of the crate meets it: what is read, what is refused and
//! how, what is printed, and that text, numbers and units never disagree by a bit.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use gullet::quantity::{
    Kind, Quantity, UnitSystem, format, format_exact, format_in, from_unit, parse, to_unit, unit,
    units,
};
use gullet::{Code, error::Problem};
use proptest::prelude::*;

fn refused(kind: Kind, text: &str) -> Problem {
    let error = parse(kind, text).expect_err(text);
    assert_eq!(error.problems().len(), 1);
    error.first().clone()
}

#[test]
fn what_a_shop_writes_is_read() {
    for (kind, text, same) in [
        ("length", "1/2 in", "12.7 mm"),
        ("length", "1-1/4 in", "31.75 mm"),
        ("length", "2 3/8\"", "60.325 mm"),
        ("length", "0.010 in", "10 thou"),
        ("length", "0.1 mm/tooth", "0.0001 m"),
        ("length", "0.8 µm", "0.0008 mm"),
        ("velocity", "90 ft/min", "90 sfm"),
        ("velocity", "90 ft/min", "1080 in/min"),
        ("velocity", "9 in/min", "228.6 mm/min"),
        ("velocity", "30 m/min", "500 mm/s"),
        ("rotational_speed", "1115 rpm", "1115 1/min"),
        ("rotational_speed", "60 rpm", "1 rps"),
        ("turns", "2.5 turns", "2 1/2"),
        ("count", "4", "4.0"),
        ("ratio", "80 %", "0.8"),
        ("angle", "180 deg", "3.14159265358979323846 rad"),
        ("area", "1 in2", "645.16 mm²"),
        ("volume_rate", "1 in3/min", "16387.064 mm3/min"),
        ("force", "1 kN", "1000 N"),
        ("line_force", "200 N/mm", "200000 N/m"),
        ("stiffness", "1 N/um", "1e6 N/m"),
        ("pressure", "700 N/mm2", "700 MPa"),
        ("pressure", "2 J/mm3", "2 W.s/mm3"),
        ("pressure", "2 GPa", "2 kW/(cm3/s)"),
        ("pressure", "60 GPa", "1 kW.min/cm3"),
        ("pressure", "1 hp·min/in³", "396000 psi"),
        ("power", "1.5 hp", "1118.54980737340533 W"),
        ("power", "1 PS", "735.49875 W"),
        ("torque", "12 N·m", "12 Nm"),
        ("torque", "1 lbf.ft", "12 in-lbf"),
        ("time", "1.5 h", "90 min"),
        ("acceleration", "1 m/s2", "1000 mm/s²"),
        ("area_rate", "1 in2/min", "645.16 mm2/min"),
        ("money", "19.90", "19.9"),
        ("money_rate", "45 money/h", "0.75 per min"),
        ("frequency", "1 kHz", "1000 Hz"),
        ("density", "7.85 g/cm3", "7850 kg/m3"),
    ] {
        let kind = Kind::from_name(kind).unwrap();
        let (a, b) = (parse(kind, text).unwrap(), parse(kind, same).unwrap());
        assert_eq!(a.to_bits(), b.to_bits(), "{text} {same}");
    }
}

#[test]
fn revolutions_are_never_radians() {
    assert_eq!(parse(Kind::RotationalSpeed, "1 rpm").unwrap(), 1.0 / 60.0);
    for text in ["100 rad/s", "100 deg/s", "100 rad/min"] {
        let problem = refused(Kind::RotationalSpeed, text);
        assert_eq!(problem.code, Code::UnitUnknown);
        let end = " is no unit of rotational speed; give it in rpm";
        assert!(problem.remedy.ends_with(end), "{}", problem.remedy);
    }
}

#[test]
fn a_bare_number_is_shown_how_to_be_written() {
    assert_eq!(
        refused(Kind::Length, "0.5"),
        Problem::new(
            Code::UnitMissing,
            "",
            "0.5",
            "mm, in, thou, um, cm, m, ft, uin",
            "write 0.5 mm or 0.5 in",
        )
    );
    for kind in Kind::ALL {
        let bare = parse(*kind, "3");
        match kind {
            Kind::Ratio | Kind::Count | Kind::Money | Kind::Turns => assert_eq!(bare.unwrap(), 3.0),
            _ => {
                let problem = refused(*kind, "3");
                assert_eq!(problem.code, Code::UnitMissing, "{kind:?}");
                // What the remedy says to write is read.
                let written = problem.remedy.strip_prefix("write ").unwrap();
                for text in written.split(" or ") {
                    parse(*kind, text).unwrap();
                }
            }
        }
    }
}

#[test]
fn bad_text_gets_its_code() {
    for (text, code) in [
        ("", Code::NumberUnreadable),
        ("mm", Code::NumberUnreadable),
        ("twelve mm", Code::NumberUnreadable),
        ("12,7 mm", Code::NumberUnreadable),
        ("1,000 mm", Code::NumberUnreadable),
        ("1 000 mm", Code::NumberUnreadable),
        ("0x1F mm", Code::NumberUnreadable),
        ("1/0 in", Code::NumberUnreadable),
        ("NaN mm", Code::NotFinite),
        ("inf mm", Code::NotFinite),
        ("1e999 mm", Code::NotFinite),
        ("5 mm mm", Code::UnitUnknown),
        ("5 N", Code::UnitUnknown),
        ("5 M", Code::UnitUnknown),
        ("5 %", Code::UnitUnknown),
    ] {
        assert_eq!(refused(Kind::Length, text).code, code, "{text}");
    }
    assert_eq!(refused(Kind::Pressure, "5 mPa").code, Code::UnitUnknown);
}

#[test]
fn half_a_thou_is_never_five_microns() {
    let si = parse(Kind::Length, "0.0005 in").unwrap();
    assert_eq!(format(Kind::Length, si, UnitSystem::Inch), "0.0005 in");
    assert_eq!(format(Kind::Length, si, UnitSystem::Metric), "12.7 um");
    assert_eq!(format_in(Kind::Length, si, "thou", 4).unwrap(), "0.5 thou");
    assert_eq!(
        Quantity {
            kind: Kind::Length,
            si
        }
        .to_string(),
        "12.7 um"
    );
}

proptest! {
    #[test]
    fn exact_text_gives_the_same_bits(bits in any::<u64>()) {
        let si = f64::from_bits(bits);
        prop_assume!(si.is_finite());
        for kind in Kind::ALL {
            for unit in units(*kind) {
                let text = format_exact(*kind, si, unit);
                prop_assert_eq!(parse(*kind, &text).unwrap().to_bits(), bits, "{}", text);
            }
        }
    }

    /// One inch is 25.4 mm at every size.
    #[test]
    fn inch_and_metric_give_the_same_bits(count in 1_u64..100_000_000, power in -20_i32..20) {
        let inch = parse(Kind::Length, &format!("{count}e{power} in")).unwrap();
        let metric = parse(Kind::Length, &format!("{}e{} mm", count * 254, power - 1)).unwrap();
        prop_assert_eq!(inch.to_bits(), metric.to_bits());
    }

    #[test]
    fn a_number_with_a_unit_is_its_text(value in any::<f64>()) {
        prop_assume!(value.is_finite());
        let thou = unit(Kind::Length, "thou").unwrap();
        let si = parse(Kind::Length, &format!("{value:e} thou")).unwrap();
        prop_assert_eq!(from_unit(value, thou).to_bits(), si.to_bits());
        if value.abs() > 1e-290 {
            let back = to_unit(si, thou);
            prop_assert!((back - value).abs() <= value.abs() * f64::EPSILON);
        }
    }

    #[test]
    fn any_text_is_read_or_refused(text in ".*") {
        for kind in Kind::ALL {
            match parse(*kind, &text) {
                Ok(si) => prop_assert!(si.is_finite()),
                Err(error) => prop_assert!(!error.first().remedy.is_empty()),
            }
        }
    }
}

/// A name such as run_in is no inch.
#[test]
fn names_are_no_units() {
    use gullet::formula::units_of;
    for metric in [
        "run_in=6 mm; thread=internal",
        "bore_in_steps=3",
        "feed=0.1 mm",
    ] {
        assert_eq!(units_of(metric), UnitSystem::Metric, "{metric}");
    }
    for inch in ["run_in=0.25 in", "feed=0.004in", "v=90ft/min", "d=1/2\""] {
        assert_eq!(units_of(inch), UnitSystem::Inch, "{inch}");
    }
}
