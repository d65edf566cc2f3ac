//! Cutting forces: specific force, force of a chip section, drilling; means over a revolution and
//! bounds of the peak in the submodules.

use super::define::formulas;

mod mean;
mod peak;

pub use mean::*;
pub use peak::*;

/// The formulas of the means over a revolution.
pub(super) const MEAN: &[&super::Formula] = mean::ALL;

/// The formulas of the peak within a revolution.
pub(super) const PEAK: &[&super::Formula] = peak::ALL;

formulas! {
    topic "force";

    specific_cutting_force {
        symbol "k_c", "k_c";
        meaning "Specific cutting force at a chip thickness (Kienzle).";
        kc11 k_c11: Pressure, above 0.0, "specific cutting force at a chip 1 mm thick and 1 mm wide";
        chip_exponent m_c: Ratio, from 0.0, below 1.0, "exponent of the chip thickness";
        chip_thickness h: Length, above 0.0, "undeformed chip thickness";
        rake_angle gamma: Angle, default 0.0, "rake angle of the tool";
        reference_rake gamma_0: Angle, default 0.0, "rake angle that the table's k_c1.1 belongs to";
        rake_sensitivity s: Ratio, from 0.0, default 0.01, "relative change per degree of rake";
        correction K: Ratio, above 0.0, default 1.0, "factor for wear, speed and tool material";
        -> Pressure;
        equation "k_c = k_c11 (h/1 mm)^(-m_c) (1 - s (gamma - gamma_0)/1 deg) K",
            r"k_c = k_{c1.1} \left(\frac{h}{1\,\mathrm{mm}}\right)^{-m_c} \left(1 - s\, \frac{\gamma - \gamma_0}{1^\circ}\right) K";
        valid "chip thickness of about 0.05 to 1.5 mm, thicker than the edge radius (below it ploughing lifts k_c above the law); k_c1.1 and m_c as a pair from one source, good to 20 % at best; s = 0.01 per degree in one school, 0.015 in another; the reference rake belongs to the table";
        source "Kienzle's law in the form of German handbooks, from memory";
        example "kc11=1800 N/mm2; chip_exponent=0.25; chip_thickness=0.08 mm; rake_angle=6 deg; reference_rake=0 deg" => "3181.47022 N/mm2", 1e-8, "identity";
        require rake_sensitivity: (rake_sensitivity * (rake_angle - reference_rake) * (180.0 / PI) < 1.0), "rake_sensitivity*(rake_angle - reference_rake)/(1 deg) < 1";
        = {
            let degree: quantity::Angle = si(PI / 180.0);
            let rake: quantity::Ratio = s * radians(gamma - gamma_0) / radians(degree);
            k_c11 * fractional_power(millimetres(h), -m_c) * (number(1.0) - rake) * K
        }
    }

    chip_section_force {
        symbol "F_c", "F_c";
        meaning "Cutting force of a chip section.";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at this chip thickness";
        chip_thickness h: Length, from 0.0, "undeformed chip thickness";
        chip_width b: Length, from 0.0, "undeformed chip width";
        -> Force;
        equation "F_c = k_c h b", r"F_c = k_c\, h\, b";
        valid "one edge in the cut, sharp; k_c at the same chip thickness";
        source "definition of the specific cutting force; symbols of ISO 3002-4, from memory";
        example "specific_cutting_force=1.7 hp.min/in3; chip_thickness=0.003 in; chip_width=0.060 in" => "121 lbf", 2e-3,
            "clamp maker's technical handbook, boring example, seen";
        = k_c * h * b
    }

    tangential_force {
        symbol "F_c", "F_c";
        meaning "Tangential force that a power at the cutter amounts to.";
        cutting_power P_c: Power, from 0.0, "power at the cutter";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        -> Force;
        equation "F_c = P_c/v_c", r"F_c = \frac{P_c}{v_c}";
        valid "mean over a revolution where the cut is interrupted: never for tool strength or holding";
        source "definition of power";
        example "cutting_power=21.7784052465875 kW; cutting_speed=100 m/min" => "13067.043148 N", 1e-9,
            "own arithmetic on the inputs of a metal-cutting textbook companion, Ex. 2.4";
        = P_c / v_c
    }

    specific_energy_from_force {
        symbol "k_c", "k_c";
        meaning "Specific cutting force from a measured force in turning.";
        cutting_force F_c: Force, from 0.0, "measured cutting force";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        depth_of_cut a_p: Length, above 0.0, "depth of cut";
        -> Pressure;
        equation "k_c = F_c/(f a_p)", r"k_c = \frac{F_c}{f\, a_p}";
        valid "the section f a_p equals b h whatever the cutting-edge angle; belongs to the chip thickness of the test";
        source "definition of the specific cutting force";
        example "cutting_force=1600 N; feed_per_rev=0.2 mm; depth_of_cut=2 mm" => "4000 N/mm2", 1e-9,
            "Sharma P.C., A Textbook of Production Engineering, 11th ed., Exa 14.10 p.571, seen";
        = F_c / (f * a_p)
    }

    kc11_from_specific_force {
        symbol "k_c11", "k_{c1.1}";
        meaning "Specific cutting force at a chip 1 mm thick from that at another chip thickness.";
        specific_cutting_force k_c: Pressure, above 0.0, "specific cutting force at the chip thickness";
        chip_exponent m_c: Ratio, from 0.0, below 1.0, "exponent of the chip thickness";
        chip_thickness h: Length, above 0.0, "undeformed chip thickness";
        -> Pressure;
        equation "k_c11 = k_c (h/1 mm)^m_c", r"k_{c1.1} = k_c \left(\frac{h}{1\,\mathrm{mm}}\right)^{m_c}";
        valid "m_c of the same tests as k_c: the two are one pair";
        source "derived from k_c = k_c11 (h/1 mm)^(-m_c)";
        example "specific_cutting_force=3600 N/mm2; chip_exponent=0.5; chip_thickness=0.25 mm" => "1800 N/mm2", 1e-12, "identity: 3600 x 0.25^0.5";
        = k_c * fractional_power(millimetres(h), m_c)
    }

    drilling_torque {
        symbol "M_c", "M_c";
        meaning "Torque of a two-lip drill in solid metal.";
        diameter D: Length, from 0.0, "drill diameter";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the chip thickness of a lip";
        -> Torque;
        equation "M_c = k_c f D^2/8", r"M_c = \frac{k_c\, f\, D^2}{8}";
        valid "solid drilling with two lips, each force k_c D f/4 at the radius D/4; k_c at h = (f/2) sin(sigma/2), about 1.2 times for high-speed steel and chip friction (from memory); margins not counted";
        source "derived: two lip forces times their lever";
        example "diameter=12.7 mm; feed_per_rev=0.254 mm; specific_cutting_force=1961.33 N/mm2" => "10.044 N.m", 5e-4,
            "Sharma P.C., A Textbook of Production Engineering, 11th ed., Exa 15.4 p.616, seen";
        = torque(k_c * f * D * D / 8.0)
    }

    drilling_thrust {
        symbol "F_f", "F_f";
        meaning "Thrust of a two-lip drill in solid metal.";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the chip thickness of a lip";
        diameter D: Length, from 0.0, "drill diameter";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        point_angle sigma: Angle, above 0.0, to PI, "point angle";
        factor K: Ratio, above 0.0, default 1.0, "about 1 for a standard chisel edge, 0.5 for a thinned point";
        -> Force;
        equation "F_f = K k_c (D/2) f sin(sigma/2)", r"F_f = K\, k_c\, \frac{D}{2}\, f \sin\frac{\sigma}{2}";
        valid "rough, within 40 % either way: the chisel edge takes a third of the thrust and depends on the grind";
        source "form of German handbooks, from memory; factor 1 derived from a handbook's example, 0.5 common practice, no source";
        example "specific_cutting_force=2000 N/mm2; diameter=10 mm; feed_per_rev=0.2 mm; point_angle=60 deg; factor=0.5" => "500 N", 1e-9,
            "own arithmetic: 0.5 x 2000 x 5 x 0.2 x 0.5";
        = K * k_c * (D / 2.0) * f * sin(sigma / 2.0)
    }
}
