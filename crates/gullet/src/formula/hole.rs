//! Holes: travel of a drill, pecks and their time, countersinks, what is left for the reamer.

use super::define::formulas;
use crate::quantity::math::{floor, max, min, number, select};
use crate::quantity::{Acceleration, Length, Ratio, Time, Velocity};

formulas! {
    topic "hole";

    through_hole_travel {
        symbol "L", "L";
        meaning "Travel at feed of a drill through the work.";
        thickness t: Length, above 0.0, "thickness of the work along the hole";
        point_length l_p: Length, from 0.0, "length of the drill's point";
        approach l_a: Length, from 0.0, "clearance above the work from which the drill feeds";
        overtravel l_u: Length, from 0.0, default 0.0, "travel past the point where the full diameter breaks through";
        -> Length;
        equation "L = t + l_p + l_a + l_u", r"L = t + l_p + l_a + l_u";
        valid "flat faces square to the drill; the point counts once: it must pass the far face, on the near one it only starts the cut";
        source "definition; textbooks on manufacturing give travel as thickness and point, from memory";
        example "thickness=15 mm; point_length=6 mm; approach=2 mm; overtravel=1 mm" => "24 mm", 1e-12, "own arithmetic";
        = t + l_p + l_a + l_u
    }

    blind_hole_travel {
        symbol "L", "L";
        meaning "Travel at feed of a drill into a blind hole whose depth counts at full diameter.";
        depth l: Length, above 0.0, "depth of the hole at full diameter, without the cone of the point";
        point_length l_p: Length, from 0.0, "length of the drill's point";
        approach l_a: Length, from 0.0, "clearance above the work from which the drill feeds";
        -> Length;
        equation "L = l + l_p + l_a", r"L = l + l_p + l_a";
        valid "a depth that a drawing gives to the tip has the point in it: see full_diameter_depth";
        source "definition";
        example "depth=60 mm; point_length=4 mm; approach=2 mm" => "66 mm", 1e-12, "own arithmetic";
        = l + l_p + l_a
    }

    full_diameter_depth {
        symbol "l", "l";
        meaning "Depth at full diameter of a blind hole whose depth counts to the tip of the drill.";
        tip_depth l_t: Length, above 0.0, "depth of the hole to the tip of the drill";
        point_length l_p: Length, from 0.0, to tip_depth, "length of the drill's point";
        -> Length;
        equation "l = l_t - l_p", r"l = l_t - l_p";
        valid "the hole is deeper than the point is long";
        source "definition";
        example "tip_depth=20 mm; point_length=3 mm" => "17 mm", 1e-12, "own arithmetic";
        = max(l_t - l_p, si(0.0))
    }

    peck_count {
        symbol "N", "N";
        meaning "Pecks of a drill for a travel.";
        travel L: Length, above 0.0, "travel at feed from the plane where the pecks start to the bottom";
        peck q: Length, above 0.0, "depth of a peck";
        -> Count;
        equation "N = ceil(L/q)", r"N = \left\lceil\frac{L}{q}\right\rceil";
        valid "equal pecks, the last one what is left; a quotient within 1e-9, relative, above a whole number counts as that number";
        source "definition";
        example "travel=30 mm; peck=8 mm" => "4", 1e-12, "own arithmetic: 3.75 rounded up";
        = pecks(L, q)
    }

    peck_cycle_time {
        symbol "t", "t";
        meaning "Time of drilling a hole in pecks, out of the hole after each.";
        travel L: Length, above 0.0, "travel at feed from the retract plane to the bottom";
        peck q: Length, above 0.0, "depth of a peck";
        reentry_clearance s: Length, from 0.0, to peck, "distance above the last bottom where the feed starts again";
        feed_speed v_f: Velocity, above 0.0, "feed speed";
        rapid_speed v: Velocity, above 0.0, "rapid speed";
        acceleration a: Acceleration, above 0.0, "acceleration of the rapid moves";
        dwell t_d: Time, from 0.0, default 0.0, "dwell at the bottom of each peck";
        -> Time;
        equation "t = (L + (N - 1) s)/v_f + N t_d + t_L + T; N = ceil(L/q); t_L = time of a rapid move over L; T = sum over i from 1 to N - 1 of the rapid moves over i q and over i q - s, at v and a",
            r"t = \frac{L + (N - 1) s}{v_f} + N t_d + t_r(L) + \sum_{i=1}^{N-1} \left(t_r(i q) + t_r(i q - s)\right),\quad N = \left\lceil\frac{L}{q}\right\rceil";
        valid "pecks measured from the retract plane, to which the drill goes back each time and at the end; t_r is rapid_time with v and a: short moves never reach the rapid speed; no time for the spindle or the control";
        source "derived: the moves of the cycle, each by motion at constant acceleration";
        example "travel=30 mm; peck=10 mm; reentry_clearance=1 mm; feed_speed=120 mm/min; rapid_speed=6 m/min; acceleration=10 m/s2; dwell=0.5 s" => "18.43 s", 1e-12,
            "own arithmetic: 16 s of feed, 1.5 s of dwell, rapids over 10, 9, 20, 19 and 30 mm at 0.1 m/s with 0.01 s of ramps each";
        require peck: (travel <= 1000.0 * peck), "travel <= 1000*peck";
        = {
            let N = pecks(L, q);
            let returns = N - number(1.0);
            let moves = |less| super::rapid_moves(returns, q, less, v, a);
            let out = crate::formula::time::rapid_time::value(L, v, a);
            let rapids = moves(si(0.0)) + moves(s) + out;
            (L + returns * s) / v_f + N * t_d + rapids
        }
    }

    chip_break_cycle_time {
        symbol "t", "t";
        meaning "Time of drilling a hole in pecks with a short retract after each, that breaks the chip.";
        travel L: Length, above 0.0, "travel at feed from the retract plane to the bottom";
        peck q: Length, above 0.0, "depth of a peck";
        retract d: Length, from 0.0, to peck, "retract after each peck, at rapid speed";
        feed_speed v_f: Velocity, above 0.0, "feed speed";
        rapid_speed v: Velocity, above 0.0, "rapid speed";
        acceleration a: Acceleration, above 0.0, "acceleration of the rapid moves";
        dwell t_d: Time, from 0.0, default 0.0, "dwell at the bottom of each peck";
        -> Time;
        equation "t = (L + (N - 1) d)/v_f + N t_d + (N - 1) t_r + t_L; N = ceil(L/q); t_r = d/v + v/a for d >= v^2/a, t_r = 2 sqrt(d/a) for d < v^2/a; t_L = L/v + v/a for L >= v^2/a, t_L = 2 sqrt(L/a) for L < v^2/a",
            r"t = \frac{L + (N - 1) d}{v_f} + N t_d + (N - 1)\, t_r(d) + t_r(L),\quad N = \left\lceil\frac{L}{q}\right\rceil";
        valid "back to the bottom at feed; out of the hole only at the end; t_r is rapid_time with v and a; no time for the spindle or the control";
        source "derived: the moves of the cycle, each by motion at constant acceleration";
        example "travel=30 mm; peck=10 mm; retract=1 mm; feed_speed=120 mm/min; rapid_speed=6 m/min; acceleration=10 m/s2" => "16.35 s", 1e-12,
            "own arithmetic: 16 s of feed, twice 0.02 s back, 0.31 s out; ramps of 0.01 s at 0.1 m/s";
        = {
            let N = pecks(L, q);
            let rapid = |distance| crate::formula::time::rapid_time::value(distance, v, a);
            let returns = N - number(1.0);
            (L + returns * d) / v_f + N * t_d + returns * rapid(d) + rapid(L)
        }
    }

    feed_out_cycle_time {
        symbol "t", "t";
        meaning "Time of a hole whose tool goes in at feed, dwells, and comes out at feed.";
        travel L: Length, above 0.0, "travel at feed from the clearance plane to the bottom";
        feed_speed v_f: Velocity, above 0.0, "feed speed on the way in";
        return_ratio k: Ratio, above 0.0, default 1.0, "feed speed on the way out over that on the way in";
        dwell t_d: Time, from 0.0, default 0.0, "dwell at the bottom";
        -> Time;
        equation "t = L/v_f + t_d + L/(k v_f)", r"t = \frac{L}{v_f} + t_d + \frac{L}{k\, v_f}";
        valid "reaming and boring with the spindle turning forward both ways; no time for the control";
        source "definition";
        example "travel=30 mm; feed_speed=60 mm/min; return_ratio=2; dwell=1 s" => "46 s", 1e-12, "own arithmetic: 30 s in, 1 s, 15 s out";
        = L / v_f + t_d + L / (k * v_f)
    }

    hole_depth_ratio {
        symbol "k_l", "k_l";
        meaning "Depth of a hole over its diameter.";
        depth l: Length, from 0.0, "depth of the hole at full diameter";
        diameter D: Length, above 0.0, "diameter of the hole";
        -> Ratio;
        equation "k_l = l/D", r"k_l = \frac{l}{D}";
        valid "any hole";
        source "definition";
        example "depth=30 mm; diameter=8 mm" => "3.75", 1e-12, "own arithmetic";
        = l / D
    }

    countersink_depth {
        symbol "z", "z";
        meaning "Depth of feed from first contact with the hole's rim to the diameter of a countersink.";
        countersink_diameter D: Length, above 0.0, "diameter of the countersink at the surface";
        hole_diameter d: Length, from 0.0, to countersink_diameter, "diameter of the hole";
        included_angle sigma: Angle, above 0.0, below PI, "included angle of the countersink";
        -> Length;
        equation "z = (D - d)/(2 tan(sigma/2))", r"z = \frac{D - d}{2 \tan\frac{\sigma}{2}}";
        valid "a hole square to a flat surface, the tip of the countersink smaller than the hole";
        source "geometry, derived";
        example "countersink_diameter=12 mm; hole_diameter=6 mm; included_angle=90 deg" => "3 mm", 1e-12, "own arithmetic: tan 45 deg = 1";
        = max(D - d, si(0.0)) / (2.0 * tan(sigma / 2.0))
    }

    countersink_diameter {
        symbol "D", "D";
        meaning "Diameter at the surface that a countersink reaches at a depth from first contact with the hole's rim.";
        depth z: Length, from 0.0, "depth of feed from first contact with the hole's rim";
        hole_diameter d: Length, from 0.0, "diameter of the hole";
        included_angle sigma: Angle, above 0.0, below PI, "included angle of the countersink";
        -> Length;
        equation "D = d + 2 z tan(sigma/2)", r"D = d + 2 z \tan\frac{\sigma}{2}";
        valid "a hole square to a flat surface, the tip of the countersink smaller than the hole";
        source "geometry, derived";
        example "depth=3 mm; hole_diameter=6 mm; included_angle=90 deg" => "12 mm", 1e-12, "own arithmetic: tan 45 deg = 1";
        = d + 2.0 * z * tan(sigma / 2.0)
    }

    smallest_reaming_stock {
        symbol "s", "s";
        meaning "Least stock on the diameter that a machine reamer needs to cut and not to rub.";
        diameter D: Length, from 0.0023, to 0.064, "diameter of the reamer";
        -> Length;
        equation "s = 0.13 mm for D < 4.3 mm, s = 0.2 mm for D < 7.1 mm, s = 0.25 mm for D < 22 mm, s = 0.38 mm else",
            r"s = \begin{cases} 0.13\,\mathrm{mm} & D < 4.3\,\mathrm{mm} \\ 0.2\,\mathrm{mm} & D < 7.1\,\mathrm{mm} \\ 0.25\,\mathrm{mm} & D < 22\,\mathrm{mm} \\ 0.38\,\mathrm{mm} & \text{else} \end{cases}";
        valid "machine reamers of 2.3 to 64 mm in steel and iron";
        source "E. Oberg et al., Machinery's Handbook, tables of drilling and reaming speeds, public reprint, seen";
        example "diameter=10 mm" => "0.25 mm", 1e-12, "E. Oberg et al., Machinery's Handbook, public reprint, seen: holes of 7.1 to 22 mm";
        = {
            let large = select(D.value < 0.022, si(0.000_25), si(0.000_38));
            let middle = select(D.value < 0.0071, si(0.000_2), large);
            select(D.value < 0.0043, si(0.000_13), middle)
        }
    }

    largest_reaming_stock {
        symbol "s", "s";
        meaning "Most stock on the diameter to leave for a machine reamer.";
        diameter D: Length, from 0.0023, to 0.064, "diameter of the reamer";
        -> Length;
        equation "s = 0.25 mm for D < 4.3 mm, s = 0.3 mm for D < 7.1 mm, s = 0.41 mm for D < 22 mm, s = 0.76 mm else",
            r"s = \begin{cases} 0.25\,\mathrm{mm} & D < 4.3\,\mathrm{mm} \\ 0.3\,\mathrm{mm} & D < 7.1\,\mathrm{mm} \\ 0.41\,\mathrm{mm} & D < 22\,\mathrm{mm} \\ 0.76\,\mathrm{mm} & \text{else} \end{cases}";
        valid "machine reamers of 2.3 to 64 mm in steel and iron";
        source "E. Oberg et al., Machinery's Handbook, tables of drilling and reaming speeds, public reprint, seen";
        example "diameter=10 mm" => "0.41 mm", 1e-12, "E. Oberg et al., Machinery's Handbook, public reprint, seen: holes of 7.1 to 22 mm";
        = {
            let large = select(D.value < 0.022, si(0.000_41), si(0.000_76));
            let middle = select(D.value < 0.0071, si(0.000_3), large);
            select(D.value < 0.0043, si(0.000_25), middle)
        }
    }

    reaming_drill_diameter {
        symbol "d", "d";
        meaning "Drill diameter that leaves a stock for the reamer.";
        diameter D: Length, above 0.0, "diameter of the reamer";
        stock s: Length, from 0.0, below diameter, "stock on the diameter";
        -> Length;
        equation "d = D - s", r"d = D - s";
        valid "the drill cuts to its size; one that cuts large leaves less";
        source "definition";
        example "diameter=10 mm; stock=0.3 mm" => "9.7 mm", 1e-12, "own arithmetic";
        = D - s
    }
}

/// Time of the rapid moves over i q - s for i from 1 to N, each from rest to rest, without a loop over
/// the moves.
#[inline(always)]
fn rapid_moves(count: Ratio, q: Length, s: Length, v: Velocity, a: Acceleration) -> Time {
    let one = number(1.0);
    // Moves too short for the rapid speed; at that length both laws give the same time.
    let short = min(max(floor((v * v / a + s) / q), number(0.0)), count);
    let long = count - short;
    let distance = q * ((count * (count + one) - short * (short + one)) / 2.0) - s * long;
    let ramps: Time = v / a;
    distance / v + long * ramps + 2.0 * (q / a).sqrt() * root_sum(short, s / q)
}

/// Sum of sqrt(i - c) for i from 1 to k and c from 0 to 1: the first terms as they are, the others by
/// the sum of Euler and Maclaurin, whose error is below 1e-12 from there on.
#[inline(always)]
fn root_sum(k: Ratio, c: Ratio) -> Ratio {
    const FIRST: u32 = 9;
    let mut sum = number(0.0);
    for i in 1..FIRST {
        let i = number(f64::from(i));
        let root = max(i - c, number(0.0)).value.sqrt();
        sum += select(i.value <= k.value, number(root), number(0.0));
    }
    let first = number(f64::from(FIRST));
    let start = first - c;
    let end = max(k, first) - c;
    let others = root_integral(end) - root_integral(start) + number(start.value.sqrt());
    sum + select(k.value >= first.value, others, number(0.0))
}

/// What the sum of sqrt(x) gains up to x, its last term by half: the integral with its corrections.
#[inline(always)]
fn root_integral(x: Ratio) -> Ratio {
    let x = x.value;
    let y = 1.0 / x;
    let y2 = y * y;
    let corrections =
        1.0 / 24.0 + y2 * (-1.0 / 1920.0 + y2 * (1.0 / 9216.0 - y2 * (11.0 / 163_840.0)));
    number(x.sqrt() * (2.0 / 3.0 * x + 0.5 + y * corrections))
}
