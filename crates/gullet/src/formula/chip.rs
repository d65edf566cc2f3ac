//! Chip thickness: what one tooth takes.

use super::define::formulas;

formulas! {
    topic "chip";

    max_chip_thickness {
        symbol "h_max", r"h_\mathrm{max}";
        meaning "Largest undeformed chip thickness of a side cut or slot.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to core::f64::consts::FRAC_PI_2, default core::f64::consts::FRAC_PI_2, "tool cutting-edge angle";
        -> Length;
        equation "h_max = f_z sin(kappa_r) s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >= D/2",
            r"h_\mathrm{max} = f_z \sin\kappa_r\, s";
        valid "circular tooth path, f_z much smaller than D";
        source "geometry of the circular tooth path, derived; ISO 3002 symbols from memory";
        example "feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg" => "0.06 mm", 1e-6,
            "identity: 3-4-5 triangle";
        = {
            let x = a_e / D;
            f_z * sin(kappa_r) * select(x.value < 0.5, 2.0 * sqrt(x * (number(1.0) - x)), number(1.0))
        }
    }
}
