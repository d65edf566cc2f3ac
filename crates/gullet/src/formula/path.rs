//! Path: feeds, engagement, ramps and travel of a cutter that runs along an arc or a helix, and its
//! steps straight down.

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

    inside_path_diameter {
        symbol "D_p", "D_p";
        meaning "Diameter of the circle that the cutter centre runs on inside a contour.";
        feature_diameter D_f: Length, above 0.0, "diameter of the inside contour";
        cutter_diameter D_c: Length, above 0.0, below feature_diameter, "cutter diameter";
        -> Length;
        equation "D_p = D_f - D_c", r"D_p = D_f - D_c";
        valid "bores, internal threads at the major diameter";
        source "derived: the cutter touches the contour";
        example "feature_diameter=30 mm; cutter_diameter=20 mm" => "10 mm", 1e-12, "identity";
        = D_f - D_c
    }

    outside_path_diameter {
        symbol "D_p", "D_p";
        meaning "Diameter of the circle that the cutter centre runs on around a contour.";
        feature_diameter D_f: Length, above 0.0, "diameter of the outside contour";
        cutter_diameter D_c: Length, above 0.0, "cutter diameter";
        -> Length;
        equation "D_p = D_f + D_c", r"D_p = D_f + D_c";
        valid "bosses, external threads at the minor diameter";
        source "derived: the cutter touches the contour";
        example "feature_diameter=30 mm; cutter_diameter=20 mm" => "50 mm", 1e-12, "identity";
        = D_f + D_c
    }

    axial_per_turn_for_ramp {
        symbol "P", "P";
        meaning "Axial travel a turn at which the helix of the cutter centre has a ramp angle.";
        ramp_angle alpha: Angle, from 0.0, below PI / 2.0, "ramp angle, at most the cutter's own limit";
        path_diameter D_p: Length, above 0.0, "diameter of the path of the cutter centre";
        -> Length;
        equation "P = pi D_p tan(alpha)", r"P = \pi D_p \tan\alpha";
        valid "the axial depth of the cut is this much";
        source "derived: unrolled helix; inverse of helix_ramp_angle";
        example "ramp_angle=3 deg; path_diameter=10 mm" => "1.64643894387 mm", 1e-9, "identity: 10 pi tan(3 deg) mm";
        = PI * D_p * tan(alpha)
    }

    helix_turn_length {
        symbol "L_t", "L_t";
        meaning "Travel of the cutter centre in one turn of a helix.";
        path_diameter D_p: Length, above 0.0, "diameter of the path of the cutter centre";
        axial_per_turn P: Length, from 0.0, "axial travel per turn of the helix; the pitch of a thread";
        -> Length;
        equation "L_t = sqrt((pi D_p)^2 + P^2)", r"L_t = \sqrt{(\pi D_p)^2 + P^2}";
        valid "a full circle at 0";
        source "derived: unrolled helix";
        example "path_diameter=10 mm; axial_per_turn=1.5 mm" => "31.4517160122 mm", 1e-9, "identity";
        = (PI * D_p * (PI * D_p) + P * P).sqrt()
    }

    helix_turns {
        symbol "k", "k";
        meaning "Turns of a helix over an axial depth.";
        axial_depth T: Length, from 0.0, "depth along the axis";
        axial_per_turn P: Length, above 0.0, "axial travel per turn of the helix; the pitch of a thread";
        -> Turns;
        equation "k = T/P", r"k = \frac{T}{P}";
        valid "a blind bore needs one more turn on its floor";
        source "definition";
        example "axial_depth=12 mm; axial_per_turn=1.5 mm" => "8 turns", 1e-12, "own arithmetic";
        = T / P
    }

    helix_travel {
        symbol "L", "L";
        meaning "Travel of the cutter centre on a helix into a bore, with full circles on its floor.";
        axial_depth T: Length, from 0.0, "depth along the axis, with the clearance above the work";
        axial_per_turn P: Length, above 0.0, "axial travel per turn of the helix";
        path_diameter D_p: Length, above 0.0, "diameter of the path of the cutter centre";
        floor_turns k: Turns, from 0.0, default 1.0, "full circles on the floor: 1 of a blind bore, 0 of a through one";
        -> Length;
        equation "L = (T/P) sqrt((pi D_p)^2 + P^2) + k pi D_p", r"L = \frac{T}{P} \sqrt{(\pi D_p)^2 + P^2} + k \pi D_p";
        valid "the time is this travel over the feed of the cutter centre";
        source "derived: unrolled helix";
        example "axial_depth=12 mm; axial_per_turn=1.5 mm; path_diameter=10 mm" => "283.029654633 mm", 1e-9, "identity: 8 turns and a circle";
        = (T / P) * (PI * D_p * (PI * D_p) + P * P).sqrt() + k * PI * D_p
    }

    helix_axial_feed {
        symbol "v_a", "v_a";
        meaning "Part of the cutter centre's feed on a helix that runs along the axis.";
        centre_feed v_fc: Velocity, from 0.0, "feed of the cutter centre along the helix";
        path_diameter D_p: Length, above 0.0, "diameter of the path of the cutter centre";
        axial_per_turn P: Length, from 0.0, "axial travel per turn of the helix";
        -> Velocity;
        equation "v_a = v_fc P/sqrt((pi D_p)^2 + P^2)", r"v_a = v_{fc} \frac{P}{\sqrt{(\pi D_p)^2 + P^2}}";
        valid "v_fc times the sine of the ramp angle";
        source "derived: unrolled helix";
        example "centre_feed=200 mm/min; path_diameter=10 mm; axial_per_turn=1.5 mm" => "9.53843026829 mm/min", 1e-9, "identity";
        = v_fc * (P / (PI * D_p * (PI * D_p) + P * P).sqrt())
    }

    half_circle_entry_length {
        symbol "l_e", "l_e";
        meaning "Travel of a half circle that leads the cutter centre from the axis of a bore onto its circular path.";
        path_diameter D_p: Length, above 0.0, "diameter of the path of the cutter centre";
        -> Length;
        equation "l_e = pi D_p/4", r"l_e = \frac{\pi D_p}{4}";
        valid "tangential entry and exit inside; the half circle's diameter is the radius of the path";
        source "derived: half the circumference at D_p/2";
        example "path_diameter=8 mm" => "6.28318530718 mm", 1e-11, "identity: 2 pi mm";
        = PI * D_p / 4.0
    }

    ramp_length {
        symbol "L", "L";
        meaning "Length along the table in which a straight ramp reaches a depth.";
        axial_depth T: Length, from 0.0, "depth along the axis";
        ramp_angle alpha: Angle, above 0.0, below PI / 2.0, "ramp angle, at most the cutter's own limit";
        -> Length;
        equation "L = T/tan(alpha)", r"L = \frac{T}{\tan\alpha}";
        valid "straight ramp; what stands under it is cut on the way back";
        source "derived: right triangle";
        example "axial_depth=6 mm; ramp_angle=3 deg" => "114.486820126 mm", 1e-9, "identity";
        = T / tan(alpha)
    }

    core_ramp_angle {
        symbol "alpha_max", r"\alpha_\mathrm{max}";
        meaning "Steepest straight ramp of a cutter that does not cut at its centre.";
        core_clearance h_k: Length, from 0.0, "height of the part that does not cut above the edges";
        core_diameter d_k: Length, above 0.0, "diameter of the part that does not cut";
        -> Angle;
        equation "alpha_max = atan(h_k/d_k)", r"\alpha_\mathrm{max} = \arctan\frac{h_k}{d_k}";
        valid "straight ramp, sharp inner corners: the work that the front edges leave rises under the core until the rear edges cut it; the maker's own limit comes first";
        source "derived: descent while the cutter moves on by its core";
        example "core_clearance=0.5 mm; core_diameter=6 mm" => "4.76364169073 deg", 1e-9, "identity: atan(1/12)";
        = atan(h_k / d_k)
    }

    smallest_helix_bore {
        symbol "D_min", r"D_\mathrm{min}";
        meaning "Smallest bore that a cutter which does not cut at its centre can sink into solid work.";
        cutter_diameter D_c: Length, above 0.0, "cutter diameter";
        core_diameter d_k: Length, from 0.0, to cutter_diameter, "diameter of the part that does not cut; 0 of a centre-cutting cutter";
        -> Length;
        equation "D_min = D_c + d_k", r"D_\mathrm{min} = D_c + d_k";
        valid "helix from solid; below it the part that does not cut never leaves the axis of the bore and rides on a pillar; the ramp angle is limited besides";
        source "derived: the core's rim reaches the axis of the bore";
        example "cutter_diameter=20 mm; core_diameter=12 mm" => "32 mm", 1e-12, "identity";
        = D_c + d_k
    }

    largest_helix_bore {
        symbol "D_max", r"D_\mathrm{max}";
        meaning "Largest bore that one helix sinks into solid work with a flat floor.";
        cutter_diameter D_c: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, from 0.0, to cutter_diameter / 2.0, default 0.0, "corner radius";
        -> Length;
        equation "D_max = 2 (D_c - r)", r"D_\mathrm{max} = 2 (D_c - r)";
        valid "above it a pillar or a point is left on the axis of the bore; up to twice the cutter diameter what is left is a point of the corner's height";
        source "derived: the flat end reaches the axis of the bore";
        example "cutter_diameter=20 mm; corner_radius=2 mm" => "36 mm", 1e-12, "identity";
        = 2.0 * (D_c - r)
    }

    largest_plunge_step {
        symbol "s_max", r"s_\mathrm{max}";
        meaning "Step between two plunges at which nothing is left standing between them.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        -> Length;
        equation "s_max = 2 sqrt(a (D - a)); a = min(a_e, D/2)", r"s_\mathrm{max} = 2 \sqrt{a\, (D - a)},\quad a = \min\left(a_e, \frac{D}{2}\right)";
        valid "the chord of the cutter at the old wall; the ridges on the new wall are those of scallop_height at the cutter diameter";
        source "derived: circle and chord";
        example "diameter=20 mm; radial_depth=6 mm" => "18.3303027798 mm", 1e-9, "identity: 2 sqrt(84) mm";
        = {
            let a = min(a_e, D / 2.0);
            2.0 * (a * (D - a)).sqrt()
        }
    }
}
