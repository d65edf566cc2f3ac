//! What a practice makes of a table's value or a machine's rating, and what a limit leaves of a
//! feed.

use super::define::formulas;
use super::finish::SQRT_3;

formulas! {
    topic "practice";

    practice_cutting_speed {
        symbol "v_w", "v_w";
        meaning "Cutting speed wanted: the table's value times the practice's factor.";
        table_speed v_t: Velocity, above 0.0, "cutting speed of the table";
        speed_factor k_v: Ratio, above 0.0, "factor of the practice";
        -> Velocity;
        equation "v_w = k_v v_t", r"v_w = k_v\, v_t";
        valid "factors near 1; the table's value already belongs to the work and cutter material";
        source "definition of a factor; the factor itself is the practice's";
        example "table_speed=200 ft/min; speed_factor=0.8" => "160 ft/min", 1e-12, "own arithmetic";
        = k_v * v_t
    }

    practice_feed_per_tooth {
        symbol "h_w", "h_w";
        meaning "Largest chip wanted: the table's feed per tooth times the practice's factor.";
        table_feed_per_tooth f_t: Length, above 0.0, "feed per tooth of the table, the largest chip of a cut at least half the cutter wide";
        feed_factor k_f: Ratio, above 0.0, "factor of the practice";
        -> Length;
        equation "h_w = k_f f_t", r"h_w = k_f\, f_t";
        valid "factors near 1; tables give the feed per tooth of cuts wide enough that the largest chip equals it";
        source "definition of a factor; the factor itself is the practice's";
        example "table_feed_per_tooth=0.004 in; feed_factor=0.8" => "0.0032 in", 1e-12, "own arithmetic";
        = k_f * f_t
    }

    thinning_cap_feed {
        symbol "f_c", "f_c";
        meaning "Largest feed per tooth to which chip thinning may raise the wanted chip.";
        wanted_chip h_w: Length, above 0.0, "largest chip wanted";
        thinning_cap c: Ratio, from 1.0, "largest factor the practice allows";
        -> Length;
        equation "f_c = c h_w", r"f_c = c\, h_w";
        valid "keeps thin cuts from feeds that the table or the hand cannot follow";
        source "common practice, no source";
        example "wanted_chip=0.1 mm; thinning_cap=2" => "0.2 mm", 1e-12, "own arithmetic";
        = c * h_w
    }

    practice_depth {
        symbol "a_w", "a_w";
        meaning "Largest roughing depth of a pass that the practice allows.";
        diameter D: Length, above 0.0, "cutter diameter";
        depth_ratio k_a: Ratio, above 0.0, "depth over diameter that the practice allows for the work's ISO 513 group";
        -> Length;
        equation "a_w = k_a D", r"a_w = k_a D";
        valid "roughing passes";
        source "common practice, no source";
        example "diameter=1/2 in; depth_ratio=0.2" => "0.1 in", 1e-12, "own arithmetic";
        = k_a * D
    }

    grip_for_height {
        symbol "l_g", "l_g";
        meaning "Smallest height of a part that the jaws must grip.";
        part_height H: Length, above 0.0, "height of the part along the spindle axis";
        smallest_grip k_g: Ratio, from 0.0, to 1.0, "share of the height that the practice asks for";
        -> Length;
        equation "l_g = k_g H", r"l_g = k_g H";
        valid "a block in a vise, cut from above";
        source "common practice, no source";
        example "part_height=30 mm; smallest_grip=0.3" => "9 mm", 1e-12, "own arithmetic";
        = k_g * H
    }

    stick_out_cap {
        symbol "l_c", "l_c";
        meaning "Longest stick-out of a cutter that the practice allows.";
        diameter D: Length, above 0.0, "cutter diameter";
        stick_out_ratio k_l: Ratio, above 0.0, "stick-out over diameter that the practice allows";
        -> Length;
        equation "l_c = k_l D", r"l_c = k_l D";
        valid "end mills in a rigid holder";
        source "common practice, no source";
        example "diameter=10 mm; stick_out_ratio=4" => "40 mm", 1e-12, "own arithmetic";
        = k_l * D
    }

    usable_power {
        symbol "P_u", "P_u";
        meaning "Power at the cutter that a practice uses of a motor's rating.";
        rated_motor_power P_m: Power, from 0.0, "rated power of the spindle motor";
        efficiency eta: Ratio, above 0.0, to 1.0, "efficiency of the drive";
        power_share k_p: Ratio, above 0.0, to 1.0, "share of the power that the practice uses";
        -> Power;
        equation "P_u = k_p eta P_m", r"P_u = k_p\, \eta\, P_m";
        valid "continuous rating of the motor; above the base speed or with a belt step";
        source "definition of efficiency; the share is the practice's";
        example "rated_motor_power=1.5 kW; efficiency=80 %; power_share=0.5" => "0.6 kW", 1e-12, "own arithmetic";
        = k_p * eta * P_m
    }

    feed_for_load_share {
        symbol "f_q", "f_q";
        meaning "Feed per tooth at which a load that follows the power law of the chip just meets its limit.";
        feed_per_tooth f_z: Length, above 0.0, "feed per tooth at which the load was found";
        load_share q: Ratio, above 0.0, "load over its limit at that feed";
        chip_exponent m_c: Ratio, from 0.0, below 1.0, "exponent m_c of the specific cutting force";
        -> Length;
        equation "f_q = f_z q^(-1/(1 - m_c))", r"f_q = f_z\, q^{-\frac{1}{1 - m_c}}";
        valid "loads in proportion to k_c h, that is to h^(1 - m_c): force, torque, power, deflection, clamping force at one depth and speed";
        source "derived from k_c = k_c11 h^(-m_c): the load grows with f_z^(1 - m_c)";
        example "feed_per_tooth=0.1 mm; load_share=2; chip_exponent=0.5" => "0.025 mm", 1e-12, "own arithmetic: 2^(-2)";
        = f_z * pow(q, number(-1.0) / (number(1.0) - m_c))
    }

    feed_for_wall_roughness {
        symbol "f_r", "f_r";
        meaning "Feed per revolution whose feed marks on a milled wall have a mean roughness.";
        mean_roughness R_a: Length, from 0.0, to diameter / (9.0 * super::SQRT_3), "mean roughness wanted";
        diameter D: Length, above 0.0, "cutter diameter";
        -> Length;
        equation "f_r = sqrt(9 sqrt(3) D R_a)", r"f_r = \sqrt{9 \sqrt{3}\, D\, R_a}";
        valid "parabolic feed marks of one tooth a revolution: run-out makes one tooth leave the mark";
        source "derived: inverse of h = f^2/(4 D) and R_a = 4 h/(9 sqrt(3))";
        example "mean_roughness=0.5345835825 um; diameter=12 mm" => "0.31622776 mm", 1e-6, "own arithmetic: h = 0.1/48 mm, so f^2 = 0.1 mm2";
        = {
            let area: quantity::Area = 9.0 * super::SQRT_3 * D * R_a;
            area.sqrt()
        }
    }

    cut_travel {
        symbol "s", "s";
        meaning "Travel of a pass: the cut with approach, overtravel and clearance at both ends.";
        cut_length l: Length, above 0.0, "length of the cut";
        approach l_a: Length, from 0.0, "travel from first contact to full width";
        overtravel l_u: Length, from 0.0, "travel past the end until the cutter is clear of the surface";
        clearance l_c: Length, from 0.0, "clearance at each end";
        -> Length;
        equation "s = l + l_a + l_u + 2 l_c", r"s = l + l_a + l_u + 2 l_c";
        valid "one straight pass";
        source "definition; clearance is the practice's";
        example "cut_length=100 mm; approach=14 mm; overtravel=14 mm; clearance=0 mm" => "128 mm", 1e-12, "own arithmetic";
        = l + l_a + l_u + 2.0 * l_c
    }

    depth_for_load_share {
        symbol "a_q", "a_q";
        meaning "Axial depth at which a load in proportion to it just meets its limit.";
        axial_depth a_p: Length, above 0.0, "axial depth at which the load was found";
        load_share q: Ratio, above 0.0, "load over its limit at that depth";
        -> Length;
        equation "a_q = a_p/q", r"a_q = \frac{a_p}{q}";
        valid "force, torque, power, deflection and clamping force at one speed, feed and radial depth; square-ended cutters";
        source "derived: the width of the chip is in proportion to a_p";
        example "axial_depth=10 mm; load_share=1.25" => "8 mm", 1e-12, "own arithmetic";
        = a_p / q
    }
}
