//! Path: feeds, engagement and ramps of a cutter that runs along an arc.

use super::define::formulas;

formulas! {
    topic "path";

    inside_arc_feed {
        symbol "v_fc", r"v_{fc}";
        meaning "Feed of the cutter centre for the feed wanted at an inside contour.";
        contour_feed v_f: Velocity, from 0.0, "feed wanted at the contour";
        feature_diameter D_f: Length, above 0.0, "diameter of the inside contour";
        cutter_diameter D_c: Length, above 0.0, below feature_diameter, "cutter diameter";
        -> Velocity;
        equation "v_fc = v_f (D_f - D_c)/D_f", r"v_{fc} = v_f \frac{D_f - D_c}{D_f}";
        valid "circular arc; some controls make this correction themselves: do not correct twice; thread milling inside with the thread's diameter";
        source "derived: same angular rate of contour and cutter centre";
        example "contour_feed=600 mm/min; feature_diameter=40 mm; cutter_diameter=16 mm" => "360 mm/min", 1e-6, "identity: 600 x 24/40";
        = v_f * (D_f - D_c) / D_f
    }

    outside_arc_feed {
        symbol "v_fc", r"v_{fc}";
        meaning "Feed of the cutter centre for the feed wanted at an outside contour.";
        contour_feed v_f: Velocity, from 0.0, "feed wanted at the contour";
        feature_diameter D_f: Length, above 0.0, "diameter of the outside contour";
        cutter_diameter D_c: Length, above 0.0, "cutter diameter";
        -> Velocity;
        equation "v_fc = v_f (D_f + D_c)/D_f", r"v_{fc} = v_f \frac{D_f + D_c}{D_f}";
        valid "circular arc; some controls make this correction themselves: do not correct twice; thread milling outside with the thread's diameter";
        source "derived: same angular rate of contour and cutter centre";
        example "contour_feed=600 mm/min; feature_diameter=40 mm; cutter_diameter=16 mm" => "840 mm/min", 1e-6, "identity: 600 x 56/40";
        = v_f * (D_f + D_c) / D_f
    }

    bore_radial_depth {
        symbol "a_e", "a_e";
        meaning "Radial depth on a straight wall that engages the cutter as enlarging a bore does.";
        finished_diameter D_m: Length, above 0.0, "diameter after the pass";
        start_diameter D_w: Length, from 0.0, below finished_diameter, "diameter before the pass, 0 for solid work";
        cutter_diameter D_c: Length, above 0.0, below finished_diameter, "cutter diameter";
        -> Length;
        equation "a_e = min(D_c, (D_m^2 - D_w^2)/(4 (D_m - D_c)))",
            r"a_e = \min\left(D_c,\ \frac{D_m^2 - D_w^2}{4 (D_m - D_c)}\right)";
        valid "cutter running round the inside; held at the cutter diameter, a full slot";
        source "derived: area balance over one turn of the cutter centre";
        example "finished_diameter=40 mm; start_diameter=36 mm; cutter_diameter=16 mm" => "3.16666667 mm", 1e-6, "identity: 304/96 mm";
        = min(D_c, (D_m - D_w) * (D_m + D_w) / (4.0 * (D_m - D_c)))
    }

    boss_radial_depth {
        symbol "a_e", "a_e";
        meaning "Radial depth on a straight wall that engages the cutter as turning down a boss does.";
        finished_diameter D_m: Length, above 0.0, "diameter after the pass";
        start_diameter D_w: Length, above finished_diameter, to finished_diameter + 2.0 * cutter_diameter, "diameter before the pass";
        cutter_diameter D_c: Length, above 0.0, "cutter diameter";
        -> Length;
        equation "a_e = (D_w^2 - D_m^2)/(4 (D_m + D_c))", r"a_e = \frac{D_w^2 - D_m^2}{4 (D_m + D_c)}";
        valid "cutter running round the outside; with more stock on the radius than the cutter is wide a wall would be left standing, which is refused";
        source "derived: area balance over one turn of the cutter centre";
        example "finished_diameter=40 mm; start_diameter=44 mm; cutter_diameter=16 mm" => "1.5 mm", 1e-12, "identity: 336/224 mm";
        = (D_w - D_m) * (D_w + D_m) / (4.0 * (D_m + D_c))
    }

    helix_ramp_angle {
        symbol "alpha", r"\alpha";
        meaning "Ramp angle of the cutter centre on a helix into a bore.";
        axial_per_turn P: Length, from 0.0, "axial travel per turn of the helix";
        feature_diameter D_f: Length, above 0.0, "diameter of the bore";
        cutter_diameter D_c: Length, above 0.0, below feature_diameter, "cutter diameter";
        -> Angle;
        equation "alpha = atan(P/(pi (D_f - D_c)))", r"\alpha = \arctan\frac{P}{\pi (D_f - D_c)}";
        valid "path of the cutter centre, steeper than the helix at the wall; the cutter's own limit is for this path";
        source "derived: unrolled helix";
        example "axial_per_turn=1.5 mm; feature_diameter=30 mm; cutter_diameter=20 mm" => "2.73359594 deg", 1e-6, "identity: atan(1.5/(10 pi))";
        = atan(P / (PI * (D_f - D_c)))
    }
}
