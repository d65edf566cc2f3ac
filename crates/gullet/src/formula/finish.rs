//! Finish: the ideal roughness that feed, nose, cutter and stepover leave.

use super::define::formulas;

/// Square root of 3, of the mean deviation of a parabola.
pub(crate) const SQRT_3: f64 = 1.732_050_807_568_877_2;

formulas! {
    topic "finish";

    turning_peak_to_valley {
        symbol "R_t", "R_t";
        meaning "Ideal peak-to-valley height that a nose radius leaves in turning.";
        feed_per_rev f: Length, from 0.0, to 2.0 * nose_radius, "feed per revolution";
        nose_radius r: Length, above 0.0, "nose radius";
        -> Length;
        equation "R_t = f^2/(8 r)", r"R_t = \frac{f^2}{8 r}";
        valid "the nose alone cuts the profile; parabola for the exact r - sqrt(r^2 - f^2/4): 1.6 % low at f = r/2, 6.7 % low at f = r; real surfaces are rougher (built-up edge, wear, vibration)";
        source "geometry of the feed marks, derived; textbooks of metal cutting from memory";
        example "feed_per_rev=0.2 mm; nose_radius=0.8 mm" => "6.25 um", 1e-6, "identity: 0.04/6.4 mm";
        = f * f / (8.0 * r)
    }

    turning_mean_roughness {
        symbol "R_a", "R_a";
        meaning "Ideal arithmetic mean roughness that a nose radius leaves in turning.";
        feed_per_rev f: Length, from 0.0, to 2.0 * nose_radius, "feed per revolution";
        nose_radius r: Length, above 0.0, "nose radius";
        -> Length;
        equation "R_a = f^2/(18 sqrt(3) r)", r"R_a = \frac{f^2}{18 \sqrt{3}\, r}";
        valid "arithmetic mean deviation of the parabolic profile, the nose alone cutting; the shop form f^2/(32 r) is 2.6 % lower; real roughness is 1.5 to 3 times the ideal (common practice)";
        source "derived: mean deviation of a parabola; constant 0.0321 in a metal-cutting textbook companion file, seen";
        example "feed_per_rev=0.2 mm; nose_radius=0.8 mm" => "1.60375075 um", 1e-6, "identity: 0.0320750 x 0.04/0.8 mm";
        = f * f / (18.0 * super::SQRT_3 * r)
    }

    nose_radius_for_mean_roughness {
        symbol "r", "r";
        meaning "Nose radius that leaves a wanted ideal mean roughness at a feed in turning.";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        mean_roughness R_a: Length, above 0.0, to feed_per_rev / (9.0 * super::SQRT_3), "wanted arithmetic mean roughness";
        -> Length;
        equation "r = f^2/(18 sqrt(3) R_a)", r"r = \frac{f^2}{18 \sqrt{3}\, R_a}";
        valid "as turning_mean_roughness; the range of the roughness keeps f <= 2 r";
        source "derived: inverse of turning_mean_roughness";
        example "feed_per_rev=0.1 mm; mean_roughness=0.001 mm" => "0.32075015 mm", 0.001,
            "identity: inputs and the constant 0.0321 of a metal-cutting textbook companion file";
        = f * f / (18.0 * super::SQRT_3 * R_a)
    }

    feed_for_mean_roughness {
        symbol "f", "f";
        meaning "Feed that leaves a wanted ideal mean roughness with a nose radius in turning.";
        mean_roughness R_a: Length, from 0.0, to 2.0 * nose_radius / (9.0 * super::SQRT_3), "wanted arithmetic mean roughness";
        nose_radius r: Length, above 0.0, "nose radius";
        -> Length;
        equation "f = sqrt(18 sqrt(3) r R_a)", r"f = \sqrt{18 \sqrt{3}\, r R_a}";
        valid "as turning_mean_roughness; the range of the roughness keeps f <= 2 r";
        source "derived: inverse of turning_mean_roughness";
        example "mean_roughness=1.6037507477489606 um; nose_radius=0.8 mm" => "0.2 mm", 1e-12, "identity: inverse of turning_mean_roughness";
        = (18.0 * super::SQRT_3 * r * R_a).sqrt()
    }

    turning_roughness_estimate {
        symbol "R_a", "R_a";
        meaning "Mean roughness to expect in turning: the shop form of the ideal one times a ratio of real to ideal.";
        feed_per_rev f: Length, from 0.0, to 2.0 * nose_radius, "feed per revolution";
        nose_radius r: Length, above 0.0, "nose radius";
        roughness_ratio K: Ratio, from 1.0, default 1.0, "real over ideal roughness";
        -> Length;
        equation "R_a = K f^2/(32 r)", r"R_a = K \frac{f^2}{32 r}";
        valid "a quarter of the peak-to-valley height is taken for the mean deviation, 2.6 % below turning_mean_roughness; ratio 1 at high speeds, 1 to 2.5 below about 100 m/min in ductile metals (built-up edge)";
        source "form and ratio: Groover M.P., Fundamentals of Modern Manufacturing, chapter on surface finish, from memory";
        example "feed_per_rev=0.25 mm; nose_radius=1.2 mm; roughness_ratio=1.25" => "2.0 um", 0.025,
            "Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., Ex. 24.1, from memory";
        = K * f * f / (32.0 * r)
    }

    feed_for_roughness_estimate {
        symbol "f", "f";
        meaning "Feed that leaves a wanted mean roughness in turning, with a ratio of real to ideal roughness.";
        mean_roughness R_a: Length, from 0.0, to roughness_ratio * nose_radius / 8.0, "wanted arithmetic mean roughness";
        nose_radius r: Length, above 0.0, "nose radius";
        roughness_ratio K: Ratio, from 1.0, default 1.0, "real over ideal roughness";
        -> Length;
        equation "f = sqrt(32 r R_a/K)", r"f = \sqrt{\frac{32 r R_a}{K}}";
        valid "as turning_roughness_estimate; the range of the roughness keeps f <= 2 r";
        source "derived: inverse of turning_roughness_estimate";
        example "mean_roughness=1.6 um; nose_radius=0.75 mm" => "0.196 mm", 0.002,
            "Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., problem on the feed for a finish, from memory";
        = (32.0 * r * R_a / K).sqrt()
    }

    feed_for_peak_to_valley {
        symbol "f", "f";
        meaning "Feed that leaves a wanted ideal peak-to-valley height with a nose radius in turning.";
        peak_to_valley R_t: Length, from 0.0, to nose_radius / 2.0, "wanted peak-to-valley height";
        nose_radius r: Length, above 0.0, "nose radius";
        -> Length;
        equation "f = sqrt(8 r R_t)", r"f = \sqrt{8 r R_t}";
        valid "as turning_peak_to_valley; the range of the height keeps f <= 2 r";
        source "derived: inverse of turning_peak_to_valley";
        example "peak_to_valley=10 um; nose_radius=0.5 mm" => "0.2 mm", 1e-12, "identity: sqrt(8 x 0.5 x 0.01) mm";
        = (8.0 * r * R_t).sqrt()
    }

    sharp_tool_peak_to_valley {
        symbol "R_t", "R_t";
        meaning "Ideal peak-to-valley height that a tool without nose radius leaves in turning.";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        side_cutting_edge_angle C_s: Angle, from 0.0, below PI / 2.0, "side cutting-edge angle";
        end_cutting_edge_angle C_e: Angle, above 0.0, below PI / 2.0, "end cutting-edge angle";
        -> Length;
        equation "R_t = f/(tan(C_s) + 1/tan(C_e))", r"R_t = \frac{f}{\tan C_s + \cot C_e}";
        valid "sharp corner, no nose radius; both edges straight over the feed mark";
        source "geometry of the ridge; A. Ghosh, A.K. Mallik, Manufacturing Science, 2nd ed., Ex. 4.24 (the form, seen)";
        example "feed_per_rev=0.1 mm; side_cutting_edge_angle=45 deg; end_cutting_edge_angle=45 deg" => "0.05 mm", 1e-12,
            "identity: right-angled ridge";
        = f / (tan(C_s) + number(1.0) / tan(C_e))
    }

    feed_mark_height {
        symbol "h", "h";
        meaning "Height of the feed marks that peripheral milling leaves.";
        feed_per_tooth f_z: Length, from 0.0, to diameter, "feed per tooth; with run-out the feed per revolution";
        diameter D: Length, above 0.0, "cutter diameter";
        -> Length;
        equation "h = f_z^2/(4 D)", r"h = \frac{f_z^2}{4 D}";
        valid "circular tooth path, parabola for the arc; every tooth cuts: with run-out take the feed per revolution";
        source "geometry of the feed marks; example: A. Ghosh, A.K. Mallik, Manufacturing Science, Ex. 4.25 p.262, seen";
        example "feed_per_tooth=0.0347222222222222 mm; diameter=100 mm" => "3e-06 mm", 0.005,
            "A. Ghosh, A.K. Mallik, Manufacturing Science, Ex. 4.25 p.262, seen; f_z = 25/(60 x 12) mm";
        = f_z * f_z / (4.0 * D)
    }

    feed_mark_height_up {
        symbol "h", "h";
        meaning "Height of the feed marks that up (conventional) peripheral milling leaves.";
        feed_per_tooth f_z: Length, from 0.0, to diameter, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        teeth z: Count, from 1.0, "number of teeth";
        -> Length;
        equation "h = f_z^2/(8 (D/2 + f_z z/pi))", r"h = \frac{f_z^2}{8 \left(\frac{D}{2} + \frac{f_z z}{\pi}\right)}";
        valid "trochoidal tooth path, up milling, no run-out";
        source "M. Martellotti, 1941, from memory; derived again: curvature of the trochoid at the finished wall";
        example "feed_per_tooth=0.1 mm; diameter=12 mm; teeth=4" => "0.204004229 um", 1e-6, "identity: 0.01/(8 (6 + 0.4/pi)) mm";
        = f_z * f_z / (8.0 * (D / 2.0 + f_z * z / PI))
    }

    feed_mark_height_down {
        symbol "h", "h";
        meaning "Height of the feed marks that down (climb) peripheral milling leaves.";
        feed_per_tooth f_z: Length, from 0.0, to diameter, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        teeth z: Count, from 1.0, "number of teeth";
        -> Length;
        equation "h = f_z^2/(8 (D/2 - f_z z/pi))", r"h = \frac{f_z^2}{8 \left(\frac{D}{2} - \frac{f_z z}{\pi}\right)}";
        valid "trochoidal tooth path, down milling, no run-out";
        source "M. Martellotti, 1941, from memory; derived again: curvature of the trochoid at the finished wall";
        example "feed_per_tooth=0.1 mm; diameter=12 mm; teeth=4" => "0.212850154 um", 1e-8, "identity: 0.01/(8 (6 - 0.4/pi)) mm";
        require feed_per_tooth: (feed_per_tooth * teeth / PI < diameter / 2.0), "feed_per_tooth*teeth/pi < diameter/2";
        = f_z * f_z / (8.0 * (D / 2.0 - f_z * z / PI))
    }

    feed_mark_mean_roughness {
        symbol "R_a", "R_a";
        meaning "Arithmetic mean roughness of a profile of feed marks.";
        feed_mark_height h: Length, from 0.0, "height of the feed marks";
        -> Length;
        equation "R_a = 4 h/(9 sqrt(3))", r"R_a = \frac{4 h}{9 \sqrt{3}}";
        valid "parabolic profile";
        source "derived: mean deviation of a parabola";
        example "feed_mark_height=9 um" => "2.30940107676 um", 1e-9, "identity: 4/sqrt(3) um";
        = 4.0 * h / (9.0 * super::SQRT_3)
    }

    scallop_height {
        symbol "h", "h";
        meaning "Height of the scallops that a ball-nosed cutter leaves between two passes over a flat surface.";
        ball_diameter D: Length, above 0.0, "diameter of the ball";
        stepover s: Length, from 0.0, to ball_diameter, "distance between two passes";
        -> Length;
        equation "h = (D - sqrt(D^2 - s^2))/2", r"h = \frac{D - \sqrt{D^2 - s^2}}{2}";
        valid "flat surface; on a wall or slope the stepover is measured along the surface; feed marks add to it";
        source "derived: circle and chord";
        example "ball_diameter=10 mm; stepover=0.5 mm" => "6.25391114 um", 1e-6, "identity";
        = {
            // The same without the difference of two nearly equal lengths.
            let root = max(D * D - s * s, si(0.0)).sqrt();
            s * s / (2.0 * (D + root))
        }
    }

    stepover_for_scallop {
        symbol "s", "s";
        meaning "Stepover of a ball-nosed cutter that leaves a wanted scallop height on a flat surface.";
        ball_diameter D: Length, above 0.0, "diameter of the ball";
        scallop_height h: Length, from 0.0, to ball_diameter / 2.0, "wanted scallop height";
        -> Length;
        equation "s = 2 sqrt(h (D - h))", r"s = 2 \sqrt{h (D - h)}";
        valid "flat surface; on a wall or slope the stepover is measured along the surface";
        source "derived: inverse of scallop_height";
        example "ball_diameter=10 mm; scallop_height=0.005 mm" => "0.447101778 mm", 1e-6, "identity: 2 sqrt(0.005 x 9.995) mm";
        = 2.0 * (h * (D - h)).sqrt()
    }
}
