//! Deflection: how far a cutter or bar bends under its load.

use super::define::formulas;

formulas! {
    topic "deflection";

    fluted_equivalent_diameter {
        symbol "d_e", "d_e";
        meaning "Diameter of the solid round bar that bends like the fluted length of a cutter.";
        diameter D: Length, above 0.0, "cutter diameter";
        factor k: Ratio, above 0.0, to 1.0, default 0.8, "equivalent diameter as a share of the cutter diameter";
        -> Length;
        equation "d_e = k D", r"d_e = k D";
        valid "end mills of common flute shapes; the second moment of area falls with the fourth power, to 41 % at 0.8; stubbier cores take a larger factor";
        source "factor 0.8: metal-cutting textbook companion file, seen; the range of other cores: common practice, no source";
        example "diameter=0.5 in" => "10.16 mm", 1e-12, "identity: 0.8 x 12.7 mm";
        = k * D
    }

    cantilever_deflection {
        symbol "delta", r"\delta";
        meaning "Deflection of the tip of a round bar under a force at its tip.";
        force F: Force, "force across the axis, at the tip; its sign is kept";
        overhang L: Length, from 0.0, "overhang from the holder";
        diameter d: Length, above 0.0, "diameter; for a fluted length the equivalent one";
        modulus E: Pressure, above 0.0, "modulus of elasticity";
        -> Length;
        equation "delta = F L^3/(3 E I); I = pi d^4/64", r"\delta = \frac{F L^3}{3 E I},\quad I = \frac{\pi d^4}{64}";
        valid "slender elastic bar of one diameter in a rigid holder; a real holder and spindle add to it, often as much again";
        source "beam theory; example: E. Isakov, Boring: calculating deflection (trade magazine article, July 2019), seen";
        example "force=207.8 lbf; overhang=4 in; diameter=1 in; modulus=30e6 psi" => "0.003 in", 0.01,
            "E. Isakov, Boring: calculating deflection (trade magazine article, July 2019), seen";
        = {
            let I = PI * d * d * d * d / 64.0;
            F * L * L * L / (3.0 * E * I)
        }
    }

    cantilever_deflection_inboard {
        symbol "delta", r"\delta";
        meaning "Deflection of the tip of a round bar under a force that acts inboard of the tip.";
        force F: Force, "force across the axis; its sign is kept";
        overhang L: Length, from 0.0, "overhang from the holder";
        load_distance a: Length, from 0.0, to overhang, "distance of the force from the holder";
        diameter d: Length, above 0.0, "diameter; for a fluted length the equivalent one";
        modulus E: Pressure, above 0.0, "modulus of elasticity";
        -> Length;
        equation "delta = F a^2 (3 L - a)/(6 E I); I = pi d^4/64",
            r"\delta = \frac{F a^2 (3 L - a)}{6 E I},\quad I = \frac{\pi d^4}{64}";
        valid "slender elastic bar of one diameter in a rigid holder; a side cut of depth a_p loads the bar about a_p/2 above the tip";
        source "beam theory";
        example "force=100 N; overhang=40 mm; load_distance=20 mm; diameter=10 mm; modulus=200 GPa" => "0.00679061091 mm", 1e-8,
            "identity: 4e6/(6 x 200000 x 490.873852) mm";
        = {
            let I = PI * d * d * d * d / 64.0;
            F * a * a * (3.0 * L - a) / (6.0 * E * I)
        }
    }

    stepped_cutter_deflection {
        symbol "delta", r"\delta";
        meaning "Deflection of the tip of a cutter whose flutes are weaker than its shank, under a force at the tip.";
        force F: Force, "force across the axis, at the tip; its sign is kept";
        overhang L: Length, from 0.0, "overhang from the holder";
        flute_length L_f: Length, from 0.0, to overhang, "fluted length, from the tip";
        flute_equivalent_diameter d_f: Length, above 0.0, "equivalent diameter of the fluted length, not the nominal one";
        shank_diameter d_s: Length, above 0.0, "shank diameter";
        modulus E: Pressure, above 0.0, "modulus of elasticity";
        -> Length;
        equation "delta = F/(3 E) (L_f^3/I_f + (L^3 - L_f^3)/I_s); I_f = pi d_f^4/64; I_s = pi d_s^4/64",
            r"\delta = \frac{F}{3 E} \left(\frac{L_f^3}{I_f} + \frac{L^3 - L_f^3}{I_s}\right),\quad I_f = \frac{\pi d_f^4}{64},\quad I_s = \frac{\pi d_s^4}{64}";
        valid "slender elastic bar of two diameters in a rigid holder; the fluted length as fluted_equivalent_diameter";
        source "beam theory, derived: unit-load integral over the two lengths";
        example "force=150 N; overhang=40 mm; flute_length=22 mm; flute_equivalent_diameter=8 mm; shank_diameter=10 mm; modulus=600000 MPa"
            => "0.0134705508 mm", 1e-6, "identity";
        = {
            let L_f = min(L_f, L);
            let I_f = PI * d_f * d_f * d_f * d_f / 64.0;
            let I_s = PI * d_s * d_s * d_s * d_s / 64.0;
            F / (3.0 * E) * (L_f * L_f * L_f / I_f + (L * L * L - L_f * L_f * L_f) / I_s)
        }
    }

    work_deflection_between_centres {
        symbol "delta", r"\delta";
        meaning "Deflection of round work between centres under a force at its middle.";
        force F: Force, "force across the axis, at the middle; its sign is kept";
        length L: Length, from 0.0, "length between the centres";
        diameter d: Length, above 0.0, "diameter of the work";
        modulus E: Pressure, above 0.0, "modulus of elasticity";
        -> Length;
        equation "delta = F L^3/(48 E I); I = pi d^4/64", r"\delta = \frac{F L^3}{48 E I},\quad I = \frac{\pi d^4}{64}";
        valid "slender elastic bar of one diameter, simply supported at both ends; centres and tailstock yield as well";
        source "beam theory";
        example "force=48 N; length=1 m; diameter=20 mm; modulus=200 GPa" => "0.636619772368 mm", 1e-9,
            "identity: 64/(pi 0.02^4 x 2e11) m";
        = {
            let I = PI * d * d * d * d / 64.0;
            F * L * L * L / (48.0 * E * I)
        }
    }

    work_deflection_chuck_and_centre {
        symbol "delta", r"\delta";
        meaning "Deflection of round work held in a chuck and by a centre under a force at its middle.";
        force F: Force, "force across the axis, at the middle; its sign is kept";
        length L: Length, from 0.0, "length from the jaws to the centre";
        diameter d: Length, above 0.0, "diameter of the work";
        modulus E: Pressure, above 0.0, "modulus of elasticity";
        -> Length;
        equation "delta = 7 F L^3/(768 E I); I = pi d^4/64", r"\delta = \frac{7 F L^3}{768 E I},\quad I = \frac{\pi d^4}{64}";
        valid "slender elastic bar of one diameter, held fast by the jaws and simply supported by the centre; near the largest over all places of the force; jaws that grip short hold less";
        source "beam theory";
        example "force=768 N; length=1 m; diameter=20 mm; modulus=200 GPa" => "4.45633840657 mm", 1e-9,
            "identity: 7 x 64/(pi 0.02^4 x 2e11) m";
        = {
            let I = PI * d * d * d * d / 64.0;
            7.0 * F * L * L * L / (768.0 * E * I)
        }
    }
}
